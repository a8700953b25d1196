"""Your call, with choices: a learner says what will happen; then the picture answers."""

from collections.abc import Callable
from dataclasses import replace

from crackkit.learning.choices import Question
from crackkit.learning.telling import Retold
from crackkit.panels.asking import Asking, AskingView, choosing_hint, choosing_words
from crackkit.panels.predict import calls_told
from crackkit.panels.preferences import Preferences
from crackkit.words import _


class Call(Asking):
    """One question of a lesson that is answered by its picture.

    Parameters
    ----------
    make : callable
        From the units, ``"SI"`` or ``"US"``, to the Question.
    lesson, item : str
        Where attempts are recorded.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.
    """

    def __init__(
        self,
        make: Callable[[str], Question],
        lesson: str,
        item: str,
        choices: Preferences | None = None,
    ):
        self.make = make
        words = choosing_words(_("Call again"))
        view = AskingView(title=_("Your call"), hint=choosing_hint(), words=words)
        super().__init__(view, lesson, item, choices)
        self._pose()
        self.listen()

    def posed(self, system: str) -> Question:
        """Give the question, with round numbers of a system."""
        return replace(self.make(system), again=lambda told: self.make(Retold(system, told)))

    def act(self, name: str, message: dict) -> None:
        """Do what the page asks for: ``answer`` with a choice, ``another`` to call again."""
        if name == "answer" and self.taken is None:
            self.view.chosen = int(message["choice"])
            right = self.taken.right
            self.store.record(self.lesson, self.item, self.taken.text, right, float(right))
        if name == "another" and self.taken is not None:
            self._pose()
        self.show()

    def tally(self) -> str:
        """Say how many calls were made, and the best of them."""
        return calls_told(self.store.attempts(self.lesson, self.item))
