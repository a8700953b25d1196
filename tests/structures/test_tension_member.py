"""What must hold for a pulled member."""

import math
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.structures import fields, tie_bars
from crackkit.structures.fields import InputError, fitted, input_at
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD, YIELDS
from crackkit.structures.tension_member import TensionMember
from tests.structures.tension_members import tension_members

TIE = TensionMember()
BARE = TensionMember(number=0)


def members(**fixed):
    """Any pulled member that the ranges allow; ten side by side are tried on their own."""
    return tension_members(**({"beside": False} | fixed))


@settings(max_examples=60)
@given(members())
def test_any_member_has_an_answer(tie):
    outcome = tie.solve()
    assert outcome.verdict.key in (UNCRACKED, TIGHT, TOO_WIDE, YIELDS, UNHELD)
    assert outcome.working
    assert len(outcome.numbers) == 6
    state = outcome.pulled
    assert len(state.order) == len(outcome.cracks)
    if state.ended != "parted":
        whole = state.now.steel_stress * tie.bars_area + state.now.concrete_stress * (
            tie.concrete_area
        )
        shown = min(tie.pull, state.history.sequence.greatest_pull)
        assert np.allclose(whole, shown, rtol=1e-9, atol=1e-6 * max(shown, 1.0))


@settings(max_examples=25)
@given(members(number=0), st.floats(0.0, 1.0))
def test_without_bars_there_is_one_crack_and_it_is_over(tie, share):
    top = input_at(tie, "pull").high
    outcome = replace(tie, pull=share * top, before=0.0).solve()
    first = outcome.pulled.first_pull
    assert (outcome.verdict.key == UNHELD) == (share * top >= first)
    assert len(outcome.cracks) == (share * top >= first)
    assert outcome.pulled.next_pull is None or not outcome.cracks
    assert not outcome.steel


@settings(max_examples=25)
@given(members(number=4, ends="bars", surface="ribbed", shrinkage=0.0), st.floats(0.05, 1.0))
def test_more_pull_never_shuts_a_crack_wholly(tie, share):
    """No crack shuts; a new one may ease its neighbours, but what they open together grows."""
    top = input_at(tie, "pull").high
    less, more = (replace(tie, pull=p, before=0.0).solve() for p in (share * top, top))
    at = {round(c.at, 6) for c in more.cracks}
    assert {round(c.at, 6) for c in less.cracks} <= at
    assert all(c.width.governing > 0 for c in more.cracks)
    assert more.movement.largest >= less.movement.largest - 1e-9


def test_letting_go_keeps_the_cracks():
    pulled = replace(TIE, pull=150e3).solve()
    free = replace(TIE, pull=0.0, before=150e3).solve()
    assert [c.at for c in free.cracks] == [c.at for c in pulled.cracks]
    pairs = zip(free.cracks, pulled.cracks, strict=True)
    assert all(0 < a.width.governing < b.width.governing for a, b in pairs)
    # the rules still speak of the pull that made them
    assert free.pulled.rules == pulled.pulled.rules


def test_letting_go_a_little_does_not_clear_the_verdict():
    pulled = replace(TIE, pull=150e3).solve()
    eased = replace(TIE, pull=147e3, before=150e3).solve()
    assert pulled.verdict.key == eased.verdict.key == TOO_WIDE


def test_a_pull_that_goes_down_leaves_its_cracks_behind():
    high, low = replace(TIE, pull=120e3), replace(TIE, pull=20e3)
    assert low.after(high, {"pull": 20e3}).before == 120e3
    assert high.after(low, {"pull": 120e3}) == high
    assert low.after(high, {"pull": 20e3, "before": 0.0}) == low


def test_the_next_crack_button_brings_one_more_crack():
    tie, counts = TIE, []
    for _press in range(5):
        outcome = tie.solve()
        counts.append(len(outcome.cracks))
        tie = fitted(tie, tie.counts[0].changes)[0]
    assert counts == [0, 1, 2, 3, 4]


def test_the_button_has_nothing_left_to_do_at_the_end():
    tie = TIE
    while tie.counts[0].changes:
        tie = fitted(tie, tie.counts[0].changes)[0]
    assert tie.solve().pulled.next_pull is None
    assert replace(TIE, pull=0.0).counts[1].changes == {}  # nothing to let go of


def test_let_go_and_a_fresh_one_do_what_they_say():
    pulled = replace(TIE, pull=120e3)
    let_go = fitted(pulled, pulled.counts[1].changes)[0]
    assert (let_go.pull, let_go.before) == (0.0, 120e3)
    assert let_go.solve().cracks
    fresh = fitted(let_go, let_go.counts[2].changes)[0]
    assert not fresh.solve().cracks


