"""Fresh concrete in the weather: does its face dry faster than it bleeds?"""

from dataclasses import dataclass
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.structures import fields, fresh_judging, fresh_working
from crackkit.structures.counts import Count
from crackkit.structures.fresh import drying
from crackkit.structures.outcome import Outcome
from crackkit.words import _

FOG = 0.95  # humidity of air with fog in it; common practice
BREAK = 0.5  # share of the wind behind a wind break; common practice


@dataclass(frozen=True)
class FreshSlab:
    """A slab that is just placed: temperatures in °C, wind in km/h.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    wind: float = fields.number(
        _("Wind"),
        "wind",
        0.0,
        60.0,
        20.0,
        _("Half a metre above the concrete; a forecast tells of wind ten metres up."),
    )
    humidity: float = fields.number(
        _("Humidity of the air"), "ratio", 0.1, 1.0, 0.4, _("0.4 is a dry day, 1 is fog.")
    )
    air: float = fields.number(
        _("Temperature of the air"),
        "warmth",
        -5.0,
        45.0,
        30.0,
        _("In the shade. At the same humidity warm air holds more water already."),
    )
    concrete: float = fields.number(
        _("Temperature of the concrete"),
        "warmth",
        5.0,
        40.0,
        30.0,
        _("At its face; in the sun it is warmer than it came from the truck."),
    )

    drawing: ClassVar[str] = "fresh_picture"
    title: ClassVar[str] = _("Will it dry faster than it bleeds?")
    topics: ClassVar[tuple] = (
        (_("Weather"), ("wind", "humidity", "air")),
        (_("Concrete"), ("concrete",)),
    )

    def __post_init__(self):
        fields.check(self)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What buttons do: a wind break, fog, concrete as cool as the air."""
        cooler = {"concrete": max(self.air, 5.0)} if self.concrete > max(self.air, 5.0) else {}
        return (
            Count(
                "wind_break",
                _("Wind break: half the wind"),
                "wind",
                {"wind": BREAK * self.wind} if self.wind > 0 else {},
            ),
            Count(
                "fog",
                _("Fog over it"),
                "humidity",
                {"humidity": FOG} if self.humidity < FOG else {},
            ),
            Count("cooler", _("As cool as the air"), "concrete", cooler),
        )

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return {path: value}

    def solve(self) -> Outcome:
        """Answer how fast water leaves, and whether that is too fast."""
        state = drying(self)
        return Outcome(
            structure=self,
            movement=None,
            tension=(),
            cracks=(),
            steel=(),
            verdict=fresh_judging.verdict(state),
            cautions=fresh_judging.cautions(self, state),
            steel_mass=0.0,
            work=partial(fresh_working.working, self, state),
            x=np.zeros(1),
            fresh=state,
            numbers=fresh_judging.numbers(state),
        )
