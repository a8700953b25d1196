"""Marking a prediction of where the cracks open."""

import numpy as np

from crackkit.learning.bending import FACE_NAMES, SMILE, bend, face_stress, loads_between, why
from crackkit.learning.remark import MISSED, RIGHT, WRONG, Marking, Remark, in_order
from crackkit.units.places import place_told, stretch_told
from crackkit.words import _

NEAR = 0.10  # share of the length [-] within which a place counts as met
IDLE = 0.03  # squeeze, as a multiple of the strength [-], that counts as none
REACH = 0.03  # share of the length [-] round a mark that a load over it counts as touching


def mark_cracks(places, outcome, system: str = "SI") -> Marking:
    """Compare the places where cracks were expected with where they open.

    Parameters
    ----------
    places : iterable of (str, float)
        Face, ``"bottom"`` or ``"top"``, and place [mm from the left end] of each mark.
    outcome : Outcome
        What mechanics says of the member.
    system : str
        Units of the remarks, ``"SI"`` or ``"US"``.

    Returns
    -------
    Marking
        It passes when every stretch that cracks has a mark, no mark stands where nothing cracks,
        and one mark is near the first crack.
    """
    marks = [(face, float(at)) for face, at in places]
    stretches = _cracked(outcome)
    if not stretches:
        return _uncracked(marks, outcome)
    remarks = [_mark_remark(face, at, outcome) for face, at in marks]
    remarks += [_missed(zone, part, outcome, system) for zone, part in _unmarked(marks, stretches)]
    first = _first_crack(marks, stretches, outcome, system)
    every = in_order([*remarks, *first])
    score = _score(marks, stretches, every, met=not first)
    return Marking(score == 1.0, score, every)


def _cracked(outcome) -> list:
    """Pairs of a zone and one stretch of it [mm] that cracks."""
    return [(zone, part) for zone in outcome.tension for part in zone.cracked]


def _holds(zone, part, face: str, at: float, slack: float = 0.0) -> bool:
    return zone.face == face and part[0] - slack <= at <= part[1] + slack


def _reach(outcome) -> float:
    return REACH * float(outcome.x[-1])


def _mark_remark(face: str, at: float, outcome) -> Remark:
    reach = _reach(outcome)
    if any(_holds(zone, part, face, at, reach) for zone, part in _cracked(outcome)):
        text = _("Here the {face} is stretched more than the concrete can bear.")
        return Remark(face, at, at, RIGHT, text.format(face=FACE_NAMES[face]))
    return Remark(face, at, at, WRONG, _why_not(face, at, outcome))


def _why_not(face: str, at: float, outcome) -> str:
    reach = _reach(outcome)
    pull = float(face_stress(outcome, face, at))
    if pull > 0:
        text = _("It is stretched here, but only to {share} % of what the concrete can bear.")
        return text.format(share=max(1, round(100 * min(pull, 0.99))))
    if pull > -IDLE:
        return _("Hardly anything bends it here: next to nothing pulls or pushes the concrete.")
    around = max(at - reach, 0.0), min(at + reach, float(outcome.x[-1]))
    reason = why(outcome, face, *around)
    if face == "top" and loads_between(outcome, *around) and bend(outcome, *around) == SMILE:
        return _("The load presses here, but the crack opens on the far side.") + f" {reason}"
    return reason


def _unmarked(marks, stretches) -> list:
    return [
        (zone, part)
        for zone, part in stretches
        if not any(_holds(zone, part, face, at) for face, at in marks)
    ]


def _missed(zone, part, outcome, system: str) -> Remark:
    text = _("Cracks open here too, from {stretch}. {reason}").format(
        stretch=stretch_told(outcome.structure, *part, system),
        reason=why(outcome, zone.face, *part),
    )
    return Remark(zone.face, *part, MISSED, text)


def _first_crack(marks, stretches, outcome, system: str) -> list[Remark]:
    """Say where the first crack opens, if no mark is near it though its stretch has one."""
    zone, part = max(stretches, key=lambda pair: pair[0].peak)
    near = NEAR * float(outcome.x[-1])
    inside = [at for face, at in marks if _holds(zone, part, face, at)]
    if not inside or np.min(np.abs(np.array(inside) - zone.at)) <= near:
        return []
    text = _("The first crack opens where the stretch is largest, at {place}.")
    place = place_told(outcome.structure, zone.at, system)
    return [Remark(zone.face, zone.at, zone.at, MISSED, text.format(place=place))]


def _score(marks, stretches, remarks, met: bool) -> float:
    wrong = sum(remark.kind == WRONG for remark in remarks)
    found = len(stretches) - len(_unmarked(marks, stretches))
    share = found / (len(stretches) + wrong)
    return share if met else 0.75 * share


def _uncracked(marks, outcome) -> Marking:
    if marks:
        remarks = tuple(Remark(f, at, at, WRONG, _why_not(f, at, outcome)) for f, at in marks)
        return Marking(False, 0.0, remarks)
    text = _("The stretch stays below what the concrete can bear: no crack opens.")
    return Marking(True, 1.0, (Remark("", 0.0, float(outcome.x[-1]), RIGHT, text),))
