"""A plate that lies on all its springs against exact answers: endless plate, and beams.

The endless plate under a point load is Kelvin's function kei (Timoshenko and Woinowsky-Krieger,
art. 57); a plate without cross strain is a beam on an elastic foundation (Hetenyi, from memory).
"""

import numpy as np
import pytest
from scipy.integrate import quad
from scipy.special import kei, keip

from crackkit.mechanics.plate_slab import LoadPatch
from crackkit.mechanics.plate_state import plate_state
from tests.mechanics.plates import HEAVY, slab, square

P = 40e3
WIDE = slab(length=8000.0, width=8000.0, weight=HEAVY)
BEAM = slab(length=8000.0, width=300.0, poisson=0.0, weight=HEAVY)
LAMBDA = (BEAM.ground / (4.0 * BEAM.rigidity)) ** 0.25


def test_a_point_load_sinks_an_endless_plate_by_kelvins_function():
    l = WIDE.reach
    state = plate_state(WIDE, (square(4000.0, 4000.0, P, 10.0),))
    away = l * np.array([1e-9, 0.5, 1.0, 2.0, 3.0])
    w = state.deflection_at(4000.0 + away, [4000.0])[:, 0] - WIDE.settlement
    exact = -P / (2.0 * np.pi * WIDE.ground * l**2) * kei(away / l)
    assert w == pytest.approx(exact, rel=3e-3)
    assert w[:3] == pytest.approx(exact[:3], rel=3e-4)


@pytest.mark.parametrize("side", [50.0, 100.0, 200.0, 400.0])
def test_the_moment_under_a_square_is_the_integral_of_kelvins_function(side):
    l, nu = WIDE.reach, WIDE.poisson

    def to_the_rim(angle):  # the integral of r ker(r) is r kei'(r)
        rim = 0.5 * side / np.cos(angle) / l
        return rim * keip(rim)

    mean = 8.0 * quad(to_the_rim, 0.0, np.pi / 4)[0] * (l / side) ** 2
    exact = 0.5 * (1.0 + nu) * P / (2.0 * np.pi) * mean
    state = plate_state(WIDE, (square(4000.0, 4000.0, P, side),))
    m = state.moments_at([4000.0], [4000.0])
    assert m.x[0, 0] == pytest.approx(exact, rel=2e-3)
    assert m.y[0, 0] == pytest.approx(exact, rel=2e-3)


def line_load(x):
    return (LoadPatch(x, 150.0, 10.0, 300.0, P),)


def test_a_beam_loaded_in_the_middle():
    state = plate_state(BEAM, line_load(4000.0))
    w = state.deflection_at([4000.0], [150.0])[0, 0] - BEAM.settlement
    moment = 300.0 * state.moments_at([4000.0], [150.0]).x[0, 0]
    assert w == pytest.approx(P * LAMBDA / (2.0 * 300.0 * BEAM.ground), rel=1e-3)
    assert moment == pytest.approx(P / (4.0 * LAMBDA), rel=0.01)


def test_a_beam_loaded_at_its_end():
    state = plate_state(BEAM, line_load(5.0))
    w = state.deflection_at([0.0], [150.0])[0, 0] - BEAM.settlement
    M = 300.0 * state.moments_at(np.linspace(0.0, 8000.0, 801), [150.0]).x
    assert w == pytest.approx(2.0 * P * LAMBDA / (300.0 * BEAM.ground), rel=0.01)
    assert M.min() == pytest.approx(-0.3224 * P / LAMBDA, rel=0.016)


def test_loads_on_a_plate_that_lies_on_all_its_springs_add_up():
    first, second = square(1000.0, 500.0), square(3000.0, 4000.0, 20e3)
    plate = slab(weight=HEAVY)
    x = np.linspace(0.0, 4500.0, 19)
    each = [plate_state(plate, patches).deflection_at(x, x) - plate.settlement
            for patches in ((first,), (second,), (first, second))]  # fmt: skip
    assert each[0] + each[1] == pytest.approx(each[2], rel=0.01, abs=2e-3)
