"""Check yourself: questions with fresh numbers; each wrong answer names the belief behind it."""

from random import Random

from crackkit.learning.choices import Question
from crackkit.learning.questions import GENERATORS, OF_LESSON, question
from crackkit.panels.asking import Asking, AskingView, choosing_hint, choosing_words
from crackkit.panels.preferences import Preferences
from crackkit.words import _


class Quiz(Asking):
    """Questions of one lesson, in turn, each with fresh numbers.

    Parameters
    ----------
    lesson : str
        Lesson in the record of the learner's work.
    keys : tuple of str, optional
        Which generators, see `GENERATORS`; those of the lesson if left out.
    seed : int, optional
        For tests: the same seed asks the same questions.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.

    Raises
    ------
    ValueError
        If there is no generator of one of the names.
    """

    def __init__(
        self,
        lesson: str,
        keys: tuple[str, ...] | None = None,
        seed: int | None = None,
        choices: Preferences | None = None,
    ):
        self.keys = tuple(OF_LESSON.get(lesson, GENERATORS)) if keys is None else tuple(keys)
        if not self.keys or set(self.keys) - GENERATORS.keys():
            raise ValueError(_("A quiz asks some of: {}.").format(", ".join(GENERATORS)))
        words = choosing_words(_("Another one"))
        view = AskingView(title=_("Check yourself"), hint=choosing_hint(), words=words)
        super().__init__(view, lesson, "quiz", choices)
        self.random, self.queue = Random(seed), []
        self.asked = self.right = 0
        self._next()
        self.listen()

    def posed(self, system: str) -> Question:
        """Give the question whose turn it is, with fresh numbers."""
        return question(self.key, self.random, system)

    def _next(self) -> None:
        if not self.queue:
            self.queue = self.random.sample(self.keys, len(self.keys))
        self.key = self.queue.pop()
        self._pose()

    def act(self, name: str, message: dict) -> None:
        """Do what the page asks for: ``answer`` with a choice, ``another`` after it."""
        if name == "answer" and self.taken is None:
            self._answer(int(message["choice"]))
        if name == "another" and self.taken is not None:
            self._next()
        self.show()

    def _answer(self, number: int) -> None:
        chosen = self.question.choices[number]
        self.view.chosen = number
        self.asked += 1
        self.right += chosen.right
        answer = {"text": chosen.text, "misconception": chosen.misconception}
        item = f"{self.item}/{self.question.key}"
        self.store.record(self.lesson, item, answer, chosen.right, float(chosen.right))

    def tally(self) -> str:
        """Say how many answers were right so far."""
        if not self.asked:
            return ""
        return _("{right} of {asked} right so far.").format(right=self.right, asked=self.asked)
