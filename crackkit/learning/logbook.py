"""What is remembered of a learner: the shape of the data, and plain questions about it."""

from collections.abc import Callable
from dataclasses import dataclass

VERSION = 1

# From each older version to the next; a new shape of the data adds one entry here.
STEPS: dict[int, Callable[[dict], dict]] = {}


class NewerVersion(ValueError):
    """The data were written by a newer crackkit than this one."""


@dataclass(frozen=True)
class Attempt:
    """One answer of a learner.

    Attributes
    ----------
    lesson, item : str
        Lesson, and question or task in it.
    answer : object
        What was answered, as JSON holds it.
    right : bool
        Whether it was right.
    score : float or None
        How good it was [-]; higher is better.
    time : str
        When, in ISO 8601, UTC.
    """

    lesson: str
    item: str
    answer: object
    right: bool
    score: float | None
    time: str


@dataclass(frozen=True)
class LessonSummary:
    """What was done in one lesson: numbers of attempts [-], right ones [-], when last."""

    attempts: int
    right: int
    done: bool
    last: str | None


def blank(settings: dict | None = None) -> dict:
    """Give the data of a learner who has done nothing yet."""
    return {"version": VERSION, "settings": dict(settings or {}), "lessons": {}}


def current(state) -> dict:
    """Bring data of any earlier version to the present shape.

    Parameters
    ----------
    state : object
        What the file held.

    Raises
    ------
    NewerVersion
        If a newer crackkit wrote it.
    ValueError
        If it is not the data of a learner.
    """
    version = state.get("version") if isinstance(state, dict) else None
    if isinstance(version, bool) or not isinstance(version, int):
        raise ValueError("no version")
    if version > VERSION:
        raise NewerVersion(f"version {version}")
    while version < VERSION:
        state, version = STEPS[version](state) | {"version": version + 1}, version + 1
    if not _sound(state):
        raise ValueError("not the data of a learner")
    return state


def _sound(state: dict) -> bool:
    settings, lessons = state.get("settings"), state.get("lessons")
    maps = isinstance(settings, dict) and isinstance(lessons, dict)
    return maps and all(_sound_lesson(lesson) for lesson in lessons.values())


def _sound_lesson(lesson) -> bool:
    if not isinstance(lesson, dict) or not isinstance(lesson.get("attempts"), list):
        return False
    done = lesson.get("done")
    return (done is None or isinstance(done, str)) and all(map(_sound_attempt, lesson["attempts"]))


def _sound_attempt(attempt) -> bool:
    if not isinstance(attempt, dict) or not {"item", "answer", "right", "score"} <= attempt.keys():
        return False
    scored = attempt["score"] is None or isinstance(attempt["score"], (int, float))
    return scored and isinstance(attempt.get("time"), str)


def lesson_data(state: dict, lesson: str) -> dict:
    """Give the part of one lesson, made where it is missing."""
    return state["lessons"].setdefault(str(lesson), {"attempts": [], "done": None})


def attempts(state: dict, lesson: str, item: str | None = None) -> tuple[Attempt, ...]:
    """List the attempts at one item of a lesson, or at all of them, the oldest first."""
    kept = state["lessons"].get(str(lesson), {}).get("attempts", ())
    return tuple(
        Attempt(lesson, a["item"], a["answer"], a["right"], a["score"], a["time"])
        for a in kept
        if item is None or a["item"] == item
    )


def summary(state: dict) -> dict[str, LessonSummary]:
    """Give, lesson by lesson in order of name, what was done."""
    return {lesson: _lesson_summary(state, lesson) for lesson in sorted(state["lessons"])}


def _lesson_summary(state: dict, lesson: str) -> LessonSummary:
    tried, done = attempts(state, lesson), state["lessons"][lesson].get("done")
    moments = [a.time for a in tried] + ([done] if done else [])
    return LessonSummary(
        len(tried), sum(bool(a.right) for a in tried), bool(done), max(moments, default=None)
    )
