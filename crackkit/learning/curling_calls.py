"""Calls of the lesson on slabs that curl. Which answer is right is worked out."""

import math
from dataclasses import replace

import numpy as np

from crackkit.learning.called import Answer, called
from crackkit.learning.choices import Question
from crackkit.learning.curling import LATER, LONG_CURE, THICK, at_corner, panel, pull
from crackkit.learning.telling import shown
from crackkit.structures.curled_slab import CurledSlab
from crackkit.words import _

FAR = 3.0  # sides of the wheel's foot: farther away than that is not at the wheel
EVEN = 0.9  # share of the peak that half of the face must reach to be pulled all over alike
NOTICED = 0.1  # share of what it was from which a change is one


def place(system: str) -> Question:
    """Where is a dry slab stretched most, with a wheel in its corner?"""
    slab = at_corner(panel(system), system)
    text = _(
        "A panel of the canteen floor, {thick} thick, has dried for six weeks from its top. A "
        "serving trolley stands with one wheel in the corner. Where is the concrete stretched most?"
    ).format(thick=shown(slab.thickness, "size", system))
    return called("place", text, _stretched(slab), _PLACE, slab, slab)


def _stretched(slab: CurledSlab) -> str:
    state = slab.curled
    if state.bottom.peak >= state.top.peak:
        return "bottom"
    if np.median(state.top.stress) > EVEN * state.top.peak:
        return "even"
    wheel = state.patches[0]
    away = math.hypot(state.top.at[0] - wheel.x, state.top.at[1] - wheel.y)
    return "inside" if away > FAR * wheel.side else "wheel"


_PLACE = (
    Answer(
        "bottom",
        _("At the bottom, below the wheel"),
        _("a slab lies on the ground like a plank on a cushion"),
        _(
            "So it is while the floor is wet and flat. Now there is air below the corner, and it "
            "hangs out like a balcony: the top is stretched."
        ),
    ),
    Answer(
        "wheel",
        _("On top, right beside the wheel"),
        _("stress is greatest where the load stands"),
        _(
            "Right at the wheel the lever is short. The corner hangs out from where it still "
            "rests: there, some way in, the pull is greatest."
        ),
    ),
    Answer(
        "inside",
        _("On top, well away from the wheel"),
        _("the top is always stretched where the floor rests"),
        _(
            "There is air below the corner: it hangs out like a balcony from where the floor "
            "still rests, and the top there bears both the wheel and the weight of what hangs out."
        ),
    ),
    Answer(
        "even",
        _("On top, all over alike"),
        _("drying pulls a floor all over alike"),
        _("Drying alone pulls its middle. The wheel makes a place of its own."),
    ),
)


def thicker(system: str) -> Question:
    """Does a thicker slab lie flat?"""
    slab = at_corner(panel(system), system)
    thick = replace(slab, thickness=THICK[system])
    text = _(
        "The corner of that floor stands up, and breaks below the wheel. The next floor is {thick} "
        "thick instead of {thin}. What is its corner like on the same day?"
    ).format(
        thick=shown(thick.thickness, "size", system), thin=shown(slab.thickness, "size", system)
    )
    return called("thicker", text, _stands(slab, thick), _THICKER, slab, thick)


def _stands(a: CurledSlab, b: CurledSlab) -> str:
    """How the corner of the second stands, and how hard it is pulled, beside the first."""
    rise = b.curled.corner_rise / a.curled.corner_rise
    less = pull(b) / pull(a) < 1.0 - NOTICED
    if rise < 1.0 - NOTICED:
        return "lower" if less else "lower_same"
    return "high_less" if less else "high_same"


