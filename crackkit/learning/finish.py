"""When a lesson is done: the calls are made, the task is passed, enough answers are right."""

from dataclasses import dataclass

from crackkit.learning.progress import Progress
from crackkit.words import _


@dataclass(frozen=True)
class Needs:
    """What a lesson asks of a learner.

    Attributes
    ----------
    lesson : str
        Key of the lesson.
    calls : tuple of str
        Predictions that must have been made, right or wrong.
    passed : tuple of str
        Tasks that must have been passed once.
    answers : int
        Questions that must have been answered rightly [-].
    """

    lesson: str
    calls: tuple[str, ...]
    passed: tuple[str, ...]
    answers: int


@dataclass(frozen=True)
class Need:
    """One thing that is asked, in words, and whether it is done."""

    text: str
    done: bool


def needs_told(needs: Needs, store: Progress) -> tuple[Need, ...]:
    """Say what is done and what is left.

    Parameters
    ----------
    needs : Needs
    store : Progress
        The learner's record.
    """
    attempts = store.attempts(needs.lesson)
    called = {attempt.item for attempt in attempts} & set(needs.calls)
    passed = {attempt.item for attempt in attempts if attempt.right} & set(needs.passed)
    right = sum(attempt.right for attempt in attempts if attempt.item == "quiz")
    calls = _("Your call: {n} of {all} made").format(n=len(called), all=len(needs.calls))
    told = [Need(calls, len(called) == len(needs.calls))]
    if needs.passed:
        text = _("Make it hold: passed") if passed else _("Make it hold: not passed yet")
        told.append(Need(text, len(passed) == len(needs.passed)))
    answers = _("Check yourself: {n} right, {all} wanted").format(n=right, all=needs.answers)
    return (*told, Need(answers, right >= needs.answers))


def finished(needs: Needs, store: Progress) -> bool:
    """Tell whether all is done; the lesson is then marked as done."""
    done = all(need.done for need in needs_told(needs, store))
    if done and not store.done(needs.lesson):
        store.mark_done(needs.lesson)
    return done
