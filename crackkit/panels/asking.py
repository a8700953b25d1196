"""A question on the page: its picture, its choices, and what is said of the one that was taken."""

from dataclasses import replace
from html import escape

import traitlets

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.learning.choices import Choice, Question
from crackkit.panels.exercise import Exercise, ExerciseView
from crackkit.panels.view import front_end
from crackkit.words import _


class AskingView(ExerciseView):
    """The page's side of a question.

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


class Asking(Exercise):
    """One question at a time, with choices.

    Attributes
    ----------
    question : Question
        What is asked now.
    told_in : str
        Units it is told in.
    """

    question: Question
    told_in: str

    def posed(self, system: str) -> Question:
        """Give the question with round numbers of a system of units."""
        raise NotImplementedError

    def _pose(self) -> None:
        self.question, self.told_in = self.posed(self.system), self.system
        self.view.chosen = -1

    @property
    def taken(self) -> Choice | None:
        """The choice that was taken; None before."""
        return self.question.choices[self.view.chosen] if self.view.chosen >= 0 else None

    def show(self) -> None:
        """Send the question, and the answer once a choice was taken."""
        if self.told_in != self.system:
            self._follow()
        self._show_picture()
        self.view.task = self.question.text
        self.view.options = [choice.text for choice in self.question.choices]
        self._show_answer()
        self.view.tally = self.tally()

    def _follow(self) -> None:
        """Go over to other units: what was answered keeps its numbers, and so its answer."""
        if self.taken is None:
            self._pose()
            return
        again = self.question.again
        self.question, self.told_in = replace(again(self.system), again=again), self.system

    def tally(self) -> str:
        """Say how often it was tried, and how well."""
        raise NotImplementedError

    def _show_picture(self) -> None:
        page = View(self.told_in, live=False, width=self.page_width)
        self.view.shown_theme = self.preferences.shown_theme
        if self.taken is None or self.question.after is None:
            picture = picture_of.before(self.question.structure, page)
            self.view.alt = self.question.text
        else:
            picture = picture_of.picture(self.question.after.solve(), page)
            self.view.alt = picture.description
        self.view.svg = svg(picture, self.view.shown_theme)

    def _show_answer(self) -> None:
        chosen = self.taken
        self.view.good = bool(chosen and chosen.right)
        self.view.headline, self.view.told = "", []
        if chosen:
            self.view.headline = _("That is right.") if chosen.right else _belief(chosen)
            self.view.told = [
                [one.right, one.why if one.right or one is chosen else ""]
                for one in self.question.choices
            ]


def _belief(chosen: Choice) -> str:
    text = _("Not so, though many believe it: {belief}.")
    return text.format(belief=chosen.misconception)


def choosing_hint() -> str:
    """Say how to choose with the keyboard."""
    return _("Keyboard: Tab to the answers, arrows move, Space or Enter takes one.")


def choosing_words(another: str) -> dict[str, str]:
    """Give the labels of a question; `another` is the button after the answer."""
    return {
        "options": _("Choose one answer"),
        "another": another,
        "right": _("Right"),
        "wrong": _("Your answer"),
    }
