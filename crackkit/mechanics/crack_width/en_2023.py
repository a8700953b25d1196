"""Eurocode 2 of 2023: a mean spacing, made the largest, and the curve of the section counted."""

import numpy as np

from crackkit.mechanics.crack_width.mean_strain import mean_strain
from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone

_RULE = ("en_2023", "EN 1992-1-1:2023", "EN1992-1-1-2023", "9.2.3")

_KW = 1.7
_KT = {"short": 0.6, "lasting": 0.4}
_KB = {"good": 0.9, "poor": 1.2}

_INPUTS = (
    Line("sigma_s", "", "MPa", ""),
    Line("E_s", "", "MPa", ""),
    Line("f_ct", "", "MPa", ""),
    Line("alpha_e", "", "-", ""),
    Line("A_s", "", "mm2", ""),
    Line("phi", "", "mm", ""),
    Line("c", "", "mm", ""),
    Line("b", "", "mm", ""),
    Line("h", "", "mm", ""),
    Line("d", "", "mm", ""),
    Line("k_t", "", "-", "9.2.3"),
    Line("k_b", "", "-", "9.2.3"),
    Line("k_w", "", "-", "Eq. (9.8)"),
    Line("a_y", "c + phi/2", "mm", "9.2.3"),
)
_NEAR = "min(a_y + 5*phi, 10*phi, 3.5*a_y) + 2*(h - d - a_y)"
_STRAIN = (
    Line("rho", "A_s/(b*h_c)", "-", "9.2.3"),
    Line(
        "eps_m",
        "max(sigma_s - k_t*f_ct/rho*(1 + alpha_e*rho), (1 - k_t)*sigma_s)/E_s",
        "-",
        "9.2.3",
    ),
)
_LAST = (
    Line("s_r", "k_w*s_m", "mm", "9.2.3"),
    Line("w", "k_r*s_r*eps_m", "mm", "Eq. (9.8)"),
)
_LINES = {
    "bending": (
        *_INPUTS,
        Line("x", "", "mm", ""),
        Line("h_c", f"min({_NEAR}, h - x, h/2)", "mm", "9.2.3"),
        *_STRAIN,
        Line("k_fl", "0.5*(1 + (h - x - h_c)/(h - x))", "-", "9.2.3"),
        Line("k_r", "(h - x)/(h - a_y - x)", "-", "Eq. (9.9)"),
        Line(
            "s_m",
            "min(1.5*c + k_fl*k_b/7.2*phi/rho, 1.3/k_w*(h - x))",
            "mm",
            "9.2.3",
        ),
        *_LAST,
    ),
    "tension": (
        *_INPUTS,
        Line("h_c", f"min({_NEAR}, h/2)", "mm", "9.2.3"),
        *_STRAIN,
        Line("k_fl", "", "-", "9.2.3"),
        Line("k_r", "", "-", "Eq. (9.9)"),
        Line("s_m", "1.5*c + k_fl*k_b/7.2*phi/rho", "mm", "9.2.3"),
        *_LAST,
    ),
}


def en_2023(zone: CrackZone) -> CrackWidth:
    """Give the crack width of Eurocode 2, edition 2023.

    The limits on the effective height around the bars are stated from memory; the upper bound on
    the spacing is read as one for bending only.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.

    Returns
    -------
    CrackWidth
        Width [mm], largest spacing [mm], strain difference [-].

    Notes
    -----
    EN1992-1-1-2023 9.2.3, Eqs. (9.8) and (9.9).
    """
    h_c = _effective_height(zone)
    rho = zone.steel_area / (zone.width * h_c)
    k_t, k_b = _KT[zone.duration], _KB[zone.bond]
    eps_m = mean_strain(zone, rho, k_t, 1.0 - k_t)
    k_fl, k_r = _gradient(zone, h_c)
    s_m = _mean_spacing(zone, k_fl * k_b / 7.2, rho)
    s_r = _KW * s_m
    w = k_r * s_r * eps_m
    x = (zone.neutral_axis,) if zone.action == "bending" else ()
    numbers = (*_inputs(zone), k_t, k_b, _KW, zone.centre_cover, *x)
    numbers += (h_c, rho, eps_m, k_fl, k_r, s_m, s_r, w)
    lines = _LINES[zone.action]
    return CrackWidth(*_RULE, w, s_r, eps_m, lines, numbers)


def _effective_height(zone):
    a_y, phi = zone.centre_cover, zone.diameter
    # The layers reach as far beyond their centroid as the outer one lies before it.
    near = np.minimum(np.minimum(a_y + 5.0 * phi, 10.0 * phi), 3.5 * a_y)
    near = np.minimum(near + 2.0 * (zone.centroid_cover - a_y), 0.5 * zone.depth)
    return np.minimum(near, zone.stretched_depth)


def _gradient(zone, h_c):
    if zone.action == "tension":
        return 1.0, 1.0
    t = zone.stretched_depth
    return 0.5 * (1.0 + (t - h_c) / t), t / (t - zone.centre_cover)


def _mean_spacing(zone, factor, rho):
    s_m = 1.5 * zone.clear_cover + factor * zone.diameter / rho
    if zone.action == "tension":
        return s_m
    return np.minimum(s_m, 1.3 / _KW * zone.stretched_depth)


def _inputs(zone):
    return (
        zone.steel_tension,
        zone.steel_modulus,
        zone.tensile_strength,
        zone.modular_ratio,
        zone.steel_area,
        zone.diameter,
        zone.clear_cover,
        zone.width,
        zone.depth,
        zone.effective_depth,
    )
