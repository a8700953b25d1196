"""The table of quantities: how each is written in SI and in US units.

All factors follow from three exact definitions (the 1959 international yard and pound and the
standard acceleration of 1901): 1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s2. A
"temperature" is a difference; a "warmth" is read off a thermometer.
"""

from dataclasses import dataclass

from crackkit.words import _

SI, US = "SI", "US"
SYSTEMS = (SI, US)

INCH = 25.4  # mm
FOOT = 304.8  # mm
POUND = 0.45359237  # kg
POUND_FORCE = 4.4482216152605  # N
KIP = 4448.2216152605  # N
PSI = POUND_FORCE / 645.16  # MPa
MILE = 1.609344  # km


@dataclass(frozen=True, slots=True)
class Scale:
    """How one quantity is written in one system.

    Attributes
    ----------
    label : str
        The unit as it is printed, empty where there is none.
    factor : float
        Inner units (N, mm, MPa) in one printed unit.
    decimals : int
        Decimals printed [-].
    step : float
        Step of a slider in the printed unit.
    zero : float
        What is printed as 0, in inner units: other than 0 where a scale begins elsewhere.
    """

    label: str
    factor: float
    decimals: int
    step: float
    zero: float = 0.0


@dataclass(frozen=True, slots=True)
class Quantity:
    """One kind of quantity: its name, its two scales and how people write it.

    Attributes
    ----------
    name : str
        Name as used in a sentence.
    inner : str
        Inner unit, spelled for the algebra of units.
    SI, US : Scale
        The two ways to print it.
    examples : tuple of str
        One text in each system, for messages.
    """

    name: str
    inner: str
    SI: Scale
    US: Scale
    examples: tuple[str, str]


