"""Slabs on the ground that questions are asked about."""

from crackkit.learning.choices import CODES, SLAB_STEEL, clear, drawn
from crackkit.mechanics.base_friction import BASES
from crackkit.structures.ground_slab import GroundSlab
from crackkit.structures.outcome import Outcome

SIZES = {"SI": ("10", "12", "14"), "US": ("#3", "#4", "#5")}
HELD = {"left": 1.0, "right": 1.0}
STRIP = {"SI": 1000.0, "US": 304.8}  # mm


def slab_of(random, system: str, **inputs) -> GroundSlab:
    """Draw a slab in round numbers, without joints, bars, or anything that holds its ends.

    Parameters
    ----------
    random : random.Random
    system : str
        Units; rules and steel go with them.
    **inputs
        Other inputs of the slab.
    """
    usual = {
        "age": 365.0,
        "length": drawn(random, "length", system, 15_000.0, 35_000.0),
        "thickness": drawn(random, "size", system, 125.0, 200.0),
        "humidity": 0.6,
        "curing": 3.0,
        "model": "ACI",
        "exposure": "dry",
        "seed": random.randint(1, 40),
        "code": CODES[system][0],
        "yield_strength": SLAB_STEEL[system],
    }
    return GroundSlab(**(usual | inputs))


def base_of(random):
    """Draw what a slab may lie on."""
    return random.choice(BASES)


def crack_width(outcome: Outcome) -> float:
    """Widest crack beside the joints [mm].

    Raises
    ------
    Unclear
        If there is none.
    """
    clear(bool(outcome.ground.wild) and outcome.ground.complete)
    return max(crack.width for crack in outcome.ground.wild)
