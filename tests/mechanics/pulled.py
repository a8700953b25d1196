"""Pulled members that several tests share."""

import numpy as np

from crackkit.mechanics.bond import ribbed_bond
from crackkit.mechanics.strength_along import tensile_strength_along
from crackkit.mechanics.tie import Tie

MEAN = 2.9


def tie(seed=0, diameter=12.0, side=100.0, length=3000.0, stations=401, scatter=0.08, **changes):
    """One bar in a square prism of C30/37, its strength scattered by a seed."""
    area = np.pi * diameter**2 / 4
    given = {
        "length": length,
        "concrete_area": side**2 - area,
        "bars_area": area,
        "perimeter": np.pi * diameter,
        "concrete_modulus": 33000.0,
        "bond": ribbed_bond(38.0, diameter / 2),
        "strength": tensile_strength_along(length, stations, MEAN, scatter, seed),
    }
    return Tie(**{**given, **changes})
