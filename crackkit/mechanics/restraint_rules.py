"""Short rules for the least steel and the crack spacing of members that cannot shorten."""


def vetter_spacing(
    tensile_strength, ratio, diameter, bond_stress, shrinkage, modulus, steel_modulus=200000.0
):
    """Distance of the cracks of a long wall that dries between ends that do not move.

    Far from a crack the bars are squeezed by eps Es - n fct, near it they are pulled; as long as
    the wall keeps its length both add up to nothing.

    Parameters
    ----------
    tensile_strength : float or array_like
        Strength of the concrete fct [MPa].
    ratio : float or array_like
        Steel over concrete rho [-], above 0.
    diameter : float or array_like
        Diameter of the bars [mm].
    bond_stress : float or array_like
        Bond stress u [MPa], above 0.
    shrinkage : float or array_like
        Shrinkage eps, as a positive number [-]; eps Ec above fct, or there are no cracks.
    modulus : float or array_like
        Modulus of the concrete Ec [MPa].
    steel_modulus : float
        Modulus of the bars Es [MPa].

    Returns
    -------
    float or numpy.ndarray
        fct^2/(rho^2 n q u (eps Ec - fct)) [mm], q = 4/diameter being perimeter over area.

    Notes
    -----
    VETTER1933, from memory.
    """
    n, q = steel_modulus / modulus, 4.0 / diameter
    spare = shrinkage * modulus - tensile_strength
    return tensile_strength**2 / (ratio**2 * n * q * bond_stress * spare)


def vetter_least_ratio(tensile_strength, yield_strength, modular_ratio):
    """Least steel with which the bars do not yield at a crack of a wall that dries.

    Parameters
    ----------
    tensile_strength : float or array_like
        Strength of the concrete fct [MPa].
    yield_strength : float or array_like
        Yield strength of the bars fy [MPa], above n fct.
    modular_ratio : float or array_like
        n = Es/Ec [-].

    Returns
    -------
    float or numpy.ndarray
        fct/(fy - n fct) [-]; half of it against a fall of temperature.

    Notes
    -----
    VETTER1933, from memory.
    """
    return tensile_strength / (yield_strength - modular_ratio * tensile_strength)


def critical_ratio(tensile_strength, yield_strength):
    """Least steel that can hold the first crack of young concrete without yielding.

    Parameters
    ----------
    tensile_strength : float or array_like
        Strength of the concrete when it cracks, at three days in the code [MPa].
    yield_strength : float or array_like
        Yield strength of the bars fy [MPa], above 0.

    Returns
    -------
    float or numpy.ndarray
        rho_crit = fct/fy [-].

    Notes
    -----
    BS8007-1987 appendix A.
    """
    return tensile_strength / yield_strength


def greatest_spacing_bs(diameter, ratio, strength_over_bond=0.67):
    """Largest crack spacing of a held member, from the bond of its bars alone.

    Parameters
    ----------
    diameter : float or array_like
        Diameter of the bars [mm].
    ratio : float or array_like
        Steel over concrete rho [-], above 0.
    strength_over_bond : float
        Tensile strength over bond strength [-]: 0.67 for ribbed bars of type 2, 1 for plain ones.

    Returns
    -------
    float or numpy.ndarray
        (fct/fb) diameter/(2 rho) [mm]; the width is the spacing times the restrained strain.

    Notes
    -----
    BS8007-1987 appendix A, from memory.
    """
    return strength_over_bond * diameter / (2 * ratio)


def ratio_for_width(restraint, cooling, expansion, diameter, width, k=1.0):
    """Steel with which the cracks of early cooling stay as fine as asked for.

    Parameters
    ----------
    restraint : float or array_like
        Restraint factor R, 0 to 1 [-].
    cooling : float or array_like
        Fall from the peak of hydration to the surroundings T1 [K].
    expansion : float or array_like
        Coefficient of thermal expansion [1/K].
    diameter : float or array_like
        Diameter of the bars [mm].
    width : float or array_like
        Greatest crack width [mm], above 0.
    k : float
        Factor of the source on the strain [-].

    Returns
    -------
    float or numpy.ndarray
        rho = k R T1 alpha diameter/(3 w) [-] (CIRIA R91, as the CONCRETE-SOCIETY gives it).
    """
    return k * restraint * cooling * expansion * diameter / (3 * width)
