"""A strip of a slab or a beam: what was typed tells which, and what is then assumed."""

from crackkit.sandbox.forms import Reading
from crackkit.sandbox.load_arguments import line_load
from crackkit.units import BarSpacing, shown
from crackkit.units.bar_notes import BarCount
from crackkit.words import _

FACES = ("top", "bottom")


def shape_of(typed: dict, by_name: dict, names=FACES) -> str:
    """Tell what is looked at: bars that are counted make a beam, a flange a beam with its slab.

    Parameters
    ----------
    typed : dict
        What was typed.
    by_name : dict
        The arguments, which read the notes of bars.
    names : sequence of str
        Those that hold the notes.
    """
    if "shape" in typed:
        return by_name["shape"].read(typed["shape"])
    if "flange_width" in typed or "flange_depth" in typed:
        return "tee"
    notes = [by_name[face].read(typed[face]) for face in names if face in typed]
    flat = [one for note in notes for one in (note if _is_row(note) else (note,))]
    return "beam" if any(isinstance(one, BarCount) for one in flat) else "slab"


def _is_row(note) -> bool:
    return isinstance(note, tuple) and not hasattr(note, "size")


def fitting(v: Reading, face: str, note):
    """Give a note of bars that goes with the shape; raises `WrongInput` otherwise."""
    if v["shape"] == "slab" and isinstance(note, BarCount):
        reason = _("a strip of a slab takes bars at a spacing, such as 12 @ 150 or #4 @ 6 in")
        raise v.wrong(face, reason)
    if v["shape"] != "slab" and isinstance(note, BarSpacing):
        raise v.wrong(face, _("a beam takes a number of bars, such as 3 #6 or 4 x 16 mm"))
    return note


def taken_load(v: Reading, name: str) -> float:
    """Give a spread load as a load per length [N/mm]."""
    width, is_slab = v["width"], v["shape"] == "slab"
    return line_load(v.form.by_name[name], v[name], width, is_slab, v.texts[name])


def area_notes(case) -> list[str]:
    """Say which loads per area were taken for the width of the strip.

    Parameters
    ----------
    case : Typed
    """
    form, system = case.form, case.system
    found = []
    for name, typed in case.typed.items():
        load = form.by_name[name].read(typed)
        if getattr(load, "per_area", False):
            width = case.structure.width
            found.append(
                _("{name}={typed!r}: on a strip {width} wide that makes {load}.").format(
                    name=name,
                    typed=typed,
                    width=shown(width, "size", system),
                    load=shown(load.size * width, "line_load", system),
                )
            )
    return found
