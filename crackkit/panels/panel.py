"""The live panel: people change a structure, the picture follows."""

from collections.abc import Callable
from functools import wraps

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import handles, without_handles
from crackkit.drawing.svg import svg
from crackkit.learning.walk import Walk
from crackkit.panels import control_rows, open_places
from crackkit.panels.guide import Guide
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import PanelView
from crackkit.structures.fields import InputError, input_at, inputs, settled
from crackkit.structures.outcome import Outcome
from crackkit.units import UnitError, explain, inner, parse
from crackkit.words import _

PROJECTOR_ZOOM = 1.45  # how much larger everything stands on the projector


def guarded(method):
    """Explain a refused input beside the picture; any other error is surfaced and raised."""

    @wraps(method)
    def safe(self, *args, **kwargs):
        try:
            return surfaced(method)(self, *args, **kwargs)
        except (InputError, UnitError) as error:
            self.tell_error(error)

    return safe


class BeamView(PanelView):
    """A panel's page side that can paint its own still picture."""

    def __init__(self, panel: "Panel", **traits):
        super().__init__(**traits)
        self.panel = panel

    def still_svg(self) -> str:
        """Paint the present state for pages without a kernel: light, without handles."""
        view = View(self.panel.system, live=False, width=1000)
        return svg(self.panel.draw(self.panel.outcome, view), "light")


