"""What things cost: a list of prices, folded away at first, that a learner can put right."""

import traitlets

from crackkit.learning.costs import Cost
from crackkit.learning.price_words import shown_amount, shown_money, shown_price, with_typed
from crackkit.learning.prices import NOTE, UNIT_PRICES, PriceError, UnitPrice
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.price_book import PriceBook, price_book
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.words import _


class PricesView(ReaderView):
    """The list on the page.

    Attributes
    ----------
    rows : list of dict
        ``key``, ``label``, ``price``, ``unit``, ``own`` (not the usual price), and of a solution
        ``amount`` and ``sum``.
    total : str
        What the solution costs in all; empty without one.
    unfolded : bool
        Whether the reader has opened the list; set by the page.
    refused : int
        Counts refused prices, so that the entries show what stands.
    """

    _esm = front_end("page.js", "reader.js", "prices.js")
    _css = front_end("panel.css", "prices.css")

    rows = traitlets.List().tag(sync=True)
    total = traitlets.Unicode().tag(sync=True)
    unfolded = traitlets.Bool(False).tag(sync=True)
    refused = traitlets.Int(0).tag(sync=True)

    def still(self) -> str:
        """Give the list as text for pages without a kernel."""
        from html import escape

        lines = "".join(f"<li>{escape(_line(row))}</li>" for row in self.rows)
        head = f"<b>{escape(self.words['title'])}</b> {escape(self.words['note'])}"
        return f"<details><summary>{head}</summary><ul>{lines}</ul></details>"

    def in_words(self) -> str:
        """Give the list as plain text."""
        return "\n".join([self.words["title"], *map(_line, self.rows)])


class Prices:
    """A list of prices beside a task that is paid for in money.

    Parameters
    ----------
    task : Task, optional
        The task whose bill is shown; without one all prices are listed, and no bill.
    choices : Preferences, optional
        Units and colours; those shared by the whole kernel if left out.
    book : PriceBook, optional
        Where prices are kept; that shared by the whole kernel if left out.
    """

    def __init__(
        self, task=None, choices: Preferences | None = None, book: PriceBook | None = None
    ):
        self.task = task
        self.preferences = choices or preferences()
        self.book = book or getattr(task, "book", None) or price_book()
        self.view = PricesView(words=_words(self.bill is not None))
        self.view.follow(self.preferences)
        self.show()
        self._listen()

    def _listen(self) -> None:
        self.view.on_msg(self._on_message)
        self.view.observe(self._on_return, "looks")
        self.preferences.observe(self._on_change, "system")
        self.book.observe(self._on_change, "prices")
        if self.task is not None:
            self.task.panel.watch(self._on_change)

    @surfaced
    def _on_return(self, _change) -> None:
        self.book.look_again()

    @surfaced
    def _on_change(self, _change) -> None:
        self.show()

    @surfaced
    def _on_message(self, _view, message: dict, _buffers) -> None:
        self.view.error = ""
        if message["name"] == "reset":
            self.book.reset()
        else:
            self.type(message["key"], message["text"])

    def type(self, key: str, text: str) -> None:
        """Take a price as it was typed; one that cannot be is explained in place."""
        try:
            self.book.prices = with_typed(self.book.prices, key, text, self.preferences.system)
        except PriceError as error:
            self.view.error = str(error)
        self.view.refused += 1  # the entry shows the price as it is written here

    @property
    def bill(self) -> Cost | None:
        """What the solution of the task costs now; None without a task that is paid for."""
        job = getattr(self.task, "job", None)
        if job is None or job.money is None:
            return None
        return job.money.at(self.book.prices).cost(self.task.panel.structure)

    def show(self) -> None:
        """Send the list to the page."""
        bill = self.bill
        with self.view.hold_sync():
            self.view.rows = [self._row(each, bill) for each in UNIT_PRICES]
            self.view.total = "" if bill is None else shown_money(bill.total)

    def _row(self, priced: UnitPrice, bill: Cost | None) -> dict:
        key, system = priced.key, self.preferences.system
        price, amount = self.book.prices.of(key), bill.amount(key) if bill else 0.0
        return {
            "key": key,
            "label": priced.label,
            "price": shown_price(key, price, system),
            "unit": priced.measure.label(system),
            "own": price != priced.usual,
            "amount": shown_amount(key, amount, system) if amount else "",
            "sum": shown_money(bill.of(key)) if amount else "",
        }

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)


def _line(row: dict) -> str:
    return _("{label}: {price} for each {unit}").format(**row)


def _words(paid: bool) -> dict[str, str]:
    return {
        "title": _("Unfold: your bill, and the prices") if paid else _("Unfold: what things cost"),
        "note": NOTE,
        "ask": _("Put them right for your place, in your money. The offer follows them."),
        "reset": _("The usual prices again"),
        "what": _("What"),
        "price": _("Price"),
        "each": _("for each"),
        "amount": _("Yours has"),
        "sum": _("and costs"),
        "total": _("In all"),
        "own": _("your price"),
    }
