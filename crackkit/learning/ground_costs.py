"""What a slab on the ground costs."""

import math

from crackkit.learning import costs
from crackkit.learning.costs import Cost
from crackkit.learning.prices import USUAL, PriceList

DOWEL_EVERY = 300.0  # mm, about a foot; common practice
AROUND = 2000.0  # mm of strip around a column of half a metre


def ground_cost(it, prices: PriceList = USUAL, found=None) -> Cost:
    """Give the bill of a slab on the ground.

    Parameters
    ----------
    it : GroundSlab
    prices : PriceList
    found : GroundSlab, optional
        The slab as it was found: where it was held and `it` is held less, a strip of soft board
        is paid for. Without it nothing is to be set free.
    """
    area = costs.square_metres(it.length, it.width)
    return costs.cost(
        costs.concrete(prices, area, it.thickness),
        costs.base_course(prices, area, it.base),
        costs.sheets(prices, area, it.base),
        costs.strips(prices, strip_length(it, found or it)),
        costs.bars(prices, it.mass * area),
        costs.saw_cuts(prices, joint_length(it)),
        costs.dowels(prices, dowel_number(it)),
        costs.moist_curing(prices, area, it.curing),
    )


def strip_length(it, found) -> float:
    """Length of the strips that set it free where it was held [mm]."""
    edges = (
        ("left", it.width),
        ("right", it.width),
        ("sides", 2 * it.length),
        ("middle", AROUND),
    )
    return sum(edge for name, edge in edges if getattr(it, name) < getattr(found, name))


def joint_length(it) -> float:
    """Length of all joints, along and across [mm]."""
    return len(it.joint_places) * it.width + len(it.joint_places_across) * it.length


def dowel_number(it) -> float:
    """Dowels in all its joints."""
    if it.dowels == "none" or not it.jointed:
        return 0.0
    return float(math.ceil(joint_length(it) / DOWEL_EVERY))
