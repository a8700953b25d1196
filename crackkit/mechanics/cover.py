"""Least concrete cover for durability."""

from dataclasses import dataclass

# ACI 318-19 Table 20.5.1.3.1, beams cast in place, from memory: 1.5 in over primary steel when
# not exposed; 2 in (#6 and larger) or 1.5 in (#5 and smaller) when exposed to weather or ground.
_ACI_DRY, _ACI_WEATHER_THICK, _ACI_WEATHER_THIN = 38.1, 50.8, 38.1
_NUMBER_SIX = 19.05

# EN 1992-1-1:2004 Table 4.4N, structural class S4, c_min,dur, from memory: XC1 15, XC3 25,
# XD3 45, XS3 45, XC4 30 mm.
_EN = {"dry": 15.0, "moist": 25.0, "salt": 45.0, "sea": 45.0, "leak_tight": 30.0}
_EN_CLASS = {"dry": "XC1", "moist": "XC3", "salt": "XD3", "sea": "XS3", "leak_tight": "XC4"}
_DEVIATION = 10.0  # EN 1992-1-1 4.4.1.3: allowance for deviation, recommended value


@dataclass(frozen=True)
class LeastCover:
    """The cover a code asks for, and where it says so.

    Parameters
    ----------
    cover : float
        Least clear concrete over the bar [mm].
    clause : str
        Code and clause.
    """

    cover: float
    clause: str


def least_cover(code: str, exposure: str, diameter: float) -> LeastCover:
    """Give the least cover to the main bars of a beam.

    Parameters
    ----------
    code : str
        ``"ACI"`` or ``"EN"``.
    exposure : str
        Key of the place and use, as in `crack_limits`.
    diameter : float
        Bar diameter [mm].

    Returns
    -------
    LeastCover
        ACI 318-19 20.5.1.3.1; EN 1992-1-1:2004 4.4.1 (minimum plus 10 mm for deviation).
    """
    if code == "EN":
        least = max(_EN[exposure], diameter) + _DEVIATION
        return LeastCover(least, f"EN 1992-1-1 4.4.1 ({_EN_CLASS[exposure]})")
    if exposure == "dry":
        return LeastCover(_ACI_DRY, "ACI 318-19 20.5.1.3")
    thick = diameter > _NUMBER_SIX - 0.5
    return LeastCover(_ACI_WEATHER_THICK if thick else _ACI_WEATHER_THIN, "ACI 318-19 20.5.1.3")
