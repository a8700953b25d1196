"""The working of a slab on the ground: shrinkage, friction, drag, and the rules beside it."""

from collections.abc import Iterator

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.mechanics.concrete import modulus_en, tensile_strength_en
from crackkit.mechanics.drag import drag_joint_spacing, drag_steel
from crackkit.mechanics.restrained_cracking import (
    RestrainedSlab,
    end_restraint_strain,
    final_cracks,
    greatest_spacing_en,
)
from crackkit.structures.ground import Ground
from crackkit.structures.member import CREEP, STEEL_MODULUS
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _

DRAG_SHARE = 2 / 3  # of the yield strength in the drag formula; common practice


def working(it, state: Ground) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    it : GroundSlab
    state : Ground
    """
    steps = [*_shrinking(it, state), *_dragging(it)]
    if it.area:
        steps += [*_gilbert(it, state), *_eurocode(it)]
    return tuple(steps)


def _shrinking(it, state: Ground) -> Iterator[WorkingStep]:
    topic = _("What it wants")
    text = _("free shortening at this age, cooling counted")
    yield WorkingStep("eps", text, "", state.free, "strain", _model(it), topic)
    text = _("strength under direct pull, mean, 28 days")
    f_ct = float(tensile_strength_en(it.strength))
    yield WorkingStep("f_ct", text, "", f_ct, "strength", "EN 1992-1-1 Table 3.1", topic)


def _model(it) -> str:
    names = {"ACI": "ACI 209R-92", "EN": "EN 1992-1-1 3.1.4", "MC2010": "MC2010 5.1.9.4"}
    return _("{model}, from memory").format(model=names[it.model])


def _dragging(it) -> Iterator[WorkingStep]:
    topic, under = _("What the base can do"), base(it.base)
    weight = slab_weight(it.thickness)
    yield WorkingStep("mu", under.label, "", under.coefficient, "plain", under.where, topic)
    stress = under.coefficient * weight * it.length / 2 / it.thickness
    yield WorkingStep(
        "sigma",
        "mu × w × L/(2 × h)",
        f"{under.coefficient:g} × {weight:.4g} × {it.length:.0f}/(2 × {it.thickness:g})",
        stress,
        "strength",
        _("slab that slides all along"),
        topic,
    )
    f_ct = float(tensile_strength_en(it.strength)) * (1 - it.spent)
    spacing = drag_joint_spacing(f_ct, under.coefficient, weight / it.thickness)
    text = _("length that the base alone could crack")
    yield WorkingStep("L_max", text, "", float(spacing), "length", "", topic)
    steel = drag_steel(under.coefficient, it.length, weight, DRAG_SHARE * it.yield_strength)
    text = _("bars that drag half of it, on 1 m of width: they hold one crack shut, no more")
    yield WorkingStep("A_drag", text, "", 1000.0 * float(steel), "area", "mu L w/(2 f_s)", topic)


def _gilbert(it, state: Ground) -> Iterator[WorkingStep]:
    """Both ends fully held, whatever holds this slab: the worst case."""
    topic = _("Held at both ends: Gilbert 1992, from memory")
    slab = RestrainedSlab(
        length=it.length / it.panels,
        concrete_area=1000.0 * it.thickness,
        bars_area=1000.0 * it.area,
        diameter=it.bar.diameter,
        tensile_strength=float(tensile_strength_en(it.strength)) * (1 - it.spent),
        concrete_modulus=float(modulus_en(it.strength)),
        creep=CREEP,
        shrinkage=max(state.free, 1e-9),
    )
    yield WorkingStep("s_0", "phi/(10 × rho)", "", slab.transfer_length, "size", "", topic)
    try:
        end = final_cracks(slab)
    except ValueError as error:
        yield WorkingStep("w", _("no answer: {why}").format(why=error), "", "—", "width", "", topic)
        return
    yield WorkingStep("s", _("distance of the cracks"), "", float(end.spacing), "size", "", topic)
    yield WorkingStep("w", _("crack width"), "", float(end.width), "width", "", topic)


def _eurocode(it) -> Iterator[WorkingStep]:
    topic = _("Held at both ends: EN 1992-3 Annex M, from memory")
    rho = it.area / it.thickness
    ratio = STEEL_MODULUS / float(modulus_en(it.strength))
    f_ct = float(tensile_strength_en(it.strength))
    strain = float(end_restraint_strain(rho, ratio, f_ct))
    yield WorkingStep("eps_M1", _("strain difference"), "", strain, "strain", "(M.1)", topic)
    cover = it.cover if it.place == "top" else it.thickness / 2 - it.bar.diameter / 2
    spacing = float(greatest_spacing_en(cover, it.bar.diameter, rho))
    yield WorkingStep("s_r,max", "", "", spacing, "size", "EN 1992-1-1 (7.11)", topic)
    yield WorkingStep("w_k", "s_r,max × eps_M1", "", spacing * strain, "width", "(7.8)", topic)
