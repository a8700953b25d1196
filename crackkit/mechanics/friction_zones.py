"""Where a shortening strip slides on its base and where it sticks.

Newton's method: for zones taken as they are the answer is exact and linear; it tells where the
zones should end, and which bars in cracks yield. Friction and bars only grow weaker than their
tangents, so that the rounds close in from one side, the last ones quadratically.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.friction_chain import Chain, ChainState, Drag
from crackkit.words import _

_ROUNDS, _BRIEF = 20, 8
_PATIENCE = 120


def chain_state(chain: Chain, drag: Drag, guess: ChainState | None = None) -> ChainState:
    """Slip, forces and openings of a chain that shortens.

    Parameters
    ----------
    chain : Chain
        The pieces.
    drag : Drag
        What moves them, at one age or at many.
    guess : ChainState, optional
        Answer for as many pieces and cracks, whose last age is near: a start, no more.

    Returns
    -------
    ChainState
        Slips in [mm], forces in [N/mm].

    Raises
    ------
    ValueError
        If the zones do not come to rest.
    """
    rate = drag.rate(chain.length)
    row = _Row.of(chain.in_stretches(1 / rate.max()), drag, rate)
    with np.errstate(all="ignore"):  # roots that are not taken may not exist
        state = _newton(row, *_warm(row, guess), _BRIEF)
        state = state or _newton(row, *_cold(row)) or _patient(row)
    if state is None:
        raise ValueError(_("The slab and its base do not come to rest."))
    return state


def _newton(row, zones, yields, most=_ROUNDS):
    """State from a start, or None where it does not get there."""
    tolerance = _tolerance(row)
    for rounds in range(1, most + 1):
        ends, trail = _linear(row, zones, yields)
        moved = _zones(row, zones, ends[1], trail)
        state = ChainState(row.chain, row.drag, *ends, trail[0][1], zones, yields, rounds)
        yielding = row.crossing * state.opening > row.capacity
        if np.abs(moved - zones).max() <= tolerance and np.array_equal(yielding, yields):
            return state
        zones, yields = moved, yielding
    return None


def _patient(row):
    """State by small steps, until Newton's method gets there.

    Weak springs tie all places to where they were a step before, so that pieces between bars
    that yield cannot fly off. When the places rest the springs are slack: the answer is exact.
    """
    start, anchor = _cold(row), np.zeros((row.shape[0], row.right[-1] + 1))
    spring = row.drag.shear / (np.maximum(row.shortening, 1e-6) * row.stiffness)
    for step in range(_PATIENCE):
        near = _newton(replace(row, spring=spring, anchor=anchor), *start)
        near = near or _newton(replace(row, spring=spring, anchor=anchor), *_cold(row))
        if near is None:
            spring = 5 * spring
            continue
        spring = spring / 2
        start, last = (near.zones, near.yields), anchor
        anchor = np.empty_like(last)
        anchor[:, row.left], anchor[:, row.right] = near.start_slip, near.end_slip
        rests = np.abs(anchor - last).max() < 1e-9
        state = _newton(row, *start, _BRIEF) if step % 3 == 0 and not rests else None
        if rests or state is not None:
            return state or near
    return None


@dataclass(frozen=True)
class _Row:
    """What stays the same in all rounds; the unknowns are one slip at a whole place, two at a
    crack, numbered from the left.
    """

    chain: Chain
    drag: Drag
    rate: np.ndarray
    curvature: np.ndarray
    slip: float
    stiffness: np.ndarray
    shortening: np.ndarray
    lengths: np.ndarray
    cracks: np.ndarray
    crossing: np.ndarray
    capacity: np.ndarray
    spring: float | np.ndarray
    anchor: float | np.ndarray
    left: np.ndarray
    right: np.ndarray

    @classmethod
    def of(cls, chain, drag, rate):
        at = chain.cracks
        left = np.arange(len(chain.places) - 1) + np.cumsum(np.isfinite(chain.crossing[:-1]))
        return cls(
            chain=chain,
            drag=drag,
            rate=rate,
            curvature=rate * rate * drag.slip,
            slip=drag.slip if drag.shear > 0 else np.inf,
            stiffness=drag.stiffness[:, None],
            shortening=drag.shortening[:, None],
            lengths=chain.lengths,
            cracks=at,
            crossing=chain.crossing[at],
            capacity=chain.capacity[at],
            spring=1e-13 / chain.length,
            anchor=0.0,
            left=left,
            right=left + 1,
        )

    @property
    def shape(self):
        return len(self.stiffness), len(self.lengths)


def _warm(row, guess):
    """Zones and yielding of a guess that fits; without one, and whole, those of a free slab that
    hardly feels the friction.
    """
    A, P = row.shape
    number = len(row.cracks)
    if guess is not None and guess.zones.shape[2] == P and guess.yields.shape[1] == number:
        zones = np.broadcast_to(guess.zones[:, -1:], (2, A, P))
        return zones, np.broadcast_to(guess.yields[-1:], (A, number))
    if number or P > 1:
        return _cold(row)
    stuck = np.minimum(2 * row.slip / np.maximum(row.shortening, 1e-12), row.lengths)
    return np.stack([0.5 * (row.lengths - stuck), stuck]), _cold(row)[1]


def _cold(row):
    """Start from which Newton's method seldom strays: all stuck, and nothing yields."""
    zones = np.stack([np.zeros(row.shape), np.broadcast_to(row.lengths, row.shape)])
    return zones, np.zeros((row.shape[0], len(row.cracks)), dtype=bool)


