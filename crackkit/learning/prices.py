"""What things cost: indicative unit prices, which a learner may put right for his own place.

They are in plain units of money, of no country. Inside they are per kg, m, m2, m3, and day.
"""

import math
from dataclasses import dataclass
from numbers import Real

from crackkit.units.quantities import FOOT, POUND
from crackkit.words import _

SETTING = "prices"  # name in the record of the learner's work
DEAREST = 1000.0  # times the usual price: some money comes in thousands
_FT = FOOT / 1000.0
_US = {"m": _FT, "m2": _FT**2, "m3": (3 * _FT) ** 3, "kg": POUND}

NOTE = _("Indicative, common practice: prices differ from place to place and from year to year.")


@dataclass(frozen=True)
class Measure:
    """What a price is for.

    Attributes
    ----------
    SI, US : str
        Name of the unit in each system.
    share : float
        SI units in one US unit [-].
    """

    SI: str
    US: str
    share: float = 1.0

    def label(self, system: str) -> str:
        """Name of the unit, such as ``kg`` or ``lb``."""
        return {"SI": self.SI, "US": self.US}[system]

    def size(self, system: str) -> float:
        """SI units in one unit of the system [-]."""
        return self.share if system == "US" else 1.0


MASS = Measure("kg", "lb", _US["kg"])
LENGTH = Measure("m", "ft", _US["m"])
AREA = Measure("m²", "ft²", _US["m2"])
VOLUME = Measure("m³", "yd³", _US["m3"])
SHEET = Measure(_("m² and sheet"), _("ft² and sheet"), _US["m2"])
MOIST = Measure(_("m² and day"), _("ft² and day"), _US["m2"])
PIECE = Measure(_("piece"), _("piece"))


@dataclass(frozen=True)
class UnitPrice:
    """One kind of work or material and its price.

    Attributes
    ----------
    key, label : str
        Name inside, and for the reader.
    measure : Measure
        What the price is for.
    usual : float
        Indicative price [money per SI unit of the measure], common practice.
    """

    key: str
    label: str
    measure: Measure
    usual: float

    @property
    def range(self) -> tuple[float, float]:
        """Least and greatest price that is taken [money per SI unit of the measure]."""
        return 0.0, DEAREST * self.usual


# Rounded from what offers for small floors ask, with labour. Common practice, no source.
UNIT_PRICES = (
    UnitPrice("concrete", _("Concrete, placed and finished"), VOLUME, 140.0),
    UnitPrice("subgrade", _("Natural ground: drained, trimmed, rolled"), AREA, 5.5),
    UnitPrice("sand", _("Bed of sand"), AREA, 5.0),
    UnitPrice("sandstone", _("Sandstone, levelled"), AREA, 9.0),
    UnitPrice("gravel", _("Bed of gravel, rolled"), AREA, 5.0),
    UnitPrice("crushed_stone", _("Bed of crushed stone, rolled"), AREA, 6.0),
    UnitPrice("stabilised", _("Stabilised base"), AREA, 14.0),
    UnitPrice("surface_treatment", _("Asphalt on the base"), AREA, 12.0),
    UnitPrice("even", _("Even base for sheets: gravel, sand on top"), AREA, 6.5),
    UnitPrice("sheet", _("Sheet of plastic, laid"), SHEET, 0.8),
    UnitPrice("bars", _("Bars, placed on chairs"), MASS, 2.2),
    UnitPrice("saw", _("Saw cuts"), LENGTH, 4.0),
    UnitPrice("dowel", _("Dowels"), PIECE, 3.5),
    UnitPrice("strip", _("Strip of soft board, as deep as the floor"), LENGTH, 6.0),
    UnitPrice("moist", _("Kept moist"), MOIST, 0.25),
)
_OF = {each.key: each for each in UNIT_PRICES}


class PriceError(ValueError):
    """A price that cannot be: names what it is for, what was given, and what may be.

    Attributes
    ----------
    key : str
        Which price.
    """

    def __init__(self, key: str, sentence: str):
        self.key = key
        super().__init__(sentence)


def unit_price(key: str) -> UnitPrice:
    """Give the declaration of a price.

    Parameters
    ----------
    key : str
        Its name.

    Raises
    ------
    PriceError
        If there is none of this name.
    """
    if key not in _OF:
        text = _("No price is known as {key!r}; there are {keys}.")
        raise PriceError(key, text.format(key=key, keys=", ".join(_OF)))
    return _OF[key]


@dataclass(frozen=True)
class PriceList:
    """Unit prices: the usual ones, and those that a learner has put right.

    Attributes
    ----------
    own : tuple of (str, float)
        Prices that are not the usual ones [money per SI unit of their measure], by name.

    Raises
    ------
    PriceError
        If a price is not a number, out of its range, or of no known thing.
    """

    own: tuple[tuple[str, float], ...] = ()

    def __post_init__(self):
        for key, value in self.own:
            _check(unit_price(key), value)

    def of(self, key: str) -> float:
        """Give a price [money per SI unit of its measure]."""
        return dict(self.own).get(key, unit_price(key).usual)

    def changed(self, key: str, value: float) -> "PriceList":
        """Give the list with one price changed [money per SI unit of its measure]."""
        kept = dict(self.own) | {key: value}
        own = {k: v for k, v in kept.items() if k not in _OF or v != _OF[k].usual}
        return PriceList(tuple(sorted(own.items())))


USUAL = PriceList()


def _check(priced: UnitPrice, value) -> None:
    low, high = priced.range
    if isinstance(value, bool) or not isinstance(value, Real) or not math.isfinite(value):
        text = _("{label}: {value!r} is not a number.")
        raise PriceError(priced.key, text.format(label=priced.label, value=value))
    if not low <= value <= high:
        text = _("{label}: {value:g} is outside {low:g} to {high:g} for each {unit}.")
        told = {"label": priced.label, "value": value, "low": low, "high": high}
        raise PriceError(priced.key, text.format(unit=priced.measure.SI, **told))


def kept_prices(store) -> PriceList:
    """Give the prices in a learner's record; what cannot be a price there is passed over.

    Parameters
    ----------
    store : Progress
        The record.
    """
    found, prices = store.setting(SETTING), USUAL
    for key, value in found.items() if isinstance(found, dict) else ():
        try:
            prices = prices.changed(key, value)
        except PriceError:
            continue  # written by hand, or by another version
    return prices


def keep_prices(store, prices: PriceList) -> None:
    """Write the prices into a learner's record.

    Parameters
    ----------
    store : Progress
        The record.
    prices : PriceList
        Those that are not the usual ones are written.
    """
    store.set_setting(SETTING, dict(prices.own))
