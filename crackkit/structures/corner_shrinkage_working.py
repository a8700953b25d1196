"""The working of what a slab with inside corners would shrink by if nothing held it."""

from collections.abc import Iterator

from crackkit.mechanics import shrinkage_aci, shrinkage_en, shrinkage_mc2010
from crackkit.mechanics.shrinkage import free_shrinkage
from crackkit.structures.hand_step import by_hand
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def shrinkage_steps(it, v: dict, free: float) -> Iterator[WorkingStep]:
    """List the steps from air and age to the free shortening.

    Parameters
    ----------
    it : CornerSlab
    v : dict
        See `corner_given.known`.
    free : float
        Free shortening at its age, cooling counted [-].
    """
    yield from {"EN": _en, "MC2010": _mc2010, "ACI": _aci}[it.model](v)
    dried = free_shrinkage(it.age, it.slab, it.model)
    parts = {"eps_cd": float(dried.drying), "eps_ca": float(dried.basic)}
    formula = "eps_cd" if it.model == "ACI" else "eps_cd + eps_ca"
    if not it.cooling:
        text = _("what it would shrink by if nothing held it")
        yield by_hand("eps", text, formula, parts, free, "strain", "")
        return
    yield by_hand("dT", _("it cools by"), "", v, v["dT"], "temperature")
    text = _("what it would shrink by if nothing held it, cooling over a week counted")
    where = _("EN 1992-1-1 3.1.3(5): 0.00001 for each degree C")
    formula += " + 0.00001*dT*min(t/7, 1)"
    yield by_hand("eps", text, formula, v | parts, free, "strain", where)


def _en(v: dict) -> Iterator[WorkingStep]:
    end = float(shrinkage_en.nominal_drying(v["f_c"], v["RH"]))
    formula = "0.85*10**-6*(220 + 110*4)*exp(-0.12*f_cm28/10)*1.55*(1 - (RH/100)**3)"
    text = _("drying shrinkage in the end, of a thin piece; cement class N")
    where = _("EN 1992-1-1 (B.11), (B.12), from memory")
    yield by_hand("eps_cd0", text, formula, v, end, "strain", where)
    size = float(shrinkage_en.size_factor(v["h_0"]))
    text = _("factor of size: 1 at h_0 = 100 mm, 0.85 at 200, 0.75 at 300, 0.70 from 500 on")
    yield by_hand("k_h", text, "", v, size, "plain", "EN 1992-1-1 Table 3.3")
    share = float(shrinkage_en.drying_share(v["t_d"], v["h_0"]))
    text, formula = _("share that has come"), "t_d/(t_d + 0.04*h_0**1.5)"
    yield by_hand("beta_ds", text, formula, v, share, "plain", "EN 1992-1-1 (3.10)")
    here = {"eps_cd0": end, "k_h": size, "beta_ds": share}
    text, formula = _("drying shrinkage"), "beta_ds*k_h*eps_cd0"
    yield by_hand("eps_cd", text, formula, here, share * size * end, "strain", "EN 1992-1-1 (3.9)")
    own = float(shrinkage_en.autogenous(v["t"], v["f_c"]))
    text = _("shrinkage without drying, as the cement binds water")
    formula = "2.5*10**-6*(f_c - 10)*(1 - exp(-0.2*sqrt(t)))"
    where = _("EN 1992-1-1 (3.11) to (3.13), from memory")
    yield by_hand("eps_ca", text, formula, v, own, "strain", where)


def _mc2010(v: dict) -> Iterator[WorkingStep]:
    where = _("Model Code 2010 5.1.9.4.4, from memory")
    air = float(shrinkage_mc2010.humidity_factor(v["RH"], v["f_cm28"]))
    text, formula = _("factor of the air"), "1.55*(1 - (RH/100)**3)"
    if air < 0:
        text, formula = _("factor of the air, so moist that concrete swells"), ""
    yield by_hand("beta_RH", text, formula, v, air, "plain", where)
    end = float(shrinkage_mc2010.drying_end(v["f_cm28"], v["RH"]))
    text = _("drying shrinkage in the end; cement 32.5 R or 42.5 N")
    formula = "10**-6*(220 + 110*4)*exp(-0.012*f_cm28)*beta_RH"
    yield by_hand("eps_cds", text, formula, v | {"beta_RH": air}, end, "strain", where)
    share = float(shrinkage_mc2010.drying_share(v["t_d"], v["h_0"]))
    text, formula = _("share that has come"), "sqrt(t_d/(0.035*h_0**2 + t_d))"
    yield by_hand("beta_ds", text, formula, v, share, "plain", where)
    here = {"eps_cds": end, "beta_ds": share}
    text = _("drying shrinkage")
    yield by_hand("eps_cd", text, "beta_ds*eps_cds", here, share * end, "strain", where)
    own = float(shrinkage_mc2010.basic(v["t"], v["f_cm28"]))
    text = _("shrinkage without drying, as the cement binds water")
    formula = "700*10**-6*(f_cm28/10/(6 + f_cm28/10))**2.5*(1 - exp(-0.2*sqrt(t)))"
    yield by_hand("eps_ca", text, formula, v, own, "strain", where)


def _aci(v: dict) -> Iterator[WorkingStep]:
    air = float(shrinkage_aci.humidity_factor(v["RH"]))
    text, formula = _("factor of the air"), "min(1.40 - 0.010*RH, 3.00 - 0.030*RH)"
    where = _("ACI 209R-92 2.5.4, from memory")
    yield by_hand("g_RH", text, formula, v, air, "plain", where)
    size = float(shrinkage_aci.size_factor(v["V_S"]))
    text, where = _("factor of size, V_S in inches"), _("ACI 209R-92 2.5.5, from memory")
    yield by_hand("g_VS", text, "1.2*exp(-0.12*V_S/25.4)", v, size, "plain", where)
    cured = float(shrinkage_aci.curing_factor(v["t_s"]))
    text = _("factor of curing: 1.2 for 1 day, 1.1 for 3, 1 for 7, 0.93 for 14, 0.86 for 28")
    where = _("ACI 209R-92 Table 2.5.3, from memory")
    yield by_hand("g_cp", text, "", v, cured, "plain", where)
    wet = float(shrinkage_aci.slump_factor(v["slump"]))
    text, where = _("factor of slump, in inches"), _("ACI 209R-92 2.6, from memory")
    yield by_hand("g_s", text, "0.89 + 0.041*slump/25.4", v, wet, "plain", where)
    here = v | {"g_RH": air, "g_VS": size, "g_cp": cured, "g_s": wet}
    end = float(shrinkage_aci.end_value(v["RH"], size, cured, wet))
    text, where = _("shrinkage in the end"), _("ACI 209R-92 2.4, from memory")
    yield by_hand("eps_u", text, "780*10**-6*g_RH*g_VS*g_cp*g_s", here, end, "strain", where)
    come = float(shrinkage_aci.drying_moist(v["t_d"], end))
    text, where = _("what of it has come"), _("ACI 209R-92 Eq. 2-9, from memory")
    here |= {"eps_u": end}
    yield by_hand("eps_cd", text, "t_d/(35 + t_d)*eps_u", here, come, "strain", where)
