"""What a floor of panels that curl costs, all panels together."""

import math

from crackkit.learning import costs
from crackkit.learning.costs import Cost, Item
from crackkit.learning.ground_costs import DOWEL_EVERY
from crackkit.learning.prices import USUAL, PriceList

AS_FOUND = 3  # panels each way: the floor is so many times as long as the panel that was found
# Dowels a foot apart hand on about so much; fewer of them less, in step. Common practice.
FULL_TRANSFER = 0.8


def curled_cost(it, prices: PriceList = USUAL, found=None) -> Cost:
    """Give the bill of the whole floor.

    Parameters
    ----------
    it : CurledSlab
        One of its panels.
    prices : PriceList
    found : CurledSlab, optional
        A panel as it was found: it tells how large the floor is. By default `it`.
    """
    length, width = whole_floor(found or it)
    area, cut = costs.square_metres(length, width), joint_length(it, length, width)
    return costs.cost(
        costs.concrete(prices, area, it.thickness),
        *_below(prices, area, it.under),
        costs.bars(prices, it.mass * area),
        costs.saw_cuts(prices, cut),
        costs.dowels(prices, dowel_number(it, cut)),
        costs.moist_curing(prices, area, it.curing),
    )


def whole_floor(found) -> tuple[float, float]:
    """Length and width of the floor [mm] whose panels were found so long and wide."""
    return AS_FOUND * found.length, AS_FOUND * found.width


def panel_number(side: float, panel: float) -> int:
    """Equal panels along a side [mm] that are no longer than a panel [mm]."""
    return math.ceil(side / panel - 1e-9)


def joint_length(it, length: float, width: float) -> float:
    """Length of all joints [mm] of a floor [mm] with panels no larger than this one."""
    across = (panel_number(length, it.length) - 1) * width
    return across + (panel_number(width, it.width) - 1) * length


def dowel_number(it, cut: float) -> float:
    """Dowels in joints of a length in all [mm], for what they hand on."""
    return float(math.ceil(cut / DOWEL_EVERY * it.transfer / FULL_TRANSFER))


def _below(prices: PriceList, area: float, under: str) -> tuple[Item, ...]:
    """What lies below it, by its key in `curled_slab.UNDER`."""
    sheet = (costs.base_course(prices, area, "one_sheet"), costs.sheets(prices, area, "one_sheet"))
    return {
        "sheet": sheet,
        "blotter": (*sheet, costs.base_course(prices, area, "sand")),
        "damp": (costs.base_course(prices, area, "subgrade"),),
        "open": (costs.base_course(prices, area, "gravel"),),
    }[under]
