"""How far apart the main bars of a slab may lie where it is bent most."""

from crackkit.mechanics.crack_width.bar_spacing import aci_bar_spacing_limit
from crackkit.mechanics.us_customary import INCH

_WIDEST_ACI, _WIDEST_EN = 18 * INCH, 250.0


def widest_mat_spacing(code: str, depth: float, yield_strength: float, cover: float) -> float:
    """Give the largest centre-to-centre spacing of the main bars of a slab.

    Parameters
    ----------
    code : str
        ``"ACI"`` or ``"EN"``.
    depth : float
        Depth of the slab, above 0 [mm].
    yield_strength : float
        Yield strength of the bars, above 0 [MPa].
    cover : float
        From the stretched face to the nearest bar, 0 or more [mm].

    Returns
    -------
    float
        ACI 318-19 7.7.2.3: three depths and 18 in, and 24.3.2 with two thirds of the yield
        strength. EN 1992-1-1:2004 9.3.1.1(3), where moments are largest: two depths and 250 mm.
        Three depths, 18 in, two depths and 250 mm from memory [mm].
    """
    if code == "EN":
        return min(2 * depth, _WIDEST_EN)
    cracks = float(aci_bar_spacing_limit(2 / 3 * yield_strength, cover))
    return min(3 * depth, _WIDEST_ACI, cracks)
