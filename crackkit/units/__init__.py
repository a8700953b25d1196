"""The border between people and mechanics: US or SI outside, N, mm, MPa inside.

Loading this package costs next to nothing; the library that does the algebra of units is loaded
when a text is read whose unit is not one of our own labels.
"""

from crackkit.units.bar_notes import (
    BarCount,
    BarSpacing,
    parse_bars,
    parse_point_load,
    parse_point_loads,
)
from crackkit.units.display import inner, number, shown, unit
from crackkit.units.quantities import QUANTITIES, SI, SYSTEMS, US, Quantity, Scale
from crackkit.units.ranges import explain, slider_range
from crackkit.units.reading import UnitError, parse

__all__ = [
    "QUANTITIES",
    "SI",
    "SYSTEMS",
    "US",
    "BarCount",
    "BarSpacing",
    "Quantity",
    "Scale",
    "UnitError",
    "explain",
    "inner",
    "number",
    "parse",
    "parse_bars",
    "parse_point_load",
    "parse_point_loads",
    "shown",
    "slider_range",
    "unit",
]
