"""How fast water leaves fresh concrete: faster than it bleeds, and the surface cracks.

Precautions (wind breaks, fog, sheets) are common from 1 kg on each square metre an hour.
"""

import numpy as np

from crackkit.words import _

LIMIT = 1.0
"""Rate from which precautions are asked for [kg/m2/h], 0.2 lb/ft2/h (ACI 305R)."""


def evaporation_rate(concrete_temperature, air_temperature, humidity, wind):
    """Rate at which water evaporates from a surface that is still wet with it.

    Parameters
    ----------
    concrete_temperature : float or array_like
        Temperature Tc of the concrete [degC], above -18.
    air_temperature : float or array_like
        Temperature Ta of the air [degC], above -18.
    humidity : float or array_like
        Relative humidity r of the air, 0 to 1 [-].
    wind : float or array_like
        Wind V half a metre above the surface, 0 or more [km/h].

    Returns
    -------
    float or numpy.ndarray
        E = 5 ((Tc + 18)^2.5 - r (Ta + 18)^2.5) (V + 4) 1e-6 [kg/m2/h], 0 where dew would fall.

    Raises
    ------
    ValueError
        If an argument is out of range.

    Notes
    -----
    UNO1998.
    """
    warm, air, r, V = (
        np.asarray(each, dtype=float)
        for each in (concrete_temperature, air_temperature, humidity, wind)
    )
    if not (np.all(warm > -18) and np.all(air > -18)):
        raise ValueError(_("Evaporation is known above -18 degrees Celsius."))
    if not (np.all(r >= 0) and np.all(r <= 1) and np.all(V >= 0)):
        raise ValueError(_("Humidity runs from 0 to 1, and wind from 0."))
    E = 5e-6 * ((warm + 18) ** 2.5 - r * (air + 18) ** 2.5) * (V + 4)
    return np.maximum(E, 0.0)[()]


def plastic_cracks_threaten(rate):
    """Whether fresh concrete needs to be kept from drying out.

    Parameters
    ----------
    rate : float or array_like
        Evaporation rate [kg/m2/h].

    Returns
    -------
    bool or numpy.ndarray
        Whether it reaches the limit; concrete that bleeds little is at risk far below it.
    """
    return np.asarray(rate) >= LIMIT
