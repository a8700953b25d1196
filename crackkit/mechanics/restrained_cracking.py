"""Cracks of a reinforced slab or wall that wants to shorten between ends that do not move.

Each crack lets the piece go, and the bars take hold again; the steel decides how many cracks there
are and how wide each becomes. Gilbert's model follows that to the end of drying; the code rules
below it are short forms of the same thought.
"""

import math
from dataclasses import dataclass

from crackkit.words import _


@dataclass(frozen=True)
class RestrainedSlab:
    """A slab held at both ends, and its bars, for any width that goes with both areas.

    Parameters
    ----------
    length : float
        Length L between the ends that do not move [mm], above 0.
    concrete_area : float
        Area of the concrete Ac [mm2], above 0.
    bars_area : float
        Area of the bars As [mm2], above 0.
    diameter : float
        Diameter of the bars [mm], above 0.
    tensile_strength : float
        Direct tensile strength of the concrete [MPa], above 0.
    concrete_modulus : float
        Short-term modulus Ec [MPa], above 0.
    creep : float
        Creep coefficient at the end [-], 0 or more.
    shrinkage : float
        Shrinkage at the end, as a positive number [-], above 0.
    steel_modulus : float
        Modulus of the bars Es [MPa], above 0.
    transfer_factor : float
        Factor on the transfer length s0 = diameter/(10 rho) [-], above 0: 1 in 1992, 1.33 for
        long-term effects in later papers of the author.

    Raises
    ------
    ValueError
        If a number lies outside of its range.
    """

    length: float
    concrete_area: float
    bars_area: float
    diameter: float
    tensile_strength: float
    concrete_modulus: float
    creep: float
    shrinkage: float
    steel_modulus: float = 200000.0
    transfer_factor: float = 1.0

    def __post_init__(self):
        above = [value for name, value in vars(self).items() if name != "creep"]
        if not (min(above) > 0 and self.creep >= 0):
            raise ValueError(_("Sizes, strengths and moduli of a slab must be above 0."))

    @property
    def rho(self):
        """Steel over concrete [-]."""
        return self.bars_area / self.concrete_area

    @property
    def transfer_length(self):
        """Length s0 over which the bars hand their force to the concrete [mm]."""
        return self.transfer_factor * self.diameter / (10 * self.rho)


@dataclass(frozen=True)
class FirstCrack:
    """Just after the first crack.

    Parameters
    ----------
    share : float
        C1 = 2 s0/(3 L - 2 s0) [-].
    force : float
        Restraining force Ncr [N].
    concrete_stress : float
        Stress of the concrete far from the crack [MPa].
    steel_stress : float
        Stress of the bars in the crack [MPa].
    far_steel_stress : float
        Stress of the bars far from the crack [MPa], squeezed.
    """

    share: float
    force: float
    concrete_stress: float
    steel_stress: float
    far_steel_stress: float


@dataclass(frozen=True)
class FinalCracks:
    """When drying has ended.

    Parameters
    ----------
    mean_stress : float
        Stress of the concrete between first crack and end, on average [MPa].
    effective_modulus : float
        Ee = Ec/(1 + phi) [MPa].
    ratio : float
        Modular ratio ne = Es/Ee [-].
    xi : float
        Factor of the crack spacing [-].
    greatest_spacing : float
        Spacing that cannot be passed [mm].
    number : int
        Number of cracks m [-].
    spacing : float
        L/m [mm].
    share : float
        C2 = 2 s0/(3 s - 2 s0) [-].
    force : float
        Restraining force N [N].
    concrete_stress : float
        Stress of the concrete between the cracks [MPa].
    steel_stress : float
        Stress of the bars in the cracks [MPa].
    width : float
        Crack width w [mm].
    """

    mean_stress: float
    effective_modulus: float
    ratio: float
    xi: float
    greatest_spacing: float
    number: int
    spacing: float
    share: float
    force: float
    concrete_stress: float
    steel_stress: float
    width: float


def first_crack(slab: RestrainedSlab) -> FirstCrack:
    """Forces just after the first crack.

    Parameters
    ----------
    slab : RestrainedSlab
        Slab and bars.

    Returns
    -------
    FirstCrack
        Force [N] and stresses [MPa].

    Raises
    ------
    ValueError
        If the slab is shorter than the bars need on both sides of one crack.

    Notes
    -----
    GILBERT1992, from memory.
    """
    s0, L, rho = slab.transfer_length, slab.length, slab.rho
    if 2 * s0 >= L:
        raise ValueError(_("The slab is too short, or has too few bars, for this model."))
    n = slab.steel_modulus / slab.concrete_modulus
    C1 = 2 * s0 / (3 * L - 2 * s0)
    N = n * rho * slab.tensile_strength * slab.concrete_area / (C1 + n * rho * (1 + C1))
    steel = N / slab.bars_area
    return FirstCrack(C1, N, N * (1 + C1) / slab.concrete_area, steel, -C1 * steel)


