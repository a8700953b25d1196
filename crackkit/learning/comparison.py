"""Comparisons: one structure as it stands, beside itself with a few things done differently."""

import math
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from crackkit.structures.fields import InputError, fitted, input_at
from crackkit.structures.outcome import UNCRACKED, UNHELD, YIELDS, Outcome, Told
from crackkit.words import _

A_LOT, A_LITTLE = 0.5, 0.95  # shares of what it was, up to which a means helps a lot, or a little
WORSE = 1.05  # share of what it was, from which it does harm
NOTICED = 0.05  # share of the bound below which there is nothing to help


@dataclass(frozen=True)
class Measured:
    """What is compared: a number with its bound; the less, the better.

    Attributes
    ----------
    label : str
        What it is.
    value, bound : float
        In N, mm, MPa; the value is infinite where nothing bounds it.
    quantity : str
        Kind of quantity, a key of the units table.
    """

    label: str
    value: float
    bound: float
    quantity: str


@dataclass(frozen=True)
class Variant:
    """One way to do it.

    Attributes
    ----------
    label : str
        What it is called.
    changes : dict
        What it changes in the structure: path to value in N, mm, MPa.
    when : callable, optional
        Whether it means anything for a structure; it always does if left out.
    """

    label: str
    changes: dict
    when: Callable[[object], bool] | None = None


@dataclass(frozen=True)
class Comparison:
    """Several ways to do one thing.

    Attributes
    ----------
    key, label : str
        Name in the code, and for people.
    variants : tuple of Variant
        Two or more.
    measure : callable, optional
        From an Outcome to what is compared (a Measured); the crack width if left out.
    """

    key: str
    label: str
    variants: tuple[Variant, ...]
    measure: Callable[[Outcome], Measured] | None = None


@dataclass(frozen=True)
class Compared:
    """What became of one variant.

    Attributes
    ----------
    label : str
        What it is called.
    place : int or None
        Its number in the comparison; None for the structure as it stands.
    outcome : Outcome or None
        None where the structure cannot be built so.
    present : bool
        Whether the structure stands like this.
    moved : tuple of str
        Labels of other inputs that had to be drawn back.
    error : InputError or None
        Why it cannot be built so.
    """

    label: str
    place: int | None
    outcome: Outcome | None
    present: bool = False
    moved: tuple[str, ...] = ()
    error: InputError | None = None


def compared(now: Outcome, comparison: Comparison) -> tuple[Compared, ...]:
    """Work out each variant of a structure, all else being as it stands.

    Parameters
    ----------
    now : Outcome
        Of the structure as it stands. Unless it is one of the variants, it comes first.
    comparison : Comparison
    """
    return with_present(now, tuple(tried(now, comparison)))


def tried(now: Outcome, comparison: Comparison) -> Iterator[Compared]:
    """Work out the variants one after the other, for those who cannot wait for all.

    Parameters
    ----------
    now : Outcome
        Of the structure as it stands.
    comparison : Comparison
    """
    for place, variant in enumerate(comparison.variants):
        if variant.when is None or variant.when(now.structure):
            yield _tried(now, place, variant)


def with_present(now: Outcome, rows: tuple[Compared, ...]) -> tuple[Compared, ...]:
    """Put the structure as it stands before its variants, unless it is one of them."""
    if any(row.present for row in rows):
        return rows
    return (Compared(_("what you have now"), None, now, True), *rows)


def _tried(now: Outcome, place: int, variant: Variant) -> Compared:
    try:
        structure, moved = fitted(now.structure, variant.changes)
    except InputError as error:
        return Compared(variant.label, place, None, error=error)
    if _stands(now.structure, structure, variant):
        return Compared(variant.label, place, now, True)
    if hasattr(structure, "after"):  # some remember what was done to them
        structure = structure.after(now.structure, variant.changes)
    return Compared(variant.label, place, structure.solve(), moved=moved)


def _stands(now, then, variant: Variant) -> bool:
    """Whether a structure is like a variant in all that the variant sets and that matters."""
    pairs = [(input_at(now, path), input_at(then, path)) for path in variant.changes]
    return all(
        a.applies == b.applies and (not b.applies or _same(a.value, b.value)) for a, b in pairs
    )


def _same(a, b) -> bool:
    if isinstance(a, float) and isinstance(b, float):
        return math.isclose(a, b, rel_tol=1e-6)
    return a == b


def measures(comparison: Comparison, outcomes: tuple[Outcome, ...]) -> tuple[Measured, ...]:
    """Give what is compared of each outcome.

    The comparison's own measure; else the width that is judged, with its limit; and where nothing
    has cracked, the pull beside what the concrete bears.

    Parameters
    ----------
    comparison : Comparison
    outcomes : tuple of Outcome
        Of all variants that can be built.
    """
    if comparison.measure is not None:
        return tuple(map(comparison.measure, outcomes))
    cracked = any(each.verdict.key != UNCRACKED for each in outcomes)
    return tuple(map(judged_width if cracked else largest_pull, outcomes))


def judged_width(outcome: Outcome) -> Measured:
    """Give the crack width that is judged, beside its limit; infinite where nothing holds it."""
    verdict = outcome.verdict
    width = verdict.width
    if width is None:
        width = math.inf if verdict.key in (UNHELD, YIELDS) else 0.0
    return Measured(_("widest crack"), float(width), verdict.limit.width, "width")


def largest_pull(outcome: Outcome) -> Measured:
    """Give the largest pull as a share of what the concrete bears."""
    share = max((zone.peak for zone in outcome.tension), default=0.0)
    return Measured(_("pull; at the dashes it cracks"), float(share), 1.0, "ratio")


def helped(now: Measured, then: Measured) -> str:
    """Tell how far a variant helps: ``"lot"``, ``"little"``, ``"none"``, ``"worse"``.

    Empty where there is nothing to help yet.

    Parameters
    ----------
    now, then : Measured
        As it stands, and of the variant.
    """
    if max(now.value / now.bound, then.value / then.bound) < NOTICED:
        return ""
    if now.value == then.value:
        return "none"
    share = then.value / now.value if 0 < now.value < math.inf else _beyond(now, then)
    if share > WORSE:
        return "worse"
    return "lot" if share <= A_LOT else "little" if share <= A_LITTLE else "none"


def _beyond(now: Measured, then: Measured) -> float:
    """The share where it was nothing, or without bounds."""
    return math.inf if then.value > now.value else 0.0


def summary(outcome: Outcome) -> tuple[Told, ...]:
    """Give the numbers that sum up an Outcome; of a bent member its cracks and its bars."""
    if outcome.numbers:
        return outcome.numbers
    return (
        Told("cracks", _("cracks"), float(len(outcome.cracks)), "count"),
        Told("mass", _("bars weigh"), outcome.steel_mass, "mass"),
    )
