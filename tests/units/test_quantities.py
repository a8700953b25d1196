"""The table of quantities, held against the definitions of the units themselves.

Sources: exact inch and pound of the 1959 international agreement, standard acceleration of the
3rd CGPM (1901), both also in NIST SP 811, appendix B.
"""

from fractions import Fraction

import pytest

from crackkit.units import QUANTITIES, SYSTEMS
from crackkit.units.quantities import scale

INCH = Fraction("25.4")
FOOT = 12 * INCH
POUND = Fraction("0.45359237")
KIP = 1000 * POUND * Fraction("9.80665")

EXACT = {
    "length": FOOT,
    "size": INCH,
    "movement": INCH,
    "width": INCH,
    "force": KIP,
    "line_load": KIP / FOOT,
    "pressure": KIP / 1000 / FOOT**2,
    "strength": KIP / 1000 / INCH**2,
    "stress": KIP / INCH**2,
    "moment": KIP * FOOT,
    "mass": POUND,
    "mass_per_area": POUND / (FOOT / 1000) ** 2,
    "area": INCH**2,
    "inertia": INCH**4,
    "warmth": Fraction(5, 9),
    "wind": 5280 * FOOT / 10**6,
    "bed": KIP / 1000 / INCH**3,
    "mass_rate": POUND / (FOOT / 1000) ** 2,
}


@pytest.mark.parametrize("quantity", EXACT)
def test_us_factors_follow_from_the_definitions(quantity):
    assert scale(quantity, "US").factor == pytest.approx(float(EXACT[quantity]), rel=4e-16)


@pytest.mark.parametrize("system", SYSTEMS)
@pytest.mark.parametrize("quantity", [q for q in QUANTITIES if scale(q, "SI").label])
def test_every_label_means_to_the_algebra_what_the_table_says(quantity, system):
    """An independent reference: pint's own table of units."""
    from crackkit.units import algebra

    way = scale(quantity, system)
    label, factor = way.label.removeprefix("×10⁶ "), way.factor
    factor /= 1e6 if label != way.label else 1.0
    found = algebra._converted(
        algebra._expression(label, not quantity.startswith("mass")), QUANTITIES[quantity].inner
    )
    assert found == pytest.approx(factor, rel=1e-14)


def test_a_third_system_is_refused():
    with pytest.raises(ValueError, match="SI or US"):
        scale("length", "metric")
