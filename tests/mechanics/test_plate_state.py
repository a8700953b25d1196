"""What must hold for any slab: it comes to rest, forces add up, mirrors and quarter turns agree."""

import numpy as np
import pytest

from crackkit.mechanics.plate_faces import most_stretched
from crackkit.mechanics.plate_slab import FLAT, LoadPatch, PlateEdge, even_curvature
from crackkit.mechanics.plate_state import Stage, crept_plate_state, lifted_share, plate_state
from tests.mechanics.plates import mirrored, random_case, slab, square, turned

DRY = even_curvature(300e-6, 150.0)


def cases(number, seed):
    rng = np.random.default_rng(seed)
    return [random_case(rng) for _case in range(number)]


@pytest.mark.parametrize("seed", range(8))
def test_fifty_random_slabs_come_to_rest_and_all_forces_add_up(seed):
    for plate, patches, free in cases(50, seed):
        state = plate_state(plate, patches, free)
        assert state.converged
        assert state.forces.imbalance < 1e-9
        assert state.forces.unbalanced < 1e-9
        assert (state.deflection < 0.0).any() or state.lifted_share == 0.0


def test_random_slabs_that_crept_come_to_rest_and_all_forces_add_up():
    for plate, patches, free in cases(40, 99):
        slow = Stage(plate.modulus / 2.5, patches[:1], free)
        state = crept_plate_state(plate, slow, Stage(plate.modulus, patches[1:], FLAT))
        assert state.converged
        assert state.forces.imbalance < 1e-9
        assert state.forces.unbalanced < 1e-9


@pytest.mark.parametrize("thickness", [75.0, 150.0, 300.0])
@pytest.mark.parametrize("transfer", [0.0, 0.7])
def test_without_gradient_and_load_a_slab_is_flat(thickness, transfer):
    joint = PlateEdge(transfer=transfer)
    plate = slab(thickness=thickness, left=joint, far=joint)
    state = plate_state(plate)
    assert state.deflection == pytest.approx(np.full_like(state.deflection, plate.settlement))
    assert abs(state.corner_rise).max() < 1e-9
    assert max(abs(state.top.s1).max(), abs(state.bottom.s1).max()) < 1e-8
    assert (state.lifted_share, state.lifted.any()) == (0.0, False)


def test_a_slab_in_a_mirror_does_the_same():
    for plate, patches, free in cases(12, 5):
        state = plate_state(plate, patches, free)
        image = plate_state(*mirrored(plate, patches), free)
        w = image.deflection_at(plate.length - state.x[::-1], state.y)[::-1]
        assert w == pytest.approx(state.deflection, rel=1e-6, abs=1e-7)
        assert image.corner_rise[::-1] == pytest.approx(state.corner_rise, rel=1e-6, abs=1e-7)
        assert image.top.s1.max() == pytest.approx(state.top.s1.max(), rel=1e-5)


def test_a_slab_turned_by_a_quarter_does_the_same():
    for plate, patches, free in cases(12, 6):
        state = plate_state(plate, patches, free)
        other = plate_state(*turned(plate, patches, free))
        w, s1 = other.deflection.T, other.top.s1.T
        assert w == pytest.approx(state.deflection, rel=1e-6, abs=1e-7)
        assert s1 == pytest.approx(state.top.s1, rel=1e-5, abs=1e-6)


def test_a_square_slab_with_a_load_on_its_diagonal_is_its_own_image():
    state = plate_state(slab(), (square(400.0, 400.0),), DRY)
    assert abs(state.deflection - state.deflection.T).max() < 1e-8
    assert abs(state.top.sigma_y - state.top.sigma_x.T).max() < 1e-7


def test_a_dry_top_lifts_corners_more_than_edges_and_stretches_the_top():
    state = plate_state(slab(), (), DRY)
    edge = -state.deflection_at([0.0], [2250.0])[0, 0]
    assert state.corner_rise.min() > 2.0 * edge / 2.0 > 1.0
    assert state.top.s1.max() > 1.5 > 0.1 > state.bottom.s1.max()
    assert 0.6 < state.lifted_share < 0.9


def test_a_wheel_walked_to_the_corner_turns_the_stretched_face_from_bottom_to_top():
    """On a slab that curls the top governs everywhere near the rim; on a flat one only there."""
    middle, corner = (plate_state(slab(), (square(*at),)) for at in ((2250, 2250), (100, 100)))
    assert middle.bottom.s1.max() > 4.0 * middle.top.s1.max()
    assert corner.top.s1.max() > corner.bottom.s1.max() * 0.9
    curled = plate_state(slab(), (square(100, 100),), DRY)
    assert curled.top.s1.max() > 1.1 * corner.top.s1.max()
    assert curled.top.s1.max() > curled.bottom.s1.max()


