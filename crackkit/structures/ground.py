"""A slab on the ground at one age: its pieces, its joints, its cracks, what holds it back."""

from dataclasses import dataclass

import numpy as np

from crackkit.structures.ground_rules import HeldRule
from crackkit.structures.slab_history import PieceHistory


@dataclass(frozen=True)
class GroundCrack:
    """A crack of a slab.

    Attributes
    ----------
    at : float
        Where it is [mm from the left end].
    birth : float
        Age at which it came [days].
    width : float
        Its width now [mm].
    at_joint : bool
        Whether it came where a joint was cut for it.
    """

    at: float
    birth: float
    width: float
    at_joint: bool


@dataclass(frozen=True)
class Joint:
    """A joint between two panels: where it is [mm], and how far it is open now [mm]."""

    at: float
    opening: float


@dataclass(frozen=True)
class Ground:
    """What mechanics says of a slab on the ground.

    Attributes
    ----------
    pieces : tuple of (float, PieceHistory)
        Stretches that crack on their own, each with the place of its left end [mm].
    cracks : tuple of GroundCrack
        Cracks there are, from the left; those at joints too.
    joints : tuple of Joint
        Joints, from the left.
    x, stress, felt, strength, slip : ndarray
        Stations [mm], mean pull over the thickness there now, what of it the concrete feels (bars
        bear it in a crack), and the strength [MPa]; how far the slab has slipped to the right
        [mm].
    free : float
        What it would have shortened by now if nothing held it [-].
    complete : bool
        Whether all cracks up to this age were found.
    rules : tuple of HeldRule
        What published rules say of a slab between walls, with these bars.
    """

    pieces: tuple[tuple[float, PieceHistory], ...]
    cracks: tuple[GroundCrack, ...]
    joints: tuple[Joint, ...]
    x: np.ndarray
    stress: np.ndarray
    felt: np.ndarray
    strength: np.ndarray
    slip: np.ndarray
    free: float
    complete: bool
    rules: tuple[HeldRule, ...] = ()

    @property
    def steel(self) -> bool:
        """Whether bars cross its cracks."""
        return self.pieces[0][1].cracks.crossing.capacity > 0

    @property
    def yields(self) -> bool:
        """Whether bars yield in a crack that is at no joint."""
        crossing = self.pieces[0][1].cracks.crossing
        return self.steel and any(
            crack.width > crossing.capacity / crossing.stiffness for crack in self.wild
        )

    @property
    def births(self) -> list[float]:
        """Ages at which cracks come in ten years, joints counted [days]."""
        return [float(birth) for _start, past in self.pieces for birth in past.cracks.age]

    @property
    def tension(self) -> np.ndarray:
        """Greatest stress over strength anywhere, at each age of the history [-]."""
        return np.max([past.tension for _start, past in self.pieces], axis=0)

    @property
    def pull_in_time(self) -> tuple[np.ndarray, np.ndarray]:
        """Ages [days] and the greatest stress over strength then [-], cracks falling sharply."""
        ages = self.pieces[0][1].life.ages
        # beside a crack bars have not handed all the pull back: beyond 1 nothing can tear there
        worst = np.minimum(self.tension, 1.0)
        births = np.unique(self.births)
        # the day a crack comes its place bears all it can; the moment after, the next worst counts
        after = worst[np.minimum(np.searchsorted(ages, births, side="right"), ages.size - 1)]
        x = np.concatenate([ages, births, births])
        order = np.argsort(x, kind="stable")
        return x[order], np.concatenate([worst, np.ones(births.size), after])[order]

    @property
    def wild(self) -> tuple[GroundCrack, ...]:
        """Cracks that came where no joint was cut for them."""
        return tuple(crack for crack in self.cracks if not crack.at_joint)

    @property
    def first(self) -> float | None:
        """Age at which the first crack comes that is at no joint [days]; None in ten years."""
        ages = [
            float(birth)
            for _start, past in self.pieces
            for at, birth in zip(past.cracks.position, past.cracks.age, strict=True)
            if not _near(past.piece.joints, at, past)
        ]
        return min(ages, default=None)


def ground(pieces, age: float, between: tuple[float, ...]) -> Ground:
    """Give the state of a slab at an age.

    Parameters
    ----------
    pieces : sequence of (float, PieceHistory)
        Its stretches, from the left, each with the place of its left end [mm].
    age : float
        [days].
    between : tuple of float
        Places of the joints between the stretches [mm].
    """
    states = [past.cracks.state(age) for _start, past in pieces]
    along = [
        state.along(past.stations) for state, (_start, past) in zip(states, pieces, strict=True)
    ]
    slip = [each[0][0] for each in along]
    cracks = [
        crack
        for state, (start, past) in zip(states, pieces, strict=True)
        for crack in _cracks(state, start, past, age)
    ]
    opened = [float(b[0] - a[-1]) for a, b in zip(slip, slip[1:], strict=False)]
    joints = [Joint(at, gap) for at, gap in zip(between, opened, strict=True)]
    joints += _cut_joints(pieces, cracks)
    first = pieces[0][1]
    return Ground(
        pieces=tuple(pieces),
        cracks=tuple(sorted(cracks, key=lambda crack: crack.at)),
        joints=tuple(sorted(joints, key=lambda joint: joint.at)),
        x=np.concatenate([start + past.stations for start, past in pieces]),
        stress=np.concatenate(
            [
                each[1][0] / past.piece.thickness
                for each, (_s, past) in zip(along, pieces, strict=True)
            ]
        ),
        felt=np.concatenate([past.cracks.felt_stress(age) for _start, past in pieces]),
        strength=np.concatenate([past.life.at(age)[2] for _start, past in pieces]),
        slip=np.concatenate(slip),
        free=float(first.life.at(age)[0]),
        complete=all(_counted(past, age) for _start, past in pieces),
    )


def _cracks(state, start: float, past: PieceHistory, age: float) -> list[GroundCrack]:
    born = past.cracks.age <= age
    positions, births = past.cracks.position[born], past.cracks.age[born]
    order = np.argsort(positions)
    widths = state.opening[0] if len(positions) else ()
    return [
        GroundCrack(
            start + float(positions[k]),
            float(births[k]),
            max(float(width), 0.0),
            _near(past.piece.joints, positions[k], past),
        )
        for k, width in zip(order, widths, strict=True)
    ]


def _near(joints, at: float, past: PieceHistory) -> bool:
    step = past.piece.length / (len(past.stations) - 1)
    return any(abs(joint - at) < 0.75 * step for joint in joints)


def _cut_joints(pieces, cracks) -> list[Joint]:
    """Joints inside of the stretches: open where a crack came to one, else still shut."""
    opened = [crack for crack in cracks if crack.at_joint]
    found = []
    for start, past in pieces:
        for at in past.piece.joints:
            here = [c.width for c in opened if _near((at,), c.at - start, past)]
            found.append(Joint(start + at, max(here, default=0.0)))
    return found


def _counted(past: PieceHistory, age: float) -> bool:
    return past.cracks.complete or age < past.cracks.age.max(initial=0.0)
