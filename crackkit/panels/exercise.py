"""What predictions, tasks and questions have in common: errors in place, units, theme, record."""

import traitlets

from crackkit.learning.progress import progress
from crackkit.panels.panel import PROJECTOR_ZOOM
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import PictureWidget


class ExerciseView(PictureWidget):
    """The page's side that all exercises share.

    Attributes
    ----------
    title, task, hint : str
        What the exercise is called, what to do, and how to do it with the keyboard.
    headline : str
        One sentence over the result; empty before.
    tally : str
        How often it was tried, and the best so far.
    good : bool
        Whether the result passes.
    error : str
        What went wrong; empty when nothing did.
    shown_theme : str
        Theme that is painted.
    seen : str
        Theme of the page, reported by the browser.
    room : int
        Width for the picture [px], reported by the browser.
    words : dict
        Labels of the buttons.
    """

    title = traitlets.Unicode().tag(sync=True)
    task = traitlets.Unicode().tag(sync=True)
    hint = traitlets.Unicode().tag(sync=True)
    headline = traitlets.Unicode().tag(sync=True)
    tally = traitlets.Unicode().tag(sync=True)
    good = traitlets.Bool(False).tag(sync=True)
    error = traitlets.Unicode().tag(sync=True)
    shown_theme = traitlets.Unicode("light").tag(sync=True)
    seen = traitlets.Unicode("").tag(sync=True)
    room = traitlets.Int(0).tag(sync=True)
    words = traitlets.Dict().tag(sync=True)


class Exercise:
    """Something a learner does, with its place in the record of the learner's work.

    Parameters
    ----------
    view : ExerciseView
        The page's side.
    lesson, item : str
        Where attempts are recorded.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.
    """

    def __init__(self, view, lesson: str, item: str, choices: Preferences | None = None):
        self.view, self.lesson, self.item = view, lesson, item
        self.preferences = choices or preferences()
        self.store = progress()

    @property
    def system(self) -> str:
        """Units shown, ``"SI"`` or ``"US"``."""
        return self.preferences.system

    @property
    def page_width(self) -> float:
        """Width of the drawing's paper [drawing units]; on the projector its words are larger."""
        room = self.view.room or 840
        return room / PROJECTOR_ZOOM if self.preferences.theme == "projector" else room

    def listen(self) -> None:
        """Show the exercise, then follow the page and the reader's choices."""
        self.show()
        self.view.observe(self._on_page, ["room", "seen"])
        self.view.on_msg(self._on_message)
        self.preferences.observe(self._on_preferences)

    def show(self) -> None:
        """Send the present state to the page."""
        raise NotImplementedError

    def act(self, name: str, message: dict) -> None:
        """Do what the page asks for."""
        raise NotImplementedError

    @surfaced
    def _on_message(self, _view, message: dict, _buffers) -> None:
        with self.view.hold_sync():
            self.view.error = ""
            self.act(message["name"], message)

    @surfaced
    def _on_page(self, event) -> None:
        if event.name == "seen" and event.new:
            self.preferences.seen = event.new
        with self.view.hold_sync():
            self.show()

    @surfaced
    def _on_preferences(self, _event) -> None:
        with self.view.hold_sync():
            self.show()

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)
