"""What holds a slab with inside corners, and how it is stretched as long as nothing has cracked.

All of it is worked out for a modulus of 1 MPa, a thickness of 1 mm and a shortening of 1: what
ties the sides is as stiff as it is against the slab, whatever the concrete, so stress grows with
modulus and shortening. Only on a base that drags do both count for more.
"""

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_friction import SlidingBody, sliding_body
from crackkit.mechanics.plane_mesh import MeshSize, PlaneMesh, mesh
from crackkit.mechanics.plane_solution import PlaneBody, PlaneState, plane_body
from crackkit.mechanics.plane_supports import Hold
from crackkit.mechanics.slab_on_friction import grip_stiffness
from crackkit.structures.corner_shapes import (
    Form,
    end_sides,
    foot_sides,
    nooks,
    outer_sides,
    outline,
    sides_named,
)

POISSON = 0.2
UNIT = Sheet(1.0, POISSON, 1.0)
FINE = 4.0  # mm, triangles at corners
LOOSE = 1e-3  # least degree to which tied sides are held: what is free would slide away
MIDDLING = 0.3  # degree for which the line of a crack is drawn
TYPICAL = (12e3, 4e-4)  # modulus [MPa] and shortening [-] for which a dragged slab's line is drawn


@dataclass(frozen=True)
class Restraint:
    """What holds it: ``held`` as in CornerSlab, the degree [-], and the key of its base."""

    held: str
    degree: float = 0.0
    base: str = ""


@dataclass(frozen=True, eq=False)
class Uncracked:
    """The slab as if nothing had cracked.

    Attributes
    ----------
    mesh : PlaneMesh
    stress : ndarray, shape (nodes, 3)
        Along, across and shear [MPa].
    movement : ndarray, shape (nodes, 2)
        [mm]
    """

    mesh: PlaneMesh
    stress: np.ndarray
    movement: np.ndarray


def restraint(it) -> Restraint:
    """Read what holds a CornerSlab; a wall does not lie on a base."""
    if it.held == "base" and it.shape != "door":
        return Restraint("base", 0.0, it.drag)
    held = "foot" if it.held == "base" else it.held
    degree = round(it.holds if it.held == held else 0.0, 3)  # steps that nobody sees
    return Restraint(held, max(degree, LOOSE))


def tied_names(of: Form, by: Restraint) -> tuple[str, ...]:
    """Names of the sides that are tied."""
    if by.held == "base":
        return ()
    return {"ends": end_sides, "edges": outer_sides, "foot": foot_sides}[by.held](of)


def tied(of: Form, by: Restraint) -> tuple[np.ndarray, ...]:
    """Sides that are tied, as straight lines [mm]."""
    found = sides_named(of, tied_names(of, by))
    return tuple(np.array([side.start, side.end]) for side in found)


def holds(of: Form, by: Restraint) -> tuple[Hold, ...]:
    """Holds of the tied sides, for a modulus of 1 MPa and a thickness of 1 mm."""
    ways = ("normal",) if by.held == "edges" else ("x", "y")
    return tuple(
        Hold(side.name, way, _stiffness(of, by, side))
        for side in sides_named(of, tied_names(of, by))
        for way in ways
    )


def _stiffness(of: Form, by: Restraint, side) -> float:
    """A strip tied at both ends as stiffly would be held to this degree; see `grip_stiffness`."""
    upright = side.start[0] == side.end[0]
    length = of.length if upright or by.held == "foot" else of.width
    return grip_stiffness(by.degree, UNIT.modulus, UNIT.thickness, length)


@lru_cache(maxsize=32)
def whole_mesh(of: Form) -> PlaneMesh:
    """Mesh of the slab before it cracks."""
    sharp = [nook.at for nook in nooks(of) if nook.arc is None]
    size = MeshSize(FINE, max(of.length, of.width) / 10, 1.7)
    return mesh(outline(of), size, corners=np.reshape(sharp, (-1, 2)))


@lru_cache(maxsize=32)
def _unit_state(of: Form, by: Restraint) -> PlaneState:
    """Held to the usual degree it is factorised; held to another only its ties are changed."""
    if by == usual(by) or by.degree == 1.0:
        return _unit_body(of, by).state(shortening=1.0)
    return _unit_body(of, usual(by)).held(harder(by)).state(shortening=1.0)


@lru_cache(maxsize=32)
def _unit_body(of: Form, by: Restraint) -> PlaneBody:
    return plane_body(whole_mesh(of), UNIT, holds(of, by))


@lru_cache(maxsize=64)
def _sliding_body(of: Form, by: Restraint, modulus: float) -> SlidingBody:
    shear, slip = base_shear(by)
    return sliding_body(whole_mesh(of), Sheet(modulus, POISSON, 1.0), shear, slip)


def base_shear(by: Restraint) -> tuple[float, float]:
    """Greatest shear of the base on each mm of thickness [MPa/mm], and slip it comes with [mm]."""
    under = base(by.base)
    return under.coefficient * slab_weight(1.0), under.slip


@lru_cache(maxsize=64)
def uncracked(of: Form, by: Restraint, modulus: float, shortening: float) -> Uncracked:
    """The slab before it cracks, for a modulus [MPa] and a free shortening [-]."""
    if by.held == "base":
        state = _sliding_body(of, by, modulus).state(shortening=shortening)
        return Uncracked(whole_mesh(of), state.stress, state.movement)
    unit = _unit_state(of, by)
    return Uncracked(unit.body.mesh, modulus * shortening * unit.stress, shortening * unit.movement)


def harder(by: Restraint) -> float:
    """How many times as stiff ties of a degree below 1 are as those of the usual degree [-]."""
    now, then = (grip_stiffness(degree, 1.0, 1.0, 1.0) for degree in (by.degree, MIDDLING))
    return now / then


def usual(by: Restraint) -> Restraint:
    """The same restraint to a middling degree: the line of a crack hardly hangs on the degree."""
    return by if by.held == "base" else replace(by, degree=MIDDLING)


def typical(of: Form, by: Restraint) -> Uncracked:
    """The slab for which the line of the crack is drawn."""
    return uncracked(of, usual(by), *TYPICAL)
