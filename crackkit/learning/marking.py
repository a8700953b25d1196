"""Marking a prediction of where a member is stretched, painted cell by cell along both faces.

Cells count by how strongly the face is stretched or squeezed there: leaving out the weak ends of
a zone costs little, painting a face that is squeezed hard costs much. Cells with next to no
stress count neither way.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.learning.bar_marking import mark_bar
from crackkit.learning.bending import (
    bend,
    face_stress,
    in_a_wall,
    largest_stress,
    loads_between,
    why,
)
from crackkit.learning.crack_marking import mark_cracks
from crackkit.learning.remark import (
    ENOUGH,
    MISSED,
    RIGHT,
    WRONG,
    Marking,
    Remark,
    in_order,
)
from crackkit.words import _

__all__ = ["Marking", "Remark", "mark_bar", "mark_cracks", "mark_stretch"]

FACES = ("top", "bottom")
TINY = 0.10  # share of the largest stress [-] under which a cell counts neither way
WEAK = 0.40  # share of the largest stress [-] under which a miss is called small
IN_EACH = 0.3  # score [-] that each of several spans must reach
SEEN = 0.5  # share of a zone [-] that must be painted for the zone to count as seen


@dataclass(frozen=True)
class _Face:
    """The cells of one face: what happens there, and what was painted."""

    name: str
    edges: np.ndarray
    stretched: np.ndarray
    innocent: np.ndarray  # neither right nor wrong
    weight: np.ndarray
    painted: np.ndarray

    @property
    def kinds(self) -> np.ndarray:
        """Kind of remark for each cell, empty where there is nothing to say."""
        kinds = np.full(self.painted.size, "", dtype=object)
        kinds[self.stretched & self.painted] = RIGHT
        kinds[self.stretched & ~self.painted] = MISSED
        kinds[~self.stretched & ~self.innocent & self.painted] = WRONG
        return kinds

    def weight_of(self, kind: str) -> float:
        """Sum of the weights of the cells of one kind [-]."""
        return float(self.weight[self.kinds == kind].sum())


def mark_stretch(painted, outcome, cells: int = 24) -> Marking:
    """Compare a painted prediction with where the concrete really is stretched.

    Parameters
    ----------
    painted : dict of set of int
        Painted cells of the faces ``"bottom"`` and ``"top"``, counted from 0 at the left end.
    outcome : Outcome
        What mechanics says of the member.
    cells : int
        Number of cells along each face [-].

    Returns
    -------
    Marking
    """
    faces = [_face(name, painted.get(name, ()), outcome, cells) for name in FACES]
    score = _score(faces)
    passed = score >= ENOUGH and all(_seen(zone, faces) for zone in outcome.tension)
    passed = passed and all(part >= IN_EACH for part in _in_each_span(faces, outcome))
    remarks = [remark for face in faces for remark in _remarks(face, outcome)]
    return Marking(passed, score, in_order(remarks) or (_idle(outcome),))


def _face(name: str, painted, outcome, cells: int) -> _Face:
    edges = np.linspace(0.0, float(outcome.x[-1]), cells + 1)
    middles = (edges[:-1] + edges[1:]) / 2
    stress = face_stress(outcome, name, middles)
    largest = largest_stress(outcome)
    weight = np.abs(stress) / largest if largest else np.zeros(cells)
    here, elsewhere = _covered(outcome, name, edges), _covered(outcome, _other(name), edges)
    strong = weight >= TINY
    hidden = in_a_wall(outcome, middles)
    idle = ~here & ~elsewhere & ~hidden if largest else np.ones(cells, dtype=bool)
    chosen = np.isin(np.arange(cells), list(painted))
    weight = np.where(idle, TINY, weight)
    innocent = (~strong & ~idle) | hidden
    return _Face(name, edges, here & strong & ~hidden, innocent, weight, chosen)


def _other(face: str) -> str:
    return "top" if face == "bottom" else "bottom"


def _covered(outcome, face: str, edges) -> np.ndarray:
    """Tell for each cell whether more than half of it is stretched at all."""
    inside = np.zeros(edges.size - 1)
    for zone in outcome.tension:
        if zone.face == face:
            shared = np.minimum(edges[1:], zone.end) - np.maximum(edges[:-1], zone.start)
            inside += np.maximum(shared, 0.0)
    return inside > 0.5 * np.diff(edges)


def _score(faces) -> float:
    good = sum(face.weight_of(RIGHT) for face in faces)
    whole = good + sum(face.weight_of(MISSED) + face.weight_of(WRONG) for face in faces)
    return good / whole if whole else 1.0


def _in_each_span(faces, outcome) -> list[float]:
    """Scores of the middle parts of several spans [-]; a weak span must not hide behind others."""
    places = sorted(footing.at for footing in outcome.structure.footings)
    if len(places) < 3:
        return []
    spans = zip(places, places[1:], strict=False)
    return [_score([_part(face, a + (b - a) / 4, b - (b - a) / 4) for face in faces])
            for a, b in spans]  # fmt: skip


def _part(face: _Face, start: float, end: float) -> _Face:
    """The cells of a face from start to end [mm]."""
    middle = (face.edges[:-1] + face.edges[1:]) / 2
    inside = (middle >= start) & (middle <= end)
    rows = (face.stretched, face.innocent, face.weight, face.painted)
    return _Face(face.name, face.edges, *(row[inside] for row in rows))


def _seen(zone, faces) -> bool:
    """Tell whether enough of a zone was painted; zones with next to no stretch need not be."""
    face = next(face for face in faces if face.name == zone.face)
    middle = (face.edges[:-1] + face.edges[1:]) / 2
    inside = face.stretched & (middle > zone.start) & (middle < zone.end)
    weights = face.weight[inside]
    found = face.weight[inside & face.painted].sum()
    return not weights.size or found >= SEEN * weights.sum()


def _remarks(face: _Face, outcome) -> list[Remark]:
    kinds, made = face.kinds, []
    starts = [k for k in range(kinds.size) if kinds[k] and (k == 0 or kinds[k] != kinds[k - 1])]
    for first in starts:
        last = first
        while last + 1 < kinds.size and kinds[last + 1] == kinds[first]:
            last += 1
        made.extend(_remark(face, kinds[first], first, last, outcome))
    return made


def _remark(face: _Face, kind: str, first: int, last: int, outcome) -> list[Remark]:
    start, end = float(face.edges[first]), float(face.edges[last + 1])
    text = why(outcome, face.name, start, end)
    beside = set(face.kinds[max(first - 1, 0) : last + 2])
    if kind == MISSED and RIGHT in beside and face.weight[first : last + 1].max() < WEAK:
        text = _("Only a little, but it is stretched here too: it still bends, less and less.")
    if kind == WRONG and face.name == "top" and loads_between(outcome, start, end):
        text = f"{text} {_far_side(outcome, start, end)}".strip()
    return [Remark(face.name, start, end, kind, text)]


def _far_side(outcome, start: float, end: float) -> str:
    if bend(outcome, start, end) != "smile":
        return ""
    return _("The load presses on the top, and the far side is stretched.")


def _idle(outcome) -> Remark:
    text = _("Nothing bends it, so no face is stretched.")
    return Remark("", 0.0, float(outcome.x[-1]), RIGHT, text)
