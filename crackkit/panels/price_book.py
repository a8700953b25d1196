"""The prices that all tasks of a kernel share, remembered in the learner's record."""

import traitlets

from crackkit.learning.prices import USUAL, PriceList, keep_prices, kept_prices
from crackkit.learning.progress import progress


class PriceBook(traitlets.HasTraits):
    """Unit prices; whoever shows a cost observes them.

    Attributes
    ----------
    prices : PriceList
        The prices that count now; a new list is remembered.
    """

    prices = traitlets.Instance(PriceList, (), allow_none=False)

    def __init__(self):
        super().__init__()
        self._stamp = None
        self.look_again()
        self.observe(self._remember, "prices")

    def look_again(self) -> None:
        """Take what was changed on another page meanwhile; nothing is read if nothing was written.

        A change that could not be written stays.
        """
        store = progress()
        stamp = store.stamp()
        if stamp == self._stamp:
            return
        self._stamp = stamp
        self.prices = kept_prices(store)

    def reset(self) -> None:
        """Go back to the usual prices."""
        self.prices = USUAL

    def _remember(self, change) -> None:
        store = progress()
        if kept_prices(store) != change.new:  # else it is taken from there
            keep_prices(store, change.new)


_shared: list[PriceBook] = []


def price_book() -> PriceBook:
    """Give the prices that all tasks of this kernel share."""
    if not _shared:
        _shared.append(PriceBook())
    return _shared[0]
