"""Mats that questions are asked about."""

from crackkit.learning.choices import CODES, SLAB_STEEL, Unclear, drawn
from crackkit.mechanics.bars import Bar, bar
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import InputError
from crackkit.units.quantities import INCH

SIZES = {"SI": ("8", "10", "12", "14", "16", "20"), "US": ("#3", "#4", "#5", "#6", "#7", "#8")}
STRIP = {"SI": 1000.0, "US": 12 * INCH}
PULLS = {"SI": (180.0, 300.0), "US": (165.0, 250.0)}  # MPa, in bars at work


def mat_of(system: str, steel: Bar, spacing: float, **inputs) -> CrackControl:
    """Make a strip of a slab with a mat.

    Parameters
    ----------
    system : str
        Units; rules and width of the strip go with them.
    steel : Bar
        Main bars.
    spacing : float
        Centre to centre [mm].
    **inputs
        Other inputs of the strip.

    Raises
    ------
    Unclear
        If such a strip cannot be described.
    """
    usual = {
        "size": steel.name,
        "spacing": spacing,
        "cross_size": SIZES[system][1],
        "cross_spacing": 8 * INCH if system == "US" else 200.0,
        "width": STRIP[system],
        "depth": 10 * INCH if system == "US" else 250.0,
        "stones": 0.75 * INCH if system == "US" else 20.0,
        "code": CODES[system][0],
        "yield_strength": SLAB_STEEL[system],
    }
    try:
        return CrackControl(**(usual | inputs))
    except InputError as error:
        raise Unclear(str(error)) from error


def size_of(random, system: str, low: int = 0, high: int = 6) -> Bar:
    """Draw a size of bar that mats are made of."""
    return bar(random.choice(SIZES[system][low:high]))


def pull_of(random, system: str) -> float:
    """Draw a pull in the bars [MPa]."""
    return drawn(random, "stress", system, *PULLS[system])


def width_of(strip: CrackControl) -> float:
    """Width of the cracks of a strip by the rule that governs [mm]."""
    return float(strip.solve().control.worse.band.governing)
