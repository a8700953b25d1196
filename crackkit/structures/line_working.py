"""The working of a bent member: from the moment to the crack width, step by step."""

from collections.abc import Iterator

from crackkit.mechanics.crack_width import all_widths
from crackkit.structures.crossing import crack_zone, crossing
from crackkit.structures.member import CREEP, STEEL_MODULUS, Member
from crackkit.structures.outcome import WorkingStep, WorstSection
from crackkit.structures.stretching import Stretch
from crackkit.structures.width_working import width_steps
from crackkit.words import _

STRENGTH_CLAUSES = {"ACI": "ACI 318-19 19.2.3.1", "EN": "EN 1992-1-1 (3.23)"}
MODULUS_CLAUSES = {"ACI": "ACI 318-19 19.2.2.1", "EN": "EN 1992-1-1 Table 3.1"}


def working(stretched: Stretch, worst: WorstSection) -> tuple[WorkingStep, ...]:
    """List the steps at the worst section, for checking by hand."""
    steps = [*_material(stretched.member), *_bending(stretched, worst)]
    held = crossing(stretched, worst.face, worst.at)
    if held.stretched:
        steps += _steel(stretched, worst, held)
        if worst.cracked:
            steps += _widths(stretched, worst, held)
    return tuple(steps)


def _material(member: Member) -> Iterator[WorkingStep]:
    topic = _("Concrete and steel")
    yield WorkingStep(
        "f_c", _("cylinder strength"), "", member.concrete.strength, "strength", "", topic
    )
    yield WorkingStep(
        "E_c",
        _("modulus of the concrete"),
        "",
        member.concrete.modulus,
        "strength",
        MODULUS_CLAUSES[member.code],
        topic,
    )
    if member.duration == "lasting":
        yield WorkingStep(
            "E_c,eff",
            "E_c/(1 + phi)",
            f"{member.concrete.modulus:.0f}/(1 + {CREEP:g})",
            member.modulus,
            "strength",
            _("EN 1992-1-1 7.4.3(5); phi = 2 is common practice"),
            topic,
        )
    yield WorkingStep(
        "n",
        "E_s/E_c",
        f"{STEEL_MODULUS:.0f}/{member.modulus:.0f}",
        member.ratio,
        "plain",
        "",
        topic,
    )
    yield WorkingStep(
        "f_t",
        _("stress at which the face cracks"),
        "",
        member.cracking_strength,
        "strength",
        _strength_clause(member),
        topic,
    )


def _strength_clause(member: Member) -> str:
    if member.duration == "short":
        return STRENGTH_CLAUSES[member.code]
    if member.code == "EN":
        return _("EN 1992-1-1 7.1(2), mean direct strength")
    return _("two thirds of f_r: ACI 318-19 Table 24.2.3.5")


def _bending(stretched: Stretch, worst: WorstSection) -> Iterator[WorkingStep]:
    topic = _("Bending at the worst section")
    yield WorkingStep("x", _("place, from the left end"), "", worst.at, "length", "", topic)
    yield WorkingStep("M", _("bending moment there"), "", worst.moment, "moment", "", topic)
    yield WorkingStep(
        "M_cr",
        _("f_t × I_gross / distance of the face from the axis"),
        "",
        worst.cracking_moment,
        "moment",
        _("gross section, ACI 318-19 24.2.3.5"),
        topic,
    )
    share = worst.moment / worst.cracking_moment if worst.cracking_moment else 0.0
    yield WorkingStep(
        "M/M_cr",
        _("above 1 it cracks"),
        f"{worst.moment:.4g}/{worst.cracking_moment:.4g}",
        share,
        "plain",
        "",
        topic,
    )


def _steel(stretched: Stretch, worst: WorstSection, held) -> Iterator[WorkingStep]:
    topic = _("The cracked section")
    member = stretched.member
    _index, outer = held.outermost
    outer_depth = float(member.layer_depth(outer, worst.at))
    d = outer_depth if worst.face == "bottom" else worst.section.depth - outer_depth
    x, inertia, n = held.squeezed, held.inertia, member.ratio
    yield WorkingStep("A_s", _("outermost bars that cross"), "", outer.area, "area", "", topic)
    yield WorkingStep("d", _("squeezed face to those bars"), "", d, "size", "", topic)
    yield WorkingStep(
        "c_na", _("depth of the squeezed zone"), "", x, "size", _("elastic cracked section"), topic
    )
    yield WorkingStep("I_cr", _("cracked inertia"), "", inertia, "inertia", "", topic)
    stress = n * worst.moment * (d - x) / inertia
    yield WorkingStep(
        "f_s",
        "n M (d - c_na)/I_cr",
        f"{n:.4g} × {worst.moment:.4g} × ({d:.4g} - {x:.4g})/{inertia:.4g}",
        stress,
        "stress",
        "",
        topic,
    )
    yield WorkingStep("M_y", _("first yield"), "", worst.yield_moment, "moment", "", topic)
    yield WorkingStep(
        "M_n",
        _("nominal strength, no reduction factor"),
        "",
        worst.ultimate_moment,
        "moment",
        "ACI 318-19 22.2.2.4",
        topic,
    )


def _widths(stretched: Stretch, worst: WorstSection, held) -> Iterator[WorkingStep]:
    member = stretched.member
    return width_steps(all_widths(crack_zone(member, held, worst.steel_stress)), member.code)
