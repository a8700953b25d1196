"""The largest and the smallest moment of every arrangement of the loads that come and go.

Live loads and travelling forces come independently of each other, so nothing needs to be tried
out: at each place all that help are there, and all that do not are away.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.beam import solve
from crackkit.mechanics.load_cases import moments_for_cases_and_positions

_ROUNDING = 1e-12


@dataclass(frozen=True, eq=False)
class Envelope:
    """The bounds of the moments at each station, and the loads that bring them about.

    Parameters
    ----------
    x : ndarray
        Stations [mm].
    sagging : ndarray
        Largest moment, sagging positive [N mm].
    hogging : ndarray
        Smallest moment [N mm].
    live_sagging : ndarray of bool
        Whether each live load is there when the moment is largest, shape (live loads, stations).
    live_hogging : ndarray of bool
        Whether it is there when the moment is smallest.
    at_sagging : ndarray
        Where each travelling force stands when the moment is largest, nan if it is better away,
        shape (forces, stations) [mm].
    at_hogging : ndarray
        Where it stands when the moment is smallest [mm].
    """

    x: np.ndarray
    sagging: np.ndarray
    hogging: np.ndarray
    live_sagging: np.ndarray
    live_hogging: np.ndarray
    at_sagging: np.ndarray
    at_hogging: np.ndarray


def moment_envelope(
    length: float,
    supports,
    always,
    live,
    forces,
    positions,
    x,
    stiffness=1.0,
    side: str = "right",
) -> Envelope:
    """Bounds of the moments under loads that are always there and loads that come and go.

    Parameters
    ----------
    length : float
        Length of the beam, free ends included [mm].
    supports : sequence of Support
        The supports in any order; settlements belong to what is always there.
    always : sequence of PointLoad or LineLoad
        Loads that are always there.
    live : sequence
        Loads that come and go independently of each other, usually one for each span: each a
        PointLoad, a LineLoad, or a sequence of them that come and go together.
    forces : sequence of float
        Forces that travel or stay away independently of each other, downward positive [N].
    positions : array_like
        Where they can stand, from the left end of the beam [mm].
    x : array_like
        Stations [mm]; put the supports among them, or a peak is missed.
    stiffness : float or array_like
        EI as in `beam.solve` [N mm2]; without settlements only its ratios count.
    side : str
        "right" or "left": which value counts at an inner fixed support, where moments jump. At
        pins and at the ends of the beam it makes no difference.

    Returns
    -------
    Envelope
        Bounds and governing loads.

    Raises
    ------
    ValueError
        If the beam is not held, or a load, a position or a station lies outside it.

    Notes
    -----
    Superposition: always + sum of max(0, live) + sum of max(0, largest over the positions), and
    with min for the smallest; see any text on structural analysis.
    """
    x = np.atleast_1d(np.asarray(x, dtype=float))
    a = np.atleast_1d(np.asarray(positions, dtype=float))
    F = np.asarray(forces, dtype=float).reshape(-1, 1)
    level = [replace(support, settlement=0.0) for support in supports]
    cases = [list(always), *live]
    of_cases, unit = moments_for_cases_and_positions(length, level, cases, a, x, stiffness, side)
    start, M = of_cases[0], of_cases[1:]
    if any(support.settlement for support in supports):
        start = start + solve(length, supports, [], stiffness).moment(x, side)
    if not (F.size and a.size):
        unit = np.zeros((1, x.size))
    high, low = unit.argmax(axis=0), unit.argmin(axis=0)
    reach = np.abs(unit).max(initial=0.0)
    where = a if a.size else np.array([np.nan])

    def bound(sign):
        """Moment and governing loads for sign = 1, largest, and sign = -1, smallest."""
        helps = sign * M > _ROUNDING * np.abs(M).max(axis=1, keepdims=True, initial=0.0)
        best = np.where(sign * F > 0.0, high, low)
        gain = F * unit[best, np.arange(x.size)]
        comes = sign * gain > _ROUNDING * np.abs(F) * reach
        moment = start + (M * helps).sum(axis=0) + np.where(comes, gain, 0.0).sum(axis=0)
        return moment, helps, np.where(comes, where[best], np.nan)

    (sagging, live_sagging, at_sagging), (hogging, live_hogging, at_hogging) = map(bound, (1, -1))
    return Envelope(x, sagging, hogging, live_sagging, live_hogging, at_sagging, at_hogging)
