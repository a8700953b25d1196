"""Model Code 2010 with fibres: what they carry across a crack need not go into the bars."""

import numpy as np

from crackkit.mechanics.crack_width.model_code_2010 import bonded_width, working_lines
from crackkit.mechanics.crack_width.result import CrackWidth, Line
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.words import _

_RULE = ("model_code_2010_fibres", _("Model Code 2010 with fibres"), "MC2010", "7.7.4.1")

_FIRST_CRACK = (
    Line("f_F", "", "MPa", "5.6.4"),
    Line("f_l", "max(f_ct - f_F, 0)", "MPa", "7.7.4.1"),
    Line("sigma_sr", "f_l/rho*(1 + alpha_e*rho)", "MPa", "7.7.4.1"),
)
_TRANSFER = Line("l_s", "c + f_l/f_ct*phi/(4*tau*rho)", "mm", "7.7.4.1")
_LINES = {kind: working_lines(kind, _FIRST_CRACK, _TRANSFER) for kind in ("bending", "tension")}


def model_code_2010_fibres(zone: CrackZone, residual) -> CrackWidth:
    """Give the crack width of Model Code 2010 where bars and fibres hold a crack together.

    Fibres act three times: they take load off the bars, so the steel stress of the zone must be
    the one that is left for the bars (`fibre_section`); cracks come closer; and the concrete
    between them helps the bars less, since it sheds less onto them. The first two narrow a crack,
    the third widens it a little, so a residual stress alone, with the steel stress left as it
    was without fibres, does not tell what fibres do.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone, with the steel stress that fibres leave to the bars.
    residual : float or ndarray
        Mean residual tensile strength under service load f_Ftsm, 0 or more [MPa]; from the
        strength of the concrete on, the spacing is that of the cover alone.

    Returns
    -------
    CrackWidth
        Width at the face [mm], largest spacing [mm], strain difference [-]; without residual
        strength the same as `model_code_2010`.

    Raises
    ------
    ValueError
        If the residual strength is negative.

    Notes
    -----
    MC2010 7.7.4.1, from memory: l_s = c + (f_ctm - f_Ftsm)/tau_bms phi/(4 rho),
    sigma_sr = (f_ctm - f_Ftsm)/rho (1 + alpha_e rho), with tau_bms of Table 7.6-2.
    """
    if not np.all(np.asarray(residual) >= 0.0):
        raise ValueError(_("The residual strength of fibres cannot be negative."))
    lost = np.maximum(zone.tensile_strength - residual, 0.0)
    return bonded_width(zone, lost, (residual, lost), _RULE, _LINES[zone.action])
