"""The working of a slab on the ground: shrinkage, friction, drag, and the rules beside it."""

from collections.abc import Iterator

from crackkit.mechanics.base_friction import slab_weight
from crackkit.mechanics.drag import drag_joint_spacing, drag_steel, drag_stress
from crackkit.structures import ground_rules
from crackkit.structures.ground import Ground
from crackkit.structures.ground_rules import HeldRule
from crackkit.structures.materials import DIRECT_TENSION
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
        between, (gilbert, eurocode) = ground_rules.slab_between_walls(it, state.free), state.rules
        start = WorkingStep(
            "s_0",
            "phi/(10 × rho)",
            "",
            between.transfer_length,
            "size",
            "",
            ground_rules.rule_label(gilbert),
        )
        strain = WorkingStep(
            "eps_M1",
            _("strain difference"),
            "",
            ground_rules.end_strain(it),
            "strain",
            "(M.1)",
            ground_rules.rule_label(eurocode),
        )
        steps += [start, *_ruled(gilbert), strain, *_ruled(eurocode)]
    return tuple(steps)


def _shrinking(it, state: Ground) -> Iterator[WorkingStep]:
    topic = _("What it wants")
    text = _("free shortening at this age, cooling counted")
    yield WorkingStep("eps", text, "", state.free, "strain", _model(it), topic)
    text = _("strength under direct pull, mean, 28 days")
    where = DIRECT_TENSION[it.code]
    yield WorkingStep("f_ct", text, "", it.hardened.tensile, "strength", where, topic)


def _model(it) -> str:
    names = {"ACI": "ACI 209R-92", "EN": "EN 1992-1-1 3.1.4", "MC2010": "MC2010 5.1.9.4"}
    return _("{model}, from memory").format(model=names[it.model])


def _dragging(it) -> Iterator[WorkingStep]:
    topic, under = _("What the base can do"), it.under
    weight = slab_weight(it.thickness)
    heavy = weight / it.thickness
    yield WorkingStep("mu", under.label, "", under.coefficient, "plain", under.where, topic)
    yield WorkingStep(
        "sigma",
        "mu × w × L/(2 × h)",
        f"{under.coefficient:g} × {weight:.4g} × {it.length:.0f}/(2 × {it.thickness:g})",
        float(drag_stress(under.coefficient, it.length, heavy)),
        "strength",
        _("slab that slides all along"),
        topic,
    )
    left = it.hardened.tensile * (1 - it.spent)
    spacing = drag_joint_spacing(left, under.coefficient, heavy)
    text = _("length that the base alone could crack")
    yield WorkingStep("L_max", text, "", float(spacing), "length", "", topic)
    steel = drag_steel(under.coefficient, it.length, weight, DRAG_SHARE * it.yield_strength)
    text = _("bars that drag half of it, on 1 m of width: they hold one crack shut, no more")
    yield WorkingStep("A_drag", text, "", 1000.0 * float(steel), "area", "mu L w/(2 f_s)", topic)


def _ruled(rule: HeldRule) -> Iterator[WorkingStep]:
    topic = ground_rules.rule_label(rule)
    if rule.width is None:
        text = _("no answer: {why}").format(why=rule.trouble)
        yield WorkingStep("w", text, "", "—", "width", "", topic)
        return
    yield WorkingStep("s", _("distance of the cracks"), "", rule.spacing, "size", "", topic)
    yield WorkingStep("w", _("crack width"), "", rule.width, "width", rule.where, topic)
