"""The working of a pulled member: from its concrete to the crack width, step by step."""

from collections.abc import Iterator

from crackkit.mechanics.bond_slip import transfer_length
from crackkit.mechanics.crack_width import all_widths
from crackkit.structures import tie_bars
from crackkit.structures.materials import DIRECT_TENSION
from crackkit.structures.member import STEEL_MODULUS
from crackkit.structures.outcome import WorkingStep
from crackkit.structures.pulled import PARTED, Pulled
from crackkit.structures.width_working import width_steps
from crackkit.words import _

BOND_CLAUSES = {
    ("ribbed", "good"): _("fib Model Code 2010, 6.1.1, good bond (from memory)"),
    ("ribbed", "other"): _("fib Model Code 2010, 6.1.1, other bond (from memory)"),
    ("plain", "good"): _("CEB-FIP Model Code 1990, 3.1, plain bars (from memory)"),
    ("plain", "other"): _("CEB-FIP Model Code 1990, 3.1, plain bars (from memory)"),
}


def working(tie, state: Pulled) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    tie : TensionMember
    state : Pulled
    """
    steps = [*_material(tie), *_first_crack(tie, state)]
    if tie.number and state.ended != PARTED:
        steps += _at_cracks(tie, state)
    if state.rules is not None:
        zone = tie_bars.zone(tie, tie.bar, state.greatest_at_crack)
        steps += width_steps(all_widths(zone), tie.code)
    return tuple(steps)


def _material(tie) -> Iterator[WorkingStep]:
    topic, clause = _("Concrete and steel"), DIRECT_TENSION[tie.code]
    yield WorkingStep("f_c", _("cylinder strength"), "", tie.strength, "strength", "", topic)
    text = _("mean strength under direct pull")
    yield WorkingStep("f_ct", text, "", tie.tensile, "strength", clause, topic)
    yield WorkingStep("E_c", _("modulus of the concrete"), "", tie.modulus, "strength", "", topic)
    yield WorkingStep(
        "A_c", _("concrete without the bars"), "", tie.concrete_area, "area", "", topic
    )
    yield WorkingStep("A_s", _("all bars"), "", tie.bars_area, "area", "", topic)


def _first_crack(tie, state: Pulled) -> Iterator[WorkingStep]:
    topic, n = _("The first crack"), STEEL_MODULUS / tie.modulus
    A_c, A_s, f_ct = tie.concrete_area, tie.bars_area, tie.tensile
    yield WorkingStep(
        "N_cr",
        "f_ct × (A_c + A_s × E_s/E_c)",
        f"{f_ct:.3g} × ({A_c:.0f} + {A_s:.4g} × {n:.3g})",
        f_ct * (A_c + A_s * n),
        "force",
        _("even concrete, long member, no shrinkage"),
        topic,
    )
    if state.first_pull is not None:
        text = _("pull at which the weakest place cracks")
        yield WorkingStep("N_1", text, "", state.first_pull, "force", "", topic)


def _at_cracks(tie, state: Pulled) -> Iterator[WorkingStep]:
    topic, stress = _("At a crack"), state.steel_at_crack
    yield WorkingStep(
        "sigma_s", "N/A_s", f"{state.pull:.0f}/{tie.bars_area:.4g}", stress, "stress", "", topic
    )
    sample_tie = state.history.tie
    length = float(transfer_length(sample_tie.bond_slip, sample_tie.beta * tie.tensile))
    yield WorkingStep(
        "l_t",
        _("length over which bond fills the concrete up to its strength"),
        "",
        length,
        "size",
        BOND_CLAUSES[tie.surface, tie.bond],
        topic,
    )
    text = _("mean strain of the bars")
    yield WorkingStep("eps_m", text, "", state.now.mean_strain, "strain", "", topic)
    bare, strain = state.bare_strain, state.now.mean_strain
    if bare:
        yield WorkingStep(
            "eps_m/eps_bare",
            "eps_m E_s A_s/N",
            f"{strain:.3g}/{bare:.3g}",
            strain / bare,
            "plain",
            _("below 1: the concrete between the cracks helps"),
            topic,
        )
