"""What a slab drier at the top would do: by hand, by the code, and by what must be."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.humidity_shrinkage import (
    ShrinkageHistory,
    dry_shrinkage,
    lever_weights,
    local_shrinkage,
    shrinkage_history,
)
from crackkit.mechanics.moisture_diffusion import (
    SEALED,
    Face,
    drying_history,
    humidity_at,
    on_ground,
)
from crackkit.mechanics.moisture_diffusivity import diffusivity_mc1990
from crackkit.mechanics.shrinkage_mc2010 import drying_end

DEPTHS = 150.0 * np.linspace(0.0, 1.0, 33) ** 2


def history(strain):
    return ShrinkageHistory(DEPTHS, np.array([1.0]), np.atleast_2d(strain))


def slab(thickness=150.0, bottom=SEALED, humidity=0.5, film=2.6, **more):
    D = diffusivity_mc1990(30.0)
    found = drying_history(thickness, D, Face(humidity, film), bottom, **more)
    return shrinkage_history(found, dry_shrinkage(38.0))


@given(st.floats(-1e-3, 1e-3), st.floats(-1e-3, 1e-3))
@settings(max_examples=20, deadline=None)
def test_a_straight_profile_is_mean_and_slope_and_nothing_else(top, bottom):
    ours = history(top + (bottom - top) * DEPTHS / 150.0)
    assert ours.mean == pytest.approx([0.5 * (top + bottom)], abs=1e-15)
    assert ours.gradient == pytest.approx([top - bottom], abs=1e-15)
    assert ours.curvature == pytest.approx([(top - bottom) / 150.0], abs=1e-17)
    assert ours.uneven == pytest.approx(np.zeros((1, 33)), abs=1e-15)


def test_a_bent_profile_by_hand():
    """s = (1 - z/L)^2: mean 1/3, slope 12 (1/6 - 1/12) = 1 from face to face."""
    depths = np.linspace(0.0, 150.0, 2001)
    ours = ShrinkageHistory(depths, np.array([1.0]), (1.0 - depths[None, :] / 150.0) ** 2)
    assert ours.mean == pytest.approx([1 / 3], rel=1e-6)
    assert ours.gradient == pytest.approx([1.0], rel=1e-6)
    assert ours.uneven[0, 0] == pytest.approx(1.0 - 1 / 3 - 0.5, abs=1e-6)


def test_levers_are_exact_for_what_is_straight_between_nodes():
    y = 75.0 - DEPTHS
    assert lever_weights(DEPTHS).sum() == pytest.approx(0.0, abs=1e-9)
    assert y @ lever_weights(DEPTHS) == pytest.approx(150.0**3 / 12)


def test_a_slab_at_rest_shortens_as_the_code_says():
    """Thin, and dried for so long that no gradient is left: MC2010, 5.1.9.4.4, from memory."""
    ours = slab(thickness=75.0, days=1e6)
    assert ours.mean[-1] == pytest.approx(drying_end(38.0, 50.0), rel=1e-3)
    assert ours.gradient[-1] == pytest.approx(0.0, abs=1e-6)
    assert ours.strain[0] == pytest.approx(0.0, abs=1e-15)


def test_a_layer_that_becomes_wetter_swells():
    assert local_shrinkage(0.9, 600e-6, initial=0.8) < 0.0
    assert local_shrinkage([1.0, 0.5, 0.0], 8e-4) == pytest.approx([0.0, 7e-4, 8e-4])


def test_a_gradient_comes_and_goes_while_the_mean_only_grows():
    ours = slab(days=4000.0)
    peak = int(ours.gradient.argmax())
    assert 30.0 < ours.days[peak] < 120.0
    assert ours.gradient[peak] > 2.0 * ours.gradient[-1] > 0.0
    assert (np.diff(ours.mean) > 0).all()


def test_without_a_film_the_greatest_gradient_is_that_of_every_thickness_but_later():
    """It comes after a time that goes with the square of the thickness."""
    found = [slab(thickness=L, film=1000.0, days=0.04 * L**2) for L in (100.0, 150.0, 300.0)]
    peaks = [ours.gradient.max() for ours in found]
    days = np.array([ours.days[ours.gradient.argmax()] for ours in found])
    assert peaks == pytest.approx(peaks[0] * np.ones(3), rel=2e-3)
    assert days / days[0] == pytest.approx([1.0, 2.25, 9.0], rel=1e-6)


def test_drying_from_both_faces_does_not_curl():
    both = slab(bottom=Face(0.5))
    assert both.gradient == pytest.approx(np.zeros(both.days.size), abs=1e-15)
    assert both.mean[-1] > slab().mean[-1]


def test_damp_ground_keeps_a_slab_curled_and_a_sheet_lets_it_flatten():
    damp, sheet = slab(bottom=on_ground(), days=4000.0), slab(days=4000.0)
    assert damp.gradient[-1] > 0.9 * damp.gradient.max()
    assert sheet.gradient[-1] < 0.6 * sheet.gradient.max()


@given(st.floats(75.0, 300.0), st.floats(0.3, 0.9), st.floats(0.8, 8.0))
@settings(max_examples=25, deadline=None)
def test_drier_air_shortens_more_and_lifts_edges(thickness, humidity, film):
    ours = slab(thickness, humidity=humidity, film=film)
    damper = slab(thickness, humidity=humidity + 0.05, film=film)
    assert (ours.mean >= damper.mean - 1e-6).all()
    assert (ours.gradient >= -1e-6).all()


def test_layers_shorten_by_the_humidity_they_have():
    D = diffusivity_mc1990(30.0)
    found = drying_history(150.0, D, Face(0.5), initial=0.95)
    ours = shrinkage_history(found, 700e-6)
    h = humidity_at(found, found.depths[3], found.days[40])
    assert ours.strain[40, 3] == pytest.approx(700e-6 * (0.95**3 - h**3), rel=1e-9)
