"""The drawing that belongs to a structure, whatever kind it is.

A structure names the module that draws it in ``drawing``; a straight member under bending need
not. Such a module gives four things: ``picture`` and ``description`` of an Outcome, the member
``before`` anything is known of it, and the ``sheet`` that a class draws its prediction on.
"""

import importlib

from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.shapes import Picture


def picture(outcome, view: View = PLAIN) -> Picture:
    """Draw the answers to the four questions."""
    return _drawing(outcome.structure).picture(outcome, view)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    return _drawing(outcome.structure).description(outcome, view)


def before(structure, view: View = PLAIN) -> Picture:
    """Draw a structure before anything is known of it."""
    return _drawing(structure).before(structure, view)


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the page on which a class makes its prediction by hand."""
    return _drawing(structure).sheet(structure, view)


def _drawing(structure):
    name = getattr(structure, "drawing", "beam_picture")
    return importlib.import_module(f"crackkit.drawing.{name}")
