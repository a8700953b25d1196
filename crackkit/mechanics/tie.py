"""A pulled member that cracks crack by crack until its bars hold all cracks, or fail to.

Bars and concrete share the pull, but at a crack the bars are alone with it. From there bond hands
part of it back to the concrete, until it tears again. Bond follows its law for growing slip while
cracks form; the bars are elastic up to their yield strength, which ends the story.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bond import BondLaw
from crackkit.mechanics.bond_slip import BondSlip
from crackkit.words import _

STATIONS = 385
"""Places at which a member of even strength may crack, ends counted: can be halved seven times."""


@dataclass(frozen=True)
class Tie:
    """A straight member under pull, all bars taken together.

    Parameters
    ----------
    length : float
        Length of the concrete [mm], above 0.
    concrete_area : float
        Area of the concrete without the bars Ac [mm2], above 0.
    bars_area : float
        Area of all bars As [mm2]; 0 for plain concrete.
    perimeter : float
        Sum of the perimeters of the bars [mm]; above 0 if there are bars.
    concrete_modulus : float
        Modulus of the concrete Ec [MPa]; the effective one for lasting pull.
    bond : BondLaw
        Bond stress over slip.
    strength : float or numpy.ndarray
        Tensile strength [MPa], above 0; an array gives it at evenly spaced stations, both ends
        counted, at which alone cracks can form.
    shrinkage : float
        Free shortening of the concrete before the pull [-], 0 or more.
    yield_strength : float
        Yield strength of the bars fy [MPa], above 0.
    steel_modulus : float
        Modulus of the bars Es [MPa], above 0.
    ends : str
        "bars" where bars that stick out are pulled, so that each end face acts as a crack;
        "gripped" where bars and concrete are held together at the ends, without slip.

    Raises
    ------
    ValueError
        If a number lies outside of its range, or the ends are neither of the two.
    """

    length: float
    concrete_area: float
    bars_area: float
    perimeter: float
    concrete_modulus: float
    bond: BondLaw
    strength: float | np.ndarray
    shrinkage: float = 0.0
    yield_strength: float = 500.0
    steel_modulus: float = 200000.0
    ends: str = "bars"

    def __post_init__(self):
        sizes = (self.length, self.concrete_area, self.concrete_modulus, np.min(self.strength))
        steel = (self.yield_strength, self.steel_modulus, self.perimeter or not self.bars_area)
        if min(*sizes, *steel) <= 0 or min(self.bars_area, self.shrinkage) < 0:
            raise ValueError(_("Sizes, strengths and moduli of a member must be above 0."))
        if self.ends not in ("bars", "gripped"):
            raise ValueError(_("The ends are bars or gripped, not {name}.").format(name=self.ends))

    @property
    def strengths(self):
        """Tensile strength at the stations [MPa]."""
        if np.ndim(self.strength):
            return self.strength
        return np.full(STATIONS, float(self.strength))

    @property
    def stations(self):
        """Places at which the strength is known [mm]."""
        return np.linspace(0.0, self.length, len(self.strengths))

    @property
    def beta(self):
        """Change of the slip's slope for 1 MPa in the concrete, Ac/(As Es) + 1/Ec [1/MPa]."""
        return self.concrete_area / self.stretching + 1 / self.concrete_modulus

    @property
    def stretching(self):
        """Stiffness of the bars alone As Es [N]."""
        return self.bars_area * self.steel_modulus

    @property
    def bond_slip(self):
        """Equation of the slip along the bars."""
        return BondSlip(self.bond, self.perimeter * self.beta / self.concrete_area)

    @property
    def yield_pull(self):
        """Pull at which the bars yield in a crack As fy [N]."""
        return self.bars_area * self.yield_strength

    def gradient(self, pull):
        """Slope e of the slip at a crack: N/(As Es) and the shrinkage [-].

        Parameters
        ----------
        pull : float or array_like
            Pull N [N].

        Returns
        -------
        numpy.ndarray
            Slope [-].
        """
        return np.asarray(pull, dtype=float) / self.stretching + self.shrinkage


def middles(member, left, right):
    """Where the slip is zero in pieces between cracks, and how far their cracks are from there.

    Parameters
    ----------
    member : Tie
        The member.
    left : array_like of int
        Stations at which the pieces begin [-].
    right : array_like of int
        Stations at which they end [-].

    Returns
    -------
    middle, half_length : numpy.ndarray
        Place of no slip, and distance of the crack from it [mm]; a gripped end is such a place,
        and the distance is infinite in a gripped member without cracks.
    """
    x = member.stations
    start, end = x[np.asarray(left)], x[np.asarray(right)]
    if member.ends == "bars":
        return (start + end) / 2, (end - start) / 2
    at_start, at_end = start == 0, end == x[-1]
    middle = np.where(at_start, start, np.where(at_end, end, (start + end) / 2))
    half = np.where(at_start | at_end, end - start, (end - start) / 2)
    return middle, np.where(at_start & at_end, np.inf, half)
