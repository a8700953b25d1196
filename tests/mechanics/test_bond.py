"""Bond of a bar that slips: up, level, down to friction, and back along a stiff line."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import quad

from crackkit.mechanics.bond import BondLaw, linear_bond, plain_bond, ribbed_bond

LAWS = {
    "ribbed": ribbed_bond(38.0, 6.0),
    "ribbed, other": ribbed_bond(38.0, 8.0, "other"),
    "plain": plain_bond(30.0),
    "linear": linear_bond(80.0),
    "splitting": BondLaw(10.0, 0.6, 0.6, 1.0, 0.4, 1.5),
    "brittle": BondLaw(10.0, 0.6, 0.6, 0.6, 0.4, 1.5),
}
each_law = pytest.mark.parametrize("law", LAWS.values(), ids=LAWS)
laws = st.sampled_from(list(LAWS.values()))
slips = st.floats(-12.0, 12.0)


@pytest.mark.parametrize(
    ("mean_strength", "expected"),
    [
        (28.0, [2.10, 3.99, 5.27, 7.60, 10.03, 13.23]),
        (38.0, [2.44, 4.65, 6.14, 8.85, 11.68, 15.41]),
    ],
)
def test_ribbed_bars_as_worked_out_by_hand(mean_strength, expected):
    # fib Model Code 2010, (6.1-1) and Table 6.1-1, from memory; worked out with a calculator.
    slip = [0.01, 0.05, 0.1, 0.25, 0.5, 1.0]
    assert ribbed_bond(mean_strength, 6.0).stress(slip) == pytest.approx(expected, abs=0.006)


def test_beyond_the_peak_bond_is_level_then_falls_to_friction():
    tau = LAWS["ribbed"].stress([1.0, 2.0, 4.0, 6.0, 60.0]) / LAWS["ribbed"].peak
    assert tau == pytest.approx([1.0, 1.0, 0.7, 0.4, 0.4])


def test_under_top_bars_bond_is_half_as_strong_and_reached_later():
    good, other = LAWS["ribbed"], LAWS["ribbed, other"]
    assert other.peak == pytest.approx(good.peak / 2)
    assert (other.peak_slip, other.level_end) == (1.8, 3.6)


def test_a_plain_bar_holds_a_tenth_of_a_ribbed_one_and_keeps_it():
    plain = plain_bond(30.0)
    assert plain.stress([0.1, 5.0]) == pytest.approx(0.3 * math.sqrt(30.0))
    assert plain.peak < 0.12 * LAWS["ribbed"].peak


@given(laws, slips)
def test_bond_opposes_the_slip_alike_both_ways(law, s):
    assert law.stress(-s) == -law.stress(s)
    assert law.stress(s) * s >= 0


@each_law
@pytest.mark.parametrize("slip", [0.003, 0.1, 0.8, 1.7, 3.0, 9.0])
def test_work_is_the_integral_of_bond_over_slip(law, slip):
    corners = [law.peak_slip, law.level_end, law.friction_slip]
    inside = [c for c in corners if c < slip]
    by_parts, _error = quad(law.stress, 0.0, slip, points=inside or None, limit=200)
    assert law.work(slip) == pytest.approx(by_parts, rel=1e-7)


@given(laws, st.floats(1e-9, 12.0))
def test_turning_back_never_gives_more_than_was_put_in(law, s):
    stored = law.stress(s) ** 2 / (2 * law.unloading_stiffness(s))
    assert stored <= law.work(s) * (1 + 1e-12)


@given(laws, st.floats(1e-6, 12.0), st.lists(st.floats(-1.0, 1.0), min_size=1, max_size=6))
def test_no_path_of_slip_creates_energy(law, greatest, shares):
    path = greatest * np.array([1.0, *shares, 1.0])
    tau = law.stress_turned_back(path, greatest)
    round_trip = np.sum((tau[1:] + tau[:-1]) / 2 * np.diff(path))
    done = law.work(greatest)
    assert round_trip >= -1e-9 * done - 1e-9 * np.abs(tau).max() * greatest
    kept = done + np.cumsum((tau[1:] + tau[:-1]) / 2 * np.diff(path))
    assert np.all(kept >= -1e-9 * (done + np.abs(tau).max() * greatest))


@given(laws, slips)
def test_the_way_back_starts_where_slip_stopped_growing(law, s):
    assert law.stress_turned_back(s, s) == law.stress(s)


def test_a_way_back_no_steeper_than_the_code_has_it_would_create_energy():
    # Why the line is steeper than 200 MPa/mm at small slips.
    law, s = LAWS["ribbed"], 1e-3
    assert law.stress(s) ** 2 / (2 * 200.0) > law.work(s)
    assert law.unloading_stiffness(s) == pytest.approx(law.stress(s) / s)
    assert law.unloading_stiffness(0.2) == 200.0


@pytest.mark.parametrize("name", ["top", "Good", ""])
def test_an_unknown_condition_is_refused(name):
    for law in (ribbed_bond, plain_bond):
        with pytest.raises(ValueError, match="good or other"):
            law(30.0, *((6.0,) if law is ribbed_bond else ()), condition=name)


@pytest.mark.parametrize(
    "numbers",
    [
        (0.0, 1.0, 2.0, 6.0, 0.4, 0.0),
        (9.0, 0.0, 2.0, 6.0, 0.4, 1.0),
        (9.0, 1.0, 0.5, 6.0, 0.4, 1.0),
        (9.0, 1.0, 2.0, 1.5, 0.4, 1.0),
        (9.0, 1.0, 2.0, 6.0, 0.0, 1.0),
        (9.0, 1.0, 2.0, 6.0, 1.1, 1.0),
        (9.0, 1.0, 2.0, 6.0, 0.4, 9.1),
    ],
)
def test_a_law_that_is_none_is_refused(numbers):
    with pytest.raises(ValueError, match="bond law"):
        BondLaw(*numbers)


def test_ribs_closer_than_the_level_part_are_refused():
    with pytest.raises(ValueError, match="bond law"):
        ribbed_bond(38.0, 1.5)
