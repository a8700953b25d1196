"""Your call: a learner says where a member is stretched or cracks before anything is shown."""

from dataclasses import asdict

import numpy as np

from crackkit.drawing.blank_beam import description
from crackkit.drawing.blank_member import blank_member, strips
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.learning.bar_marking import PLACES
from crackkit.learning.marking import FACES, Marking, mark_bar, mark_cracks, mark_stretch
from crackkit.learning.remark import MISSED
from crackkit.panels.exercise import Exercise
from crackkit.panels.predict_view import (
    FACE_WORDS,
    HINTS,
    LEADS,
    TASKS,
    TITLES,
    PredictView,
    cells_along,
    words,
)
from crackkit.panels.preferences import Preferences
from crackkit.units.places import place_named, stretch_told
from crackkit.words import _


class Predict(Exercise):
    """A member without results, to be marked by the learner; then the answer, with reasons.

    Parameters
    ----------
    structure : object
        The member; its bars are not shown.
    ask : str, optional
        ``"stretch"``, ``"cracks"`` or ``"bar"``; may be left out where the item is called so.
    lesson, item : str
        Where attempts are recorded; the item is named after what is asked if left out.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.

    Raises
    ------
    ValueError
        If it is not clear what is asked.
    """

    def __init__(
        self,
        structure,
        ask: str = "",
        lesson: str = "",
        item: str = "",
        choices: Preferences | None = None,
    ):
        ask = ask or item or "stretch"
        if ask not in TITLES:
            raise ValueError(_("A prediction asks for one of: {}.").format(", ".join(TITLES)))
        view = PredictView(
            ask=ask, words=words(), title=TITLES[ask], task=TASKS[ask], hint=HINTS[ask]
        )
        super().__init__(view, lesson, item or ask, choices)
        self.structure, self.outcome = structure, structure.solve()
        self.view.cells = self.cells = cells_along(structure)
        self.view.places = [list(pair) for pair in self.offered.items()] if ask == "bar" else []
        self._empty()
        self.listen()

    @property
    def offered(self) -> dict[str, str]:
        """Places of which one is to be chosen: key to label."""
        return PLACES

    def act(self, name: str, message: dict) -> None:
        """Do what a button asks for: ``call``, or ``again`` after it."""
        if name == "call" and not self.view.called:
            self._take(message)
            if self.view.ask != "bar" or self.view.chosen:
                self._record()
        if name == "again":
            self._empty()
        self.show()

    def _empty(self) -> None:
        self.view.called, self.view.chosen = False, ""
        self.view.painted = {face: [] for face in FACES}

    def _take(self, message: dict) -> None:
        """Keep what was answered: only cells that exist, and places that are offered."""
        painted = message.get("painted") or {}
        self.view.painted = {
            face: sorted({int(k) for k in painted.get(face, ()) if 0 <= int(k) < self.cells})
            for face in FACES
        }
        chosen = message.get("chosen")
        self.view.chosen = chosen if chosen in self.offered else ""

    def _record(self) -> None:
        self.view.called = True
        marking = self.marking()
        answer = self.view.chosen if self.view.ask == "bar" else dict(self.view.painted)
        self.store.record(self.lesson, self.item, answer, marking.right, marking.score)

    def marking(self) -> Marking:
        """Mark the present answer."""
        painted = self.view.painted
        if self.view.ask == "stretch":
            return mark_stretch(painted, self.outcome, self.cells)
        if self.view.ask == "bar":
            return mark_bar(self.view.chosen, self.outcome)
        centres = cell_centres(self.structure.length, self.cells)
        marks = [(face, centres[k]) for face in FACES for k in painted[face]]
        return mark_cracks(marks, self.outcome, self.system)

    def show(self) -> None:
        """Send the drawing, and the answer once the learner has committed."""
        self._show_picture()
        marking = self.marking() if self.view.called else None
        self.view.headline = marking.headline if marking else ""
        self.view.good = bool(marking and marking.right)
        self.view.remarks = self._said(marking.remarks) if marking else []
        self.view.kinds = cell_kinds(marking, self.structure.length, self.cells) if marking else {}
        self.view.tally = calls_told(self.store.attempts(self.lesson, self.item))

    def _show_picture(self) -> None:
        page = View(self.system, live=False, width=self.page_width)
        outcome = self.outcome if self.view.called else None
        picture = blank_member(self.structure, page, outcome, self.view.chosen)
        self.view.shown_theme = self.preferences.shown_theme
        self.view.cell_names = _cell_names(self.structure, self.cells, self.system)
        self.view.strips = {} if self.view.places else asdict(strips(self.structure, page))
        self.view.svg = svg(picture, self.view.shown_theme)
        self.view.alt = description(self.structure, page)

    def _said(self, remarks) -> list[list[str]]:
        """Write the remarks; those with the same reason are said once for all their places."""
        places: dict[tuple, list[str]] = {}
        for remark in remarks:
            same = (remark.kind, remark.face, remark.text)
            places.setdefault(same, []).append(self._where(remark))
        return [
            [kind, LEADS[kind], self._on_face(face, where), text]
            for (kind, face, text), where in places.items()
        ]

    def _on_face(self, face: str, where: list[str]) -> str:
        named = face in FACES and self.view.ask != "bar"
        return f"{FACE_WORDS[face]}, {'; '.join(where)}" if named else ""

    def _where(self, remark) -> str:
        return stretch_told(self.structure, remark.start, remark.end, self.system)


def cell_centres(length: float, cells: int) -> np.ndarray:
    """Middles of the cells [mm] along a member of a length [mm]."""
    return (np.arange(cells) + 0.5) * length / cells


def cell_kinds(marking: Marking, length: float, cells: int) -> dict[str, list[str]]:
    """Give for each cell of each face the kind of remark that covers it, empty for none.

    Parameters
    ----------
    marking : Marking
    length : float
        Of the member [mm].
    cells : int
        Number of cells along each face [-].
    """
    centres = cell_centres(length, cells)
    kinds = {face: [""] * cells for face in FACES}
    # what was missed is said first, so that it does not hide a mark of the learner
    for remark in sorted(marking.remarks, key=lambda r: r.kind != MISSED):
        reach = length / cells / 2 if remark.start == remark.end else 0.0
        inside = (centres >= remark.start - reach) & (centres <= remark.end + reach)
        for k in np.flatnonzero(inside) if remark.face in kinds else ():
            kinds[remark.face][k] = remark.kind
    return kinds


def _cell_names(structure, cells: int, system: str) -> list[str]:
    return [
        _("cell {k}, {place}").format(k=k + 1, place=place_named(structure, x, system))
        for k, x in enumerate(cell_centres(structure.length, cells).tolist())
    ]


def calls_told(attempts) -> str:
    """Say how many calls were made, and the best of them."""
    if not attempts:
        return ""
    best = round(100 * max(attempt.score or 0.0 for attempt in attempts))
    return _("Calls so far: {n}. Best: {share} %.").format(n=len(attempts), share=best)
