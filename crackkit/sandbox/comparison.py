"""Structures side by side: what they answer, and by how much the answers differ."""

from dataclasses import dataclass

from crackkit.drawing.told_numbers import told_text
from crackkit.sandbox import markup
from crackkit.sandbox.answers import verdict_words
from crackkit.sandbox.care import caution_lines
from crackkit.sandbox.kinds import kind_of
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures.outcome import Told
from crackkit.units import shown
from crackkit.words import _

NONE = "—"


@dataclass(frozen=True)
class Comparison:
    """A table of structures.

    Attributes
    ----------
    names : tuple of str
        One for each structure.
    rows : tuple of tuple of str
        What is compared, then one text for each structure; differences are to the first one.
    cautions : tuple of str
        Of all structures, each said once.
    """

    names: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    cautions: tuple[str, ...]

    def _repr_mimebundle_(self, include=None, exclude=None) -> dict:
        return {"text/html": self.html(), "text/plain": repr(self)}

    def html(self) -> str:
        """Give the table as HTML."""
        return markup.table(("", *self.names), self.rows) + markup.points(self.cautions)

    def __repr__(self) -> str:
        rows = [("", *self.names), *self.rows]
        wide = [max(len(row[k]) for row in rows) for k in range(len(rows[0]))]
        lines = ["  ".join(c.ljust(w) for c, w in zip(r, wide, strict=True)) for r in rows]
        return "\n".join([*(line.rstrip() for line in lines), "", *self.cautions])


def compare(*structures, **named) -> Comparison:
    """Put structures side by side.

    Parameters
    ----------
    *structures, **named
        Two or more structures made in the sandbox; a keyword becomes the heading of its
        column, for instance ``compare(drawn=a, trodden=b)``. The units are those of the first.

    Raises
    ------
    WrongInput
        If there are fewer than two.
    """
    columns = {_("case {n}").format(n=k): s for k, s in enumerate(structures, 1)} | named
    if len(columns) < 2:
        raise WrongInput(_("Give two structures or more to compare."))
    cases = list(columns.values())
    rows = (*_typed_rows(cases), *_answer_rows(cases, cases[0].system))
    return Comparison(tuple(columns), rows, tuple(_cautions(columns)))


def _cautions(columns: dict) -> list[str]:
    """The cautions of all, then those of single ones with their names."""
    lists = {name: caution_lines(case.outcome) for name, case in columns.items()}
    shared = [text for text in next(iter(lists.values())) if all(text in x for x in lists.values())]
    own = [f"{name}: {t}" for name, texts in lists.items() for t in texts if t not in shared]
    return [*own, *shared]


def _typed_rows(cases) -> list[tuple[str, ...]]:
    """The inputs that somebody typed and that are not the same for all."""
    names = dict.fromkeys(name for case in cases for name in case.texts)
    return [row for row in (_typed_row(name, cases) for name in names) if row]


def _typed_row(name: str, cases) -> tuple[str, ...] | None:
    values = [case.said(name) if _counts(name, case) else NONE for case in cases]
    if len(set(values)) < 2 or not any(name in case.typed for case in cases):
        return None
    owner = next(case for case in cases if name in case.texts)
    return (owner.argument(name).label, *values)


def _counts(name: str, case) -> bool:
    """Whether a case has such an input, and it means anything there."""
    return name in case.texts and name not in case.idle


def _answer_rows(cases, system: str) -> list[tuple[str, ...]]:
    """The verdicts, then every number that somebody has; what another has not is a dash."""
    told = [_by_key(case.outcome, system) for case in cases]
    keys = dict.fromkeys(key for one in told for key in one)
    rows = [_row([one.get(key) for one in told], system) for key in keys]
    return [(_("verdict"), *(verdict_words(case.outcome) for case in cases)), *rows]


def _by_key(outcome, system: str) -> dict[str, Told]:
    return {told.key: told for told in kind_of(outcome).numbers(outcome, system)}


def _row(cells, system: str) -> tuple[str, ...]:
    """A row of numbers or words; from the second on with the difference to the first."""
    texts = [NONE if cell is None else told_text(cell, system) for cell in cells]
    first, *others = texts
    for k, (text, cell) in enumerate(zip(others, cells[1:], strict=True), 1):
        # what reads the same differs by less than anybody cares for
        if text != first and _comparable(cells[0], cell):
            more = _difference(cell.value - cells[0].value, cells[0], system)
            texts[k] = f"{text} ({more})" if more else text
    return (next(cell.label for cell in cells if cell), *texts)


def _comparable(first: Told | None, other: Told | None) -> bool:
    """Whether both are numbers of one kind."""
    if first is None or other is None or first.quantity != other.quantity:
        return False
    return not isinstance(first.value, str) and not isinstance(other.value, str)


def _difference(more: float, first: Told, system: str) -> str:
    """Write a difference; empty where it is less than half a percent."""
    sign = "+" if more > 0 else "\u2212"
    if not first.value:
        return f"{sign}{shown(abs(more), first.quantity, system)}"
    percent = f"{abs(more / first.value):.0%}"
    return "" if percent == "0%" else f"{sign}{percent}"
