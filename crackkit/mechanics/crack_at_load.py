"""Where a crack comes to rest under a load, found without following its path to the end.

While little of the line is torn its path is followed, which takes few unknowns and little time.
Where the load is not reached so, the crack has leaped, and its rest is sought from the other
side: from a line that is torn all along and lets itself be pulled together.
"""

import numpy as np

from crackkit.mechanics.crack_growth import Aim, Opened, at_load, at_rest, growth

_NARROW, _HELD = 4.0, 12.0  # openings G_F/f_t up to which it is followed: bare, with bars across
_APART = (1.0, 0.3, 3.0)  # mm, openings of a line torn all along from which it is let go


def quick_at_load(crack, load, follow=True):
    """The crack once the load has grown to a value for the first time; as `at_load`, but quicker.

    Where a crack stops more than once on its way, a state farther on may be given.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    load : float
        Load [-], above 0.
    follow : bool
        Whether its path is followed at first; needless where the load is far beyond what leaves
        the crack narrow.

    Returns
    -------
    Opened
        At that load [mm].

    Raises
    ------
    ArithmeticError
        As `at_load`.
    """
    narrow = _narrow(crack, load) if follow else None
    return narrow or _from_torn(crack, load) or at_load(crack, load)


def _narrow(crack, load):
    """The state at the load, if the path comes to it while the crack is narrow; else None."""
    most = _HELD if crack.bars else _NARROW
    steps = growth(crack, load=load, widest=most * crack.law.scale)
    if steps[-1].load < load or len(steps) < 2:
        return None
    before, after = steps[-2:]
    share = (load - before.load) / (after.load - before.load)
    q = before.q + share * (after.q - before.q)
    found = at_rest(crack, _aim(crack, load), Opened(load, q, before.greatest))[0]
    low, high = crack.mean_row @ before.q, crack.mean_row @ after.q
    if found is None or not low < crack.mean_row @ found.q < high:
        return at_load(crack, load)
    return found


def _from_torn(crack, load):
    """The state to which a line comes home that is torn all along; None if none is found."""
    for apart in _APART:
        q = np.zeros(len(crack.compliance))
        q[: crack.count] = apart
        q[2 * crack.count :] = apart
        found = at_rest(crack, _aim(crack, load), Opened(load, q, np.zeros(crack.count)))[0]
        if found is not None:
            return found
    return None


def _aim(crack, load):
    return Aim(0.0 * crack.mean_row, 1.0, load)
