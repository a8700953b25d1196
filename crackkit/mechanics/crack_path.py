"""The lines that cracks in a beam follow: at right angles to the strongest stretching.

A crack starts square to the stretched face, where there is no shear, and leans over as shear takes
its share on the way to the neutral axis: towards midspan under a load, towards the support over a
support. The line ends at the neutral axis of the cracked section, so the stresses it follows are
those of a section whose neutral axis lies there.
"""

import numpy as np

from crackkit.words import _

_FACES = {"bottom": 1.0, "top": -1.0}


def crack_paths(
    starts,
    face,
    tips,
    depth,
    x,
    moment,
    shear,
    intensity=None,
    largest_lean: float = np.pi / 4.0,
    steps: int = 12,
) -> np.ndarray:
    """Crack lines of a beam, all at once.

    Parameters
    ----------
    starts : array_like
        Where the cracks open at the stretched face, from the left end of the beam [mm].
    face : str or sequence of str
        "bottom" or "top": the stretched face, one for all or one each.
    tips : array_like
        Depth below the top face at which the cracks end, the neutral axis of the cracked section
        [mm]; one for all or one each.
    depth : float or array_like
        Depth of the beam where each crack opens [mm]; one for all or one each, for a beam whose
        depth changes slowly along it. Lines start upright, whatever the slope of the face.
    x : array_like
        Stations that describe moment and shear, never decreasing [mm]; two stations at one place
        hold a jump of the shear, as `BeamState.diagrams` gives them.
    moment : array_like
        Bending moment at the stations, sagging positive [N mm].
    shear : array_like
        Shear force at the stations [N]. Where the depth h grows along the beam by the slope h',
        give V - M h'/h: the inclined face carries the rest.
    intensity : array_like, optional
        Line load on the top face at the stations, downward positive [N/mm]; it makes cracks a
        little steeper. None taken when left out.
    largest_lean : float
        Limit of the lean away from the upright, 0 to pi/4 [rad]; mechanics alone gives pi/4.
    steps : int
        Number of pieces of each line [-].

    Returns
    -------
    ndarray
        Points of the lines from the face to the tip, shape (cracks, steps + 1, 2), the last axis
        x and z [mm].

    Raises
    ------
    ValueError
        If a face is unknown or a tip lies outside the beam.

    Notes
    -----
    With y from the neutral axis to the point and c to the stretched face, beam theory gives
    sigma_x = M y / I and tau = V (c2 - y2) / (2 I); the crack leans by the angle a with
    tan 2a = 2 tau / (sigma_x - sigma_z). Midpoint rule, shorter steps towards the tip where the
    line bends most; all steps of all lines are found together by repeated substitution. A lean
    never turns to the other side on its way, and a crack stands upright where the shear changes
    sign. Where the moment does not stretch the chosen face the line leans by 45 degrees.
    """
    starts = np.atleast_1d(np.asarray(starts, dtype=float))
    sign = _signs(face, starts.size)
    tips = np.broadcast_to(np.asarray(tips, dtype=float), starts.shape)
    depth = np.broadcast_to(np.asarray(depth, dtype=float), starts.shape)
    if not ((tips >= 0.0) & (tips <= depth)).all():
        raise ValueError(_("A crack must end inside the beam."))
    origin = np.where(sign > 0.0, depth, 0.0)
    reach = np.abs(tips - origin)
    diagrams = _Diagrams(np.asarray(x, dtype=float), moment, shear, intensity)
    side = diagrams.lean_side(starts, 0.02 * depth)
    travelled = np.sin(np.linspace(0.0, np.pi / 2.0, steps + 1))[:, None]
    shares = _stress_shares(reach, sign, 1.0 - 0.5 * (travelled[1:] + travelled[:-1]))
    drift = sign * side * reach * np.diff(travelled, axis=0)

    def lean(place):
        return np.minimum(_lean(diagrams, side, shares, place), np.tan(largest_lean))

    points = np.empty((steps + 1, starts.size, 2))
    points[..., 0] = _places(starts, drift, lean, 1e-4 * depth.min(initial=np.inf))
    points[..., 1] = origin + travelled * (tips - origin)
    return points.transpose(1, 0, 2)


def _signs(face, count):
    """+1 for each crack from the bottom face, -1 for each from the top face."""
    faces = [face] * count if isinstance(face, str) else list(face)
    if len(faces) != count or not set(faces) <= set(_FACES):
        raise ValueError(_("Each crack opens at the 'bottom' or at the 'top' face."))
    return np.array([_FACES[one] for one in faces])


class _Diagrams:
    """Moment, shear and load on top of a beam, at any place."""

    def __init__(self, x, moment, shear, intensity):
        self.x, self._moment, self._shear, self._load = x, moment, shear, intensity

    def moment(self, place):
        return np.interp(place, self.x, self._moment)

    def shear(self, place):
        return np.interp(place, self.x, self._shear)

    def load(self, place):
        return 0.0 if self._load is None else np.interp(place, self.x, self._load)

    def lean_side(self, place, apart):
        """Sign of the shear around each place; zero where it changes, under a point load say."""
        before, after = np.sign(self.shear(np.array([place - apart, place + apart])))
        return np.where(before == after, before, 0.0)


def _stress_shares(reach, sign, eta):
    """What moment, load and shear contribute at the distance eta times reach from the axis.

    Each is a stress times the moment of inertia; the width of the beam drops out. The load's
    share is that of the exact field (Timoshenko and Goodier, article 22).
    """
    across = (1.0 - sign * (1.5 * eta - 0.5 * eta**3)) / 3.0
    along = sign * (eta**3 / 3.0 - eta / 5.0)
    return sign * eta * reach, (across + along) * reach**3, (1.0 - eta**2) * reach**2


def _lean(diagrams: _Diagrams, side, shares, place):
    """Lean of the lines at each place: the tangent of the angle of the largest stress."""
    by_moment, by_load, by_shear = shares
    d = np.maximum(diagrams.moment(place) * by_moment + diagrams.load(place) * by_load, 0.0)
    t = np.maximum(side * diagrams.shear(place), 0.0) * by_shear
    # tan a from tan 2a = t / d; the tiny number keeps an unstressed point upright.
    return t / (d + np.sqrt(d * d + t * t) + 1e-300)


def _places(starts, drift, lean, tolerance):
    """Places along the lines after each step, shape (steps + 1, cracks).

    Each round sets at least one more step of every line right; a handful of rounds is the rule.
    """
    steps = len(drift)
    places = np.repeat(starts[None, :], steps + 1, axis=0)
    for _round in range(steps + 20):
        moved = starts + np.cumsum(drift * lean(0.5 * (places[1:] + places[:-1])), axis=0)
        change = np.abs(moved - places[1:]).max(initial=0.0)
        places[1:] = moved
        if change < tolerance:
            break
    return places
