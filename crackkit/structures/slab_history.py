"""What happens to a slab on the ground in ten years: how it shrinks, hardens, is held, and cracks.

None of it depends on the age that is looked at, so it is worked out once and kept while only the
age changes.
"""

import math
from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from crackkit.mechanics.base_friction import base, slab_weight
from crackkit.mechanics.concrete import Concrete, concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.restraint_stress import restraint_stress
from crackkit.mechanics.shrinkage import free_shrinkage
from crackkit.mechanics.slab_cracks import (
    NOTHING,
    Crossing,
    SlabCracks,
    SlabLife,
    bars_across,
    slab_cracks,
)
from crackkit.mechanics.slab_on_friction import STATIONS, Strip, grip_stiffness
from crackkit.mechanics.strength_along import tensile_strength_along
from crackkit.mechanics.strength_in_time import concrete_in_time
from crackkit.structures.materials import EXPANSION
from crackkit.structures.rib_grip import rib_grip

LAST_DAY = 3650.0
"""Age at which the story ends [days]."""

AGES = np.geomspace(0.5, LAST_DAY, 72)
"""Ages at which the slab is looked at [days]."""

COOLED = 7.0  # days over which a drop of temperature comes
MOST = 40  # cracks at which the search stops


@dataclass(frozen=True)
class Piece:
    """A stretch of slab that cracks on its own.

    Attributes
    ----------
    length, thickness : float
        [mm].
    ends : tuple of float
        Degrees to which left and right end are held [-].
    held : tuple of (float, float)
        Places [mm] and degrees [-] where it is held between its ends.
    joints : tuple of float
        Places of saw cuts in it [mm].
    cut : float
        Share of the thickness that is cut [-].
    cut_age : float
        Age at which it is cut [days].
    base : str
        Key of what it lies on.
    steel : tuple of (float, float) or None
        Area of the bars across [mm2/mm] and their diameter [mm].
    slab : DryingSlab
        Its concrete and its air.
    code, model : str
        Rules for strength and creep, and for shrinkage.
    cooling : float
        Drop of temperature [K].
    spent : float
        Share of the strength that curling uses up [-].
    scatter, seed : float, int
        Coefficient of variation of the strength [-], and which concrete.
    yield_strength : float
        Of the bars [MPa].
    """

    length: float
    thickness: float
    ends: tuple[float, float]
    held: tuple
    joints: tuple
    cut: float
    cut_age: float
    base: str
    steel: tuple | None
    slab: DryingSlab
    code: str
    model: str
    cooling: float
    spent: float
    scatter: float
    seed: int
    yield_strength: float

    @property
    def concrete(self) -> Concrete:
        """Its concrete at 28 days."""
        return concrete(self.slab.strength, self.thickness, self.code)


@dataclass(frozen=True)
class PieceHistory:
    """A piece with its life and its cracks.

    Attributes
    ----------
    piece : Piece
    strip : Strip
        The same in the words of mechanics.
    life : SlabLife
        Shortening, modulus, and strength at the `AGES`.
    cracks : SlabCracks
        Cracks in the order of their birth.
    """

    piece: Piece
    strip: Strip
    life: SlabLife
    cracks: SlabCracks

    @cached_property
    def tension(self) -> np.ndarray:
        """Greatest stress over strength at each age, cracks counted [-]."""
        return self.cracks.tension

    @property
    def stations(self) -> np.ndarray:
        """Places that are looked at [mm from its left end]."""
        return np.linspace(0.0, self.piece.length, STATIONS)


@lru_cache(maxsize=64)
def piece_history(piece: Piece) -> PieceHistory:
    """Work out ten years of a piece."""
    life, strip = _life(piece), _strip(piece)
    return PieceHistory(piece, strip, life, slab_cracks(strip, life, _crossing(piece), MOST))


def shortening(piece: Piece, ages=AGES) -> np.ndarray:
    """Give what the slab would shorten if nothing held it [-]."""
    dried = free_shrinkage(ages, piece.slab, piece.model).total
    return dried + EXPANSION * piece.cooling * np.minimum(np.asarray(ages) / COOLED, 1.0)


def _life(piece: Piece) -> SlabLife:
    free, aged = shortening(piece), concrete_in_time(AGES, piece.concrete, piece.code)
    creep = creep_at_loading(piece.slab, piece.concrete, piece.code)
    stress = restraint_stress(AGES, free, 1.0, aged.modulus, creep)
    moves = free > 1e-9
    modulus = np.where(moves, stress / np.where(moves, free, 1.0), aged.modulus)
    return SlabLife(AGES, free, np.maximum(modulus, 1.0), _strengths(piece, aged.tensile))


def _strengths(piece: Piece, tensile: np.ndarray) -> np.ndarray:
    """Strength at each age (rows) and station, curling and saw cuts taken off [MPa]."""
    along = tensile_strength_along(piece.length, STATIONS, 1.0, piece.scatter, piece.seed, 600.0)
    left = (1.0 - piece.spent) * tensile[:, None] * along[None, :]
    where = [round(at / piece.length * (STATIONS - 1)) for at in piece.joints]
    left[np.ix_(piece.cut_age <= AGES, where)] *= 1.0 - piece.cut
    return left


def _strip(piece: Piece) -> Strip:
    under, modulus = base(piece.base), piece.concrete.modulus / 2.0  # creep about halves it
    left, right = (
        grip_stiffness(degree, modulus, piece.thickness, piece.length) for degree in piece.ends
    )
    inner = tuple(
        (at, min(grip_stiffness(degree, modulus, piece.thickness, piece.length), 1e6))
        for at, degree in piece.held
        if degree > 0
    )
    shear = under.coefficient * slab_weight(piece.thickness)
    return Strip(piece.length, piece.thickness, shear, under.slip, left, right, inner)


def _crossing(piece: Piece) -> Crossing:
    if piece.steel is None:
        return NOTHING
    area, diameter = piece.steel
    bond = rib_grip(piece.slab.strength, diameter)
    modulus = piece.concrete.modulus
    return bars_across(area, diameter, piece.thickness, piece.yield_strength, bond, modulus)


def panels(length: float, every: float) -> int:
    """How many panels a slab is cut into, none longer than asked for."""
    return max(math.ceil(length / every - 1e-9), 1)
