"""Cracked strips whose stretched concrete is bridged by fibres, bent or pulled.

Plane sections stay plane; bars and squeezed concrete are elastic; the fibres pull with one and the
same stress from the neutral axis to the stretched face, however wide the crack is there.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.rising_root import rising_root
from crackkit.words import _


@dataclass(frozen=True)
class FibreSection:
    """How bent strips with bars and fibres carry their moments; one strip or many.

    Parameters
    ----------
    squeezed : float or numpy.ndarray
        Depth of the squeezed part [mm]; 0 where neither bars nor fibres can carry the moment.
    steel_stresses : numpy.ndarray
        Stress in each layer of bars, tension positive [MPa]; not-a-number where nothing carries.
    squeezed_stress : float or numpy.ndarray
        Stress in the concrete at the squeezed face, squeezing negative [MPa].
    curvature : float or numpy.ndarray
        Curvature in the crack [1/mm].
    fibres_alone : bool or numpy.ndarray
        True where the fibres carry the moment without any bar being pulled.
    """

    squeezed: float | np.ndarray
    steel_stresses: np.ndarray
    squeezed_stress: float | np.ndarray
    curvature: float | np.ndarray
    fibres_alone: bool | np.ndarray


def fibre_cracked(width, depth, depths, areas, ratio, concrete_modulus, moment, residual):
    """Find the balance of cracked strips with bars and fibres, of many at once if asked.

    Parameters
    ----------
    width : float or array_like
        Width b of the strip [mm].
    depth : float or array_like
        Depth h of the strip [mm].
    depths : array_like
        Depth of each layer of bars below the squeezed face [mm], above 0, up to the depth of the
        strip; the first axis counts the layers, further ones the cases.
    areas : array_like
        Steel area of each layer [mm2]; 0 is allowed. Axes like those of the depths.
    ratio : float or array_like
        Modular ratio n = Es/Ec [-], above 1; a squeezed bar counts n - 1.
    concrete_modulus : float or array_like
        Modulus of the concrete Ec [MPa], above 0; no stress depends on it, only the curvature.
    moment : float or array_like
        Bending moment, 0 or more [N mm].
    residual : float or array_like
        Stress of the fibres over the stretched part, f_Fts of `fibres.service_residual`,
        0 or more [MPa].

    Returns
    -------
    FibreSection
        Squeezed depth, steel stresses and stress at the squeezed face; numbers where every
        argument is that of one case, else arrays. Where the fibres alone carry the moment the
        neutral axis lies below the bars: their stress is 0 or negative, and no bar holds a crack.
        Without bars, a moment beyond what the fibres can carry (f b h2/2) finds no balance:
        squeezed depth 0, stresses not-a-number.

    Raises
    ------
    ValueError
        If the moment or the residual stress is negative.

    Notes
    -----
    Textbook equilibrium with the stress of MC2010 5.6.4 and 7.7.4. For a squeezed depth x let S
    be the first and I the second moment of squeezed concrete and bars about the axis. Force:
    K S = f b (h - x); moment: K I = M - f b (h - x)2/2, where K is the curvature times Ec. By the
    inequality of Cauchy and Schwarz the moment falls as x grows, so there is one balance only.
    """
    if not (np.all(np.asarray(moment) >= 0.0) and np.all(np.asarray(residual) >= 0.0)):
        raise ValueError(_("The moment and the residual stress must not be negative."))
    z, A = np.atleast_1d(depths), np.atleast_1d(areas)
    b, h, n, Ec, M, f, _z, _A = np.broadcast_arrays(
        width, depth, ratio, concrete_modulus, moment, residual, z[0], A[0]
    )
    strip = _Strip(_by_layer(z, h) / h, _by_layer(A, h) / (b * h), n)
    x, K = _balance(strip, M / (b * h**2), f)
    steel = n * K * (strip.z - x)
    alone = (x > 0.0) & ~np.any((strip.A > 0.0) & (steel > 0.0), axis=0)
    return FibreSection(*(each[()] for each in (x * h, steel, -K * x, K / (h * Ec), alone)))


@dataclass(frozen=True)
class _Strip:
    """Bars of strips with width and depth 1: areas are shares of the concrete."""

    z: np.ndarray
    A: np.ndarray
    ratio: np.ndarray

    def weights(self, x):
        return np.where(self.z < x, self.ratio - 1.0, self.ratio) * self.A

    def moments(self, x):
        """First and second moment, about the axis, of squeezed concrete and bars."""
        arms, nA = self.z - x, self.weights(x)
        return x**2 / 2.0 - (nA * arms).sum(0), x**3 / 3.0 + (nA * arms**2).sum(0)

    @property
    def squeezed(self):
        """Depth that bars alone leave squeezed; 0 without bars."""
        # A layer is squeezed if, with the axis in it, too much is: the first moment grows.
        above = np.stack([self.moments(z)[0] for z in self.z]) < 0.0
        nA = np.where(above, self.ratio - 1.0, self.ratio) * self.A
        a, m = nA.sum(0), (nA * self.z).sum(0)
        return 2.0 * m / np.maximum(a + np.sqrt(a**2 + 2.0 * m), 1e-300)


def _by_layer(values, like):
    """Layers of bars first, then the axes of the cases."""
    spread = (1,) * (like.ndim - values.ndim + 1)
    return values.reshape(values.shape[:1] + spread + values.shape[1:])


def _balance(strip, moment, pull):
    """Squeezed depth and K of strips of width and depth 1; moment and pull of the fibres [MPa]."""
    start = strip.squeezed

    def unbalance(x):
        S, I = strip.moments(x)
        reach = 1.0 - x
        return S * (moment - pull * reach**2 / 2.0) - pull * reach * I

    x = rising_root(unbalance, start, np.ones_like(start), 1e-14 * (moment + pull / 2.0))
    # A pull too small to be felt leaves the axis to the bars.
    x = np.where((pull == 0.0) | (unbalance(start) >= 0.0), start, x)
    x = np.where(start == 0.0, _without_bars(moment, pull), x)
    K = moment - pull * (1.0 - x) ** 2 / 2.0
    return x, np.where(x > 0.0, K, np.nan) / np.where(x > 0.0, strip.moments(x)[1], 1.0)


def _without_bars(moment, pull):
    """Root of moment = pull (1 - x)(1/2 + x/6), 0 where the fibres cannot carry it."""
    carried = moment < pull / 2.0
    # (1 - x)(3 + x) = 6 M/pull, from which (x + 1)2 = 4 - 6 M/pull
    left = 3.0 - 6.0 * np.where(carried, moment, 0.0) / np.where(carried, pull, 1.0)
    return np.where(carried, left / (np.sqrt(left + 1.0) + 1.0), 0.0)


def tension_with_fibres(force, steel_area, concrete_area, residual):
    """Give the steel stress at a crack of a pulled member whose fibres help the bars.

    Parameters
    ----------
    force : float or ndarray
        Tension in the member N [N].
    steel_area : float or ndarray
        Area of all bars As, above 0 [mm2].
    concrete_area : float or ndarray
        Concrete that the fibres bridge Ac [mm2].
    residual : float or ndarray
        Stress of the fibres across the crack, f_Fts of `fibres.service_residual` [MPa].

    Returns
    -------
    float or ndarray
        Stress in the bars (N - f_Fts Ac)/As [MPa]; 0 where the fibres alone carry the force.

    Notes
    -----
    Textbook equilibrium with the stress of MC2010 5.6.4.
    """
    return np.maximum((force - residual * concrete_area) / steel_area, 0.0)
