"""What a slab on the ground gives to the derivation about it."""

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.structures.outcome import Outcome
from crackkit.words import _

LETTERS = {
    "mu": ("plain", _("how hard the base drags: its coefficient")),
    "w": ("pressure", _("weight of the slab on its base")),
    "L_f": ("length", _("length between free ends")),
    "γ": ("", _("weight of concrete for its volume")),
}
OF = {"drag": ("h", "mu", "w", "L_f", "γ", "f_ct")}


def drag_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give what goes into the pull in the middle, what the working shows, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a slab on the ground.
    """
    it = outcome.structure
    steps = {step.symbol: step.value for step in outcome.working}
    given = {
        "mu": base(it.base).coefficient,
        "w": float(slab_weight(it.thickness)),
        "h": it.thickness,
        "L_f": it.length,
        "f_ct": steps["f_ct"] * (1.0 - it.spent),
    }
    shown = {"sigma": steps["sigma"], "L_c": steps["L_max"]}
    return given, shown, _how_far_it_goes(it)


def _how_far_it_goes(it) -> str:
    text = _(
        "What curling uses up is taken off the strength. The panel also knows that the base gives "
        "way a little before it drags in full, and that young concrete bears less."
    )
    if not (it.left or it.right or it.middle):
        return text
    held = _("Above something else holds the slab as well: that comes on top, and counts for more.")
    return f"{held} {text}"
