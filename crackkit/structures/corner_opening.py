"""The crack of a slab with inside corners: the body split along its line, bars, opening at an age.

Worked out once for a modulus of 1 MPa and a thickness of 1 mm, and carried over to the concrete of
an age: compliance falls with both, the law of the crack and the pull of the bars do not.
"""

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.bars_across_crack import SlabBar, bar_forces, near_surface
from crackkit.mechanics.cohesive_crack import CohesiveCrack, Held
from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.cracked_slab import CrackedSlab, cracked_slab
from crackkit.mechanics.plane_elements import PlaneElements, shapes
from crackkit.mechanics.plane_mesh import MeshSize, PlaneMesh, mesh
from crackkit.mechanics.plane_sampling import located
from crackkit.mechanics.split_body import line_stiffness
from crackkit.structures.corner_bars import Laid, Layout, laid_bars
from crackkit.structures.corner_line import crack_line_of
from crackkit.structures.corner_restraint import (
    TYPICAL,
    UNIT,
    Restraint,
    Uncracked,
    base_shear,
    harder,
    holds,
    typical,
    usual,
    whole_mesh,
)
from crackkit.structures.corner_shapes import Form, outline
from crackkit.structures.rib_grip import rib_grip

BEGINNING, FINEST = 500.0, 33.0  # mm of the line along which triangles are as small as this
PIECES = 30  # sides of triangles along the rest; none shorter or longer than these [mm]
SHORTEST, COARSEST = 40.0, 100.0
STILL_HOLDS = 0.1  # share of the bed of a base that slides: it pulls on, but hardly harder


@dataclass(frozen=True)
class Line:
    """Which crack is looked at: plan, what holds it, and number of the corner."""

    form: Form
    by: Restraint
    which: int


@dataclass(frozen=True, eq=False)
class SplitSlab:
    """A slab split along the line of its crack, for 1 MPa and 1 mm.

    Attributes
    ----------
    slab : CrackedSlab
    bed : ndarray or None
        Stiffness of the base at the inner points [N/mm3], where the slab lies on one.
    nodes, shares : ndarray or None
        How movements of the slab before it cracked are carried to the inner points.
    """

    slab: CrackedSlab
    bed: np.ndarray | None = None
    nodes: np.ndarray | None = None
    shares: np.ndarray | None = None

    def before(self, movement: np.ndarray) -> np.ndarray:
        """Movement at the inner points before it cracked [mm], from that of its nodes."""
        there = (self.shares[:, None] @ movement[self.nodes])[:, 0]
        return there.reshape(*self.bed.shape, 2)


@dataclass(frozen=True)
class Matter:
    """Concrete and steel at an age.

    Attributes
    ----------
    modulus, thickness : float
        [MPa], [mm].
    law : CohesiveLaw
    strength, yield_strength : float
        Of the concrete in compression and of the steel [MPa].
    share : tuple of float
        Length of a saw cut [mm], and its share of the thickness.
    """

    modulus: float
    thickness: float
    law: CohesiveLaw
    strength: float
    yield_strength: float


@lru_cache(maxsize=24)
def split_slab(of: Line) -> SplitSlab:
    """Split a slab along the line of its crack.

    Held to a middling degree it is factorised; held to another only its ties are changed.
    """
    middling = replace(of, by=usual(of.by))
    here = _split_mesh(middling)
    if of.by.held == "base":
        return _on_base(of, here)
    if of == middling or of.by.degree == 1.0:
        return SplitSlab(cracked_slab(here, UNIT, holds(of.form, of.by)))
    return SplitSlab(split_slab(middling).slab.held(harder(of.by)))


@lru_cache(maxsize=24)
def _split_mesh(of: Line) -> PlaneMesh:
    points = crack_line_of(of.form, of.by, of.which)
    length = float(np.hypot(*np.diff(points, axis=0).T).sum())
    side = min(max(length / PIECES, SHORTEST), COARSEST)
    size = MeshSize(FINEST, max(of.form.length, of.form.width) / 8, 1.8, side)
    return mesh(outline(of.form), size, corners=_start(points), crack=points)


def _start(points: np.ndarray) -> np.ndarray:
    """Places along the beginning of a line, where the crack is followed closely."""
    along = np.concatenate([[0.0], np.cumsum(np.hypot(*np.diff(points, axis=0).T))])
    at = np.arange(0.0, min(BEGINNING, along[-1]), FINEST)
    return np.stack([np.interp(at, along, points[:, k]) for k in (0, 1)], axis=1)


