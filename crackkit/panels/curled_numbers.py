"""What a slab that curls gives to the derivation about it."""

from crackkit.structures.outcome import Outcome
from crackkit.words import _

LETTERS = {
    "epsilon_d": ("strain", _("how much more its top wants to shrink than its bottom")),
    "κ_0": ("", _("how sharply it would bend if it weighed nothing")),
    "x": ("", _("distance from the end")),
}
OF = {"lift_off": ("h", "epsilon_d", "E_c", "w", "γ", "κ_0", "x")}


def lift_off_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give what goes into the rise of the end, what the panel shows, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a slab that curls.
    """
    it, state = outcome.structure, outcome.curled
    apart = state.dryness.gradient
    if apart <= 0.0:
        note = _("Its top wants to shrink no more than its bottom: nothing lifts.")
        return {}, {}, note
    given = {
        "epsilon_d": apart,
        "h": it.thickness,
        "E_c": it.hardened.modulus,
        "w": it.weight,
        "kappa_0": apart / it.thickness,
    }
    return given, {"y_0": state.corner_rise}, _how_far_it_goes(it)


def _how_far_it_goes(it) -> str:
    text = _(
        "This is a long strip of concrete 28 days old on a hard base; above it is the corner of a "
        "panel. A corner curls both ways at once, so it stands higher. Ground that gives way, "
        "concrete that creeps, wheels, and other edges that are near change it as well."
    )
    if not it.warmer:
        return text
    return f"{_('What the sun does is left out here.')} {text}"
