"""Forces on a whole plate, and that a plate out of balance is noticed."""

from dataclasses import replace

import numpy as np
import pytest

from crackkit.mechanics.plate_balance import plate_forces
from crackkit.mechanics.plate_loads import patch_load
from crackkit.mechanics.plate_slab import PlateEdge, even_curvature
from crackkit.mechanics.plate_state import plate_state
from tests.mechanics.plates import slab, square

PATCHES = (square(700.0, 900.0), square(3000.0, 3000.0, 10e3))
NO_JOINTS = (0.0, 0.0, 0.0, 0.0)


def test_the_ground_carries_weight_and_loads():
    forces = plate_state(slab(), PATCHES, even_curvature(3e-4, 150.0)).forces
    assert forces.weight == pytest.approx(4.5e3**2 * 0.0036)
    assert forces.patches == 50e3
    assert forces.ground == pytest.approx(forces.weight + 50e3, rel=1e-9)
    assert (forces.joints, forces.supports) == pytest.approx((0.0, 0.0), abs=1e-6)


def test_a_plate_on_four_edges_hangs_on_them_alone():
    held = PlateEdge("clamped")
    plate = slab(ground=0.0, left=held, right=held, near=held, far=held)
    forces = plate_state(plate, PATCHES).forces
    assert forces.supports == pytest.approx(forces.weight + 50e3, rel=1e-9)
    assert forces.ground == 0.0


def test_an_edge_held_down_pulls_when_the_slab_wants_to_rise():
    plate = slab(left=PlateEdge("supported"))
    forces = plate_state(plate, (), even_curvature(3e-4, 150.0)).forces
    assert forces.supports + forces.ground == pytest.approx(forces.weight, rel=1e-9)
    assert forces.supports < 0.0


@pytest.mark.parametrize("fault", ["sunk too far", "bent elsewhere", "a load forgotten"])
def test_a_plate_that_is_not_at_rest_would_be_noticed(fault):
    plate = slab()
    state = plate_state(plate, PATCHES)
    shape, patches = state.shape, PATCHES
    bend = shape.bends[0]
    if fault == "sunk too far":
        shape = replace(shape, bends=(replace(bend, heights=bend.heights + 1e-3),))
    elif fault == "bent elsewhere":
        shape = replace(shape, bends=(replace(bend, rigidity=1.01 * bend.rigidity),))
    else:
        patches = PATCHES[:1]
    standing = patch_load(shape.operator, patches)
    flat = np.zeros(shape.operator.shape)
    forces = plate_forces(plate, shape, patches, standing, NO_JOINTS, flat)
    assert forces.unbalanced > 1e-6
    if fault != "bent elsewhere":
        assert forces.imbalance > 1e-3
