"""The crack of a slab with inside corners at rest, at an age: as laid, and bare."""

from functools import lru_cache

import numpy as np

from crackkit.mechanics.cohesive_crack import cut_before
from crackkit.mechanics.cohesive_law import CohesiveLaw, bridged_by_fibres
from crackkit.mechanics.crack_at_load import eased_at_load, left_over, quick_at_load
from crackkit.mechanics.crack_state import CrackState
from crackkit.mechanics.fibres import INDICATIVE
from crackkit.structures.corner_ages import AtAge
from crackkit.structures.corner_bars import laid_bars, layout
from crackkit.structures.corner_opening import (
    Line,
    Matter,
    crossed,
    in_concrete,
    split_slab,
    unit_loads,
)
from crackkit.structures.corner_restraint import uncracked

LEFT = 1e-3  # mm
RUN = 5.0  # openings G_F/f_t from which a crack has run, and stays so


def opened(it, line: Line, now: AtAge, before: CrackState | None = None) -> CrackState:
    """The crack of a CornerSlab at rest, as laid.

    Parameters
    ----------
    it : CornerSlab
    line : Line
        Which crack.
    now : AtAge
        Its concrete.
    before : CrackState, optional
        The same crack at an earlier age, which spares some time if it has run since.
    """
    bars = laid_bars(layout(it))
    unit = crossed(line, bars)
    if not unit.bars and it.fibres == it.joint == "none":
        return bare(line, now) if before is None else bare_after(line, now, before)
    law = _law(now, _fibres(it, now))
    matter = Matter(now.modulus, it.thickness, law, it.strength, it.yield_strength)
    crack = in_concrete(unit, matter, bars, _loads(line, now), _uncut(it, line))
    return CrackState(crack, _at_rest(crack, before))


@lru_cache(maxsize=64)
def bare(line: Line, now: AtAge) -> CrackState:
    """The crack at rest without bars, fibres and joint; the thickness does not matter then."""
    return bare_after(line, now, None)


def bare_after(line: Line, now: AtAge, before: CrackState | None) -> CrackState:
    """The same; `before` as in `opened`."""
    matter = Matter(now.modulus, 1.0, _law(now), 0.0, 0.0)
    crack = in_concrete(crossed(line, ()), matter, (), _loads(line, now))
    return CrackState(crack, _at_rest(crack, before))


def _law(now: AtAge, fibres=(0.0, 0.0)) -> CohesiveLaw:
    return CohesiveLaw(now.strength, now.toughness, "bilinear", fibres)


def _loads(line: Line, now: AtAge) -> np.ndarray:
    state = uncracked(line.form, line.by, now.modulus, now.free)
    return unit_loads(line, state, now.modulus, now.free)


def _at_rest(crack, before: CrackState | None):
    """The crack under the whole load, or what comes close to it; see `is_settled`."""
    start = None
    if before is not None and before.opening.max() > RUN * crack.law.scale:
        start = before.opened.q
    try:
        return quick_at_load(crack, 1.0, start)
    except ArithmeticError:
        return eased_at_load(crack, 1.0)


def is_settled(state: CrackState) -> bool:
    """Tell whether a crack has been found at rest, to a hundredth of its opening."""
    return left_over(state.crack, state.opened) < LEFT + 0.01 * float(state.opening.max())


def _fibres(it, now: AtAge) -> tuple[float, float]:
    first, last = bridged_by_fibres(*residuals(it))
    return min(first, now.strength), last


def residuals(it) -> tuple[float, float]:
    """Residual strengths f_R1 and f_R3 of a CornerSlab [MPa]."""
    if it.fibres == "tested":
        return it.residual_1, it.residual_3
    dose = next(each for each in INDICATIVE if each.key == it.fibres)
    return dose.residual_1, dose.residual_3


def _uncut(it, line: Line):
    cut = split_slab(line).slab.line
    if it.joint == "joint":
        return cut_before(cut, np.inf, 1.0)
    return cut_before(cut, it.saw_length, it.cut_depth) if it.joint == "saw" else 1.0
