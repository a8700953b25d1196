"""Make it hold: a live panel with a goal and a budget; it is checked when asked for."""

from collections.abc import Callable

import ipywidgets
import traitlets

from crackkit.learning.task import HoldTask
from crackkit.panels.exercise import Exercise, ExerciseView
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.structures.fields import inputs
from crackkit.units import shown
from crackkit.words import _


class TaskView(ExerciseView):
    """The page's side of a task: story, goals, budget, and the list of checks.

    Attributes
    ----------
    goals : list of str
        What must be reached.
    budget : dict
        Words, and the share of the budget that is used.
    checks : list
        After a check: whether it is reached, name, measured, wanted, and what to try.
    stale : bool
        Whether anything was changed since it was checked.
    """

    _esm = front_end("page.js", "exercise.js", "task.js")
    _css = front_end("panel.css", "exercise.css")

    goals = traitlets.List().tag(sync=True)
    budget = traitlets.Dict().tag(sync=True)
    checks = traitlets.List().tag(sync=True)
    stale = traitlets.Bool(False).tag(sync=True)

    def still(self) -> str:
        """Give the task as text for pages without a kernel."""
        from html import escape

        goals = "".join(f"<li>{escape(goal)}</li>" for goal in self.goals)
        return f"<p><b>{escape(self.title)}</b> {escape(self.task)}</p><ul>{goals}</ul>"


class Task(Exercise):
    """A task with its live panel.

    Parameters
    ----------
    task : HoldTask or callable
        The task, or what makes it from the reader's units (``task(system=...)``).
    lesson : str
        Lesson in the record of the learner's work.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.

    Attributes
    ----------
    panel : Panel
        The live panel.
    """

    def __init__(
        self,
        task: HoldTask | Callable[..., HoldTask],
        lesson: str,
        choices: Preferences | None = None,
    ):
        chosen = choices or preferences()
        self.job = task if isinstance(task, HoldTask) else task(system=chosen.system)
        view = TaskView(title=self.job.title, task=self.job.story, words=_words())
        super().__init__(view, lesson, self.job.key, chosen)
        self.panel = Panel(self.job.structure, self.job.locked, choices=chosen)
        self.panel.watch(self._on_change)
        self.checked = None
        self.box = ipywidgets.VBox([self.view, self.panel.view])
        self.listen()

    def act(self, name: str, _message: dict) -> None:
        """Do what the button asks for: ``check``."""
        if name == "check":
            self.check()

    @surfaced
    def check(self) -> bool:
        """Check what stands there now, record the attempt, and tell whether it passes."""
        structure, outcome = self.panel.structure, self.panel.outcome
        self.checked = (structure, outcome)
        checks = self.job.assess(structure, outcome, self.system)
        passed = all(check.ok for check in checks)
        answer = {i.path: i.value for i in inputs(structure) if i.path in self.job.free}
        answer["steel_mass"] = outcome.steel_mass
        score = self.job.score(checks, outcome)
        self.store.record(self.lesson, self.item, answer, passed, score)
        self.show()
        return passed

    @surfaced
    def _on_change(self, _panel) -> None:
        with self.view.hold_sync():
            self.show()

    def show(self) -> None:
        """Send goals, budget, and the list of the last check."""
        self.view.shown_theme = self.preferences.shown_theme
        self.view.goals = list(self.job.goals(self.system))
        self.view.budget = self._budget()
        self._show_checks()
        self.view.alt = self.view.title
        self.view.tally = self._best()

    def _budget(self) -> dict:
        mass, most = self.panel.outcome.steel_mass, self.job.most_bars(self.panel.structure)
        text = _("Your bars: {mass} of {most}").format(
            mass=shown(mass, "mass", self.system),
            most=shown(most, "mass", self.system),
        )
        share = mass / most
        over = share > 1.0
        return {"text": text, "share": min(share, 1.0), "over": _("over budget") if over else ""}

    def _show_checks(self) -> None:
        if self.checked is None:
            self.view.checks, self.view.headline, self.view.stale = [], "", False
            return
        checks = self.job.assess(*self.checked, self.system)
        self.view.checks = [[c.ok, c.name, c.measured, c.wanted, c.text] for c in checks]
        missing = sum(not check.ok for check in checks)
        self.view.good = not missing
        self.view.headline = _headline(missing)
        self.view.stale = self.checked[0] != self.panel.structure

    def _best(self) -> str:
        best = self.store.best(self.lesson, self.item)
        if best is None:
            return ""
        if not best.right:
            return _("Best so far: {share} % of what is wanted.").format(
                share=round(100 * (best.score or 0.0))
            )
        mass = shown(best.answer["steel_mass"], "mass", self.system)
        return _("Best so far: everything reached with {mass} of bars.").format(mass=mass)

    def _repr_mimebundle_(self, **kwargs):
        bundle = self.box._repr_mimebundle_(**kwargs)
        data, rest = (bundle[0], (bundle[1],)) if isinstance(bundle, tuple) else (bundle, ())
        still = {"text/html": self.view.still(), "text/plain": self.view.title}
        data = {**(data or {}), **still}
        return (data, *rest) if rest else data


def _headline(missing: int) -> str:
    if not missing:
        return _("It holds. Your bars do all that is wanted.")
    if missing == 1:
        return _("Nearly. One thing is missing.")
    return _("Not yet. {n} things are missing.").format(n=missing)


def _words() -> dict[str, str]:
    return {
        "check": _("Check my bars"),
        "goals": _("What is wanted"),
        "yes": _("reached"),
        "no": _("not yet"),
        "measured": _("Yours"),
        "wanted": _("wanted"),
        "stale": _("You have changed something since. Check it again."),
    }
