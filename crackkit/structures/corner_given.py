"""What the working of a slab with inside corners starts from: its inputs and their letters."""

from collections.abc import Iterator

from crackkit.mechanics.concrete import mean_strength_en
from crackkit.structures.hand_step import by_hand, written
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def known(it) -> dict[str, float]:
    """Give the number of each letter [N, mm, MPa, days, %] that follows from the inputs alone.

    Parameters
    ----------
    it : CornerSlab
    """
    slab, start = it.slab, min(it.curing, it.age)
    return {
        "t": it.age,
        "t_s": it.curing,
        "t_d": max(it.age - it.curing, 0.0),
        "t_0": start,
        "RH": slab.humidity,
        "h": it.thickness,
        "n": float(slab.sides),
        "h_0": slab.notional_size,
        "V_S": slab.volume_surface,
        "f_c": it.strength,
        "f_cm28": float(mean_strength_en(it.strength)),
        "slump": slab.slump,
        "dT": it.cooling,
    }


def given_steps(it, v: dict) -> Iterator[WorkingStep]:
    """List what is given.

    Parameters
    ----------
    it : CornerSlab
    v : dict
        See `known`.
    """
    yield by_hand("t", _("age"), "", v, _days(v["t"]), "plain")
    yield by_hand("t_s", _("kept moist until"), "", v, _days(v["t_s"]), "plain")
    text = _("days it has dried")
    yield by_hand("t_d", text, "max(t - t_s, 0)", v, _days(v["t_d"]), "plain")
    text = _("humidity of the air")
    yield by_hand("RH", text, "", v, _("{n} %").format(n=written(v["RH"])), "plain")
    yield by_hand("h", _("thickness"), "", v, v["h"], "size")
    yield by_hand("n", _("faces that dry"), "", v, v["n"], "plain")
    yield from _sizes(it, v)
    yield by_hand("f_c", _("cylinder strength"), "", v, v["f_c"], "strength")
    text, where = _("mean strength at 28 days"), "EN 1992-1-1 Table 3.1"
    yield by_hand("f_cm28", text, "f_c + 8", v, v["f_cm28"], "strength", where)


def _sizes(it, v: dict) -> Iterator[WorkingStep]:
    if it.model != "ACI" or it.code == "EN":
        text, where = _("notional size"), "EN 1992-1-1 3.1.4(5)"
        yield by_hand("h_0", text, "2*h/n", v, v["h_0"], "size", where)
    if "ACI" in (it.model, it.code):
        text, where = _("volume over drying surface"), "ACI 209R-92 2.5.5"
        yield by_hand("V_S", text, "h/n", v, v["V_S"], "size", where)
        text, where = _("slump, as long as nobody tells it"), _("common practice")
        yield by_hand("slump", text, "", v, v["slump"], "size", where)


def _days(days: float) -> str:
    return _("{n} d").format(n=written(days))
