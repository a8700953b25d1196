"""What a task lets people spend: mass of bars, or money. Both answer the same questions."""

import math
from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import ClassVar

from crackkit.learning.costs import Cost, Item
from crackkit.learning.price_words import shown_money
from crackkit.learning.prices import USUAL, PriceList
from crackkit.units import shown
from crackkit.words import _


@dataclass(frozen=True)
class SteelBudget:
    """A budget of bars.

    Attributes
    ----------
    limit : float
        Most mass of the bars [kg].
    share : callable
        From a solution to the share of it that is left for bars [-].
    """

    limit: float
    share: Callable

    name: ClassVar[str] = "steel_mass"
    words: ClassVar[dict[str, str]] = {
        "yours": _("Your bars: {spent} of {most}"),
        "best": _("Best so far: everything reached with {spent} of bars."),
        "check": _("Check my bars"),
        "reached": _("It holds. Your bars do all that is wanted."),
    }

    def spent(self, structure, outcome) -> float:
        """Mass of the bars of a solution [kg]."""
        return outcome.steel_mass

    def most(self, structure) -> float:
        """What is left for bars in a solution [kg]."""
        return self.limit * self.share(structure)

    def shown(self, amount: float, system: str) -> str:
        """Write a mass in the reader's units."""
        return shown(amount, "mass", system)


@dataclass(frozen=True)
class MoneyBudget:
    """A budget of money: no more than an offer that lies on the table.

    It follows the prices: with other prices, or other money, the offer is another one, too.

    Attributes
    ----------
    offer : object
        The structure that somebody else offers.
    found : object
        The structure as the learner finds it.
    bill : callable
        From (structure, prices, found) to a Cost.
    prices : PriceList
        Unit prices.
    """

    offer: object
    found: object
    bill: Callable[..., Cost]
    prices: PriceList = USUAL

    name: ClassVar[str] = "money"
    words: ClassVar[dict[str, str]] = {
        "yours": _("Your floor costs {spent} of {most}"),
        "best": _("Best so far: everything reached for {spent}."),
        "check": _("Check my floor"),
        "reached": _("It holds. Your floor does all that is wanted."),
    }

    def cost(self, structure) -> Cost:
        """Give the bill of a solution."""
        return self.bill(structure, self.prices, self.found)

    def spent(self, structure, _outcome=None) -> float:
        """What a solution costs [money]."""
        return self.cost(structure).total

    def most(self, _structure=None) -> float:
        """What it may cost [money]: the offer, rounded up to two digits."""
        offered = self.cost(self.offer).total
        step = 10.0 ** (math.floor(math.log10(offered)) - 1) if offered else 1.0
        return math.ceil(round(offered / step, 9)) * step

    def shown(self, amount: float, _system: str = "") -> str:
        """Write an amount of money."""
        return shown_money(amount)

    def at(self, prices: PriceList) -> "MoneyBudget":
        """Give the budget at other prices."""
        return replace(self, prices=prices)

    def dearest(self, structure) -> Item:
        """Give the item that costs most beyond what it costs in the offer."""
        offered = self.cost(self.offer)
        return max(self.cost(structure).items, key=lambda item: item.sum - offered.of(item.key))