def test_the_top_is_stretched_most_along_the_diagonal_behind_a_loaded_corner():
    state = plate_state(slab(), (square(100, 100),))
    x = np.linspace(200.0, 1000.0, 81)
    top = state.top_at(x, x)
    at = top.s1.diagonal().argmax()
    assert top.angle[at, at] == pytest.approx(np.pi / 4)


@pytest.mark.parametrize("at", [(100.0, 2250.0), (100.0, 100.0)])
def test_more_load_transfer_never_lets_a_loaded_edge_sink_more(at):
    sunk, stress = [], []
    for share in (0.0, 0.25, 0.5, 0.75, 1.0):
        joint = PlateEdge(transfer=share)
        state = plate_state(slab(left=joint, near=joint), (square(*at),))
        sunk.append(state.deflection.max())
        stress.append(state.bottom.sigma_y.max())
        assert state.forces.joints >= 0.0
    assert (np.diff(sunk) < 0).all()
    assert (np.diff(stress) < 0).all()


def test_full_transfer_shares_a_line_load_along_a_joint_by_halves():
    """Two half-infinite slabs of the same kind under one edge load; the neighbour takes half."""
    plate = slab(length=8000.0, width=400.0, poisson=0.0, weight=0.05)
    load = (LoadPatch(5.0, 200.0, 10.0, 400.0, 20e3),)
    free, shared = (
        plate_state(plate_with, load)
        for plate_with in (plate, slab(length=8000.0, width=400.0, poisson=0.0, weight=0.05,
                                       left=PlateEdge(transfer=1.0)))
    )  # fmt: skip
    sunk = [state.deflection[0, 0] - plate.settlement for state in (free, shared)]
    assert sunk[1] / sunk[0] == pytest.approx(0.5, abs=0.005)
    assert shared.forces.joints == pytest.approx(10e3, rel=0.01)


def test_neighbours_that_curl_alike_do_not_hold_a_curl_down():
    joints = {name: PlateEdge(transfer=0.8) for name in ("left", "right", "near", "far")}
    slow, nothing = Stage(15e3, (), DRY), Stage(30e3)
    held = crept_plate_state(slab(**joints), slow, nothing)
    free = crept_plate_state(slab(), slow, nothing)
    assert held.forces.joints == pytest.approx(0.0, abs=1e-6 * held.forces.weight)
    assert held.corner_rise == pytest.approx(free.corner_rise)


def test_two_stages_of_one_modulus_are_one():
    patches = (square(300.0, 700.0),)
    once = plate_state(slab(), patches, DRY)
    twice = crept_plate_state(slab(), Stage(15e3, (), DRY), Stage(15e3, patches))
    assert twice.deflection == pytest.approx(once.deflection, abs=1e-8)
    assert twice.top.s1 == pytest.approx(once.top.s1, abs=1e-6)


def test_a_wheel_meets_stiffer_concrete_than_drying_did():
    """The published direction: 15 GPa for the curl and 30 GPa for the wheel stress the top more."""
    patches = (square(100.0, 100.0),)
    soft = plate_state(slab(), patches, DRY).top.s1.max()
    staged = crept_plate_state(slab(), Stage(15e3, (), DRY), Stage(30e3, patches)).top.s1.max()
    assert 1.1 * soft < staged < 1.4 * soft


def test_a_load_over_the_edge_is_refused():
    with pytest.raises(ValueError, match="on the slab"):
        plate_state(slab(), (square(99.0, 400.0),))


def test_a_wheel_that_moves_a_little_changes_little():
    """Knots follow the wheel; what they add or drop must not be seen."""
    places = np.arange(100.0, 2250.0, 43.0)
    states = [plate_state(slab(), (square(x, 600.0),), DRY) for x in places]
    rise = np.array([state.corner_rise[1, 1] for state in states])
    top = np.array([state.top.s1.max() for state in states])
    assert abs(np.diff(rise)).max() < 0.02 * rise.mean()
    assert abs(np.diff(top)).max() < 0.06 * top.mean()


def test_the_place_stretched_most_lies_within_the_rim_that_is_left():
    state = plate_state(slab(), (square(100.0, 100.0),), DRY)
    whole = most_stretched(state.top, state.x, state.y)
    inner = most_stretched(state.top, state.x, state.y, 75.0)
    assert whole.stress == state.top.s1.max() >= inner.stress > 0.9 * whole.stress
    assert min(inner.x, inner.y) >= 75.0


def test_the_lifted_share_follows_the_border_between_places():
    x = np.linspace(0.0, 1.0, 5)
    w = x[:, None] - 0.3 + 0.0 * x
    assert lifted_share(x, x, w) == pytest.approx(0.3)
    assert lifted_share(x, x, w + 1.0) == 0.0
    assert lifted_share(x, x, w - 1.0) == pytest.approx(1.0)
    assert lifted_share(x, x, 0.0 * w) == 0.0
