"""The factors against the legal definitions of the units."""

import pytest

from crackkit.mechanics.us_customary import PCF, POUND_FORCE, PSI


def test_a_psi_is_6894_757_pascals():
    # NIST SP 811, appendix B: 1 psi = 6.894 757 E+03 Pa.
    pascals = PSI * 1e6
    assert pascals == pytest.approx(6894.757, rel=1e-7)


def test_water_weighs_62_4_pcf():
    water = 1000 / PCF
    assert water == pytest.approx(62.428, rel=1e-5)


def test_a_pound_of_force_is_4_448_newtons():
    # NIST SP 811, appendix B: 1 lbf = 4.448 222 N.
    newtons = POUND_FORCE * 1.0
    assert newtons == pytest.approx(4.448222, rel=1e-7)
