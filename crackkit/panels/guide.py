"""The guided walk of a panel: which step, what its button sets, what happened."""

from crackkit.learning.walk import Walk, WalkStep, change_told
from crackkit.words import _


class Guide:
    """Leads through the steps of a walk.

    The panel is compared with what it was when the step came up, or with what it was at first,
    so a learner may use the button or make the change by hand.

    Parameters
    ----------
    panel : Panel
        The panel that is led through.
    walk : Walk
        Its steps; they are told again when the reader changes units.
    """

    def __init__(self, panel, walk: Walk):
        self.panel, self.walk, self.place = panel, walk, 0
        self.steps, self.told_in = walk, walk.system
        self._come_to(0)

    def act(self, name: str) -> None:
        """Do what a button of the walk asks for."""
        if name == "walk_set":
            self.panel.apply(self.steps[self.place].changes)
            self.show()
        elif name == "walk_told":
            self.told = True
            self.show()
        else:
            self._come_to(self.place + (1 if name == "walk_next" else -1))

    def _come_to(self, place: int) -> None:
        self.place = min(max(place, 0), len(self.steps) - 1)
        self.before, self.told = self.panel.outcome, False
        self.show()

    def show(self) -> None:
        """Send the step to the page, in the units that the reader has chosen by now."""
        self._tell()
        step = self.steps[self.place]
        head = _("Try this, {k} of {n}").format(k=self.place + 1, n=len(self.steps))
        self.panel.view.walk = {
            "head": head,
            "text": step.text,
            "answer": self._answer(step) if self.told else "",
            "back": self.place > 0,
            "next": self.place < len(self.steps) - 1,
            "told": not self.told,
        }

    def _tell(self) -> None:
        if self.told_in != self.panel.system:
            self.told_in = self.panel.system
            self.steps = self.walk.told(self.told_in)

    def _answer(self, step: WalkStep) -> str:
        before = self.panel.first.solve() if step.from_start else self.before
        numbers = change_told(before, self.panel.outcome, self.panel.system)
        if step.from_start:
            numbers = _("beside the start: {numbers}").format(numbers=numbers)
        return f"{step.answer} ({numbers})"
