"""Moisture in the depth of a slab, against other ways of finding it and against what must be."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from crackkit.mechanics.moisture_diffusion import (
    SEALED,
    Face,
    depth_weights,
    drying_history,
    humidity_at,
    on_ground,
)
from crackkit.mechanics.moisture_diffusivity import Diffusivity, diffusivity_mc1990
from crackkit.mechanics.shrinkage_strain import days_dried

INDOORS = Face(0.5)
BOTTOMS = {
    "sealed": SEALED,
    "damp ground": on_ground(),
    "dry ground": on_ground(0.8),
    "air": INDOORS,
}
bottoms = pytest.mark.parametrize("bottom", BOTTOMS.values(), ids=BOTTOMS)

thicknesses = st.floats(75.0, 300.0)
strengths = st.floats(20.0, 60.0)
airs = st.floats(0.3, 0.95)
films = st.floats(0.8, 10.0)
below = st.sampled_from([SEALED, on_ground(), "air"])
cases = settings(max_examples=40, deadline=None)


def history(thickness, strength, air, film, bottom=SEALED, **more):
    top = Face(air, film)
    return drying_history(
        thickness, diffusivity_mc1990(strength), top, top if bottom == "air" else bottom, **more
    )


def independent(thickness, diffusivity, top, bottom, days, nodes=1441):
    """Humidity at even nodes by the method of lines, the flow from D at the mean humidity."""
    z, d = np.linspace(0.0, thickness, nodes, retstep=True)
    weight = np.full(nodes, d)
    weight[[0, -1]] = 0.5 * d

    def rate(_t, h):
        flow = -diffusivity.at(np.clip(0.5 * (h[1:] + h[:-1]), 0.0, 1.0)) * np.diff(h) / d
        into = np.append(-flow, 0.0) + np.append(0.0, flow)
        into[0] -= top.film * (h[0] - top.humidity)
        into[-1] -= bottom.film * (h[-1] - bottom.humidity)
        return into / weight

    found = solve_ivp(
        rate, (0.0, days[-1]), np.ones(nodes), "LSODA", days, rtol=1e-6, atol=1e-8, lband=1, uband=1
    )
    assert found.success
    return z, weight, found.y.T


@bottoms
@pytest.mark.parametrize(("thickness", "strength"), [(100.0, 25.0), (200.0, 50.0)])
def test_it_agrees_with_lines_followed_by_scipy(bottom, thickness, strength):
    days, D = np.array([10.0, 90.0, 365.0, 1095.0]), diffusivity_mc1990(strength)
    z, weight, expected = independent(thickness, D, INDOORS, bottom, days)
    ours = drying_history(thickness, D, INDOORS, bottom)
    found = np.array([humidity_at(ours, ours.depths, day) for day in days])
    there = np.array([np.interp(ours.depths, z, row) for row in expected])
    assert np.abs(found - there).max() < 0.002
    lost, lost_there = (1.0 - found) @ depth_weights(ours.depths), thickness - expected @ weight
    assert lost == pytest.approx(lost_there, rel=0.01)


def test_even_diffusion_is_the_series_of_a_plane_sheet():
    """CRANK1975, from memory: the top suddenly dry, the bottom sealed, at the usual grid."""
    top, D = Face(0.0, 1000.0), Diffusivity(1.0, dry_share=1.0)
    ours = drying_history(100.0, D, top, days=5000.0)
    k = np.arange(40) + 0.5
    for T in (0.05, 0.1, 0.5):
        z = ours.depths / 100.0
        series = (
            2.0 * np.sin(np.pi * np.outer(z, k)) @ (np.exp(-((np.pi * k) ** 2) * T) / np.pi / k)
        )
        assert humidity_at(ours, ours.depths, 1e4 * T) == pytest.approx(series, abs=4e-3)


@cases
@given(thicknesses, strengths, airs, films, below, st.floats(0.7, 1.0))
def test_no_moisture_is_lost_in_the_counting(thickness, strength, air, film, bottom, initial):
    ours = history(thickness, strength, air, film, bottom, initial=initial)
    left = (initial - ours.humidity) @ depth_weights(ours.depths)
    assert np.abs(left - ours.escaped.sum(axis=1)).max() < 1e-9 * thickness


def test_what_escaped_is_what_the_film_let_through():
    """The sum over days of film times difference of humidity, by another rule of summing."""
    ours = history(150.0, 30.0, 0.5, 2.6, steps=512)
    flow = 2.6 * (ours.humidity[:, 0] - 0.5)
    assert ours.escaped[-1, 0] == pytest.approx(np.trapezoid(flow, ours.days), rel=1e-3)
    assert not ours.escaped[:, 1].any()


@bottoms
def test_twice_the_thickness_takes_four_times_as_long(bottom):
    """h depends on z/L, D t/L2 and film L/D only."""
    thin = drying_history(100.0, diffusivity_mc1990(30.0), Face(0.5, 4.0), bottom, days=300.0)
    half = Face(bottom.humidity, bottom.film / 2.0)
    thick = drying_history(200.0, diffusivity_mc1990(30.0), Face(0.5, 2.0), half, days=1200.0)
    assert thick.humidity == pytest.approx(thin.humidity, rel=1e-13)
    assert thick.days == pytest.approx(4.0 * thin.days, rel=1e-13)
    assert thick.escaped == pytest.approx(2.0 * thin.escaped, rel=1e-9, abs=1e-9)


@bottoms
def test_a_grid_twice_as_fine_is_four_times_as_near(bottom):
    def lost(fine):
        found = history(150.0, 30.0, 0.5, 2.6, bottom, cells=16 * fine, steps=32 * fine)
        return [humidity_at(found, 0.0, day) for day in (30.0, 365.0)] + [found.mean[-1]]

    coarse, middle, fine = (np.array(lost(k)) for k in (2, 4, 8))
    order = np.log2(np.abs(coarse - middle) / np.abs(middle - fine))
    assert np.median(order) == pytest.approx(2.0, abs=0.5)
    assert np.abs(middle - fine).max() < 2e-3


@cases
@given(thicknesses, strengths, airs, st.floats(0.0, 0.1), films, below)
def test_drier_air_never_wets(thickness, strength, air, drier, film, bottom):
    wet = history(thickness, strength, air, film, bottom)
    dry = history(thickness, strength, max(air - drier, 0.3), film, bottom)
    assert (dry.humidity <= wet.humidity + 1e-3).all()


@cases
@given(thicknesses, strengths, airs, films, below)
def test_humidity_stays_between_air_and_wet_and_only_falls(thickness, strength, air, film, bottom):
    ours = history(thickness, strength, air, film, bottom)
    assert ours.humidity.min() > air - 1e-3
    assert ours.humidity.max() < 1.0 + 1e-9
    assert np.diff(ours.humidity, axis=0).max() < 1e-3


@cases
@given(thicknesses, strengths, airs, films)
def test_over_a_sheet_each_layer_is_wetter_than_the_one_above(thickness, strength, air, film):
    ours = history(thickness, strength, air, film)
    assert np.diff(ours.humidity, axis=1).min() > -1e-3


def test_a_slab_that_dries_from_both_faces_dries_evenly_like_half_of_it():
    both = history(200.0, 30.0, 0.5, 2.6, "air", cells=64)
    assert both.humidity == pytest.approx(both.humidity[:, ::-1], abs=1e-12)
    half = history(100.0, 30.0, 0.5, 2.6)
    assert both.humidity[:, :33] == pytest.approx(half.humidity, abs=1e-12)


def test_longer_curing_shifts_drying_and_leaves_a_slab_wetter_at_the_same_age():
    ours, depths = history(150.0, 30.0, 0.5, 2.6), np.linspace(0.0, 150.0, 7)

    def at_age(age, curing):
        return humidity_at(ours, depths, days_dried(age, curing))

    assert at_age(90.0, 3.0) == pytest.approx(at_age(90.0 + 25.0, 28.0))
    wetter = at_age(90.0, 28.0) - at_age(90.0, 3.0)
    assert wetter.min() > 0.0 and wetter.max() < 0.05
    assert (at_age(10.0, 28.0) == 1.0).all()


def test_damp_ground_keeps_the_bottom_wet_and_a_sheet_does_not():
    sheet, damp = history(150.0, 30.0, 0.5, 2.6), history(150.0, 30.0, 0.5, 2.6, on_ground())
    assert damp.humidity[-1, -1] == pytest.approx(1.0, abs=1e-3)
    assert sheet.humidity[-1, -1] < 0.9
    assert damp.escaped[-1, 1] < 0.0 < damp.escaped[-1, 0]


@pytest.mark.parametrize(
    "wrong",
    [
        lambda: Face(50.0),
        lambda: Face(0.5, -1.0),
        lambda: history(0.0, 30.0, 0.5, 2.6),
        lambda: history(150.0, 30.0, 0.5, 2.6, days=0.0),
        lambda: history(150.0, 30.0, 0.5, 2.6, initial=1.1),
        lambda: history(150.0, 30.0, 0.5, 2.6, cells=5),
        lambda: history(150.0, 30.0, 0.5, 2.6, steps=1),
    ],
)
def test_values_out_of_range_are_refused(wrong):
    with pytest.raises(ValueError, match="must|runs|takes"):
        wrong()