@pytest.mark.parametrize("seed", range(1, 7))
def test_the_same_steel_as_four_thin_bars_has_finer_and_more_cracks(seed):
    thick = TensionMember(number=1, size="20", pull=110e3, seed=seed)
    thin = replace(thick, number=4, size="10")
    assert thick.bars_area == pytest.approx(thin.bars_area)
    a, b = thick.solve(), thin.solve()
    assert len(b.cracks) > len(a.cracks)
    assert b.widest.width.governing < 0.8 * a.widest.width.governing


def test_smooth_bars_leave_fewer_and_wider_cracks():
    ribbed, plain = replace(TIE, pull=150e3).solve(), replace(TIE, pull=150e3, surface="plain")
    plain = plain.solve()
    assert len(plain.cracks) < len(ribbed.cracks)
    assert plain.widest.width.governing > ribbed.widest.width.governing
    assert plain.pulled.rules is None  # the published rules are for ribbed bars


def test_a_bar_too_thin_for_its_concrete_does_not_hold_the_first_crack():
    thin = TensionMember(number=1, size="10", ends="gripped")
    top = input_at(thin, "pull").high
    outcome = replace(thin, pull=top).solve()
    assert outcome.verdict.key == UNHELD and len(outcome.cracks) == 1
    assert thin.bars_area * thin.yield_strength < outcome.pulled.first_pull


def test_at_the_top_of_the_slider_the_bars_yield():
    outcome = replace(TIE, pull=input_at(TIE, "pull").high).solve()
    assert outcome.verdict.key == YIELDS
    assert outcome.pulled.steel_at_crack == pytest.approx(TIE.yield_strength)


def test_shrinkage_brings_the_first_crack_sooner():
    wet, dry = TIE.solve().pulled, replace(TIE, shrinkage=0.0003).solve().pulled
    assert dry.first_pull < wet.first_pull


def test_ten_side_by_side_have_the_same_mechanics_and_other_concrete():
    outcome = replace(TIE, pull=120e3, beside=True).solve()
    siblings = outcome.pulled.siblings
    assert len(siblings) == 9 and len({s.seed for s in siblings}) == 9
    twin = replace(TIE, pull=120e3, seed=siblings[3].seed).solve()
    assert np.array_equal(twin.pulled.now.cracks, siblings[3].cracks)
    assert np.array_equal(twin.pulled.now.widths, siblings[3].widths)


def test_the_order_of_seeds_changes_nothing_of_even_concrete():
    first, other = (replace(TIE, scatter=0.0, seed=s, pull=120e3).solve() for s in (1, 77))
    assert [c.at for c in first.cracks] == [c.at for c in other.cracks]
    assert first.numbers == other.numbers


def test_the_rules_stand_beside_the_cracks_and_can_overrule_them():
    """ACI 224.2R stands for the ACI family under direct pull, EN 1992-1-1 for the other."""
    outcome = replace(TIE, pull=130e3).solve()
    names = [rule for rule, _width in outcome.pulled.rules.by_rule]
    assert {"gergely_lutz", "en_2004", "model_code_2010"} <= set(names)
    assert outcome.pulled.rules.rule == "en_2004"
    assert replace(TIE, pull=130e3, code="ACI").solve().pulled.rules.rule == "gergely_lutz"
    hard = replace(TIE, pull=150e3).solve()
    bound = hard.verdict.limit.width
    assert hard.widest.width.governing <= bound < hard.pulled.rules.governing
    assert hard.verdict.key == TOO_WIDE


@pytest.mark.parametrize("number", [1, 2, 4, 6, 8])
def test_bars_lie_symmetrically_and_within_the_cover(number):
    steel = TIE.bar
    places = tie_bars.places(number, steel, 200.0, 160.0, 25.0)
    assert len(places) == number
    y, z = np.array(places).T
    assert y.mean() == pytest.approx(100.0) and z.mean() == pytest.approx(80.0)
    if number > 1:
        assert y.min() == pytest.approx(25.0 + steel.diameter / 2)
    if number > 2:
        assert z.min() == pytest.approx(25.0 + steel.diameter / 2)


def test_the_first_crack_comes_near_the_textbook_pull():
    """Textbook: f_ct (A_c + A_s E_s/E_c), in even concrete in a long member."""
    tie = TensionMember(scatter=0.0, length=4000.0)
    step = next(s for s in tie.solve().working if s.symbol == "N_cr")
    n = 200000 / tie.modulus
    assert step.value == pytest.approx(tie.tensile * (tie.concrete_area + n * tie.bars_area))
    assert tie.solve().pulled.first_pull == pytest.approx(step.value, rel=0.01)


def test_weight_counts_every_bar():
    assert TIE.solve().steel_mass == pytest.approx(4 * TIE.bar.mass * 1.5)


def test_a_pull_out_of_range_names_it():
    with pytest.raises(InputError, match="Pull"):
        TensionMember(pull=1e9)
    assert math.isfinite(fields.input_at(BARE, "pull").high)
