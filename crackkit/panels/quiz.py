"""Check yourself: one question at a time, with fresh numbers; a wrong answer is told why."""

from html import escape
from random import Random

import traitlets

from crackkit.drawing.blank_member import blank_member
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.learning.questions import GENERATORS, OF_LESSON, Question, question
from crackkit.panels.exercise import Exercise, ExerciseView
from crackkit.panels.preferences import Preferences
from crackkit.panels.view import front_end
from crackkit.words import _


class QuizView(ExerciseView):
    """The page's side of a quiz.

    Attributes
    ----------
    options : list of str
        Texts of the choices.
    chosen : int
        Number of the choice that was taken; -1 before.
    told : list
        After the answer: for each choice, whether it is right, and what is said of it.
    """

    _esm = front_end("page.js", "exercise.js", "radio.js", "quiz.js")
    _css = front_end("panel.css", "exercise.css")

    options = traitlets.List().tag(sync=True)
    chosen = traitlets.Int(-1).tag(sync=True)
    told = traitlets.List().tag(sync=True)

    def still(self) -> str:
        """Give the question as text and picture for pages without a kernel."""
        return f"<p>{escape(self.task)}</p>{super().still()}"


class Quiz(Exercise):
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
        view = QuizView(title=_("Check yourself"), hint=_hint(), words=_words())
        super().__init__(view, lesson, "quiz", choices)
        self.random, self.queue = Random(seed), []
        self.asked = self.right = 0
        self._ask()
        self.listen()

    def _ask(self) -> None:
        if not self.queue:
            self.queue = self.random.sample(self.keys, len(self.keys))
        self._pose(self.queue.pop())

    def _pose(self, key: str) -> None:
        self.question: Question = question(key, self.random, self.system)
        self.posed_in = self.system
        self.view.chosen = -1

    def act(self, name: str, message: dict) -> None:
        """Do what the page asks for: ``answer`` with a choice, ``another`` after it."""
        if name == "answer" and self.view.chosen < 0:
            self._answer(int(message["choice"]))
        if name == "another" and self.view.chosen >= 0:
            self._ask()
        self.show()

    def _answer(self, number: int) -> None:
        chosen = self.question.choices[number]
        self.view.chosen = number
        self.asked += 1
        self.right += chosen.right
        answer = {"text": chosen.text, "misconception": chosen.misconception}
        item = f"{self.item}/{self.question.key}"
        self.store.record(self.lesson, item, answer, chosen.right, float(chosen.right))

    def show(self) -> None:
        """Send the question, and the answer once a choice was taken."""
        if self.view.chosen < 0 and self.posed_in != self.system:
            self._pose(self.question.key)  # the same question in the other units
        # what is being looked at after the answer stays in the units it was asked in
        page = View(self.posed_in, live=False, width=self.view.room or 840)
        self.view.shown_theme = self.preferences.shown_theme
        self.view.svg = svg(blank_member(self.question.structure, page), self.view.shown_theme)
        self.view.alt = self.view.task = self.question.text
        self.view.options = [choice.text for choice in self.question.choices]
        self._show_answer()
        self.view.tally = _tally(self.right, self.asked)

    def _show_answer(self) -> None:
        if self.view.chosen < 0:
            self.view.told, self.view.headline, self.view.good = [], "", False
            return
        chosen = self.question.choices[self.view.chosen]
        self.view.good = chosen.right
        self.view.headline = _("That is right.") if chosen.right else _belief(chosen.misconception)
        self.view.told = [
            [one.right, one.why if one.right or one is chosen else ""]
            for one in self.question.choices
        ]


def _belief(misconception: str) -> str:
    return _("Not so, though many believe it: {belief}.").format(belief=misconception)


def _tally(right: int, asked: int) -> str:
    if not asked:
        return ""
    return _("{right} of {asked} right so far.").format(right=right, asked=asked)


def _hint() -> str:
    return _("Keyboard: Tab to the answers, arrows move, Space or Enter takes one.")


def _words() -> dict[str, str]:
    return {
        "options": _("Choose one answer"),
        "another": _("Another one"),
        "right": _("Right"),
        "wrong": _("Your answer"),
    }
