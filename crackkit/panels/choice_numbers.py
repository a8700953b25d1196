"""What a choice of bars gives to the derivations about it."""

import math

from crackkit.structures.control_judging import LONG, is_cracked
from crackkit.structures.crack_control import LIFE
from crackkit.structures.outcome import Outcome
from crackkit.words import _

LETTERS = {
    "phi": ("size", _("diameter of the bars")),
    "rho": ("plain", _("steel over the concrete that hangs on it")),
    "c": ("size", _("clear concrete over the bars")),
    "f_ct": ("strength", _("strength of the concrete under a straight pull")),
    "tau_b": ("strength", _("grip of the concrete on the skin of a bar")),
    "sigma_s": ("stress", _("pull in the bars where it cracks")),
    "sigma_sr": ("stress", _("pull in the bars as the first crack opens")),
    "b_t": ("plain", _("how much of that the concrete still takes")),
    "beta": ("plain", _("stretch at the face over that at the bars")),
    "K": ("movement", _("how deep the air has worked in after one year")),
}
OF = {
    "bar_spacing": (
        "phi",
        "rho",
        "c",
        "f_ct",
        "tau_b",
        "sigma_s",
        "sigma_sr",
        "b_t",
        "E_s",
        "beta",
    ),
    "rust_time": ("c", "K"),
}
NONE: tuple[dict, dict] = ({}, {})


def spacing_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give what goes into the spacing and width of cracks, what is shown, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a choice of bars.
    """
    control = outcome.control
    if not is_cracked(outcome.structure, control):
        return *NONE, _("Nothing cracks above: load it more, and its numbers appear here.")
    if outcome.structure.residual:
        return *NONE, _("With fibres cracks come closer still: take them out to see the numbers.")
    found = next(one for one in control.worse.answers if one.rule == "model_code_2010")
    values = found.values
    if not found.width:
        return *NONE, _("So small a pull hardly opens a crack: pull more to see the numbers.")
    given = {name: values[name] for name in ("phi", "rho", "c", "f_ct", "sigma_s", "sigma_sr")}
    given |= {"E_s": values["E_s"], "b_t": values["b_t"], "beta": values["w"] / values["w_s"]}
    given |= {"tau_b": values["tau"] * values["f_ct"]}
    shown = {name: values[name] for name in ("s_r", "w")}
    return given, shown, _judging_note(control.worse.band)


def _judging_note(band) -> str:
    text = _("These are the steps of Model Code 2010, one rule of the band above; {name} judges.")
    return text.format(name=band.name)


def rust_numbers(outcome: Outcome) -> tuple[dict, dict, str]:
    """Give the cover and the pace of the air, the years that are shown, and a note.

    Parameters
    ----------
    outcome : Outcome
        Of a choice of bars.
    """
    control = outcome.control
    if outcome.structure.air == "rained":
        return *NONE, _(
            "Rain keeps the air out for a while: this holds for a face out of the rain."
        )
    given = {"c": control.cover, "K": control.carbonated / math.sqrt(LIFE)}
    if control.years > LONG:
        return given, {}, _("Beyond 100 years the numbers say no more than: very long.")
    if outcome.structure.slack:
        note = _("The cover is that of bars that lie as they should.")
        return given, {}, note
    return given, {"T_c": control.years}, ""
