"""What a slab may be."""

import pytest

from crackkit.mechanics.plate_slab import LoadPatch, PlateEdge, even_curvature
from tests.mechanics.plates import slab

SUPPORTED = PlateEdge("supported")


@pytest.mark.parametrize(
    "changes",
    [{"length": 0.0}, {"thickness": -1.0}, {"ground": -0.1}, {"poisson": 0.5}, {"ground": 0.0}],
)
def test_a_slab_out_of_range_is_refused(changes):
    with pytest.raises(ValueError, match="[Ss]lab|[Gg]round"):
        slab(**changes)


def test_a_slab_on_supports_needs_no_ground():
    plate = slab(ground=0.0, left=SUPPORTED)
    assert (plate.reach, plate.settlement) == (float("inf"), 0.0)


@pytest.mark.parametrize("fault", [{"hold": "glued"}, {"transfer": 1.1}, {"transfer": -0.1}])
def test_an_edge_out_of_range_is_refused(fault):
    with pytest.raises(ValueError, match="edge"):
        PlateEdge(**fault)
    with pytest.raises(ValueError, match="joint"):
        PlateEdge("supported", 0.5)


def test_a_load_without_size_is_refused():
    with pytest.raises(ValueError, match="rectangle"):
        LoadPatch(0.0, 0.0, 10.0, 0.0, 1.0)


def test_a_joint_with_full_transfer_is_as_stiff_as_the_neighbours_edge():
    """Half-infinite beam on an elastic foundation: 2 P lam / k' under an end load (Hetenyi)."""
    plate = slab(poisson=0.0)
    lam = (plate.ground / (4.0 * plate.rigidity)) ** 0.25
    assert plate.joint_stiffness(PlateEdge(transfer=1.0)) == pytest.approx(plate.ground / 2 / lam)
    assert plate.joint_stiffness(PlateEdge(transfer=0.5)) == pytest.approx(plate.ground / 4 / lam)


def test_a_dry_top_lifts_the_edges_alike_both_ways():
    free = even_curvature(300e-6, 150.0)
    assert (free.x, free.y) == pytest.approx((2e-6, 2e-6))
