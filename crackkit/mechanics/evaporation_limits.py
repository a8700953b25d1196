"""What would keep evaporation from fresh concrete at a given rate: less wind, cooler, moister.

Each answers for one cause alone, the others as they are. Inverse of `evaporation.evaporation_rate`.
"""

import numpy as np

from crackkit.words import _

LITTLE_BLEEDING = 0.5
"""Rate from which concrete that bleeds little is at risk [kg/m2/h]; common practice."""


def wind_at_rate(rate, concrete_temperature, air_temperature, humidity):
    """Wind in which water leaves at a given rate.

    Parameters
    ----------
    rate : float
        Evaporation rate E, above 0 [kg/m2/h].
    concrete_temperature : float
        Temperature Tc of the concrete [degC], above -18.
    air_temperature : float
        Temperature Ta of the air [degC], above -18.
    humidity : float
        Relative humidity r of the air, 0 to 1 [-].

    Returns
    -------
    float
        V = E/(5e-6 ((Tc + 18)^2.5 - r (Ta + 18)^2.5)) - 4 [km/h]; below 0 where still air takes
        more, infinite where no wind takes any.

    Raises
    ------
    ValueError
        If the rate is not above 0.

    Notes
    -----
    UNO1998, solved for the wind.
    """
    dryness = (concrete_temperature + 18) ** 2.5 - humidity * (air_temperature + 18) ** 2.5
    if dryness <= 0:
        return np.inf
    return _positive(rate) / (5e-6 * dryness) - 4


def concrete_temperature_at_rate(rate, air_temperature, humidity, wind):
    """Temperature of the concrete at which water leaves at a given rate.

    Parameters
    ----------
    rate : float
        Evaporation rate E, above 0 [kg/m2/h].
    air_temperature : float
        Temperature Ta of the air [degC], above -18.
    humidity : float
        Relative humidity r of the air, 0 to 1 [-].
    wind : float
        Wind V half a metre above the surface, 0 or more [km/h].

    Returns
    -------
    float
        Tc = (E/(5e-6 (V + 4)) + r (Ta + 18)^2.5)^0.4 - 18 [degC].

    Raises
    ------
    ValueError
        If the rate is not above 0.

    Notes
    -----
    UNO1998, solved for the temperature of the concrete.
    """
    return (_demand(rate, wind) + humidity * (air_temperature + 18) ** 2.5) ** 0.4 - 18


def humidity_at_rate(rate, concrete_temperature, air_temperature, wind):
    """Humidity of the air at which water leaves at a given rate.

    Parameters
    ----------
    rate : float
        Evaporation rate E, above 0 [kg/m2/h].
    concrete_temperature : float
        Temperature Tc of the concrete [degC], above -18.
    air_temperature : float
        Temperature Ta of the air [degC], above -18.
    wind : float
        Wind V half a metre above the surface, 0 or more [km/h].

    Returns
    -------
    float
        r = ((Tc + 18)^2.5 - E/(5e-6 (V + 4)))/(Ta + 18)^2.5 [-]; above 1 where even fog is not
        enough, below 0 where the driest air is not too dry.

    Raises
    ------
    ValueError
        If the rate is not above 0.

    Notes
    -----
    UNO1998, solved for the humidity.
    """
    drawn = (concrete_temperature + 18) ** 2.5 - _demand(rate, wind)
    return drawn / (air_temperature + 18) ** 2.5


def _demand(rate: float, wind: float) -> float:
    return _positive(rate) / (5e-6 * (wind + 4))


def _positive(rate: float) -> float:
    if not rate > 0:
        raise ValueError(_("The rate of evaporation must be above 0."))
    return rate
