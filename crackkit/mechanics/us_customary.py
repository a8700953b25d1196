"""Exact factors from US customary units to N, mm and MPa, for rules printed in inches and psi.

The SI edition of a US standard rounds its constants (4700 for 57 000); here the US form is the
original and is converted without rounding, so that both systems give the same answer.
"""

INCH = 25.4
"""Millimetres in an inch [mm]."""

FOOT = 12 * INCH
"""Millimetres in a foot [mm]."""

POUND = 0.45359237
"""Kilograms in a pound of mass [kg]."""

POUND_FORCE = POUND * 9.80665
"""Newtons in a pound of force [N]."""

PSI = POUND_FORCE / INCH**2
"""Megapascals in a pound per square inch [MPa]."""

PCF = POUND / (FOOT / 1000) ** 3
"""Kilograms per cubic metre in a pound per cubic foot [kg/m3]."""
