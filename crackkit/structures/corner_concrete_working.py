"""The working of the concrete of a slab with inside corners: strength, creep, toughness."""

from collections.abc import Iterator

from crackkit.mechanics import creep_aci, creep_en
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.restraint_stress import AGEING
from crackkit.mechanics.strength_in_time import (
    concrete_in_time,
    strength_share_en,
    strength_share_moist,
)
from crackkit.mechanics.us_customary import PSI
from crackkit.structures.cornered import Cornered
from crackkit.structures.hand_step import by_hand, written
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def concrete_steps(it, v: dict, state: Cornered) -> Iterator[WorkingStep]:
    """List the steps from the strength at 28 days to strength, modulus and toughness now.

    Parameters
    ----------
    it : CornerSlab
    v : dict
        See `corner_given.known`.
    state : Cornered
    """
    grown = concrete_in_time(it.age, it.hardened, it.code)
    share = float(grown.compressive) / it.hardened.mean_strength
    v = v | {
        "beta": share,
        "f_t28": it.hardened.tensile,
        "E_28": it.hardened.modulus,
        "E_0": float(concrete_in_time(v["t_0"], it.hardened, it.code).modulus),
        "beta_0": _share(it, v["t_0"]),
        "chi": AGEING,
        "phi": _creep(it, v),
        "f_cm": share * v["f_cm28"],
        "psi": PSI,
    }
    yield from (_hardening_en if it.code == "EN" else _hardening_aci)(v, state)
    yield from _stiffness(it, v, state)
    text = _("mean strength at this age")
    where = "EN 1992-1-1 (3.1)" if it.code == "EN" else _("our choice: it grows as f_c does")
    yield by_hand("f_cm", text, "beta*f_cm28", v, v["f_cm"], "strength", where)
    text = _("work to tear a square millimetre, in N/mm")
    where = _("Model Code 2010 5.1.5.2 (73 f_cm^0.18 in N/m), from memory")
    told = _("{n} N/mm").format(n=f"{state.toughness:.4f}")
    yield by_hand("G_F", text, "0.073*f_cm**0.18", v, told, "plain", where)


def _share(it, age: float) -> float:
    grown = strength_share_en if it.code == "EN" else strength_share_moist
    return float(grown(age))


def _creep(it, v: dict) -> float:
    if v["t"] <= v["t_0"]:
        return 0.0
    return float(creep_at_loading(it.slab, it.hardened, it.code)(v["t"], v["t_0"]))


def _hardening_en(v: dict, state: Cornered) -> Iterator[WorkingStep]:
    text = _("strength now over that at 28 days, cement class N")
    formula, where = "exp(0.25*(1 - sqrt(28/t)))", _("EN 1992-1-1 (3.2), from memory")
    yield by_hand("beta", text, formula, v, v["beta"], "plain", where)
    formula = "0.30*f_c**(2/3)" if v["f_c"] <= 50 else "2.12*ln(1 + f_cm28/10)"
    text, where = _("strength in direct tension at 28 days"), "EN 1992-1-1 Table 3.1"
    yield by_hand("f_t28", text, formula, v, v["f_t28"], "strength", where)
    formula = "beta*f_t28" if v["t"] < 28 else "beta**(2/3)*f_t28"
    text, where = _("strength in direct tension at this age"), _("EN 1992-1-1 (3.4), from memory")
    yield by_hand("f_t", text, formula, v, state.strength, "strength", where)
    text, formula = _("modulus at 28 days"), "22000*(f_cm28/10)**0.3"
    yield by_hand("E_28", text, formula, v, v["E_28"], "strength", "EN 1992-1-1 Table 3.1")


def _hardening_aci(v: dict, state: Cornered) -> Iterator[WorkingStep]:
    text = _("strength now over that at 28 days, cement type I")
    formula, where = "t/(4 + 0.85*t)", _("ACI 209R-92 Eq. 2-1, from memory")
    yield by_hand("beta", text, formula, v, v["beta"], "plain", where)
    text = _("a pound per square inch in MPa")
    yield by_hand("psi", text, "", v, f"{PSI:.6f} MPa", "plain")
    text = _("strength in direct tension at 28 days")
    where = _("ACI 224.2R (4 sqrt(f_c) in psi), from memory")
    yield by_hand("f_t28", text, "4*sqrt(f_c*psi)", v, v["f_t28"], "strength", where)
    text, where = _("strength in direct tension at this age"), _("ACI 209R-92 2.2, from memory")
    yield by_hand("f_t", text, "sqrt(beta)*f_t28", v, state.strength, "strength", where)
    text, where = _("modulus at 28 days"), _("ACI 318-19 19.2.2.1(b) (57 000 sqrt(f_c) in psi)")
    yield by_hand("E_28", text, "57000*sqrt(f_c*psi)", v, v["E_28"], "strength", where)


