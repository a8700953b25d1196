"""What a pulled member gives to the derivation about it."""

import numpy as np

from crackkit.mechanics.bond_slip import slip_along, transfer_length
from crackkit.structures.member import STEEL_MODULUS
from crackkit.structures.outcome import Outcome
from crackkit.structures.pulled import PARTED, Pulled
from crackkit.words import _

LETTERS = {"E_c": ("stress", _("stiffness (modulus) of the concrete"))}
OF = {"transfer_length": ("phi", "rho", "f_ct", "tau_b", "sigma_s", "E_s", "E_c")}
STEPS = 4000  # along the transfer length, for the mean of the grip
NONE: tuple[dict, dict] = ({}, {})


def transfer_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give what goes into the distance and width of cracks, what is shown, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a pulled member.
    """
    tie, state = outcome.structure, outcome.pulled
    note = _why_none(tie, state)
    if note:
        return *NONE, note
    reach = length_at_first_crack(tie, state)
    given = {
        # a round bar of this steel and this skin: printed areas of bars are rounded
        "phi": 4 * state.sample.bars_area / state.sample.perimeter,
        "rho": tie.bars_area / tie.concrete_area,
        "f_ct": tie.tensile,
        "tau_b": mean_grip(state, reach),
        "sigma_s": state.steel_at_crack,
        "E_s": STEEL_MODULUS,
        "E_c": tie.modulus,
    }
    widest = max(crack.width.governing for crack in outcome.cracks)
    return given, {"l_t": reach, "w": widest}, _how_far_it_goes(tie)


def _why_none(tie, state: Pulled) -> str:
    if not tie.number or state.ended == PARTED:
        return _("Above no bar holds the crack: there is no grip to hand the pull over.")
    if not state.now.cracks.size:
        return _("Nothing cracks above: pull harder, and its numbers appear here.")
    if state.pull < state.greatest:
        return _("The pull above has let go: this is for a pull that grows.")
    return ""


def _how_far_it_goes(tie) -> str:
    text = _(
        "The grip here is its mean along l_t as the first crack opens. In the panel it grows as "
        "the bar slips, and some places are weak: its cracks come closer together and stay finer "
        "than the most that is derived here."
    )
    if tie.shrinkage:
        return _("{text} What shrinkage opens comes on top.").format(text=text)
    return text


def length_at_first_crack(tie, state: Pulled) -> float:
    """Length over which bond fills the concrete up to its mean strength [mm].

    Parameters
    ----------
    tie : TensionMember
    state : Pulled
    """
    past = state.history.tie
    return float(transfer_length(past.bond_slip, past.beta * tie.tensile))


def mean_grip(state: Pulled, reach: float) -> float:
    """Mean bond stress [MPa] along the transfer length, from the slip at each place of it.

    Parameters
    ----------
    state : Pulled
    reach : float
        Transfer length [mm].
    """
    equation = state.history.tie.bond_slip
    middles = (np.arange(STEPS) + 0.5) * reach / STEPS
    slip, _slope = slip_along(equation, middles, 0.0, 0.0)
    return float(equation.law.stress(slip).mean())
