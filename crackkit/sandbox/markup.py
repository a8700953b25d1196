"""Small pieces of HTML; every text is escaped here and nowhere else."""

from html import escape

_CELL = "padding:2px 10px 2px 0;text-align:left;vertical-align:top"
_HEAD = f"{_CELL};border-bottom:1px solid currentColor"


def element(name: str, inner: str, style: str = "") -> str:
    """Wrap HTML in an element."""
    look = f' style="{escape(style)}"' if style else ""
    return f"<{name}{look}>{inner}</{name}>"


def heading(text: str) -> str:
    """Make a small heading of a text."""
    return element("h4", escape(text), "margin:0.9em 0 0.3em")


def paragraph(text: str, style: str = "") -> str:
    """Make a paragraph of a text."""
    return element("p", escape(text), style or "margin:0.3em 0")


def points(texts) -> str:
    """Make a list of texts."""
    return element("ul", "".join(element("li", escape(text)) for text in texts))


def answers(pairs) -> str:
    """Make a numbered list of questions with their answers."""
    rows = [f"<b>{escape(question)}</b> {escape(answer)}" for question, answer in pairs]
    return element("ol", "".join(element("li", row) for row in rows))


def table(head, rows, caption: str = "") -> str:
    """Make a table of texts; the first cell of a row heads the row."""
    title = f"<caption>{escape(caption)}</caption>" if caption else ""
    top = "".join(f'<th scope="col" style="{_HEAD}">{escape(text)}</th>' for text in head)
    body = "".join(element("tr", _cells(row)) for row in rows)
    return (
        f'<table style="border-collapse:collapse;margin:0.3em 0">{title}'
        f"<thead><tr>{top}</tr></thead><tbody>{body}</tbody></table>"
    )


def _cells(row) -> str:
    first = f'<th scope="row" style="{_CELL};font-weight:600">{escape(str(row[0]))}</th>'
    return first + "".join(f'<td style="{_CELL}">{escape(str(text))}</td>' for text in row[1:])


def folded(summary: str, inner: str, is_open: bool = False) -> str:
    """Fold HTML away under a line of text."""
    opened = " open" if is_open else ""
    return f"<details{opened}><summary>{escape(summary)}</summary>{inner}</details>"
