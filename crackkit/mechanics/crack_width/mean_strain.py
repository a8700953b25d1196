"""Mean strain of steel less that of concrete: between cracks the concrete helps."""

import numpy as np


def mean_strain(zone, rho, k_t, floor):
    """Give the strain difference that opens the crack, by the form shared by both Eurocodes.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.
    rho : float or ndarray
        Steel over effective concrete area around it [-].
    k_t : float
        Share of the concrete's strength that keeps helping: 0.6 short, 0.4 lasting [-].
    floor : float
        Least share of the bare-steel strain that must be counted [-].

    Returns
    -------
    float or ndarray
        Strain difference, never negative [-].

    Notes
    -----
    EN1992-1-1-2004 Eq. (7.9) with floor 0.6; EN1992-1-1-2023 9.2.3 with floor 1 - k_t.
    """
    sigma_s, E_s = zone.steel_tension, zone.steel_modulus
    held = k_t * zone.tensile_strength / rho * (1.0 + zone.modular_ratio * rho)
    return np.maximum(sigma_s - held, floor * sigma_s) / E_s
