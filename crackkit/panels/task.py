"""Make it hold: a live panel with a goal and a budget; it is checked when asked for."""

from collections.abc import Callable

import ipywidgets
import traitlets

from crackkit.learning.task import HoldTask
from crackkit.learning.telling import Retold
from crackkit.panels.exercise import Exercise, ExerciseView
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.price_book import PriceBook, price_book
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.structures.fields import inputs
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
    book : PriceBook, optional
        Prices, where the budget is one of money; those shared by the whole kernel if left out.

    Attributes
    ----------
    job : HoldTask
        The task, at the prices that count now.
    book : PriceBook or None
        Where the prices come from; None where bars are weighed.
    built : str
        Units in which its numbers are round: those of the reader when it was opened.
    panel : Panel
        The live panel.
    """

    def __init__(
        self,
        task: HoldTask | Callable[..., HoldTask],
        lesson: str,
        choices: Preferences | None = None,
        book: PriceBook | None = None,
    ):
        chosen = choices or preferences()
        self.built = chosen.system
        self.job = task if isinstance(task, HoldTask) else task(system=self.built)
        self.book = None
        if self.job.money:
            self._take_prices(book or price_book())
        words = _words() | {"check": self.job.budget.words["check"]}
        view = TaskView(title=self.job.title, task=self.job.story, words=words)
        super().__init__(view, lesson, self.job.key, chosen)
        self.panel = Panel(self.job.structure, self.job.locked, choices=chosen)
        self.panel.watch(self._on_change)
        self.checked = self.told = None
        self.box = ipywidgets.VBox([self.view, self.panel.view])
        self.listen()

    @property
    def telling(self) -> Retold:
        """Units that it is told in; what is asked for keeps the numbers of those it is built in."""
        return Retold(self.built, self.system)

    def _take_prices(self, book: PriceBook) -> None:
        self.book, self.job = book, self.job.at_prices(book.prices)
        book.observe(self._on_prices, "prices")

    @surfaced
    def _on_prices(self, change) -> None:
        self.job = self.job.at_prices(change.new)
        with self.view.hold_sync():
            self.show()

    def act(self, name: str, _message: dict) -> None:
        """Do what the button asks for: ``check``."""
        if name == "check":
            self.check()

    @surfaced
    def check(self) -> bool:
        """Check what stands there now, record the attempt, and tell whether it passes."""
        structure, outcome = self.panel.structure, self.panel.outcome
        self.checked = (structure, outcome)
        checks = self.job.assess(structure, outcome, self.telling)
        passed = all(check.ok for check in checks)
        answer = {i.path: i.value for i in inputs(structure) if i.path in self.job.free}
        answer[self.job.budget.name] = self.job.budget.spent(structure, outcome)
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
        self._show_goals()
        self.view.budget = self._budget()
        self._show_checks()
        self.view.alt = self.view.title
        self.view.tally = self._best()

    def _show_goals(self) -> None:
        told = (self.job, self.system)
        if told != self.told:  # a limit is found by solving: not at each step of a slider
            self.told, self.view.goals = told, list(self.job.goals(self.telling))

    def _budget(self) -> dict:
        structure, outcome, budget = self.panel.structure, self.panel.outcome, self.job.budget
        spent, most = budget.spent(structure, outcome), budget.most(structure)
        text = budget.words["yours"].format(
            spent=budget.shown(spent, self.system), most=budget.shown(most, self.system)
        )
        share = self.job.spent_share(structure, outcome)
        over = _("over budget") if share > 1.0 else ""
        return {"text": text, "share": min(share, 1.0), "over": over}

    def _show_checks(self) -> None:
        if self.checked is None:
            self.view.checks, self.view.headline, self.view.stale = [], "", False
            return
        checks = self.job.assess(*self.checked, self.telling)
        self.view.checks = [[c.ok, c.name, c.measured, c.wanted, c.text] for c in checks]
        missing = sum(not check.ok for check in checks)
        self.view.good = not missing
        self.view.headline = _missing(missing) or self.job.budget.words["reached"]
        self.view.stale = self.checked[0] != self.panel.structure

    def _best(self) -> str:
        best = self.store.best(self.lesson, self.item)
        if best is None:
            return ""
        if not best.right:
            return _("Best so far: {share} % of what is wanted.").format(
                share=round(100 * (best.score or 0.0))
            )
        budget = self.job.budget
        if budget.name not in best.answer:  # done when the task had another budget
            return _("Best so far: everything reached.")
        spent = budget.shown(best.answer[budget.name], self.system)
        return budget.words["best"].format(spent=spent)

    def _repr_mimebundle_(self, **kwargs):
        bundle = self.box._repr_mimebundle_(**kwargs)
        data, rest = (bundle[0], (bundle[1],)) if isinstance(bundle, tuple) else (bundle, ())
        still = {"text/html": self.view.still(), "text/plain": self.view.title}
        data = {**(data or {}), **still}
        return (data, *rest) if rest else data


def _missing(missing: int) -> str:
    if not missing:
        return ""
    if missing == 1:
        return _("Nearly. One thing is missing.")
    return _("Not yet. {n} things are missing.").format(n=missing)


def _words() -> dict[str, str]:
    return {
        "goals": _("What is wanted"),
        "yes": _("reached"),
        "no": _("not yet"),
        "measured": _("Yours"),
        "wanted": _("wanted"),
        "stale": _("You have changed something since. Check it again."),
    }
