"""A class at a glance: the progress files an instructor has collected, as plain rows."""

from dataclasses import dataclass
from pathlib import Path

from crackkit.learning import logbook
from crackkit.learning.progress import FILE
from crackkit.learning.safe_file import content
from crackkit.words import _


@dataclass(frozen=True)
class ClassRow:
    """One learner in one lesson.

    Attributes
    ----------
    learner : str
        Name of the file, or of the folder where the file is called ``progress.json``.
    lesson : str
        The lesson; empty where nothing was done or the file could not be read.
    attempts, right : int
        Number of attempts [-], and of right ones [-].
    done : bool
        Whether the lesson was finished.
    last : str or None
        When the learner last worked on it, in ISO 8601, UTC.
    trouble : str
        Why the file could not be read; usually empty.
    """

    learner: str
    lesson: str = ""
    attempts: int = 0
    right: int = 0
    done: bool = False
    last: str | None = None
    trouble: str = ""


def class_report(folder: Path | str) -> tuple[ClassRow, ...]:
    """List what each learner has done, from files that are only read.

    Parameters
    ----------
    folder : Path or str
        A folder that holds ``anna.json``, ``omar.json``, ... or ``anna/progress.json``, ...

    Returns
    -------
    tuple of ClassRow
        In order of learner and lesson; one row for a learner without work or with a file that
        cannot be read.

    Raises
    ------
    NotADirectoryError
        If there is no such folder.
    """
    folder = Path(folder)
    if not folder.is_dir():
        raise NotADirectoryError(_("there is no folder {}").format(folder))
    files = [*folder.glob("*.json"), *folder.glob(f"*/{FILE}")]
    rows = [row for file in files if file.is_file() for row in _rows(file)]
    return tuple(sorted(rows, key=lambda row: (row.learner.casefold(), row.learner, row.lesson)))


def _rows(file: Path) -> list[ClassRow]:
    learner = file.parent.name if file.name == FILE else file.stem
    try:
        summary = logbook.summary(logbook.current(content(file)))
    except logbook.NewerVersion:
        return [ClassRow(learner, trouble=_("written by a newer crackkit"))]
    except (OSError, ValueError, KeyError):
        return [ClassRow(learner, trouble=_("cannot be read"))]
    return [
        ClassRow(learner, lesson, row.attempts, row.right, row.done, row.last)
        for lesson, row in summary.items()
    ] or [ClassRow(learner)]
