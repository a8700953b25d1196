"""Where a shortening strip slides on its base and where it sticks.

Newton's method: for zones taken as they are the answer is exact and linear; it tells where the
zones should end, and which bars in cracks yield. Friction and bars only grow weaker than their
tangents, so that the rounds close in from one side, the last ones quadratically.
"""

from dataclasses import dataclass, replace
from functools import cached_property

import numpy as np

from crackkit.mechanics.friction_chain import Chain, ChainState, Drag
from crackkit.mechanics.tridiagonal import tridiagonal_solutions
from crackkit.words import _

_ROUNDS, _BRIEF = 20, 8
_PATIENCE = 120
_STEPS = 4.0  # how far on a guess is stretched, in its last steps


def chain_state(chain: Chain, drag: Drag, guess: ChainState | None = None) -> ChainState:
    """Slip, forces and openings of a chain that shortens.

    Parameters
    ----------
    chain : Chain
        The pieces.
    drag : Drag
        What moves them, at one age or at many.
    guess : ChainState, optional
        Answer whose last age is near, perhaps with fewer cracks: a start, no more.

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
        state = _stuck_state(row, guess) or _newton(row, *_warm(row, guess), _BRIEF)
        state = state or _newton(row, *_cold(row)) or _patient(row)
    if state is None:
        raise ValueError(_("The slab and its base do not come to rest."))
    return state


def _stuck_state(row, guess):
    """State if nowhere it slides; None if it does, or is likely to as a guess did."""
    if guess is not None and not guess.nowhere_slides:
        return None
    zones, yields = _cold(row)
    C, S = np.cosh(row.rate * row.lengths), np.sinh(row.rate * row.lengths)
    tie = row.rate / S
    hold = C * tie
    slips = _end_slips(row, (hold, hold, tie, 0.0, 0.0), yields)
    start, end = slips[..., 0], slips[..., 1]
    state = ChainState(row.chain, row.drag, start, end, end * tie - hold * start, zones, yields)
    over = row.crossing * state.opening > row.capacity
    return state if np.abs(slips).max() < row.slip and not over.any() else None


def _newton(row, zones, yields, most=_ROUNDS):
    """State from a start, or None where it does not get there."""
    for rounds in range(1, most + 1):
        ends, trail = _linear(row, zones, yields)
        moved = _zones(row, zones, ends[1], trail)
        opening = ends[0][:, row.after] - ends[1][:, row.before]
        yielding = row.crossing * opening > row.capacity
        if np.array_equal(yielding, yields) and np.abs(moved - zones).max() <= row.tolerance:
            return ChainState(row.chain, row.drag, *ends, trail[0][1], zones, yields, rounds)
        zones, yields = moved, yielding
    return None


def _patient(row):
    """State by small steps, until Newton's method gets there.

    Weak springs tie all places to where they were a step before, so that pieces between bars
    that yield cannot fly off. When the places rest the springs are slack: the answer is exact.
    """
    start, anchor = _cold(row), np.zeros((row.shape[0], len(row.heads)))
    spring = row.drag.shear / (np.maximum(row.shortening, 1e-6) * row.stiffness)
    for step in range(_PATIENCE):
        near = _newton(replace(row, spring=spring, anchor=anchor), *start)
        near = near or _newton(replace(row, spring=spring, anchor=anchor), *_cold(row))
        if near is None:
            spring = 5 * spring
            continue
        spring = spring / 2
        start, last = (near.zones, near.yields), anchor
        slips = np.stack([near.start_slip, near.end_slip], axis=-1)
        anchor = slips.reshape(len(last), -1)[:, row.heads]
        rests = np.abs(anchor - last).max() < 1e-9
        state = _newton(row, *start, _BRIEF) if step % 3 == 0 and not rests else None
        if rests or state is not None:
            return state or near
    return None


@dataclass(frozen=True)
class _Row:
    """What stays the same in all rounds.

    Each piece has a slip at its left and one at its right end. Where two pieces meet whole, these
    are one unknown: `heads` numbers the first of the slips that each unknown stands for, `unknown`
    the unknown of each slip, `held` those that cannot move; `in_pieces` none meet whole. Forces
    are in units of E h.
    """

    chain: Chain
    drag: Drag
    rate: np.ndarray
    curvature: np.ndarray
    slip: float
    shortening: np.ndarray
    lengths: np.ndarray
    cracks: np.ndarray
    after: slice | np.ndarray
    before: slice | np.ndarray
    crossing: np.ndarray
    pull: np.ndarray
    capacity: np.ndarray
    stiffness: np.ndarray
    ground: np.ndarray
    heads: np.ndarray
    unknown: np.ndarray
    in_pieces: bool
    held: np.ndarray
    spring: float | np.ndarray
    anchor: float | np.ndarray

    @classmethod
    def of(cls, chain, drag, rate):
        at, stiffness, number = chain.cracks, drag.stiffness[:, None], len(chain.places)
        parted = np.isfinite(chain.crossing[1:-1])
        begins = np.ones(2 * number - 2, dtype=bool)
        begins[2::2] = parted
        unknown = np.cumsum(begins) - 1
        first = np.minimum(2 * np.arange(number), 2 * number - 3)  # slip that a place holds
        still = np.isinf(chain.ground)
        return cls(
            chain=chain,
            drag=drag,
            rate=rate,
            curvature=rate * rate * drag.slip,
            slip=drag.slip if drag.shear > 0 else np.inf,
            shortening=drag.shortening[:, None],
            lengths=chain.lengths,
            cracks=at,
            after=slice(1, None) if parted.all() else at,
            before=slice(None, -1) if parted.all() else at - 1,
            crossing=chain.crossing[at],
            pull=chain.crossing[at] / stiffness,
            capacity=chain.capacity[at],
            stiffness=stiffness,
            ground=_on_slips(first, np.where(still, 0.0, chain.ground)) / stiffness,
            heads=np.flatnonzero(begins),
            in_pieces=bool(parted.all()),
            unknown=unknown,
            held=unknown[first[still]],
            spring=1e-13 / chain.length,
            anchor=0.0,
        )

    @property
    def shape(self):
        """Numbers of ages and of pieces."""
        return len(self.stiffness), len(self.lengths)

    @cached_property
    def far(self):
        """Slip that no place ever has [mm]."""
        return 2 * (self.shortening * self.chain.length + self.slip)

    @cached_property
    def tolerance(self):
        """Error of a zone's end that changes forces by less than a ten-milliardth.

        Friction is wrong there by the slip's slope times the error, over the error alone.
        """
        eps, L = max(self.shortening.max(), 1e-9), self.chain.length
        return 1e-5 * min(np.sqrt(self.slip * L / eps), L)


def _on_slips(first, values):
    """Values at places handed to the slips there."""
    there = np.zeros(first[-1] + 1)
    there[first] = values
    return there


def _warm(row, guess):
    """Zones and yielding of a guess; without one, and whole, those of a free slab that hardly
    feels the friction.
    """
    if guess is not None:
        return _guessed_zones(row, guess), _guessed_yields(row, guess)
    if len(row.cracks) or row.shape[1] > 1:
        return _cold(row)
    stuck = np.minimum(2 * row.slip / np.maximum(row.shortening, 1e-12), row.lengths)
    return np.stack([0.5 * (row.lengths - stuck), stuck]), _cold(row)[1]


def _guessed_zones(row, guess):
    """Zones that end where those of a guess would have gone, whatever places came since."""
    old, start, end = guess.chain.places, row.chain.places[:-1], row.chain.places[1:]
    k = np.searchsorted(old, 0.5 * (start + end)) - 1
    slides, sticks = _gone_on(row, guess)[..., k]
    left = old[k + 1] - (guess.chain.lengths[k] - slides - sticks)  # from here on to the left
    right = np.minimum(np.maximum(old[k] + slides, start), end)
    zones = np.empty((2, *row.shape))
    zones[0], zones[1] = right - start, np.minimum(np.maximum(left, right), end) - right
    return zones


def _gone_on(row, guess):
    """Zones of a guess at the ages asked for, as they went in its last step."""
    eps, last = guess.drag.shortening, guess.zones[:, -1:]
    if len(eps) < 2 or not eps[-1] > eps[-2]:
        return np.broadcast_to(last, (2, row.shape[0], last.shape[2]))
    steps = np.minimum((row.shortening - eps[-1]) / (eps[-1] - eps[-2]), _STEPS)
    return last + steps * (last - guess.zones[:, -2:-1])


def _guessed_yields(row, guess):
    """Bars that yield in a guess; those of cracks that came since do not."""
    old, new = guess.chain, row.chain.places[row.cracks]
    k = np.searchsorted(old.places, new)
    yields = np.zeros(len(old.places), dtype=bool)
    yields[old.cracks] = guess.yields[-1]
    found = yields[k] & (old.places[k] == new)
    return np.broadcast_to(found, (row.shape[0], len(new)))


def _cold(row):
    """Start from which Newton's method seldom strays: all stuck, and nothing yields."""
    zones = np.stack([np.zeros(row.shape), np.broadcast_to(row.lengths, row.shape)])
    return zones, np.zeros((row.shape[0], len(row.cracks)), dtype=bool)


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
    slips = _end_slips(row, pieces, yields)
    u0, end = slips[..., 0], slips[..., 1]
    v0 = (end - u3) / T12 - pieces[0] * u0
    u1, v1 = u0 + v0 * first + bow, v0 + bend
    return (u0, end), ((u0, v0), (u1, v1), (C * u1 + near * v1, steep * u1 + C * v1))


