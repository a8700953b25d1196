"""The working of a choice of bars: load, stress, cover, rust and the crack width, step by step."""

import math
from collections.abc import Iterator

from crackkit.mechanics.carbonation import water_cement_of
from crackkit.mechanics.concrete import mean_strength_en
from crackkit.structures.control import Control
from crackkit.structures.control_judging import years_told
from crackkit.structures.outcome import WorkingStep
from crackkit.structures.strip_stress import BENT, StripStress
from crackkit.structures.width_working import width_steps
from crackkit.words import _


def working(it, found: Control) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    it : CrackControl
    found : Control
    """
    steps = [*_steel(it, found), *_load(it, found), *_placing(it, found), *_rust(it, found)]
    return (*steps, *width_steps(found.worse.answers, it.code))


def _steel(it, found: Control) -> Iterator[WorkingStep]:
    topic, bars = _("Concrete and steel"), found.main.bars
    yield WorkingStep("f_c", _("cylinder strength"), "", it.strength, "strength", "", topic)
    text = _("modulus of the concrete")
    yield WorkingStep("E_c", text, "", found.strip.modulus, "strength", "", topic)
    text = _("main bars near the face, in the strip")
    yield WorkingStep("A_s", text, "", float(bars.area), "area", "", topic)
    if it.residual:
        f_R1 = it.tested[0]
        yield WorkingStep(
            "f_Fts",
            "0.45*f_R1",
            f"0.45*{f_R1:g}",
            it.residual,
            "strength",
            _("MC2010 5.6.4, from memory"),
            topic,
        )


def _load(it, found: Control) -> Iterator[WorkingStep]:
    topic = _("Load and pull in the bars")
    symbol, quantity = ("M", "moment") if it.action == BENT else ("N", "force")
    yield WorkingStep(symbol, _("on the strip"), "", found.load, quantity, "", topic)
    text = _("at which the concrete cracks, bars left out")
    yield WorkingStep(f"{symbol}_cr", text, "", found.strip.cracks_at, quantity, "", topic)
    if found.across is not None:
        yield from _held(it, found.main.held, _("The main bars"))
        yield from _held(it, found.across.held, _("The bars across"))
    else:
        yield from _held(it, found.main.held, topic)


def _held(it, held: StripStress, topic: str) -> Iterator[WorkingStep]:
    """The stress in the bars of one direction, by the balance of a cracked section."""
    yield WorkingStep("d", _("far face to the bars"), "", float(held.d), "size", "", topic)
    if it.action == BENT:
        text = _("depth of the squeezed part")
        yield WorkingStep("x", text, "", float(held.axis), "size", _("cracked section"), topic)
    text = _("pull in the bars, fibres left out")
    yield WorkingStep("sigma_s0", text, "", float(held.alone), "stress", "", topic)
    if it.residual:
        text = _("pull that the fibres leave to the bars")
        clause = _("balance of forces with f_Fts across the crack")
        yield WorkingStep("sigma_s", text, "", float(held.stress), "stress", clause, topic)


def _placing(it, found: Control) -> Iterator[WorkingStep]:
    topic = _("How they lie")
    text = _("clear between the bars")
    yield WorkingStep("g", text, "", float(found.main.bars.gap), "size", "", topic)
    clause = "EN 1992-1-1 8.2(2)" if it.code == "EN" else "ACI 318-19 25.2.1"
    yield WorkingStep(
        "g_min", _("so that the stones pass"), "", found.least_gap, "size", clause, topic
    )
    if math.isfinite(found.widest):
        clause = "EN 1992-1-1 9.3.1.1(3)" if it.code == "EN" else "ACI 318-19 7.7.2.3, 24.3.2"
        text = _("largest distance in a slab")
        yield WorkingStep("s_max", text, "", found.widest, "size", clause, topic)
    text, asked = _("cover that is asked for"), found.asked
    yield WorkingStep("c_min", text, "", asked.cover, "size", asked.clause, topic)
    least, clause = found.least_steel
    yield WorkingStep("A_s,min", _("least steel"), "", least, "area", clause, topic)


def _rust(it, found: Control) -> Iterator[WorkingStep]:
    topic, clause = _("Rust"), _("fib Bulletin 34 (2006) B1, from memory; indicative")
    mix = float(water_cement_of(mean_strength_en(it.strength)))
    text = _("water over cement that the strength hints at")
    yield WorkingStep("w/c", text, "", mix, "plain", _("common practice"), topic)
    text = _("years until the air has worked in as far as the bars, laid too high")
    yield WorkingStep("t", text, "", years_told(found.fewest_years), "plain", clause, topic)
