"""How long the concrete over the bars keeps rust from beginning."""

from crackkit.mechanics.carbonation import carbonation_depth, water_cement_of, years_to_reach
from crackkit.mechanics.concrete import mean_strength_en
from crackkit.words import _

# What the face has to stand: mean humidity [%], chance that rain strikes it [-], wet days in a
# year. Common practice for a mild, rainy climate.
AIRS = {
    "inside": (65.0, 0.0, 0.0),
    "roofed": (80.0, 0.0, 0.0),
    "rained": (80.0, 0.5, 120.0),
}
AIR_CHOICES = (
    ("inside", _("inside, dry air")),
    ("roofed", _("outside, under a roof")),
    ("rained", _("outside, rained upon")),
)


def years_until_rust(cover: float, strength: float, air: str, curing_days: float) -> float:
    """Give the years until the mean carbonation depth is that of the bars; may be infinite.

    Parameters
    ----------
    cover : float
        Clear concrete over the outermost bars [mm].
    strength : float
        Cylinder strength [MPa]; it hints at the water in the mix.
    air : str
        Key of `AIRS`.
    curing_days : float
        How long the face was kept moist [days].
    """
    humidity, share, wet = AIRS[air]
    mix = water_cement_of(mean_strength_en(strength))
    years = years_to_reach(
        max(cover, 0.0), mix, humidity, curing_days, rain_share=share, wet_days=wet
    )
    return float(years)


def carbonated_depth(years: float, strength: float, air: str, curing_days: float) -> float:
    """Give the mean depth that the air has worked in by an age [mm].

    Parameters
    ----------
    years : float
        Age [years].
    strength, air, curing_days
        As for `years_until_rust`.
    """
    humidity, share, wet = AIRS[air]
    mix = water_cement_of(mean_strength_en(strength))
    depth = carbonation_depth(years, mix, humidity, curing_days, rain_share=share, wet_days=wet)
    return float(depth)