def _end_slips(row, pieces, yields):
    """Solve the forces at all places, which keep each other in balance, for the slips there."""
    start, end, tie, u3, v3 = pieces
    A, P = row.shape
    diagonal, ties, load = balance = np.empty((3, A, P, 2))
    diagonal[..., 0], diagonal[..., 1] = start, end
    load[..., 0] = row.shortening - u3 * tie
    load[..., 1] = end * u3 - v3 - row.shortening
    ties[..., 0], ties[..., 1] = -tie, 0.0
    if len(row.cracks):
        _tie_cracks(row, yields, diagonal, ties, load)
    diagonal, ties, load = balance.reshape(3, A, 2 * P)
    diagonal += row.ground
    if row.in_pieces:
        ties = ties[:, :-1]
    else:
        diagonal, load = (np.add.reduceat(each, row.heads, axis=1) for each in (diagonal, load))
        ties = ties[:, row.heads[1:] - 1]
    # A piece that only slides has nothing to stop it but the spring; it moves no other answer.
    diagonal += row.spring
    load += row.spring * row.anchor
    _hold(row.held, diagonal, ties, load)
    slips = tridiagonal_solutions(ties, diagonal, load)
    return (slips if row.in_pieces else slips[:, row.unknown]).reshape(A, P, 2)


