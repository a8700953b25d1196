"""Comparisons by one click: below a live panel, its structure beside its own variants."""

import math
from collections.abc import Callable
from dataclasses import fields
from time import thread_time

import traitlets

from crackkit.learning import comparison as learning
from crackkit.panels import compared_rows
from crackkit.panels.panel import Panel
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.words import _

HURRY = 0.06  # s of work that a round may take while a slider above moves


class ComparisonView(ReaderView):
    """The page's side of a comparison.

    Attributes
    ----------
    choices : list
        Key and label of each comparison.
    chosen : str
        Key of the one that is open; empty when none is.
    page : dict
        ``head``, ``rows`` and ``foot``: see `compared_rows.told`.
    said : str
        The rows in words; not sent again while the panel above merely changes.
    changed, shown : int
        Counts changes of the panel above, and up to which of them the rows show it.
    late : int
        Counts the rounds that were given up, since the panel above must not wait so long.
    can_put_back : bool
        Whether a variant was put into the panel.
    """

    _esm = front_end("page.js", "reader.js", "comparison.js")
    _css = front_end("panel.css", "comparison.css")

    choices = traitlets.List().tag(sync=True)
    chosen = traitlets.Unicode("").tag(sync=True)
    page = traitlets.Dict().tag(sync=True)
    said = traitlets.Unicode("").tag(sync=True)
    changed = traitlets.Int(0).tag(sync=True)
    shown = traitlets.Int(0).tag(sync=True)
    late = traitlets.Int(0).tag(sync=True)
    can_put_back = traitlets.Bool(False).tag(sync=True)

    def in_words(self) -> str:
        """Give what can be compared, and what is being compared, as plain text."""
        offered = ", ".join(label for _key, label in self.choices)
        return "\n".join(filter(None, (f"{self.words['compare']}: {offered}", self.said)))

    def still(self) -> str:
        """Give the same for pages without a kernel."""
        from html import escape

        return "".join(f"<p>{escape(line)}</p>" for line in self.in_words().split("\n"))


class Comparison:
    """A row of comparisons for a live panel; one click works out all variants.

    Parameters
    ----------
    panel : Panel
        The live panel above: variants are made from what stands in it.
    comparisons : tuple of learning.comparison.Comparison, or callable
        What can be compared, or what makes it from the reader's units (``comparisons(system)``).

    Attributes
    ----------
    rows : tuple of learning.comparison.Compared
        What became of the variants of the open comparison; empty when none is open.
    """

    def __init__(self, panel: Panel, comparisons: tuple | Callable[[str], tuple]):
        self.panel, self.comparisons = panel, comparisons
        self.rows: tuple[learning.Compared, ...] = ()
        self._taken: dict = {}  # fields that variants changed, with what stood there before
        self.view = ComparisonView(words=_words())
        self.view.follow(panel.preferences)
        self._offer()
        self.view.on_msg(self._on_message)
        panel.watch(self._on_change)
        panel.preferences.observe(self._on_units, "system")

    @property
    def offered(self) -> dict[str, learning.Comparison]:
        """What can be compared, by key, in the reader's units."""
        made = self.comparisons
        found = made(self.panel.system) if callable(made) else made
        return {each.key: each for each in found}

    def _offer(self) -> None:
        self.view.choices = [[each.key, each.label] for each in self.offered.values()]

    @surfaced
    def choose(self, key: str) -> None:
        """Open a comparison; close it if it is open, or if the key is empty."""
        with self.view.hold_sync():
            self.view.chosen = "" if key == self.view.chosen else key
            self.show()
            self._say()

    @surfaced
    def take(self, place: int) -> None:
        """Put a variant into the panel; what stood there can be put back."""
        before = self.panel.structure
        self.panel.apply(dict(self.offered[self.view.chosen].variants[place].changes))
        # what stood there before the first variant counts
        self._taken = _differences(before, self.panel.structure) | self._taken
        self._show_and_say()

    @surfaced
    def put_back(self) -> None:
        """Give the panel back what variants have changed in it; other changes stay."""
        taken, self._taken = self._taken, {}
        self.panel.apply(taken)
        self._show_and_say()

    def _show_and_say(self) -> None:
        with self.view.hold_sync():
            self.show()
            self._say()

    @surfaced
    def show(self) -> None:
        """Work the open comparison out for what stands in the panel now."""
        self._show_rows(self._made(math.inf) if self.view.chosen else ())

    def _made(self, seconds: float) -> tuple[learning.Compared, ...]:
        """Work out all variants; give none if the time is up before."""
        now, comparison = self.panel.outcome, self.offered[self.view.chosen]
        end, rows = thread_time() + seconds, []
        for row in learning.tried(now, comparison):
            rows.append(row)
            if thread_time() > end:
                return ()
        return learning.with_present(now, tuple(rows))

    def _show_rows(self, rows: tuple[learning.Compared, ...]) -> None:
        self.view.error, self.rows = "", rows
        self.view.page = self._told(rows) if rows else {}
        self.view.shown = self.view.changed
        self.view.can_put_back = bool(self._taken)

    def _told(self, rows: tuple[learning.Compared, ...]) -> dict:
        return compared_rows.told(self.offered[self.view.chosen], rows, self.panel.system)

    def _say(self) -> None:
        self.view.said = compared_rows.in_words(self.view.page) if self.view.page else ""

    @surfaced
    def _on_message(self, _view, message: dict, _buffers) -> None:
        acts = {
            "choose": lambda: self.choose(message["value"]),
            "take": lambda: self.take(int(message["value"])),
            "put_back": self.put_back,
            "again": lambda: self.again(bool(message["value"])),
        }
        acts[message["name"]]()

    @surfaced
    def again(self, at_rest: bool = True) -> None:
        """Show the panel as it is now, when the page asks for it.

        Parameters
        ----------
        at_rest : bool
            Whether the panel has come to rest. While it moves, what takes long is given up: what
            depends on the age alone is quick, for histories are kept.
        """
        rows = self._made(math.inf if at_rest else HURRY) if self.view.chosen else ()
        with self.view.hold_sync():
            if rows or not self.view.chosen:
                self._show_rows(rows)
            else:
                self.view.late += 1

    @surfaced
    def _on_change(self, panel: Panel) -> None:
        if panel.structure == panel.first:
            self._taken = {}
        if self.view.chosen or self.view.can_put_back:
            self.view.changed += 1  # only counted here: a slider must not wait for the variants

    @surfaced
    def _on_units(self, _change) -> None:
        with self.view.hold_sync():
            self._offer()
            self.show()
            self._say()

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)


def _differences(before, after) -> dict:
    """Fields in which a structure differs from what it became, with what they were."""
    pairs = [(each.name, getattr(before, each.name)) for each in fields(before)]
    return {name: value for name, value in pairs if value != getattr(after, name)}


def _words() -> dict[str, str]:
    return {
        "compare": _("Compare"),
        "hint": _("A click on a name puts it into the panel above."),
        "present": _("as it stands"),
        "take": _("Put into the panel: {name}"),
        "put_back": _("Put back what stood there"),
    }
