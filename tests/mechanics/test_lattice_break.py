"""Step after step: each looked at again by solving the whole lattice from the beginning."""

import numpy as np
import pytest

from crackkit.mechanics.lattice import lattice_teeth, run_of
from crackkit.mechanics.lattice_body import lattice_body
from crackkit.mechanics.lattice_break import lattice_steps
from crackkit.mechanics.lattice_points import lattice_points
from crackkit.mechanics.lattice_teeth import GONE
from crackkit.mechanics.plane_supports import Hold
from tests.mechanics.lattices import CONCRETE, L_SLAB, ROLLERS

GRIPS = [
    Hold("left", "normal", 2e3),
    Hold("right", "x", 2e3),
    *(Hold(s, "y") for s in ("near", "far")),
]
LARGEST = 2e-4


@pytest.fixture(scope="module", params=["rollers", "springs"])
def broken(request):
    """A lattice, the steps its bonds can take, and the steps they took."""
    holds = ROLLERS if request.param == "rollers" else GRIPS
    body = lattice_body(lattice_points(L_SLAB, 500, 5), holds, 15e3, 150.0)
    teeth = lattice_teeth(body.lattice, CONCRETE, 5)
    return body, teeth, lattice_steps(body, teeth, LARGEST, 200)


def left_after(teeth, steps, count):
    """What is left of each bond, and how many steps each has taken."""
    taken = np.bincount(steps.bonds[:count], minlength=len(teeth.limits))
    return teeth.shares[np.arange(taken.size), taken], taken


def solved(body, softness):
    """Elongations of bonds, and the work in bonds and grips, for a shrinkage of 1."""
    stiffness = body.stiffness.copy()
    stiffness[: softness.size] *= softness
    elongation = body.rest(body.factor(stiffness), stiffness)[1]
    return elongation[: softness.size], 0.5 * stiffness @ elongation**2


def test_no_bond_gives_way_below_its_strength_and_none_is_passed_over(broken):
    body, teeth, steps = broken
    each = np.arange(len(teeth.limits))
    for k in range(0, len(steps.bonds), 7):
        softness, taken = left_after(teeth, steps, k)
        elongation = solved(body, softness)[0] * steps.loads[k]
        limit = np.append(teeth.limits, np.full((each.size, 1), np.inf), axis=1)[each, taken]
        near = elongation / limit
        assert near[steps.bonds[k]] == pytest.approx(1.0, rel=1e-6)
        assert near.max() <= 1.0 + 1e-6


def test_work_is_never_gained_and_what_is_given_up_is_what_the_body_loses(broken):
    body, teeth, steps = broken
    assert (steps.torn > 0).all()
    assert (steps.freed >= steps.torn).all()
    for k in range(0, len(steps.bonds), 7):
        before, after = (solved(body, left_after(teeth, steps, n)[0])[1] for n in (k, k + 1))
        lost = (before - after) * steps.loads[k] ** 2
        assert lost >= 0
        assert lost == pytest.approx(steps.freed[k], rel=1e-5)


def test_movements_are_those_of_the_whole_lattice(broken):
    body, teeth, steps = broken
    after = [0, 1, 30, len(steps.bonds)]
    for n, movement in zip(after, steps.movement(after), strict=True):
        expected = body.solved(left_after(teeth, steps, n)[0])[0]
        np.testing.assert_allclose(movement, expected, atol=1e-6 * 6000.0)


def test_a_bond_softens_step_by_step_until_it_is_gone(broken):
    _body, teeth, steps = broken
    for bond in np.unique(steps.bonds):
        left = steps.left[steps.bonds == bond]
        np.testing.assert_allclose(left, teeth.shares[bond, 1 : left.size + 1])
        assert (np.diff(left) < 0).all()
    assert (steps.left == GONE).sum() > 10


def test_the_bonds_that_break_take_up_the_work_they_were_given(broken):
    body, teeth, steps = broken
    gone = np.unique(steps.bonds[steps.left == GONE])
    torn = np.bincount(steps.bonds, steps.torn, minlength=len(teeth.limits))[gone]
    np.testing.assert_allclose(torn / body.sections[gone], 0.25 * CONCRETE.energy, rtol=0.01)


def test_a_run_ends_when_all_has_shrunk_when_it_is_let_go_or_when_it_is_broken_off():
    body = lattice_body(lattice_points(L_SLAB, 300, 1), ROLLERS, 15e3, 150.0)
    first = run_of(body, CONCRETE, 1.0, 1)
    assert first.ended == "slack"
    short = run_of(body, CONCRETE, 1.0, 1, most=20)
    assert (short.ended, len(short.order)) == ("steps", 20)
    np.testing.assert_array_equal(short.order, first.order[:20])
    little = run_of(body, CONCRETE, float(first.strain[10]), 1)
    assert little.ended == "shrinkage"
    assert (little.loads <= little.largest).all()
    assert little.frame(-1).strain == little.largest


def test_nothing_breaks_where_little_shrinks():
    body = lattice_body(lattice_points(L_SLAB, 300, 1), ROLLERS, 15e3, 150.0)
    run = run_of(body, CONCRETE, 1e-6, 1)
    assert (run.ended, len(run.order), len(run.frames)) == ("shrinkage", 0, 1)
    frame = run.frame(0)
    assert frame.strain == 1e-6 and (frame.softness == 1.0).all()
    np.testing.assert_allclose(frame.movement, 1e-6 * body.solved()[0], rtol=1e-9)
