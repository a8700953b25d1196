"""How fast a fresh slab dries, and what alone would keep it wet."""

from dataclasses import dataclass

from crackkit.mechanics.evaporation import LIMIT, evaporation_rate
from crackkit.mechanics.evaporation_limits import (
    LITTLE_BLEEDING,
    concrete_temperature_at_rate,
    humidity_at_rate,
    wind_at_rate,
)
from crackkit.structures.outcome import BE_READY, DRIES_OUT, STAYS_WET
from crackkit.words import _


@dataclass(frozen=True)
class RateLimit:
    """A rate of evaporation that is not to be reached without precautions.

    Attributes
    ----------
    rate : float
        The rate [kg/m2/h].
    label, source, clause : str
        For which concrete, key in the bibliography, and where in it.
    """

    rate: float
    label: str
    source: str
    clause: str


USUAL = RateLimit(LIMIT, _("usual concrete"), "ACI305R", _("from memory"))


@dataclass(frozen=True)
class Drying:
    """State of the face of a fresh slab.

    Attributes
    ----------
    rate : float
        Water that leaves [kg/m2/h].
    wind : float
        Wind in which it would leave at the limit [km/h]; below 0 where still air is too much.
    concrete : float
        Temperature of the concrete at which it would [degC].
    humidity : float
        Humidity of the air at which it would [-]; above 1 where fog is not enough.
    """

    rate: float
    wind: float
    concrete: float
    humidity: float

    @property
    def times(self) -> float:
        """The rate as a multiple of the limit [-]."""
        return self.rate / LIMIT

    @property
    def level(self) -> str:
        """Key of the verdict."""
        if self.rate >= LIMIT:
            return DRIES_OUT
        return BE_READY if self.rate >= LITTLE_BLEEDING else STAYS_WET


def drying(it) -> Drying:
    """Work out how fast a fresh slab dries.

    Parameters
    ----------
    it : FreshSlab
    """
    return Drying(
        rate=float(evaporation_rate(it.concrete, it.air, it.humidity, it.wind)),
        wind=float(wind_at_rate(LIMIT, it.concrete, it.air, it.humidity)),
        concrete=float(concrete_temperature_at_rate(LIMIT, it.air, it.humidity, it.wind)),
        humidity=float(humidity_at_rate(LIMIT, it.concrete, it.air, it.wind)),
    )
