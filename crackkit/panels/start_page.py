"""The start page: the lessons and how far each is, units and colours, starting afresh."""

from html import escape
from pathlib import Path

import traitlets

from crackkit.learning import course
from crackkit.learning.course import LessonInfo
from crackkit.learning.logbook import LessonSummary
from crackkit.learning.progress import progress
from crackkit.panels.preferences import THEMES, Preferences, preferences
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.units import SI, US
from crackkit.words import _

CAUTION = _(
    "Everything here is a teaching estimate, not a design: local codes and a licensed engineer "
    "decide. Concrete kills when steel is missing or misplaced, or when props leave too early."
)


class StartView(ReaderView):
    """The start page on the page.

    Attributes
    ----------
    lessons : list of dict
        ``key``, ``file``, ``title``, ``time``, ``promise``, ``state``, ``told``.
    notices : list of str
        What the reader must be told of the record of the work.
    message : str
        What the last button did.
    caution, kept : str
        The general caution; what starting afresh does, and where the copy is kept.
    """

    _esm = front_end("page.js", "reader.js", "start.js")
    _css = front_end("panel.css", "start.css")

    lessons = traitlets.List().tag(sync=True)
    notices = traitlets.List().tag(sync=True)
    message = traitlets.Unicode().tag(sync=True)
    caution = traitlets.Unicode(CAUTION).tag(sync=True)
    kept = traitlets.Unicode().tag(sync=True)

    def still(self) -> str:
        """Give the lessons as a list of links."""
        rows = "".join(
            f'<li><a href="{escape(one["file"])}">{escape(one["title"])}</a> '
            f"({escape(one['time'])}): {escape(one['promise'])}</li>"
            for one in self.lessons
        )
        return f"<ul>{rows}</ul><p>{escape(self.caution)}</p>"

    def in_words(self) -> str:
        """Give the lessons as plain text."""
        rows = [f"{one['title']} ({one['time']}): {one['promise']}" for one in self.lessons]
        return "\n".join([*rows, self.caution])


class StartPage:
    """The page that a learner meets first.

    Parameters
    ----------
    folder : Path or str, optional
        Where the lessons lie; the folder of the notebook if left out.
    choices : Preferences, optional
        Units and colours; those shared by the whole kernel if left out.
    """

    def __init__(self, folder: Path | str | None = None, choices: Preferences | None = None):
        self.folder, self.preferences = folder, choices or preferences()
        self.view = StartView(words=_words())
        self.view.follow(self.preferences)
        self.view.on_msg(self._on_message)
        self.show()

    @property
    def lessons(self) -> tuple[LessonInfo, ...]:
        """The lessons that are there."""
        return tuple(one for one in course.lessons(self.folder) if one.ready)

    def show(self) -> None:
        """Read the record of the work and show it."""
        store = progress()
        done = store.summary()
        with self.view.hold_sync():
            self.view.lessons = [_row(one, done.get(one.key)) for one in self.lessons]
            self.view.notices = list(store.notices)
            self.view.kept = _(
                "This clears your answers in all lessons; units and colours stay. A dated copy of "
                "your work is kept in {folder}"
            ).format(folder=store.path.parent)

    @surfaced
    def _on_message(self, _view, message: dict, _buffers) -> None:
        self.view.error = ""
        if message.get("kind") == "act":
            self.act(message["name"], message.get("value"))

    def act(self, name: str, value=None) -> None:
        """Do what the page asks for: ``units``, ``theme``, ``afresh`` or ``look``."""
        if name == "units":
            self.preferences.system = value
        elif name == "theme":
            self.preferences.theme = value
        elif name == "afresh":
            self._start_afresh()
        self.show()

    def _start_afresh(self) -> None:
        copy = progress().start_afresh()
        self.view.message = (
            _("Cleared. Your work until now is kept as {copy}").format(copy=copy)
            if copy
            else _("Nothing was cleared.")
        )

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)


def _row(lesson: LessonInfo, summary: LessonSummary | None) -> dict[str, str]:
    state = course.state(summary)
    return {
        "key": lesson.key,
        "file": lesson.file,
        "title": lesson.title,
        "time": _("{minutes} minutes").format(minutes=lesson.minutes),
        "promise": _("You will be able to {promise}.").format(promise=lesson.promise),
        "state": state,
        "told": _told(state, summary),
    }


def _told(state: str, summary: LessonSummary | None) -> str:
    text = {
        course.NOT_BEGUN: _("not begun"),
        course.BEGUN: _("begun"),
        course.DONE: _("done"),
    }[state]
    if summary is None or not summary.attempts:
        return text
    counted = _("{right} of {all} answers right").format(right=summary.right, all=summary.attempts)
    return f"{text}, {counted}"


def _words() -> dict:
    themes = {
        "auto": _("as the page"),
        "light": _("light"),
        "dark": _("dark"),
        "projector": _("projector"),
    }
    return {
        "lessons": _("Lessons"),
        "units": _("Units"),
        "systems": [[US, _("US: feet, inches, pounds")], [SI, _("SI: metres, newtons")]],
        "theme": _("Colours"),
        "themes": [[name, themes[name]] for name in THEMES],
        "afresh": _("Start afresh"),
        "sure": _("Start afresh?"),
        "yes": _("Yes, clear my answers"),
        "no": _("No, keep them"),
        "care": _("Care"),
    }
