"""Which cracks form in a pulled member, where, and at which pull.

Pieces between cracks know nothing of each other but the pull. So the pull that tears a piece can
be found for all pieces of a generation at once, each giving two pieces to the next generation.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bond_slip import slip_along, transfer_length, unfolded
from crackkit.mechanics.rising_root import rising_root
from crackkit.mechanics.tie import Tie, middles


@dataclass(frozen=True)
class CrackSequence:
    """Cracks in the order in which they form while the pull grows.

    Parameters
    ----------
    station : numpy.ndarray of int
        Station of each crack [-].
    position : numpy.ndarray
        Its distance from the left end [mm].
    pull : numpy.ndarray
        Pull at which it forms [N]; 0 where the concrete cracks while it dries.
    greatest_pull : float
        Pull that cannot be passed [N]: that at which the bars yield in a crack or, where they
        cannot hold the first crack, that at which it forms.
    held : bool
        Whether the bars hold the first crack; where they do not, or there are none, one crack
        is the end.
    """

    station: np.ndarray
    position: np.ndarray
    pull: np.ndarray
    greatest_pull: float
    held: bool

    def formed(self, pull):
        """Stations of the cracks that are there at a pull, from left to right.

        Parameters
        ----------
        pull : float
            Greatest pull so far [N].

        Returns
        -------
        numpy.ndarray
            Stations [-].
        """
        return np.sort(self.station[self.pull <= pull])


@dataclass(frozen=True)
class CrackSeries:
    """Cracks that form at almost the same pull.

    Parameters
    ----------
    steel_stress : numpy.ndarray
        Stress of the bars in a crack when each series begins [MPa].
    spacing : numpy.ndarray
        Mean distance of the cracks when the series is complete [mm]; end faces of a member
        whose bars are pulled count as cracks.
    """

    steel_stress: np.ndarray
    spacing: np.ndarray


def crack_sequence(member):
    """Cracks of a member pulled until its bars yield, each where and when the strength is reached.

    Where several stations reach their strength together, the middle one of them cracks.

    Parameters
    ----------
    member : Tie
        The member.

    Returns
    -------
    CrackSequence
        Cracks in the order of their pulls [N].
    """
    if member.bars_area == 0:
        return _sequence(member, [_weakest(member)], [0.0], False)
    last = len(member.strengths) - 1
    if member.ends == "bars":
        return _sequence(member, *_generations(member, [(0, last)]), True)
    first = _weakest(member)
    e = member.beta * member.strengths[first]
    if e > member.gradient(member.yield_pull):
        return _sequence(member, [first], [e], False)
    stations, gradients = _generations(member, [(0, first), (first, last)])
    return _sequence(member, [first, *stations], [e, *gradients], True)


def crack_series(member: Tie, step=0.01):
    """Cracks gathered in series: a new one begins where the pull had to grow by a share.

    Parameters
    ----------
    member : Tie
        The member, of even strength or nearly so.
    step : float
        Share by which the pull must grow between two series [-], above 0.

    Returns
    -------
    CrackSeries
        Steel stresses [MPa] and spacings [mm].
    """
    sequence = crack_sequence(member)
    pull = sequence.pull
    begins = np.flatnonzero(np.r_[True, pull[1:] > (1 + step) * pull[:-1]][: len(pull)])
    numbers = np.r_[begins[1:], len(pull)][: len(begins)]
    gaps = numbers + (1 if member.ends == "bars" else 0)
    return CrackSeries(pull[begins] / member.bars_area, member.length / gaps)


def _weakest(member):
    inner = member.strengths[1:-1]
    weak = np.flatnonzero(inner <= inner.min() * (1 + 1e-12))
    return 1 + int(weak[len(weak) // 2])


def _sequence(member, stations, gradients, held):
    stations, e = np.asarray(stations, dtype=int), np.asarray(gradients, dtype=float)
    if member.bars_area == 0:
        pull = member.strengths[stations] * member.concrete_area
    else:
        pull = np.maximum((e - member.shrinkage) * member.stretching, 0.0)
    order = np.argsort(e, kind="stable")
    stations, pull = stations[order], pull[order]
    limit = member.yield_pull if held else float(pull[0])
    return CrackSequence(stations, member.stations[stations], pull, limit, held)


def _generations(member, pieces):
    """Stations and slopes of all cracks, one generation of pieces after the other."""
    stations, gradients = [], []
    while pieces := [(left, right) for left, right in pieces if right - left > 1]:
        cracks = zip(pieces, *_torn(member, np.array(pieces)), strict=True)
        found = [(*piece, int(i), e) for piece, i, e in cracks if i >= 0]
        stations += [i for _left, _right, i, _e in found]
        gradients += [e for *_piece, e in found]
        halves = [((left, i), (i, right)) for left, right, i, _e in found]
        pieces = [piece for pair in halves for piece in pair]
    return stations, gradients


def _torn(member, pieces):
    """Station at which each piece tears (-1 where it does not) and the slope at its cracks then."""
    top, limit = member.gradient(member.yield_pull), 1e-9 * np.min(member.strength)
    inside, owner, starts = _insides(pieces)
    stress = _concrete_stresses(member, pieces, inside, owner, top)

    def excess(theta):
        sigma, e = stress(theta)
        return sigma - member.strengths[inside], e

    def worst(theta):
        return np.maximum.reduceat(excess(theta)[0], starts)

    theta = rising_root(worst, *_bounds(member, pieces, top), limit)
    over, e = excess(theta)
    peak = np.maximum.reduceat(over, starts)
    tears = (peak > -10 * limit) & (e <= top)
    at_peak = over >= (peak - 10 * limit)[owner]
    places = [inside[(owner == k) & at_peak] for k in range(len(pieces))]
    stations = [p[len(p) // 2] if t else -1 for p, t in zip(places, tears, strict=True)]
    return stations, e


def _bounds(member, pieces, top):
    """Bounds of theta: the concrete takes at most e/beta, and bars that yield end the search."""
    half, least = middles(member, *pieces.T)[1], member.beta * np.min(member.strength)
    core = np.maximum(1 - transfer_length(member.bond_slip, least) / half, 0.0)
    share = max(1 - least / top, 0.0) ** (1 / member.bond_slip.twist)
    return -core, np.full(len(pieces), share)


def _insides(pieces):
    """Stations inside of pieces in one row, the piece of each, and where the row changes piece."""
    counts = pieces[:, 1] - pieces[:, 0] - 1
    inside = np.concatenate([np.arange(left + 1, right) for left, right in pieces])
    return inside, np.repeat(np.arange(len(pieces)), counts), np.r_[0, np.cumsum(counts)[:-1]]


def _concrete_stresses(member, pieces, inside, owner, top):
    """Concrete stress inside of pieces, and the slope at their cracks, over the unknown theta."""
    middle, half = middles(member, *pieces.T)
    distance = np.r_[np.abs(member.stations[inside] - middle[owner]), half]
    owners = np.r_[owner, np.arange(len(pieces))]
    equation, beta = member.bond_slip, member.beta

    def stress(theta):
        p, core = unfolded(equation, theta, half, top)
        q = slip_along(equation, distance, p[owners], core[owners])[1]
        e = q[len(inside) :]
        return (e[owner] - q[: len(inside)]) / beta, e

    return stress
