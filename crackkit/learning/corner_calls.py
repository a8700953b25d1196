"""Calls of the lesson on the inside corner. Which answer is right is worked out."""

import math
from dataclasses import replace

import numpy as np

from crackkit.learning.called import Answer, called
from crackkit.learning.choices import Question
from crackkit.learning.corner import (
    CLOSE,
    DIAGONALS,
    FAR,
    LAST,
    MAT,
    WALL_BARS,
    far_floor,
    floor,
    held_floor,
    mat_floor,
    round_floor,
    size_told,
    wall_floor,
    widest,
)
from crackkit.learning.telling import shown
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.outcome import TIGHT, UNCRACKED, Outcome
from crackkit.words import _

NEAR = 600.0  # mm: what lies nearer to a corner than that is at the corner
ALONG = math.radians(22.5)  # nearer to a way than that, it runs that way
AS_WIDE = 0.8  # share of a width from which another is as wide


def where(system: str) -> Question:
    """Where does a held, drying floor with an inside corner start to crack?"""
    slab = floor(system)
    text = _(
        "The floor of a bakery, {thick} thick, bends around the oven house. It was cast in one go "
        "and is tied to the footings of the walls all round. It dries and wants to be shorter. "
        "Where does it start to crack?"
    ).format(thick=shown(slab.thickness, "size", system))
    return called("where", text, _starts(slab.solve()), _WHERE, slab, slab)


def _starts(outcome: Outcome) -> str:
    """Where the pull is greatest on the plan."""
    state, slab = outcome.cornered, outcome.structure
    field = state.field
    row, column = np.unravel_index(np.nanargmax(field.share), field.share.shape)
    at = (field.x[column], field.y[row])
    if min(math.dist(at, corner.at) for corner in state.corners) < NEAR:
        return "inside"
    ends = [(x, y) for x in (0.0, slab.length) for y in (0.0, slab.width)]
    if min(math.dist(at, end) for end in ends) < NEAR:
        return "outside"
    rim = min(*at, slab.length - at[0], slab.width - at[1])
    return "side" if rim < NEAR else "middle"


_WHERE = (
    Answer(
        "side",
        _("In the middle of the longest side"),
        _("a floor cracks where it is longest"),
        _(
            "A plain rectangle would, if it cracked at all. Here the pull has to go around the "
            "oven house, and gathers at the corner."
        ),
    ),
    Answer(
        "outside",
        _("At an outer corner"),
        _("corners that stick out are weak"),
        _(
            "An outer corner curls, as the lesson before tells, but nothing pulls at it sideways: "
            "what lies out there has nothing beyond it to be held by."
        ),
    ),
    Answer(
        "inside",
        _("At the inside corner, beside the oven house"),
        _("every corner cracks"),
        _(
            "The pull runs through both arms, from wall to wall, and must turn around the inside "
            "corner. There it crowds, as people do around the corner of a passage."
        ),
    ),
    Answer(
        "middle",
        _("Out in the middle of the floor"),
        _("drying pulls hardest in the middle"),
        _("There the pull is even, and well below what the concrete bears."),
    ),
)


def way(system: str) -> Question:
    """Which way does the crack run from the inside corner?"""
    slab = floor(system)
    text = _("It starts at the inside corner. Which way does it run?")
    return called("way", text, _runs(slab.solve()), _WAY, slab, slab)


def _runs(outcome: Outcome) -> str:
    """Which way the crack as a whole runs into the concrete, beside the sides of its corner."""
    crack = outcome.cornered.crack
    x, y = crack.points[-1] - crack.points[0]
    if x > 0.0 or y > 0.0:  # the missing quarter lies at the far right
        return "across"
    angle = math.atan2(-y, -x)
    if angle < ALONG or angle > math.pi / 2 - ALONG:
        return "along"
    return "halfway"


_WAY = (
    Answer(
        "along",
        _("Straight on in line with one of the walls"),
        _("a crack goes on where an edge ends"),
        _(
            "It does where a floor is held at two ends only. This one is pulled both ways, and a "
            "crack runs across the pull."
        ),
    ),
    Answer(
        "halfway",
        _("Out into the floor, halfway between the two walls"),
        _("cracks run at 45 degrees"),
        _(
            "Both arms pull. Together they pull across the corner, and a crack runs across the "
            "pull: away from the corner, halfway between both walls."
        ),
    ),
    Answer(
        "across",
        _("Across the corner, from one wall to the other, as if to cut it off"),
        _("a crack runs along the pull"),
        _(
            "That is the way in which it is PULLED, and in which a bar should lie. The crack runs "
            "across the pull."
        ),
    ),
)


