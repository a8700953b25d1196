"""What a slab lies on, and how hard that holds it back when it wants to grow shorter.

The base pulls the more, the farther the slab slips, until it slides. The coefficients are of
resistance, not of sliding friction alone: an uneven base locks into the slab. They scatter, with
weather and wear, by half and more.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _

_GRAVITY = 9.80665
_MOVED = 1.5
_MOVED_NOTE = _("Full resistance at 1.5 mm of slip: Kelley (1939), from memory.")
_STIFF_NOTE = _("Full resistance at 0.5 mm of slip: tests on stabilised bases, from memory.")
_SHEET_NOTE = _("Full resistance at 0.5 mm of slip: common practice.")


@dataclass(frozen=True)
class Base:
    """What lies under a slab.

    Parameters
    ----------
    key : str
        Short name.
    label : str
        Name in plain words.
    coefficient : float
        Greatest shear over the weight above it, mu [-].
    slip : float
        Slip s0 from which the slab slides [mm].
    source : str
        Key in the bibliography.
    where : str
        Where in the source.
    note : str
        What a reader must know.
    """

    key: str
    label: str
    coefficient: float
    slip: float
    source: str
    where: str
    note: str


def _road(key, label, coefficient, remembered=True, slip=_MOVED, note=_MOVED_NOTE):
    where = "Part II, table of friction factors"
    where += ", from memory" if remembered else ""
    return Base(key, label, coefficient, slip, "AASHTO1993", where, note)


BASES = (
    Base(
        "two_sheets",
        _("two plastic sheets, 15 mil (0.38 mm) or more in all, on an even base"),
        0.2,
        0.5,
        "CONCRETE-SOCIETY",
        "plastic sheet between slab and base, after Knapton 2003",
        _("The source says one sheet; here it stands for sheet sliding on sheet (our choice).")
        + " "
        + _SHEET_NOTE,
    ),
    Base(
        "one_sheet",
        _("one plastic sheet"),
        0.75,
        0.5,
        "PTI-SLAB",
        "coefficient for polyethylene, from memory",
        _("The Concrete Society gives 0.2; the larger value is taken, for bases are uneven.")
        + " "
        + _SHEET_NOTE,
    ),
    _road("subgrade", _("natural ground"), 0.9),
    Base(
        "sand",
        _("sand"),
        1.0,
        _MOVED,
        "PTI-SLAB",
        "coefficient for sand, from memory",
        _MOVED_NOTE,
    ),
    _road("sandstone", _("sandstone"), 1.2),
    _road("gravel", _("river gravel"), 1.5),
    _road("crushed_stone", _("crushed stone"), 1.5),
    _road(
        "stabilised",
        _("ground stabilised with lime, asphalt or cement"),
        1.8,
        remembered=False,
        slip=0.5,
        note=_STIFF_NOTE,
    ),
    _road(
        "surface_treatment",
        _("asphalt surface treatment"),
        2.2,
        remembered=False,
        slip=0.5,
        note=_STIFF_NOTE,
    ),
)
"""Bases in the order of their coefficients [-]."""


def base(key):
    """Give the base of a name.

    Parameters
    ----------
    key : str
        Its short name.

    Returns
    -------
    Base
        Coefficient [-] and slip [mm], and where they come from.

    Raises
    ------
    ValueError
        Where the name is unknown.
    """
    for each in BASES:
        if each.key == key:
            return each
    raise ValueError(_("No base is known as {!r}.").format(key))


def slab_weight(thickness, density=2400.0):
    """Weight of a slab on each square millimetre of its base.

    Parameters
    ----------
    thickness : float or array_like
        Thickness h [mm], above 0.
    density : float
        Density of the concrete with its bars [kg/m3]; 2400 is common practice.

    Returns
    -------
    float or numpy.ndarray
        Weight gamma h [MPa].
    """
    return density * _GRAVITY * 1e-9 * thickness


def base_shear(slip, weight, coefficient, full_slip):
    """Shear between slab and base: it grows with the slip, then the slab slides.

    Parameters
    ----------
    slip : float or array_like
        Slip s of the slab [mm], of either sign.
    weight : float
        Weight of the slab and of what lies on it [MPa], 0 or more.
    coefficient : float
        Greatest shear over weight mu [-], 0 or more.
    full_slip : float
        Slip s0 from which the slab slides [mm], above 0.

    Returns
    -------
    float or numpy.ndarray
        Shear tau = mu w min(s/s0, 1), of the sign of the slip [MPa].
    """
    share = np.clip(np.divide(slip, full_slip), -1.0, 1.0)
    return coefficient * weight * share
