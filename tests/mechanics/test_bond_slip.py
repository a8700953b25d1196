"""Slip inside a piece between cracks, against closed forms and an integrator that knows nothing."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from crackkit.mechanics.bond import linear_bond, plain_bond, ribbed_bond
from crackkit.mechanics.bond_slip import (
    BondSlip,
    end_slip,
    piece,
    slip_along,
    slip_in_long_bar,
    transfer_length,
)

KAPPA = 1.8e-6
RIBBED = BondSlip(ribbed_bond(38.0, 6.0), KAPPA)
PLAIN = BondSlip(plain_bond(30.0), KAPPA)
LINEAR = BondSlip(linear_bond(100.0), KAPPA)
equations = st.sampled_from([RIBBED, PLAIN, LINEAR])
gradients = st.floats(1e-5, 2.5e-3)
halves = st.floats(5.0, 800.0)


def profile(equation, half, e, number=401):
    p, core = piece(equation, half, e)
    x = np.linspace(0.0, half, number)
    return x, *slip_along(equation, x, p, core)


@pytest.mark.parametrize("half", [5.0, 60.0, 150.0, 500.0, 1500.0])
@pytest.mark.parametrize("e", [1e-5, 3e-4, 2e-3])
def test_linear_bond_gives_the_hyperbolic_sine(half, e):
    root = np.sqrt(KAPPA * 100.0)
    x, s, slope = profile(LINEAR, half, e)
    scale = e / np.cosh(root * half)
    assert s == pytest.approx(scale * np.sinh(root * x) / root, rel=1e-6, abs=1e-12 * e)
    assert slope == pytest.approx(scale * np.cosh(root * x), rel=1e-6, abs=1e-12 * e)
    assert end_slip(LINEAR, half, e) == pytest.approx(e * np.tanh(root * half) / root, rel=1e-6)


@pytest.mark.parametrize("e", [1e-4, 1e-3, 2.5e-3])
def test_a_long_bar_slips_by_the_power_law_of_balazs(e):
    # Balazs (1993), from memory: s = (kappa tau_max (1 - a)^2/(2 (1 + a) s1^a) x^2)^(1/(1 - a)).
    x, s, slope = profile(RIBBED, 900.0, e, 1801)
    law, a = RIBBED.law, RIBBED.law.exponent
    length = float(transfer_length(RIBBED, e))
    far = np.maximum(x - (900.0 - length), 0.0)
    factor = KAPPA * law.peak * (1 - a) ** 2 / (2 * (1 + a) * law.peak_slip**a)
    assert s == pytest.approx((factor * far**2) ** (1 / (1 - a)), rel=1e-9, abs=1e-15)
    assert slope[-1] == pytest.approx(e, rel=1e-9)
    work = e**2 / (2 * KAPPA)
    assert law.work(slip_in_long_bar(RIBBED, e)) == pytest.approx(work, rel=1e-12)
    assert s[-1] == pytest.approx(slip_in_long_bar(RIBBED, e), rel=1e-9)


def test_a_plain_bar_in_a_long_piece_slides_level_beyond_its_peak():
    s = slip_in_long_bar(PLAIN, 2e-3)
    assert s > 2 * PLAIN.law.peak_slip
    assert PLAIN.law.work(s) == pytest.approx(2e-3**2 / (2 * KAPPA), rel=1e-12)
    half = 1.2 * float(transfer_length(PLAIN, 2e-3))
    assert end_slip(PLAIN, half, 2e-3) == pytest.approx(s, rel=1e-9)
    assert piece(PLAIN, half, 2e-3)[1] == pytest.approx(half / 6, rel=1e-9)


@pytest.mark.parametrize("equation", [RIBBED, PLAIN], ids=["ribbed", "plain"])
@pytest.mark.parametrize("half", [15.0, 60.0, 220.0])
@pytest.mark.parametrize("e", [1e-3, 2.2e-3])
def test_an_integrator_shot_from_the_middle_arrives_at_the_crack(equation, half, e):
    p, core = piece(equation, half, e)
    x0, s0, p0 = 0.0, 0.0, float(p)
    if p0 == 0:  # a core without slip: start a little beyond it, on Balazs' curve
        x0 = float(core) + 20.0
        s0, p0 = (float(v) for v in slip_along(equation, x0, p, core))
    shot = solve_ivp(
        lambda _x, y: [y[1], KAPPA * float(equation.law.stress(y[0]))],
        (x0, half),
        [s0, p0],
        method="DOP853",
        rtol=1e-11,
        atol=1e-15,
    )
    s = end_slip(equation, half, e)
    assert shot.y[:, -1] == pytest.approx([float(s), e], rel=1e-7)


@given(equations, halves, gradients)
def test_bond_on_the_way_is_what_the_slope_gains(equation, half, e):
    x, s, slope = profile(equation, half, e, 2001)
    tau = equation.law.stress(s)
    gained = KAPPA * np.sum((tau[1:] + tau[:-1]) / 2) * (x[1] - x[0])
    assert slope[-1] - slope[0] == pytest.approx(gained, rel=2e-3)
    assert slope**2 - slope[0] ** 2 == pytest.approx(
        2 * KAPPA * equation.law.work(s), rel=1e-8, abs=1e-12 * e**2
    )


@given(equations, halves, gradients)
def test_the_crack_has_the_slope_that_was_asked_for(equation, half, e):
    assert profile(equation, half, e)[2][-1] == pytest.approx(e, rel=1e-9)


@given(equations, halves, gradients, st.floats(1.0, 3.0))
def test_more_pull_and_longer_pieces_slip_more(equation, half, e, times):
    s = end_slip(equation, half, e)
    assert end_slip(equation, half, times * e) >= s * (1 - 1e-9)
    assert end_slip(equation, times * half, e) >= s * (1 - 1e-9)
    assert s <= min(e * half, slip_in_long_bar(equation, e)) * (1 + 1e-9)


def test_many_pieces_are_worked_out_as_each_alone():
    half, e = np.array([20.0, 90.0, 700.0]), np.array([2e-3, 1e-3, 5e-4])
    alone = [float(end_slip(RIBBED, a, g)) for a, g in zip(half, e, strict=True)]
    assert end_slip(RIBBED, half, e) == pytest.approx(alone, rel=1e-9)


def test_no_pull_no_slip():
    assert end_slip(RIBBED, [20.0, 900.0], 0.0) == pytest.approx([0.0, 0.0])


def test_bars_torn_out_of_the_concrete_have_no_answer():
    with pytest.raises(ValueError, match="torn out"):
        end_slip(RIBBED, 9000.0, 0.1)


def test_linear_bond_reaches_without_end():
    assert transfer_length(LINEAR, 1e-3) == np.inf
