"""The verdict on a member, and the cautions that belong to this very case."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import least_clear_spacing_aci, least_clear_spacing_en
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import Limit, limit
from crackkit.structures.member import Layer, Member
from crackkit.structures.outcome import (
    TIGHT,
    TOO_WIDE,
    UNCRACKED,
    UNHELD,
    YIELDS,
    Caution,
    Crack,
    TensionZone,
    Verdict,
)
from crackkit.words import _

AGGREGATE = 20.0  # largest stone in the concrete [mm]; common practice


@dataclass(frozen=True)
class Case:
    """What the verdict and the cautions look at."""

    member: Member
    zones: tuple[TensionZone, ...]
    cracks: tuple[Crack, ...]
    falls: bool


def verdict(case: Case) -> Verdict:
    """Judge the widest crack against the limit of the chosen use."""
    bound = limit(case.member.code, case.member.exposure)
    if not case.cracks:
        return Verdict(UNCRACKED, None, bound, _("The stretch stays below what concrete can bear."))
    unheld = [crack for crack in case.cracks if crack.width is None]
    if unheld:
        return Verdict(UNHELD, None, bound, _unheld_reason(case, unheld[0]))
    slipping = [c for c in case.cracks if c.steel_stress > c.developed * case.member.yield_strength]
    if slipping or case.falls:
        return Verdict(YIELDS, None, bound, _yield_reason(case, slipping))
    return _width_verdict(case.cracks, bound)


def _unheld_reason(case: Case, crack: Crack) -> str:
    if not case.member.layers:
        return _("There are no bars. The first crack goes right through.")
    if crack.face == "bottom":
        return _("The bottom cracks, and no bar crosses the crack while it is stretched.")
    return _("The top cracks, and no bar crosses the crack while it is stretched.")


def _yield_reason(case: Case, slipping: list[Crack]) -> str:
    if any(c.developed < 1.0 and c.steel_stress <= case.member.yield_strength for c in slipping):
        return _("The bars end too close to a crack: they slip before they can hold it.")
    return _("The bars are pulled past their yield strength: the crack keeps opening.")


def _width_verdict(cracks: tuple[Crack, ...], bound: Limit) -> Verdict:
    widest = max(crack.width.governing for crack in cracks)
    if widest > bound.width:
        return Verdict(TOO_WIDE, widest, bound, _("Bars hold the cracks, but not small enough."))
    if max(crack.width.high for crack in cracks) > bound.width:
        return Verdict(
            TIGHT, widest, bound, _("Tight by the chosen rule; another rule would not agree.")
        )
    return Verdict(TIGHT, widest, bound, _("Bars cross every crack and keep it small."))


def cautions(case: Case) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first."""
    found = [*_grave(case), *_bars_cautions(case)]
    found.append(
        Caution(
            "estimate",
            _(
                "A teaching estimate, not a design: local codes and a licensed engineer decide. "
                "Shear, fire and fatigue are not checked here. Real cracks scatter by half "
                "again around any rule."
            ),
        )
    )
    return tuple(sorted(found, key=lambda caution: not caution.grave))


def _grave(case: Case):
    if any(crack.width is None for crack in case.cracks):
        yield Caution("unheld", _("Nothing holds a crack here: the beam would break."), grave=True)
    elif case.falls:
        yield Caution(
            "falls", _("The load is more than the bars can carry: the beam would fall."), grave=True
        )
    squeezed = _squeezed_layers(case)
    if squeezed and any(crack.width is None for crack in case.cracks):
        text = _("The {bars} lie on the squeezed side, where they hold no crack.")
        yield Caution("wrong_side", text.format(bars=squeezed), grave=True)


def _squeezed_layers(case: Case) -> str:
    used = {key for crack in case.cracks for key in crack.bars}
    return ", ".join(item.label for item in case.member.layers if item.key not in used)


def _bars_cautions(case: Case):
    for item in case.member.layers:
        yield from _cover_caution(case.member, item)
        yield from _spacing_caution(case.member, item)
    if any(0 < c.developed < 1.0 for c in case.cracks):
        yield Caution(
            "anchorage",
            _("Near their ends the bars can build up only part of their strength."),
        )


def _cover_caution(member: Member, item: Layer):
    cover = min(item.depth, member.section.depth - item.depth) - item.bar.diameter / 2
    least = least_cover(member.code, member.exposure, item.bar.diameter)
    if cover < least.cover - 0.5:
        text = _(
            "The {bars} have less cover than {clause} asks for in this place: rust comes early."
        )
        yield Caution("cover", text.format(bars=item.label, clause=least.clause))


def _spacing_caution(member: Member, item: Layer):
    if clear_gap(member, item) < least_gap(member, item) - 0.5:
        text = _("The {bars} lie too close side by side: the stones do not pass between them.")
        yield Caution("spacing", text.format(bars=item.label))


def clear_gap(member: Member, item: Layer) -> float:
    """Clear distance of the bars of a layer [mm]; infinite for a single bar."""
    if item.number < 2:
        return np.inf
    outer = 2 * item.side_cover + item.number * item.bar.diameter
    return (member.section.width - outer) / (item.number - 1)


def least_gap(member: Member, item: Layer) -> float:
    """Least clear distance that the code family asks for [mm]."""
    rule = least_clear_spacing_aci if member.code == "ACI" else least_clear_spacing_en
    return rule(item.bar.diameter, AGGREGATE)
