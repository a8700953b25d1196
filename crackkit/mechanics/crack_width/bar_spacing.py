"""How far apart bars may lie so that cracks stay fine, without a width being worked out."""

import numpy as np

from crackkit.mechanics.us_customary import INCH, PSI

# Printed as 15 in and 12 in at 40,000 psi. The metric edition rounds to 380 mm, 300 mm and
# 280 MPa, which allows about one hundredth more.
_LONG, _SHORT, _STRESS = 15 * INCH, 12 * INCH, 40_000 * PSI


def aci_bar_spacing_limit(steel_stress, clear_cover):
    """Give the largest centre-to-centre spacing of the bars next to the stretched face.

    Parameters
    ----------
    steel_stress : float or ndarray
        Stress in the bars under service load, above 0; two thirds of the yield strength where it
        is not worked out [MPa].
    clear_cover : float
        From the stretched face to the surface of the nearest bar [mm].

    Returns
    -------
    float or ndarray
        Largest spacing, never negative [mm].

    Notes
    -----
    ACI318-19 Table 24.3.2, the US edition converted exactly.
    """
    ratio = _STRESS / steel_stress
    nearest = np.minimum(_LONG * ratio - 2.5 * clear_cover, _SHORT * ratio)
    return np.maximum(nearest, 0.0)
