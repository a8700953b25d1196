"""What a learner has done: kept on the learner's own machine, lesson by lesson."""

import os
from collections.abc import Callable
from datetime import UTC, datetime
from functools import lru_cache
from pathlib import Path
from threading import RLock

from crackkit.learning import logbook
from crackkit.learning.logbook import Attempt, LessonSummary
from crackkit.learning.safe_file import content, dated, locked, plain, replace_content, set_aside
from crackkit.words import _

FILE = "progress.json"


def home() -> Path:
    """Give the folder of the learner's data; the variable CRACKKIT_HOME overrides the usual."""
    chosen = os.environ.get("CRACKKIT_HOME")
    if chosen:
        return Path(chosen).expanduser()
    import platformdirs

    return platformdirs.user_data_path("crackkit", appauthor=False)


def progress() -> "Progress":
    """Open the progress of the learner at this machine."""
    return _opened(home() / FILE)


@lru_cache(maxsize=8)
def _opened(path: Path) -> "Progress":
    # One object for each file: in a folder that cannot be written, what was answered in one cell
    # must still be known in the next.
    return Progress(path)


class Progress:
    """A learner's answers, results and settings in one file.

    Each change reads the file, adds to it and writes it again under a lock, so that two kernels
    at work lose nothing. A change that cannot be written is kept in memory, tried again with the
    next one, and told of in `notices`.

    Parameters
    ----------
    path : Path
        The file; it need not exist.
    """

    def __init__(self, path: Path):
        self.path = Path(path)
        self._unwritten: list[Callable[[dict], object]] = []
        self._notices: list[str] = []
        self._trouble = ""
        # Widgets may call from a thread of their own while a cell runs.
        self._turn = RLock()

    @property
    def notices(self) -> tuple[str, ...]:
        """What the learner must be told about the file, each sentence once."""
        return (*self._notices, self._trouble) if self._trouble else tuple(self._notices)

    def record(self, lesson: str, item: str, answer, right: bool, score: float | None = None):
        """Add an attempt.

        Parameters
        ----------
        lesson, item : str
            Lesson, and question or task in it.
        answer : object
            What was answered; anything JSON can hold.
        right : bool
            Whether it was right.
        score : float, optional
            How good it was [-]; higher is better.
        """
        attempt = {"item": item, "answer": answer, "right": bool(right)}
        attempt = plain(attempt | {"score": None if score is None else float(score)})
        attempt["time"] = _now()
        self._change(lambda state: logbook.lesson_data(state, lesson)["attempts"].append(attempt))

    def attempts(self, lesson: str, item: str | None = None) -> tuple[Attempt, ...]:
        """List the attempts at an item, or at the whole lesson, the oldest first."""
        return logbook.attempts(self._state(), lesson, item)

    def best(self, lesson: str, item: str) -> Attempt | None:
        """Give the best attempt: right before wrong, then the higher score, then the earlier."""

        def worth(attempt: Attempt):
            return attempt.right, -float("inf") if attempt.score is None else attempt.score

        return max(self.attempts(lesson, item), key=worth, default=None)

    def mark_done(self, lesson: str) -> None:
        """Note that a lesson is done; the first time counts."""
        moment = _now()

        def mark(state: dict) -> None:
            data = logbook.lesson_data(state, lesson)
            data["done"] = data.get("done") or moment

        self._change(mark)

    def done(self, lesson: str) -> bool:
        """Tell whether a lesson is done."""
        return bool(self._state()["lessons"].get(str(lesson), {}).get("done"))

    def setting(self, name: str, default=None):
        """Give a setting such as ``units`` or ``theme``, or the default where none was chosen."""
        return self._state()["settings"].get(name, default)

    def set_setting(self, name: str, value) -> None:
        """Remember a setting; the value is anything JSON can hold."""
        kept = plain(value)
        self._change(lambda state: state["settings"].__setitem__(name, kept))

    def stamp(self) -> tuple[int, int] | None:
        """Give a mark of the file that changes whenever it is written; None where there is none."""
        try:
            found = self.path.stat()
        except OSError:
            return None
        return found.st_ino, found.st_mtime_ns

    def summary(self) -> dict[str, LessonSummary]:
        """Give, lesson by lesson, the numbers of attempts and right ones, done, and when last."""
        return logbook.summary(self._state())

    def start_afresh(self) -> Path | None:
        """Forget all work, keep the settings, and keep a dated copy of what there was.

        Returns
        -------
        Path or None
            The copy; None where the folder could not be written, and then nothing is forgotten.
        """
        try:
            with self._turn, locked(self.path):
                state = self._replayed()
                copy = dated(self.path)
                replace_content(copy, state)
                replace_content(self.path, logbook.blank(state["settings"]))
                self._written()
        except (OSError, logbook.NewerVersion) as trouble:
            self._tell(_("Nothing was cleared: {}"), trouble)
            return None
        return copy

    def _state(self) -> dict:
        try:
            with self._turn, locked(self.path):
                state = self._replayed()
        except (OSError, logbook.NewerVersion) as trouble:
            self._trouble = _why_unwritten(trouble, self.path)
            return self._edited(logbook.blank())
        if not self._unwritten:
            self._trouble = ""
        return state

    def _change(self, edit: Callable[[dict], object]) -> None:
        with self._turn:
            self._unwritten.append(edit)
            self._write()

    def _write(self) -> None:
        try:
            with locked(self.path):
                replace_content(self.path, self._replayed())
                self._written()
        except (OSError, logbook.NewerVersion) as trouble:
            self._trouble = _why_unwritten(trouble, self.path)

    def _written(self) -> None:
        self._unwritten.clear()
        self._trouble = ""

    def _replayed(self) -> dict:
        return self._edited(self._stored())

    def _edited(self, state: dict) -> dict:
        for edit in self._unwritten:
            edit(state)
        return state

    def _stored(self) -> dict:
        try:
            found = content(self.path)
            return logbook.blank() if found is None else logbook.current(found)
        except logbook.NewerVersion:
            raise
        except (ValueError, KeyError):
            aside = set_aside(self.path)
            self._tell(_("The record of your work could not be read and was kept as {}."), aside)
            return logbook.blank()

    def _tell(self, text: str, about) -> None:
        sentence = text.format(about)
        if sentence not in self._notices:
            self._notices.append(sentence)


def _why_unwritten(trouble: Exception, path: Path) -> str:
    if isinstance(trouble, logbook.NewerVersion):
        return _(
            "The record of your work was written by a newer crackkit and is left as it is; "
            "what you do now is kept only until you close this page. File: {}"
        ).format(path)
    return _(
        "Your work cannot be saved just now and is kept only until you close this page: {}"
    ).format(trouble)


def _now() -> str:
    return datetime.now(UTC).isoformat(timespec="milliseconds")
