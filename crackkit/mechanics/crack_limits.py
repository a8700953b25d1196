"""How wide a crack may be: guides and limits by what the concrete has to stand."""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _


@dataclass(frozen=True)
class Limit:
    """A crack width that is not to be passed.

    Parameters
    ----------
    key : str
        Exposure, the same in every code family.
    label : str
        Exposure in plain words.
    width : float
        Crack width at the surface [mm].
    source : str
        Key in the bibliography.
    clause : str
        Where in the source.
    note : str
        What the source leaves open; empty where nothing is.
    """

    key: str
    label: str
    width: float
    source: str
    clause: str
    note: str = ""


_LABELS = {
    "dry": _("inside, dry"),
    "moist": _("moist air or soil"),
    "salt": _("de-icing salt"),
    "sea": _("sea water or spray"),
    "leak_tight": _("must hold water"),
}

_GUIDE = _("A guide, not a promise: part of the cracks will be wider.")


def _aci(key, width):
    return Limit(key, _LABELS[key], width, "ACI224R-01", "Table 4.1", _GUIDE)


def _en(key, width, note=""):
    return Limit(key, _LABELS[key], width, "EN1992-1-1-2004", "Table 7.1N", note)


LIMITS = {
    "ACI": (
        _aci("dry", 0.41),
        _aci("moist", 0.30),
        _aci("salt", 0.18),
        _aci("sea", 0.15),
        _aci("leak_tight", 0.10),
    ),
    "EN": (
        _en("dry", 0.40, _("Classes X0 and XC1: for looks; where nobody looks it may be wider.")),
        _en("moist", 0.30, _("Classes XC2 to XC4.")),
        _en("salt", 0.30, _("Classes XD1 and XD2; class XD3 asks for measures of its own.")),
        _en("sea", 0.30, _("Classes XS1 to XS3.")),
        Limit(
            "leak_tight",
            _LABELS["leak_tight"],
            0.10,
            "ACI224R-01",
            "Table 4.1",
            _(
                "EN 1992-1-1 gives no value of its own; 0.10 mm is leak-tight practice. "
                "EN 1992-3 asks for 0.05 to 0.20 mm by head of water and thickness of wall."
            ),
        ),
    ),
}


def limit(code, exposure):
    """Give the crack width limit of a code family for an exposure.

    Parameters
    ----------
    code : {"ACI", "EN"}
        Code family.
    exposure : {"dry", "moist", "salt", "sea", "leak_tight"}
        What the concrete has to stand.

    Returns
    -------
    Limit
        The limit, its width in [mm], and where it comes from.

    Raises
    ------
    ValueError
        Where family or exposure is unknown.

    Notes
    -----
    ACI224R-01 Table 4.1; EN1992-1-1-2004 Table 7.1N.
    """
    found = [each for each in LIMITS.get(code, ()) if each.key == exposure]
    if not found:
        raise ValueError(_("No crack width limit is known for {}, {}.").format(code, exposure))
    return found[0]


def tightness_class_1_width(head, thickness):
    """Give the widest crack through a wall that may still be trusted to heal.

    Parameters
    ----------
    head : float or ndarray
        Depth of liquid above the crack, 0 or more [mm].
    thickness : float or ndarray
        Thickness of the wall or slab, above 0 [mm].

    Returns
    -------
    float or ndarray
        Crack width, 0.2 mm up to a head of 5 thicknesses, 0.05 mm from 35 on, in between along
        a straight line [mm].

    Notes
    -----
    EN1992-3-2006 7.3.1(111), tightness class 1.
    """
    return np.interp(np.divide(head, thickness), (5.0, 35.0), (0.20, 0.05))
