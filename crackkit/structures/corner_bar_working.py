"""The working of the bars across the crack of a slab with inside corners: bond, stress, pull."""

import math
from collections.abc import Iterator

from crackkit.mechanics.bars import bar
from crackkit.mechanics.bars_across_crack import FINE
from crackkit.mechanics.concrete import mean_strength_en
from crackkit.structures.corner_bars import laid_bars, layout
from crackkit.structures.corner_history import opened, steps_to
from crackkit.structures.hand_step import by_hand, under, written
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _

IN_FULL, IN_SHORT = 2, 4  # bars that are told step by step, and by their stress alone
KINDS = {"diagonal": _("diagonal"), "edge": _("along a side"), "mat": _("of the mat")}
BOND = _("Model Code 2010 Table 6.1-1, good bond, from memory")


def bar_steps(it) -> Iterator[WorkingStep]:
    """List the steps of the bars that pull hardest.

    Parameters
    ----------
    it : CornerSlab
    """
    held, laid = opened(it, steps_to(it, it.age)), laid_bars(layout(it))
    met, stresses = held.crack.bars, held.bar_stresses.tolist() if held.crack.bars else []
    order = sorted(range(len(met)), key=lambda k: -stresses[k])
    for place, k in enumerate(order[:IN_FULL], 1):
        here = laid[met[k].number]
        topic = _("Across the crack, bar {n}: {bar}").format(n=place, bar=_named(here))
        v = _known(it, here, met[k], float(held.elongations[k]))
        yield from under(topic, _steps(v, stresses[k]))
    topic = _("More bars across the crack")
    for k in order[IN_FULL : IN_FULL + IN_SHORT]:
        yield from under(topic, _short(laid[met[k].number], stresses[k]))


def _named(here) -> str:
    """A bar by its kind and the name of its size: ``diagonal, #5`` or ``diagonal, 16 mm``."""
    return f"{KINDS[here.kind]}, {dict(BAR_SIZES)[here.size]}"


def _short(here, stress: float) -> Iterator[WorkingStep]:
    size = bar(here.size)
    v = {"A_b": size.area, "sigma_s": stress}
    yield by_hand(
        "d_b", _("diameter, {bar}").format(bar=_named(here)), "", v, size.diameter, "size"
    )
    yield by_hand("A_b", _("area"), "", v, size.area, "area")
    text = _("stress in it at the crack, worked out in the same way")
    yield by_hand("sigma_s", text, "", v, stress, "stress")
    yield by_hand("F", _("what it pulls"), "A_b*sigma_s", v, v["A_b"] * stress, "force")


def _known(it, here, crossing, elongation: float) -> dict[str, float]:
    size, law = bar(here.size), crossing.bar.bond
    e = max(elongation, 0.0)
    s = 0.5 * max(e, FINE)
    return {
        "f_cm28": float(mean_strength_en(it.strength)),
        "d_b": size.diameter,
        "A_b": size.area,
        "c": here.clear,
        "k_c": min(math.sqrt(here.clear / (5.0 * size.diameter)), 1.0),
        "tau_1": law.peak,
        "s_1": law.peak_slip,
        "tau_f": law.friction,
        "s_2": law.level_end,
        "s_3": law.friction_slip,
        "e": e,
        "s": s,
        "W": float(law.work(s)),
        "tau": float(min(law.stress(s), law.peak)),
        "l": crossing.anchorage,
        "E_s": crossing.bar.modulus,
        "f_y": crossing.bar.yield_stress,
    }


def _steps(v: dict, stress: float) -> Iterator[WorkingStep]:
    yield by_hand("d_b", _("diameter"), "", v, v["d_b"], "size")
    yield by_hand("A_b", _("area"), "", v, v["A_b"], "area")
    yield from _bond(v)
    where = _("finite elements: mean over 20 diameters on each side; not for hand calculation")
    text = _("how far the crack has drawn it out")
    yield by_hand("e", text, "", v, v["e"], "width", where)
    least = f"max(e, {FINE:g})" if v["e"] < FINE else "e"
    text, where = _("slip at either face of the crack"), _("half of it on each side")
    yield by_hand("s", text, f"{least}/2", v, v["s"], "width", where)
    text = _("work of bond on a square millimetre up to that slip, integral of tau ds, in N/mm")
    told = _("{n} N/mm").format(n=written(v["W"]))
    yield by_hand("W", text, _work(v), v, told, "plain", BOND)
    yield from _stress(v, stress)


