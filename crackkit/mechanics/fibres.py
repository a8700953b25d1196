"""Concrete with fibres: the stress it still carries in tension across a crack.

The residual strengths f_R1 and f_R3 come from notched beams bent until the notch has opened by
0.5 mm and by 2.5 mm (EN 14651). They are measured, never worked out from a dosage.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _

_OPENING_3 = 2.5  # mm, at which f_R3 is read
_LEAST_START, _LEAST_LATER = 0.4, 0.5  # of f_L, and of f_R1

INDICATIVE_ONLY = _(
    "Indicative, common practice, from memory: only tests by EN 14651 with the concrete of the "
    "job count."
)


@dataclass(frozen=True)
class FibreDose:
    """A dosage of fibres, and residual strengths often met with it.

    Indicative, common practice, from memory: only tests by EN 14651 with the concrete of the job
    count. Fibres, concrete and mixing change the values by half and more.

    Parameters
    ----------
    key : str
        Name in the code.
    label : str
        Name for people.
    dosage : float
        Fibres in the concrete [kg/m3].
    residual_1 : float
        Residual flexural strength f_R1 at a notch opening of 0.5 mm [MPa].
    residual_3 : float
        Residual flexural strength f_R3 at a notch opening of 2.5 mm [MPa].
    """

    key: str
    label: str
    dosage: float
    residual_1: float
    residual_3: float


INDICATIVE = (
    FibreDose("none", _("no fibres"), 0.0, 0.0, 0.0),
    FibreDose("steel_20", _("hooked steel fibres, 20 kg/m³ (34 lb/yd³), indicative"), 20, 1.6, 1.5),
    FibreDose("steel_30", _("hooked steel fibres, 30 kg/m³ (51 lb/yd³), indicative"), 30, 2.4, 2.3),
    FibreDose("steel_40", _("hooked steel fibres, 40 kg/m³ (67 lb/yd³), indicative"), 40, 3.2, 3.1),
    FibreDose("plastic_5", _("plastic macro-fibres, 5 kg/m³ (8 lb/yd³), indicative"), 5, 1.2, 1.4),
)


def service_residual(residual_1):
    """Give the stress across a fine crack, f_Fts = 0.45 f_R1.

    Parameters
    ----------
    residual_1 : float or ndarray
        Residual flexural strength f_R1 by EN 14651, 0 or more [MPa].

    Returns
    -------
    float or ndarray
        Residual tensile strength under service load [MPa].

    Notes
    -----
    MC2010 5.6.4, from memory. Mean values go with crack widths, characteristic ones with design.
    """
    return 0.45 * residual_1


def residual_at(residual_1, residual_3, opening):
    """Give the stress across a crack that has opened far, by the linear model.

    Parameters
    ----------
    residual_1 : float or ndarray
        Residual flexural strength f_R1 by EN 14651, 0 or more [MPa].
    residual_3 : float or ndarray
        Residual flexural strength f_R3 by EN 14651, 0 or more [MPa].
    opening : float or ndarray
        Crack opening w_u, 0 to 2.5 [mm].

    Returns
    -------
    float or ndarray
        Residual tensile strength f_Ftu, never negative [MPa]; it equals the service value at an
        opening of 0.

    Raises
    ------
    ValueError
        If the opening is out of range: beyond 2.5 mm the fibres were not tested.

    Notes
    -----
    MC2010 5.6.4, from memory: f_Ftu = f_Fts - (w_u/2.5)(f_Fts - 0.5 f_R3 + 0.2 f_R1) >= 0.
    """
    if not np.all((np.asarray(opening) >= 0.0) & (np.asarray(opening) <= _OPENING_3)):
        raise ValueError(_("A crack bridged by fibres may open by 0 to 2.5 mm."))
    f_Fts = service_residual(residual_1)
    lost = f_Fts - 0.5 * residual_3 + 0.2 * residual_1
    return np.maximum(f_Fts - opening / _OPENING_3 * lost, 0.0)


def rigid_residual(residual_3):
    """Give the one stress of the rigid-plastic model, f_R3/3, whatever the opening.

    Parameters
    ----------
    residual_3 : float or ndarray
        Residual flexural strength f_R3 by EN 14651, 0 or more [MPa].

    Returns
    -------
    float or ndarray
        Residual tensile strength f_Ftu [MPa].

    Notes
    -----
    MC2010 5.6.4, from memory.
    """
    return residual_3 / 3.0


def structural(residual_1, residual_3, proportionality):
    """Tell whether fibres may stand in for some of the bars.

    Parameters
    ----------
    residual_1 : float
        Characteristic residual flexural strength f_R1k, 0 or more [MPa].
    residual_3 : float
        Characteristic residual flexural strength f_R3k, 0 or more [MPa].
    proportionality : float
        Characteristic flexural strength at the limit of proportionality f_Lk, above 0 [MPa].

    Returns
    -------
    bool
        True where f_R1k/f_Lk > 0.4 and f_R3k/f_R1k > 0.5.

    Notes
    -----
    MC2010 5.6.3, from memory.
    """
    starts = residual_1 > _LEAST_START * proportionality
    return bool(starts and residual_3 > _LEAST_LATER * residual_1)
