"""What is told beyond the four answers: sentences, and small tables."""

from dataclasses import dataclass

from crackkit.drawing import sheet
from crackkit.sandbox import markup

_COLUMN = 260.0  # of a table on paper, drawing units


@dataclass(frozen=True)
class Told:
    """Sentences and perhaps a table under one heading.

    Attributes
    ----------
    title : str
        The heading.
    sentences : tuple of str
        Each a line of its own.
    head, rows : tuple
        Of the table; empty where there is none.
    """

    title: str
    sentences: tuple[str, ...] = ()
    head: tuple[str, ...] = ()
    rows: tuple[tuple[str, ...], ...] = ()

    def html(self) -> str:
        """Give it as HTML."""
        lines = "".join(markup.paragraph(text) for text in self.sentences)
        table = markup.table(self.head, self.rows) if self.rows else ""
        return markup.heading(self.title) + lines + table

    def lines(self) -> list[str]:
        """Give it as lines of text."""
        table = [" | ".join(row) for row in (self.head, *self.rows)] if self.rows else []
        return [f"{self.title}:", *(f"  {line}" for line in (*self.sentences, *table))]

    def blocks(self) -> list:
        """Give it as blocks of a printed sheet."""
        found = [sheet.words(text) for text in self.sentences]
        if self.rows:
            widths = (_COLUMN,) * len(self.head)
            found += sheet.table_rows([self.head, *self.rows], widths)
        title = sheet.words(self.title, "label_bold")
        return [sheet.joined(title, found[0]), *found[1:]] if found else []
