"""BS 8007: the width halfway between two bars, for structures that hold liquid."""

import numpy as np

from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.words import _

_RULE = ("bs_8007", "BS 8007", "BS8007-1987", "App. B")

# What the stretched concrete takes off the strain depends on the width that is designed for; the
# standard allows nothing in between. The figure is the share of b(h-x)^2/(Es As (d-x)).
_STIFFENING = {0.2: 1.0 / 3.0, 0.1: 0.5}

_INPUTS = (
    Line("f_s", "", "MPa", ""),
    Line("E_s", "", "MPa", ""),
    Line("A_s", "", "mm2", ""),
    Line("phi", "", "mm", ""),
    Line("c", "", "mm", ""),
    Line("s", "", "mm", ""),
    Line("b", "", "mm", ""),
    Line("h", "", "mm", ""),
    Line("k_s", "", "-", "B.3, B.4"),
    Line("a_cr", "sqrt((s/2)**2 + (c + phi/2)**2) - phi/2", "mm", "B.2"),
)
_STRAIN = Line("e_m", "max(e_1 - e_2, 0)", "-", "B.2")
_LINES = {
    "bending": (
        Line("d", "", "mm", ""),
        Line("x", "", "mm", ""),
        *_INPUTS,
        Line("e_1", "f_s/E_s*(h - x)/(d - x)", "-", "B.2"),
        Line("e_2", "k_s*b*(h - x)**2/(E_s*A_s*(d - x))", "-", "B.3"),
        _STRAIN,
        Line("w", "3*a_cr*e_m/(1 + 2*(a_cr - c)/(h - x))", "mm", "B.2"),
    ),
    "tension": (
        *_INPUTS,
        Line("e_1", "f_s/E_s", "-", "B.4"),
        Line("e_2", "k_s*b*h/(E_s*A_s)", "-", "B.4"),
        _STRAIN,
        Line("w", "3*a_cr*e_m", "mm", "B.4"),
    ),
}


def bs_8007(zone: CrackZone, design_width=0.2) -> CrackWidth:
    """Give the crack width midway between two bars by the standard for liquid-retaining work.

    The section is to be worked out with half the modulus of the concrete.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone. Under direct tension its steel is that of one half of the member.
    design_width : {0.2, 0.1}
        The width that is designed for; it decides how much the stretched concrete helps [mm].

    Returns
    -------
    CrackWidth
        Width [mm], strain [-]; spacing is None.

    Raises
    ------
    ValueError
        Where the design width is neither 0.2 nor 0.1 mm.

    Notes
    -----
    BS8007-1987 Appendix B.
    """
    if design_width not in _STIFFENING:
        raise ValueError(_("BS 8007 knows design widths of 0.2 mm and 0.1 mm only."))
    return british_width(zone, _STIFFENING[design_width], _RULE)


def british_width(zone, stiffening, rule):
    """Give the width by the form that BS 8007 and BS 8110 share.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.
    stiffening : float
        Share of b(h-x)^2/(Es As (d-x)) that the stretched concrete takes off the strain [-].
    rule : tuple of str
        Rule, its name, source and clause.

    Returns
    -------
    CrackWidth
        Width [mm], strain [-]; spacing is None.

    Notes
    -----
    BS8007-1987 Appendix B; BS8110-2-1985 3.8.3.
    """
    a_cr = np.hypot(0.5 * zone.spacing, zone.centre_cover) - 0.5 * zone.diameter
    e_1 = zone.beta * zone.steel_tension / zone.steel_modulus
    e_2 = stiffening * _stiffening_strain(zone)
    e_m = np.maximum(e_1 - e_2, 0.0)
    w = 3.0 * a_cr * e_m / _narrowing(zone, a_cr)
    numbers = (*_inputs(zone), stiffening, a_cr, e_1, e_2, e_m, w)
    return CrackWidth(*rule, w, None, e_m, _LINES[zone.action], numbers)


def _stiffening_strain(zone):
    if zone.action == "bending":
        area = zone.width * zone.stretched_depth * zone.beta
    else:
        # Both halves of a member in tension: twice the steel of the zone, the whole depth, and
        # factors 2/3 and 1 where bending has 1/3 and 1/2. The two twos cancel.
        area = zone.width * zone.depth
    return area / (zone.steel_modulus * zone.steel_area)


def _narrowing(zone, a_cr):
    if zone.action == "tension":
        return 1.0
    return 1.0 + 2.0 * (a_cr - zone.clear_cover) / zone.stretched_depth


def _inputs(zone):
    axes = (zone.effective_depth, zone.neutral_axis) if zone.action == "bending" else ()
    return (
        *axes,
        zone.steel_tension,
        zone.steel_modulus,
        zone.steel_area,
        zone.diameter,
        zone.clear_cover,
        zone.spacing,
        zone.width,
        zone.depth,
    )