def _tolerance(row):
    """Error of a zone's end that changes forces by less than a ten-milliardth.

    Friction is wrong there by the slip's slope times the error, over the error alone.
    """
    eps, L = max(row.shortening.max(), 1e-9), row.chain.length
    return 1e-5 * min(np.sqrt(row.slip * L / eps), L)


def _linear(row, zones, yields):
    """Slips at the ends of the pieces, and slip and slope where their zones begin."""
    rate, c = row.rate, row.curvature
    first, second = zones
    third = row.lengths - first - second
    C, S = np.cosh(rate * second), np.sinh(rate * second)
    near, steep = S / rate, S * rate
    bend = c * first
    bow = 0.5 * bend * first
    T22 = C + steep * first
    T12 = near + C * first + T22 * third
    v2 = steep * bow + C * bend
    u3 = C * bow + near * bend + (v2 - 0.5 * c * third) * third
    pieces = (C + steep * third) / T12, T22 / T12, 1 / T12, u3, v2 - c * third
    slips = _node_slips(row, pieces, yields)
    u0, end = slips[:, row.left], slips[:, row.right]
    v0 = (end - u3) / T12 - pieces[0] * u0
    u1, v1 = u0 + v0 * first + bow, v0 + bend
    return (u0, end), ((u0, v0), (u1, v1), (C * u1 + near * v1, steep * u1 + C * v1))


def _node_slips(row, pieces, yields):
    """Solve the forces at all places, which keep each other in balance, for the slips there."""
    start, end, tie, u3, v3 = pieces
    eps, left, right = row.shortening, row.left, row.right
    diagonal, ties, load = np.zeros((3, row.shape[0], right[-1] + 1))
    diagonal[:, left], ties[:, left], load[:, left] = start, -tie, eps - u3 * tie
    diagonal[:, right] += end
    load[:, right] += end * u3 - v3 - eps
    # A piece that only slides has nothing to stop it but this; it moves no other answer.
    diagonal += row.spring
    load += row.spring * row.anchor
    if len(row.cracks):
        _tie_cracks(row, yields, diagonal, ties, load)
    _tie_ground(row, diagonal, ties, load)
    return _solved(diagonal, ties, load)


def _solved(diagonal, ties, load):
    """Unknowns of a few symmetric equations for each age; the last of the ties is not one."""
    A, M = diagonal.shape
    K = np.zeros((A, M * M))
    K[:, :: M + 1] = diagonal
    K[:, 1 :: M + 1] = K[:, M :: M + 1] = ties[:, :-1]
    return np.linalg.solve(K.reshape(A, M, M), load[..., None])[..., 0]


def _tie_cracks(row, yields, diagonal, ties, load):
    before, after = row.right[row.cracks - 1], row.left[row.cracks]
    k = np.where(yields, 0.0, row.crossing) / row.stiffness
    force = np.where(yields, row.capacity, 0.0) / row.stiffness
    diagonal[:, before] += k
    diagonal[:, after] += k
    ties[:, before] = -k
    load[:, before] += force
    load[:, after] -= force


def _tie_ground(row, diagonal, ties, load):
    ground, number = row.chain.ground, np.r_[row.left, row.right[-1]]
    for place in np.flatnonzero(ground):
        node = number[place]
        if np.isfinite(ground[place]):
            diagonal[:, node] += ground[place] / row.stiffness[:, 0]
        else:
            diagonal[:, node], load[:, node], ties[:, node], ties[:, node - 1] = 1.0, 0, 0, 0


def _zones(row, zones, end, trail):
    """Lengths of the zones that the slips ask for: sliding to the right, and stuck."""
    slides, turns = _passed(row, zones, end, trail)
    moved = np.stack([slides, np.maximum(turns - slides, 0.0)])
    # A piece that nothing ties and that only slides flies off: it starts again, stuck.
    far = 2 * (row.shortening * row.chain.length + row.slip)
    flown = np.maximum(np.abs(trail[0][0]), np.abs(end)) > far
    if flown.any():
        moved = np.where(flown, _cold(row)[0], moved)
    return moved


def _passed(row, zones, end, trail):
    """How far from the start of each piece its slip has fallen to s0, and to -s0."""
    (u0, v0), (u1, v1), (u2, v2) = trail
    level, c = row.slip * np.array([1.0, -1.0])[:, None, None], row.curvature
    d, middle = row.lengths, zones[0] + zones[1]
    t1 = np.minimum(_slides_to(level - u0, v0, c), zones[0])
    t2 = zones[0] + np.minimum(_fades_to(row.slip, u1, v1, row.rate), zones[1])
    t3 = middle + np.minimum(_slides_to(level - u2, v2, -c), d - middle)
    inside = np.where(u2 > level, t3, np.where(u1 > level, t2, t1))
    return np.where(u0 <= level, 0.0, np.where(end > level, d, inside))


def _slides_to(rise, v, c):
    """Smaller root of v t + c t^2/2 = rise."""
    return -2 * rise / (np.sqrt(np.maximum(v * v + 2 * c * rise, 0.0)) - v)


def _fades_to(s0, u, v, rate):
    """Smaller roots of u cosh(rate t) + v/rate sinh(rate t) = s0, and = -s0."""
    v = v / rate
    up, down = u + v, u - v
    reach = s0 + np.sqrt(np.maximum(s0 * s0 - up * down, 0.0))
    return np.log(np.stack([down / reach, -reach / up])) / rate