def _bond(v: dict) -> Iterator[WorkingStep]:
    text = _("concrete beside it, to the nearest face or side")
    yield by_hand("c", text, "", v, v["c"], "size")
    text = _("share of bond before thin cover splits")
    where = _("after Model Code 2010 6.1.1.3 and 6.1.3.3, from memory")
    yield by_hand("k_c", text, "min(sqrt(c/(5*d_b)), 1)", v, v["k_c"], "plain", where)
    text, formula = _("greatest bond stress"), "k_c*2.5*sqrt(f_cm28)"
    yield by_hand("tau_1", text, formula, v, v["tau_1"], "strength", BOND)
    text = _("slip that goes with it, in mm")
    yield by_hand("s_1", text, "k_c**(1/0.4)", v, v["s_1"], "size", BOND)
    if v["s"] > v["s_2"]:
        text, formula = _("bond stress left when ribs have sheared off"), "min(sqrt(f_cm28), tau_1)"
        yield by_hand("tau_f", text, formula, v, v["tau_f"], "strength", BOND)
        yield by_hand("s_2", _("slip from which bond falls"), "", v, v["s_2"], "size", BOND)
        text, formula = _("and at which it has fallen: distance of the ribs"), "max(d_b/2, 2)"
        yield by_hand("s_3", text, formula, v, v["s_3"], "size", _("common practice"))


def _work(v: dict) -> str:
    if v["s"] <= v["s_1"]:
        return "tau_1*s_1*(s/s_1)**1.4/1.4"
    level = "tau_1*(s_1/1.4 + s - s_1)"
    if v["s"] <= v["s_2"]:
        return level
    if v["s"] <= v["s_3"]:
        return f"{level} - (tau_1 - tau_f)*(s - s_2)**2/(2*(s_3 - s_2))"
    return f"{level} - (tau_1 - tau_f)*((s_3 - s_2)/2 + s - s_3)"


def _stress(v: dict, stress: float) -> Iterator[WorkingStep]:
    long = math.sqrt(8.0 * v["E_s"] / v["d_b"] * v["W"])
    text, where = _("stress of a long bar"), _("Balazs 1993, from memory")
    here = v | {"sigma_l": long}
    yield by_hand("E_s", _("modulus of steel"), "", v, v["E_s"], "strength")
    yield by_hand("sigma_l", text, "sqrt(8*E_s/d_b*W)", v, long, "stress", where)
    yield by_hand("l", _("its shorter end, in the concrete"), "", v, v["l"], "size")
    yield by_hand("tau", _("bond stress at that slip"), _tau(v), v, v["tau"], "strength", BOND)
    here["sigma_e"] = math.pi * v["d_b"] * v["l"] * v["tau"] / v["A_b"]
    text, where = _("stress at which that end slips as a whole"), _("balance of forces")
    formula = "pi*d_b*l*tau/A_b"
    yield by_hand("sigma_e", text, formula, v, here["sigma_e"], "stress", where)
    yield by_hand("f_y", _("it yields at"), "", v, v["f_y"], "stress")
    formula = "min(sigma_l, sigma_e, f_y)"
    if v["e"] < FINE:
        formula += f"*e/{FINE:g}"
    text, where = _("stress in the bar at the crack"), _("the least of the three")
    yield by_hand("sigma_s", text, formula, here, stress, "stress", where)
    here["sigma_s"] = stress
    text = _("what it pulls")
    yield by_hand("F", text, "A_b*sigma_s", here, v["A_b"] * stress, "force")


def _tau(v: dict) -> str:
    if v["s"] <= v["s_1"]:
        return "tau_1*(s/s_1)**0.4"
    if v["s"] <= v["s_2"]:
        return "tau_1"
    if v["s"] <= v["s_3"]:
        return "tau_1 - (tau_1 - tau_f)*(s - s_2)/(s_3 - s_2)"
    return "tau_f"
