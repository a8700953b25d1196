"""The end of a lesson: what is done, what is left."""

import traitlets

from crackkit.learning.finish import Needs, finished, needs_told
from crackkit.panels.exercise import Exercise, ExerciseView
from crackkit.panels.preferences import Preferences
from crackkit.panels.view import front_end
from crackkit.words import _


class FinishView(ExerciseView):
    """The page's side: the list of what a lesson asks."""

    _esm = front_end("page.js", "exercise.js", "finish.js")
    _css = front_end("panel.css", "exercise.css")

    needs = traitlets.List().tag(sync=True)

    def still(self) -> str:
        """Give the list as text for pages without a kernel."""
        return f"<p>{self.title}</p>"


class Finish(Exercise):
    """Shows how far a learner is, and marks the lesson as done when all is done.

    Parameters
    ----------
    needs : Needs
        What the lesson asks.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.
    """

    def __init__(self, needs: Needs, choices: Preferences | None = None):
        self.needs = needs
        words = {"look": _("Look again"), "done": _("done"), "open": _("open")}
        view = FinishView(title=_("How far you are"), words=words)
        super().__init__(view, needs.lesson, "finish", choices)
        self.listen()

    def act(self, _name: str, _message: dict) -> None:
        """Look at the record again."""
        self.show()

    def show(self) -> None:
        """Send the list to the page."""
        done = finished(self.needs, self.store)
        self.view.shown_theme = self.preferences.shown_theme
        self.view.needs = [[n.text, n.done] for n in needs_told(self.needs, self.store)]
        self.view.good = done
        self.view.headline = (
            _("This lesson is done.") if done else _("Not all done yet. Come back when you like.")
        )
