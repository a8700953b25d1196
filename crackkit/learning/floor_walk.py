"""The guided walk through the panel of a floor over three spans."""

from functools import partial

from crackkit.learning.telling import briefly
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.units.quantities import FOOT, INCH
from crackkit.words import _

SKETCHED = {"SI": 1500.0, "US": 5 * FOOT}  # how far the full floor stretches the top, and more
SUNK = {"SI": 20.0, "US": 0.75 * INCH}
WIDER = {"SI": 175.0, "US": 9 * INCH}  # spacing of the top bars where there are too few


def walk(floor: ContinuousBeam, system: str) -> Walk:
    """Give the walk.

    Parameters
    ----------
    floor : ContinuousBeam
        The floor as it is at first: three spans, all loaded, the truck in the middle.
    system : str
        Units, ``"SI"`` or ``"US"``.
    """
    return Walk(partial(_steps, floor), system)


def _steps(floor: ContinuousBeam, system: str) -> tuple[WalkStep, ...]:
    start = _start(floor)
    return (
        _empty_step(floor),
        _sketch_step(system, start),
        _through_step(start),
        _sunk_step(system, start),
        _shift_step(system, start),
    )


def _start(floor: ContinuousBeam) -> dict:
    """What brings the panel back to the floor as it is at first."""
    live = {f"spans.{k}.live": True for k in range(3)}
    reaches = {
        "supports.1.right_reach": floor.supports[1].right_reach,
        "supports.2.left_reach": floor.supports[2].left_reach,
    }
    rest = {
        "loads.0.at": floor.loads[0].at,
        "through": False,
        "shifted": False,
        "supports.1.sunk": 0.0,
        "top.spacing": floor.top.spacing,
    }
    return rest | live | reaches


def _empty_step(floor: ContinuousBeam) -> WalkStep:
    return WalkStep(
        _(
            "The rolls in the middle span have gone to the press, and the truck stands in span 1. "
            "Take the live load off span 2. Watch the middle of span 2."
        ),
        {"spans.1.live": False, "loads.0.at": floor.spans[0].length / 2},
        _(
            "The full spans on both sides lift the empty one: it bends like a frown from end to "
            "end. Where its bottom was stretched before, its top is stretched now, and cracks. The "
            "places without bending have wandered out of the span."
        ),
    )


def _sketch_step(system: str, start: dict) -> WalkStep:
    far = SKETCHED[system]
    return WalkStep(
        _(
            "Somebody drew one sketch, for the full floor, and ended the top bars of the middle "
            "span just past the cracks of that sketch, at {far} from each support. The floor is "
            "full again. Read the list under the picture, then press 'Show me'."
        ).format(far=briefly(far, "length", system)),
        start | {"supports.1.right_reach": far, "supports.2.left_reach": far},
        _(
            "As long as all spans are full, bars cross every crack. But some load that can come "
            "cracks the top in the middle of span 2, and there no bar crosses. One sketch is not "
            "enough: each place has a load of its own that is worst for it."
        ),
        from_start=True,
    )


def _through_step(start: dict) -> WalkStep:
    return WalkStep(
        _(
            "Run all bars through from end to end: 'The same bars everywhere', under All bars. "
            "Look at the list, and at the weight."
        ),
        start | {"through": True},
        _(
            "No place is without bars any more, whatever the loads do. The price is about a "
            "quarter more steel than the bars that end where they may. In a small floor that is "
            "often worth it: nobody can lay them wrong."
        ),
        from_start=True,
    )


def _sunk_step(system: str, start: dict) -> WalkStep:
    return WalkStep(
        _(
            "Back to the bars that end where they may. Now let support B sink by {down} (Sunk by, "
            "under Supports and top bars). Watch the moments over B and over C."
        ).format(down=briefly(SUNK[system], "size", system)),
        start | {"supports.1.sunk": SUNK[system]},
        _(
            "Support B lets go of much of its moment, and span 1 and support C take it. Beyond C "
            "the top now cracks farther out than the bars reach. Nobody put a load there: ground "
            "that gives, or props taken away unevenly, bends a floor just as a load does."
        ),
        from_start=True,
    )


def _shift_step(system: str, start: dict) -> WalkStep:
    return WalkStep(
        _(
            "Level supports again, but far fewer top bars, one every {apart}. Switch on 'Let "
            "cracks shift the moments', under Loads. How much does support B bear now?"
        ).format(apart=briefly(WIDER[system], "size", system)),
        start | {"top.spacing": WIDER[system], "shifted": True},
        _(
            "Where the top has cracked over so little steel, the floor is softer, and it hands "
            "some of its moment on to the spans: about a tenth here. That helps a little. "
            "It does not make good for bars that were saved: under the worst load those over the "
            "supports give way."
        ),
        from_start=True,
    )
