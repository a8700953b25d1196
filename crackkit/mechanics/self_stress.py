"""Moments that a beam can hold without any load: what statics leaves open.

Each pattern is one at one support and falls straight to zero at its neighbours; a support that is
fixed parts it into a left and a right half. The moments of a beam under load are any that balance
the load, plus some share of each pattern (force method; see any text on structural analysis).
"""

from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from crackkit.words import _


@dataclass(frozen=True, eq=False)
class SelfStress:
    """The patterns of a beam, one row each.

    Parameters
    ----------
    at : ndarray
        Places of the supports, increasing [mm].
    fixed : ndarray
        True where a support stops the beam from turning [-].
    settlements : ndarray
        How far each support has sunk, downward positive [mm].
    left_ends : ndarray
        Value of each pattern at the left end of each span, shape (patterns, spans) [-].
    right_ends : ndarray
        Value at the right end of each span [-].
    """

    at: np.ndarray
    fixed: np.ndarray
    settlements: np.ndarray
    left_ends: np.ndarray
    right_ends: np.ndarray

    @cached_property
    def rise(self) -> np.ndarray:
        """Slope of each pattern in each span [1/mm]."""
        return (self.right_ends - self.left_ends) / np.diff(self.at)

    @property
    def turned_by_settlement(self) -> np.ndarray:
        """Integral of curvature times each pattern that the settlements ask for [-]."""
        return self.rise @ np.diff(self.settlements)

    def values(self, x, before) -> np.ndarray:
        """Value of each pattern.

        Parameters
        ----------
        x : ndarray
            Places [mm].
        before : ndarray of bool
            Places that are seen from the left, where a fixed support parts left and right.

        Returns
        -------
        ndarray
            Shape (patterns, places) [-].
        """
        spans = self.at.size - 1
        if spans == 0:
            return np.zeros((0, x.size))
        from_left, from_right = (self.at.searchsorted(x, side=side) for side in ("left", "right"))
        i = np.where(before, from_left, from_right) - 1
        inside = (i >= 0) & (i < spans)
        i = np.minimum(np.maximum(i, 0), spans - 1)
        return (self.left_ends[:, i] + self.rise[:, i] * (x - self.at[i])) * inside


def self_stress(supports) -> SelfStress:
    """Patterns of a beam on some supports.

    Parameters
    ----------
    supports : sequence of Support
        Sorted, checked supports.

    Returns
    -------
    SelfStress
        No pattern where statics alone gives the moments.
    """
    return _patterns(tuple(supports))


@lru_cache(maxsize=8)  # loads come and go on the same supports
def _patterns(supports: tuple) -> SelfStress:
    at = np.array([support.at for support in supports])
    fixed = np.array([support.kind == "fixed" for support in supports])
    spans = at.size - 1
    left, right = [], []
    for i, held in enumerate(fixed):
        starts, ends = np.eye(1, spans, i)[0], np.eye(1, spans, i - 1)[0]
        if held:
            left += [starts] * (i < spans) + [np.zeros(spans)] * (i > 0)
            right += [np.zeros(spans)] * (i < spans) + [ends] * (i > 0)
        elif 0 < i < spans:
            left.append(starts)
            right.append(ends)
    return SelfStress(
        at=at,
        fixed=fixed,
        settlements=np.array([support.settlement for support in supports]),
        left_ends=np.array(left).reshape(len(left), spans),
        right_ends=np.array(right).reshape(len(left), spans),
    )


def seen_from_left(x, patterns: SelfStress) -> np.ndarray:
    """Which stations show the beam just left of them.

    Parameters
    ----------
    x : ndarray
        Stations, never decreasing [mm].
    patterns : SelfStress
        The patterns of the beam.

    Returns
    -------
    ndarray of bool
        True for the first of two stations at one place, and at the right end of the beam.

    Raises
    ------
    ValueError
        If a support is no station, or a fixed support with beam on both sides is only one.
    """
    before = np.append(x[1:] == x[:-1], True)
    here = x.searchsorted(patterns.at)
    if (here >= x.size).any() or (x[here] != patterns.at).any():
        raise ValueError(_("Every support must be a station."))
    parts = patterns.fixed & (patterns.at > x[0]) & (patterns.at < x[-1])
    if patterns.at.size > 1 and not before[here[parts]].all():
        raise ValueError(_("A fixed support between two parts of a beam must be two stations."))
    return before