QUANTITIES: dict[str, Quantity] = {
    "length": Quantity(
        _("length"),
        "mm",
        Scale("m", 1000.0, 2, 0.1),
        Scale("ft", FOOT, 1, 0.5),
        ("6.1 m", "20 ft"),
    ),
    "size": Quantity(
        _("size"),
        "mm",
        Scale("mm", 1.0, 0, 5.0),
        Scale("in", INCH, 2, 0.25),
        ("40 mm", "1 1/2 in"),
    ),
    "movement": Quantity(
        _("movement"),
        "mm",
        Scale("mm", 1.0, 1, 0.1),
        Scale("in", INCH, 3, 0.005),
        ("5 mm", "0.2 in"),
    ),
    "width": Quantity(
        _("crack width"),
        "mm",
        Scale("mm", 1.0, 2, 0.05),
        Scale("in", INCH, 4, 0.001),
        ("0.3 mm", "0.012 in"),
    ),
    "force": Quantity(
        _("force"),
        "N",
        Scale("kN", 1000.0, 1, 1.0),
        Scale("kip", KIP, 2, 0.25),
        ("45 kN", "10 kip"),
    ),
    "line_load": Quantity(
        _("load per length"),
        "N/mm",
        Scale("kN/m", 1.0, 1, 0.5),
        Scale("kip/ft", KIP / FOOT, 2, 0.05),
        ("13 kN/m", "0.9 kip/ft"),
    ),
    "pressure": Quantity(
        _("load per area"),
        "MPa",
        Scale("kPa", 0.001, 1, 0.5),
        Scale("psf", POUND_FORCE / FOOT**2, 0, 10.0),
        ("5 kPa", "100 psf"),
    ),
    "strength": Quantity(
        _("concrete stress"),
        "MPa",
        Scale("MPa", 1.0, 1, 1.0),
        Scale("psi", PSI, 0, 100.0),
        ("27 MPa", "4000 psi"),
    ),
    "stress": Quantity(
        _("steel stress"),
        "MPa",
        Scale("MPa", 1.0, 0, 10.0),
        Scale("ksi", 1000 * PSI, 1, 1.0),
        ("420 MPa", "60 ksi"),
    ),
    "moment": Quantity(
        _("moment"),
        "N*mm",
        Scale("kN·m", 1e6, 1, 1.0),
        Scale("kip·ft", KIP * FOOT, 1, 1.0),
        ("120 kN·m", "90 kip·ft"),
    ),
    "mass": Quantity(
        _("mass"),
        "kg",
        Scale("kg", 1.0, 1, 1.0),
        Scale("lb", POUND, 1, 1.0),
        ("40 kg", "90 lb"),
    ),
    "mass_per_area": Quantity(
        _("mass per area"),
        "kg/m**2",
        Scale("kg/m²", 1.0, 2, 0.1),
        Scale("lb/ft²", POUND / (FOOT / 1000) ** 2, 2, 0.02),
        ("8 kg/m²", "1.6 lb/ft²"),
    ),
    "area": Quantity(
        _("area"),
        "mm**2",
        Scale("mm²", 1.0, 0, 50.0),
        Scale("in²", 645.16, 2, 0.1),
        ("850 mm²", "1.32 in²"),
    ),
    "inertia": Quantity(
        _("second moment of area"),
        "mm**4",
        Scale("×10⁶ mm⁴", 1e6, 1, 10.0),
        Scale("in⁴", 645.16**2, 0, 25.0),
        ("3125 ×10⁶ mm⁴", "7500 in⁴"),
    ),
    "strain": Quantity(
        _("strain"),
        "dimensionless",
        Scale("‰", 0.001, 2, 0.05),
        Scale(_("millionths"), 1e-6, 0, 50.0),
        ("0.5 ‰", "500 millionths"),
    ),
    "temperature": Quantity(
        _("temperature difference"),
        "delta_degree_Celsius",
        Scale("°C", 1.0, 1, 1.0),
        Scale("°F", 5 / 9, 0, 1.0),
        ("20 °C", "36 °F"),
    ),
    "warmth": Quantity(
        _("temperature"),
        "delta_degree_Celsius",
        Scale("°C", 1.0, 0, 1.0),
        Scale("°F", 5 / 9, 0, 1.0, -160 / 9),  # 0 °F is 17.8 °C below the freezing of water
        ("20 °C", "68 °F"),
    ),
    "wind": Quantity(
        _("wind speed"),
        "km/hour",
        Scale("km/h", 1.0, 0, 1.0),
        Scale("mph", MILE, 0, 1.0),
        ("20 km/h", "12 mph"),
    ),
    "bed": Quantity(
        _("pressure of the ground per settlement"),
        "N/mm**3",
        Scale("MN/m³", 1e-3, 0, 1.0),
        Scale("lb/in³", POUND_FORCE / INCH**3, 0, 5.0),
        ("50 MN/m³", "200 lb/in³"),
    ),
    "mass_rate": Quantity(
        _("mass per area and hour"),
        "kg/m**2/hour",
        Scale("kg/m²/h", 1.0, 2, 0.1),
        Scale("lb/ft²/h", POUND / (FOOT / 1000) ** 2, 3, 0.02),
        ("1 kg/m²/h", "0.2 lb/ft²/h"),
    ),
    "time": Quantity(
        _("time"),
        "day",
        Scale("d", 1.0, 0, 1.0),
        Scale("d", 1.0, 0, 1.0),
        ("28 d", "4 weeks"),
    ),
    "age": Quantity(
        _("age"),
        "day",
        Scale("d", 1.0, 0, 1.0),
        Scale("d", 1.0, 0, 1.0),
        ("28 d", "4 weeks"),
    ),
    "count": Quantity(
        _("number"),
        "dimensionless",
        Scale("", 1.0, 0, 1.0),
        Scale("", 1.0, 0, 1.0),
        ("3", "4"),
    ),
    "ratio": Quantity(
        _("ratio"),
        "dimensionless",
        Scale("", 1.0, 2, 0.05),
        Scale("", 1.0, 2, 0.05),
        ("0.5", "50 %"),
    ),
    "angle": Quantity(
        _("angle"),
        "radian",
        Scale("°", 3.141592653589793 / 180, 0, 1.0),
        Scale("°", 3.141592653589793 / 180, 0, 1.0),
        ("45°", "0.8 rad"),
    ),
}


def scale(quantity: str, system: str) -> Scale:
    """Give the scale of a quantity in a system, with a plain error for a name not in the table.

    Parameters
    ----------
    quantity : str
        Key of `QUANTITIES`.
    system : str
        ``"SI"`` or ``"US"``.

    Raises
    ------
    KeyError
        If the quantity is not in the table.
    ValueError
        If the system is neither.
    """
    if system == SI:
        return QUANTITIES[quantity].SI
    if system == US:
        return QUANTITIES[quantity].US
    raise ValueError(_("units are SI or US, not {system!r}").format(system=system))
