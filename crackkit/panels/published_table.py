"""The last section of a lesson: printed values beside ours, with their sources."""

from html import escape

from crackkit.checks import Row, table
from crackkit.words import _


class PublishedTable:
    """A folded table of published values of some subjects, each compared with our result.

    Parameters
    ----------
    *subjects : str
        Names of the files in ``crackkit/published``, such as ``"sections"``.
    """

    def __init__(self, *subjects: str):
        self.rows = table(*subjects)

    @property
    def largest_difference(self) -> float:
        """Largest difference of ours from a printed value, as a share of it [-]."""
        return max(abs(row.ratio - 1.0) for row in self.rows)

    def _repr_mimebundle_(self, **_kwargs):
        return {"text/html": self._html(), "text/plain": self._summary()}

    def _summary(self) -> str:
        return _("{n} printed values, largest difference {d}.").format(
            n=len(self.rows), d=f"{100 * self.largest_difference:.1f} %"
        )

    def _html(self) -> str:
        names = (_("source"), _("where"), _("quantity"), _("printed"), _("ours"), _("ours/printed"))
        head = "".join(f"<th style='text-align:left'>{escape(name)}</th>" for name in names)
        body = "".join(_row(row) for row in self.rows)
        return (
            f"<details><summary>{escape(self._summary())} {escape(_('Unfold the table.'))}"
            f"</summary><table><tr>{head}</tr>{body}</table></details>"
        )


def _row(row: Row) -> str:
    cells = (
        row.source,
        row.where,
        row.quantity,
        f"{row.printed:.5g}",
        f"{row.ours:.5g}",
        f"{row.ratio:.4f}",
    )
    return (
        "<tr>"
        + "".join(f"<td style='text-align:left'>{escape(str(c))}</td>" for c in cells)
        + "</tr>"
    )