def bars(system: str) -> Question:
    """Which bars keep the crack below its limit with the least steel?"""
    found, floors = _bars_tried(system)
    size, close = size_told(DIAGONALS[system]["diagonals"]), shown(CLOSE[system], "size", system)
    far, mat = shown(FAR[system], "size", system), size_told(MAT[system]["mat"])
    every, wall = (
        shown(MAT[system]["spacing"], "size", system),
        size_told(WALL_BARS[system]["edges"]),
    )
    text = _(
        "The floor is a year old. Which of these bars keep the crack within {limit}, with the "
        "least steel?"
    ).format(limit=shown(found["close"].verdict.limit.width, "width", system))
    answers = (
        Answer(
            "wall",
            _("One bar along each wall, size {size}, {close} off, past the corner").format(
                size=wall, close=close
            ),
            _("bars belong along the edges"),
            _("They cross the crack at a slant, and do not hold it. A bar works across its crack."),
        ),
        Answer(
            "close",
            _("Two diagonal bars, size {size}, from {close} off the corner on").format(
                size=size, close=close
            ),
            _("two bars can never hold a whole floor"),
            _(
                "They lie straight across the coming crack, and meet it while it is young: a "
                "little steel in the right place."
            ),
        ),
        Answer(
            "far",
            _("The same two, from {far} off the corner on").format(far=far),
            _("a bar across the crack works wherever it lies"),
            _("The crack has grown before it gets there: it is too wide by then."),
        ),
        Answer(
            "mat",
            _("A mat everywhere, size {size}, one bar every {every}").format(size=mat, every=every),
            _("much steel holds better than little"),
            _("It holds, but with eighty times the steel or more, and not as fine."),
        ),
    )
    return called("bars", text, _lightest(found), answers, floors["bare"], floors["close"])


def _bars_tried(system: str) -> tuple[dict[str, Outcome], dict[str, CornerSlab]]:
    floors = {
        "bare": floor(system),
        "wall": wall_floor(system),
        "close": held_floor(system),
        "far": far_floor(system),
        "mat": mat_floor(system),
    }
    return {key: one.solve() for key, one in floors.items() if key != "bare"}, floors


def _lightest(found: dict[str, Outcome]) -> str:
    """The lightest of those whose crack stays below its limit; of none, the finest."""
    good = {key: one for key, one in found.items() if one.verdict.key in (TIGHT, UNCRACKED)}
    if good:
        return min(good, key=lambda key: good[key].steel_mass)
    return min(found, key=lambda key: found[key].verdict.width)


def rounded(system: str) -> Question:
    """Does a round corner keep a floor from cracking?"""
    sharp, slab = floor(system), round_floor(system)
    text = _(
        "The next floor gets no bars, but a round corner, radius {radius}. What becomes of it in "
        "ten years?"
    ).format(radius=shown(slab.rounding, "size", system))
    last = replace(slab, age=LAST)
    return called("round", text, _in_the_end(sharp, slab), _ROUND, last, last)


def _in_the_end(sharp: CornerSlab, slab: CornerSlab) -> str:
    """When a floor with a round corner cracks, and how wide, beside one with a sharp corner."""
    last = widest(replace(slab, age=LAST))
    if not last:
        return "never"
    if widest(slab):
        return "soon"
    return "as_wide" if last > AS_WIDE * widest(replace(sharp, age=LAST)) else "finer"


_ROUND = (
    Answer(
        "never",
        _("It does not crack: a round corner has no tip"),
        _("a circle is free of stress"),
        _(
            "Its pull is less, but it is still more than elsewhere, and as long as the floor is "
            "held it grows with every month."
        ),
    ),
    Answer(
        "finer",
        _("It cracks later, and the crack stays finer"),
        _("what eases the pull also narrows the crack"),
        _("How wide it gets hangs on how much the floor shrinks, not on the shape of its corner."),
    ),
    Answer(
        "as_wide",
        _("It cracks later, and then just as wide"),
        _("a round corner helps for ever"),
        _(
            "The round corner is pulled less hard, so it takes longer. Once there is a crack, its "
            "tip is as sharp as any, and it opens as far as the floor shrinks."
        ),
    ),
    Answer(
        "soon",
        _("It cracks as soon as a sharp one"),
        _("only the steel counts, never the shape"),
        _("At one year, when the sharp one had cracked long ago, it has not run yet."),
    ),
)
