"""The picture of a crack that finds its own way: one picture of its film."""

from crackkit.drawing import corner_picture, lattice_picture
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.shapes import Picture


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a WanderingCrack.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of it.
    view : View
        Units and layout.

    Returns
    -------
    Picture
    """
    it = outcome.structure
    return lattice_picture.picture(it.slab, it.run, it.number, it.tied, it.day, view)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    return picture(outcome, view).description


def before(structure, view: View = PLAIN) -> Picture:
    """Draw the slab before anything is known of it."""
    return corner_picture.before(structure.slab, view)


def sheet(structure, view: View = PLAIN) -> Picture:
    """Draw the slab to be drawn on."""
    return corner_picture.sheet(structure.slab, view)
