"""A crack at rest, carried on to another load, or to concrete that has aged since.

From where it stood it opens as far as it must. Newton's method alone would go to and fro: along
the line, places let go one after the other, and each bends the forces anew. So the forces are taken
to answer a little more stiffly than their slopes say, by a share of what they would if they had
grown straight from none. The crack then opens a bit less in each round than it could, and comes to
the first rest on its way; where there is none it opens on and on, and has leaped.
"""

import numpy as np

from crackkit.mechanics.crack_at_load import from_torn
from crackkit.mechanics.crack_equation import TIGHT, left_over
from crackkit.mechanics.crack_growth import Opened

_NEWTON = 8  # rounds, in each of which less than half must be left over
_NEAR = 2.0  # times the opening before: so far Newton's method is trusted
_NARROW = 0.5  # openings G_F/f_t: narrower than this an opening counts as this
_TANGENT = 0.95  # share of slopes in how the forces are taken to answer, secants for the rest
_HASTE = 5.0  # times a round, at most: what rounds alike would add up to
_CLOSER = 0.2  # of what was left over at the last try: time to try Newton's method again
_ROUNDS, _LEAPED = 200, 60  # in all; after which it is asked whether the crack has leaped
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
        The first rest on its way [mm]; one farther on where places at the front let go by turns;
        None if none is found in time.
    """
    q, most = before.q, before.greatest
    found = _by_slopes(crack, load, q, most)
    if found is not None and _ahead(crack, found, before):
        return found
    tried, last, asked = np.inf, np.inf, False
    for count in range(_ROUNDS):
        left, answer = left_over(crack, q, load, most, _TANGENT)
        size = abs(left).max()
        if size < TIGHT:
            return _opened(crack, load, q, most)
        if size < _CLOSER * tried and count:
            found = _by_slopes(crack, load, q, most)
            if found is not None and _beside(crack, found, q, before):
                return found
            tried = size
        move = answer.move(-left[:, None])[:, 0]
        step = crack.mean_row @ move
        q = q + (_haste(step / last) if count % 2 else 1.0) * move
        last = step
        if not asked and (count >= _LEAPED or _has_run(crack, q, before)):
            asked, found = True, from_torn(crack, load)
            if found is not None and crack.mean_row @ found.q > crack.mean_row @ q:
                return found
    return None


def _by_slopes(crack, load, q, most):
    """Where Newton's method leads to; None if it does not lead there straight, or leads far."""
    sizes, far = [np.inf, np.inf], _NEAR * _widest(crack, q)
    for _round in range(_NEWTON):
        left, answer = left_over(crack, q, load, most)
        size = abs(left).max()
        if size < TIGHT:
            return _opened(crack, load, q, most)
        if size > 0.5 * sizes[-2]:
            return None
        sizes.append(size)
        q = q + answer.move(-left[:, None])[:, 0]
        if q[: crack.count].max() > far:
            return None
    return None


def _widest(crack, q):
    """Greatest opening [mm], of a crack that is hardly open a least one."""
    return max(q[: crack.count].max(), _NARROW * crack.law.scale)


def _opened(crack, load, q, most):
    return Opened(load, q, np.maximum(most, q[: crack.count]))


def _ahead(crack, found, before):
    """Whether a rest is not behind; it is near, and so no other lies on the way to it."""
    return crack.mean_row @ found.q > 0.999 * (crack.mean_row @ before.q)


def _beside(crack, found, q, before):
    """Whether a rest lies close to where the crack has come to, and not behind its start."""
    row = crack.mean_row
    return row @ found.q > row @ before.q and abs(row @ (found.q - q)) < 0.3 * (row @ q)


def _haste(ratio):
    """How far rounds would lead together of which each is the same part of the one before."""
    if ratio >= 1.0:
        return _HASTE
    return min(1.0 / (1.0 - ratio), _HASTE) if ratio > 0.3 else 1.0


def _has_run(crack, q, before):
    """Whether a crack that was narrow is so wide by now that it must have leaped."""
    wide = _RUN * crack.law.scale
    return q[: crack.count].max() > wide > 2.0 * before.q[: crack.count].max()
