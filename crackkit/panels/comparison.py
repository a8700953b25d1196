"""Comparisons by one click: below a live panel, its structure beside its own variants."""

from collections.abc import Callable
from dataclasses import fields
from time import perf_counter

import traitlets

from crackkit.learning import comparison as learning
from crackkit.panels import compared_rows
from crackkit.panels.panel import Panel
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.words import _


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
    cost : float
        How long it took to work the rows out [ms].
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
    cost = traitlets.Float(0.0).tag(sync=True)
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
        start = perf_counter()
        self.view.error = ""
        self.rows, page = self._worked_out() if self.view.chosen else ((), {})
        self.view.page, self.view.shown = page, self.view.changed
        self.view.can_put_back = bool(self._taken)
        self.view.cost = 1000.0 * (perf_counter() - start)

    def _worked_out(self) -> tuple[tuple[learning.Compared, ...], dict]:
        comparison = self.offered[self.view.chosen]
        rows = learning.compared(self.panel.outcome, comparison)
        return rows, compared_rows.told(comparison, rows, self.panel.system)

    def _say(self) -> None:
        self.view.said = compared_rows.in_words(self.view.page) if self.view.page else ""

    @surfaced
    def _on_message(self, _view, message: dict, _buffers) -> None:
        acts = {
            "choose": lambda: self.choose(message["value"]),
            "take": lambda: self.take(int(message["value"])),
            "put_back": self.put_back,
            "again": self.again,
        }
        acts[message["name"]]()

    def again(self) -> None:
        """Show the panel as it is now; the page asks for it once changes have come to rest."""
        with self.view.hold_sync():
            self.show()

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
