"""One diameter that stands for bars of several."""

import numpy as np


def equivalent_diameter(numbers, diameters):
    """Give the diameter of equal bars with the same area for the same bonded surface.

    Parameters
    ----------
    numbers : array_like
        How many bars of each diameter [-].
    diameters : array_like
        The diameters [mm].

    Returns
    -------
    float
        Equivalent diameter phi_eq [mm].

    Notes
    -----
    EN1992-1-1-2004 Eq. (7.12).
    """
    n, phi = np.asarray(numbers, float), np.asarray(diameters, float)
    return float(np.sum(n * phi**2) / np.sum(n * phi))
