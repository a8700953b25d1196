"""The verdict on a member, and the cautions that belong to this very case."""

from dataclasses import dataclass
from functools import partial

from crackkit.mechanics.bars import (
    least_clear_spacing_aci,
    least_clear_spacing_en,
)
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.crack_limits import Limit, limit
from crackkit.structures.least_steel import least_steel
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
    decisive,
)
from crackkit.words import _

NEAR = 0.4  # share of the strength from which uncracked concrete without bars is warned of
AGGREGATE = 20.0  # largest stone in the concrete [mm]; common practice


@dataclass(frozen=True)
class Case:
    """What the verdict and the cautions look at."""

    member: Member
    zones: tuple[TensionZone, ...]
    cracks: tuple[Crack, ...]
    falls: bool
    reactions: tuple[float, ...] = ()

    @property
    def unheld(self) -> list[Crack]:
        """Cracks that nothing holds."""
        return [crack for crack in self.cracks if crack.width is None]

    @property
    def overstrained(self) -> list[Crack]:
        """Cracks whose bars are asked for more than they can build up there."""
        strength = self.member.yield_strength
        held = (crack for crack in self.cracks if crack.width is not None)
        return [c for c in held if c.steel_stress > c.developed * strength * (1 + 1e-9)]


def verdict(case: Case) -> Verdict:
    """Judge the widest crack against the limit of the chosen use."""
    bound = limit(case.member.code, case.member.exposure)
    if not case.cracks:
        return Verdict(UNCRACKED, None, bound, _("The stretch stays below what concrete can bear."))
    if case.unheld:
        return Verdict(UNHELD, None, bound, _unheld_reason(case))
    if case.overstrained or case.falls:
        return Verdict(YIELDS, None, bound, _yield_reason(case))
    return _width_verdict(case.cracks, bound)


def _unheld_reason(case: Case) -> str:
    crack = decisive(case.cracks, case.member.length / 2)
    if not case.member.layers:
        return _("There are no bars. The first crack goes right through.")
    if not _reaching(case.member, crack):
        return _("The bars end before they reach the crack: nothing crosses it.")
    if crack.face == "bottom":
        return _("The bottom cracks, but the bars lie in the top, where they are squeezed.")
    return _("The top cracks, but the bars lie in the bottom, where they are squeezed.")


def _reaching(member: Member, crack: Crack) -> list[Layer]:
    return [item for item in member.layers if item.start < crack.at < item.end]


def _yield_reason(case: Case) -> str:
    strained = case.overstrained
    if not strained:
        return _("The bars would hold, but the squeezed concrete is crushed.")
    if all(c.steel_stress <= case.member.yield_strength for c in strained):
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
    told = dict.fromkeys(found)  # layers alike are told of once
    return tuple(sorted(told, key=lambda caution: not caution.grave))


def _grave(case: Case):
    if case.unheld and case.falls:
        yield Caution("unheld", _("Nothing holds a crack here: it would break."), grave=True)
    elif case.unheld:
        text = _("Nothing holds a crack here: at best its neighbours keep it up.")
        yield Caution("unheld", text, grave=True)
    elif case.falls:
        yield Caution("falls", _("The load is more than it can carry: it would fall."), grave=True)
    yield from _unguarded(case)
    if min(case.reactions, default=0.0) < -1e-6 * sum(map(abs, case.reactions)):
        text = _("A support has to hold it down: unless it is tied there, it lifts off.")
        yield Caution("uplift", text, grave=True)
    yield from _useless_bars(case)


def _unguarded(case: Case):
    """Warn of concrete that has not cracked yet and has nothing behind it."""
    waiting = [zone for zone in case.zones if not zone.cracked and zone.peak > NEAR]
    if any(not _guarding(case.member, zone) for zone in waiting):
        text = _(
            "It has not cracked yet, but nothing would hold the first crack: it breaks without "
            "warning. Concrete alone must never be relied upon."
        )
        yield Caution("unguarded", text, grave=True)


