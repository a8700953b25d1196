"""What the lesson on the inside corner tells its readers, held against the mechanics."""

import math
from dataclasses import replace
from functools import cache

import numpy as np

from crackkit.learning.corner import (
    CLOSE,
    LAST,
    SECOND,
    YOUNG,
    floor,
    found_floor,
    held_floor,
    opening,
    round_floor,
    walk,
    widest,
)
from crackkit.learning.corner_comparisons import CUT, FIBRES
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD, YIELDS, Outcome
from crackkit.units.quantities import INCH

BEFORE, AFTER = 120.0, 180.0  # days: between them the crack runs
HAND = {"SI": 100.0, "US": 4 * INCH}
THICKER = {"SI": 250.0, "US": 10 * INCH}
STRONGER = 15.0  # MPa
COLDER = 10.0  # °C
FAST, FASTER = 1.0, 0.13  # degrees to which it is held [-]


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _found(system) | _bars(system) | _ways(system) | _later(system) | _site(system)
        found |= {f"{system}: {text}": bool(kept) for text, kept in told.items()}
    return found


@cache
def _walked(system: str) -> tuple[Outcome, ...]:
    """Outcomes of the steps of the walk, each from what the lesson starts with."""
    start = found_floor(system)
    return tuple(fitted(start, step.changes)[0].solve() for step in walk(system))


def _found(system: str) -> dict[str, bool]:
    """The floor in its first month, and at one year as it was found."""
    young, found = _walked(system)[:2]
    state = found.cornered
    field = young.cornered.field
    line = state.crack.points[-1] - state.crack.points[0]
    bisector = abs(math.degrees(math.atan2(-line[1], -line[0])) - 45.0)
    return {
        "no crack in the first month": young.verdict.key == UNCRACKED,
        "the pull gathers at the corner": _near(_most_pulled(young), young.cornered.corner.at),
        "several times what it is elsewhere": young.cornered.share
        > 2.5 * float(np.nanmedian(field.share)),
        "across the corner": abs(young.cornered.corner.across - 3 * math.pi / 4)
        < math.radians(10.0),
        "its material length shrinks by a third to a half from a month to a year": 0.3
        < 1 - state.material_length / young.cornered.material_length
        < 0.5,
        "no crack after four months": _outcome(found_floor(system), age=BEFORE).verdict.key
        == UNCRACKED,
        "one after six": _outcome(found_floor(system), age=AFTER).verdict.key == UNHELD,
        "at one year it gapes by more than 2 mm": found.verdict.width > 2.0,
        "no bar crosses it": found.verdict.key == UNHELD
        and not any(bar.crosses for bar in state.bars),
        "halfway between the walls": bisector < 2.0,
        "right through the floor": state.crack.length > 0.95 * state.crack.along[-1],
    }


def _most_pulled(outcome: Outcome) -> tuple[float, float]:
    field = outcome.cornered.field
    row, column = np.unravel_index(np.nanargmax(field.share), field.share.shape)
    return float(field.x[column]), float(field.y[row])


def _near(place, corner) -> bool:
    return math.dist(place, corner) < 300.0


def _outcome(slab: CornerSlab, **changes) -> Outcome:
    return replace(slab, **changes).solve()


def _holds(outcome: Outcome) -> bool:
    """Whether the crack stays within its limit, run or not."""
    return outcome.verdict.key in (TIGHT, UNCRACKED)


def _open(outcome: Outcome) -> float:
    return outcome.cornered.crack.widest


def _bars(system: str) -> dict[str, bool]:
    """Two diagonal bars, near and far; bars along the walls; a mat."""
    found, close, far, walls, mat = _walked(system)[1:6]
    length = close.cornered.crack.length
    hand = opening(replace(held_floor(system), diagonal_off=HAND[system]))
    nearest = opening(replace(held_floor(system), diagonal_off=CLOSE[system] / 2))
    return {
        "two diagonal bars hold it": _holds(close),
        "a tenth of the width or less": _open(close) < 0.1 * found.verdict.width,
        "it ends after less than a stride": 0.0 < length < 600.0,
        "they do not keep it from starting": _open(close) > 0.1,
        "far away they are too far": far.verdict.key in (TOO_WIDE, YIELDS)
        and far.verdict.width > 2.5 * _open(close),
        "a hand away costs a little, up to a third": 1.05 < hand / _open(close) < 1.34,
        "half of the distance gains little": 0.8 < nearest / _open(close) < 1.05,
        "bars along the walls do not": walls.verdict.key in (TOO_WIDE, YIELDS)
        and walls.verdict.width > 0.75 * found.verdict.width,
        "though they cross it": sum(bar.crosses for bar in walls.cornered.bars) == 2,
        "they weigh three times as much": 2.7 < walls.steel_mass / close.steel_mass < 3.3,
        "a mat holds": _holds(mat),
        "but not as fine": _open(mat) > 1.2 * _open(close),
        "with eighty times the steel or more": 80.0 < mat.steel_mass / close.steel_mass < 100.0,
    }


