"""The crack of a slab with inside corners through time: what opened stays open.

At each age the crack is carried on from the age before, from the end of curing on, so that it has
a past like a real one. Ages that the curve of openings tells are kept.
"""

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

import numpy as np

from crackkit.mechanics.crack_growth import Opened
from crackkit.mechanics.crack_state import CrackState
from crackkit.structures.corner_ages import AtAge, at_age
from crackkit.structures.corner_looked import line_at
from crackkit.structures.corner_opening import Line
from crackkit.structures.corner_rest import as_laid, bare_at, is_bare

TOLD = np.array([0.0, 0.1, 0.22, 0.34, 0.46, 0.58, 0.7, 0.85, 1.0])
"""Places of the ages of the curve between the end of curing and the last day, in decades [-]."""


@dataclass(frozen=True)
class Step:
    """The concrete of an age, and the crack that is looked at then."""

    now: AtAge
    line: Line

    @cached_property
    def _hash(self) -> int:
        return hash((self.now, self.line))

    def __hash__(self) -> int:  # asked for many times
        return self._hash


def told_ages(it) -> np.ndarray:
    """Ages of the curve of a CornerSlab [days]."""
    return it.curing * (it.last_day / it.curing) ** TOLD


def steps_to(it, age: float) -> tuple[Step, ...]:
    """Ages through which a CornerSlab comes to an age [days], that one the last."""
    count = int(np.searchsorted(told_ages(it), age))
    return (*_told_steps(ageless(it), count), _step(it, age))


def ageless(it):
    """The same CornerSlab whatever its age."""
    return it if it.age == it.last_day else replace(it, age=it.last_day)


@lru_cache(maxsize=64)
def _told_steps(it, count: int) -> tuple[Step, ...]:
    """The first steps of the curve."""
    if not count:
        return ()
    return (*_told_steps(it, count - 1), _step(it, float(told_ages(it)[count - 1])))


def _step(it, age: float) -> Step:
    now = at_age(it, age)
    return Step(now, line_at(it, now))


def opened(it, steps: tuple[Step, ...]) -> CrackState:
    """The crack of a CornerSlab as laid, at the last of some steps."""
    return _opened(ageless(it), _alike(steps))


def bare(steps: tuple[Step, ...]) -> CrackState:
    """The crack without bars, fibres and joint, at the last of some steps."""
    return _bare(_alike(steps))


def _alike(steps: tuple[Step, ...]) -> tuple[Step, ...]:
    """The last steps, as far back as the same crack is looked at."""
    other = [k for k, step in enumerate(steps) if step.line != steps[-1].line]
    return steps[other[-1] + 1 :] if other else steps


@lru_cache(maxsize=16)
def _opened(it, steps: tuple[Step, ...]) -> CrackState:
    if is_bare(it, steps[-1].line):
        return _bare(steps)
    before = _rest(it, steps[:-1]) if len(steps) > 1 else None
    return as_laid(it, steps[-1].line, steps[-1].now, before)


@lru_cache(maxsize=16)
def _bare(steps: tuple[Step, ...]) -> CrackState:
    before = _bare_rest(steps[:-1]) if len(steps) > 1 else None
    return bare_at(steps[-1].line, steps[-1].now, before)


# Of what has been only openings are kept: a whole state takes a megabyte and more.


@lru_cache(maxsize=512)
def _rest(it, steps: tuple[Step, ...]) -> Opened:
    return _opened(it, steps).opened


@lru_cache(maxsize=512)
def _bare_rest(steps: tuple[Step, ...]) -> Opened:
    return _bare(steps).opened


def openings(it) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Ages [days], and the greatest openings then with and without bars [mm].

    The age of the CornerSlab is one of them.
    """
    ages = told_ages(it)
    steps = _told_steps(ageless(it), len(ages))
    told = [steps[: k + 1] for k in range(len(ages))]
    if it.age not in ages:
        k = int(np.searchsorted(ages, it.age))
        ages = np.insert(ages, k, it.age)
        told.insert(k, (*steps[:k], _step(it, it.age)))
    laid = ageless(it)
    told = [_alike(each) for each in told]
    held = [_widest(_rest(laid, each)) for each in told]
    return ages, np.array(held), np.array([_widest(_bare_rest(each)) for each in told])


def _widest(rest: Opened) -> float:
    return max(float(rest.q[: len(rest.greatest)].max()), 0.0)