def final_cracks(slab: RestrainedSlab) -> FinalCracks:
    """Number and width of the cracks when drying has ended.

    Parameters
    ----------
    slab : RestrainedSlab
        Slab and bars.

    Returns
    -------
    FinalCracks
        Spacing and width [mm], force [N], stresses [MPa]; check the steel stress against yield.

    Raises
    ------
    ValueError
        If the shrinkage is too small for cracks that have come to rest, or the bars are too few.

    Notes
    -----
    GILBERT1992, from memory.
    """
    first = first_crack(slab)
    s0, rho = slab.transfer_length, slab.rho
    sigma = 0.5 * (first.concrete_stress + slab.tensile_strength)
    Ee = slab.concrete_modulus / (1 + slab.creep)
    ne = slab.steel_modulus / Ee
    slack = sigma - slab.shrinkage * Ee
    xi = -ne * rho * slack / (ne * rho * slack + slab.tensile_strength)
    if slack >= 0 or xi <= 0:
        raise ValueError(_("Bars and shrinkage do not fit this model: cracks do not come to rest."))
    most = 2 * s0 * (1 + xi) / (3 * xi)
    m = math.ceil(slab.length / most * (1 - 1e-12))
    s = slab.length / m
    C2 = 2 * s0 / (3 * s - 2 * s0)
    N = -ne * slab.bars_area * slack / C2
    concrete = N * (1 + C2) / slab.concrete_area
    w = slab.shrinkage * s - concrete / Ee * (s - 2 * s0 / 3)
    steel = N / slab.bars_area
    return FinalCracks(sigma, Ee, ne, xi, most, m, s, C2, N, concrete, steel, w)


def end_restraint_strain(ratio, modular_ratio, tensile_strength, k=1.0, kc=1.0, modulus=200000.0):
    """Strain that opens the cracks of a member held at its ends.

    Parameters
    ----------
    ratio : float or array_like
        Steel over concrete rho [-], above 0.
    modular_ratio : float or array_like
        alpha_e = Es/Ec [-].
    tensile_strength : float or array_like
        Strength when it cracks fct,eff [MPa].
    k : float
        Factor of the size [-], see `size_factor_en`.
    kc : float
        Factor of the stress over the section [-], 1 in direct tension.
    modulus : float
        Modulus of the bars Es [MPa].

    Returns
    -------
    float or numpy.ndarray
        0.5 alpha_e kc k fct (1 + 1/(alpha_e rho))/Es [-]: it does not depend on the shrinkage.

    Notes
    -----
    EN1992-3-2006 Annex M, (M.1), from memory.
    """
    force = kc * k * tensile_strength * (1 + 1 / (modular_ratio * ratio))
    return 0.5 * modular_ratio * force / modulus


def edge_restraint_strain(restraint, free_strain):
    """Strain that opens the cracks of a member held along an edge.

    Parameters
    ----------
    restraint : float or array_like
        Restraint factor Rax, 0 to 1 [-]; Table L.1 gives 0.5 at most, creep counted.
    free_strain : float or array_like
        Strain that the member would have if nothing held it [-].

    Returns
    -------
    float or numpy.ndarray
        Rax eps_free [-].

    Notes
    -----
    EN1992-3-2006 Annex M, (M.3), from memory.
    """
    return restraint * free_strain


def greatest_spacing_en(cover, diameter, ratio):
    """Largest crack spacing of ribbed bars under direct tension.

    Parameters
    ----------
    cover : float or array_like
        Clear cover c [mm].
    diameter : float or array_like
        Diameter of the bars [mm].
    ratio : float or array_like
        Steel over the concrete around it, rho_p,eff [-], above 0.

    Returns
    -------
    float or numpy.ndarray
        3.4 c + 0.425 k1 k2 diameter/rho with k1 = 0.8 and k2 = 1 [mm].

    Notes
    -----
    EN1992-1-1-2004 7.3.4, Eq. (7.11), from memory.
    """
    return 3.4 * cover + 0.425 * 0.8 * diameter / ratio
