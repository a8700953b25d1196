"""The whole history of a pulled member: which cracks come at which pull, and how it stretches.

The history does not depend on the pull that is looked at, so it is worked out once and kept while
only the pull changes.
"""

from dataclasses import dataclass
from functools import cached_property, lru_cache

import numpy as np

from crackkit.mechanics.bond import plain_bond
from crackkit.mechanics.crack_sequence import CrackSequence, crack_sequence
from crackkit.mechanics.strength_along import tensile_strength_along
from crackkit.mechanics.tension_response import ForceStrain, force_strain, telling_pulls
from crackkit.mechanics.tie import STATIONS, Tie
from crackkit.structures.rib_grip import rib_grip


@dataclass(frozen=True)
class Sample:
    """One pulled member in numbers; two alike are the same piece of concrete.

    Attributes
    ----------
    length, concrete_area, bars_area, perimeter, diameter : float
        Length [mm], areas [mm2], sum of the perimeters of the bars and diameter of each [mm].
    strength, tensile, modulus, yield_strength : float
        Cylinder strength, mean tensile strength, modulus of the concrete, yield strength [MPa].
    shrinkage, scatter : float
        Free shortening before the pull, coefficient of variation of the tensile strength [-].
    seed : int
        Which concrete.
    surface, bond, ends : str
        ``"ribbed"`` or ``"plain"``; ``"good"`` or ``"other"``; ``"bars"`` or ``"gripped"``.
    """

    length: float
    concrete_area: float
    bars_area: float
    perimeter: float
    diameter: float
    strength: float
    tensile: float
    modulus: float
    yield_strength: float
    shrinkage: float
    scatter: float
    seed: int
    surface: str
    bond: str
    ends: str

    @property
    def strengths(self) -> np.ndarray:
        """Tensile strength at evenly spread stations, both ends counted [MPa]."""
        return tensile_strength_along(
            self.length, STATIONS, self.tensile, self.scatter, int(self.seed)
        )

    @property
    def tie(self) -> Tie:
        """The same in the words of mechanics."""
        return Tie(
            length=self.length,
            concrete_area=self.concrete_area,
            bars_area=self.bars_area,
            perimeter=self.perimeter,
            concrete_modulus=self.modulus,
            bond=_bond(self),
            strength=self.strengths,
            shrinkage=self.shrinkage,
            yield_strength=self.yield_strength,
            ends=self.ends if self.bars_area else "gripped",
        )


@dataclass(frozen=True)
class History:
    """A member with all its cracks and the pull at which each comes."""

    tie: Tie
    sequence: CrackSequence

    @cached_property
    def diagram(self) -> ForceStrain:
        """How it stretches while the pull grows; worked out when first asked for."""
        return force_strain(self.tie, self.sequence, telling_pulls(self.sequence))


@lru_cache(maxsize=64)
def history(sample: Sample) -> History:
    """Work out the history of a member pulled until its bars yield, or until it parts."""
    tie = sample.tie
    return History(tie, crack_sequence(tie))


def _bond(sample: Sample):
    if sample.surface == "plain":
        return plain_bond(sample.strength, sample.bond)
    return rib_grip(sample.strength, sample.diameter, sample.bond)
