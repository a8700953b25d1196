"""What a slab that is drier at one face than at the other would do if nothing held it.

Each layer wants to shorten by what its own humidity asks for. A slab stays plane: of the free
shortening it follows the mean and the slope, which curls it; what is left over stresses it.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.moisture_diffusion import MoistureHistory, depth_weights
from crackkit.mechanics.shrinkage_mc2010 import drying_end


def dry_shrinkage(mean_strength, cement_class="N"):
    """Drying shrinkage of a layer that has dried to the last.

    Parameters
    ----------
    mean_strength : float
        Mean cylinder strength fcm, 20 to 130 [MPa].
    cement_class : str
        "S", "N" or "R".

    Returns
    -------
    float
        Shortening at humidity 0, 1.55 eps_cds0 [-] (MC2010, 5.1.9.4.4, from memory); the formula
        holds from 40 % humidity up, this end of it only carries it there.

    Raises
    ------
    ValueError
        If the class of cement is not known.
    """
    return drying_end(mean_strength, 0.0, cement_class)


def local_shrinkage(humidity, dry, initial=1.0):
    """Free shortening of a layer by its own humidity.

    The Model Code's factor of the air, 1.55 (1 - RH^3), taken for the pores of each layer: a layer
    that has come to rest with its air then shortens as the code says the whole member does.

    Parameters
    ----------
    humidity : float or array_like
        Relative humidity of the pores, 0 to 1 [-].
    dry : float or array_like
        Shortening on drying from humidity 1 to 0, as of `dry_shrinkage` [-].
    initial : float or array_like
        Humidity at which it had not begun to shorten [-].

    Returns
    -------
    float or numpy.ndarray
        dry (initial^3 - h^3) [-], below 0 where it has become wetter (CEB1990, 2.1.6.4.4, form of
        the factor; from memory).
    """
    return dry * (np.asarray(initial, dtype=float) ** 3 - np.asarray(humidity, dtype=float) ** 3)


@dataclass(frozen=True, eq=False)
class ShrinkageHistory:
    """Free shortening in the depth of a slab.

    Parameters
    ----------
    depths : numpy.ndarray
        Nodes, from the top face to the bottom face [mm].
    days : numpy.ndarray
        Days since the end of curing [days].
    strain : numpy.ndarray
        Free shortening, one row for each day, one column for each depth [-].
    """

    depths: np.ndarray
    days: np.ndarray
    strain: np.ndarray

    @property
    def mean(self) -> np.ndarray:
        """Mean over the thickness, at each day [-]."""
        return self.strain @ depth_weights(self.depths) / self.depths[-1]

    @property
    def gradient(self) -> np.ndarray:
        """Difference between top and bottom of the straight profile that curls it as much [-].

        Above 0 where the top shortens more, so that edges rise.
        """
        L = self.depths[-1]
        return 12.0 / L**2 * (self.strain @ lever_weights(self.depths))

    @property
    def curvature(self) -> np.ndarray:
        """Curvature of the slab if it is free, edges up positive, as sagging is [1/mm]."""
        return self.gradient / self.depths[-1]

    @property
    def uneven(self) -> np.ndarray:
        """What is left of the shortening without mean and slope, by day and depth [-]."""
        lever = 0.5 - self.depths / self.depths[-1]
        return self.strain - self.mean[:, None] - self.gradient[:, None] * lever


def shrinkage_history(moisture: MoistureHistory, dry):
    """Free shortening of a slab that dries.

    Parameters
    ----------
    moisture : MoistureHistory
        Its humidity; what it had on the first day is where shortening begins.
    dry : float
        Shortening on drying from humidity 1 to 0, as of `dry_shrinkage` [-].

    Returns
    -------
    ShrinkageHistory
        At the same depths and days; without the part that comes without drying.
    """
    strain = local_shrinkage(moisture.humidity, dry, moisture.humidity[0])
    return ShrinkageHistory(moisture.depths, moisture.days, strain)


def lever_weights(depths):
    """Weights that make a sum over nodes the moment about mid-depth, per width.

    Parameters
    ----------
    depths : numpy.ndarray
        Nodes from the top face to the bottom face [mm].

    Returns
    -------
    numpy.ndarray
        Depth times lever above mid-depth [mm2]; exact for what is straight between nodes.
    """
    d, y = np.diff(depths), 0.5 * depths[-1] - depths
    weights = np.zeros_like(y)
    weights[:-1] += d * (2.0 * y[:-1] + y[1:]) / 6.0
    weights[1:] += d * (y[:-1] + 2.0 * y[1:]) / 6.0
    return weights
