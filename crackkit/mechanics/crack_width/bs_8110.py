"""BS 8110: the width halfway between two bars, for buildings."""

from crackkit.mechanics.crack_width.bs_8007 import british_width
from crackkit.mechanics.crack_width.result import CrackWidth
from crackkit.mechanics.crack_zone import CrackZone

_RULE = ("bs_8110", "BS 8110", "BS8110-2-1985", "3.8.3")


def bs_8110(zone: CrackZone) -> CrackWidth:
    """Give the crack width midway between two bars; about one crack in five is wider.

    The section is to be worked out with half the modulus of the concrete. In bending the form is
    that of BS 8007 for 0.2 mm; direct tension, which this standard leaves as a limiting case,
    borrows the strain of BS 8007.

    Parameters
    ----------
    zone : CrackZone
        The cracked zone.

    Returns
    -------
    CrackWidth
        Width [mm], strain [-]; spacing is None.

    Notes
    -----
    BS8110-2-1985 3.8.3, Eqs. (12) and (13).
    """
    return british_width(zone, 1.0 / 3.0, _RULE)
