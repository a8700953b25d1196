"""The working of an inside corner and its crack: what a hand can check beside finite elements."""

import math
from collections.abc import Iterator

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.mechanics.cohesive_law import CohesiveLaw, bridged_by_fibres
from crackkit.mechanics.drag import drag_stress
from crackkit.structures.corner_rest import residuals
from crackkit.structures.corner_restraint import restraint
from crackkit.structures.cornered import Cornered
from crackkit.structures.cornering import HAIR, SCATTER, TORN
from crackkit.structures.hand_step import by_hand
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _

LEAST = 0.01  # MPa: what is pulled less is not compared
ELEMENTS = _("finite elements, plane stress: not for hand calculation")
COHESIVE = _("finite elements with a cohesive crack: not for hand calculation")


def corner_steps(it, state: Cornered) -> Iterator[WorkingStep]:
    """List the steps to how hard the corner is pulled before it cracks.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    v = _known(it, state)
    text, formula = _("length over which its tension is averaged"), "2/pi*E*G_F/f_t**2"
    where = _("Hillerborg and others 1976, from memory: E × G_F/f_t²; the mean of K/sqrt(2 pi r)")
    yield by_hand("d", text, formula, v, state.material_length, "size", where)
    length = math.dist(state.corner.at, state.corner.end)
    if length < state.material_length - 1.0:
        text = _("as much of it as there is concrete ahead")
        yield by_hand("d_a", text, "", v, length, "size")
    text, where = _("if all of it were held, one way, far from any corner"), _("Hooke's law")
    yield by_hand("sigma_0", text, "E*eps", v, v["sigma_0"], "strength", where)
    yield from _plain_strip(it, v)
    text = _("mean tension across the coming crack over that length")
    yield by_hand("sigma", text, "", v, v["sigma"], "strength", ELEMENTS)
    text = _("of a fully held strip: the corner gathers the pull, so it can be above 1")
    if v["sigma_0"] > LEAST:
        share = v["sigma"] / v["sigma_0"]
        yield by_hand("sigma/sigma_0", text, "sigma/sigma_0", v, share, "plain")
    text = _("over the strength: from about 1 on a crack runs")
    yield by_hand("sigma/f_t", text, "sigma/f_t", v, state.share, "plain")


def _known(it, state: Cornered) -> dict[str, float]:
    crack = state.crack
    return {
        "E": state.modulus,
        "eps": state.free,
        "f_t": state.strength,
        "G_F": state.toughness,
        "sigma": state.corner.mean,
        "sigma_0": state.modulus * state.free,
        "L": it.length,
        "B": it.width,
        "w": crack.widest,
        "w_0": float(crack.bare.max()),
        "w_1": state.toughness / state.strength,
    }


def _plain_strip(it, v: dict) -> Iterator[WorkingStep]:
    """The same slab as a strip without a corner."""
    by = restraint(it)
    if by.held == "base":
        under = base(by.base)
        here = {"mu": under.coefficient, "g": slab_weight(1.0), "L": it.length}
        where = f"{under.source}, {under.where}"
        yield by_hand("mu", _("drag over weight"), "", here, here["mu"], "plain", where)
        text, where = _("weight of concrete, in N/mm³"), _("common practice")
        yield by_hand("g", text, "", here, f"{here['g']:.8f} N/mm³", "plain", where)
        yield by_hand("L", _("length"), "", here, it.length, "size")
        text = _("a strip of that length that slides all along, at its middle at most")
        stress = float(drag_stress(under.coefficient, it.length, here["g"]))
        yield by_hand("sigma_b", text, "mu*g*L/2", here, stress, "strength", _("balance of forces"))
    elif by.held in ("ends", "edges"):
        here = v | {"R": by.degree}
        yield by_hand("R", _("held fast"), "", here, by.degree, "plain")
        text, where = _("a plain strip held so, one way"), _("ACI 207.2R, from memory")
        stress = by.degree * v["sigma_0"]
        yield by_hand("sigma_R", text, "R*sigma_0", here, stress, "strength", where)


def crack_steps(it, state: Cornered) -> Iterator[WorkingStep]:
    """List the steps of the crack: when it counts as run, how wide, beside what a hand can check.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    v, crack = _known(it, state), state.crack
    text = _("opening by which torn concrete has lost four fifths of its strength")
    where = _("Model Code 2010 5.1.8.2, from memory")
    yield by_hand("w_1", text, "G_F/f_t", v, v["w_1"], "width", where)
    text, where = _("opening from which it counts as having run"), _("our choice")
    yield by_hand("w_run", text, f"{TORN:g}*w_1", v, TORN * v["w_1"], "width", where)
    yield from _across(v)
    text = _("greatest opening without bars, fibres and joint")
    yield by_hand("w_0", text, "", v, _gaping(v["w_0"]), "width", COHESIVE)
    text = _("greatest opening as laid")
    yield by_hand("w", text, "", v, _gaping(v["w"]), "width", COHESIVE)
    if v["w"] < HAIR:
        return
    if v["w_0"] >= HAIR:
        yield by_hand("w/w_0", _("what is left of it"), "w/w_0", v, v["w"] / v["w_0"], "plain")
    yield from _scattered(crack)
    text = _("length over which it gapes by more than a hair, 0.01 mm")
    yield by_hand("a", text, "", v, crack.length, "length", COHESIVE)
    yield from _faces(it, state, v)


