"""A crack at rest, carried on to another load, or to concrete that has aged since.

From where it stood it opens downhill: each move sets energy free, and goes no farther than where
the next bit would have to be paid for. So it comes to the first rest on its way and does not go to
and fro, as Newton's method does where places along the line let go one after the other and each
bends the forces anew. That method's moves are taken where they lead downhill; where the line turns
soft they do not, and the forces are taken to answer more stiffly than their slopes say, by a share
of what they would if they had grown straight from none. Where there is no rest near, the crack
opens on and on, and has leaped.
"""

from typing import NamedTuple

import numpy as np

from crackkit.mechanics.crack_at_load import from_torn
from crackkit.mechanics.crack_equation import TIGHT, Answer, left_over
from crackkit.mechanics.crack_growth import TORN, Opened

_TANGENTS = (1.0, 0.95, 0.7, 0.0)  # shares of slopes in how forces answer, secants for the rest
_FAR, _FAR_STIFFLY, _LEAST = 1.0, 0.3, 0.03  # times its opening that a place opens in one move
_STRAIGHT = 2.0  # times its opening before: so far Newton's method alone is trusted
_NARROW = 0.5  # openings G_F/f_t: narrower than this an opening counts as this
_UPHILL = 0.5  # share of its slope to begin with that a move may rise at its end
_SHORTER, _CUTS = (0.1, 0.7), 5  # parts to which a move is cut that went too far; how often
_ROUNDS, _LEAPED = 200, 40  # in all; after which it is asked whether the crack has leaped
_RUN = 8.0  # openings G_F/f_t at which the same is asked


def carried_on(crack, load, before):
    """Bring a crack to rest that stood at rest before.

    Parameters
    ----------
    crack : CohesiveCrack
        The crack, in the concrete of now.
    load : float
        Load now [-].
    before : Opened
        Where it stood under a lesser load, or in younger concrete [mm].

    Returns
    -------
    Opened or None
        The first rest on its way [mm]; one farther on where none is found soon; None if none is
        found at all.
    """
    start = _stand(crack, load, before.q, before)
    here, asked = _straight(crack, load, before, start) or start, False
    for count in range(_ROUNDS):
        if abs(here.left).max() < TIGHT:
            return Opened(load, here.q, np.maximum(before.greatest, here.q[: crack.count]))
        if not asked and (count >= _LEAPED or _has_run(crack, here.q, before)):
            asked, found = True, from_torn(crack, load)
            if found is not None and crack.mean_row @ found.q > crack.mean_row @ here.q:
                return found
        here = _gone(crack, load, before, here)
        if here is None or here.q[: crack.count].max() > TORN:
            break
    return None


class _Stand(NamedTuple):
    """Where a crack stands [mm], what is left over there [mm], and how its forces answer.

    `push` is what is left over as forces that would hold it there [N], where it is known.
    """

    q: np.ndarray
    left: np.ndarray
    answer: Answer
    push: np.ndarray | None = None


def _stand(crack, load, q, before):
    return _Stand(q, *left_over(crack, q, load, before.greatest))


def _straight(crack, load, before, here):
    """Where Newton's method leads to, if it leads there straight, and not far; else None."""
    far = _STRAIGHT * _widest(crack, here.q)
    sizes = [abs(here.left).max()]
    while sizes[-1] >= TIGHT:
        here = _stand(crack, load, here.q + here.answer.move(-here.left), before)
        sizes.append(abs(here.left).max())
        if here.q[: crack.count].max() > far or sizes[-1] > 0.5 * sizes[-2]:
            return None
    return here


def _gone(crack, load, before, here):
    """Where a move downhill leads to, cut shorter while it rises again at its end; or None."""
    move, slope, share = _downhill(crack, here)
    if not slope < 0.0:
        return None
    for _cut in range(_CUTS):
        there = _stand(crack, load, here.q + share * move, before)
        push = crack.stiffness @ there.left
        rise = push @ move
        if rise <= -_UPHILL * slope:
            break
        share *= min(max(slope / (slope - rise), _SHORTER[0]), _SHORTER[1])
    return there._replace(push=push)


def _downhill(crack, here):
    """A move [mm], how much energy it costs to begin with [N mm], and how much of it to go."""
    push = crack.stiffness @ here.left if here.push is None else here.push
    for tangent in _TANGENTS:
        answer = here.answer if tangent == 1.0 else here.answer.stiffer(tangent)
        move = answer.move(-here.left)
        slope = push @ move
        if slope < 0.0:
            break
    whole = _widest(crack, here.q) / abs(move[: crack.count]).max()
    if tangent == 1.0:
        return move, slope, min(1.0, _FAR * whole)
    return move, slope, max(min(1.0, _FAR_STIFFLY * whole), _LEAST * whole)


def _widest(crack, q):
    """Greatest opening [mm], of a crack that is hardly open a least one."""
    return max(q[: crack.count].max(), _NARROW * crack.law.scale)


def _has_run(crack, q, before):
    """Whether a crack that was narrow is so wide by now that it must have leaped."""
    wide = _RUN * crack.law.scale
    return q[: crack.count].max() > wide > 2.0 * before.q[: crack.count].max()
