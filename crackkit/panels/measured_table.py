"""Measured crack widths beside those of the rules: how far an honest estimate may be off."""

from dataclasses import dataclass
from html import escape
from statistics import mean, stdev

import traitlets

from crackkit.checks import Check, published, result, sources
from crackkit.mechanics.crack_width import CrackWidth
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.units import shown
from crackkit.units.display import digits
from crackkit.words import _


@dataclass(frozen=True)
class MeasuredRow:
    """One member: the width measured on it, and what each rule gives.

    Parameters
    ----------
    member : str
        Kind and name of the member in the source.
    measured : float
        Largest width measured [mm].
    answers : tuple of CrackWidth
        What the rules give, in the order of the table.
    """

    member: str
    measured: float
    answers: tuple[CrackWidth, ...]

    @property
    def ratios(self) -> tuple[float, ...]:
        """Measured over computed width for each rule [-]."""
        return tuple(float(self.measured / answer.width) for answer in self.answers)


class MeasuredView(ReaderView):
    """The table on the page.

    Attributes
    ----------
    html, text : str
        The table, and its summary in words.
    """

    _esm = front_end("page.js", "reader.js", "measured.js")
    _css = front_end("panel.css", "measured.css")

    html = traitlets.Unicode().tag(sync=True)
    text = traitlets.Unicode().tag(sync=True)

    def still(self) -> str:
        """Give the table for pages without a kernel."""
        return self.html

    def in_words(self) -> str:
        """Give its summary as plain text."""
        return self.text


class MeasuredTable:
    """A table of measured widths, those of the rules, and their ratios, for a cell of a lesson.

    Parameters
    ----------
    subject : str
        Name of the file in ``crackkit/published``.
    choices : Preferences, optional
        Units; those shared by the whole kernel if left out.
    """

    def __init__(self, subject: str = "measured_widths", choices: Preferences | None = None):
        checks = published(subject)
        self.preferences = choices or preferences()
        self.rows = _rows(checks)
        self.source = sources()[checks[0].source]
        self.view = MeasuredView()
        self.view.follow(self.preferences)
        self.preferences.observe(self._on_units, "system")
        self.show()

    def show(self) -> None:
        """Send the table in the units that the reader has chosen."""
        with self.view.hold_sync():
            self.view.html, self.view.text = self._html(), self._plain()

    @surfaced
    def _on_units(self, _change) -> None:
        self.show()

    @property
    def rules(self) -> tuple[str, ...]:
        """Names of the rules, in the order of the table."""
        return tuple(answer.name for answer in self.rows[0].answers)

    @property
    def mean_ratios(self) -> tuple[float, ...]:
        """Mean of measured over computed width for each rule [-]."""
        return tuple(mean(column) for column in self._columns())

    @property
    def scatter(self) -> tuple[float, ...]:
        """Deviation of the ratios (n - 1) over their mean for each rule [-]."""
        return tuple(stdev(column) / mean(column) for column in self._columns())

    def _columns(self):
        return tuple(zip(*(row.ratios for row in self.rows), strict=True))

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)

    def _plain(self) -> str:
        means = zip(self.rules, self.mean_ratios, self.scatter, strict=True)
        lines = [
            _("{rule}: measured over computed {ratio} on average, scatter {scatter}.").format(
                rule=rule, ratio=digits(m, 2), scatter=_percent(v)
            )
            for rule, m, v in means
        ]
        return "\n".join((self._caption(), *lines, _remark()))

    def _caption(self) -> str:
        told = _("Largest crack widths after about 400 days under load: {source}, from memory.")
        return told.format(source=self.source.short)

    def _html(self) -> str:
        body = "".join(self._member(row) for row in self.rows)
        foot = self._summary(_("mean ratio"), [digits(m, 2) for m in self.mean_ratios])
        foot += self._summary(_("scatter"), [_percent(v) for v in self.scatter])
        return (
            f"<p id='ck-measured'>{escape(self._caption())}</p>"
            "<div style='overflow-x:auto'><table aria-labelledby='ck-measured'>"
            f"<thead>{self._head()}</thead><tbody>{body}</tbody><tfoot>{foot}</tfoot></table></div>"
            f"<p>{escape(_remark())}</p>"
        )

    def _head(self) -> str:
        names = [_head_cell(name, "colgroup", colspan=2) for name in self.rules]
        first = [_head_cell(name, "col", rowspan=2) for name in (_("member"), _("measured"))]
        below = [_head_cell(name, "col") for name in (_("computed"), _("ratio"))]
        return _line(first + names) + _line(below * len(names))

    def _member(self, row: MeasuredRow) -> str:
        cells = [_head_cell(row.member, "row"), _cell(self._width(row.measured))]
        for answer, ratio in zip(row.answers, row.ratios, strict=True):
            cells += [_cell(self._width(answer.width)), _cell(digits(ratio, 2))]
        return _line(cells)

    def _summary(self, name: str, texts: list[str]) -> str:
        return _line([_head_cell(name, "row", colspan=2), *(_cell(t, colspan=2) for t in texts)])

    def _width(self, width: float) -> str:
        return shown(width, "width", self.preferences.system)


def _rows(checks: tuple[Check, ...]) -> tuple[MeasuredRow, ...]:
    members = dict.fromkeys(check.where for check in checks)
    return tuple(_row([c for c in checks if c.where == member]) for member in members)


def _row(checks: list[Check]) -> MeasuredRow:
    member, _comma, _place = _(checks[0].where).partition(",")
    return MeasuredRow(member, checks[0].expected, tuple(result(check) for check in checks))


def _remark() -> str:
    return _(
        "Ratio: measured over computed. The measured widths include what shrinkage and creep "
        "added in more than a year, which the rules leave out here: ratios above 1 are expected, "
        "and a mean near 1 is luck, not merit."
    )


def _percent(share: float) -> str:
    return f"{100 * share:.0f} %"


def _line(cells: list[str]) -> str:
    return f"<tr>{''.join(cells)}</tr>"


def _head_cell(text: str, scope: str, **spans: int) -> str:
    return f"<th scope='{scope}'{_spans(spans)} style='text-align:left'>{escape(text)}</th>"


def _cell(text: str, **spans: int) -> str:
    return f"<td{_spans(spans)} style='text-align:right'>{escape(text)}</td>"


def _spans(spans: dict[str, int]) -> str:
    return "".join(f" {name}='{number}'" for name, number in spans.items())