def _stiffness(it, v: dict, state: Cornered) -> Iterator[WorkingStep]:
    told = _("{n} d").format(n=written(v["t_0"]))
    text = _("age from which the pull grows: end of curing")
    yield by_hand("t_0", text, "min(t_s, t)", v, told, "plain")
    text = _("strength then over that at 28 days")
    if it.code == "EN":
        grows, root, where = "exp(0.25*(1 - sqrt(28/t_0)))", "0.3", "EN 1992-1-1 (3.2), (3.5)"
    else:
        grows, root, where = "t_0/(4 + 0.85*t_0)", "0.5", "ACI 209R-92 2.2"
    where = _("{rule}, from memory").format(rule=where)
    yield by_hand("beta_0", text, grows, v, v["beta_0"], "plain", where)
    text = _("modulus then")
    yield by_hand("E_0", text, f"beta_0**{root}*E_28", v, v["E_0"], "strength", where)
    yield from _creep_steps(it, v)
    text = _(
        "ageing coefficient: a pull that grows slowly creeps less than one there from the start"
    )
    yield by_hand("chi", text, "", v, v["chi"], "plain", _("usual value, from memory"))
    text, formula = _("modulus with creep"), "E_0/(1 + chi*phi)"
    where = _("Trost 1967, Bazant 1972")
    yield by_hand("E", text, formula, v, state.modulus, "strength", where)


def _creep_steps(it, v: dict) -> Iterator[WorkingStep]:
    if v["t"] <= v["t_0"]:
        text = _("creep over elastic strain: there has been no time to creep")
        yield by_hand("phi", text, "", v, 0.0, "plain")
        return
    yield from (_creep_en if it.code == "EN" else _creep_aci)(v)


def _creep_en(v: dict) -> Iterator[WorkingStep]:
    RH, strong, size = v["RH"], v["f_cm28"], v["h_0"]
    air = float(creep_en.humidity_factor(RH, strong, size))
    text = _("factor of the air on creep")
    formula = "(1 + (1 - RH/100)/(0.1*h_0**(1/3))*min(35/f_cm28, 1)**0.7)*min(35/f_cm28, 1)**0.2"
    where = _("EN 1992-1-1 (B.3), (B.8c), from memory")
    yield by_hand("phi_RH", text, formula, v, air, "plain", where)
    end = float(creep_en.notional_creep(v["t_0"], strong, RH, size))
    text, formula = _("creep in the end"), "phi_RH*16.8/sqrt(f_cm28)/(0.1 + t_0**0.2)"
    where = _("EN 1992-1-1 (B.2), (B.4), (B.5), from memory")
    yield by_hand("phi_0", text, formula, v | {"phi_RH": air}, end, "plain", where)
    slow = float(creep_en.creep_pace(strong, RH, size))
    text, where = _("how slowly it comes, in days"), _("EN 1992-1-1 (B.8), from memory")
    formula = (
        "min(1.5*(1 + (0.012*RH)**18)*h_0 + 250*min(35/f_cm28, 1)**0.5, "
        "1500*min(35/f_cm28, 1)**0.5)"
    )
    yield by_hand("beta_H", text, formula, v, slow, "plain", where)
    share = float(creep_en.creep_share(v["t"] - v["t_0"], strong, RH, size))
    text, formula = _("share that has come"), "((t - t_0)/(beta_H + t - t_0))**0.3"
    where = _("EN 1992-1-1 (B.7), from memory")
    yield by_hand("beta_c", text, formula, v | {"beta_H": slow}, share, "plain", where)
    here = v | {"phi_0": end, "beta_c": share}
    text = _("creep over elastic strain, for the modulus E_0")
    where = _("EN 1992-1-1 (B.1), 3.1.4(2), from memory")
    yield by_hand("phi", text, "phi_0*beta_c*E_0/(1.05*E_28)", here, v["phi"], "plain", where)


def _creep_aci(v: dict) -> Iterator[WorkingStep]:
    late = float(creep_aci.loading_factor_moist(v["t_0"]))
    size = float(creep_aci.size_factor(v["V_S"]))
    wet = float(creep_aci.slump_factor(v["slump"]))
    air = float(creep_aci.humidity_factor(v["RH"]))
    text, where = _("factor of the air on creep"), _("ACI 209R-92 2.5.4, from memory")
    yield by_hand("c_RH", text, "1.27 - 0.0067*RH", v, air, "plain", where)
    text, where = _("factor of the age at loading"), _("ACI 209R-92 2.5.1, from memory")
    yield by_hand("c_la", text, "1.25*t_0**(-0.118)", v, late, "plain", where)
    text, where = _("factor of size, V_S in inches"), _("ACI 209R-92 2.5.5, from memory")
    formula = "2/3*(1 + 1.13*exp(-0.54*V_S/25.4))"
    yield by_hand("c_VS", text, formula, v, size, "plain", where)
    text, where = _("factor of slump, in inches"), _("ACI 209R-92 2.6, from memory")
    yield by_hand("c_s", text, "0.82 + 0.067*slump/25.4", v, wet, "plain", where)
    end = float(creep_aci.end_value(v["RH"], late, size, wet))
    here = v | {"c_RH": air, "c_la": late, "c_VS": size, "c_s": wet, "phi_u": end}
    text, where = _("creep in the end"), _("ACI 209R-92 2.4, from memory")
    yield by_hand("phi_u", text, "2.35*c_RH*c_la*c_VS*c_s", here, end, "plain", where)
    text = _("creep over elastic strain")
    formula = "(t - t_0)**0.6/(10 + (t - t_0)**0.6)*phi_u"
    where = _("ACI 209R-92 Eq. 2-8, from memory")
    yield by_hand("phi", text, formula, here, v["phi"], "plain", where)
