"""What an Outcome gives to a derivation: the numbers to put in, and those to compare with."""

from dataclasses import dataclass

from crackkit.mechanics.bars import bar
from crackkit.structures.outcome import Outcome
from crackkit.words import _

# symbol -> kind of quantity and what it stands for, in the order in which letters are listed
LETTERS = {
    "b": ("size", _("width")),
    "h": ("size", _("depth of the beam")),
    "d": ("size", _("squeezed face to the outermost bars")),
    "A_s": ("area", _("steel of those bars")),
    "d_o": ("size", _("squeezed face to the other bars")),
    "A_o": ("area", _("steel of the other bars")),
    "k": ("plain", _("how many times they count")),
    "n": ("plain", _("stiffness of steel over that of concrete")),
    "M": ("moment", _("bending moment")),
    "f_t": ("strength", _("stress at which the face cracks")),
    "E_s": ("stress", _("stiffness (modulus) of steel")),
    "d_c": ("size", _("stretched face to the middle of the nearest bars")),
    "s": ("size", _("bars centre to centre")),
    "σ": ("", _("pull along the beam, from bending")),
    "τ": ("", _("shear stress")),
}
OF = {
    "cracked_section": ("b", "h", "d", "A_s", "n", "M", "E_s", "d_c", "s"),
    "cracking_moment": ("b", "h", "f_t"),
    "lean": ("σ", "τ"),
}
OF["cracked_section_two_layers"] = (*OF["cracked_section"], "A_o", "d_o", "k")


@dataclass(frozen=True)
class BeamNumbers:
    """Numbers of one beam for one derivation.

    Attributes
    ----------
    key : str
        The derivation that fits the bars of this beam.
    given : dict
        Symbol to number [N, mm, MPa]; empty where the beam does not answer.
    shown : dict
        Symbol to what the panel shows [N, mm, MPa].
    note : str
        Why there are no numbers, or in what the panel goes further; may be empty.
    """

    key: str
    given: dict[str, float]
    shown: dict[str, float]
    note: str = ""


def beam_numbers(outcome: Outcome, key: str) -> BeamNumbers:
    """Read the numbers of a beam for a derivation, at its worst section.

    Parameters
    ----------
    outcome : Outcome
        Of a straight member with a rectangular section.
    key : str
        ``"cracked_section"``, ``"cracking_moment"`` or ``"lean"``.
    """
    if key == "cracked_section":
        return _cracked(outcome)
    if key == "cracking_moment":
        return _cracking(outcome)
    return BeamNumbers(key, {}, {})


def _cracking(outcome: Outcome) -> BeamNumbers:
    beam = outcome.structure
    strength = next(step.value for step in outcome.working if step.symbol == "f_t")
    given = {"b": beam.width, "h": beam.depth, "f_t": strength}
    return BeamNumbers("cracking_moment", given, {"M_cr": outcome.worst.cracking_moment})


def _cracked(outcome: Outcome) -> BeamNumbers:
    worst, key = outcome.worst, "cracked_section"
    if not worst.cracked:
        note = _("Nothing cracks in the beam above: load it more, and its numbers appear here.")
        return BeamNumbers(key, {}, {}, note)
    crack = outcome.widest
    if crack.width is None:
        note = _("No bar crosses the worst crack above: there is no pull to balance the push.")
        return BeamNumbers(key, {}, {}, note)
    steps = {step.symbol: step.value for step in reversed(_before_widths(outcome))}
    width = _frosch(outcome)
    given = _outer(outcome, steps) | {symbol: width[symbol] for symbol in ("E_s", "d_c", "s")}
    shown = {"x": steps["c_na"], "I_cr": steps["I_cr"], "f_s": worst.steel_stress, "w": width["w"]}
    return _with_others(outcome, given, shown, width["d"])


def _outer(outcome: Outcome, steps: dict) -> dict[str, float]:
    beam = outcome.structure
    given = {symbol: steps[symbol] for symbol in ("d", "A_s", "n", "M")}
    return {"b": beam.width, "h": beam.depth} | given


def _with_others(outcome: Outcome, given: dict, shown: dict, centroid: float) -> BeamNumbers:
    """Add the layer of bars beside the outermost, if there is one."""
    others = _other_layers(outcome, given["d"])
    if not others:
        return BeamNumbers("cracked_section", given, shown)
    if len(others) > 1:
        note = _("There are more than two layers of bars above: this is for one or two.")
        return BeamNumbers("cracked_section", {}, {}, note)
    ((depth, area),) = others
    counts = given["n"] if depth > shown["x"] else given["n"] - 1
    given = given | {"A_o": area, "d_o": depth, "k": counts}
    note = ""
    if abs(centroid - given["d"]) > 1e-6:
        # both layers lie near the stretched face: the width rule reads their common centroid
        given = {symbol: value for symbol, value in given.items() if symbol != "s"}
        note = _("Both layers lie near the stretched face; the panel takes them together for w.")
    return BeamNumbers("cracked_section_two_layers", given, shown, note)


def _other_layers(outcome: Outcome, outermost: float) -> list[tuple[float, float]]:
    """Depth from the squeezed face [mm] and area [mm2] of the other bars at the worst section."""
    worst, whole = outcome.worst, outcome.structure.depth
    found = [
        (line.depth if worst.face == "bottom" else whole - line.depth, line)
        for line in outcome.steel
        if line.number and line.start < worst.at < line.end
    ]
    found.remove(min(found, key=lambda pair: abs(pair[0] - outermost)))
    return [(depth, line.number * bar(line.size).area) for depth, line in found]


def _before_widths(outcome: Outcome) -> list:
    """Steps of the working up to the steel stress; the width rules reuse some of the letters."""
    symbols = [step.symbol for step in outcome.working]
    return list(outcome.working[: symbols.index("f_s") + 1])


def _frosch(outcome: Outcome) -> dict[str, float]:
    """Values of Frosch's rule, the only one that works out d_star."""
    topic = next(step.topic for step in outcome.working if step.symbol == "d_star")
    return {step.symbol: step.value for step in outcome.working if step.topic == topic}
