"""What a slab with an inside corner gives to the derivation about it."""

import math

from crackkit.structures.outcome import Outcome
from crackkit.words import _

LETTERS = {
    "G_F": ("plain", _("work to tear it, in N·mm for each mm²")),
    "r": ("", _("distance from the corner")),
    "λ": ("", _("the power of r with which movement grows near the corner")),
    "C": ("", _("how hard the slab as a whole pulls there")),
    "K_c": ("", _("the same for a crack that runs: its stress intensity")),
}
OF = {"inside_corner": ("E_c", "G_F", "f_ct", "r", "λ", "C", "K_c")}


def inside_corner_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give what goes into the material length, what the panel shows, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a slab with an inside corner.
    """
    state = outcome.cornered
    given = {
        "E_c": state.modulus,
        "G_F": state.toughness,
        "f_ct": state.strength,
        "pi": math.pi,
    }
    return given, {"d": state.material_length}, _how_far_it_goes()


def _how_far_it_goes() -> str:
    return _(
        "Modulus, work and strength are those of this age; concrete that creeps counts as softer. "
        "For a crack the mean over d says what the work says; an inside corner is less sharp, so "
        "for it that is nearly so. A rounded corner has a greatest stress, and is judged by the "
        "same mean. That tells when it begins; how far it opens the panel works out bit by bit."
    )
