"""Stress between the two faces of a crack: stretched, let go, pressed together, and sliding.

Until its strength is reached the line is whole, as stiff as a thin layer of concrete. Opened and
let back, it comes home along a straight line to the origin, so what was broken stays broken.
Pressed together it is as stiff as before. Against sliding it keeps the share of its stiffness that
it keeps against opening; the teeth of the faces are not counted.
"""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, eq=False)
class FaceStress:
    """Stress at places along a crack, and how it changes.

    Parameters
    ----------
    normal, shear : numpy.ndarray
        Stress across and along the crack, tension positive [MPa], shape (p,).
    normal_slope : numpy.ndarray
        How fast the normal stress grows with the opening [MPa/mm], shape (p,).
    shear_slope : numpy.ndarray
        How fast the shear grows with sliding [MPa/mm], shape (p,).
    coupling : numpy.ndarray
        How fast the shear grows with the opening [MPa/mm], shape (p,).
    whole : numpy.ndarray of bool
        Where the line is as stiff as if it had never been stretched, shape (p,).
    """

    normal: np.ndarray
    shear: np.ndarray
    normal_slope: np.ndarray
    shear_slope: np.ndarray
    coupling: np.ndarray
    whole: np.ndarray


def face_stress(law, stiffness, share, jump, greatest):
    """Stress along a crack from how far it is open.

    Parameters
    ----------
    law : CohesiveLaw
        What holds the faces together.
    stiffness : float
        Stiffness of the line while it is whole [MPa/mm], above 0.
    share : numpy.ndarray
        Part of the thickness that is not cut before [-], 0 (a joint) to 1, shape (p,).
    jump : numpy.ndarray
        Opening and sliding [mm], shape (2, p).
    greatest : numpy.ndarray
        Widest opening that there has been [mm], shape (p,).

    Returns
    -------
    FaceStress
        Stress [MPa] on the whole thickness.
    """
    opening, sliding = jump
    widest = np.maximum(opening, greatest)
    first = share * (law.tensile / stiffness)
    intact = (widest <= first) & (share > 0.0)
    envelope, fall = law.stress(np.maximum(widest - first, 0.0))
    secant = np.where(intact, stiffness, share * envelope / np.maximum(widest, 1e-12))
    opens = ~intact & (opening >= greatest) & (opening > 0.0)
    pressed = opening < 0.0
    slope = np.where(opens, share * fall, np.where(pressed, stiffness, secant))
    normal = np.where(pressed, stiffness, secant) * opening
    lost = np.where(opens, (share * fall - secant) / np.maximum(widest, 1e-12), 0.0)
    return FaceStress(normal, secant * sliding, slope, secant, lost * sliding, intact)


def spent(law, stiffness, share, greatest):
    """Work that has gone for good into breaking the line.

    Parameters
    ----------
    law : CohesiveLaw
        What holds the faces together.
    stiffness : float
        Stiffness of the line while it is whole [MPa/mm].
    share : numpy.ndarray
        Part of the thickness that is not cut before [-], shape (p,).
    greatest : numpy.ndarray
        Widest opening that there has been [mm], shape (p,).

    Returns
    -------
    numpy.ndarray
        Work for each square millimetre [N/mm]: all that was done but what comes back when the
        crack shuts, shape (p,).
    """
    first = share * (law.tensile / stiffness)
    beyond = np.maximum(greatest - first, 0.0)
    done = 0.5 * share * law.tensile * first + share * law.work(beyond)
    back = 0.5 * share * law.stress(beyond)[0] * greatest
    return np.where(greatest > first, done - back, 0.0)
