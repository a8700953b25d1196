"""Calls of the lesson on slabs that curl. Which answer is right is worked out."""

import math
from dataclasses import replace

from crackkit.learning.called import Answer, called
from crackkit.learning.choices import Question
from crackkit.learning.curling import LONG_CURE, at_corner, panel, pull, wet_panel
from crackkit.structures.curled_slab import CurledSlab
from crackkit.units import shown
from crackkit.words import _

FAR = 3.0  # sides of the wheel's foot: farther away than that is not at the wheel
LITTLE, LOT = 0.05, 0.5  # share of the pull that is saved


def place(system: str) -> Question:
    """Where is a dry slab stretched most, with a wheel in its corner?"""
    slab = at_corner(panel(system), system)
    text = _(
        "A panel of the canteen floor, {thick} thick, has dried for three months from its top. A "
        "serving trolley stands with one wheel in the corner. Where is the concrete stretched most?"
    ).format(thick=shown(slab.thickness, "size", system))
    before = at_corner(wet_panel(system), system)
    return called("place", text, _stretched(slab), _PLACE, before, slab)


def _stretched(slab: CurledSlab) -> str:
    state = slab.curled
    if state.bottom.peak >= state.top.peak:
        return "bottom"
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
        _("the corner rests, so only its wheel counts"),
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


def longer(system: str) -> Question:
    """Does a month of curing keep the corner from being pulled so hard?"""
    slab = at_corner(panel(system), system)
    cured = replace(slab, curing=LONG_CURE)
    text = _(
        "That corner broke. The next floor is kept moist for {days} days instead of {few}. At the "
        "same age, three months, how hard is its corner pulled by the same wheel?"
    ).format(days=round(cured.curing), few=round(slab.curing))
    return called("longer", text, _saved(slab, cured), _LONGER, slab, cured)


def _saved(slab: CurledSlab, cured: CurledSlab) -> str:
    saved = 1.0 - pull(cured) / pull(slab)
    if saved >= LOT:
        return "lot"
    if saved >= LITTLE:
        return "little"
    return "harder" if saved <= -LITTLE else "alike"


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
            "In the end it makes little difference. But at this age the drying of the longer cured "
            "floor is younger, and a young front of dryness lies close below the top."
        ),
    ),
    Answer(
        "harder",
        _("Harder"),
        _("curing always helps against cracks"),
        _(
            "It began to dry four weeks later: at three months its top is as dry, and less of the "
            "dryness has come through to the bottom. Curing makes a face hard and dense; against "
            "curling it does nothing."
        ),
    ),
)
