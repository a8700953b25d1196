"""The rows of a comparison as the page shows them: a bar against its bound, and numbers."""

import math

from crackkit.drawing.told_numbers import told_text
from crackkit.drawing.verdict_card import VERDICTS, verdict_word
from crackkit.learning.comparison import (
    Compared,
    Comparison,
    Measured,
    helped,
    measures,
    summary,
)
from crackkit.structures.outcome import Outcome
from crackkit.units import explain, shown
from crackkit.words import _

JUDGED = "widest"  # key of the number that the bar shows already
HELPS = {
    "lot": _("a lot"),
    "little": _("a little"),
    "none": _("not at all"),
    "worse": _("makes it worse"),
    "": "",
}


def told(comparison: Comparison, rows: tuple[Compared, ...], system: str) -> dict:
    """Give what the page shows: ``head``, ``rows`` and ``foot``.

    Parameters
    ----------
    comparison : Comparison
    rows : tuple of Compared
        What became of its variants.
    system : str
        ``"SI"`` or ``"US"``.
    """
    built = [row for row in rows if row.outcome is not None]
    outcomes = tuple(row.outcome for row in built)
    found = dict(zip(map(id, built), measures(comparison, outcomes), strict=True))
    columns, alike = _columns(outcomes, comparison.measure is None, system)
    now = next(found[id(row)] for row in built if row.present)
    top = _top(tuple(found.values()))
    return {
        "head": _head(comparison, tuple(found.values()), columns, system),
        "rows": [
            _row(row, found[id(row)], now, top, system) | {"told": _told(row, columns, system)}
            if id(row) in found
            else _refused(row, system)
            for row in rows
        ],
        "foot": _foot(alike, now),
    }


def _top(found: tuple[Measured, ...]) -> float:
    """The end of the scale [-], in bounds: room for the longest bar, and for the bound."""
    shares = [each.value / each.bound for each in found if each.value < math.inf]
    return max(2.0, 1.1 * max(shares, default=0.0))


def _head(comparison, found, columns, system: str) -> dict:
    bounds = {each.bound for each in found}
    bar = found[0].label
    if len(bounds) == 1 and found[0].quantity != "ratio":
        bound = shown(bounds.pop(), found[0].quantity, system)
        bar = _("{measured}, limit {bound}").format(measured=bar, bound=bound)
    names = [label for _key, label in columns]
    return {"name": comparison.label, "bar": bar, "helps": _("does it help?"), "told": names}


def _row(row: Compared, its: Measured, now: Measured, top: float, system: str) -> dict:
    return _named(row) | {
        "share": min(its.value / its.bound / top, 1.0),
        "limit": 1.0 / top,
        "kind": VERDICTS[row.outcome.verdict.key][1],
        "word": verdict_word(row.outcome),
        "text": _value(its, system),
        "helps": "" if row.present else HELPS[helped(now, its)],
        "note": _("moves along: {inputs}").format(inputs="; ".join(row.moved)) if row.moved else "",
    }


def _named(row: Compared) -> dict:
    place = -1 if row.place is None else row.place
    return {"name": row.label, "place": place, "present": row.present, "error": ""}


def _refused(row: Compared, system: str) -> dict:
    return _named(row) | {"error": explain(row.error, system)}


def _value(its: Measured, system: str) -> str:
    if its.quantity == "width" and its.value in (0.0, math.inf):
        return ""  # the verdict says it in words
    if its.quantity == "ratio":
        return f"{100 * its.value:.0f} %"
    return shown(its.value, its.quantity, system)


def _numbers(outcome: Outcome) -> dict:
    return {each.key: each for each in summary(outcome)}


def _columns(outcomes: tuple[Outcome, ...], judged: bool, system: str):
    """Part the numbers into those that differ, key and label, and those that do not, in words."""
    columns, alike = [], []
    hidden = JUDGED if judged else ""
    for number in summary(outcomes[0]):
        texts = {told_text(_numbers(each)[number.key], system) for each in outcomes}
        if number.key == hidden:
            continue
        if len(texts) > 1:
            columns.append((number.key, number.label))
        else:
            alike.append(f"{number.label}: {texts.pop()}")
    return columns, alike


def _told(row: Compared, columns, system: str) -> list[str]:
    numbers = _numbers(row.outcome)
    return [told_text(numbers[key], system) for key, _label in columns]


def _foot(alike: list[str], now: Measured) -> list[str]:
    same = _("The same in all: {numbers}.").format(numbers="; ".join(alike)) if alike else ""
    scale = _(
        "A lot: the bar is at most half as long as for what stands above; a little: at least 5 % "
        "shorter. All else is as it stands above."
    )
    return [line for line in (same, scale) if line]


def in_words(page: dict) -> str:
    """Say what the page shows, row by row, for readers who cannot see it."""
    lines = [_said(row) for row in page["rows"]]
    return f"{page['head']['bar']}. " + " ".join(lines)


def _said(row: dict) -> str:
    if row["error"]:
        return f"{row['name']}: {row['error']}"
    stands = row["present"] and row["place"] >= 0
    name = _("{name}, as it stands").format(name=row["name"]) if stands else row["name"]
    parts = [part for part in (row["text"], row["word"]) if part]
    return f"{name}: {', '.join(parts)}."
