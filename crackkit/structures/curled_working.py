"""The working of a slab that curls: drying, the free curl, springs, stress, the mat."""

from collections.abc import Iterator

from crackkit.mechanics.plate_curl import free_curl_rise
from crackkit.mechanics.plate_slab import PlateSlab
from crackkit.structures.curled import Curled
from crackkit.structures.curled_mat import mat_cracks
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def working(it, state: Curled) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    it : CurledSlab
    state : Curled
    """
    return (*_drying(it, state), *_plate(it, state), *_mat(it, state))


def _drying(it, state: Curled) -> Iterator[WorkingStep]:
    topic, dry = _("How it dries"), state.dryness
    where = _("Bazant-Najjar diffusion, Model Code 1990 numbers, from memory")
    text = _("humidity of the top face")
    yield WorkingStep("h_top", text, "", float(dry.humidity[0]), "ratio", where, topic)
    yield WorkingStep("eps_m", _("mean shrinkage"), "", dry.mean, "strain", where, topic)
    text = _("top shrinks more than the bottom, as a straight line")
    yield WorkingStep("d_eps", text, "", dry.gradient, "strain", "", topic)
    rise = float(free_curl_rise(dry.gradient, it.length, it.thickness))
    text = _("edge of a strip that nothing weighs down: d_eps × L²/(8 × h)")
    yield WorkingStep("f", text, "", rise, "movement", _("geometry"), topic)


def _plate(it, state: Curled) -> Iterator[WorkingStep]:
    topic = _("Plate on springs that only push")
    reach = PlateSlab(it.length, it.width, it.thickness, it.hardened.modulus, it.ground).reach
    text = _("radius of relative stiffness (E × h³/(12 × (1 − nu²) × k))^(1/4)")
    yield WorkingStep("l", text, "", reach, "length", "Westergaard 1926", topic)
    text = _("corner stands up")
    yield WorkingStep("w_c", text, "", state.corner_rise, "movement", "", topic)
    for name, face in ((_("top"), state.top), (_("bottom"), state.bottom)):
        text = _("largest principal tension, {face}").format(face=name)
        yield WorkingStep("sigma_1", text, "", face.peak, "strength", "", topic)
    text = _("stress at which a face cracks at this age, drying pulls for months")
    yield WorkingStep("f_b", text, "", state.strength, "strength", "", topic)


def _mat(it, state: Curled) -> Iterator[WorkingStep]:
    held = mat_cracks(it, state.top.peak) if state.top.peak > 0 else None
    if held is None:
        return
    topic = _("The mat, if the top cracks")
    moment = state.top.peak * it.thickness**2 / 6.0 * 1000.0
    text = _("moment on 1 m before it cracks: sigma_1 × h²/6")
    yield WorkingStep("m", text, "", moment, "moment", "", topic)
    yield WorkingStep(
        "sigma_s", _("stress in the bars"), "", float(held.held.stress), "stress", "", topic
    )
    for rule, width in held.band.by_rule:
        yield WorkingStep("w", rule, "", float(width), "width", "", topic)