_THICKER = (
    Answer(
        "lower",
        _("It lies lower, and is pulled less"),
        _("a heavy floor cannot curl"),
        _(
            "It is heavier, but also much stiffer, and its bottom stays wet for longer. It is "
            "pulled less, yet it stands as high."
        ),
    ),
    Answer(
        "high_less",
        _("It stands as high, but is pulled less"),
        _("thickness helps against nothing but loads"),
        _(
            "It dries as one-sidedly as the thin one, and is stiffer: so it stands as high. But "
            "the wheel and the weight in the air pull on more concrete."
        ),
    ),
    Answer(
        "high_same",
        _("It stands as high, and is pulled as hard"),
        _("only drying counts, so thickness does not"),
        _("The wheel counts as well, and a thicker floor bears it with less pull."),
    ),
    Answer(
        "lower_same",
        _("It lies lower, but is pulled as hard"),
        _("what is forced flat is pulled"),
        _(
            "Weight does force it down, and that pulls. But its stiffness grows faster than its "
            "weight."
        ),
    ),
)


def longer(system: str) -> Question:
    """Does a month of curing keep the corner from being pulled so hard?"""
    slab = at_corner(panel(system), system)
    cured = replace(slab, curing=LONG_CURE)
    text = _(
        "Thin again. Another floor is kept moist for {days} days instead of {few}. At the same "
        "age, six weeks, how hard is its corner pulled by the same wheel?"
    ).format(days=round(cured.curing), few=round(slab.curing))
    return called("longer", text, _saved(slab, cured), _LONGER, slab, cured)


def _saved(slab: CurledSlab, cured: CurledSlab) -> str:
    share = pull(cured) / pull(slab)
    if share <= 0.5:
        return "lot"
    if share < 1.0 - NOTICED:
        return "little"
    return "harder" if share > 1.0 + NOTICED else "alike"


_LONGER = (
    Answer(
        "lot",
        _("Half as hard or less"),
        _("what is cured does not shrink"),
        _("It shrinks all the same once it dries, and more on top than below."),
    ),
    Answer(
        "little",
        _("A little less"),
        _("every week of water takes some of the curling off"),
        _("Water puts the drying off; it does not take the difference between top and bottom off."),
    ),
    Answer(
        "alike",
        _("Just as hard"),
        _("curing does not matter for curling"),
        _(
            "Nearly. But it begins to dry later, with its concrete older: that creeps less, and "
            "gives in less to the curling."
        ),
    ),
    Answer(
        "harder",
        _("Harder"),
        _("curing does harm to concrete"),
        _(
            "It began to dry as older concrete, which creeps less and gives in less, and by now "
            "its top is nearly as dry. Curing makes a face hard and dense; against curling it "
            "does nothing."
        ),
    ),
)


def damp(system: str) -> Question:
    """Does water leave downward where there is no sheet?"""
    sealed = replace(at_corner(panel(system), system), age=LATER)
    bare = replace(sealed, under="damp")
    text = _(
        "On its sheet the corner of the first floor stands {rise} up after half a year: the "
        "dryness has come through. Had the sheet been left out, on damp ground, how would it stand?"
    ).format(rise=shown(sealed.curled.corner_rise, "movement", system))
    return called("damp", text, _risen(sealed, bare), _DAMP, sealed, bare)


def _risen(a: CurledSlab, b: CurledSlab) -> str:
    """How high the corner of the second stands beside the first."""
    ratio = b.curled.corner_rise / a.curled.corner_rise
    if ratio < 0.25:
        return "flat"
    if ratio < 1.0 - NOTICED:
        return "lower"
    return "higher" if ratio > 1.0 + NOTICED else "alike"


_DAMP = (
    Answer(
        "flat",
        _("Flat: it dries downward as well"),
        _("the ground takes water up"),
        _("Dry ground would. Damp ground gives water: the bottom never dries."),
    ),
    Answer(
        "lower",
        _("Lower: some water leaves through the ground"),
        _("any way out for water helps"),
        _("Through damp ground water comes in, not out."),
    ),
    Answer(
        "alike",
        _("The same: only the top counts"),
        _("what lies below a floor does not matter"),
        _("It is the difference between top and bottom that lifts corners."),
    ),
    Answer(
        "higher",
        _("Much higher"),
        _("a sheet keeps a floor from curling"),
        _(
            "The bottom stays as wet as the ground, and the corners stay up for good. On a sheet "
            "the bottom dries through the top in the end, though it takes its time."
        ),
    ),
)
