"""From what was read to a floor over several spans, and back."""

from crackkit.sandbox.bar_arguments import laid
from crackkit.sandbox.forms import Reading
from crackkit.sandbox.load_arguments import Load
from crackkit.sandbox.shapes import fitting, taken_load
from crackkit.structures.anchored_bars import is_slab
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_bars import FloorBars
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.units.bar_notes import BarCount, BarSpacing, PointLoad
from crackkit.words import _


def made(v: Reading) -> ContinuousBeam:
    """Make the floor."""
    plain = v.plain
    below, above = plain.pop("bottom"), plain.pop("top")
    plain |= {"dead_load": taken_load(v, "dead"), "live_load": taken_load(v, "live")}
    number = len(v["spans"])
    bottom, top = _notes(v, "bottom", number), _notes(v, "top", number + 1)
    left, right = v["ends"]
    return ContinuousBeam(
        **plain,
        left_end=left,
        right_end=right,
        spans=_spans(v, bottom),
        supports=_supports(v, top),
        loads=_loads(v),
        bottom=FloorBars(**below, **_shared(v, bottom), face="bottom"),
        top=FloorBars(**above, **_shared(v, top), face="top"),
    )


def _notes(v: Reading, face: str, places: int) -> tuple:
    notes = tuple(fitting(v, face, note) for note in v.at_each(face, places))
    if v["through"] and v["shape"] == "slab" and not any(notes):
        raise v.wrong(face, _("through=True lays bars in both faces from end to end"))
    return notes


def _shared(v: Reading, notes: tuple) -> dict:
    """Size and spacing, which all bars of a face have in common."""
    there = next((note for note in notes if note is not None), None)
    found = laid(there, v.unlaid)
    return {key: found[key] for key in ("size", "spacing") if key in found}


def _count(note) -> dict:
    found = laid(note, "")
    return {key: found[key] for key in ("number", "laid") if key in found}


def _spans(v: Reading, notes: tuple) -> tuple[Span, ...]:
    lengths = v["spans"]
    number = len(lengths)
    live = range(1, number + 1) if v["live_on"] is None else v["live_on"]
    if not set(live) <= set(range(1, number + 1)):
        reason = _("there are spans 1 to {n}").format(n=number)
        raise v.wrong("live_on", reason)
    lefts, rights = v.at_each("left_gap", number), v.at_each("right_gap", number)
    return tuple(
        Span(lengths[k], k + 1 in live, left_gap=lefts[k], right_gap=rights[k], **_count(notes[k]))
        for k in range(number)
    )


def _supports(v: Reading, notes: tuple) -> tuple[Support, ...]:
    number = len(notes)
    sunk = dict(v["settled"])
    letters = [chr(ord("A") + k) for k in range(number)]
    if not set(sunk) <= set(letters):
        raise v.wrong("settled", _("the supports are A to {last}").format(last=letters[-1]))
    lefts, rights = v.at_each("top_left_reach", number), v.at_each("top_right_reach", number)
    return tuple(
        Support(
            sunk.get(letters[k], 0.0),
            left_reach=lefts[k],
            right_reach=rights[k],
            **_count(notes[k]),
        )
        for k in range(number)
    )


def _loads(v: Reading) -> tuple[Traveller, ...]:
    first = v["spans"][0] / 2
    places = ((load.force, load.position) for load in v["travelling"])
    typed = tuple(Traveller(force, first if at is None else at) for force, at in places)
    # the structure always holds a travelling load: here one of nothing
    return typed or (Traveller(0.0, first),)


def compound(floor: ContinuousBeam) -> dict:
    """Give the inner values of the arguments that set more than one input."""
    loads = (PointLoad(load.force, load.at) for load in floor.loads if load.force)
    return {
        "spans": tuple(span.length for span in floor.spans),
        "ends": (floor.left_end, floor.right_end),
        "bottom": _noted(floor, floor.bottom, floor.spans),
        "top": _noted(floor, floor.top, floor.supports),
        "dead": Load(floor.dead_load),
        "live": Load(floor.live_load),
        "travelling": tuple(loads),
        "live_on": _loaded(floor),
        "settled": _sunk(floor),
        **_ends_of_bars(floor),
    }


def _noted(floor: ContinuousBeam, bars: FloorBars, places) -> tuple:
    if not is_slab(floor):
        return tuple(BarCount(place.number, bars.size) for place in places)
    mat = BarSpacing(bars.size, bars.spacing)
    return tuple(mat if place.laid or floor.through else BarCount(0, bars.size) for place in places)


def _loaded(floor: ContinuousBeam) -> tuple[int, ...] | None:
    found = tuple(k for k, span in enumerate(floor.spans, 1) if span.live)
    return None if len(found) == len(floor.spans) else found


def _sunk(floor: ContinuousBeam) -> tuple[tuple[str, float], ...]:
    named = ((chr(ord("A") + k), support.sunk) for k, support in enumerate(floor.supports))
    return tuple((letter, sunk) for letter, sunk in named if sunk)


def _ends_of_bars(floor: ContinuousBeam) -> dict:
    lefts = tuple(one.left_reach for one in floor.supports)
    rights = tuple(one.right_reach for one in floor.supports)
    same = lefts == rights
    return {
        "top_reach": lefts if same else None,
        "top_left_reach": None if same else lefts,
        "top_right_reach": None if same else rights,
        "left_gap": tuple(span.left_gap for span in floor.spans),
        "right_gap": tuple(span.right_gap for span in floor.spans),
    }
