"""Springs made stiffer or softer without a new factor, against bodies factorised with them."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.bars_across_crack import SlabBar
from crackkit.mechanics.bond import ribbed_bond
from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.crack_growth import at_load
from crackkit.mechanics.cracked_slab import cracked_slab
from crackkit.mechanics.plane_bodies import l_slab
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_mesh import MeshSize, mesh
from crackkit.mechanics.plane_solution import plane_body
from crackkit.mechanics.plane_supports import Hold

SHEET = Sheet(20e3, 0.2, 150.0)
SPRING = 900.0  # MPa
TIMES = st.floats(-3.0, 3.0).map(lambda power: 10.0**power)
SIDES = ("near", "right", "far", "left")
OUTLINE = l_slab(6000.0, 5000.0, 3000.0, 2500.0)
CORNER = np.array([3000.0, 2500.0])
# from the inside corner to the outer edge, so that springs hold both faces of the crack
LINE = [CORNER, (400.0, 0.0)]
BAR = SlabBar((2400.0, 2700.0), (3200.0, 1900.0), 12.0, 113.1, ribbed_bond(38.0, 6.0))


def yielding(times):
    return [Hold(side, "normal", stiffness=times * SPRING) for side in SIDES]


def one_rigid(times):
    return [Hold("left", "x"), Hold("left", "y"), *yielding(times)[:3]]


def split(holds):
    size = MeshSize(60.0, 800.0, 1.7, 120.0)
    return cracked_slab(mesh(OUTLINE, size, crack=LINE), SHEET, holds)


def whole(holds):
    return plane_body(mesh(OUTLINE, MeshSize(60.0, 800.0, 1.7)), SHEET, holds)


BASES = {holds: split(holds(1.0)) for holds in (yielding, one_rigid)}
BODIES = {holds: whole(holds(1.0)) for holds in (yielding, one_rigid)}


def near(exact, share=1e-8):
    return pytest.approx(exact, rel=share, abs=share * np.abs(exact).max())


@settings(max_examples=12, deadline=None)
@given(TIMES, st.sampled_from([yielding, one_rigid]))
def test_a_split_slab_held_harder_is_the_one_factorised_so(times, holds):
    changed, exact = BASES[holds].held(times), split(holds(times))
    assert changed.body.compliance == near(exact.body.compliance)
    assert abs(changed.stiffness - exact.stiffness).max() <= 1e-9 * exact.stiffness.max()
    loads = exact.body.spread.T @ np.stack([exact.shrinkage, exact.shrinkage[::-1]], axis=1)
    assert changed.body.unknowns(loads) == near(exact.body.unknowns(loads))
    assert changed.body.unknowns(loads[:, 0]) == near(exact.body.unknowns(loads[:, 0]))


@pytest.mark.parametrize("times", [0.1, 6.0])
def test_a_crack_opens_in_both_alike(times):
    law = CohesiveLaw(2.2, 0.12)
    cracks = [
        slab.crack(law, [BAR]) for slab in (BASES[yielding].held(times), split(yielding(times)))
    ]
    one, other = (at_load(crack, 4e-4) for crack in cracks)
    assert one.q == near(other.q, 1e-5)
    assert other.q.max() > 0.05
    moved = [
        crack.unknowns(at.q, 4e-4, at.greatest)
        for crack, at in zip(cracks, (one, other), strict=True)
    ]
    assert moved[0] == near(moved[1], 1e-5)


@settings(max_examples=12, deadline=None)
@given(TIMES, st.sampled_from([yielding, one_rigid]))
def test_a_whole_slab_held_harder_is_the_one_factorised_so(times, holds):
    one = BODIES[holds].held(times).state(shortening=3e-4)
    other = whole(holds(times)).state(shortening=3e-4)
    assert one.movement == near(other.movement)
    assert one.stress == near(other.stress)


def test_moved_springs_push_harder_when_they_are_stiffer():
    def moved(times):
        return [Hold("left", "x"), Hold("near", "y"), Hold("right", "x", times * SPRING, 0.4)]

    one, other = whole(moved(1.0)).held(7.0).state(), whole(moved(7.0)).state()
    assert one.movement == near(other.movement)
    assert one.movement[:, 0].max() > 0.05


@pytest.mark.parametrize("body", [BASES[one_rigid].held(5.0).body, BODIES[one_rigid].held(5.0)])
def test_many_loads_are_answered_like_each_alone(body):
    solve, size = body.factor.solve, body.factor.grip.factor.shape[0]
    loads = np.random.default_rng(3).normal(size=(size, 20))
    assert solve(loads) == near(np.stack([solve(load) for load in loads.T], axis=1))


def test_springs_as_they_are_change_nothing():
    assert BASES[yielding].held(1.0).body.compliance == near(BASES[yielding].body.compliance)
