"""Inputs that every structure of reinforced concrete shares, declared once, and its weight."""

from crackkit.mechanics import crack_limits
from crackkit.structures import fields
from crackkit.words import _

CODES = (("ACI", "ACI 318-19"), ("EN", "EN 1992-1-1"))
DURATIONS = (
    ("short", _("short: minutes to days")),
    ("lasting", _("lasting: months and years")),
)
EXPOSURES = tuple((limit.key, limit.label) for limit in crack_limits.LIMITS["ACI"])
EXPANSION = 1e-5
"""Thermal expansion of concrete [1/K], EN 1992-1-1 3.1.3(5)."""

DIRECT_TENSION = {"ACI": "ACI 224.2R", "EN": "EN 1992-1-1 Table 3.1"}
"""Where each family gives the strength in direct tension."""

LEAST_COVER = 10.0
"""Least concrete over bars that can be chosen, whatever the rules ask for [mm]."""

# Weight of reinforced concrete, N/mm3: EN 1991-1-1 Table A.1 gives 25 kN/m3; 150 lb/ft3
# (23.6 kN/m3) is common practice with ACI 318.
UNIT_WEIGHT = {"EN": 25.0e-6, "ACI": 23.56e-6}


def concrete_strength(default: float = 30.0):
    """Declare the cylinder strength [MPa]."""
    return fields.number(
        _("Concrete strength"), "strength", 15.0, 60.0, default, _("Cylinder strength.")
    )


def steel_strength(default: float):
    """Declare the yield strength of the bars [MPa]."""
    return fields.number(
        _("Steel yields at"), "stress", 250.0, 600.0, default, _("Yield strength of the bars.")
    )


def place_and_use(default: str):
    """Declare the exposure."""
    return fields.choice(_("Place and use"), EXPOSURES, default, _("Sets the crack width limit."))


def load_duration():
    """Declare how long the load stays."""
    return fields.choice(_("The load stays"), DURATIONS, "short")


def code_family(default: str):
    """Declare the family of rules."""
    return fields.choice(
        _("Rules of"), CODES, default, _("Family of rules for strength and limit.")
    )


def own_weight():
    """Declare whether the weight of the concrete counts."""
    return fields.switch(_("Own weight"), True, _("Count the weight of the concrete."))


def looked_at_width():
    """Declare the width of a beam, or of the strip of a slab [mm]."""
    return fields.number(
        _("Width"),
        "size",
        150.0,
        2000.0,
        1000.0,
        _("Of the beam; or of the strip of slab that is looked at, 1 m or 1 ft."),
    )
