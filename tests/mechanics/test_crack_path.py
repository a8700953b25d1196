"""Crack lines: which way they lean, and that they cross the stretching at right angles."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve
from crackkit.mechanics.crack_path import crack_paths
from crackkit.mechanics.elastic_profile import rectangle_profile
from crackkit.mechanics.stress_field import principal_stresses, stress_components

SPAN, WIDTH, DEPTH, LOAD = 6000.0, 300.0, 500.0, 30.0
STARTS = np.linspace(300.0, SPAN - 300.0, 25)
X = np.linspace(0.0, SPAN, 241)


def uniform(x):
    return LOAD * x * (SPAN - x) / 2, LOAD * (SPAN / 2 - x)


def bottom_paths(tips=150.0, **more):
    return crack_paths(STARTS, "bottom", tips, DEPTH, X, *uniform(X), **more)


def test_lines_run_from_the_face_to_the_tip():
    tips = np.linspace(100.0, 300.0, 25)
    paths = bottom_paths(tips, steps=14)
    assert paths.shape == (25, 15, 2)
    assert paths[:, 0] == pytest.approx(np.column_stack([STARTS, np.full(25, DEPTH)]))
    assert paths[:, -1, 1] == pytest.approx(tips)
    assert (np.diff(paths[..., 1], axis=1) < 0).all()


def test_cracks_lean_towards_midspan_and_more_so_near_the_supports():
    paths = bottom_paths()
    drift = paths[:, -1, 0] - paths[:, 0, 0]
    assert (drift[:12] > 0).all()
    assert (drift[13:] < 0).all()
    assert (np.diff(drift) < 0).all()


def test_symmetric_beam_has_symmetric_cracks():
    paths = bottom_paths()
    assert SPAN - paths[::-1, :, 0] == pytest.approx(paths[..., 0], abs=1e-6)
    assert paths[12, :, 0] == pytest.approx(np.full(13, SPAN / 2), abs=1e-9)


def test_cracks_start_square_to_the_face():
    first = np.diff(bottom_paths(steps=40)[:, :2], axis=1)[:, 0]
    lean = np.degrees(np.arctan(np.abs(first[:, 0] / first[:, 1])))
    assert lean.max() < 5.0


def test_cracks_stand_upright_under_pure_bending():
    x = np.array([0.0, SPAN])
    paths = crack_paths(STARTS, "bottom", 120.0, DEPTH, x, [9e7, 9e7], [0.0, 0.0])
    assert (paths[..., 0] == STARTS[:, None]).all()


@pytest.mark.parametrize("face", ["bottom", "top"])
def test_cracks_cross_the_largest_stretching_at_right_angles(face):
    """With the tip in the middle of the depth the stresses are those of the uncracked section."""
    M, V = uniform(X)
    M = M if face == "bottom" else -M
    V = V if face == "bottom" else -V
    load = np.full(X.size, LOAD)
    paths = crack_paths(STARTS, face, DEPTH / 2, DEPTH, X, M, V, load, steps=100)
    middle = (paths[:, 1:] + paths[:, :-1]) / 2
    along = np.diff(paths, axis=1)
    x, z = middle[..., 0], middle[..., 1]
    bent = np.interp(x, X, M), np.interp(x, X, V)
    stresses = stress_components(rectangle_profile(z, WIDTH, DEPTH), *bent, LOAD)
    s1, s2, angle = principal_stresses(*stresses)
    cosine = (along[..., 0] * np.cos(angle) + along[..., 1] * np.sin(angle)) / np.hypot(
        along[..., 0], along[..., 1]
    )
    assert np.degrees(np.arcsin(np.abs(cosine))).max() < 0.5


def test_without_a_load_on_top_the_lean_is_that_of_beam_theory():
    """Slow check of one line by a fine fourth-order Runge-Kutta run of the formula in the notes."""
    tip, start, fine = 160.0, 900.0, 4000
    c = DEPTH - tip

    def lean(x, y):
        M, V = uniform(x)
        return np.tan(0.5 * np.arctan2(V * (c * c - y * y), M * y))

    x, dy = start, c / fine
    for n in range(fine):
        y = c - n * dy
        k1 = lean(x, y)
        k2 = lean(x + dy / 2 * k1, y - dy / 2)
        k3 = lean(x + dy / 2 * k2, y - dy / 2)
        k4 = lean(x + dy * k3, y - dy)
        x += dy * (k1 + 2 * k2 + 2 * k3 + k4) / 6
    stations = np.linspace(0.0, SPAN, 4001)
    path = crack_paths(start, "bottom", tip, DEPTH, stations, *uniform(stations))
    assert path[0, -1, 0] == pytest.approx(x, abs=1.0)
    path = crack_paths(start, "bottom", tip, DEPTH, stations, *uniform(stations), steps=200)
    assert path[0, -1, 0] == pytest.approx(x, abs=0.1)


def test_cracks_over_an_inner_support_lean_towards_it():
    supports = [Support(0.0), Support(SPAN), Support(2 * SPAN)]
    beam = solve(2 * SPAN, supports, [LineLoad(0.0, 2 * SPAN, LOAD)], 1e13)
    starts = SPAN + np.array([-500.0, -250.0, 0.0, 250.0, 500.0])
    paths = crack_paths(starts, "top", 350.0, DEPTH, *beam.diagrams(200))
    drift = paths[:, -1, 0] - starts
    assert (drift[:2] > 0).all()
    assert (drift[3:] < 0).all()
    assert drift[2] == 0.0
    assert drift == pytest.approx(-drift[::-1], abs=0.1)


def test_crack_under_a_point_load_stands_upright_and_none_passes_it():
    beam = solve(SPAN, [Support(0.0), Support(SPAN)], [PointLoad(1e5, 3000.0)], 1e13)
    starts = np.array([2700.0, 2900.0, 2980.0, 3000.0, 3020.0, 3100.0, 3300.0])
    paths = crack_paths(starts, "bottom", 120.0, DEPTH, *beam.diagrams(100))
    assert (paths[3, :, 0] == 3000.0).all()
    one_step = DEPTH / 12
    assert (paths[:3, :, 0] <= 3000.0 + one_step).all()
    assert (paths[4:, :, 0] >= 3000.0 - one_step).all()
    assert paths[[0, 1], -1, 0] == pytest.approx(6000.0 - paths[[6, 5], -1, 0], abs=0.5)


def test_cracks_of_both_faces_may_be_asked_for_together():
    supports = [Support(1500.0), Support(SPAN - 1500.0)]
    beam = solve(SPAN, supports, [LineLoad(0.0, SPAN, LOAD)], 1e13)
    x, M, V, _load = beam.diagrams(100)
    starts, faces, tips = [1200.0, 3000.0], ["top", "bottom"], [350.0, 150.0]
    together = crack_paths(starts, faces, tips, DEPTH, x, M, V)
    for number in (0, 1):
        alone = crack_paths(starts[number], faces[number], tips[number], DEPTH, x, M, V)
        assert together[number] == pytest.approx(alone[0], abs=0.1)


@given(
    st.lists(st.floats(-2e8, 2e8), min_size=7, max_size=7),
    st.lists(st.floats(-3e5, 3e5), min_size=7, max_size=7),
    st.sampled_from(["top", "bottom"]),
    st.floats(0.0, DEPTH),
    st.floats(0.0, np.pi / 4),
)
def test_no_line_leans_further_than_allowed_or_turns_back(M, V, face, tip, limit):
    x = np.linspace(0.0, SPAN, 7)
    paths = crack_paths(STARTS, face, tip, DEPTH, x, M, V, largest_lean=limit)
    assert np.isfinite(paths).all()
    step = np.diff(paths, axis=1)
    assert (np.abs(step[..., 0]) <= np.tan(limit) * np.abs(step[..., 1]) + 1e-9).all()
    turns = np.sign(np.where(np.abs(step[..., 0]) > 1e-9, step[..., 0], 0.0))
    assert (np.abs(np.diff(np.sort(turns, axis=1)[:, [0, -1]])) < 2).all()


def test_senseless_cracks_are_refused():
    M, V = uniform(X)
    with pytest.raises(ValueError, match="'bottom' or at the 'top'"):
        crack_paths(STARTS, "side", 100.0, DEPTH, X, M, V)
    with pytest.raises(ValueError, match="inside the beam"):
        crack_paths(STARTS, "bottom", DEPTH + 1.0, DEPTH, X, M, V)


def test_a_beam_of_one_depth_may_be_given_crack_by_crack():
    M, V = uniform(X)
    each = crack_paths(STARTS, "bottom", 150.0, np.full(STARTS.size, DEPTH), X, M, V)
    assert each.tolist() == bottom_paths().tolist()


@pytest.mark.parametrize("face", ["bottom", "top"])
def test_each_crack_of_a_tapered_beam_runs_as_in_a_beam_of_its_own_depth(face):
    M, V = uniform(X)
    sign = 1.0 if face == "bottom" else -1.0
    depth = np.linspace(320.0, 560.0, STARTS.size)
    together = crack_paths(STARTS, face, 0.3 * depth, depth, X, sign * M, sign * V)
    for number, h in enumerate(depth.tolist()):
        alone = crack_paths(STARTS[number], face, 0.3 * h, h, X, sign * M, sign * V)
        assert together[number] == pytest.approx(alone[0], abs=1e-3 * h)


def test_a_tip_below_the_soffit_of_its_own_place_is_refused():
    M, V = uniform(X)
    depth = np.linspace(200.0, 500.0, STARTS.size)
    with pytest.raises(ValueError, match="inside the beam"):
        crack_paths(STARTS, "bottom", 250.0, depth, X, M, V)


def test_no_cracks_give_no_lines():
    M, V = uniform(X)
    assert crack_paths([], "bottom", 150.0, DEPTH, X, M, V).shape == (0, 13, 2)
