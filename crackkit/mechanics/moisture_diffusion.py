"""How moisture leaves a slab through its faces, day by day, and where in its depth it stays.

One-dimensional diffusion whose pace falls steeply as concrete dries (Bazant and Najjar 1972), with
a film of still air at each face. Water that cement goes on binding is left out. All of it depends
on z/L, D1 t/L^2 and film L/D1 only (D1 the diffusivity of wet concrete), and is solved for these.

Volumes around nodes that crowd at the drying faces; steps of time that grow by a constant factor,
second order (backward differences, made linear at the values that the last two steps foretell).
What leaves one volume enters the next or the air, so no moisture is lost in the counting.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.moisture_diffusivity import Diffusivity, potential_table
from crackkit.words import _

THREE_YEARS = 1095.0
"""Days of drying that are followed, if nothing else is asked for [days]."""

STILL_AIR = 2.6
"""Usual film of a face in air, some 0.8 to 8 [mm/day] (back-analyses, from memory)."""

_GROUND_FILM = 1000.0  # mm/day: so much that the face takes the humidity of the ground
_LATE = 9.0  # the last step is about exp(9) times as long as the first
_CROWD = 3.6  # the widest interval is about exp(3.6) times as wide as the one at a drying face
_FIRST_STEPS, _PASSES = 4, 3  # nothing foretells the jump at the end of curing: it is sought


@dataclass(frozen=True)
class Face:
    """What a face of the slab gives its moisture to, or takes it from.

    Parameters
    ----------
    humidity : float
        Relative humidity of the air or the ground there, 0 to 1 [-].
    film : float
        Flow through the face for each unit of humidity between face and air, 0 to 1000
        [mm/day]; 0 seals the face, 1000 all but gives it the humidity outside. A face in air has
        some 1 to 10.

    Raises
    ------
    ValueError
        If a value is out of range.
    """

    humidity: float
    film: float = STILL_AIR

    def __post_init__(self):
        if not 0 <= self.humidity <= 1:
            raise ValueError(_("The humidity of air and ground runs from 0 to 1."))
        if not 0 <= self.film <= _GROUND_FILM:
            raise ValueError(_("The film of a face runs from 0 to 1000 mm a day."))


SEALED = Face(1.0, 0.0)
"""A face that lets nothing through: a slab right on a sheet."""


def on_ground(humidity=1.0):
    """The face of a slab on bare ground.

    Parameters
    ----------
    humidity : float
        Relative humidity of the ground, 0 to 1 [-]; damp ground has 1.

    Returns
    -------
    Face
        One that has the humidity of the ground.
    """
    return Face(humidity, _GROUND_FILM)


@dataclass(frozen=True, eq=False)
class MoistureHistory:
    """Humidity in the depth of a slab, from the end of curing on.

    Parameters
    ----------
    depths : numpy.ndarray
        Nodes, from the top face to the bottom face [mm].
    days : numpy.ndarray
        Days since the end of curing, from 0 on [days].
    humidity : numpy.ndarray
        Relative humidity of the pores, one row for each day, one column for each depth [-].
    escaped : numpy.ndarray
        What has left through top and bottom, one row for each day, humidity times depth [mm];
        below 0 where moisture came in.
    """

    depths: np.ndarray
    days: np.ndarray
    humidity: np.ndarray
    escaped: np.ndarray

    @property
    def mean(self) -> np.ndarray:
        """Mean humidity over the thickness, at each day [-]."""
        return self.humidity @ depth_weights(self.depths) / self.depths[-1]


def drying_history(
    thickness,
    diffusivity: Diffusivity,
    top: Face,
    bottom: Face = SEALED,
    days=THREE_YEARS,
    initial=1.0,
    cells=32,
    steps=56,
):
    """Humidity of a slab that begins to dry.

    Parameters
    ----------
    thickness : float
        Thickness L, above 0, usually 75 to 300 [mm].
    diffusivity : Diffusivity
        Of its concrete.
    top : Face
        Air over the slab, usually 0.3 to 0.95 humid.
    bottom : Face
        `SEALED`, ground, or air.
    days : float
        Days that are followed from the end of curing on, above 0 [days].
    initial : float
        Humidity of the pores at the end of curing, all through, 0 to 1 [-].
    cells : int
        Intervals of depth, even, 4 or more [-].
    steps : int
        Steps of time, 2 or more [-].

    Returns
    -------
    MoistureHistory
        Curing only shifts it: it is counted from the end of curing on.

    Raises
    ------
    ValueError
        If a value is out of range.
    """
    if not (thickness > 0 and days > 0 and 0 <= initial <= 1):
        raise ValueError(_("Thickness and days must be above zero, and humidity from 0 to 1."))
    if not (cells >= 4 and cells % 2 == 0 and steps >= 2):
        raise ValueError(_("It takes 4 cells or more, an even number, and 2 steps or more."))
    L, D1 = thickness, diffusivity.saturated
    z = _nodes(cells, 1 if bottom.film == 0 else 2)
    T = np.expm1(_LATE * np.arange(steps + 1) / steps) / np.expm1(_LATE) * days * D1 / L**2
    films = np.array([top.film, bottom.film]) * L / D1
    outside = np.array([top.humidity, bottom.humidity])
    humidity, escaped = _march(z, T, np.exp(_LATE / steps), diffusivity, films, outside, initial)
    return MoistureHistory(L * z, T * L**2 / D1, humidity, L * escaped)


def humidity_at(moisture: MoistureHistory, depths, days):
    """Humidity at some depths on one day.

    Parameters
    ----------
    moisture : MoistureHistory
        The slab as it dries.
    depths : float or array_like
        Depths below the top face, 0 to the thickness [mm].
    days : float
        Days since the end of curing; before the first and after the last as on these [days].

    Returns
    -------
    float or numpy.ndarray
        Relative humidity of the pores [-]; between known days straight over the root of time.
    """
    root, wanted = np.sqrt(moisture.days), np.sqrt(max(days, 0.0))
    i = int(np.clip(root.searchsorted(wanted), 1, root.size - 1))
    share = np.clip((wanted - root[i - 1]) / (root[i] - root[i - 1]), 0.0, 1.0)
    profile = (1.0 - share) * moisture.humidity[i - 1] + share * moisture.humidity[i]
    return np.interp(depths, moisture.depths, profile)


def depth_weights(depths):
    """Weights that make a sum over nodes the integral over the depth.

    Parameters
    ----------
    depths : numpy.ndarray
        Nodes from the top face to the bottom face [mm].

    Returns
    -------
    numpy.ndarray
        Depth that belongs to each node [mm]; exact for what is straight between nodes.
    """
    half = 0.5 * np.diff(depths)
    return np.concatenate([half[:1], half[:-1] + half[1:], half[-1:]])


def _nodes(cells, drying_faces):
    """Nodes from 0 to 1, closer to each other at the faces that dry [-]."""
    parts = cells // drying_faces
    z = np.expm1(_CROWD * np.arange(parts + 1) / parts) / np.expm1(_CROWD)
    return z if drying_faces == 1 else 0.5 * np.concatenate([z, 2.0 - z[-2::-1]])


def _march(z, T, growth, diffusivity, films, outside, initial):
    """Humidity and what escaped at the times T; without units, lengths over L."""
    slab = _Slab(z, diffusivity, films, outside)
    bounds = _bounds(films, outside, initial)
    state = np.zeros((T.size, z.size + 2))  # the humidity of the nodes, and what escaped
    state[0, :-2] = initial
    for j, dT in enumerate(np.diff(T)):
        lead, past, guess = _backward(state, j, growth)
        h = guess[:-2]
        for _pass in range(_PASSES if j < _FIRST_STEPS else 1):
            h = slab.after(np.minimum(np.maximum(h, bounds[0]), bounds[1]), lead, past[:-2], dT)
        state[j + 1, :-2] = h
        state[j + 1, -2:] = (past[-2:] + dT * films * (h[[0, -1]] - outside)) / lead
    return state[:, :-2], state[:, -2:]


class _Slab:
    """The balance of moisture of every node, made linear at a guess."""

    def __init__(self, z, diffusivity, films, outside):
        self.weights, self.conduct = depth_weights(z), _conductance(z)
        self.film, self.source = np.zeros_like(z), np.zeros_like(z)
        self.film[[0, -1]], self.source[[0, -1]] = films, films * outside
        self.table = potential_table(diffusivity)

    def after(self, guess, lead, past, dT):
        """Humidity after a step, if the potential is straight from the guess to it."""
        known, share, potential = self.table
        D, store = np.interp(guess, known, share), self.weights / dT
        matrix = self.conduct * D
        matrix.flat[:: guess.size + 1] += lead * store + self.film
        bent = np.interp(guess, known, potential) - D * guess
        return np.linalg.solve(matrix, store * past + self.source - self.conduct @ bent)


def _bounds(films, outside, initial):
    """Lowest and highest humidity there can be: guesses are kept between them."""
    seen = np.append(outside[films > 0], initial)
    return seen.min(), seen.max()


def _backward(state, j, growth):
    """Backward differences: dT dx/dT = lead x - past at the next time; and a guess of x there."""
    if j == 0:
        return 1.0, state[0], state[0]
    r, now, before = growth, state[j], state[j - 1]
    past = (1.0 + r) * now - r * r / (1.0 + r) * before
    return (1.0 + 2.0 * r) / (1.0 + r), past, now + r * (now - before)


def _conductance(z):
    """What flows out of each node for unit potentials, a symmetric matrix whose rows add to 0."""
    k = 1.0 / np.diff(z)
    own = np.concatenate([k, [0.0]]) + np.concatenate([[0.0], k])
    return np.diag(own) - np.diag(k, 1) - np.diag(k, -1)
