"""Moments of a plate, and how far they stretch its top and its bottom."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.stress_field import principal_stresses


@dataclass(frozen=True, eq=False)
class PlateMoments:
    """Moments for each mm of width, on a grid of the shape (places along x, places along y).

    Parameters
    ----------
    x, y : numpy.ndarray
        Moments that bend the slab along x and along y, sagging positive [N].
    twist : numpy.ndarray
        Twisting moment [N], positive where it shears the bottom as a positive x-y shear.
    """

    x: np.ndarray
    y: np.ndarray
    twist: np.ndarray

    def plus(self, other):
        """Give the sum with moments on the same grid.

        Parameters
        ----------
        other : PlateMoments
            Moments to add.

        Returns
        -------
        PlateMoments
            The sum [N].
        """
        return PlateMoments(self.x + other.x, self.y + other.y, self.twist + other.twist)


@dataclass(frozen=True, eq=False)
class FaceStress:
    """Stresses in the plane of one face of a plate, on the grid of its moments.

    Parameters
    ----------
    sigma_x, sigma_y : numpy.ndarray
        Stress along x and along y, tension positive [MPa].
    tau : numpy.ndarray
        Shear stress [MPa].
    s1, s2 : numpy.ndarray
        Largest and smallest principal stress [MPa].
    angle : numpy.ndarray
        Direction of `s1`, turned from x towards y, -pi/2 to pi/2 [rad]. A crack runs at right
        angles to it.
    """

    sigma_x: np.ndarray
    sigma_y: np.ndarray
    tau: np.ndarray
    s1: np.ndarray
    s2: np.ndarray
    angle: np.ndarray


@dataclass(frozen=True)
class Stretch:
    """The place of a face that is stretched most.

    Parameters
    ----------
    x, y : float
        Where it is [mm].
    stress : float
        Largest principal stress there [MPa].
    angle : float
        Direction of this stress, turned from x towards y [rad].
    """

    x: float
    y: float
    stress: float
    angle: float


def plate_moments(curvatures, rigidity, poisson, free):
    """Moments of a thin plate from the second derivatives of its deflection.

    Parameters
    ----------
    curvatures : tuple of numpy.ndarray
        Second derivatives of the deflection by x twice, y twice, and both [1/mm].
    rigidity : float
        Bending stiffness D [N mm].
    poisson : float
        Poisson's ratio nu [-].
    free : Curvature
        Free curvature, which costs no moment.

    Returns
    -------
    PlateMoments
        D (-w_xx - k_x + nu (-w_yy - k_y)) and alike, -D (1 - nu) w_xy [N]; Timoshenko and
        Woinowsky-Krieger, Theory of Plates and Shells, art. 10 and 14, signs for deflections
        positive downward.
    """
    bent_x, bent_y = -curvatures[0] - free.x, -curvatures[1] - free.y
    return PlateMoments(
        rigidity * (bent_x + poisson * bent_y),
        rigidity * (bent_y + poisson * bent_x),
        -rigidity * (1.0 - poisson) * curvatures[2],
    )


def bottom_stress(moments, thickness):
    """Stresses in the bottom face.

    Parameters
    ----------
    moments : PlateMoments
        Moments of the plate.
    thickness : float
        Thickness t [mm].

    Returns
    -------
    FaceStress
        6 m / t^2, and its principal stresses [MPa].
    """
    return _face(moments, 6.0 / thickness**2)


def top_stress(moments, thickness):
    """Stresses in the top face.

    Parameters
    ----------
    moments : PlateMoments
        Moments of the plate.
    thickness : float
        Thickness t [mm].

    Returns
    -------
    FaceStress
        -6 m / t^2, and its principal stresses [MPa].
    """
    return _face(moments, -6.0 / thickness**2)


def most_stretched(face, x, y, rim=0.0):
    """Place of a face where it is stretched most.

    Thin plates have a twisting moment along free edges, which a real slab loses within about
    half its thickness: a rim of this width is better left out.

    Parameters
    ----------
    face : FaceStress
        Stresses of the face.
    x, y : numpy.ndarray
        Places of its grid [mm].
    rim : float
        Strip along the edges that is left out [mm].

    Returns
    -------
    Stretch
        Where [mm], how much [MPa] and in which direction [rad].
    """
    inner = np.ix_(_inside(x, rim), _inside(y, rim))
    i, j = np.unravel_index(np.argmax(face.s1[inner]), face.s1[inner].shape)
    i, j = inner[0].ravel()[i], inner[1].ravel()[j]
    return Stretch(float(x[i]), float(y[j]), float(face.s1[i, j]), float(face.angle[i, j]))


def _inside(x, rim):
    return np.flatnonzero((x >= x[0] + rim) & (x <= x[-1] - rim))


def _face(moments, factor):
    sigma = factor * moments.x, factor * moments.y, factor * moments.twist
    return FaceStress(*sigma, *principal_stresses(*sigma))
