"""How readily moisture moves in concrete, wet and dry: D(h) of Bazant and Najjar 1972."""

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.words import _

_TABLE = 4096  # intervals of the table of potentials


@dataclass(frozen=True)
class Diffusivity:
    """How readily moisture moves in concrete of a given humidity.

    Parameters
    ----------
    saturated : float
        Diffusivity of wet concrete D1, above 0 [mm2/day].
    dry_share : float
        Share of it that is left in dry concrete, 0 to 1 [-]; 1 makes diffusion linear.
    middle : float
        Humidity at which it is half way between the two, below 1 [-].
    steepness : float
        Exponent of the fall, 6 to 16 [-].

    Raises
    ------
    ValueError
        If a value is out of range.
    """

    saturated: float
    dry_share: float = 0.05
    middle: float = 0.80
    steepness: float = 15.0

    def __post_init__(self):
        if not (self.saturated > 0 and 0 < self.dry_share <= 1):
            raise ValueError(_("The diffusivity must be above zero, wet and dry."))
        if not (0 <= self.middle < 1 and self.steepness > 0):
            raise ValueError(_("The diffusivity must fall as the concrete dries."))

    def share(self, humidity):
        """Diffusivity over that of wet concrete.

        Parameters
        ----------
        humidity : float or array_like
            Relative humidity of the pores, 0 to 1 [-].

        Returns
        -------
        float or numpy.ndarray
            a + (1 - a)/(1 + ((1 - h)/(1 - hc))^n) [-] (BAZANTNAJJAR1972, form; from memory).
        """
        dry = (1.0 - np.asarray(humidity, dtype=float)) / (1.0 - self.middle)
        return self.dry_share + (1.0 - self.dry_share) / (1.0 + dry**self.steepness)

    def at(self, humidity):
        """Diffusivity [mm2/day].

        Parameters
        ----------
        humidity : float or array_like
            Relative humidity of the pores, 0 to 1 [-].

        Returns
        -------
        float or numpy.ndarray
            D(h) [mm2/day].
        """
        return self.saturated * self.share(humidity)

    def fall(self, wet=0.9, dry=0.6):
        """How many times slower moisture moves in drier concrete.

        Parameters
        ----------
        wet : float
            Humidity to start from, 0 to 1 [-].
        dry : float
            Lower humidity, 0 to 1 [-].

        Returns
        -------
        float
            D(wet)/D(dry) [-].
        """
        return self.share(wet) / self.share(dry)


def diffusivity_mc1990(strength):
    """Diffusivity as the Model Code 1990 estimates it, a = 0.05, hc = 0.80, n = 15.

    Parameters
    ----------
    strength : float
        Characteristic cylinder strength fck = fcm - 8, above 0 [MPa].

    Returns
    -------
    Diffusivity
        With D1 = 1e-9 m2/s 10/fck (CEB1990, 2.1.9, from memory).

    Raises
    ------
    ValueError
        If the strength is not above zero.
    """
    if not strength > 0:
        raise ValueError(_("The strength must be greater than zero."))
    return Diffusivity(saturated=864.0 / strength)


def potential_table(diffusivity: Diffusivity):
    """The diffusivity and its integral over humidity, ready to be read off (Kirchhoff).

    Parameters
    ----------
    diffusivity : Diffusivity
        Of the concrete.

    Returns
    -------
    tuple of numpy.ndarray
        Humidities from 0 to 1 [-], D/D1 there [-], and its integral from 0 on [-], by Simpson's
        rule.
    """
    return _potentials(diffusivity.dry_share, diffusivity.middle, diffusivity.steepness)


@lru_cache(maxsize=16)
def _potentials(dry_share, middle, steepness):
    h = np.linspace(0.0, 1.0, 2 * _TABLE + 1)
    D = Diffusivity(1.0, dry_share, middle, steepness).share(h)
    areas = (D[:-2:2] + 4.0 * D[1:-1:2] + D[2::2]) / (6.0 * _TABLE)
    potential = np.concatenate([[0.0], np.cumsum(areas)])
    return h[::2].copy(), D[::2].copy(), potential  # in one piece, as reading off wants them
