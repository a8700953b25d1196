"""Beams on any supports under any loads, solved exactly.

Euler-Bernoulli beams of any number of spans, pinned or fixed, with free ends and settlements. The
beam is cut at supports and loads; between two cuts all diagrams are polynomials, so there is no
mesh and no mesh error.
"""

import numpy as np

from crackkit.mechanics.beam_state import BeamState
from crackkit.mechanics.continuity import Spans, end_moments, spans_of
from crackkit.mechanics.loads import (
    LineLoad,
    PointLoad,
    line_intensities,
    point_forces,
    sorted_loads,
)
from crackkit.mechanics.supports import Support, checked_supports

__all__ = ["BeamState", "LineLoad", "PointLoad", "Support", "solve"]


def solve(length: float, supports, loads, stiffness=1.0) -> BeamState:
    """Solve a beam.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order; what reaches past the outer ones is a free end.
    loads : sequence of PointLoad or LineLoad
        The loads; where they overlap they add up.
    stiffness : float or array_like
        EI [N mm2]: one for all; or one for each span; or one for each stretch between ends and
        supports, free ends included, from left to right.

    Returns
    -------
    BeamState
        Moments, shears, slopes, deflections and reactions.

    Raises
    ------
    ValueError
        If the beam is not held, if supports or loads lie outside it, or if a number makes no
        sense.

    Notes
    -----
    Sagging moments, downward loads and downward deflections are positive. Slope-deflection
    method; see any text on structural analysis.
    """
    supports = tuple(supports)
    ordered = checked_supports(length, supports)
    points, lines = sorted_loads(length, loads)
    spans = spans_of(length, ordered, stiffness)
    nodes = _nodes(length, ordered, points, lines)
    pieces = _Pieces(nodes, point_forces(nodes, points), *line_intensities(nodes, lines))
    at_support = nodes.searchsorted(spans.supports_at)

    reactions, fixing = _held(spans, pieces, at_support)
    state = _carried(spans, pieces, at_support, reactions, fixing)
    given = spans.supports_at.searchsorted([support.at for support in supports])
    return BeamState(
        *state,
        supports_at=spans.supports_at[given],
        reactions=reactions[given],
        fixing_moments=fixing[given],
    )


def _nodes(length, supports, points, lines):
    places = {0.0, float(length)}
    places.update(float(support.at) for support in supports)
    places.update(float(load.at) for load in points)
    places.update(float(load.start) for load in lines)
    places.update(float(load.end) for load in lines)
    return np.array(sorted(places))


class _Pieces:
    """The loads of the pieces, and the diagrams of the beam as if nothing held it."""

    def __init__(self, nodes, forces, intensity, intensity_slope):
        h = nodes[1:] - nodes[:-1]
        self.nodes, self.h, self.q, self.k = nodes, h, intensity, intensity_slope
        weight = h * (intensity + h * intensity_slope / 2)
        self.loss = h * h * (intensity / 2 + h * intensity_slope / 6)
        self.V = -forces.cumsum()
        self.V[1:] -= weight.cumsum()
        self.M = self.moments(self.V[:-1])

    def moments(self, V, jumps=0.0):
        """Moment right of each node, from the shear right of each but the last."""
        M = np.zeros(self.nodes.size)
        (self.h * V - self.loss).cumsum(out=M[1:])
        return M + jumps


def _held(spans: Spans, pieces: _Pieces, at_support):
    """Reactions and fixing moments."""
    M, V = pieces.M[at_support], pieces.V
    upward = -V[-1]
    past_last = spans.length - spans.supports_at[-1]
    from_left, from_right = M[0], M[-1] - pieces.M[-1] - upward * past_last
    if spans.determinate:
        at_left, at_right = M[:-1], np.full(M.size - 1, from_right)
    else:
        areas = _simple_moment_areas(spans, pieces, at_support)
        _slopes, at_left, at_right = end_moments(spans, *areas, from_left, from_right)

    # Shear that the supports up to and including each one put into the beam.
    carried = np.empty(M.size)
    carried[:-1] = (at_right - at_left - (M[1:] - M[:-1])) / spans.lengths
    carried[-1] = upward
    reactions = carried.copy()
    reactions[1:] -= carried[:-1]
    fixing = np.zeros(M.size)
    fixing[:-1], fixing[-1] = at_left, from_right
    fixing[0] -= from_left
    fixing[1:] -= at_right
    return reactions, np.where(spans.fixed, fixing, 0.0)


def _simple_moment_areas(spans: Spans, pieces: _Pieces, at_support):
    """Integrals of (L - x) M0 and x M0 over each span, M0 as if it were simply supported."""
    first = at_support[0]
    inside = slice(first, at_support[-1])
    h, q, k = pieces.h[inside], pieces.q[inside], pieces.k[inside]
    span = spans.supports_at.searchsorted(pieces.nodes[inside], side="right") - 1
    at_ends = pieces.M[at_support]
    chord = ((at_ends[1:] - at_ends[:-1]) / spans.lengths)[span]
    offset = pieces.nodes[inside] - spans.supports_at[span]
    M = pieces.M[inside] - at_ends[span] - chord * offset
    V = pieces.V[inside] - chord
    area = h * (M + h * (V / 2 - h * (q / 6 + h * k / 24)))
    moment = h * h * (M / 2 + h * (V / 3 - h * (q / 8 + h * k / 30)))
    starts = at_support[:-1] - first
    right = np.add.reduceat(offset * area + moment, starts)
    return spans.lengths * np.add.reduceat(area, starts) - right, right


def _carried(spans: Spans, pieces: _Pieces, at_support, reactions, fixing):
    """All diagrams of the held beam at the left end of each piece."""
    nodes, h, q, k = pieces.nodes, pieces.h, pieces.q, pieces.k
    pushes, turns = np.zeros(nodes.size), np.zeros(nodes.size)
    pushes[at_support], turns[at_support] = reactions, fixing
    V = (pieces.V + pushes.cumsum())[:-1]
    M = pieces.moments(V, turns.cumsum())[:-1]
    EI = spans.stiffness[spans.supports_at.searchsorted(nodes[:-1], side="right")]

    turn, sag = np.zeros(nodes.size), np.zeros(nodes.size)
    turned = h * (M + h * (V / 2 - h * (q / 6 + h * k / 24))) / EI
    (-turned).cumsum(out=turn[1:])
    sagged = h * h * (M / 2 + h * (V / 6 - h * (q / 24 + h * k / 120))) / EI
    (h * turn[:-1] - sagged).cumsum(out=sag[1:])
    tilt, drop = _rigid_motion(spans, turn, sag, at_support)
    return nodes, q, k, EI, V, M, turn[:-1] + tilt, (sag + tilt * nodes)[:-1] + drop


def _rigid_motion(spans: Spans, turn, sag, at_support):
    """Slope and drop that set the bent beam down on its first and last support."""
    first, last = at_support[0], at_support[-1]
    at, sunk = spans.supports_at, spans.settlements
    if first == last:
        tilt = -turn[first]
    else:
        tilt = (sunk[-1] - sunk[0] - sag[last] + sag[first]) / (at[-1] - at[0])
    return tilt, sunk[0] - sag[first] - tilt * at[0]
