"""The page's side of a prediction, and the words it is asked with."""

import traitlets

from crackkit.learning.remark import KINDS, MISSED, RIGHT, WRONG
from crackkit.panels.exercise import ExerciseView
from crackkit.panels.view import front_end
from crackkit.words import _

CELLS = 24  # along a member over one span
PER_SPAN = 12  # where there are several
LEADS = {RIGHT: _("Right"), MISSED: _("Missed"), WRONG: _("Not so")}
FACE_WORDS = {"top": _("Top"), "bottom": _("Bottom")}
TITLES = {
    "stretch": _("Your call: where will it be stretched?"),
    "cracks": _("Your call: where will it crack?"),
    "bar": _("Your call: where do the bars belong?"),
}
TASKS = {
    "stretch": _(
        "Paint the cells along the top and along the bottom where the concrete is pulled longer. "
        "Leave the others empty."
    ),
    "cracks": _(
        "Put a mark in the cells where you expect a crack to open. A few are enough, one of them "
        "where the first crack comes."
    ),
    "bar": _("Concrete is weak when it is stretched. Choose where the bars cross the cracks."),
}
HINTS = {
    "stretch": _(
        "Mouse or finger: drag. Keyboard: Tab to a face, arrows move, Space paints, Shift with an "
        "arrow paints on."
    ),
    "cracks": _("Mouse or finger: tap. Keyboard: Tab to a face, arrows move, Space marks."),
    "bar": "",
}


def cells_along(structure) -> int:
    """Number of cells along each face [-]: more where there are several spans."""
    spans = len(getattr(structure, "spans", ()))
    return max(CELLS, PER_SPAN * spans)


class PredictView(ExerciseView):
    """The page's side of a prediction.

    Attributes
    ----------
    ask : str
        ``"stretch"``, ``"cracks"`` or ``"bar"``.
    cells : int
        Number of cells along each face.
    cell_names : list of str
        What a reader that listens says of each cell.
    strips : dict
        Where the cells lie on the drawing: see `Strips`; empty where there are none.
    painted : dict
        Painted cells of each face, kept up by the page.
    places : list
        Key and label of each place a bar can be put; empty for the other questions.
    chosen : str
        Chosen place of the bars, kept up by the page.
    called : bool
        Whether the learner has committed.
    kinds : dict
        After the call: for each face, right, missed, wrong or nothing for each cell.
    remarks : list
        After the call: kind, its word, face and stretch, and the reason.
    """

    _esm = front_end("page.js", "exercise.js", "strips.js", "radio.js", "predict.js")
    _css = front_end("panel.css", "exercise.css")

    ask = traitlets.Unicode("stretch").tag(sync=True)
    cells = traitlets.Int(CELLS).tag(sync=True)
    cell_names = traitlets.List().tag(sync=True)
    strips = traitlets.Dict().tag(sync=True)
    painted = traitlets.Dict().tag(sync=True)
    places = traitlets.List().tag(sync=True)
    chosen = traitlets.Unicode().tag(sync=True)
    called = traitlets.Bool(False).tag(sync=True)
    kinds = traitlets.Dict().tag(sync=True)
    remarks = traitlets.List().tag(sync=True)


def words() -> dict[str, str]:
    """Give the labels of the page's side."""
    return {
        "clear": _("Clear"),
        "call": _("That is my call"),
        "again": _("Try again"),
        "top": _("Top face, from left to right"),
        "bottom": _("Bottom face, from left to right"),
        "legend": _("How the cells are marked"),
        "unmarked": _("no sign: rightly left empty, or too little stress to count"),
        **{f"kind_{kind}": LEADS[kind] for kind in KINDS},
    }
