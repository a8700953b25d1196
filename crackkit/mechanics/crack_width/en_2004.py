"""Eurocode 2 of 2004: crack spacing times the strain difference of steel and concrete."""

import numpy as np

from crackkit.mechanics.crack_width.mean_strain import mean_strain
from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.words import _

_RULE = ("en_2004", "EN 1992-1-1:2004", "EN1992-1-1-2004", "7.3.4")

# k_1 of ribbed bars; k_2 by the shape of the strain over the depth.
_K1 = 0.8
_K2 = {"bending": 0.5, "tension": 1.0}
_KT = {"short": 0.6, "lasting": 0.4}

_INPUTS = (
    Line("sigma_s", "", "MPa", ""),
    Line("E_s", "", "MPa", ""),
    Line("f_ct", "", "MPa", ""),
    Line("alpha_e", "", "-", ""),
    Line("A_s", "", "mm2", ""),
    Line("phi", "", "mm", ""),
    Line("c", "", "mm", ""),
    Line("s", "", "mm", ""),
    Line("b", "", "mm", ""),
    Line("h", "", "mm", ""),
    Line("d", "", "mm", ""),
    Line("k_t", "", "-", "7.3.4(2)"),
    Line("k_1", "", "-", "7.3.4(3)"),
    Line("k_2", "", "-", "7.3.4(3)"),
    Line("k_3", "", "-", "7.3.4(3)"),
    Line("k_4", "", "-", "7.3.4(3)"),
)
_DEPTHS = {
    "bending": (
        Line("x", "", "mm", ""),
        Line("t", "h - x", "mm", ""),
        Line("h_c", "min(2.5*(h - d), t/3, h/2)", "mm", "7.3.2(3)"),
    ),
    "tension": (
        Line("t", "h", "mm", ""),
        Line("h_c", "min(2.5*(h - d), h/2)", "mm", "7.3.2(3)"),
    ),
}
_BARE = "sigma_s - k_t*f_ct/rho*(1 + alpha_e*rho)"
_BOUND = _("7.3.4(3); the upper bound (7.14) counts where it is one")
_RESULTS = (
    Line("rho", "A_s/(b*h_c)", "-", "Eq. (7.10)"),
    Line("eps_m", f"max({_BARE}, 0.6*sigma_s)/E_s", "-", "Eq. (7.9)"),
    Line("s_lim", "5*(c + phi/2)", "mm", "7.3.4(3)"),
    Line("s_near", "k_3*c + k_1*k_2*k_4*phi/rho", "mm", "Eq. (7.11)"),
    Line("s_far", "1.3*t", "mm", "Eq. (7.14)"),
    Line("s_r", "s_near if s <= s_lim else max(s_near, s_far)", "mm", _BOUND),
    Line("w", "s_r*eps_m", "mm", "Eq. (7.8)"),
)
_LINES = {action: (*_INPUTS, *depths, *_RESULTS) for action, depths in _DEPTHS.items()}


def en_2004(zone: CrackZone, k3=3.4, k4=0.425) -> CrackWidth:
    """Give the crack width of Eurocode 2, edition 2004.

    Bars farther apart than 5(c + phi/2) no longer govern the crack spacing alone: Eq. (7.14) then
    gives an upper bound. In a thin slab it is less than Eq. (7.11), and bounds nothing: bars that
    are laid too far apart must not come out the better for it, so the larger of the two is taken.
    Ribbed bars are taken (k_1 = 0.8); this edition knows no poor bond position.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.
    k3, k4 : float
        Nationally determined factors on the cover and on the bar; the recommended values stand
        where none are given [-].

    Returns
    -------
    CrackWidth
        Width [mm], largest spacing [mm], strain difference [-].

    Notes
    -----
    EN1992-1-1-2004 7.3.4, Eqs. (7.8) to (7.14).
    """
    h_c = _effective_height(zone)
    rho = zone.steel_area / (zone.width * h_c)
    k_t, k_2 = _KT[zone.duration], _K2[zone.action]
    eps_m = mean_strain(zone, rho, k_t, 0.6)
    spacings = _spacings(zone, k3, _K1 * k_2 * k4, rho)
    s_r = spacings[-1]
    w = s_r * eps_m
    numbers = (*_inputs(zone), k_t, _K1, k_2, k3, k4, *_depths(zone), h_c)
    numbers += (rho, eps_m, *spacings, w)
    lines = _LINES[zone.action]
    return CrackWidth(*_RULE, w, s_r, eps_m, lines, numbers)


def _effective_height(zone):
    outer = np.minimum(2.5 * zone.centroid_cover, 0.5 * zone.depth)
    if zone.action == "tension":
        return outer
    return np.minimum(outer, zone.stretched_depth / 3.0)


def _spacings(zone, k3, factor, rho):
    s_lim = 5.0 * (zone.clear_cover + 0.5 * zone.diameter)
    near = k3 * zone.clear_cover + factor * zone.diameter / rho
    far = 1.3 * zone.stretched_depth
    return s_lim, near, far, np.where(zone.spacing <= s_lim, near, np.maximum(near, far))[()]


def _inputs(zone):
    return (
        zone.steel_tension,
        zone.steel_modulus,
        zone.tensile_strength,
        zone.modular_ratio,
        zone.steel_area,
        zone.diameter,
        zone.clear_cover,
        zone.spacing,
        zone.width,
        zone.depth,
        zone.effective_depth,
    )


def _depths(zone):
    if zone.action == "tension":
        return (zone.stretched_depth,)
    return zone.neutral_axis, zone.stretched_depth
