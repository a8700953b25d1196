"""Crack widths with fibres: the plain rule without them, closer and finer cracks with them."""

from dataclasses import replace
from math import inf, pi

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.crack_width import model_code_2010, model_code_2010_fibres
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.mechanics.fibre_section import fibre_cracked, tension_with_fibres
from tests.mechanics.test_crack_width import BEAM, TIE
from tests.mechanics.test_crack_width_properties import bars, zones

residuals = st.floats(0.0, 4.0)


@pytest.mark.parametrize("duration", ["short", "lasting"])
@pytest.mark.parametrize("zone", [BEAM, TIE], ids=["bending", "tension"])
def test_independent_recomputation_from_the_recalled_formulas(zone, duration):
    zone, f_F = replace(zone, duration=duration), 1.44
    answer = model_code_2010_fibres(zone, f_F)
    d_c, h, x = zone.clear_cover + zone.diameter / 2, zone.depth, zone.neutral_axis
    bending = zone.action == "bending"
    heights = (2.5 * d_c, h / 2, (h - x) / 3) if bending else (2.5 * d_c, h / 2)
    rho = zone.steel_area / (zone.width * min(heights))
    tau_bms = 1.8 * zone.tensile_strength
    l_s = zone.clear_cover + zone.diameter / rho * (zone.tensile_strength - f_F) / tau_bms / 4
    sigma_sr = (zone.tensile_strength - f_F) / rho * (1 + zone.modular_ratio * rho)
    beta = {"short": 0.6, "lasting": 0.4}[duration]
    w = 2 * l_s * (zone.steel_stress - beta * sigma_sr) / 200000
    w *= (h - x) / (zone.effective_depth - x) if bending else 1
    assert answer.width == pytest.approx(w, rel=1e-12)
    assert answer.spacing == pytest.approx(2 * l_s, rel=1e-12)


@given(zone=zones())
def test_without_residual_strength_it_is_the_plain_rule_to_the_last_digit(zone):
    plain, fibres = model_code_2010(zone), model_code_2010_fibres(zone, 0.0)
    assert (fibres.width, fibres.spacing, fibres.strain) == (
        plain.width,
        plain.spacing,
        plain.strain,
    )
    assert plain.values.items() <= fibres.values.items()


@given(zone=zones(), beyond=st.floats(1.0, 3.0))
def test_fibres_as_strong_as_the_concrete_leave_only_the_cover_between_cracks(zone, beyond):
    answer = model_code_2010_fibres(zone, beyond * zone.tensile_strength)
    assert answer.spacing == 2 * zone.clear_cover
    assert answer.strain == zone.steel_tension / zone.steel_modulus


@given(zone=zones(), residual=residuals, more=st.floats(1.0, 3.0))
def test_more_residual_strength_never_moves_cracks_apart(zone, residual, more):
    zone = replace(zone, duration="short")
    closer = model_code_2010_fibres(zone, more * residual).spacing
    assert closer <= model_code_2010_fibres(zone, residual).spacing


@given(
    diameter=bars,
    side=st.floats(100.0, 600.0),
    ratio=st.floats(0.004, 0.04),
    load=st.floats(0.5, 4.0),
    residual=residuals,
    more=st.floats(1.0, 3.0),
)
def test_more_residual_strength_never_widens_a_crack_of_a_tie(
    diameter, side, ratio, load, residual, more
):
    concrete, steel = side**2, ratio * side**2
    force = load * 2.9 * concrete

    def width(f_F):
        stress = tension_with_fibres(force, steel, concrete, f_F)
        zone = replace(
            TIE,
            steel_stress=stress,
            diameter=diameter,
            steel_area=steel / 2,
            width=side,
            depth=side,
            effective_depth=side - 30.0 - diameter / 2,
            clear_cover=30.0,
        )
        return model_code_2010_fibres(zone, f_F).width

    assert width(more * residual) <= width(residual) * (1 + 1e-12)


@given(
    depth=st.floats(120.0, 600.0),
    spacing=st.floats(80.0, 300.0),
    diameter=bars,
    load=st.floats(1.2, 4.0),
    residual=st.floats(0.0, 1.8),
    more=st.floats(0.0, 1.8),
)
def test_more_residual_strength_never_widens_a_crack_of_a_bent_slab(
    depth, spacing, diameter, load, residual, more
):
    """Up to a residual strength of six tenths of the concrete's and above the cracking moment.

    With more, thin slabs full of thick bars see the third effect prevail, by a hundredth of a
    millimetre or less: there the concrete has stopped helping the bars.
    """
    d, area = depth - 30.0 - diameter / 2, 1000.0 / spacing * pi * diameter**2 / 4

    def width(f_F):
        moment = load * 2.9 * 1000.0 * depth**2 / 6
        state = fibre_cracked(1000.0, depth, [d], [area], 6.0, 33000.0, moment, f_F)
        if state.fibres_alone:
            return 0.0
        zone = CrackZone(
            steel_stress=float(state.steel_stresses[0]),
            diameter=diameter,
            clear_cover=30.0,
            spacing=spacing,
            steel_area=area,
            width=1000.0,
            depth=depth,
            effective_depth=d,
            neutral_axis=state.squeezed,
            side_cover=inf,
            number=1000.0 / spacing,
            tensile_strength=2.9,
            modular_ratio=6.0,
        )
        return model_code_2010_fibres(zone, f_F).width

    less, more = sorted((residual, more))
    assert width(more) <= width(less) * (1 + 1e-9)


def test_a_residual_strength_alone_may_widen_a_crack_of_thick_cover():
    """The steel stress must be that with fibres: left as it was, the strain grows."""
    zone = replace(TIE, steel_stress=170.0)
    assert model_code_2010_fibres(zone, 1.0).strain > model_code_2010(zone).strain
    assert model_code_2010_fibres(zone, 1.0).width > model_code_2010(zone).width


@pytest.mark.parametrize("zone", [BEAM, TIE], ids=["bending", "tension"])
@pytest.mark.parametrize("residual", [0.0, 1.2, 5.0])
def test_the_printed_formulas_give_the_printed_numbers(zone, residual):
    known = {"max": max, "min": min}
    answer = model_code_2010_fibres(zone, residual)
    for step in answer.steps:
        if step.formula:
            again = eval(step.formula, {"__builtins__": {}}, known)  # noqa: S307
            assert step.value == pytest.approx(again, rel=1e-12, abs=1e-15), step
        known[step.symbol] = step.value
    assert known["w"] == answer.width


def test_a_row_of_residual_strengths_gives_what_each_gives():
    residuals = np.linspace(0.0, 4.0, 9)
    together = model_code_2010_fibres(replace(BEAM, duration="lasting"), residuals).width
    apart = [
        model_code_2010_fibres(replace(BEAM, duration="lasting"), float(f)).width for f in residuals
    ]
    assert together == pytest.approx(apart, rel=1e-12)


def test_a_negative_residual_strength_is_refused():
    with pytest.raises(ValueError, match="cannot be negative"):
        model_code_2010_fibres(BEAM, -0.1)
