"""The tension over the plan on a grid, how hard each corner is pulled, and where a crack runs."""

import math
from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from crackkit.mechanics.plane_averages import CornerPath, corner_paths, opening_direction
from crackkit.mechanics.plane_elements import shapes
from crackkit.mechanics.plane_sampling import located
from crackkit.mechanics.plane_solution import principal
from crackkit.mechanics.plane_supports import side_nodes
from crackkit.structures.corner_restraint import (
    Restraint,
    Uncracked,
    typical,
    whole_mesh,
)
from crackkit.structures.corner_shapes import Form, Nook, nooks, polygons

CELLS = 48  # of the grid along the longer side
LENGTHS = np.array([50.0, 180.0, 650.0])
"""Lengths over which the tension at a corner is averaged [mm]; others lie between them."""
AIMED = 130.0  # mm over which the way of a crack from a sharp corner is sought
ALIKE = 0.002  # share by which two places are pulled alike
BARELY = 2.0  # mm, closer to the rim than this a line ends
PLACES = 24  # on a line from a rounded corner


@dataclass(frozen=True, eq=False)
class PlanGrid:
    """A grid over the plan, and how values at nodes are carried to its points.

    Attributes
    ----------
    x, y : ndarray
        Lines [mm].
    inside : ndarray of bool, shape (rows, columns)
        Where there is concrete.
    nodes, shares : ndarray, shape (points inside, 6)
        Nodes and their shares.
    """

    x: np.ndarray
    y: np.ndarray
    inside: np.ndarray
    nodes: np.ndarray
    shares: np.ndarray

    def carried(self, values: np.ndarray) -> np.ndarray:
        """Values at nodes carried to the grid; not a number where there is no concrete."""
        whole = np.full((*self.inside.shape, values.shape[1]), np.nan)
        whole[self.inside] = (self.shares[:, None] @ values[self.nodes])[:, 0]
        return whole

    @cached_property
    def nearest(self) -> tuple[np.ndarray, np.ndarray]:
        """For each point the row and column of the nearest point inside."""
        from scipy.ndimage import distance_transform_edt

        step = self.y[1] - self.y[0], self.x[1] - self.x[0]
        return tuple(
            distance_transform_edt(
                ~self.inside, sampling=step, return_distances=False, return_indices=True
            )
        )


@lru_cache(maxsize=32)
def plan_grid(of: Form) -> PlanGrid:
    """Grid over a plan."""
    step = max(of.length, of.width) / CELLS
    x, y = (np.linspace(0.0, side, round(side / step) + 1) for side in (of.length, of.width))
    here = whole_mesh(of)
    places = np.stack(np.meshgrid(x, y), axis=-1).reshape(-1, 2)
    which, shares = located(here, places)
    there = which >= 0
    inside = there.reshape(len(y), len(x))
    return PlanGrid(x, y, inside, here.triangles[which[there]], shapes(shares[there]))


@dataclass(frozen=True, eq=False)
class Pulled:
    """An inside corner with lines from it over which the tension is averaged.

    Attributes
    ----------
    nook : Nook
    at : tuple of float
        Where a crack would start [mm].
    direction : float
        Way in which it would start [rad].
    lengths : ndarray
        Lengths of the lines [mm].
    paths : tuple of CornerPath
        Lines of these lengths.
    """

    nook: Nook
    at: tuple[float, float]
    direction: float
    lengths: np.ndarray
    paths: tuple[CornerPath, ...]

    def mean(self, state: Uncracked, length: float) -> float:
        """Mean tension across the coming crack over a length [MPa]."""
        means = np.array([path.opening_mean(state) for path in self.paths])
        at, places = math.log(length), np.log(self.lengths)
        if means.min() <= 0.0:
            return float(np.interp(at, places, means))
        # close to a power of the length, so it is drawn straight between logarithms
        return math.exp(np.interp(at, places, np.log(means)))

    @property
    def longest(self) -> float:
        """Longest length that fits into the concrete there [mm]."""
        return float(self.lengths[-1])

    def end(self, length: float) -> tuple[float, float]:
        """Where such a length ends [mm]."""
        x, y = self.at
        return x + length * math.cos(self.direction), y + length * math.sin(self.direction)


@lru_cache(maxsize=32)
def pulled_corners(of: Form, by: Restraint) -> tuple[Pulled, ...]:
    """Inside corners with the places and ways in which cracks would start."""
    state = typical(of, by)
    found = [_pulled(of, state, nook) for nook in nooks(of)]
    # two arcs of a circle may both be pulled most where they meet
    return tuple(
        one
        for k, one in enumerate(found)
        if all(math.dist(one.at, other.at) > 1.0 for other in found[:k])
    )


def _pulled(of: Form, state: Uncracked, nook: Nook) -> Pulled:
    at, direction = nook.at, nook.inward
    if nook.arc is None:
        direction = opening_direction(state.mesh, state, at, AIMED)
    else:
        at, direction = _most_pulled(state, nook)
    room = ligament(of, at, direction)
    lengths = np.append(LENGTHS[room > LENGTHS], min(room, 2.0 * LENGTHS[-1]))
    if nook.arc is None:
        paths = corner_paths(state.mesh, at, lengths.tolist(), direction)
    else:
        paths = [_smooth(state.mesh, at, length, direction) for length in lengths.tolist()]
    return Pulled(nook, at, direction, lengths, tuple(paths))


def _smooth(mesh, at, length: float, direction: float) -> CornerPath:
    """Line from a rounded corner, where nothing is singular: closer places near the rim."""
    share = (np.arange(PLACES) + 0.5) / PLACES
    r, weights = length * share**2, 2.0 * share / PLACES
    way = np.array([math.cos(direction), math.sin(direction)])
    which, shares = located(mesh, np.asarray(at) + r[:, None] * way)
    kept = which >= 0  # the first place may lie a hair outside of a side that is bent
    weights = weights[kept] / weights[kept].sum()
    return CornerPath(direction, length, mesh.triangles[which[kept]], shapes(shares[kept]), weights)


def _most_pulled(state: Uncracked, nook: Nook) -> tuple[tuple[float, float], float]:
    """The most pulled place of an arc, and the way square to the arc there."""
    nodes = side_nodes(state.mesh, nook.arc.name)[::2]
    tension = principal(state.stress[nodes])[0]
    places = state.mesh.points[nodes]
    most = tension >= tension.max() - ALIKE * abs(tension.max())
    far = np.hypot(*(places - nook.at).T)
    k = int(np.argmin(np.where(most, far, np.inf)))
    share = nook.arc.share_of(places[k])[0]
    direction = nook.arc.direction(float(share)) + np.pi / 2
    return tuple(places[k].tolist()), float(direction % (2 * np.pi))


def ligament(of: Form, at, direction: float) -> float:
    """How far a straight line from a place on the rim runs through concrete [mm]."""
    way, start = complex(math.cos(direction), math.sin(direction)), complex(*at)
    loops = [loop @ np.array([1.0, 1j]) for loop in polygons(of)]
    a = np.concatenate(loops)
    b = np.concatenate([np.roll(loop, -1) for loop in loops])
    a, b = (a - start) / way, (b - start) / way
    crossed = (a.imag > 0) != (b.imag > 0)
    a, b = a[crossed], b[crossed]
    far = a.real + (b.real - a.real) * a.imag / (a.imag - b.imag)
    return float(far[far > BARELY].min()) - BARELY
