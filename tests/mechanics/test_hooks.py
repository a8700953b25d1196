"""Hooked bars: the length they need and the room they take."""

from math import inf, pi

import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import hooks
from crackkit.mechanics.bars import ASTM, bar
from crackkit.mechanics.development import development_length_en
from crackkit.mechanics.us_customary import INCH, PSI

GRADE_60 = 60_000 * PSI
strengths = st.floats(17, 90)
diameters = st.floats(6, 57)


def deep(diameter, strength, fy=GRADE_60, **more):
    """A hook deep inside the member and far from the next one."""
    return hooks.hooked_length_aci(diameter, fy, strength, inf, inf, **more)


def test_a_deep_hook_in_inches_by_hand():
    # 60 000/(55 sqrt(4000)) x (4000/15 000 + 0.6) x 1.0^1.5 = 14.949 in
    assert deep(INCH, 4000 * PSI) / INCH == pytest.approx(14.949, rel=1e-4)


def test_a_hook_of_which_nothing_is_known_needs_twice_as_much():
    # psi_r = 1.6 and psi_o = 1.25
    assert hooks.hooked_length_aci(INCH, GRADE_60, 4000 * PSI) == pytest.approx(
        2.0 * deep(INCH, 4000 * PSI)
    )


@pytest.mark.parametrize(("diameter", "least"), [(35.0, 280.0), (9.5, 152.4)])
def test_a_hook_keeps_a_least_length(diameter, least):
    # 8 db and 6 in, each in its turn
    assert deep(diameter, 90.0, fy=100.0) == pytest.approx(least)


@given(diameters, strengths)
def test_ties_a_deep_place_and_bare_bars_never_lengthen_a_hook(diameter, strength):
    poor = hooks.hooked_length_aci(diameter, GRADE_60, strength)
    for better in (
        {"side_cover": 6 * diameter},
        {"side_cover": 63.5, "place": "column_core"},
        {"spacing": 6 * diameter},
        {"tie_share": 0.4},
    ):
        assert hooks.hooked_length_aci(diameter, GRADE_60, strength, **better) <= poor
    assert hooks.hooked_length_aci(diameter, GRADE_60, strength, coating=1.2) >= poor


@given(diameters, strengths, st.floats(1.0, 1.5))
def test_a_thicker_bar_and_weaker_concrete_need_more(diameter, strength, more):
    assert deep(diameter * more, strength) >= deep(diameter, strength)
    assert deep(diameter, strength * more) <= deep(diameter, strength) * (1 + 1e-12)


@pytest.mark.parametrize(
    ("name", "spacing", "share", "factor"),
    [
        ("#8", 152.4, 0.0, 1.0),
        ("#8", 150.0, 0.0, 1.6),
        ("#8", 50.0, 0.4, 1.0),
        ("#11", 50.0, 0.4, 1.0),
        ("#14", 500.0, 1.0, 1.6),
    ],
)
def test_ties_or_distance_keep_a_hook_from_splitting(name, spacing, share, factor):
    assert hooks.tie_factor_aci(bar(name).diameter, spacing, share) == factor


@pytest.mark.parametrize(
    ("name", "cover", "place", "factor"),
    [
        ("#8", 152.4, "elsewhere", 1.0),
        ("#8", 150.0, "elsewhere", 1.25),
        ("#8", 63.5, "column_core", 1.0),
        ("#8", 60.0, "column_core", 1.25),
        ("#14", inf, "column_core", 1.25),
    ],
)
def test_cover_beside_a_hook_keeps_it_from_splitting(name, cover, place, factor):
    assert hooks.side_factor_aci(bar(name).diameter, cover, place) == factor


@pytest.mark.parametrize(("psi", "factor"), [(3000, 0.8), (4500, 0.9), (6000, 1.0), (9000, 1.0)])
def test_the_strength_factor_ends_at_one(psi, factor):
    assert hooks.strength_factor_aci(psi * PSI) == pytest.approx(factor)


@pytest.mark.parametrize("name", ASTM)
def test_a_hook_of_each_size_fits_its_table(name):
    d = bar(name).diameter
    bend = {**dict.fromkeys(("#9", "#10", "#11"), 8.0), **dict.fromkeys(("#14", "#18"), 10.0)}
    shape = hooks.hook_shape_aci(d)
    assert shape.bend_diameter == pytest.approx(bend.get(name, 6.0) * d)
    assert shape.straight == pytest.approx(12 * d)
    # 180 degrees: 4 db or 2.5 in, which governs up to #5
    back = hooks.hook_shape_aci(d, 180)
    assert back.straight == pytest.approx(max(4 * d, 63.5))
    assert (back.straight == pytest.approx(63.5)) == (name in ("#3", "#4", "#5"))


def test_a_hook_takes_the_room_of_its_bend_and_its_end():
    # 90 degrees: 3 db + db + 12 db; 180 degrees: 6 db + 2 db
    assert hooks.hook_shape_aci(20.0).height == pytest.approx(320.0)
    assert hooks.hook_shape_aci(20.0, 180).height == pytest.approx(160.0)
    assert hooks.hook_shape_en(16.0).height == pytest.approx((2 + 1 + 5) * 16)
    assert hooks.hook_shape_en(20.0).height == pytest.approx((3.5 + 1 + 5) * 20)
    assert hooks.hook_shape_en(16.0, 180).height == pytest.approx(6 * 16)


def test_the_bar_of_a_hook_runs_round_the_middle_of_the_bend():
    assert hooks.hook_shape_aci(20.0).bar_length == pytest.approx(pi / 4 * 140 + 240)
    assert hooks.hook_shape_en(16.0, 180).bar_length == pytest.approx(pi / 2 * 80 + 80)


@given(diameters, st.floats(50, 500), st.floats(12, 60), st.sampled_from([1.0, 0.7]))
def test_a_bend_in_enough_cover_saves_three_tenths(diameter, stress, strength, bond):
    straight = development_length_en(diameter, stress, strength, bond)
    thin = hooks.hooked_length_en(diameter, stress, strength, bond, 3.0 * diameter)
    bent = hooks.hooked_length_en(diameter, stress, strength, bond, 3.1 * diameter)
    assert thin == straight
    least = max(10 * diameter, 100.0)
    assert bent == pytest.approx(max(0.7 * straight, least) if straight > least else least)


def test_unknown_hooks_are_refused():
    with pytest.raises(ValueError, match="90 or 180"):
        hooks.hook_shape_aci(16.0, 135)
    with pytest.raises(ValueError, match="90 to 180"):
        hooks.hook_shape_en(16.0, 45)
    with pytest.raises(ValueError, match="column_core"):
        hooks.hooked_length_aci(16.0, 420.0, 30.0, place="beam")