def _tie_cracks(row, yields, diagonal, ties, load):
    """Springs of the bars, or their pull where they yield, between the pieces at cracks."""
    after, before = row.after, row.before
    some = yields.any()
    k = np.where(yields, 0.0, row.pull) if some else row.pull
    diagonal[:, before, 1] += k
    diagonal[:, after, 0] += k
    ties[:, before, 1] = -k
    if some:
        force = np.where(yields, row.capacity, 0.0) / row.stiffness
        load[:, before, 1] += force
        load[:, after, 0] -= force


def _hold(held, diagonal, ties, load):
    """Keep some unknowns at 0."""
    for node in held:
        diagonal[:, node], load[:, node] = 1.0, 0.0
        ties[:, max(node - 1, 0) : node + 1] = 0.0


def _zones(row, zones, end, trail):
    """Lengths of the zones that the slips ask for: sliding to the right, and stuck."""
    slides, turns = _passed(row, zones, end, trail)
    moved = np.empty_like(zones)
    moved[0], moved[1] = slides, np.maximum(turns - slides, 0.0)
    # A piece that nothing ties and that only slides flies off: it starts again, stuck.
    reach = np.maximum(np.abs(trail[0][0]), np.abs(end))
    if (reach > row.far).any():
        moved = np.where(reach > row.far, _cold(row)[0], moved)
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
