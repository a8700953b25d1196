"""A question with its choices, and the fresh numbers it is asked with."""

from collections.abc import Callable
from dataclasses import dataclass, field
from random import Random

from crackkit.learning.telling import shown, unit
from crackkit.mechanics.bars import Bar, bar
from crackkit.structures.anchored_bars import AnchoredBars
from crackkit.structures.cantilever import ArmLoad, Cantilever
from crackkit.structures.laid_bars import LaidBars
from crackkit.structures.simple_beam import PointLoad, SimpleBeam
from crackkit.units import inner, slider_range
from crackkit.words import _

SIZES = {"SI": ("12", "14", "16", "20", "25", "28"), "US": ("#4", "#5", "#6", "#7", "#8", "#9")}
CODES = {"SI": ("EN", 500.0), "US": ("ACI", 420.0)}  # rules and bars [MPa] a reader meets there
SLAB_STEEL = {"SI": 500.0, "US": 413.685438}  # MPa; 60 ksi
WIDE = {"SI": {"width": 300.0}, "US": {"width": 12 * 25.4}}
TRIES = 500


@dataclass(frozen=True)
class Choice:
    """One possible answer.

    Attributes
    ----------
    text : str
        What it says.
    right : bool
        Whether mechanics agrees.
    misconception : str
        The belief that leads here; empty for the right one.
    why : str
        What is said to who chose it.
    """

    text: str
    right: bool
    misconception: str
    why: str


@dataclass(frozen=True)
class Question:
    """One question.

    Attributes
    ----------
    key : str
        Its generator.
    text : str
        What is asked, with its numbers.
    choices : tuple of Choice
        Exactly one is right; in random order.
    structure : object or None
        The member it is about, to be drawn without results.
    after : object or None
        The structure whose picture answers once a choice is made; None where words are enough.
    again : callable or None
        From a system of units to the same question, its choices in the same order, told in them;
        None where it cannot be told again.
    """

    key: str
    text: str
    choices: tuple[Choice, ...]
    structure: object = None
    after: object = None
    again: Callable[[str], "Question"] | None = field(default=None, compare=False, repr=False)

    @property
    def right(self) -> Choice:
        """The right choice."""
        return next(choice for choice in self.choices if choice.right)


class Unclear(Exception):
    """These numbers make two choices alike; others must be drawn."""


def right(text: str, why: str) -> Choice:
    """Make the right choice."""
    return Choice(text, True, "", why)


def wrong(text: str, misconception: str, why: str) -> Choice:
    """Make a wrong choice, with the belief that leads to it."""
    return Choice(text, False, misconception, why)


def asked(key: str, random: Random, text: str, choices, structure=None) -> Question:
    """Put a question together, its choices in random order.

    Raises
    ------
    Unclear
        If two choices read the same.
    """
    if len({choice.text for choice in choices}) < len(choices):
        raise Unclear(key)
    mixed = list(choices)
    random.shuffle(mixed)
    return Question(key, text, tuple(mixed), structure)


def clear(condition: bool) -> None:
    """Ask for other numbers unless the condition holds.

    Raises
    ------
    Unclear
    """
    if not condition:
        raise Unclear


def drawn(random: Random, quantity: str, system: str, low: float, high: float) -> float:
    """Draw a value that is a round number in the reader's units [inner units]."""
    first, last, step = slider_range(low, high, quantity, system)
    steps = round((last - first) / step)
    return inner(first + step * random.randint(0, steps), quantity, system)


def size(random: Random, system: str, low: int = 0, high: int = 6) -> Bar:
    """Draw a size of bar of the reader's own system."""
    return bar(random.choice(SIZES[system][low:high]))


def bars_text(number: int, steel: Bar) -> str:
    """Write bars as the trade does: 3 × #6, or 3 × 20 mm."""
    name = steel.name if steel.name.startswith("#") else f"{steel.name} mm"
    return f"{number} × {name}"


def beam(system: str, bottom: tuple[int, Bar] | None, cover: float = 40.0, **inputs) -> SimpleBeam:
    """Make a beam with bars at the bottom, or none, and none on top."""
    code, yields = CODES[system]
    number, steel = bottom or (0, bar(SIZES[system][2]))
    return SimpleBeam(
        bottom=LaidBars(size=steel.name, number=number, cover=cover),
        top=LaidBars(size=SIZES[system][0], number=0, cover=cover, face="top"),
        stirrup="#3" if system == "US" else "10",
        yield_strength=yields,
        **({"code": code, "uniform_load": 0.0, "exposure": "moist"} | WIDE[system] | inputs),
    )


def arm(system: str, bars: tuple[Bar, float] | None, cover: float = 35.0, **inputs) -> Cantilever:
    """Make a strip of a slab that grows out of a wall, with a top mat (bar, spacing), or none."""
    steel, spacing = bars or (bar(SIZES[system][0]), 150.0)
    top = AnchoredBars(
        size=steel.name,
        laid=bars is not None,
        spacing=spacing,
        cover=cover,
        behind=0.75 * inputs.get("wall", 300.0),
        hooked=True,
    )
    deep = inputs.get("depth", 200.0)
    usual = {
        "top": top,
        "bottom": AnchoredBars(size="8", laid=False, cover=cover, behind=100.0, face="bottom"),
        "yield_strength": SLAB_STEEL[system],
        "code": CODES[system][0],
        "uniform_load": 0.0,
        "width": 304.8 if system == "US" else 1000.0,
        "depth": deep,
        "tip_depth": deep,
    }
    return Cantilever(**(usual | inputs))


def weight_at(force: float, from_root: float) -> tuple[ArmLoad, ...]:
    """Make one load [N] on an arm, at a distance from its root [mm]."""
    return (ArmLoad(force, from_root),)


def load_at(force: float, at: float) -> tuple[PointLoad, ...]:
    """Make one point load [N] at a place [mm]."""
    return (PointLoad(force, at),)


def width(outcome) -> float:
    """Widest crack [mm] of bars that hold.

    Raises
    ------
    Unclear
        If nothing cracks, nothing holds, or the bars give way: these numbers are no question.
    """
    clear(outcome.verdict.key in ("tight", "too_wide"))
    return outcome.widest.width.governing


def width_text(value: float, system: str) -> str:
    """Write a crack width."""
    return shown(value, "width", system)


def apart(values, least: float = 1.08) -> None:
    """Ask for other numbers unless the values differ by a factor of at least `least` [-].

    Raises
    ------
    Unclear
    """
    ordered = sorted(values)
    clear(all(b >= least * a > 0 for a, b in zip(ordered, ordered[1:], strict=False)))


def mat_text(steel: Bar, spacing: float, system: str) -> str:
    """Write a mat of bars as the trade does: #4 every 6 in, or 12 mm every 150 mm."""
    name = steel.name if steel.name.startswith("#") else f"{steel.name} mm"
    text = _("{bar} every {spacing}")
    return text.format(bar=name, spacing=shown(spacing, "size", system))


def size_text(structure: SimpleBeam, system: str) -> str:
    """Write width and depth of a beam."""
    wide, deep = (
        shown(v, "size", system).split("\u202f")[0] for v in (structure.width, structure.depth)
    )
    return _("{b} × {h} {unit}").format(b=wide, h=deep, unit=unit("size", system))
