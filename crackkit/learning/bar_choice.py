"""The lesson on choosing bars: its scene, its walk, and what it promises."""

from crackkit.learning.choice_steps import (
    deep_step,
    fibre_step,
    off_step,
    pulled_step,
    shallow_step,
    thinner_step,
    thinner_still_step,
)
from crackkit.learning.finish import Needs
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE
from crackkit.units.quantities import INCH, PSI
from crackkit.words import _

LESSON = "05_bar_choice"
NEEDS = Needs(
    LESSON, calls=("thinner", "cover", "rust", "fibres"), passed=("wash_floor",), answers=5
)
_COMMON = {"exposure": "moist", "air": "roofed", "curing": 1.0, "duration": "lasting"}
# A strip of 1 m of the deck: 250 mm, thick bars far apart as they came from the yard.
_IN_METRES = {
    "size": "16",
    "spacing": 180.0,
    "cross_size": "10",
    "cross_spacing": 200.0,
    "cover": 30.0,
    "stress": 320.0,
    "width": 1000.0,
    "depth": 250.0,
    "strength": 25.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: a strip of 1 ft, 10 in deep.
_IN_FEET = {
    "size": "#5",
    "spacing": 8 * INCH,
    "cross_size": "#4",
    "cross_spacing": 9 * INCH,
    "cover": 1.5 * INCH,
    "stress": 36_000 * PSI,
    "width": 12 * INCH,
    "depth": 10 * INCH,
    "stones": 0.75 * INCH,
    "strength": 3500 * PSI,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
COVER = {"SI": (15.0, 30.0, 50.0), "US": (0.75 * INCH, 1.5 * INCH, 2.5 * INCH)}
OFF = {"SI": 15.0, "US": 0.5 * INCH}  # how far bars may lie off where nobody minds


def slab(system: str = "SI") -> CrackControl:
    """Give a strip of the deck on which boats are rinsed, in round numbers, as it lies there."""
    return CrackControl(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)


def thinner(structure: CrackControl, times: int = 1) -> CrackControl:
    """Lay the same steel as thinner bars closer by, so many sizes down.

    Raises
    ------
    ValueError
        If there are no thinner bars.
    """
    for _again in range(times):
        changes = structure.counts[0].changes
        if not changes:
            raise ValueError(_("There are no thinner bars."))
        structure = fitted(structure, changes)[0]
    return structure


def fine_slab(system: str = "SI") -> CrackControl:
    """Give the same deck with the same steel, two sizes thinner: where the walk goes on."""
    return thinner(slab(system), 2)


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    first, second, fine = slab(system), thinner(slab(system)), fine_slab(system)
    less, _usual, more = COVER[system]
    start = _start(fine)
    return (
        thinner_step(first, second, system),
        thinner_still_step(second, fine, system),
        deep_step(fine, start, more, system),
        shallow_step(fine, start, less, system),
        off_step(fine, start, OFF[system], system),
        fibre_step(fine, start, system),
        pulled_step(fine, start, system),
    )


def _start(fine: CrackControl) -> dict:
    """What brings the panel back to the deck with thin bars."""
    names = ("size", "spacing", "cover", "slack", "fibres", "action")
    return {name: getattr(fine, name) for name in names}


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _bar_promises(system) | _cover_promises(system) | _other_promises(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found


def after(system: str, step: int):
    """Give the Outcome after a step of the walk, counted from 0."""
    return fitted(slab(system), walk(system)[step].changes)[0].solve()


def _bar_promises(system: str) -> dict[str, bool]:
    thick, mid, thin = slab(system).solve(), after(system, 0), after(system, 1)
    wide = [width(each) for each in (thick, mid, thin)]
    steel = [each.control.main.bars.area for each in (thick, mid, thin)]
    pull = [stress(each) for each in (thick, mid, thin)]
    return {
        "few thick bars leave too wide a crack": thick.verdict.key == TOO_WIDE,
        "they break no other rule": warned(thick) == {"estimate"},
        "the steel stays the same, nearly": max(steel) < 1.03 * min(steel),
        "and so does the pull": max(pull) == min(pull),
        "each step makes it finer": wide[0] > 1.06 * wide[1] > 1.06**2 * wide[2],
        "two sizes thinner hold it": thin.verdict.key == TIGHT,
        "all rules together agree": _middle(thin) < _middle(mid) < _middle(thick),
        "cracks come closer": thin.control.main.spacing < thick.control.main.spacing,
        "thin bars break no rule either": warned(thin) == {"estimate"},
    }


def _cover_promises(system: str) -> dict[str, bool]:
    fine, deep, shallow = (after(system, k) for k in (1, 2, 3))
    off, years = after(system, 4), [each.control.years for each in (shallow, fine, deep)]
    told = _years(shallow)
    return {
        "deeper bars open it at the face": deep.verdict.key == TOO_WIDE,
        "by a quarter and more": width(deep) > 1.25 * width(fine),
        "bars near the face make it finer": width(shallow) < 0.8 * width(fine),
        "but rust comes within a lifetime": years[0] < 60.0 < 100.0 < years[1] < years[2],
        "half the cover leaves a quarter of the years": abs(years[1] / years[0] / 4 - 1) < 0.05,
        "and the rules say so": "cover" in warned(shallow) and "about" in told,
        "bars too deep open it by a quarter to two fifths": 1.2 < width(off) / width(fine) < 1.42,
        "bars too high lose more than half of the years": off.control.fewest_years
        < 0.5 * off.control.years,
        "a week of curing is worth three times the years": 2.7
        < _cured(system, 7.0) / _cured(system, 1.0)
        < 3.3,
    }


def _other_promises(system: str) -> dict[str, bool]:
    fine, fibres, pulled = (after(system, k) for k in (1, 5, 6))
    return {
        "fibres leave less pull to the bars": stress(fibres) < 0.85 * stress(fine),
        "and bars are still needed": stress(fibres) > 0.3 * stress(fine),
        "without bars it would come down": _alone(fibres) < 0.7 * fibres.control.load,
        "cracks come closer with fibres": fibres.control.main.spacing
        < 0.95 * fine.control.main.spacing,
        "the dose is only indicative": "dose" in warned(fibres),
        "one rule knows them": len(fibres.control.main.band.by_rule) == 1,
        "a straight pull at the same stress": stress(pulled) == stress(fine),
        "it cracks through and through": pulled.tension[0].face == "both"
        and pulled.cracks[0].path[-1][1] == 0.0,
        "farther apart": pulled.control.main.spacing > 1.2 * fine.control.main.spacing,
        "and the rules reach farther up": pulled.control.main.band.high
        > 1.2 * fine.control.main.band.high,
        "about as wide at least by the rule that judges": width(pulled) > 0.95 * width(fine),
        "bars in both faces weigh twice": abs(pulled.steel_mass / fine.steel_mass - 2) < 1e-9,
    }


def width(outcome) -> float:
    """Width by the rule that governs [mm]."""
    return outcome.control.worse.band.governing


def stress(outcome) -> float:
    """Pull in the main bars [MPa]."""
    return round(float(outcome.control.main.held.stress), 9)


def warned(outcome) -> set[str]:
    """Keys of its cautions."""
    return {caution.key for caution in outcome.cautions}


def _alone(outcome) -> float:
    """Moment that its fibres would carry without any bar, f b h^2/2 [N mm]."""
    it = outcome.structure
    return it.residual * it.width * it.depth**2 / 2


def _cured(system: str, days: float) -> float:
    """Years until rust of the deck, kept moist for so many days."""
    return fitted(fine_slab(system), {"curing": days})[0].solve().control.years


def _middle(outcome) -> float:
    return outcome.control.main.band.middle


def _years(outcome) -> str:
    return next(each.value for each in outcome.numbers if each.key == "years")
