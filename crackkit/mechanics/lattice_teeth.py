"""How a bond of the lattice gives way: in steps, along the edge of a saw.

Stretched to its strength a bond does not let go at once: what it carries falls along a straight
line, and the area under the line is the work of tearing it. The line is followed in steps: each
time the bond comes to the next of some places on it, its stiffness falls so that it meets the line
again at the place after that. So every state is that of an elastic body, and nothing has to be
found by trial.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _

STEPS = 3
"""Steps in which a bond gives way [-]."""
GONE = 1e-4
"""Stiffness that stays of a broken bond [-], so that no point comes loose altogether."""
_LEAST_REACH = 4.0
_RATIOS = 1.0 + np.geomspace(1e-2, 1e5, 800)


@dataclass(frozen=True, eq=False)
class SawTeeth:
    """Steps of many bonds.

    Parameters
    ----------
    limits : numpy.ndarray
        Elongation at which each bond takes each of its steps [mm], shape (b, steps).
    shares : numpy.ndarray
        What is left of its stiffness before and after each step [-], shape (b, steps + 1).
    strengths : numpy.ndarray
        Stress at which each bond takes its first step [MPa], shape (b,).
    """

    limits: np.ndarray
    shares: np.ndarray
    strengths: np.ndarray


def saw_teeth(lengths, modulus, strengths, energy):
    """Steps by which bonds give way.

    The stress falls to nothing at an elongation a few times that at which it begins to fall: four
    times or more, by our choice. A bond too long for that would tear at once, and the crack would
    need far more than the work of tearing to go from bond to bond: its strength is lowered until
    the work fits, as it is done for coarse meshes of finite elements (the crack band of Bazant
    and Oh 1983, from memory).

    Parameters
    ----------
    lengths : numpy.ndarray
        Length of each bond [mm], shape (b,).
    modulus : float
        Stress of a bond over its strain [MPa], above 0.
    strengths : numpy.ndarray
        Stress that each bond bears [MPa], above 0, shape (b,).
    energy : float
        Work to tear a bond, for each mm2 of its section [N/mm], above 0.

    Returns
    -------
    SawTeeth
        Elongations [mm], stiffness [-] and the strengths that are left [MPa].

    Raises
    ------
    ValueError
        If a number is not above 0.
    """
    if not min(lengths.min(), modulus, strengths.min(), energy) > 0:
        raise ValueError(_("Length, modulus, strength and work of a bond are above zero."))
    reaches, works = _works()
    fits = np.sqrt(energy * modulus / (lengths * np.interp(_LEAST_REACH, reaches, works)))
    # The scatter from bond to bond stays, on a lower level.
    lowered = np.minimum(1.0, fits / np.mean(strengths)) * strengths
    first = lowered / modulus * lengths
    ratio = np.interp(energy / (lowered * first), works, reaches)
    places, shares = _along_line(ratio)
    shares[:, -1] = GONE
    return SawTeeth(first[:, None] * places, shares, lowered)


def _along_line(ratio):
    """Elongations at the steps over the first, and stiffness, for lines that end at `ratio`."""
    part = np.arange(STEPS + 1) / STEPS
    places = 1.0 + (ratio[:, None] - 1.0) * part
    return places[:, :-1], (1.0 - part) / places


def _works():
    """Ends of the line, over its beginning, and the work under the steps along it.

    The work is in strengths times the elongation at the beginning of the line.
    """
    places, shares = _along_line(_RATIOS)
    return _RATIOS, 0.5 * (-np.diff(shares) * places**2).sum(axis=1)
