"""The list of lessons: one line each. Only lessons whose notebook is there are offered."""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from pathlib import Path

from crackkit.launch.places import LESSONS
from crackkit.learning.logbook import LessonSummary
from crackkit.words import _

NOT_BEGUN, BEGUN, DONE = "not_begun", "begun", "done"


@dataclass(frozen=True)
class LessonInfo:
    """One lesson of the course.

    Attributes
    ----------
    key : str
        Under which progress is kept; the name of the notebook.
    file : str
        The notebook.
    title : str
        What it is about.
    minutes : int
        How long it takes [min].
    promise : str
        What the learner will be able to do.
    ready : bool
        Whether the notebook is there.
    """

    key: str
    file: str
    title: str
    minutes: int
    promise: str
    ready: bool = False


def _lesson(key: str, minutes: int, title: str, promise: str) -> LessonInfo:
    return LessonInfo(key, f"{key}.ipynb", title, minutes, promise)


COURSE = (
    _lesson(
        "01_pull",
        25,
        _("Pull"),
        _("say what happens, crack by crack, when concrete is pulled, and why bars keep it fine"),
    ),
    _lesson(
        "02_simple_beam",
        45,
        _("A beam on two supports"),
        _("say where a beam is stretched and cracks, and choose bars that keep the cracks small"),
    ),
    _lesson("03_cantilever", 40, _("A cantilever"), _("put the bars of a balcony where they work")),
    _lesson(
        "04_continuous_spans", 40, _("Several spans"), _("see where top bars must cross a support")
    ),
    _lesson(
        "05_bar_choice",
        35,
        _("Choosing bars"),
        _("choose bars, their spacing and their cover for fine cracks and no rust"),
    ),
    _lesson(
        "06_ground_slab",
        30,
        _("A slab on the ground"),
        _("say what cracks a floor that cannot bend, and choose joints, bars and curing for it"),
    ),
    _lesson(
        "07_curling",
        30,
        _("Curling"),
        _("say why the corners of a floor lift and break, and what keeps them on"),
    ),
    _lesson(
        "08_reentrant_corner",
        45,
        _("An inside corner"),
        _("say where a floor cracks at an inside corner, and lay the few bars that hold the crack"),
    ),
    _lesson(
        "10_sandbox",
        35,
        _("Your own beam, in one line (for engineers)"),
        _("ask a quick what-if in real units, with formulas and clauses to check by hand"),
    ),
)


def lessons(folder: Path | str | None = None) -> tuple[LessonInfo, ...]:
    """List the lessons of the course, each with whether its notebook is there.

    Parameters
    ----------
    folder : Path or str, optional
        Where the notebooks lie; the folder of lessons if left out.
    """
    here = Path(folder) if folder is not None else _usual_folder()
    return tuple(replace(one, ready=(here / one.file).is_file()) for one in COURSE)


def _usual_folder() -> Path:
    # a kernel works in the folder of its notebook; the package may be installed elsewhere
    here = Path.cwd()
    return here if _holds_any(here, COURSE) else LESSONS


def _holds_any(folder: Path, course: Iterable[LessonInfo]) -> bool:
    return any((folder / one.file).is_file() for one in course)


def state(summary: LessonSummary | None) -> str:
    """Tell how far a lesson is: ``"not_begun"``, ``"begun"`` or ``"done"``."""
    if summary is None or not (summary.attempts or summary.done):
        return NOT_BEGUN
    return DONE if summary.done else BEGUN
