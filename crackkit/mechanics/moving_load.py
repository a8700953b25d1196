"""One force rolling along a beam: the diagrams of every position at once."""

from functools import lru_cache

import numpy as np

from crackkit.mechanics.continuity import Spans, end_moments, spans_of
from crackkit.mechanics.supports import checked_supports
from crackkit.words import _


def moments_for_positions(
    length: float, supports, force: float, positions, x, stiffness=1.0, side: str = "right"
) -> np.ndarray:
    """Bending moments for every position of a rolling force, settlements left aside.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order.
    force : float
        The force, downward positive [N].
    positions : array_like
        Where the force stands, from the left end of the beam [mm].
    x : array_like
        Where the moment is wanted [mm]; put the supports among them, or a peak is missed.
    stiffness : float or array_like
        EI as in `beam.solve` [N mm2].
    side : str
        "right" or "left": which value counts at an inner fixed support, where it jumps.

    Returns
    -------
    ndarray
        Moments, sagging positive, shape (positions, x) [N mm].

    Raises
    ------
    ValueError
        If the beam is not held, or a position or a place lies outside it.
    """
    rolling = _Rolling(length, supports, positions, x, stiffness, side)
    to_right = rolling.belongs * rolling.fraction
    ends = np.concatenate([rolling.left, rolling.right])
    M = ends.T @ np.concatenate([rolling.belongs - to_right, to_right])
    np.add(M, np.minimum(rolling.x, rolling.a[:, None]), out=M, where=rolling.under_load)
    M *= force
    return M


def shears_for_positions(
    length: float, supports, force: float, positions, x, stiffness=1.0, side: str = "right"
) -> np.ndarray:
    """Shear forces for every position of a rolling force, settlements left aside.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order.
    force : float
        The force, downward positive [N].
    positions : array_like
        Where the force stands, from the left end of the beam [mm].
    x : array_like
        Where the shear is wanted [mm].
    stiffness : float or array_like
        EI as in `beam.solve` [N mm2].
    side : str
        "right" or "left": which value counts at the force and at supports, where it jumps.

    Returns
    -------
    ndarray
        Shears, shape (positions, x) [N].

    Raises
    ------
    ValueError
        If the beam is not held, or a position or a place lies outside it.
    """
    rolling = _Rolling(length, supports, positions, x, stiffness, side)
    V = ((rolling.right - rolling.left) / rolling.lengths[:, None]).T @ rolling.belongs
    # A place seen from the left lies a hair before the force that stands on it.
    seen = np.where(rolling.seen_from_left(side), np.nextafter(rolling.x, -1.0), rolling.x)
    V += rolling.under_load & (seen < rolling.a[:, None])
    V *= force
    return V


class _Rolling:
    """A unit force at many positions, and the stations it is watched from.

    In each stretch the moment runs straight from `left` to `right`; min(x, a) comes on top where
    the stretch carries the force at a. (In a span that is the simple moment
    min(x, a) - s - (x - s)(a - s) / L; the subtracted part is straight, so it joins the end
    moments. On a free end it is min(x, a) - x on the left and min(x, a) - a on the right.)
    """

    def __init__(self, length, supports, positions, x, stiffness, side):
        self.length = length
        self.a, self.x = _inside(length, positions), _inside(length, x)
        ends = _known_ends(
            length, tuple(supports), self.a.tobytes(), np.asarray(stiffness, dtype=float).tobytes()
        )
        spans, self.left, self.right = ends.spans, ends.left, ends.right
        watched = _stretches(spans, self.x, side)
        self.under_load = ends.loaded[:, None] == watched

        starts, bounds = ends.starts, ends.bounds
        self.lengths = np.where(bounds > starts, bounds - starts, 1.0)
        self.belongs = (np.arange(starts.size)[:, None] == watched).astype(float)
        self.fraction = (self.x - starts[:, None]) / self.lengths[:, None]

    def seen_from_left(self, side):
        """Stations where the value just left of them counts: always at the right end."""
        chosen = self.x > 0.0 if side == "left" else False
        return chosen | (self.x >= self.length)


@lru_cache(maxsize=4)  # a load that grows or shrinks stands where it stood
def _known_ends(length, supports, positions: bytes, stiffness: bytes) -> "_Ends":
    spans = spans_of(length, checked_supports(length, supports), np.frombuffer(stiffness))
    return _Ends(spans, np.frombuffer(positions))


class _Ends:
    """The values at both ends of each stretch, for every position a of the unit force."""

    def __init__(self, spans: Spans, a):
        self.spans = spans
        self.loaded = _stretches(spans, a, "right")
        places = np.concatenate([[0.0], spans.supports_at, [spans.length]])
        self.starts, self.bounds = places[:-1], places[1:]
        self.left, self.right = self._values(a)

    def _values(self, a):
        spans, loaded, last = self.spans, self.loaded, self.starts.size - 1
        left, right = np.zeros((last + 1, a.size)), np.zeros((last + 1, a.size))
        _slopes, left[1:-1], right[1:-1] = end_moments(
            spans,
            *_simple_moment_areas(spans, a),
            np.minimum(a - spans.supports_at[0], 0.0),
            np.minimum(spans.supports_at[-1] - a, 0.0),
        )
        case = np.arange(a.size)
        left[loaded, case] -= np.where(loaded == last, a, self.starts[loaded])
        right[loaded, case] -= np.where(loaded == 0, self.bounds[0], a)
        return left, right


def _simple_moment_areas(spans: Spans, a):
    """Integrals of (L - x) M0 and x M0 under a unit force: p r (L + r) / 6 and p r (L + p) / 6."""
    L = spans.lengths[:, None]
    p = np.minimum(np.maximum(a - spans.supports_at[:-1, None], 0.0), L)
    r = L - p
    return p * r * (L + r) / 6.0, p * r * (L + p) / 6.0


def _inside(length, places) -> np.ndarray:
    places = np.atleast_1d(np.asarray(places, dtype=float))
    slack = 1e-9 * length
    if places.size and not (places.min() >= -slack and places.max() <= length + slack):
        raise ValueError(_("A place lies outside the beam."))
    return places


def _stretches(spans: Spans, places, side) -> np.ndarray:
    """Number of the stretch of each place: 0 left free end, 1 first span, and so on."""
    at = spans.supports_at
    lowest = 0 if at[0] > 0.0 else 1
    highest = at.size if at[-1] < spans.length else at.size - 1
    return np.clip(np.searchsorted(at, places, side=side), lowest, highest)
