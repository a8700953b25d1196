"""Your call: which drawing of the bars guards every place? Then the drawing, with what it shows."""

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.learning.layouts import Layout, mark_layout
from crackkit.learning.remark import Marking
from crackkit.panels.predict import Predict
from crackkit.panels.preferences import Preferences
from crackkit.structures.fields import fitted
from crackkit.words import _


class LayoutCall(Predict):
    """Drawings of bars to choose from, for a structure on which loads come and go.

    Parameters
    ----------
    layouts : sequence of Layout
        The drawings; their structures differ in their bars only.
    lesson, item : str
        Where attempts are recorded.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.
    """

    def __init__(
        self,
        layouts: tuple[Layout, ...],
        lesson: str,
        item: str = "layout",
        choices: Preferences | None = None,
    ):
        self.layouts = tuple(layouts)
        super().__init__(self.layouts[0].structure, "bar", lesson, item, choices)
        self.view.title = _("Your call: which drawing of the bars?")
        self.view.task = _(
            "Live load comes and goes on each span, and the truck drives about. Choose the "
            "drawing that has bars wherever it can crack, with the least steel."
        )

    @property
    def offered(self) -> dict[str, str]:
        """Drawings of which one is to be chosen: key to label."""
        return {layout.key: layout.label for layout in self.layouts}

    def marking(self) -> Marking:
        """Mark the present answer."""
        return mark_layout(self.view.chosen, self.layouts, self.system)

    def _show_picture(self) -> None:
        super()._show_picture()
        if self.view.called:
            page = View(self.system, live=False, width=self.page_width)
            picture = picture_of.picture(self._answer(), page)
            self.view.svg = svg(picture, self.view.shown_theme)
            self.view.alt = picture.description

    def _answer(self):
        """The chosen drawing, under the loads that show its weakest place."""
        chosen = next(each for each in self.layouts if each.key == self.view.chosen).structure
        outcome = chosen.solve()
        gaps = outcome.range.gaps
        return fitted(chosen, gaps[0].arrangement.changes)[0].solve() if gaps else outcome
