"""A task: make a structure hold, within a budget. Whatever the mechanics accepts is right."""

import math
from collections.abc import Callable
from dataclasses import dataclass, replace

from crackkit.learning.budgets import MoneyBudget, SteelBudget
from crackkit.learning.check import Check, givens
from crackkit.learning.goals import Goal
from crackkit.learning.prices import PriceList
from crackkit.structures.fields import inputs

# A member must carry more than the load of every day before it gives way. Load factors of 1.2 to
# 1.6 over a strength factor of 0.9 (ACI 318-19 5.3.1, 21.2.1) come to about 1.6; common practice.
RESERVE = 1.6


def _whole(_structure) -> float:
    return 1.0


@dataclass(frozen=True)
class HoldTask:
    """What is given, what may be changed, and what must be reached.

    Attributes
    ----------
    key : str
        Name of the task in the record of a learner's work.
    title, story : str
        What it is about.
    structure : object
        The structure as the learner finds it.
    free : tuple of str
        Paths of the inputs that may be changed.
    most_steel : float
        Budget: most mass of the bars, stirrups apart [kg].
    asks : tuple of Goal
        What must be reached, in the order in which it is told.
    reserve : float
        How many times the load it must carry before the bars give way [-].
    share : callable
        From a solution to the share of the budget that is left for bars [-], where it buys
        something else as well.
    money : MoneyBudget, optional
        Where the budget is one of money; the bars are then not weighed.
    """

    key: str
    title: str
    story: str
    structure: object
    free: tuple[str, ...]
    most_steel: float
    asks: tuple[Goal, ...]
    reserve: float = RESERVE
    share: Callable = _whole
    money: MoneyBudget | None = None

    @property
    def budget(self) -> MoneyBudget | SteelBudget:
        """What may be spent, of money or of bars."""
        return self.money or SteelBudget(self.most_steel, self.share)

    def at_prices(self, prices: PriceList) -> "HoldTask":
        """Give the task at other prices; one whose bars are weighed stays as it is."""
        return replace(self, money=self.money.at(prices)) if self.money else self

    def most_bars(self, structure) -> float:
        """Budget that is left for bars [kg] in a solution."""
        return self.most_steel * self.share(structure)

    @property
    def locked(self) -> tuple[str, ...]:
        """Paths of the inputs that are given."""
        return tuple(item.path for item in inputs(self.structure) if item.path not in self.free)

    def goals(self, system: str = "SI") -> tuple[str, ...]:
        """List what must be reached, in the reader's units, one line each."""
        return tuple(goal.said(self, system) for goal in self.asks)

    def assess(self, structure, outcome, system: str = "SI") -> tuple[Check, ...]:
        """Hold a solution against everything that must be reached.

        Parameters
        ----------
        structure : object
            The learner's structure.
        outcome : Outcome
            What mechanics says of it.
        system : str
            Units of the answers, ``"SI"`` or ``"US"``.

        Returns
        -------
        tuple of Check
            The solution is right when all are ok.
        """
        asked = (goal.check(self, structure, outcome, system) for goal in self.asks)
        return (*givens(self, structure), *asked)

    def score(self, checks, outcome) -> float:
        """Rate a solution: below 1 the share that is reached [-], above 1 by what is spared."""
        if not all(check.ok for check in checks):
            return sum(check.ok for check in checks) / len(checks)
        return 2.0 - self.spent_share(outcome.structure, outcome)

    def spent_share(self, structure, outcome) -> float:
        """Share of the budget that a solution spends [-]; of no budget nothing, or without end."""
        spent, most = self.budget.spent(structure, outcome), self.budget.most(structure)
        if most == 0:
            return math.inf if spent else 0.0
        return spent / most
