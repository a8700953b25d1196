"""What carries a beam: supports that let it turn (pins) and supports that do not (fixed)."""

from dataclasses import dataclass
from math import isfinite

from crackkit.words import _

KINDS = ("pin", "fixed")


@dataclass(frozen=True)
class Support:
    """A support under a beam.

    Parameters
    ----------
    at : float
        Distance from the left end of the beam [mm].
    kind : str
        "pin": carries a vertical force; "fixed": also stops the beam from turning.
    settlement : float
        How far the support has sunk, downward positive [mm].

    Raises
    ------
    ValueError
        If the kind is unknown or a number is not finite.
    """

    at: float
    kind: str = "pin"
    settlement: float = 0.0

    def __post_init__(self):
        if self.kind not in KINDS:
            raise ValueError(_("A support is either 'pin' or 'fixed', not {!r}.").format(self.kind))
        if not (isfinite(self.at) and isfinite(self.settlement)):
            raise ValueError(_("The place and the settlement of a support must be numbers."))


def checked_supports(length: float, supports) -> tuple[Support, ...]:
    """Supports from left to right, once they are known to carry the beam.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order.

    Returns
    -------
    tuple of Support
        The same supports, sorted by their place.

    Raises
    ------
    ValueError
        If the beam could fall or turn over, if a support lies beside the beam, or if two
        supports share one place.
    """
    if not (isfinite(length) and length > 0.0):
        raise ValueError(_("The length of a beam must be a positive number."))
    ordered = tuple(sorted(supports, key=lambda support: support.at))
    if not ordered or (len(ordered) == 1 and ordered[0].kind == "pin"):
        raise ValueError(
            _("The beam is not held: it needs two supports, or one that is fixed against turning.")
        )
    if ordered[0].at < 0.0 or ordered[-1].at > length:
        raise ValueError(_("A support lies outside the beam."))
    if len({support.at for support in ordered}) < len(ordered):
        raise ValueError(_("Two supports lie at the same place."))
    return ordered
