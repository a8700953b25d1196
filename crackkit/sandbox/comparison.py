"""Structures side by side: what they answer, and by how much the answers differ."""

from dataclasses import dataclass

from crackkit.drawing.deciding import deciding_crack
from crackkit.sandbox import markup
from crackkit.sandbox.answers import judged_width, pull, verdict_words
from crackkit.sandbox.care import caution_lines
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.units import shown
from crackkit.units.places import at_place
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
    values = [case.said(name) if name in case.texts else NONE for case in cases]
    if len(set(values)) < 2 or not any(name in case.typed for case in cases):
        return None
    owner = next(case for case in cases if name in case.texts)
    return (owner.argument(name).label, *values)


def _answer_rows(cases, system: str) -> list[tuple[str, ...]]:
    outcomes = [case.outcome for case in cases]
    return [
        (_("verdict"), *(verdict_words(outcome) for outcome in outcomes)),
        _numbers(_("widest crack"), [_width(o) for o in outcomes], "width", system),
        (_("where"), *(_place(outcome, system) for outcome in outcomes)),
        (_("by the rule"), *(_rule(outcome) for outcome in outcomes)),
        (_("all rules"), *(_band(outcome, system) for outcome in outcomes)),
        _numbers(_("limit"), [o.verdict.limit.width for o in outcomes], "width", system),
        _numbers(_("pull in the bars"), [pull(o) for o in outcomes], "stress", system),
        _numbers(_("moves at most"), [_movement(o) for o in outcomes], "movement", system),
        _numbers(_("bars weigh"), [o.steel_mass for o in outcomes], "mass", system),
    ]


def _numbers(label: str, values, quantity: str, system: str) -> tuple[str, ...]:
    """A row of values; from the second on with the difference to the first."""
    first = values[0]
    texts = [NONE if value is None else shown(value, quantity, system) for value in values]
    for k, value in enumerate(values[1:], 1):
        if value is not None and first is not None and value != first:
            texts[k] += f" ({_difference(value - first, first, quantity, system)})"
    return (label, *texts)


def _difference(more: float, first: float, quantity: str, system: str) -> str:
    sign = "+" if more > 0 else "\u2212"
    if first:
        return f"{sign}{abs(more / first):.0%}"
    return f"{sign}{shown(abs(more), quantity, system)}"


def _width(outcome) -> float | None:
    """Governing width [mm]; 0 without a crack, None where no rule gives one."""
    band = judged_width(outcome)
    if band:
        return band.governing
    return None if deciding_crack(outcome) else 0.0


def _place(outcome, system: str) -> str:
    """The face and the place of the crack that decides: two cases may differ in it."""
    crack = deciding_crack(outcome)
    if crack is None:
        return NONE
    face = _("top") if crack.face == "top" else _("bottom")
    if outcome.structure.origin:
        return f"{face}, {at_place(outcome.structure, crack.at, system)}"
    return _("{face}, at {x}").format(face=face, x=shown(crack.at, "length", system))


def _rule(outcome) -> str:
    band = judged_width(outcome)
    return band.name if band else NONE


def _band(outcome, system: str) -> str:
    band = judged_width(outcome)
    if not band:
        return NONE
    low, high = shown(band.low, "width", system), shown(band.high, "width", system)
    return _("{low} to {high}").format(low=low, high=high)


def _movement(outcome) -> float | None:
    movement = outcome.movement
    return None if movement.falls_at is not None else abs(movement.largest)
