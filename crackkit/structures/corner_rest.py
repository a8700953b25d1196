"""The crack of a slab with inside corners at rest, at an age: as laid, and bare."""

import numpy as np

from crackkit.mechanics.cohesive_crack import cut_before
from crackkit.mechanics.cohesive_law import CohesiveLaw, bridged_by_fibres
from crackkit.mechanics.crack_at_load import eased_at_load, out_of_balance, quick_at_load
from crackkit.mechanics.crack_carried_on import carried_on
from crackkit.mechanics.crack_growth import Opened
from crackkit.mechanics.crack_state import CrackState
from crackkit.mechanics.fibres import INDICATIVE
from crackkit.structures.corner_ages import AtAge
from crackkit.structures.corner_bars import layout
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


def is_bare(it, line: Line) -> bool:
    """Tell whether a CornerSlab has neither bars across a crack, nor fibres, nor a joint there."""
    return it.fibres == it.joint == "none" and not crossed(line, layout(it)).bars


def as_laid(it, line: Line, now: AtAge, before: Opened | None = None) -> CrackState:
    """The crack of a CornerSlab at rest, as laid.

    Parameters
    ----------
    it : CornerSlab
    line : Line
        Which crack.
    now : AtAge
        Its concrete.
    before : Opened, optional
        Where the same crack stood at an earlier age, from which it opens on.
    """
    laid = layout(it)
    law = _law(now, _fibres(it, now))
    matter = Matter(now.modulus, it.thickness, law, it.strength, it.yield_strength)
    loads = _loads(line, now)
    crack = in_concrete(crossed(line, laid), matter, laid, loads, _uncut(it, line))
    return CrackState(crack, _at_rest(crack, before))


def bare_at(line: Line, now: AtAge, before: Opened | None = None) -> CrackState:
    """The same without bars, fibres and joint; the thickness does not matter then."""
    matter = Matter(now.modulus, 1.0, _law(now), 0.0, 0.0)
    crack = in_concrete(crossed(line), matter, None, _loads(line, now))
    return CrackState(crack, _at_rest(crack, before))


def _law(now: AtAge, fibres=(0.0, 0.0)) -> CohesiveLaw:
    return CohesiveLaw(now.strength, now.toughness, "bilinear", fibres)


def _loads(line: Line, now: AtAge) -> np.ndarray:
    state = uncracked(line.form, line.by, now.modulus, now.free)
    return unit_loads(line, state, now.modulus, now.free)


def _at_rest(crack, before: Opened | None):
    """The crack under the whole load, or what comes close to it; see `is_settled`."""
    found = None if before is None else carried_on(crack, 1.0, before)
    if found is not None:
        return found
    try:
        return quick_at_load(crack, 1.0)
    except ArithmeticError:
        return eased_at_load(crack, 1.0)


def is_settled(state: CrackState) -> bool:
    """Tell whether a crack has been found at rest, to a hundredth of its opening."""
    return out_of_balance(state.crack, state.opened) < LEFT + 0.01 * float(state.opening.max())


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
