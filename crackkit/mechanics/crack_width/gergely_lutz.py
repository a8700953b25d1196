"""Gergely and Lutz: the width found by statistics on many beam tests."""

from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.mechanics.us_customary import PSI

# Printed in thousandths of an inch, for ksi and inches; the inches cancel.
_KSI = 1000.0 * PSI
_FACTOR = {"bending": 0.076e-3 / _KSI, "tension": 0.10e-3 / _KSI}
_RULE = {
    "bending": ("gergely_lutz", "Gergely-Lutz", "ACI224R-01", "4.2.1"),
    "tension": ("gergely_lutz", "ACI 224.2R", "ACI224.2R-92", "ACI 224R-01 4.8"),
}

_GEOMETRY = (
    Line("ksi", "", "MPa", ""),
    Line("f_s", "", "MPa", ""),
    Line("c", "", "mm", ""),
    Line("phi", "", "mm", ""),
    Line("h", "", "mm", ""),
    Line("d", "", "mm", ""),
    Line("b", "", "mm", ""),
    Line("n", "", "-", ""),
    Line("d_c", "c + phi/2", "mm", ""),
    Line("A", "2*(h - d)*b/n", "mm2", ""),
    Line("z", "f_s*(d_c*A)**(1/3)", "N/mm", "ACI 318-95 10.6.4"),
)
_LINES = {
    "bending": (
        *_GEOMETRY,
        Line("x", "", "mm", ""),
        Line("beta", "(h - x)/(d - x)", "-", "4.2.1"),
        Line("w", "0.076e-3*beta*z/ksi", "mm", "4.2.1"),
    ),
    "tension": (*_GEOMETRY, Line("w", "0.10e-3*z/ksi", "mm", "ACI 224R-01 4.8")),
}


def gergely_lutz(zone: CrackZone) -> CrackWidth:
    """Give the most probable largest crack width at the stretched face.

    Fitted to beams with steel stresses of about 100 to 550 MPa and centre covers up to about
    85 mm; about one crack in ten is wider. It speaks of no crack spacing and no mean strain.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.

    Returns
    -------
    CrackWidth
        Width [mm]; spacing and strain are None.

    Notes
    -----
    ACI224R-01 4.2.1 after GERGELY1968, bending: w = 0.076 beta f_s (d_c A)^(1/3) in thousandths
    of an inch, ksi and inches. ACI224.2R-92, direct tension: w = 0.10 f_s (d_c A)^(1/3). Both
    converted exactly; printed metric forms round 1.102e-5 to 1.1e-5.
    """
    d_c, A, f_s = zone.centre_cover, zone.area_per_bar, zone.steel_tension
    z = f_s * (d_c * A) ** (1 / 3)
    w = _FACTOR[zone.action] * zone.beta * z
    numbers = (_KSI, f_s, zone.clear_cover, zone.diameter, zone.depth, zone.effective_depth)
    numbers += (zone.width, zone.number, d_c, A, z)
    numbers += (zone.neutral_axis, zone.beta, w) if zone.action == "bending" else (w,)
    return CrackWidth(*_RULE[zone.action], w, None, None, _LINES[zone.action], numbers)
