"""A slab on the ground that curls, carries loads and lifts off: how it moves, where it stretches.

First come the slow things, for which concrete creeps: drying, the slab's own weight, what stands
on it for good. Then the quick ones, which meet stiff concrete: a wheel, the sun. A slab that
knows only one modulus is asked for in one step.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.plate_balance import PlateForces, plate_forces
from crackkit.mechanics.plate_band import times_band
from crackkit.mechanics.plate_contact import Rest, Stiffness, plate_rest
from crackkit.mechanics.plate_faces import FaceStress, PlateMoments, bottom_stress, top_stress
from crackkit.mechanics.plate_knots import plate_knots
from crackkit.mechanics.plate_loads import curvature_load, even_load, patch_load
from crackkit.mechanics.plate_operator import plate_operator
from crackkit.mechanics.plate_shape import Bend, PlateShape, stations
from crackkit.mechanics.plate_slab import FLAT, HOLDS, Curvature, PlateSlab

_FEW = 12  # spans each way for the first search


@dataclass(frozen=True)
class Stage:
    """What comes upon a slab within one time, and the modulus that it meets.

    Parameters
    ----------
    modulus : float
        Modulus of the concrete [MPa]: with creep for slow things, without for quick ones.
    patches : tuple of LoadPatch
        Loads that come.
    curvature : Curvature
        Free curvature that comes.
    """

    modulus: float
    patches: tuple = ()
    curvature: Curvature = FLAT


@dataclass(frozen=True, eq=False)
class PlateState:
    """A slab at rest; all grids have the shape (places along x, places along y).

    Parameters
    ----------
    slab : PlateSlab
        The slab.
    shape : PlateShape
        Its bent shape, to be asked at any other place.
    x, y : numpy.ndarray
        Places of the grids [mm], closer together under loads.
    deflection : numpy.ndarray
        Downward from the ground without load [mm]; negative is the gap under the slab.
    moments : PlateMoments
        Moments for each mm of width [N].
    top, bottom : FaceStress
        Stresses of both faces.
    lifted : numpy.ndarray of bool
        Where it has lifted off.
    lifted_share : float
        Part of the slab that has lifted off [-].
    corner_rise : numpy.ndarray
        Rise of the corners above where a flat slab lies [mm]; first index for x = 0 and length,
        second for y = 0 and width.
    forces : PlateForces
        What presses on the slab, and what holds it up.
    steps : int
        Rounds of the search for the lifted part, on all splines [-].
    converged : bool
        Whether the search came to an end.
    """

    slab: PlateSlab
    shape: PlateShape
    x: np.ndarray
    y: np.ndarray
    deflection: np.ndarray
    moments: PlateMoments
    top: FaceStress
    bottom: FaceStress
    lifted: np.ndarray
    lifted_share: float
    corner_rise: np.ndarray
    forces: PlateForces
    steps: int
    converged: bool

    def deflection_at(self, x, y):
        """Deflection on a grid of one's own.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        numpy.ndarray
            Deflection [mm], shape (places along x, places along y).
        """
        return self.shape.deflection(x, y)

    def moments_at(self, x, y):
        """Moments on a grid of one's own.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        PlateMoments
            Moments for each mm of width [N].
        """
        return self.shape.moments(x, y)

    def top_at(self, x, y):
        """Stresses of the top on a grid of one's own.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        FaceStress
            Stresses [MPa].
        """
        return top_stress(self.moments_at(x, y), self.slab.thickness)

    def bottom_at(self, x, y):
        """Stresses of the bottom on a grid of one's own.

        Parameters
        ----------
        x, y : array_like
            Places along both sides [mm].

        Returns
        -------
        FaceStress
            Stresses [MPa].
        """
        return bottom_stress(self.moments_at(x, y), self.slab.thickness)


def plate_state(slab, patches=(), curvature=FLAT):
    """A slab under its weight, some loads and a free curvature, all met by one modulus.

    Neighbours behind joints lie flat.

    Parameters
    ----------
    slab : PlateSlab
        The slab, its ground and its edges.
    patches : tuple of LoadPatch
        Loads, all of them on the slab.
    curvature : Curvature
        Free curvature from drying and temperature.

    Returns
    -------
    PlateState
        How it moves and where it is stretched.

    Raises
    ------
    ValueError
        If a load stands over an edge.
    """
    patches = tuple(patches)
    operator, coarse, task = _operator(slab, patches), _guess(slab), (slab, patches, curvature)
    rest = _rest_once(*task, operator, *_start(operator, coarse, [_rest_once(*task, coarse)]))
    shape = PlateShape(operator, slab.poisson, (Bend(rest.heights, slab.rigidity, curvature),))
    flat = np.full(operator.shape, slab.settlement)
    standing = patch_load(operator, patches)
    forces = plate_forces(slab, shape, patches, standing, _joints(slab), flat)
    return _state(slab, shape, forces, rest)


def crept_plate_state(slab, slow, quick):
    """A slab on which slow things came first and quick ones afterwards.

    Neighbours behind joints have curled alike in the slow stage: joints carry of the quick
    stage only. Staged moduli: each stage adds its moments with its own modulus, while the ground
    always meets the whole deflection.

    Parameters
    ----------
    slab : PlateSlab
        The slab; its own modulus is that of its neighbours behind joints.
    slow : Stage
        Drying and what stands on the slab for good; its weight comes by itself.
    quick : Stage
        Wheels that pass, the temperature of a day.

    Returns
    -------
    PlateState
        How it moves and where it is stretched in the end.

    Raises
    ------
    ValueError
        If a load stands over an edge.
    """
    patches = (*slow.patches, *quick.patches)
    operator, coarse, task = _operator(slab, patches), _guess(slab), (slab, slow, quick)
    start = _start(operator, coarse, _rest_crept(*task, coarse))
    before, rest = _rest_crept(*task, operator, *start)
    soft, stiff = _rigidities(slab, slow, quick)
    bends = (
        Bend(before.heights, soft, slow.curvature),
        Bend(rest.heights - before.heights, stiff, quick.curvature),
    )
    shape, standing = PlateShape(operator, slab.poisson, bends), patch_load(operator, patches)
    forces = plate_forces(slab, shape, patches, standing, _joints(slab), before.heights)
    return _state(slab, shape, forces, _both(before, rest))


def _rest_once(slab, patches, curvature, operator, start=None):
    stiffness = Stiffness(operator, slab.rigidity, slab.ground, _joints(slab))
    load = patch_load(operator, patches) + even_load(operator, slab.weight)
    load += curvature_load(operator, curvature, slab.rigidity, slab.poisson)
    flat = np.full(operator.shape, slab.settlement)
    return plate_rest(stiffness, operator.vector(load) + _held_back(stiffness, flat), start)


def _rest_crept(slab, slow, quick, operator, start=None, second_start=None):
    """Where the slab rests after the slow stage, and where after both."""
    soft, stiff = _rigidities(slab, slow, quick)
    slow_patches, patches = tuple(slow.patches), (*slow.patches, *quick.patches)
    first = Stiffness(operator, soft, slab.ground)
    second = Stiffness(operator, stiff, slab.ground, _joints(slab))
    load = even_load(operator, slab.weight) + patch_load(operator, slow_patches)
    load += curvature_load(operator, slow.curvature, soft, slab.poisson)
    before = plate_rest(first, operator.vector(load), start)
    load += patch_load(operator, patches) - patch_load(operator, slow_patches)
    load += curvature_load(operator, quick.curvature, stiff, slab.poisson)
    # The slow stage bent the slab while it was soft: it need not be bent so far once more.
    kept = times_band(operator.bending, operator.vector(before.heights)) * (stiff - soft)
    right = operator.vector(load) + kept + _held_back(second, before.heights)
    first_guess = before.touching if second_start is None else second_start
    return before, plate_rest(second, right, first_guess)


def _rigidities(slab, *stages):
    return tuple(replace(slab, modulus=stage.modulus).rigidity for stage in stages)


def _start(operator, coarse, rests):
    """What probably touches, as the same slab at rest on few splines says."""
    x, y = coarse.x.at(operator.x.places)[0], coarse.y.at(operator.y.places)[0]
    return [x.T @ rest.heights @ y > 0.0 for rest in rests]


def _guess(slab):
    """Few splines, on which many steps cost little; one or two on many splines then do."""
    x, y = (np.linspace(0.0, side, _FEW + 1).tolist() for side in (slab.length, slab.width))
    return _on_knots(slab, tuple(x), tuple(y))


def _operator(slab, patches):
    x = plate_knots(slab.length, slab.reach, tuple(patch.along for patch in patches))
    y = plate_knots(slab.width, slab.reach, tuple(patch.across for patch in patches))
    return _on_knots(slab, x, y)


def _on_knots(slab, x, y):
    left, right, near, far = (HOLDS[edge.hold] for edge in slab.edges)
    return plate_operator(x, y, (left, right), (near, far), slab.poisson)


def _joints(slab):
    return tuple(slab.joint_stiffness(edge) for edge in slab.edges)


def _held_back(stiffness, neighbour):
    """Load on the splines from joints, where the neighbours rest at some heights."""
    if not any(stiffness.joints):
        return 0.0
    operator = stiffness.operator
    return times_band(operator.edge_springs(stiffness.joints), operator.vector(neighbour))


def _both(before, after):
    converged = before.converged and after.converged
    return replace(after, steps=before.steps + after.steps, converged=converged)


def _state(slab, shape, forces, rest: Rest):
    (x, along), (y, across) = stations(shape.operator.x), stations(shape.operator.y)
    w = along[0].T @ shape.heights @ across[0]
    moments = shape.moments_between(along, across)
    rise = slab.settlement - w[:: len(x) - 1, :: len(y) - 1]
    return PlateState(
        slab, shape, x, y, w, moments,
        top_stress(moments, slab.thickness), bottom_stress(moments, slab.thickness),
        w < 0.0, lifted_share(x, y, w), rise,
        forces, rest.steps, rest.converged,
    )  # fmt: skip


def lifted_share(x, y, deflection):
    """Part of a slab that has lifted off, its border followed between the places of a grid.

    Parameters
    ----------
    x, y : numpy.ndarray
        Places of the grid [mm].
    deflection : numpy.ndarray
        Deflection, negative where lifted [mm], shape (places along x, places along y).

    Returns
    -------
    float
        Part of the area [-].
    """
    rows = _share_below(deflection[:-1], deflection[1:]) * np.diff(x)[:, None]
    lengths = rows.sum(axis=0) / (x[-1] - x[0])
    return float(np.trapezoid(lengths, y) / (y[-1] - y[0]))


def _share_below(a, b):
    """Part below zero of straight lines from a to b."""
    low, span = np.minimum(a, b), abs(b - a)
    return np.clip(np.divide(-low, span, out=(low < 0) * 1.0, where=span > 0), 0.0, 1.0)
