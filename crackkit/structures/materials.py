"""Inputs that every structure of reinforced concrete shares: codes, durations, uses, weight."""

from crackkit.mechanics import crack_limits
from crackkit.words import _

CODES = (("ACI", "ACI 318-19"), ("EN", "EN 1992-1-1"))
DURATIONS = (
    ("short", _("short: minutes to days")),
    ("lasting", _("lasting: months and years")),
)
EXPOSURES = tuple((limit.key, limit.label) for limit in crack_limits.LIMITS["ACI"])
# Weight of reinforced concrete, N/mm3: EN 1991-1-1 Table A.1 gives 25 kN/m3; 150 lb/ft3
# (23.6 kN/m3) is common practice with ACI 318.
UNIT_WEIGHT = {"EN": 25.0e-6, "ACI": 23.56e-6}
