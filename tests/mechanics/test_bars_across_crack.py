"""Bars across a crack: which act, how hard they pull, and what they do to the crack of a corner."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics.bars_across_crack import (
    SlabBar,
    bar_forces,
    crossings,
    near_surface,
)
from crackkit.mechanics.bond import ribbed_bond
from crackkit.mechanics.bond_slip import BondSlip, slip_in_long_bar
from crackkit.mechanics.cohesive_crack import cut_before
from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.crack_growth import Aim, at_load, at_rest, growth
from crackkit.mechanics.crack_line import longest_side
from crackkit.mechanics.crack_state import CrackState
from crackkit.mechanics.cracked_slab import cracked_slab
from crackkit.mechanics.plane_bodies import l_slab, rectangle
from crackkit.mechanics.plane_elements import Sheet
from crackkit.mechanics.plane_factor import plane_factor
from crackkit.mechanics.plane_mesh import MeshSize, mesh
from crackkit.mechanics.plane_supports import Hold, fixed_movements

CORNER = np.array([3000.0, 3000.0])
BOND = ribbed_bond(38.0, 6.0)
LAW = CohesiveLaw(2.9, 0.12)
SHEET = Sheet(15e3, 0.2, 150.0)
ROLLERS = tuple(Hold(side, "normal") for side in ("near", "right", "far", "left"))


def floor(size=50.0, angle=45.0, length=1200.0, holds=ROLLERS):
    """An L-shaped floor of 6 m whose outer edges cannot come inward, split from its corner."""
    way = np.array([np.cos(np.radians(angle)), np.sin(np.radians(angle))])
    outline = l_slab(6000.0, 6000.0, 3000.0, 3000.0)
    sizes = MeshSize(min(size, 20.0), 750.0, 1.6, size)
    split = mesh(outline, sizes, crack=[CORNER, CORNER - length * way])
    return cracked_slab(split, SHEET, holds)


@pytest.fixture(scope="module")
def slab():
    return floor()


def diagonal(offset, diameter=12.0, half=600.0, **more):
    middle = CORNER - offset / 2**0.5
    way = half * np.array([1.0, -1.0]) / 2**0.5
    area = np.pi * diameter**2 / 4
    return SlabBar(tuple(middle - way), tuple(middle + way), diameter, area, BOND, **more)


def straight(offset, upright):
    ends = [(0.0, 3000.0 - offset), (6000.0, 3000.0 - offset)]
    start, end = (place[::-1] for place in ends) if upright else ends
    return SlabBar(start, end, 12.0, 113.1, BOND)


def mouth(crack, strain):
    return at_load(crack, strain).q[0]


def test_a_long_bar_slips_as_the_bond_module_says():
    bar = diagonal(60.0, yield_stress=2000.0)
    equation = BondSlip(BOND, 4 / (bar.diameter * bar.modulus))
    for stress in (100.0, 250.0, 450.0):
        opening = 2 * float(slip_in_long_bar(equation, stress / bar.modulus))
        assert bar.stress(opening, 5000.0) == pytest.approx(stress, rel=1e-9)


@pytest.mark.parametrize("opening", [0.05, 0.1, 0.3])
def test_a_long_bar_pulls_as_the_power_law(opening):
    # stress^2 = (8 Es/phi) tau_max (w/2)^1.4/1.4, with s1 = 1 mm.
    power = 8 * 200e3 * BOND.peak * (opening / 2) ** 1.4 / (12.0 * 1.4)
    assert diagonal(60.0).stress(opening, 5000.0) == pytest.approx(power**0.5, rel=1e-9)


def test_a_bar_pulls_no_harder_than_it_yields_and_a_short_end_no_harder_than_its_surface():
    bar = diagonal(60.0)
    assert bar.stress(3.0, 5000.0) == 500.0
    held = np.pi * 12.0 * 50.0 * BOND.stress(0.2) / bar.area
    assert bar.stress(0.4, 50.0) == pytest.approx(held)
    assert bar.stress([-0.1, 0.0], 500.0) == pytest.approx([0.0, 0.0])


@given(st.floats(0.0, 9.0), st.floats(20.0, 900.0))
def test_the_table_says_what_the_bar_says(opening, anchorage):
    bar = diagonal(60.0, number=2)
    crossing = type("Crossing", (), {"bar": bar, "anchorage": anchorage})
    table = bar_forces([crossing])
    force, slope = table.pull(np.array([opening]))
    exact = 2 * bar.area * bar.stress(opening, anchorage)
    assert force[0] == pytest.approx(exact, rel=2e-3, abs=1.0)
    w = np.linspace(0.0, opening, 4001)
    pulls = np.array([table.pull(w[k : k + 1])[0][0] for k in range(0, w.size, 20)])
    work = np.sum(0.5 * (pulls[1:] + pulls[:-1]) * np.diff(w[::20]))
    assert table.stored(np.array([opening]))[0] == pytest.approx(work, rel=1e-2, abs=1.0)
    assert slope[0] >= 0 or opening >= 2 * BOND.level_end


@given(st.floats(5.0, 200.0), st.floats(0.001, 1.0))
def test_a_thin_cover_holds_less_never_more(cover, slip):
    near = near_surface(BOND, cover, 12.0)
    assert near.stress(slip) <= BOND.stress(slip) * (1 + 1e-12)
    assert near_surface(BOND, 2 * cover, 12.0).stress(slip) >= near.stress(slip) * (1 - 1e-12)


def test_a_cover_of_one_diameter_holds_not_half_of_the_peak():
    # fib Model Code 2010, Table 6.1-1 (from memory): 7 (fcm/25)^0.25 MPa where the cover splits.
    near = near_surface(BOND, 12.0, 12.0)
    assert near.peak == pytest.approx(7.0 * (38.0 / 25.0) ** 0.25, rel=0.15)
    assert near.stress(0.01) == pytest.approx(BOND.stress(0.01))
    assert near_surface(BOND, 60.0, 12.0) is BOND


def test_only_bars_that_cross_the_line_act(slab):
    beyond, beside = diagonal(1300.0), straight(-2000.0, False)
    short = SlabBar((2900.0, 2950.0), (2940.0, 2950.0), 12.0, 113.1, BOND)
    assert crossings(slab.mesh, slab.line, [beyond, beside, short]) == ()
    met = crossings(slab.mesh, slab.line, [beyond, diagonal(60.0), straight(50.0, True)])
    assert [each.number for each in met] == [1, 2]
    assert [each.along for each in met] == pytest.approx([60.0, 50.0 * 2**0.5], rel=1e-9)
    assert [each.cosine for each in met] == pytest.approx([1.0, 0.5**0.5], rel=1e-9)


def test_a_bar_that_leaves_the_concrete_holds_on_to_what_is_left(slab):
    middle = CORNER - 60.0 / 2**0.5
    way = np.array([1.0, -1.0]) / 2**0.5
    outside = SlabBar(tuple(middle - 600 * way), tuple(middle + 9000 * way), 12.0, 113.1, BOND)
    near_edge = SlabBar(
        tuple(CORNER + np.array([-100.0, -80.0])),
        tuple(CORNER + np.array([300.0, 60.0])),
        12.0,
        113.1,
        BOND,
    )
    met = crossings(slab.mesh, slab.line, [outside, near_edge])
    assert met[0].anchorage == pytest.approx(600.0)
    assert met[1].anchorage < 110.0  # through the edge of the notch into the air


def test_the_elongation_is_the_mean_movement_on_both_sides(slab):
    met = crossings(slab.mesh, slab.line, [diagonal(60.0), straight(50.0, True)])
    moved, stretched = np.zeros_like(slab.mesh.points), 1e-4 * slab.mesh.points
    moved[:] = (0.3, -0.2)
    for each in met:
        assert each.row @ moved.ravel() == pytest.approx(0.0, abs=1e-12)
        # Evenly stretched: twice half of 20 diameters.
        assert each.row @ stretched.ravel() == pytest.approx(1e-4 * 240.0, rel=1e-9)


@pytest.mark.parametrize("strain", [38e-6, 45e-6, 70e-6, 120e-6])
@pytest.mark.parametrize(
    "bars",
    [
        [diagonal(60.0)],
        [diagonal(60.0), diagonal(160.0)],
        [straight(50.0, True), straight(50.0, False)],
        [diagonal(800.0)],
    ],
)
def test_a_bar_never_widens_the_crack_it_crosses(slab, bars, strain):
    assert mouth(slab.crack(LAW, bars), strain) <= mouth(slab.crack(LAW), strain) * (1 + 1e-6)


@pytest.mark.parametrize("strain", [39e-6, 60e-6, 100e-6])
def test_a_bar_farther_from_the_corner_never_helps_the_corner_more(slab, strain):
    widths = [mouth(slab.crack(LAW, [diagonal(a)]), strain) for a in (60, 110, 210, 350, 600, 1000)]
    assert (np.diff(widths) > -1e-4 * widths[0]).all()


def test_thicker_bars_hold_better(slab):
    widths = [mouth(slab.crack(LAW, [diagonal(60.0, d)]), 60e-6) for d in (10.0, 12.0, 16.0, 20.0)]
    assert (np.diff(widths) < 0).all()


def test_two_diagonal_bars_trim_the_crack_as_much_as_was_found_before(slab):
    # Worked out independently, on another mesh and with a line of 0.9 m: 0.29 of 0.37 mm and 0.51
    # of 0.62 mm.
    bars = [diagonal(60.0), diagonal(160.0)]
    for strain, share in ((60e-6, 0.29 / 0.37), (100e-6, 0.51 / 0.62)):
        found = mouth(slab.crack(LAW, bars), strain) / mouth(slab.crack(LAW), strain)
        assert found == pytest.approx(share, rel=0.1)


@pytest.mark.parametrize("diameters", [10.0, 40.0])
def test_the_length_over_which_a_bar_holds_on_matters_little(slab, monkeypatch, diameters):
    bars = [diagonal(60.0), diagonal(160.0)]
    usual = mouth(slab.crack(LAW, bars), 60e-6)
    monkeypatch.setattr("crackkit.mechanics.bars_across_crack._GRIP", diameters)
    assert mouth(slab.crack(LAW, bars), 60e-6) == pytest.approx(usual, rel=0.05)


def test_a_line_with_long_sides_is_told_from_a_fine_one():
    # E G_F/f_t^2 is 15e3 0.12/2.9^2 = 214 mm.
    assert longest_side(LAW, 15e3) == pytest.approx(214.0 / 5, rel=1e-3)


def test_the_bars_are_as_long_as_the_concrete_around_them_says(slab):
    state = CrackState(*opened(slab, [diagonal(60.0), diagonal(160.0)], 60e-6))
    stretch = [each.row @ state.movement.ravel() for each in state.crack.bars]
    assert state.elongations == pytest.approx(stretch, abs=1e-6)
    for each, stress, elongation in zip(state.crack.bars, state.bar_stresses, stretch, strict=True):
        assert stress == pytest.approx(each.bar.stress(elongation, each.anchorage), rel=2e-3)
    # Besides the crack, the concrete beside it shortens by 60e-6 and is stretched less than it
    # can bear.
    beside = state.elongations - state.opening_at_bars
    assert (beside > -240.0 * 60e-6).all()
    assert (beside < 240.0 * (2.9 / 15e3 - 60e-6)).all()


def test_a_section_beside_the_crack_is_in_balance(slab):
    """Faces, bars and body together: the whole stiffness, with every force between the faces."""
    state = CrackState(*opened(slab, [diagonal(60.0), straight(50.0, True)], 60e-6))
    left = slab.stiffness @ state.movement.ravel() - state.load * slab.shrinkage
    for each, force in zip(state.crack.bars, state.bar_forces, strict=True):
        left = left + each.row * force
    line, held = slab.line, np.zeros_like(slab.mesh.points)
    stress = state.stress[:, None] * line.across + state.faces.shear[:, None] * line.way
    held[line.first] += stress * slab.body.area[:, None]
    held[line.second] -= stress * slab.body.area[:, None]
    free = abs(slab.body.spread).sum(axis=1) > 0
    # The strength of the line on one mm is 435 N.
    assert abs(left + held.ravel())[free].max() < 5.0


def test_work_done_is_stored_and_spent_bars_counted_in(slab):
    crack = slab.crack(LAW, [diagonal(60.0), diagonal(160.0, 16.0)])
    states = [CrackState(crack, each) for each in growth(crack, widest=0.4)]
    load = np.array([state.load for state in states])
    moved = np.array([slab.shrinkage @ state.movement.ravel() for state in states])
    done = np.cumsum(0.5 * (load[1:] + load[:-1]) * np.diff(moved))
    end = states[-1]
    stored = 0.5 * end.movement.ravel() @ (slab.stiffness @ end.movement.ravel())
    back = 0.5 * slab.body.area @ (end.stress * end.opening)
    assert end.spent > 0.0 < end.stored_in_bars
    assert done[-1] == pytest.approx(stored + back + end.spent + end.stored_in_bars, rel=0.01)


def test_the_line_feels_what_the_slab_cut_down_to_its_nodes_feels(slab):
    """The same compliance by another way: the slab as its nodes feel it, springs added."""
    free = np.isnan(fixed_movements(slab.mesh, ROLLERS))
    line, p = slab.line, len(slab.line.first)
    nodes = np.union1d(line.first, line.second)
    K = plane_factor(slab.stiffness, free, nodes).condensed
    B = np.zeros((2 * p, 2 * len(nodes)))
    for row, way in ((0, line.across), (p, line.way)):
        for sign, face in ((1.0, line.first), (-1.0, line.second)):
            at = np.searchsorted(nodes, face)
            for axis in (0, 1):
                B[row + np.arange(p), 2 * at + axis] += sign * way[:, axis]
    springs = np.tile(slab.body.area * slab.body.stiffness, 2)
    other = B @ np.linalg.solve(K + B.T @ (springs[:, None] * B), B.T)
    assert slab.body.compliance == pytest.approx(other, abs=1e-9 * abs(other).max())


def opened(slab, bars, strain):
    crack = slab.crack(LAW, bars)
    return crack, at_load(crack, strain)


@pytest.fixture(scope="module")
def finest():
    return floor(12.5)


@pytest.mark.parametrize("size", [50.0, 25.0])
@pytest.mark.parametrize("bars", [(), (diagonal(60.0), diagonal(160.0))])
def test_a_crack_is_as_wide_on_a_finer_mesh(finest, size, bars):
    for strain in (50e-6, 100e-6):
        widths = [mouth(each.crack(LAW, bars), strain) for each in (floor(size), finest)]
        assert widths[0] == pytest.approx(widths[1], rel=0.02)


@pytest.mark.parametrize("size", [50.0, 25.0])
@pytest.mark.parametrize("width", [0.05, 0.1, 0.2, 0.3])
def test_the_corner_opens_at_the_same_shrinkage_on_a_finer_mesh(finest, size, width):
    strains = [shrinkage_at(each.crack(LAW), width) for each in (floor(size), finest)]
    assert strains[0] == pytest.approx(strains[1], rel=0.02)


def shrinkage_at(crack, width):
    """Shrinkage at which the mouth is open so wide, from the last step before."""
    before = growth(crack, widest=width)[-2]
    at_mouth = np.zeros_like(crack.mean_row)
    at_mouth[0] = 1.0
    return at_rest(crack, Aim(at_mouth, 0.0, width), before)[0].load


def test_the_diagonal_is_where_a_symmetric_corner_is_weakest():
    strains = [running(floor(50.0, angle).crack(LAW)) for angle in (25.0, 35.0, 45.0, 55.0, 65.0)]
    assert np.argmin(strains) == 2
    assert strains[:2] == pytest.approx(strains[:2:-1], rel=5e-3)


def running(crack):
    """Greatest shortening while the mouth is not yet open by 0.15 mm."""
    return max(state.load for state in growth(crack, widest=0.15))


def test_in_a_symmetric_corner_the_faces_do_not_slide(slab):
    state = at_load(slab.crack(LAW), 60e-6)
    p = slab.crack(LAW).count
    assert abs(state.q[p : 2 * p]).max() < 1e-3 * state.q[0]


@pytest.mark.parametrize("law", [CohesiveLaw(3.5, 0.12), CohesiveLaw(2.9, 0.16)])
def test_stronger_or_tougher_concrete_never_cracks_earlier(slab, law):
    assert running(slab.crack(law)) >= running(slab.crack(LAW)) * (1 - 1e-3)


def test_a_saw_cut_lets_the_crack_run_earlier_and_a_joint_at_once(slab):
    cut = slab.crack(LAW, share=cut_before(slab.line, 200.0, 0.3))
    joint = slab.crack(LAW, share=0.0)
    assert mouth(cut, 30e-6) > mouth(slab.crack(LAW), 30e-6)
    assert mouth(joint, 30e-6) == pytest.approx(2 * mouth(joint, 15e-6), rel=1e-3)
    assert mouth(joint, 30e-6) > mouth(cut, 30e-6)


def test_fibres_hold_a_corner_narrower(slab):
    fibres = CohesiveLaw(2.9, 0.12, fibres=(1.1, 1.0))
    assert mouth(slab.crack(fibres), 60e-6) < 0.8 * mouth(slab.crack(LAW), 60e-6)


def test_the_state_says_how_far_the_crack_has_come(slab):
    early, late = (CrackState(*opened(slab, (), strain)) for strain in (20e-6, 60e-6))
    assert 0.0 < early.reach < 200.0
    assert late.reach == late.along[-1]
    assert late.mouth == late.opening.max()
    assert late.spent == pytest.approx(0.12 * 1200.0 * 150.0, rel=0.05)


def test_a_line_from_edge_to_edge_lets_the_parts_go():
    """A strip whose middle is a joint: the parts shrink alone, each to its own end."""
    strip = mesh(
        rectangle(4000.0, 800.0),
        MeshSize(50.0, 300.0, 1.6, 50.0),
        corners=(),
        crack=[(2000.0, 0.0), (2000.0, 800.0)],
    )
    holds = [Hold("left", "normal"), Hold("right", "normal"), Hold("near", "normal")]
    slab = cracked_slab(strip, SHEET, holds)
    joint = CrackState(*opened_at(slab.crack(LAW, share=0.0), 100e-6))
    assert joint.opening == pytest.approx(4000.0 * 100e-6, rel=1e-6)
    whole = CrackState(*opened_at(slab.crack(LAW), 100e-6))
    assert whole.stress == pytest.approx(15e3 * 100e-6, rel=1e-3)
    # The mean stretch of the strip is that of its middle axis, and between the middles of the
    # lengths over which the bar holds on, 320 mm apart, only the bar is pulled.
    bar = SlabBar((1000.0, 400.0), (3000.0, 400.0), 16.0, 201.0, BOND)
    held = CrackState(*opened_at(slab.crack(LAW, [bar], share=0.0), 100e-6))
    assert held.opening.mean() < joint.opening.mean()
    pull = 15e3 * (4000.0 * 100e-6 - held.crack.mean_row @ held.opened.q) / 3680.0 * 800.0 * 150.0
    assert held.bar_forces[0] == pytest.approx(pull, rel=0.02)


def opened_at(crack, strain):
    return crack, at_load(crack, strain)


def test_a_hold_that_ends_at_the_crack_holds_one_face_only():
    strip = mesh(
        rectangle(4000.0, 800.0),
        MeshSize(50.0, 300.0, 1.6, 50.0),
        corners=(),
        crack=[(2000.0, 0.0), (2000.0, 800.0)],
    )
    faces = [np.array([nodes[0]]) for nodes in (strip.crack.first, strip.crack.second)]
    ends = [Hold("left", "normal"), Hold("right", "normal")]
    for held in faces:  # upright: at the mouth one face rests on a pin, the other on nothing
        slab = cracked_slab(strip, SHEET, [*ends, Hold(held, "y")])
        state = CrackState(*opened_at(slab.crack(CohesiveLaw(1e3, 1e6)), 100e-6))
        assert state.movement[held[0], 1] == 0.0
        assert state.stress == pytest.approx(1.5, rel=1e-3)


@pytest.mark.parametrize(
    ("crack", "holds"),
    [(None, ROLLERS), ([CORNER, CORNER - 900.0], (Hold("left", "x", 2.0, 1.0),))],
)
def test_a_slab_that_cannot_be_cracked_is_refused(crack, holds):
    outline = l_slab(6000.0, 6000.0, 3000.0, 3000.0)
    split = mesh(outline, MeshSize(100.0, 750.0, 1.6, 100.0), crack=crack)
    with pytest.raises(ValueError, match="split|holds"):
        cracked_slab(split, SHEET, holds)
