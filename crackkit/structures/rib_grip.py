"""How ribbed bars of a size grip their concrete, as long as nobody says how their ribs are."""

from crackkit.mechanics.bond import ribbed_bond
from crackkit.mechanics.concrete import mean_strength_en

RIB_SHARE = 0.5  # clear distance of the ribs over the diameter of the bar; common practice
_LEAST = {"good": 2.0, "other": 3.6}  # s2 of the law [mm], see `ribbed_bond`


def rib_grip(strength: float, diameter: float, bond: str = "good"):
    """Give the law of bond of Model Code 2010 for ribbed bars.

    Parameters
    ----------
    strength : float
        Cylinder strength of the concrete [MPa].
    diameter : float
        Of the bars [mm].
    bond : str
        ``"good"`` or ``"other"``.
    """
    ribs = max(RIB_SHARE * diameter, _LEAST[bond])
    return ribbed_bond(mean_strength_en(strength), ribs, bond)
