"""What a floor costs, item by item. One function for each kind of item; a structure lists its own.

Amounts are those that are bought: kg, m, m2, m3, pieces.
"""

from dataclasses import dataclass

from crackkit.learning.prices import PriceList, unit_price

SHEETS = {"one_sheet": 1, "two_sheets": 2}  # sheets of plastic on an even base


@dataclass(frozen=True)
class Item:
    """One line of a bill.

    Attributes
    ----------
    key : str
        Name of its price.
    amount : float
        How much of it [SI units of the measure of the price].
    price : float
        [money per SI unit].
    """

    key: str
    amount: float
    price: float

    @property
    def label(self) -> str:
        """What it is, for the reader."""
        return unit_price(self.key).label

    @property
    def sum(self) -> float:
        """[money]."""
        return self.amount * self.price


@dataclass(frozen=True)
class Cost:
    """A bill: its items, those of no amount left out."""

    items: tuple[Item, ...]

    @property
    def total(self) -> float:
        """Sum of all items [money]."""
        return sum(item.sum for item in self.items)

    def amount(self, key: str) -> float:
        """How much of a thing it holds [SI units of its measure]; 0 of none."""
        return sum(item.amount for item in self.items if item.key == key)

    def of(self, key: str) -> float:
        """What a thing costs in it [money]; 0 of none."""
        return sum(item.sum for item in self.items if item.key == key)


def cost(*items: Item) -> Cost:
    """Put items together to a bill."""
    return Cost(tuple(item for item in items if item.amount > 0))


def square_metres(length: float, width: float) -> float:
    """Area [m2] of a floor [mm]."""
    return length * width * 1e-6


def concrete(prices: PriceList, area: float, thickness: float) -> Item:
    """Concrete on an area [m2] of a thickness [mm]."""
    return _item(prices, "concrete", area * thickness / 1000.0)


def base_course(prices: PriceList, area: float, base: str) -> Item:
    """What the floor lies on, by its key in `base_friction`, under an area [m2]."""
    return _item(prices, "even" if base in SHEETS else base, area)


def sheets(prices: PriceList, area: float, base: str) -> Item:
    """Sheets of plastic under an area [m2], by the key of the base; none on most."""
    return _item(prices, "sheet", SHEETS.get(base, 0) * area)


def bars(prices: PriceList, mass: float) -> Item:
    """Bars of a mass [kg]."""
    return _item(prices, "bars", mass)


def saw_cuts(prices: PriceList, length: float) -> Item:
    """Saw cuts of a length in all [mm]."""
    return _item(prices, "saw", length / 1000.0)


def dowels(prices: PriceList, number: float) -> Item:
    """So many dowels [-]."""
    return _item(prices, "dowel", number)


def strips(prices: PriceList, length: float) -> Item:
    """Strips of soft board between floor and walls or columns, of a length in all [mm]."""
    return _item(prices, "strip", length / 1000.0)


def moist_curing(prices: PriceList, area: float, days: float) -> Item:
    """An area [m2] that is kept moist for so many days."""
    return _item(prices, "moist", area * days)


def _item(prices: PriceList, key: str, amount: float) -> Item:
    return Item(key, amount, prices.of(key))
