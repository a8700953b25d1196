"""State of a pulled member: balance everywhere, cracks that open, and what is left of them."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.mechanics.bond import linear_bond, plain_bond
from crackkit.mechanics.crack_sequence import crack_sequence
from crackkit.mechanics.tension_response import force_strain, telling_pulls, tension_response
from tests.mechanics.pulled import MEAN, tie

seeds = st.integers(0, 10**6)
shares = st.floats(0.0, 1.0)
members = st.builds(
    tie,
    seed=seeds,
    diameter=st.sampled_from([10.0, 12.0, 16.0]),
    length=st.just(1500.0),
    stations=st.just(201),
    ends=st.sampled_from(["bars", "gripped"]),
    shrinkage=st.sampled_from([0.0, 2e-4]),
)
FINE = [
    tie(1, length=1500.0, stations=3001),
    tie(2, length=1500.0, stations=3001, ends="gripped", shrinkage=2e-4),
]


def area_under(force, strain):
    return np.sum((force[1:] + force[:-1]) / 2 * np.diff(strain))


@given(members, shares, shares)
def test_steel_and_concrete_bear_the_pull_together_at_every_section(member, share, back):
    sequence = crack_sequence(member)
    greatest = share * sequence.greatest_pull
    pull = back * greatest
    state = tension_response(member, sequence, pull, greatest)
    borne = member.bars_area * state.steel_stress + member.concrete_area * state.concrete_stress
    assert borne == pytest.approx(pull, rel=1e-9, abs=1e-9 * sequence.greatest_pull)


@pytest.mark.parametrize("fine", FINE)
@pytest.mark.parametrize("share", [0.3, 0.7, 1.0])
def test_what_the_bars_gain_on_their_way_is_what_bond_hands_over(fine, share):
    sequence = crack_sequence(fine)
    state = tension_response(fine, sequence, share * sequence.greatest_pull)
    handed = (state.bond_stress[1:] + state.bond_stress[:-1]) / 2 * np.diff(state.x)
    gained = np.diff(state.steel_stress) * fine.bars_area
    most = np.ptp(state.steel_stress) * fine.bars_area
    # Summed from the left end: what is off is what trapezoids miss beside the places of no slip.
    off = np.cumsum(gained - handed * fine.perimeter)
    assert np.abs(off).max() <= 3e-3 * most


@given(members, st.floats(0.01, 1.0))
def test_at_a_crack_bars_are_alone_and_stressed_most(member, share):
    sequence = crack_sequence(member)
    state = tension_response(member, sequence, share * sequence.greatest_pull)
    there = np.isin(state.x, state.cracks)
    most = share * sequence.greatest_pull / member.bars_area
    assert state.concrete_stress[there] == pytest.approx(0.0, abs=1e-9)
    assert state.steel_stress[there] == pytest.approx(most)
    assert state.steel_stress.max() <= most * (1 + 1e-9)


@pytest.mark.parametrize("fine", FINE)
@pytest.mark.parametrize("share", [0.03, 0.3, 0.7, 1.0])
def test_a_width_is_what_bars_stretch_more_than_concrete(fine, share):
    sequence = crack_sequence(fine)
    state = tension_response(fine, sequence, share * sequence.greatest_pull)
    steel = state.steel_stress / fine.steel_modulus
    concrete = state.concrete_stress / fine.concrete_modulus - fine.shrinkage
    ends = state.slip[-1] - state.slip[0]
    apart = area_under(steel - concrete, state.x)
    assert state.widths.sum() + ends == pytest.approx(apart, rel=1e-4, abs=1e-9)
    assert state.mean_strain * fine.length == pytest.approx(area_under(steel, state.x), rel=1e-4)


@given(members)
def test_more_pull_opens_cracks_and_only_a_new_neighbour_eases_them(member):
    sequence = crack_sequence(member)
    diagram = force_strain(member, sequence, telling_pulls(sequence))
    there = diagram.widths > 0
    assert np.all(there[1:] >= there[:-1])  # no crack ever shuts
    change = np.diff(diagram.widths, axis=0)
    for before, after, step in zip(there[:-1], there[1:], change, strict=True):
        new = np.flatnonzero(after & ~before)
        order = np.cumsum(before | after)
        beside = np.isin(order, np.r_[order[new] - 1, order[new] + 1]) & before
        assert np.all(step[~beside] >= -1e-9)
    assert np.all(np.diff(diagram.mean_strain) > -1e-12)


@settings(max_examples=25)
@given(members)
def test_the_diagram_agrees_with_the_states(member):
    sequence = crack_sequence(member)
    pulls = telling_pulls(sequence, 1)
    diagram = force_strain(member, sequence, pulls)
    for pull, strain, widths in zip(pulls, diagram.mean_strain, diagram.widths, strict=True):
        state = tension_response(member, sequence, pull)
        assert state.mean_strain == pytest.approx(strain, rel=1e-9, abs=1e-12)
        assert state.widths == pytest.approx(widths[widths > 0], rel=1e-9)


@given(members, shares, shares)
def test_cracks_stay_when_the_pull_goes_and_come_back_as_they_were(member, share, back):
    sequence = crack_sequence(member)
    greatest = share * sequence.greatest_pull
    most = tension_response(member, sequence, greatest)
    eased = tension_response(member, sequence, back * greatest, greatest)
    assert np.array_equal(most.cracks, eased.cracks)
    assert np.all(eased.widths >= 0) and np.all(eased.widths <= most.widths * (1 + 1e-9))
    again = tension_response(member, sequence, greatest * (1 - 1e-12), greatest)
    assert again.widths == pytest.approx(most.widths, rel=1e-6)


@settings(max_examples=40)
@given(members, st.floats(0.05, 1.0))
def test_no_round_of_pulling_and_easing_creates_energy(member, share):
    sequence = crack_sequence(member)
    greatest = share * sequence.greatest_pull
    up = np.unique(np.r_[telling_pulls(sequence, 12), greatest])
    up = up[up <= greatest]
    put_in = area_under(up, force_strain(member, sequence, up).mean_strain)
    down = np.linspace(greatest, 0.0, 5)
    strains = [tension_response(member, sequence, N, greatest).mean_strain for N in down]
    given_back = -area_under(down, np.array(strains))
    assert np.all(np.diff(strains) < 0)
    assert given_back <= put_in * (1 + 1e-3)  # the diagram is a chain of straight lines
    assert np.diff(strains) == pytest.approx(np.diff(strains)[0], rel=1e-6)  # one line both ways


@pytest.mark.parametrize("ends", ["bars", "gripped"])
def test_cracks_that_form_together_leave_the_diagram_in_order(ends):
    member = tie(strength=MEAN, ends=ends)
    sequence = crack_sequence(member)
    pulls = telling_pulls(sequence)
    assert np.all(np.diff(pulls) >= 0) and pulls[-1] == sequence.greatest_pull
    assert np.all(np.diff(force_strain(member, sequence, pulls).mean_strain) > -1e-12)


def test_linear_bond_cracks_a_member_too():
    # s = e tanh(lambda a)/lambda at each face.
    member = tie(3, length=2000.0, bond=linear_bond(100.0))
    sequence = crack_sequence(member)
    state = tension_response(member, sequence, sequence.greatest_pull)
    faces = np.r_[0.0, state.cracks, 2000.0]
    root = np.sqrt(100.0 * member.bond_slip.kappa)
    slips = float(member.gradient(member.yield_pull)) * np.tanh(root * np.diff(faces) / 2) / root
    assert len(state.cracks) > 4
    assert state.widths == pytest.approx(slips[:-1] + slips[1:], rel=1e-6)


def test_easing_is_worked_out_finely_enough():
    coarse, fine = tie(2, stations=401), tie(2, stations=3201)
    cracks = crack_sequence(coarse)
    same_cracks = replace(cracks, station=8 * cracks.station)
    widths = tension_response(coarse, cracks, 1e4, 5e4).widths
    assert widths == pytest.approx(tension_response(fine, same_cracks, 1e4, 5e4).widths, rel=5e-3)


def test_concrete_between_cracks_carries_a_share_of_its_strength():
    factors = []
    for seed in range(20):
        for diameter, side in ((12.0, 100.0), (16.0, 100.0), (16.0, 150.0), (20.0, 150.0)):
            member = tie(seed, diameter, side)
            pull = 400.0 * member.bars_area
            state = tension_response(member, crack_sequence(member), pull)
            missing = 400.0 / member.steel_modulus - state.mean_strain
            factors.append(missing * member.stretching / member.concrete_area / MEAN)
    assert min(factors) > 0.35 and max(factors) < 0.65


def test_shrinkage_widens_cracks_under_the_same_pull():
    wet, dry = tie(2), tie(2, shrinkage=2e-4)
    pull = 0.9 * wet.yield_pull
    widths = [tension_response(m, crack_sequence(m), pull).widths.sum() for m in (wet, dry)]
    assert widths[1] > widths[0]


def test_plain_bars_make_fewer_and_wider_cracks():
    plain = tie(2, bond=plain_bond(30.0))
    states = [tension_response(m, crack_sequence(m), 0.8 * m.yield_pull) for m in (tie(2), plain)]
    assert len(states[1].cracks) < len(states[0].cracks) / 2
    assert states[1].widths.max() > 2 * states[0].widths.max()


def test_concrete_without_bars_stretches_evenly_and_then_is_gone():
    member = tie(5, bars_area=0.0, perimeter=0.0)
    sequence = crack_sequence(member)
    pull = 0.5 * sequence.greatest_pull
    state = tension_response(member, sequence, pull)
    assert state.concrete_stress == pytest.approx(pull / member.concrete_area)
    assert force_strain(member, sequence, [0.0, pull]).mean_strain[1] == pytest.approx(
        state.mean_strain
    )
    with pytest.raises(ValueError, match="bears"):
        tension_response(member, sequence, sequence.greatest_pull)
    assert telling_pulls(sequence).max() < sequence.greatest_pull


@pytest.mark.parametrize(("pull", "greatest"), [(1e6, None), (2e4, 1e4), (-1.0, None), (1e4, 1e6)])
def test_pulls_that_cannot_be_are_refused(pull, greatest):
    member = tie()
    with pytest.raises(ValueError, match="pull|bears"):
        tension_response(member, crack_sequence(member), pull, greatest)
