"""How readily moisture moves: the law, its integral, and what it refuses."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from crackkit.mechanics.moisture_diffusivity import (
    Diffusivity,
    diffusivity_mc1990,
    potential_table,
)


@given(st.floats(0.3, 1.0))
@settings(max_examples=20, deadline=None)
def test_the_diffusivity_is_the_slope_of_the_potential(humidity):
    D = diffusivity_mc1990(30.0)
    known, _share, potential = potential_table(D)
    area = quad(D.share, 0.0, humidity, epsabs=1e-12)[0]
    assert np.interp(humidity, known, potential) == pytest.approx(area, abs=1e-6)


def test_wet_concrete_passes_moisture_at_twenty_times_the_pace_of_dry():
    D = diffusivity_mc1990(30.0)
    assert D.at(1.0) == D.saturated == pytest.approx(28.8)
    assert D.at(0.8) == pytest.approx(0.525 * D.saturated)
    assert (np.diff(D.at(np.linspace(0.3, 1.0, 50))) >= 0).all()


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Diffusivity(0.0),
        lambda: Diffusivity(1.0, dry_share=0.0),
        lambda: Diffusivity(1.0, middle=1.0),
        lambda: diffusivity_mc1990(0.0),
    ],
)
def test_values_out_of_range_are_refused(wrong):
    with pytest.raises(ValueError, match="must"):
        wrong()
