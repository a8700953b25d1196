"""Where a crack comes to rest under a load, found without following all of its path.

While little of the line is torn its path is followed: few unknowns, little time. Where the load
falls far the crack has leaped, and its rest is sought from the other side: from a line that is
torn all along and lets itself be pulled together.
"""

from dataclasses import replace

import numpy as np

from crackkit.mechanics.crack_equation import left_over
from crackkit.mechanics.crack_growth import Aim, Opened, at_load, at_rest, growth, unopened

_HARDLY = 0.2  # openings G_F/f_t: so little is torn that no other state is near
_NARROW, _WIDE = 4.0, 12.0  # openings G_F/f_t to which the path is followed closely, coarsely
_BEYOND = 1.6  # times its greatest load: what is not borne then is not borne a little later
_FALLEN = 0.8  # share of its greatest load below which a crack has leaped
_RISING = 0.97  # share of its greatest load above which it may yet rise
# times its mean opening, that of the next state; in turn
_WIDER = (1.15, 1.05, 1.35, 1.02, 1.7, 2.2)
_AHEAD = (1.0, 2.0)  # times a state, from where one that bears more is sought
_LARGE = 350  # unknowns from which a whole path takes too long
_NOTHING = 1e-9  # mm of movement under the whole load
_WALKED, _CLOSER, _CLOSE = 30, 8, 1e-4
_APART, _EASED = 1.0, (3, 4, 6)  # mm, opening of a line torn all along; rounds by secants


def quick_at_load(crack, load):
    """The crack once the load has grown to a value for the first time; as `at_load`, but quicker.

    Where a crack stops more than once on its way, a state farther on may be given.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    load : float
        Load [-], above 0.

    Returns
    -------
    Opened
        At that load [mm], to one part in 10 000 of it; where no rest is found in time, what
        `eased_at_load` gives.

    Raises
    ------
    ArithmeticError
        As `at_load`.
    """
    if abs(crack.responses[1]).max() * load < _NOTHING:
        return replace(unopened(crack), load=load)
    found = _hardly_torn(crack, load)
    if found is not None:
        return found
    if not crack.share.any():  # a joint: there is no strength that would have to be followed
        return from_torn(crack, load) or eased_at_load(crack, load)
    steps = growth(crack, load=load, widest=_NARROW * crack.law.scale)
    if len(steps) > 1 and steps[-1].load >= load:
        return _between(crack, load, *steps[-2:])
    found, most = None, max(each.load for each in steps)
    if load < _BEYOND * most:
        found = _walked(crack, load, steps[-1], most)
    found = found or from_torn(crack, load)
    if found is None and len(crack.compliance) < _LARGE:
        found = at_load(crack, load)
    return found or eased_at_load(crack, load)


def _hardly_torn(crack, load):
    """The state at the load, if the line hardly lets go there, but for what is cut; else None."""
    found = at_rest(crack, _aim(crack, load), unopened(crack))[0]
    if found is None:
        return None
    widest = found.q[: crack.count][crack.share > 0.0].max(initial=0.0)
    return found if widest < _HARDLY * crack.law.scale else None


def _walked(crack, load, state, most):
    """The state at the load, if the crack comes to it before it leaps; else None."""
    for _step in range(_WALKED):
        wider = _opened(crack, state)
        if wider is None:
            return _straight(crack, load, state) if state.load > _RISING * most else None
        if wider.load < _FALLEN * most:
            return None
        if wider.load >= load:
            return _between(crack, load, state, wider)
        if wider.q[: crack.count].max() > _WIDE * crack.law.scale:
            return None
        state, most = wider, max(most, wider.load)
    return None


def _straight(crack, load, state):
    """The state at the load, sought from wider ones than a state that bears less."""
    for factor in _AHEAD:
        start = Opened(load, factor * state.q, state.greatest)
        found = at_rest(crack, _aim(crack, load), start)[0]
        if found is not None and crack.mean_row @ found.q > crack.mean_row @ state.q:
            return found
    return None


def _opened(crack, state):
    """A wider state, whatever the load does; wider still where the line lets go piece by piece."""
    row = crack.mean_row
    for factor in _WIDER:
        found = at_rest(crack, Aim(row, 0.0, factor * (row @ state.q)), state)[0]
        if found is not None:
            return found
    return None


def _between(crack, load, before, after):
    """Close in on a load that lies between two states."""
    row = crack.mean_row
    low, high = (float(row @ each.q) for each in (before, after))
    least, most, found = before.load, after.load, after
    for k in range(_CLOSER):
        # straight at first, which is exact as long as nothing is torn
        share = float(np.clip((load - least) / (most - least), 0.05 * (k > 0), 0.95))
        state = at_rest(crack, Aim(row, 0.0, low + share * (high - low)), before)[0]
        if state is None:
            break
        found = state
        if abs(state.load - load) < _CLOSE * load:
            break
        if state.load < load:
            low, least = float(row @ state.q), state.load
        else:
            high, most = float(row @ state.q), state.load
    return found


def from_torn(crack, load):
    """The state to which a line comes home that is torn all along.

    Newton's method would overshoot from so far off. At first the stress is taken as it were if it
    grew straight with the opening from none (secants), which always pulls the line together a bit.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    load : float
        Load [-].

    Returns
    -------
    Opened or None
        At that load [mm]; None if none is found.
    """
    q = _torn(crack)
    for rounds in _EASED:
        for _round in range(rounds):
            q = _by_secants(crack, load, q)
        start = Opened(load, q, np.zeros(crack.count))
        found = at_rest(crack, _aim(crack, load), start)[0]
        if found is not None:
            return found
    return None


def eased_at_load(crack, load, rounds=24):
    """A line torn all along that has been pulled together, close to its rest: a little too wide.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    load : float
        Load [-].
    rounds : int
        Rounds in which it is pulled together [-].

    Returns
    -------
    Opened
        At that load [mm]; see `out_of_balance` for how far from balance.
    """
    q = _torn(crack)
    for _round in range(rounds):
        q = _by_secants(crack, load, q)
    return Opened(load, q, np.maximum(q[: crack.count], 0.0))


def out_of_balance(crack, opened):
    """How far a crack is from balance.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    opened : Opened
        Where it is thought to rest.

    Returns
    -------
    float
        Greatest opening, sliding or elongation that its forces do not explain [mm].
    """
    left, _answer = left_over(crack, opened.q, opened.load, opened.greatest)
    return float(abs(left).max())


def _torn(crack):
    q = np.full(len(crack.compliance), _APART)
    q[crack.count : 2 * crack.count] = 0.0
    return q


def _by_secants(crack, load, q):
    """Where the line comes to if it answers as softly everywhere as it does now."""
    left, answer = left_over(crack, q, load, np.zeros(crack.count))
    return q + answer.stiffer(0.0).move(-left)


def _aim(crack, load):
    return Aim(0.0 * crack.mean_row, 1.0, load)