def _gaping(width: float) -> float | str:
    return width if width >= HAIR else _("less than a hair, {n:g} mm").format(n=HAIR)


def _scattered(crack) -> Iterator[WorkingStep]:
    """How wide real cracks may be, beyond a saw cut or joint if there is one."""
    if crack.band is None:
        return
    width, letter = crack.band.governing, "w"
    if crack.saw:
        text, letter = _("greatest opening beyond the cut"), "w_b"
        yield by_hand("w_b", text, "", {}, width, "width", COHESIVE)
    text, where = _("real cracks scatter, up to"), _("common practice")
    formula = f"{SCATTER:g}*{letter}"
    yield by_hand("w_high", text, formula, {letter: width}, crack.band.high, "width", where)


def _across(v: dict) -> Iterator[WorkingStep]:
    """All shortening of the diagonal of the slab, in one crack."""
    if v["eps"] <= 0.0:
        return
    yield by_hand("L", _("length"), "", v, v["L"], "size")
    yield by_hand("B", _("width"), "", v, v["B"], "size")
    all_of_it = v["eps"] * math.hypot(v["L"], v["B"])
    text = _(
        "all shortening between the far corners in one crack: a measure, no bound, "
        "for parts that turn gape wider"
    )
    yield by_hand("w_all", text, "eps*sqrt(L**2 + B**2)", v, all_of_it, "width", _("geometry"))


def _faces(it, state: Cornered, v: dict) -> Iterator[WorkingStep]:
    """What torn concrete and fibres still carry where the crack is widest."""
    if it.joint == "saw":
        here = {"f_t": v["f_t"], "c": it.cut_depth}
        yield by_hand(
            "c", _("depth of the saw cut over the thickness"), "", here, here["c"], "plain"
        )
        text, left = _("strength that the saw cut leaves"), (1.0 - it.cut_depth) * v["f_t"]
        where = _("strength of what is left over the whole thickness")
        yield by_hand("f_left", text, "(1 - c)*f_t", here, left, "strength", where)
    if it.joint != "none":
        return
    here, where = v | _fibres(it, v), _("Model Code 2010 5.1.8.2, from memory")
    if it.fibres != "none":
        yield from _fibre_steps(here)
        where = _("Model Code 2010 5.1.8.2 and 5.6.4, from memory")
    law = CohesiveLaw(v["f_t"], v["G_F"], "bilinear", (here["f_Fts"], here["f_Ftu"]))
    text = _("what the faces still carry where it is widest, while it opens")
    formula = _law_told(v) if it.fibres == "none" else f"max({_law_told(v)}, {_line(here)})"
    stress = float(law.stress(v["w"])[0])
    yield by_hand("sigma_w", text, formula, here, stress, "strength", where)


def _law_told(v: dict) -> str:
    if v["w"] < v["w_1"]:
        return "f_t*(1 - 0.8*w/w_1)"
    return "f_t*max(0.25 - 0.05*w/w_1, 0)"


def _fibres(it, v: dict) -> dict[str, float]:
    f_R1, f_R3 = residuals(it)
    first, last = bridged_by_fibres(f_R1, f_R3)
    return {"f_R1": f_R1, "f_R3": f_R3, "f_Fts": min(first, v["f_t"]), "f_Ftu": last}


def _fibre_steps(v: dict) -> Iterator[WorkingStep]:
    yield by_hand(
        "f_R1", _("residual strength at 0.5 mm"), "", v, v["f_R1"], "strength", "EN 14651"
    )
    yield by_hand(
        "f_R3", _("residual strength at 2.5 mm"), "", v, v["f_R3"], "strength", "EN 14651"
    )
    where = _("Model Code 2010 5.6.4, from memory")
    text, formula = _("what fibres carry across a fine crack"), "min(0.45*f_R1, f_t)"
    yield by_hand("f_Fts", text, formula, v, v["f_Fts"], "strength", where)
    text, formula = _("and across one of 2.5 mm"), "0.5*f_R3 - 0.2*f_R1"
    yield by_hand("f_Ftu", text, formula, v, v["f_Ftu"], "strength", where)


def _line(v: dict) -> str:
    reach = "min(w/2.5, 1)" if v["f_Ftu"] > v["f_Fts"] else "w/2.5"
    return f"f_Fts - (f_Fts - f_Ftu)*{reach}"
