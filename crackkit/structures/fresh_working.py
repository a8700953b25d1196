"""The working of a fresh slab: how fast water leaves, and what alone would keep it at the limit."""

from collections.abc import Iterator

from crackkit.mechanics.evaporation_limits import LITTLE_BLEEDING
from crackkit.structures.fresh import USUAL, Drying
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _

SOURCE = "Uno 1998"


def working(it, state: Drying) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand; temperatures in °C, wind in km/h.

    Parameters
    ----------
    it : FreshSlab
    state : Drying
    """
    return (*_rate(it, state), *_limits(state), *_alone(it, state))


def _rate(it, state: Drying) -> Iterator[WorkingStep]:
    topic = _("How fast water leaves (formula in °C and km/h)")
    wet, air = (it.concrete + 18) ** 2.5, it.humidity * (it.air + 18) ** 2.5
    written = f"({it.concrete:.4g} + 18)^2.5"
    yield WorkingStep("A", "(T_c + 18)^2.5", written, f"{wet:.1f}", "", SOURCE, topic)
    written = f"{it.humidity:.3g} × ({it.air:.4g} + 18)^2.5"
    yield WorkingStep("B", "r × (T_a + 18)^2.5", written, f"{air:.1f}", "", SOURCE, topic)
    written = f"5 × ({wet:.1f} − {air:.1f}) × ({it.wind:.4g} + 4)/10^6"
    formula = "5 × (A − B) × (V + 4)/10^6" if state.rate > 0 else _("0, as B is not below A")
    yield WorkingStep("E", formula, written, state.rate, "mass_rate", SOURCE, topic)


def _limits(state: Drying) -> Iterator[WorkingStep]:
    topic, where = _("Against the rate from which precautions are asked for"), _("common practice")
    clause = _("ACI 305R, from memory")
    yield WorkingStep("E_lim", USUAL.label, "", USUAL.rate, "mass_rate", clause, topic)
    written = f"{state.rate:.4g}/{USUAL.rate:g}"
    yield WorkingStep("n", "E/E_lim", written, state.times, "ratio", "", topic)
    text = _("concrete that bleeds little")
    yield WorkingStep("E_low", text, "", LITTLE_BLEEDING, "mass_rate", where, topic)


def _alone(it, state: Drying) -> Iterator[WorkingStep]:
    topic, clause = _("What alone would bring it to that rate"), _("Uno 1998, solved for it")
    wet, air = (it.concrete + 18) ** 2.5, it.humidity * (it.air + 18) ** 2.5
    if wet > air:
        written = f"{USUAL.rate:g} × 10^6/(5 × {wet - air:.1f}) − 4"
        formula = "E_lim × 10^6/(5 × (A − B)) − 4"
        yield WorkingStep("V", formula, written, state.wind, "wind", clause, topic)
    demand = USUAL.rate * 1e6 / (5 * (it.wind + 4))
    written = f"{USUAL.rate:g} × 10^6/(5 × ({it.wind:.4g} + 4))"
    formula = "E_lim × 10^6/(5 × (V + 4))"
    yield WorkingStep("D", formula, written, f"{demand:.1f}", "", clause, topic)
    written = f"({demand:.1f} + {air:.1f})^0.4 − 18"
    yield WorkingStep("T_c", "(D + B)^0.4 − 18", written, state.concrete, "warmth", clause, topic)
    written = f"({wet:.1f} − {demand:.1f})/({it.air:.4g} + 18)^2.5"
    formula = "(A − D)/(T_a + 18)^2.5"
    yield WorkingStep("r", formula, written, state.humidity, "ratio", clause, topic)
