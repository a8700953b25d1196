"""How much concrete would shorten if nothing held it, told by its causes."""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True)
class Shrinkage:
    """Strain of concrete that is free to move; shortening is positive.

    Parameters
    ----------
    drying : float or numpy.ndarray
        Part that comes of drying, 0 before the end of curing [-]; negative where concrete swells.
    basic : float or numpy.ndarray
        Part that comes without drying, as cement binds the water of the mix (autogenous) [-].
        A code that does not tell the two apart gives 0 here.
    """

    drying: float | np.ndarray
    basic: float | np.ndarray

    @property
    def total(self):
        """Both parts together [-]."""
        return self.drying + self.basic


def days_dried(ages, curing_days):
    """Days since curing ended, 0 before.

    Parameters
    ----------
    ages : float or array_like
        Days since casting [days].
    curing_days : float or array_like
        Age at the end of curing [days].

    Returns
    -------
    float or numpy.ndarray
        Days for which the concrete has dried [days].
    """
    return np.maximum(np.asarray(ages, dtype=float) - curing_days, 0.0)[()]