def _guarding(member: Member, zone: TensionZone) -> list[Layer]:
    """Bars that cross the most stretched place of a zone on its stretched side."""
    middle = float(member.depth_at(zone.at)) / 2
    sense = 1 if zone.face == "bottom" else -1
    return [
        item
        for item in member.layers
        if item.start < zone.at < item.end
        and sense * (float(member.layer_depth(item, zone.at)) - middle) > 0
    ]


def _useless_bars(case: Case):
    """Tell of bars that run through an unheld crack squeezed, and of bars that end before it."""
    squeezed = {item.label for c in case.unheld for item in _reaching(case.member, c)}
    if squeezed:
        text = _("The {bars} lie on the squeezed side of a crack, where they do not hold it.")
        yield Caution("wrong_side", text.format(bars=_listed(case, squeezed)), grave=True)
    short = {i.label for c in case.unheld for i in case.member.layers if _ends_short(i, c)}
    if short:
        text = _("The {bars} end before they reach a crack that they should hold.")
        yield Caution("short", text.format(bars=_listed(case, short)), grave=True)


def _listed(case: Case, labels: set) -> str:
    named = dict.fromkeys(item.label for item in case.member.layers if item.label in labels)
    return _(" and ").join(named)


def _ends_short(item: Layer, crack: Crack) -> bool:
    return item.face == crack.face and not item.start < crack.at < item.end


def _bars_cautions(case: Case):
    yield from case.member.once("laid", partial(_laid, case.member))
    yield from _little_steel(case)
    if any(0 < c.developed < 1.0 - 1e-6 for c in case.cracks):
        yield Caution(
            "anchorage",
            _("Near their ends the bars can build up only part of their strength."),
        )


def _laid(member: Member) -> list[Caution]:
    """How the bars lie in the concrete, whatever the load."""
    found = []
    for item in member.layers:
        found += [*_cover_caution(member, item), *_spacing_caution(member, item)]
    return found


def _little_steel(case: Case):
    """Warn of bars that could not take over what the concrete lets go as it cracks."""
    for zone in case.zones:
        bars = _guarding(case.member, zone)
        if zone.peak <= NEAR or not bars:
            continue
        least, clause = least_steel(case.member, zone.face, zone.at, bars)
        if sum(item.area for item in bars) < 0.999 * least:
            text = _("Less steel than {clause} asks for: as it cracks, the bars may give way.")
            yield Caution("little_steel", text.format(clause=clause))
            return


def _cover_caution(member: Member, item: Layer):
    to_face = min(item.depth, member.section.depth - item.depth) - item.bar.diameter / 2
    cover = to_face if item.spacing else min(to_face, item.side_cover)
    place = member.code, member.exposure
    kind = "slab" if item.spacing else "beam"
    to_bars = least_cover(*place, item.bar.diameter, kind)
    # the stirrups lie outside the bars and rust first
    to_stirrups = least_cover(*place, item.wrap) if item.wrap else to_bars
    missing = max(to_bars.cover - cover, to_stirrups.cover - (cover - item.wrap))
    if missing > 0.5:
        text = _(
            "The {bars} have less cover than {clause} asks for in this place: rust comes early."
        )
        yield Caution("cover", text.format(bars=item.label, clause=to_bars.clause))


def _spacing_caution(member: Member, item: Layer):
    gap = member.clear_gap(item)
    if gap < 0:
        text = _("The {bars} do not fit side by side into the width.")
        yield Caution("no_room", text.format(bars=item.label), grave=True)
    elif gap < least_gap(member, item) - 0.5:
        text = _("The {bars} lie too close side by side: the stones do not pass between them.")
        yield Caution("spacing", text.format(bars=item.label))


def least_gap(member: Member, item: Layer) -> float:
    """Least clear distance that the code family asks for [mm]."""
    rule = least_clear_spacing_aci if member.code == "ACI" else least_clear_spacing_en
    return rule(item.bar.diameter, AGGREGATE)
