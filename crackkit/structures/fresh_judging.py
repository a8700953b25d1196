"""The verdict on a fresh slab, its cautions, and the numbers that sum it up."""

from crackkit.structures.fresh import USUAL, Drying
from crackkit.structures.outcome import (
    BE_READY,
    DRIES_OUT,
    STAYS_WET,
    Caution,
    Told,
    Verdict,
)
from crackkit.words import _

GALE = 200.0  # km/h: beyond it no wind is meant
COLD, HOT = 5.0, 35.0  # degC of air and of concrete, from which more is to be thought of
WARMER = 5.0  # degrees by which concrete is warmer than the air, and that is worth a word

WHY = {
    DRIES_OUT: _("Water leaves faster than most concrete bleeds: protect it at once, or wait."),
    BE_READY: _("Most concrete bleeds faster, but not one that bleeds little: be ready."),
    STAYS_WET: _("Bleed water keeps its face wet: little leaves."),
}


def verdict(state: Drying) -> Verdict:
    """Judge how fast water leaves against the rate from which precautions are asked for."""
    why = WHY[state.level] if state.rate > 0 else _("No water leaves: dew would fall on it.")
    return Verdict(state.level, None, USUAL, why)


def cautions(it, state: Drying) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first."""
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. How fast "
        "concrete bleeds depends on its mix and is not worked out here. The wind is that half a "
        "metre above the concrete, not that of the forecast; sun on it counts as warmer concrete."
    )
    return (*_drying(state), *_temperatures(it, state), Caution("estimate", text))


def _drying(state: Drying):
    if state.level == STAYS_WET:
        return
    text = _(
        "Plastic shrinkage: half an hour to six hours after placing, before the concrete is hard, "
        "it can tear, up to 3 mm (0.12 in) wide and right through. Bars do not stop these cracks: "
        "fresh concrete does not grip them yet."
    )
    yield Caution("plastic", text, grave=state.level == DRIES_OUT)
    text = _(
        "What helps: wind breaks, shade, fog over it but no water worked in, an evaporation "
        "retarder, sheets at once, curing right after finishing, cooler concrete, a start at dusk "
        "(common practice)."
    )
    yield Caution("help", text)


def _temperatures(it, state: Drying):
    if it.concrete - it.air > WARMER and state.level != STAYS_WET:
        text = _("The concrete is warmer than the air: so it dries fast on a cool day too.")
        yield Caution("warmer", text)
    if it.concrete > HOT:
        text = _("Concrete above 35 °C (95 °F) is turned away on many sites (common practice).")
        yield Caution("hot", text)
    if it.air < COLD:
        text = _("Below 5 °C (41 °F) fresh concrete must be kept from frost (common practice).")
        yield Caution("cold", text)


def numbers(state: Drying) -> tuple[Told, ...]:
    """Give the numbers that sum it up; the last three tell where one cause alone reaches it."""
    return (
        Told("rate", _("water leaves"), state.rate, "mass_rate"),
        Told("limit", _("limit: precautions"), USUAL.rate, "mass_rate"),
        Told("times", _("times the limit"), state.times, "ratio"),
        Told("wind", _("limit at a wind of"), _wind(state), "wind"),
        Told("concrete", _("limit at concrete of"), state.concrete, "warmth"),
        Told("humidity", _("limit at humidity of"), _humidity(state), "ratio"),
    )


def _wind(state: Drying) -> float | str:
    if state.wind < 0:
        return _("even still air")
    return state.wind if state.wind < GALE else _("never")


def _humidity(state: Drying) -> float | str:
    if state.humidity > 1:
        return _("even in fog")
    return state.humidity if state.humidity > 0 else _("never")
