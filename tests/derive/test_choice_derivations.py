"""What is derived about a choice of bars is what mechanics works out."""

import math

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import lambdify

from crackkit.derive.bar_spacing import bar_spacing
from crackkit.derive.rust_time import rust_time
from crackkit.mechanics.carbonation import carbonation_depth, years_to_reach
from crackkit.mechanics.crack_width import model_code_2010
from crackkit.mechanics.crack_zone import CrackZone

spaced = {step.key: step.expression for step in bar_spacing().steps}
rusted = {step.key: step.expression for step in rust_time().steps}


def number(equation, values: dict) -> float:
    names = sorted(equation.rhs.free_symbols, key=str)
    return lambdify(names, equation.rhs, "math")(*(values[str(name)] for name in names))


def zone(diameter: float, cover: float, area: float, stress: float, action: str) -> CrackZone:
    return CrackZone(
        steel_stress=stress, diameter=diameter, clear_cover=cover, spacing=150.0,
        steel_area=area, width=1000.0, depth=250.0, effective_depth=250.0 - cover - diameter / 2,
        neutral_axis=50.0 if action == "bending" else 0.0, side_cover=math.inf, number=6.0,
        tensile_strength=2.6, modular_ratio=6.5, action=action,
    )  # fmt: skip


@given(
    diameter=st.floats(6.0, 25.0),
    cover=st.floats(15.0, 60.0),
    area=st.floats(500.0, 3000.0),
    stress=st.floats(250.0, 400.0),
    action=st.sampled_from(["bending", "tension"]),
)
def test_the_derived_spacing_and_width_are_those_of_the_published_rule(
    diameter, cover, area, stress, action
):
    found = model_code_2010(zone(diameter, cover, area, stress, action))
    told = found.values
    values = {name: told[name] for name in ("phi", "rho", "c", "f_ct", "E_s", "b_t")}
    values |= {"tau_b": told["tau"] * told["f_ct"], "beta": told["w"] / told["w_s"] if told["w_s"]
               else 1.0, "sigma_s": told["sigma_s"], "sigma_sr": told["sigma_sr"]}  # fmt: skip
    for key in ("l_b", "s_r", "epsilon_m", "w"):
        values[key] = number(spaced[key], values)
    assert values["s_r"] == pytest.approx(found.spacing, rel=1e-9)
    if found.width:
        assert values["w"] == pytest.approx(float(found.width), rel=1e-9)


@given(l_b=st.floats(10.0, 500.0), cover=st.floats(5.0, 80.0))
def test_bars_of_half_the_diameter_never_halve_the_crack(l_b, cover):
    """The part of the cover stays; without any cover it would be just a half."""
    share = number(spaced["r"], {"l_b": l_b, "c": cover})
    assert 0.5 < share < 1.0
    assert number(spaced["r"], {"l_b": l_b, "c": 0.0}) == pytest.approx(0.5)


def test_half_the_diameter_gives_that_share_of_the_spacing_in_the_rule():
    thick, thin = (model_code_2010(zone(d, 30.0, 1200.0, 300.0, "bending")) for d in (16.0, 8.0))
    # the axis, not the diameter, decides here how much concrete hangs on the bars: (h - x)/3
    share = number(spaced["r"], {"l_b": thick.values["l_s"] - 30.0, "c": 30.0})
    assert thin.spacing / thick.spacing == pytest.approx(share, rel=1e-9)


@given(
    cover=st.floats(5.0, 60.0),
    mix=st.floats(0.40, 0.60),
    humidity=st.floats(50.0, 90.0),
    curing=st.floats(1.0, 14.0),
)
def test_the_derived_years_are_those_of_the_published_model(cover, mix, humidity, curing):
    first = float(carbonation_depth(1.0, mix, humidity, curing))
    values = {"c": cover, "K": first}
    values["T_c"] = number(rusted["T_c"], values)
    assert values["T_c"] == pytest.approx(years_to_reach(cover, mix, humidity, curing), rel=1e-9)
    twice, half = (years_to_reach(f * cover, mix, humidity, curing) for f in (2.0, 0.5))
    assert number(rusted["T_2"], values) == pytest.approx(twice, rel=1e-9)
    assert number(rusted["T_h"], values) == pytest.approx(half, rel=1e-9)
    depth = number(rusted["x"], {"K": first, "T": 30.0})
    assert depth == pytest.approx(float(carbonation_depth(30.0, mix, humidity, curing)), rel=1e-9)


def test_the_depth_is_where_the_pace_has_led_to():
    """The slope of the depth over time is the pace at that depth."""
    K, T, dT = 3.0, 25.0, 1e-4
    depths = [number(rusted["x"], {"K": K, "T": t}) for t in (T - dT, T, T + dT)]
    pace = number(rusted["v"], {"K": K, "x": depths[1]})
    assert (depths[2] - depths[0]) / (2 * dT) == pytest.approx(pace, rel=1e-6)
