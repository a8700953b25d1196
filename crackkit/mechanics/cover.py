"""Least concrete cover for durability."""

from dataclasses import dataclass

from crackkit.words import _

# ACI 318-19 Table 20.5.1.3.1, cast in place, from memory: not exposed 1.5 in over the steel of
# beams, 3/4 in over that of slabs (1.5 in over #14 and #18); exposed to weather or ground 2 in
# (#6 and larger) or 1.5 in (#5 and smaller).
_ACI_DRY = {"beam": 38.1, "slab": 19.05}
_ACI_DRY_THICK, _ACI_WEATHER_THICK, _ACI_WEATHER_THIN = 38.1, 50.8, 38.1
_NUMBER_SIX, _NUMBER_FOURTEEN = 19.05, 43.0

# EN 1992-1-1:2004 Table 4.4N, structural class S4, c_min,dur, from memory: XC1 15, XC3 25,
# XD3 45, XS3 45, XC4 30 mm. Slabs are one class lower (Table 4.3N, from memory): 5 mm less.
_EN = {"dry": 15.0, "moist": 25.0, "salt": 45.0, "sea": 45.0, "leak_tight": 30.0}
_EN_LESS = {"beam": 0.0, "slab": 5.0}
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


def least_cover(code: str, exposure: str, diameter: float, kind: str = "beam") -> LeastCover:
    """Give the least cover to the main bars.

    Parameters
    ----------
    code : str
        ``"ACI"`` or ``"EN"``.
    exposure : str
        Key of the place and use, as in `crack_limits`.
    diameter : float
        Bar diameter [mm].
    kind : str
        ``"beam"`` or ``"slab"``.

    Returns
    -------
    LeastCover
        ACI 318-19 20.5.1.3.1; EN 1992-1-1:2004 4.4.1 (minimum plus 10 mm for deviation).

    Raises
    ------
    ValueError
        If the kind is unknown.
    """
    if kind not in _ACI_DRY:
        raise ValueError(_("Cover is asked for over a beam or a slab, not {!r}.").format(kind))
    if code == "EN":
        least = max(_EN[exposure] - _EN_LESS[kind], diameter) + _DEVIATION
        return LeastCover(least, f"EN 1992-1-1 4.4.1 ({_EN_CLASS[exposure]})")
    if exposure == "dry":
        least = _ACI_DRY_THICK if diameter > _NUMBER_FOURTEEN else _ACI_DRY[kind]
        return LeastCover(least, "ACI 318-19 20.5.1.3")
    thick = diameter > _NUMBER_SIX - 0.5
    return LeastCover(_ACI_WEATHER_THICK if thick else _ACI_WEATHER_THIN, "ACI 318-19 20.5.1.3")
