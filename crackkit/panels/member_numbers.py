"""What an Outcome gives to a derivation: the numbers to put in, and those to compare with."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.panels import (
    choice_numbers,
    corner_numbers,
    curled_numbers,
    ground_numbers,
    pulled_numbers,
)
from crackkit.structures.outcome import Outcome
from crackkit.words import _

# symbol -> kind of quantity and what it stands for, in the order in which letters are listed
LETTERS = {
    "b": ("size", _("width")),
    "h": ("size", _("depth")),
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
    "f_y": ("stress", _("stress at which steel yields")),
    "t": ("size", _("how far the bars were trodden down")),
    "L": ("length", _("reach of the arm")),
    "q": ("line_load", _("spread load")),
    "g_0": ("line_load", _("own weight at the root")),
    "g_1": ("line_load", _("own weight at the tip")),
    "P": ("force", _("loads on one place, together")),
    "a_P": ("length", _("their distance from the root")),
    "q_1": ("line_load", _("all spread load on the span left of B")),
    "q_2": ("line_load", _("all spread load on the span right of B")),
    "L_1": ("length", _("span left of B")),
    "L_2": ("length", _("span right of B")),
    "P_t": ("force", _("travelling load")),
    "a_t": ("length", _("its distance from B")),
    "L_t": ("length", _("the span it stands in")),
    "M_A": ("moment", _("moment over the support before B")),
    "M_C": ("moment", _("moment over the support after B")),
} | (choice_numbers.LETTERS | pulled_numbers.LETTERS)
LETTERS |= ground_numbers.LETTERS | curled_numbers.LETTERS | corner_numbers.LETTERS
OF = {
    "cracked_section": ("b", "h", "d", "A_s", "n", "M", "E_s", "d_c", "s"),
    "cracking_moment": ("b", "h", "f_t"),
    "lean": ("σ", "τ"),
    "lever_arm": ("b", "d", "A_s", "n", "M", "f_y", "t"),
    "arm_moment": ("L", "q", "g_0", "g_1", "P", "a_P"),
    "over_support": ("q_1", "q_2", "L_1", "L_2", "P_t", "a_t", "L_t", "M_A", "M_C"),
} | (choice_numbers.OF | pulled_numbers.OF | ground_numbers.OF | curled_numbers.OF)
OF |= corner_numbers.OF
OF["cracked_section_two_layers"] = (*OF["cracked_section"], "A_o", "d_o", "k")


@dataclass(frozen=True)
class MemberNumbers:
    """Numbers of one member for one derivation.

    Attributes
    ----------
    key : str
        The derivation that fits the bars of this member.
    given : dict
        Symbol to number [N, mm, MPa]; empty where the member does not answer.
    shown : dict
        Symbol to what the panel shows [N, mm, MPa].
    note : str
        Why there are no numbers, or in what the panel goes further; may be empty.
    """

    key: str
    given: dict[str, float]
    shown: dict[str, float]
    note: str = ""


def member_numbers(outcome: Outcome, key: str) -> MemberNumbers:
    """Read the numbers of a member for a derivation, at its worst section.

    Parameters
    ----------
    outcome : Outcome
        Of a straight member with a rectangular section.
    key : str
        ``"cracked_section"``, ``"cracking_moment"``, ``"lever_arm"``, ``"arm_moment"``,
        ``"over_support"``, ``"bar_spacing"``, ``"rust_time"``, ``"transfer_length"``,
        ``"drag"``, ``"lift_off"``, ``"inside_corner"`` or ``"lean"``.
    """
    readers = {
        "cracked_section": _cracked,
        "cracking_moment": _cracking,
        "lever_arm": _lever,
        "arm_moment": arm_numbers,
        "over_support": support_numbers,
        "bar_spacing": _spacing,
        "rust_time": _rust,
        "transfer_length": _transfer,
        "drag": _drag,
        "lift_off": _lift_off,
        "inside_corner": _inside_corner,
    }
    return readers[key](outcome) if key in readers else MemberNumbers(key, {}, {})


def _spacing(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("bar_spacing", *choice_numbers.spacing_numbers(outcome))


def _rust(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("rust_time", *choice_numbers.rust_numbers(outcome))


def _transfer(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("transfer_length", *pulled_numbers.transfer_numbers(outcome))


def _drag(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("drag", *ground_numbers.drag_numbers(outcome))


def _lift_off(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("lift_off", *curled_numbers.lift_off_numbers(outcome))


def _inside_corner(outcome: Outcome) -> MemberNumbers:
    return MemberNumbers("inside_corner", *corner_numbers.inside_corner_numbers(outcome))


def _cracking(outcome: Outcome) -> MemberNumbers:
    section = outcome.worst.section
    strength = next(step.value for step in outcome.working if step.symbol == "f_t")
    given = {"b": section.width, "h": section.depth, "f_t": strength}
    return MemberNumbers("cracking_moment", given, {"M_cr": outcome.worst.cracking_moment})


def _cracked(outcome: Outcome) -> MemberNumbers:
    worst, note = outcome.worst, _why_none(outcome)
    if note:
        return MemberNumbers("cracked_section", {}, {}, note)
    steps = {step.symbol: step.value for step in reversed(_before_widths(outcome))}
    width = _frosch(outcome)
    given = _outer(outcome, steps) | {symbol: width[symbol] for symbol in ("E_s", "d_c", "s")}
    shown = {"x": steps["c_na"], "I_cr": steps["I_cr"], "f_s": worst.steel_stress, "w": width["w"]}
    return _with_others(outcome, given, shown, width["d"])


def _why_none(outcome: Outcome) -> str:
    if not outcome.worst.cracked:
        return _("Nothing cracks above: load it more, and its numbers appear here.")
    if outcome.widest.width is None:
        return _("No bar crosses the worst crack above: there is no pull to balance the push.")
    return ""


def _lever(outcome: Outcome) -> MemberNumbers:
    """The lever arm of the outermost bars at the worst section."""
    note = _why_none(outcome)
    if note:
        return MemberNumbers("lever_arm", {}, {}, note)
    steps = {step.symbol: step.value for step in reversed(_before_widths(outcome))}
    given = {symbol: value for symbol, value in _outer(outcome, steps).items() if symbol != "h"}
    given |= {"f_y": outcome.structure.yield_strength, "t": _trodden(outcome)}
    shown = {"x": steps["c_na"], "f_s": outcome.worst.steel_stress}
    if _other_layers(outcome, given["d"]):
        note = _("The bars near the other face are left out here; the panel counts them too.")
    return MemberNumbers("lever_arm", given, shown, note)


def _trodden(outcome: Outcome) -> float:
    """How far the bars that cross the worst crack were trodden down [mm]."""
    bars = (getattr(outcome.structure, key, None) for key in outcome.widest.bars)
    return max((getattr(each, "drop", 0.0) for each in bars), default=0.0)


def arm_numbers(outcome: Outcome) -> MemberNumbers:
    """Loads of an arm, and the moment at its root.

    Parameters
    ----------
    outcome : Outcome
        Of a cantilever.
    """
    arm = outcome.structure
    at_root, at_tip = arm.own_weight
    force = sum(load.force for load in arm.loads)
    pulled = sum(load.force * load.from_root for load in arm.loads)
    given = {"L": arm.overhang, "q": arm.uniform_load, "g_0": at_root, "g_1": at_tip}
    given |= {"P": force, "a_P": pulled / force if force else 0.0}
    root = float(np.interp(arm.root, outcome.x, np.abs(outcome.moment)))
    return MemberNumbers("arm_moment", given, {"M": root})


def support_numbers(outcome: Outcome) -> MemberNumbers:
    """Loads beside the first inner support, B, of a floor, and the moment over it.

    Parameters
    ----------
    outcome : Outcome
        Of a floor over several spans.
    """
    floor = outcome.structure
    near = [load for load in floor.hung if load.at < floor.places[2]]
    if len(near) > 1:
        note = _("Two travelling loads stand beside B: move one away to see its numbers.")
        return MemberNumbers("over_support", {}, {}, note)
    before, _over, after = np.interp(floor.places[:3], outcome.x, outcome.range.elastic).tolist()
    first, second = (_spread_on(floor, k) for k in range(2))
    given = {"q_1": first, "q_2": second, "M_A": before, "M_C": after}
    given |= {"L_1": floor.spans[0].length, "L_2": floor.spans[1].length}
    given |= _travelling(floor, near)
    shown = {"M_B": float(np.interp(floor.places[1], outcome.x, outcome.moment))}
    return MemberNumbers("over_support", given, shown, _support_note(floor))


def _spread_on(floor, index: int) -> float:
    """All load spread over a span [N/mm]."""
    middle = sum(floor.places[index : index + 2]) / 2
    return sum(load.total for load in floor.spread if load.start < middle < load.end)


def _travelling(floor, near) -> dict[str, float]:
    if not near:
        return {"P_t": 0.0, "a_t": 0.0, "L_t": floor.spans[0].length}
    (load,) = near
    over = floor.places[1]
    span = floor.spans[0] if load.at < over else floor.spans[1]
    return {"P_t": load.force, "a_t": abs(load.at - over), "L_t": span.length}


def _support_note(floor) -> str:
    if any(support.sunk for support in floor.supports):
        return _("A support has sunk: that moves moments besides what the loads do.")
    if floor.shifted:
        return _("The derivation leaves out what cracks shift; the panel counts it.")
    return ""


def _outer(outcome: Outcome, steps: dict) -> dict[str, float]:
    section = outcome.worst.section
    given = {symbol: steps[symbol] for symbol in ("d", "A_s", "n", "M")}
    return {"b": section.width, "h": section.depth} | given


def _with_others(outcome: Outcome, given: dict, shown: dict, centroid: float) -> MemberNumbers:
    """Add the layer of bars beside the outermost, if there is one."""
    others = _other_layers(outcome, given["d"])
    if not others:
        return MemberNumbers("cracked_section", given, shown)
    if len(others) > 1:
        note = _("There are more than two layers of bars above: this is for one or two.")
        return MemberNumbers("cracked_section", {}, {}, note)
    ((depth, area),) = others
    counts = given["n"] if depth > shown["x"] else given["n"] - 1
    given = given | {"A_o": area, "d_o": depth, "k": counts}
    note = ""
    if abs(centroid - given["d"]) > 1e-6:
        # both layers lie near the stretched face: the width rule reads their common centroid
        given = {symbol: value for symbol, value in given.items() if symbol != "s"}
        note = _("Both layers lie near the stretched face; the panel takes them together for w.")
    return MemberNumbers("cracked_section_two_layers", given, shown, note)


def _other_layers(outcome: Outcome, outermost: float) -> list[tuple[float, float]]:
    """Depth from the squeezed face [mm] and area [mm2] of the other bars at the worst section."""
    worst, whole = outcome.worst, outcome.worst.section.depth
    found = [
        (_from_squeezed(worst.face, line.depth_at(worst.at), whole), line)
        for line in outcome.steel
        if line.number and line.start < worst.at < line.end
    ]
    found.remove(min(found, key=lambda pair: abs(pair[0] - outermost)))
    return [(depth, line.number * bar(line.size).area) for depth, line in found]


def _from_squeezed(face: str, depth: float, whole: float) -> float:
    return depth if face == "bottom" else whole - depth


def _before_widths(outcome: Outcome) -> list:
    """Steps of the working up to the steel stress; the width rules reuse some of the letters."""
    symbols = [step.symbol for step in outcome.working]
    return list(outcome.working[: symbols.index("f_s") + 1])


def _frosch(outcome: Outcome) -> dict[str, float]:
    """Values of Frosch's rule, the only one that works out d_star."""
    topic = next(step.topic for step in outcome.working if step.symbol == "d_star")
    return {step.symbol: step.value for step in outcome.working if step.topic == topic}
