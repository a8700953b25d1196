"""Model Code 2010: twice the length over which bond fills the concrete up to its strength."""

import numpy as np

from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone

_RULE = ("model_code_2010", "Model Code 2010", "MC2010", "7.6.4.4")

# Table 7.6-2: bond over tensile strength, and the share of the first-crack stress still helping,
# while cracks are still forming (below the first-crack stress) and once the pattern is complete.
_FORMING = {"short": (1.8, 0.6), "lasting": (1.35, 0.6)}
_COMPLETE = {"short": (1.8, 0.6), "lasting": (1.8, 0.4)}

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
)
_HEIGHT = {
    "bending": Line("h_c", "min(2.5*(c + phi/2), (h - x)/3, h/2)", "mm", "7.6.4.4"),
    "tension": Line("h_c", "min(2.5*(c + phi/2), h/2)", "mm", "7.6.4.4"),
}
_AXES = {"bending": (Line("d", "", "mm", ""), Line("x", "", "mm", "")), "tension": ()}
_FACE = {"bending": "w_s*(h - x)/(d - x)", "tension": "w_s"}


def working_lines(action, first_crack, transfer):
    """Give the working line by line; without and with fibres it differs in two places.

    Parameters
    ----------
    action : {"bending", "tension"}
        What stretches the zone.
    first_crack : tuple of Line
        Lines that end with sigma_sr, the steel stress as the first crack forms.
    transfer : Line
        The length l_s over which bond fills the concrete up to its strength.

    Returns
    -------
    tuple of Line
        The rule line by line, in the order of the numbers of `bonded_width`.
    """
    return (
        *_AXES[action],
        *_INPUTS,
        _HEIGHT[action],
        Line("rho", "A_s/(b*h_c)", "-", "7.6.4.4"),
        *first_crack,
        Line("tau", "", "-", "Table 7.6-2"),
        Line("b_t", "", "-", "Table 7.6-2"),
        transfer,
        Line("s_r", "2*l_s", "mm", "7.6.4.4"),
        Line("eps_m", "max(sigma_s - b_t*sigma_sr, 0)/E_s", "-", "7.6.4.4"),
        Line("w_s", "s_r*eps_m", "mm", "7.6.4.4"),
        Line("w", _FACE[action], "mm", "7.6.4.4"),
    )


_FIRST_CRACK = (Line("sigma_sr", "f_ct/rho*(1 + alpha_e*rho)", "MPa", "7.6.4.4"),)
_TRANSFER = Line("l_s", "c + phi/(4*tau*rho)", "mm", "7.6.4.4")
_LINES = {kind: working_lines(kind, _FIRST_CRACK, _TRANSFER) for kind in ("bending", "tension")}


def model_code_2010(zone: CrackZone) -> CrackWidth:
    """Give the crack width of Model Code 2010 at the stretched face.

    Shrinkage between the cracks, which widens them under lasting load, is not counted.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.

    Returns
    -------
    CrackWidth
        Width at the face [mm], largest spacing [mm], strain difference [-]; the width at the bars
        is the step ``w_s``.

    Notes
    -----
    MC2010 7.6.4.4 and Table 7.6-2.
    """
    return bonded_width(zone, zone.tensile_strength, (), _RULE, _LINES[zone.action])


def bonded_width(zone, lost, fibres, rule, lines):
    """Give the width by the form that Model Code 2010 has without and with fibres.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.
    lost : float or ndarray
        Stress that the concrete sheds onto the bars where it cracks; all of its strength without
        fibres [MPa].
    fibres : tuple
        Numbers of the lines about fibres, before sigma_sr [MPa].
    rule : tuple of str
        Rule, its name, source and clause.
    lines : tuple of Line
        The rule line by line.

    Returns
    -------
    CrackWidth
        Width at the face [mm], largest spacing [mm], strain difference [-].

    Notes
    -----
    MC2010 7.6.4.4, Table 7.6-2 and 7.7.4.1.
    """
    h_c = _effective_height(zone)
    rho = zone.steel_area / (zone.width * h_c)
    sigma_sr = lost / rho * (1.0 + zone.modular_ratio * rho)
    tau, b_t = _stage(zone, sigma_sr)
    l_s = zone.clear_cover + lost / zone.tensile_strength * zone.diameter / (4.0 * tau * rho)
    eps_m = np.maximum(zone.steel_tension - b_t * sigma_sr, 0.0) / zone.steel_modulus
    s_r = 2.0 * l_s
    w_s = s_r * eps_m
    w = zone.beta * w_s
    numbers = (*_inputs(zone), h_c, rho, *fibres, sigma_sr, tau, b_t, l_s, s_r, eps_m, w_s, w)
    return CrackWidth(*rule, w, s_r, eps_m, lines, numbers)


def _effective_height(zone):
    near = np.minimum(2.5 * zone.centre_cover, 0.5 * zone.depth)
    if zone.action == "tension":
        return near
    return np.minimum(near, zone.stretched_depth / 3.0)


def _stage(zone, sigma_sr):
    forming, complete = _FORMING[zone.duration], _COMPLETE[zone.duration]
    if forming == complete:
        return complete
    done = zone.steel_tension >= sigma_sr
    return tuple(np.where(done, c, f)[()] for c, f in zip(complete, forming, strict=True))


def _inputs(zone):
    axes = (zone.effective_depth, zone.neutral_axis) if zone.action == "bending" else ()
    return (
        *axes,
        zone.steel_tension,
        zone.steel_modulus,
        zone.tensile_strength,
        zone.modular_ratio,
        zone.steel_area,
        zone.diameter,
        zone.clear_cover,
        zone.width,
        zone.depth,
    )
