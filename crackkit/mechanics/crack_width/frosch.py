"""Frosch: a crack can come no nearer to the next than the bars let it."""

import numpy as np

from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone

_RULE = ("frosch", "Frosch", "FROSCH1999", "p. 440")

_BEFORE = (
    Line("f_s", "", "MPa", ""),
    Line("E_s", "", "MPa", ""),
    Line("c", "", "mm", ""),
    Line("phi", "", "mm", ""),
    Line("s", "", "mm", ""),
    Line("d_c", "c + phi/2", "mm", ""),
    Line("d_star", "sqrt(d_c**2 + (s/2)**2)", "mm", "p. 439"),
    Line("s_c", "2*d_star", "mm", "p. 439"),
    Line("eps_s", "f_s/E_s", "-", "p. 439"),
)
_LINES = {
    "bending": (
        *_BEFORE,
        Line("h", "", "mm", ""),
        Line("d", "", "mm", ""),
        Line("x", "", "mm", ""),
        Line("beta", "(h - x)/(d - x)", "-", "p. 439"),
        Line("w", "s_c*eps_s*beta", "mm", "p. 440"),
    ),
    "tension": (*_BEFORE, Line("w", "s_c*eps_s", "mm", "p. 440")),
}


def frosch(zone: CrackZone) -> CrackWidth:
    """Give the largest crack width at the stretched face, midway between two bars.

    The stretched concrete between cracks is given no credit, and the corner of the section is
    not looked at: the printed equation measures from the face midway between bars.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.

    Returns
    -------
    CrackWidth
        Width [mm], largest spacing [mm], bare-steel strain [-].

    Notes
    -----
    FROSCH1999: w = 2 (f_s/E_s) beta sqrt(d_c^2 + (s/2)^2).
    """
    d_c, s, eps_s = zone.centre_cover, zone.spacing, zone.steel_tension / zone.steel_modulus
    d_star = np.hypot(d_c, 0.5 * s)
    s_c = 2.0 * d_star
    w = s_c * eps_s * zone.beta
    numbers = (zone.steel_tension, zone.steel_modulus, zone.clear_cover, zone.diameter)
    numbers += (s, d_c, d_star, s_c, eps_s)
    if zone.action == "bending":
        numbers += (zone.depth, zone.effective_depth, zone.neutral_axis, zone.beta)
    lines = _LINES[zone.action]
    return CrackWidth(*_RULE, w, s_c, eps_s, lines, (*numbers, w))
