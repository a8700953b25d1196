"""Moments over the supports of a continuous beam, from the turning of the beam there.

The slope-deflection equations: the unknowns are the slopes over the supports, and a pinned
support passes the moment on unchanged. Everything works for many load cases at once.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.words import _


@dataclass(frozen=True, eq=False)
class Spans:
    """The spans between the supports of a beam.

    Parameters
    ----------
    length : float
        Length of the whole beam, free ends included [mm].
    supports_at : ndarray
        Places of the supports, increasing [mm].
    fixed : ndarray
        True where a support stops the beam from turning [-].
    settlements : ndarray
        How far each support has sunk, downward positive [mm].
    stiffness : ndarray
        EI of the left free end, of each span, and of the right free end [N mm2].
    """

    length: float
    supports_at: np.ndarray
    fixed: np.ndarray
    settlements: np.ndarray
    stiffness: np.ndarray

    @property
    def determinate(self) -> bool:
        """True where statics alone gives the moments: two pins, or one fixed support."""
        n = self.supports_at.size
        return n == 1 or (n == 2 and not self.fixed.any())

    @cached_property
    def lengths(self) -> np.ndarray:
        """Length of each span [mm]."""
        return self.supports_at[1:] - self.supports_at[:-1]

    @cached_property
    def rigidity(self) -> np.ndarray:
        """EI / L of each span [N mm]."""
        return self.stiffness[1:-1] / self.lengths


def spans_of(length: float, supports, stiffness) -> Spans:
    """Spans of a beam on sorted, checked supports.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports from left to right.
    stiffness : float or array_like
        EI [N mm2]: one for all; or one for each span; or one for each stretch between ends and
        supports, free ends included, from left to right.

    Returns
    -------
    Spans
        The spans, ready to be solved.

    Raises
    ------
    ValueError
        If the number of stiffnesses does not fit or one of them is not positive.
    """
    at = np.array([support.at for support in supports])
    return Spans(
        length=float(length),
        supports_at=at,
        fixed=np.array([support.kind == "fixed" for support in supports]),
        settlements=np.array([support.settlement for support in supports]),
        stiffness=_stiffness_of_stretches(stiffness, at[0] > 0.0, at.size - 1, at[-1] < length),
    )


def _stiffness_of_stretches(stiffness, left_end, spans, right_end) -> np.ndarray:
    """EI of left free end, spans and right free end; a free end takes that of its neighbour."""
    given = np.array(stiffness, dtype=float).reshape(-1)
    if not 0.0 < given.min() <= given.max() < np.inf:
        raise ValueError(_("The stiffness EI of a beam must be positive."))
    if given.size == 1:
        return given.repeat(spans + 2)
    if given.size == spans:
        return np.concatenate([given[:1], given, given[-1:]])
    if given.size != spans + left_end + right_end:
        raise ValueError(
            _("{} spans need one stiffness for all or one each, not {}.").format(spans, given.size)
        )
    stretches = np.concatenate([given[:1]] * (not left_end) + [given])
    return np.concatenate([stretches] + [given[-1:]] * (not right_end))


def end_moments(spans: Spans, left_area, right_area, left_free_end, right_free_end):
    """Slopes over the supports, and moments at both ends of every span.

    Parameters
    ----------
    spans : Spans
        The spans.
    left_area : ndarray
        For each span, the integral of (L - x) M0 dx, where M0 is the moment of the span taken as
        simply supported and x runs from its left support [N mm3]; further axes are load cases.
    right_area : ndarray
        For each span, the integral of x M0 dx [N mm3].
    left_free_end : float or ndarray
        Moment that the left free end brings to the first support, sagging positive [N mm].
    right_free_end : float or ndarray
        Moment that the right free end brings to the last support [N mm].

    Returns
    -------
    slopes : ndarray
        Slope over each support, positive where the beam runs downward [-].
    at_left : ndarray
        Moment at the left end of each span, sagging positive [N mm].
    at_right : ndarray
        Moment at the right end of each span [N mm].

    Notes
    -----
    Slope-deflection: M_A = (EI/L)(4 a + 2 b - 6 psi) - (4 A - 2 B)/L2 and
    M_B = -(EI/L)(2 a + 4 b - 6 psi) - (4 B - 2 A)/L2, with the slopes a and b, the chord slope
    psi, and A, B the two areas above.
    """
    column = (-1,) + (1,) * (left_area.ndim - 1)
    L = spans.lengths.reshape(column)
    k = spans.rigidity.reshape(column)
    sunk = spans.settlements.reshape(column)
    sway = 6.0 * k * (sunk[1:] - sunk[:-1]) / L
    A, B = left_area / (L * L), right_area / (L * L)
    held_left = 2.0 * B - 4.0 * A - sway
    held_right = 2.0 * A - 4.0 * B + sway

    out_of_balance = np.zeros((sunk.size,) + left_area.shape[1:])
    out_of_balance[:-1] -= held_left
    out_of_balance[1:] += held_right
    out_of_balance[0] += left_free_end
    out_of_balance[-1] -= right_free_end
    out_of_balance[spans.fixed] = 0.0
    slopes = np.linalg.solve(_turning_stiffness(spans), out_of_balance)

    a, b = slopes[:-1], slopes[1:]
    return slopes, held_left + k * (4 * a + 2 * b), held_right - k * (2 * a + 4 * b)


def _turning_stiffness(spans: Spans) -> np.ndarray:
    """Moment over each support for a unit slope there and at its neighbours."""
    n = spans.supports_at.size
    k = spans.rigidity
    K = np.zeros((n, n))
    diagonal, above, below = (
        K.reshape(-1)[:: n + 1],
        K.reshape(-1)[1 :: n + 1],
        K.reshape(-1)[n :: n + 1],
    )
    diagonal[:-1] += 4.0 * k
    diagonal[1:] += 4.0 * k
    above[: n - 1] = 2.0 * k
    below[: n - 1] = 2.0 * k
    K[spans.fixed] = 0.0
    diagonal[spans.fixed] = 1.0
    return K