def _ways(system: str) -> dict[str, bool]:
    """A round corner, a joint, no ties: the walk's other means."""
    last, joint, loose = _walked(system)[6:9]
    sharp = floor(system)
    return {
        "a round corner has not run at one year": _outcome(round_floor(system)).verdict.key
        == UNCRACKED,
        "at ten years it has": last.verdict.key == UNHELD,
        "and as wide as a sharp one": abs(last.verdict.width / widest(replace(sharp, age=LAST)) - 1)
        < 0.02,
        "with a joint no crack runs": joint.verdict.key == UNCRACKED,
        "but it opens as wide": abs(joint.cornered.crack.widest / widest(sharp) - 1) < 0.02,
        "not tied it is hardly pulled": loose.cornered.share < 0.15,
        "for ten years, to a sixth": _outcome(sharp, held="base", age=LAST).cornered.share < 1 / 6,
    }


def _later(system: str) -> dict[str, bool]:
    """What bars can and cannot do in the long run, and where all is held fast."""
    two = _walked(system)[9]
    held = held_floor(system)
    bare = widest(replace(floor(system), age=SECOND))
    four = replace(held, diagonal_count=4)
    fast, two_fast, bare_fast = (_outcome(slab, holds=FAST) for slab in (four, held, floor(system)))
    return {
        "at two years it runs in spite of two bars": two.verdict.key in (TOO_WIDE, YIELDS),
        "but trimmed": two.verdict.width < 0.9 * bare,
        "at one year four do no better than two": abs(opening(four) / opening(held) - 1) < 0.02,
        "three or four hold it at two years": all(
            _holds(_outcome(held, age=SECOND, diagonal_count=n)) for n in (3, 4)
        ),
        "four hold it for ten": _holds(_outcome(four, age=LAST)),
        "three do not": not _holds(_outcome(held, age=LAST, diagonal_count=3)),
        "held fast it opens in spite of four, nearly as wide as bare": min(
            fast.verdict.width, two_fast.verdict.width
        )
        > 0.85 * bare_fast.verdict.width,
        "held fast a bare one cracks in its first month": _outcome(
            floor(system), holds=FAST, age=YOUNG
        ).verdict.key
        == UNHELD,
        "held a little faster two bars do not do": widest(replace(held, holds=FASTER))
        > 5 * opening(held),
        "but three do": _holds(_outcome(held, holds=FASTER, diagonal_count=3)),
    }


def _site(system: str) -> dict[str, bool]:
    """What the lesson says of work on site."""
    bare = floor(system)
    width = widest(bare)
    fibres = replace(bare, fibres=FIBRES)
    sawn = _outcome(bare, joint="saw", saw_length=CUT[system], cut_depth=0.25)
    thick = replace(bare, thickness=THICKER[system])
    strong = replace(bare, strength=bare.strength + STRONGER)
    cold = widest(replace(bare, cooling=COLDER))
    return {
        "fibres hold it": _holds(_outcome(fibres)),
        "and do so for ten years": _holds(_outcome(fibres, age=LAST)),
        "a saw cut does not": sawn.verdict.key == UNHELD and sawn.verdict.width > 0.95 * width,
        "thicker it holds for a year": _outcome(thick).verdict.key == UNCRACKED,
        "but not for two, and hardly finer": widest(replace(thick, age=SECOND))
        > 0.75 * widest(replace(bare, age=SECOND)),
        "stronger concrete cracks as wide": abs(widest(strong) / width - 1) < 0.02,
        "and is pulled harder": strong.cornered.share > bare.cornered.share,
        "ten degrees colder: a third wider, or a little more": 1.33 < cold / width < 1.4,
    }