def _on_base(of: Line, here) -> SplitSlab:
    """The base drags on with what it dragged before; where the slab slides it hardly resists more.

    So the faces part a little too easily, and widths come out too large rather than too small.
    """
    elements = PlaneElements(here.points, here.triangles)
    before = whole_mesh(of.form)
    which, shares = located(before, elements.inner_places.reshape(-1, 2))
    nodes, shares = before.triangles[np.maximum(which, 0)], shapes(np.nan_to_num(shares))
    shear, slip = base_shear(of.by)
    found = SplitSlab(None, np.zeros(elements.weights.shape), nodes, shares)
    moved = np.linalg.norm(found.before(typical(of.form, of.by).movement), axis=-1)
    bed = shear / slip / TYPICAL[0] * np.where(moved < slip, 1.0, STILL_HOLDS)
    slab = cracked_slab(here, UNIT, (), elements.grip(bed[:, None, :]))
    return replace(found, slab=slab, bed=bed)


@lru_cache(maxsize=48)
def crossed(of: Line, laid: Layout | None = None) -> CohesiveCrack:
    """The crack with bars across it, or without, for 1 MPa and 1 mm."""
    bond = rib_grip(30.0, 12.0)  # only places count here
    steel = [
        SlabBar(each.start, each.end, bar(each.size).diameter, bar(each.size).area, bond)
        for each in _bars(laid)
    ]
    return split_slab(of).slab.crack(CohesiveLaw(1.0, 1.0), steel)


def unit_loads(of: Line, state: Uncracked, modulus: float, shortening: float) -> np.ndarray:
    """Unknowns of the split slab under its shrinkage and the drag of its base [mm]."""
    split, crack = split_slab(of), crossed(of)
    if split.bed is None:
        return shortening * crack.held.loaded[:, 1]
    slab, u = split.slab, split.before(state.movement)
    shear, slip = base_shear(of.by)
    far = np.maximum(np.linalg.norm(u, axis=-1), slip)
    drag = u * (split.bed - shear / modulus / far)[..., None]
    loads = shortening * slab.shrinkage + slab.elements.base_forces(drag)
    return slab.body.unknowns(slab.body.spread.T @ loads)


@dataclass(frozen=True, eq=False)
class _Softer:
    """Factor of a body of another modulus and thickness."""

    factor: object
    scale: float

    def solve(self, loads):
        return self.factor.solve(loads) / self.scale


def _bars(laid: Layout | None) -> tuple[Laid, ...]:
    return laid_bars(laid) if laid else ()


def in_concrete(unit: CohesiveCrack, matter: Matter, laid, loads, share=1.0) -> CohesiveCrack:
    """Carry a crack over to concrete of an age.

    Parameters
    ----------
    unit : CohesiveCrack
        For 1 MPa and 1 mm.
    matter : Matter
    laid : Layout or None
        Bars that `unit` was made for.
    loads : ndarray
        Unknowns under a load of 1 [mm]; see `unit_loads`.
    share : ndarray or float
        Part of the thickness that is not cut before [-].
    """
    scale = matter.modulus * matter.thickness
    body = replace(
        unit.body,
        area=unit.body.area * matter.thickness,
        stiffness=line_stiffness(matter.modulus),
        factor=_Softer(unit.body.factor, scale),
        compliance=unit.body.compliance / scale,
    )
    loaded = np.column_stack([np.zeros_like(loads), loads])
    met, pull = _pulling(unit, laid, matter.strength, matter.yield_strength)
    whole = np.broadcast_to(np.asarray(share, dtype=float), body.area.shape)
    held = Held(unit.held.rows, unit.held.loads, loaded, unit.held.pulled, scale)
    return CohesiveCrack(body, matter.law, whole, met, held, pull, unit=unit)


@lru_cache(maxsize=48)
def _pulling(unit: CohesiveCrack, laid: Layout | None, strength: float, yield_stress: float):
    """Bars across a crack in concrete and steel of some strength [MPa], the same at every age."""
    bars = _bars(laid)
    met = tuple(
        replace(each, bar=_steel(bars[each.number], strength, yield_stress)) for each in unit.bars
    )
    return met, bar_forces(met)


def _steel(laid: Laid, strength: float, yield_stress: float) -> SlabBar:
    size = bar(laid.size)
    bond = near_surface(rib_grip(strength, size.diameter), laid.clear, size.diameter)
    return SlabBar(laid.start, laid.end, size.diameter, size.area, bond, yield_stress=yield_stress)
