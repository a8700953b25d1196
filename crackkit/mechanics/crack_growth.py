"""A crack that opens step by step, whatever the load does meanwhile.

The mean opening of the line is what grows. The load follows: it rises while the concrete resists,
and falls where it lets go, which no test that is steered by its load could follow.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.crack_equation import TIGHT, left_over
from crackkit.words import _

_MOST_ROUNDS = 14
_FIRST, _WIDER, _NARROWER, _EASY = 1e-3, 1.6, 0.3, 8
_REACH, _WAIT = 0.3, 12  # of G_F/f_t, what the front opens at first; steps for which it is led
_PATIENCE = 4000  # rounds in all; a line fine enough for its concrete needs 60 to 400
TORN = 20.0  # mm


@dataclass(frozen=True, eq=False)
class Opened:
    """A crack at rest.

    Parameters
    ----------
    load : float
        Growing load [-].
    q : numpy.ndarray
        Opening and sliding of the nodes of the line, elongation of the bars [mm].
    greatest : numpy.ndarray
        Widest opening that there has been [mm], shape (p,).
    """

    load: float
    q: np.ndarray
    greatest: np.ndarray


@dataclass(frozen=True, eq=False)
class Aim:
    """What a step is to reach: row q + weight load = value.

    Parameters
    ----------
    row : numpy.ndarray
        Weights of opening, sliding and elongations [-].
    weight : float
        Weight of the load [any].
    value : float
        What is wanted [any].
    """

    row: np.ndarray
    weight: float
    value: float


def at_rest(crack, aim, start):
    """Bring a crack to rest (Newton's method on the nodes that are no longer whole).

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    aim : Aim
        What is given: the mean opening, or the load.
    start : Opened
        Where it was before; its widest openings are not undone.

    Returns
    -------
    Opened or None
        Where it comes to rest [mm]; None if it does not. Its widest openings are those now.
    rounds : int
        Rounds it took [-].
    """
    q, load, worst = start.q, start.load, [np.inf] * 2
    for rounds in range(_MOST_ROUNDS):
        left, answer = left_over(crack, q, load, start.greatest)
        short = aim.value - aim.row @ q - aim.weight * load
        if abs(left).max() < TIGHT and abs(short) < TIGHT * (abs(aim.weight) + 1.0):
            greatest = np.maximum(start.greatest, q[: crack.count])
            return Opened(load, q, greatest), rounds
        worst.append(abs(left).max())
        if rounds > 4 and abs(worst[-1] - worst[-3]) < 1e-3 * worst[-1]:
            break  # it goes to and fro between two states
        move = answer.move(np.stack([-left, crack.responses[1]], axis=1))
        slack = aim.row @ move[:, 1] + aim.weight
        more = (short - aim.row @ move[:, 0]) / slack
        q, load = q + move[:, 0] + more * move[:, 1], load + more
    return None, _MOST_ROUNDS


def unopened(crack):
    """The crack before anything grows, under the lasting load alone.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.

    Returns
    -------
    Opened
        At load 0 [mm].

    Raises
    ------
    ArithmeticError
        If the lasting load alone tears the body apart.
    """
    nothing = Opened(0.0, np.zeros(len(crack.compliance)), np.zeros(crack.count))
    if not crack.responses[0].any():
        return nothing
    found, _rounds = at_rest(crack, Aim(0.0 * crack.mean_row, 1.0, 0.0), nothing)
    if found is None:
        raise ArithmeticError(_("The body breaks under the load that is there from the start."))
    return found


def growth(crack, widest=np.inf, load=np.inf, mean=np.inf):
    """Open a crack step by step.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    widest : float
        Opening of any place of the line at which to stop [mm].
    load : float
        Load at which to stop [-].
    mean : float
        Mean opening of the line at which to stop [mm].

    Returns
    -------
    list of Opened
        All steps in order, the first one under the lasting load alone. Fewer than asked for where
        no step could be found that comes to rest.

    Raises
    ------
    ValueError
        If nothing says where to stop.
    """
    if not min(widest, load, mean) < np.inf:
        raise ValueError(_("Say at which opening or at which load the crack is to stop."))
    steps, pace = [unopened(crack)], Pace(_FIRST * crack.law.scale)
    here = float(crack.mean_row @ steps[0].q)
    while pace.rounds < _PATIENCE and here < mean - 2.0 * TIGHT:
        pace = replace(pace, stride=min(pace.stride, mean - here))
        found, pace = _wider(crack, steps[-1], pace)
        if found is None:
            break
        steps.append(found)
        here = float(crack.mean_row @ found.q)
        if found.load >= load or found.q[: crack.count].max() >= widest:
            break
    return steps


@dataclass(frozen=True)
class Pace:
    """How far the next steps go.

    Parameters
    ----------
    stride : float
        By how much the mean opening is to grow [mm].
    reach : float
        By how much the front is to open, when it is the front that is led [mm]; 0 for not known.
    wait : int
        Steps for which the front is led [-].
    rounds : int
        Rounds that all steps together have taken [-].
    """

    stride: float
    reach: float = 0.0
    wait: int = 0
    rounds: int = 0


def _wider(crack, start, pace):
    """The next step: a wider crack, or one that has let go a little further at its front.

    Where the front leaps from node to node the mean opening may have to turn back. What still
    holds together at the front never does.
    """
    row, all_rounds = crack.mean_row, pace.rounds
    if not pace.wait:
        for shorter in (1.0, _NARROWER):
            stride = shorter * pace.stride
            found, rounds = at_rest(crack, Aim(row, 0.0, row @ start.q + stride), start)
            all_rounds += rounds
            if found is not None:
                stride *= _WIDER if rounds < _EASY else 1.0
                return found, replace(pace, stride=stride, rounds=all_rounds)
    found, reach, rounds = _led_by_front(crack, start, pace.reach or _REACH * crack.law.scale)
    gained = 0.0 if found is None else row @ (found.q - start.q)
    wait = pace.wait - 1 if pace.wait else _WAIT
    return found, Pace(max(gained, 0.5 * pace.stride), reach, wait, all_rounds + rounds)


def _led_by_front(crack, start, reach):
    """Open the place that is pulled hardest: it is about to let go, or has just begun to."""
    row, all_rounds = np.zeros_like(crack.mean_row), 0
    row[np.argmax(crack.faces(start.q, start.greatest).normal)] = 1.0
    for _shorter in range(6):
        found, rounds = at_rest(crack, Aim(row, 0.0, row @ start.q + reach), start)
        all_rounds += rounds
        if found is not None:
            return found, reach * (_WIDER if rounds < _EASY else 1.0), all_rounds
        reach *= _NARROWER
    return None, reach, all_rounds


def at_load(crack, load):
    """The crack once the load has grown to a value for the first time.

    Where the load would have to fall before it rises again, the crack leaps: it is the wider state
    that is given.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack.
    load : float
        Load [-], 0 or more.

    Returns
    -------
    Opened
        At that load [mm].

    Raises
    ------
    ArithmeticError
        If the body breaks before the load is reached: the crack is 20 mm wide, and the load has
        never been so great; or if no state is found, which happens where the nodes of the line
        are far apart for concrete so brittle.
    """
    if load == 0.0:
        return unopened(crack)
    steps = growth(crack, load=load, widest=TORN)
    if steps[-1].load >= load:
        return _between(crack, load, steps[-2], steps[-1])
    if steps[-1].q[: crack.count].max() >= TORN:
        raise ArithmeticError(_("The body is torn apart before the load is reached."))
    raise ArithmeticError(_("The crack does not come to rest: its line needs a finer mesh."))


def _between(crack, load, before, after):
    """Close in on a load that lies between two steps."""
    low, high = (float(crack.mean_row @ each.q) for each in (before, after))
    least, most = before.load, after.load
    found = _at_once(crack, load, before, after)
    if found is not None:
        return found
    found = after
    for _round in range(40):
        share = min(max((load - least) / (most - least), 0.02), 0.98)
        value = low + share * (high - low)
        step, _rounds = at_rest(crack, Aim(crack.mean_row, 0.0, value), before)
        if step is None:
            break
        found = step
        if abs(step.load - load) <= 1e-6 * load:
            break
        if step.load < load:
            low, least = value, step.load
        else:
            high, most = value, step.load
    return found


def _at_once(crack, load, before, after):
    """Go straight to a load that lies between two steps, if that leads to a state between them."""
    share = (load - before.load) / (after.load - before.load)
    guess = Opened(load, before.q + share * (after.q - before.q), before.greatest)
    found, _rounds = at_rest(crack, Aim(0.0 * crack.mean_row, 1.0, load), guess)
    if found is None:
        return None
    low, here, high = (crack.mean_row @ each.q for each in (before, found, after))
    return found if low < here < high else None
