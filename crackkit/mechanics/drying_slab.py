"""A slab as those know it who cast it: what decides how it shrinks and creeps."""

from dataclasses import dataclass

from crackkit.mechanics.cement_class import CEMENT_CLASSES
from crackkit.mechanics.concrete import mean_strength_en
from crackkit.words import _


@dataclass(frozen=True)
class DryingSlab:
    """A slab, the air over it, and how it was cured.

    Parameters
    ----------
    strength : float
        Specified cylinder strength, f'c or fck, above 0 [MPa].
    humidity : float
        Mean relative humidity of the air, 0 to 100 [%].
    thickness : float
        Thickness, above 0 [mm].
    sides : int
        Faces that dry, 1 or 2 [-]: 1 for a slab on the ground.
    curing_days : float
        How long it was kept moist, 1 or more [days].
    slump : float
        Slump, 0 or more [mm]; it matters to ACI 209R only.
    cement_class : str
        "S", "N" or "R": slow, normal, rapid.

    Raises
    ------
    ValueError
        If a value is out of range.
    """

    strength: float
    humidity: float
    thickness: float
    sides: int = 1
    curing_days: float = 7.0
    slump: float = 75.0
    cement_class: str = "N"

    def __post_init__(self):
        if not (self.strength > 0 and self.thickness > 0):
            raise ValueError(_("The strength and the thickness must be greater than zero."))
        if not 0 <= self.humidity <= 100:
            raise ValueError(_("Humidity runs from 0 to 100 %."))
        if self.sides not in (1, 2):
            raise ValueError(_("A slab dries from one face or from both."))
        if not (self.curing_days >= 1 and self.slump >= 0):
            raise ValueError(_("Curing lasts a day or more, and slump cannot be negative."))
        if self.cement_class not in CEMENT_CLASSES:
            raise ValueError(_("The class of cement must be S, N or R."))

    @property
    def volume_surface(self):
        """Volume over drying surface [mm]: h for one face, h/2 for both."""
        return self.thickness / self.sides

    @property
    def notional_size(self):
        """2 Ac/u [mm]: 2 h for one drying face, h for both."""
        return 2.0 * self.thickness / self.sides

    @property
    def mean_strength(self):
        """Mean cylinder strength, fck + 8 [MPa] (EN 1992-1-1:2004, Table 3.1)."""
        return mean_strength_en(self.strength)