class Panel:
    """A structure, its Outcome and the view of both.

    Parameters
    ----------
    structure : object
        A structure with declared inputs, ``topics`` and ``handle_changes``.
    locked : tuple of str
        Paths of inputs the reader may not change; they have no control.
    draw : callable
        From (outcome, view) to a Picture.
    choices : Preferences, optional
        Units and theme; those shared by the whole kernel if left out.
    walk : Walk, optional
        A guided walk above the picture, told in the units that the reader has chosen.

    Attributes
    ----------
    structure, outcome : object
        What is shown. After a refused input they stay what they were.
    """

    def __init__(
        self,
        structure,
        locked: tuple[str, ...] = (),
        draw: Callable = picture_of.picture,
        choices: Preferences | None = None,
        walk: Walk | None = None,
    ):
        self.first = self.structure = structure
        self.outcome: Outcome = structure.solve()
        self.drawn = self.outcome  # as a whole
        self.locked, self.draw = locked, draw
        self.preferences = choices or preferences()
        self.watchers: list[Callable[[Panel], None]] = []
        self.unfolded = ""
        self.rows: tuple[str, ...] = ()  # paths that have a control
        self.view = BeamView(self, words=_words(), buttons=_buttons())
        self.guide = Guide(self, walk) if walk else None
        self._show_all()
        self._listen()

    @property
    def system(self) -> str:
        """Units shown, ``"SI"`` or ``"US"``."""
        return self.preferences.system

    def _listen(self) -> None:
        self.view.observe(self._on_changes, "changes")
        self.view.observe(self._on_room, ["room", "seen"])
        self.view.on_msg(self._on_message)
        self.preferences.observe(self._on_preferences)

    def watch(self, watcher: Callable[["Panel"], None]) -> None:
        """Call `watcher(panel)` after each change of the structure."""
        self.watchers.append(watcher)

    @guarded
    def apply(self, changes: dict) -> None:
        """Change inputs (path to value in N, mm, MPa); others are drawn back into their ranges."""
        self._take(changes)

    def _take(self, changes: dict, soon: bool = False) -> None:
        """Change inputs; `soon` the picture may be one that is finished when nothing moves."""
        structure, moved, items = settled(self.structure, changes)
        if hasattr(structure, "after"):  # some remember what was done to them
            structure = structure.after(self.structure, changes)
            items = inputs(structure)
        outcome = structure.solve()
        self.structure, self.outcome = structure, outcome
        note = _("Moved along: {inputs}").format(inputs="; ".join(moved)) if moved else ""
        with self.view.hold_sync():
            self.view.error, self.view.note = "", note
            self._show_step(items, self._drawn_before() if soon else None)
        for watcher in self.watchers:
            watcher(self)

    def _drawn_before(self) -> Outcome | None:
        """The Outcome drawn last as a whole, if parts of the next picture may wait a moment."""
        takes_long = getattr(self.structure, "takes_long_after", None)
        return self.drawn if takes_long and takes_long(self.drawn.structure) else None

    # -- what the page reports ---------------------------------------------------------------

    @guarded
    def _on_changes(self, event) -> None:
        message = event.new
        _before = self.outcome, self.drawn  # let go once the picture is on its way: it takes time
        with self.view.hold_sync():
            self.view.done = int(message.get("n", 0))
            self._take(self._from_page(message), soon=True)

    def _from_page(self, message: dict) -> dict:
        changes = {}
        for path, value in message.get("set", {}).items():
            changes[path] = self._inner(input_at(self.structure, path), value)
        for path, value in message.get("drag", {}).items():
            changes.update(self.structure.handle_changes(path, float(value)))
        return changes

    def _inner(self, item, value):
        if item.declared.choices:  # the page writes every choice as text
            return {str(v): v for v, _label in item.declared.choices}.get(str(value), value)
        number = inner(float(value), item.declared.quantity, self.system, item.low, item.high)
        return round(number) if item.declared.quantity == "count" else number

    @guarded
    def _on_message(self, _view, message: dict, _buffers) -> None:
        if message.get("kind") == "text":
            self._on_text(message["path"], message["text"])
        if message.get("kind") == "act":
            self._on_act(message["name"], message.get("value"))

    def _on_text(self, path: str, text: str) -> None:
        item = input_at(self.structure, path)
        value = parse(text, item.declared.quantity, self.system, field=item.declared.label)
        self._take({path: round(value) if item.declared.quantity == "count" else value})
        # the control shows the value as it is written here, however it was typed
        self.view.refused += 1

    def _on_act(self, name: str, value) -> None:
        acts = {
            "units": lambda: self.preferences.set_trait("system", value),
            "theme": lambda: self.preferences.set_trait("theme", value),
            "working": lambda: self._unfold("working"),
            "code": lambda: self._unfold("code"),
            "save_svg": lambda: self._save("svg"),
            "save_png": lambda: self._save("png"),
            "save_pdf": lambda: self._save("pdf"),
            "reset": lambda: self._restart(),
            "finish": lambda: self._show_picture(),
            "show_place": lambda: self._take(open_places.changes(self.outcome, int(value))),
        }
        counts = {count.act: count.changes for count in self.structure.counts}
        if name.startswith("walk_"):
            self.guide.act(name)
        elif name in counts:
            self._take(counts[name])
        else:
            acts[name]()

    def _on_room(self, event) -> None:
        if event.name == "seen" and event.new:
            self.preferences.seen = event.new
        with self.view.hold_sync():
            self._show_picture()

    def _on_preferences(self, event) -> None:
        with self.view.hold_sync():
            if event.name == "system":
                self.view.error = self.view.note = ""
                self._show_all()
                if self.guide:
                    self.guide.show()
            else:
                self.view.theme = self.preferences.theme
                self._show_picture()

    # -- what the buttons do -----------------------------------------------------------------

    def _restart(self) -> None:
        self.structure = self.first
        self.outcome = self.first.solve()
        with self.view.hold_sync():
            self.view.error = self.view.note = ""
            self._show_all()
        for watcher in self.watchers:
            watcher(self)

    def _unfold(self, what: str) -> None:
        self.unfolded = "" if self.unfolded == what else what
        self._show_more()
        if self.unfolded == "code":
            self.view.send({"kind": "copy", "text": self.code()})

    def code(self) -> str:
        """Give the one line that makes the same structure in the sandbox."""
        from crackkit.sandbox import code_line  # not before it is wanted: it loads slowly

        return code_line(self.structure, self.system)

    def _save(self, kind: str) -> None:
        from crackkit.panels.saving import MIME, picture_file

        picture = self.draw(self.outcome, View(self.system, live=False, width=1000))
        message = {"kind": "save", "name": f"{self._file_name()}.{kind}", "type": MIME[kind]}
        self.view.send(message, buffers=[picture_file(picture, kind, self._paint_theme())])

    def _file_name(self) -> str:
        return "_".join(self.structure.title.lower().split())

    # -- what the page is shown --------------------------------------------------------------

    def tell_error(self, error: Exception) -> None:
        """Show a refused input in the reader's units; picture and values stay."""
        self.view.error = explain(error, self.system) if _ranged(error) else str(error)
        self.view.refused += 1

    def _show_all(self) -> None:
        self.view.units, self.view.theme = self.preferences.system, self.preferences.theme
        self.rows = ()
        self._show_step(inputs(self.structure))

    def _show_step(self, items, before: Outcome | None = None) -> None:
        self._show_controls(items)
        self._show_picture(before)
        self.view.open_places = open_places.told(self.outcome, self.system)
        self.view.cautions = [[c.text, c.grave] for c in self.outcome.cautions]
        if self.unfolded:
            self._show_more()

    def _show_controls(self, items) -> None:
        rows = tuple(item.path for item in items if item.applies)
        if rows != self.rows:
            self.rows = rows
            self.view.topics = control_rows.topics(self.structure, self.system, self.locked)
        self.view.values, self.view.bounds = control_rows.standing(items, self.system)

    def _show_picture(self, before: Outcome | None = None) -> None:
        view = View(self.system, width=self._width(), before=before)
        picture = self.draw(self.outcome, view)
        if self.locked:
            picture = without_handles(picture, self._fast_handles(picture))
        self.view.svg = svg(picture, self._paint_theme())
        self.view.alt = picture.description
        self.view.shown_theme = self._paint_theme()
        self.view.unfinished = before is not None
        if before is None:
            self.drawn = self.outcome

    def _fast_handles(self, picture) -> set[str]:
        """Paths of the handles that would change a locked input."""
        return {
            handle.path
            for handle in handles(picture.shapes)
            for path in self.structure.handle_changes(handle.path, handle.value)
            if control_rows.under(path, self.locked)
        }

    def _paint_theme(self) -> str:
        return self.preferences.shown_theme

    def _width(self) -> float:
        room = self.view.room or 840
        return room / PROJECTOR_ZOOM if self.preferences.theme == "projector" else room

    def _show_more(self) -> None:
        if self.unfolded == "working":
            from crackkit.sandbox.working import working

            self.view.more = working(self.outcome, self.system)._repr_html_()
        elif self.unfolded == "code":
            from html import escape

            self.view.more = f'<textarea rows="3" readonly>{escape(self.code())}</textarea>'
        else:
            self.view.more = ""

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)


def _ranged(error: Exception) -> bool:
    return isinstance(error, InputError)


def _words() -> dict[str, str]:
    return {
        "units": _("Units"),
        "theme": _("Colours"),
        "auto": _("as the page"),
        "light": _("light"),
        "dark": _("dark"),
        "projector": _("projector"),
        "walk_back": _("Back"),
        "walk_set": _("Set it for me"),
        "walk_told": _("What happened?"),
        "walk_next": _("Next"),
    }


def _buttons() -> list[list[str]]:
    return [
        ["reset", _("Start over")],
        ["working", _("Show the working")],
        ["code", _("Copy as code")],
        ["save_svg", _("Save SVG")],
        ["save_png", _("Save PNG")],
        ["save_pdf", _("Save PDF")],
    ]
