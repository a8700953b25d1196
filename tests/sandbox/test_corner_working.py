"""The working of a slab with inside corners can be checked by hand, whatever the slab."""

from dataclasses import replace
from itertools import groupby

import pytest
from hypothesis import example, given, settings

from crackkit.sandbox.working import working
from crackkit.structures.corner_slab import CornerSlab
from tests.sandbox import by_hand
from tests.structures.corner_slabs import corner_slabs

HAIRLESS = "less than a hair, 0.01 mm"
ROUNDING = 1.01  # half of a last digit, and what small shifts of several add to each other
US = CornerSlab(code="ACI", model="ACI", strength=27.6, yield_strength=420.0)
OPENING = CornerSlab(shape="opening", holds=0.4)
SLABS = {
    "no bars": CornerSlab(),
    "metric bars": CornerSlab(diagonals="16", diagonal_count=3),
    "inch bars": replace(US, diagonals="#5", diagonal_count=4),
    "bars along the sides": CornerSlab(edges="12", edge_count=2),
    "mat": CornerSlab(mat="10", spacing=100.0, cover=20.0),
    "bars that slip": CornerSlab(diagonals="25", diagonal_length=400.0, age=3650.0),
    "bars that yield": CornerSlab(diagonals="10", diagonal_count=1, holds=0.5, age=3650.0),
    "bars drawn out far": CornerSlab(length=12000.0, width=12000.0, age=3650.0, diagonals="20",
                                     diagonal_length=400.0, diagonal_count=1, holds=0.5),
    "thin bars drawn out far": CornerSlab(length=12000.0, width=12000.0, age=3650.0, edges="6",
                                          holds=0.5, cooling=30.0, humidity=0.3),
    "bars hardly drawn out": CornerSlab(age=10.0, mat="12", spacing=150.0),
    "fibres": CornerSlab(fibres="steel_40"),
    "fibres that grow stronger": CornerSlab(fibres="plastic_5", age=3650.0),
    "tested fibres": CornerSlab(fibres="tested", residual_1=8.0, residual_3=10.0, age=20.0),
    "saw cut": CornerSlab(joint="saw", cut_depth=0.3),
    "joint": CornerSlab(joint="joint"),
    "on its base": CornerSlab(held="base", drag="gravel"),
    "door": CornerSlab(shape="door", held="foot", holds=0.4, both_sides=True),
    "opening": OPENING,
    "opening with bars": replace(OPENING, diagonals="#4", edges="12"),
    "not yet dry": CornerSlab(age=3.0),
    "not yet dry, ACI": replace(US, age=3.0),
    "swells": CornerSlab(model="MC2010", humidity=0.95, strength=60.0),
    "Model Code": CornerSlab(model="MC2010"),
    "moist, ACI": replace(US, humidity=0.9, curing=10.0),
    "mixed rules": replace(US, model="EN", code="ACI"),
    "mixed the other way": CornerSlab(model="ACI", code="EN"),
    "cools": CornerSlab(cooling=15.0, age=5.0),
    "strong": CornerSlab(strength=60.0),
    "weak": CornerSlab(strength=15.0),
}  # fmt: skip


def rows_of(slab, system):
    return working(slab.solve(), system)


def check(rows):
    """Work out each formula with the numbers shown, and ask where each number comes from."""
    before = {}
    for topic, of_topic in groupby(rows, key=lambda row: row.topic):
        known = dict(before)
        for row in of_topic:
            if row.numbers:
                assert_follows(row)
                assert_told(row, known)
            if row.value != HAIRLESS:
                known[row.symbol] = by_hand.values_of(row)[0]
        if "cross the crack" not in topic:  # letters of one bar do not serve another
            before = known


def assert_follows(row):
    """What is shown is what the formula gives, but for digits that are not shown."""
    result = by_hand.worked_out(row)
    for shown in by_hand.values_of(row):
        room = ROUNDING * (result.half + shown.half) + 1e-12
        assert abs(shown.value - result.value) <= room, (row, result)


def assert_told(row, known):
    """Each number that is put in stands above, under its letter."""
    for letter, number in zip(by_hand.letters_of(row), by_hand.put_in(row), strict=True):
        assert letter in known, (row.symbol, letter)
        told = known[letter]
        room = ROUNDING * (told.half + by_hand.half_of(number))
        assert abs(told.value - number) <= room, (row, letter, told)


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("name", SLABS)
def test_every_number_of_the_working_follows_from_those_above_it(name, system):
    check(rows_of(SLABS[name], system))


@settings(max_examples=10, deadline=None)
@given(corner_slabs())
@example(CornerSlab(age=1.0 + 2e-16, curing=1.0, model="ACI"))  # hardly after its curing
def test_and_so_it_does_for_any_slab(slab):
    check(rows_of(slab, "US"))


def row_of(rows, symbol):
    return next(row for row in rows if row.symbol == symbol)


@pytest.mark.parametrize("name", SLABS)
def test_the_ends_of_the_working_are_the_answers(name):
    """The reckoning leads to what picture, verdict and tiles say."""
    outcome = SLABS[name].solve()
    state, steps = outcome.cornered, {step.symbol: step.value for step in outcome.working}
    assert steps["eps"] == state.free and steps["f_t"] == state.strength
    assert steps["E"] == state.modulus and steps["d"] == state.material_length
    assert steps["sigma/f_t"] == state.share
    assert steps["w"] == (state.crack.widest if state.crack.widest > 0.01 else HAIRLESS)
    pulled = [step.value for step in outcome.working if step.symbol == "sigma_s"]
    crossing = sorted((bar.stress for bar in state.bars if bar.crosses), reverse=True)
    assert pulled == crossing[: len(pulled)] and len(pulled) == min(len(crossing), 6)


def test_toughness_stands_in_the_unit_that_the_length_wants():
    rows = rows_of(SLABS["no bars"], "SI")
    told = row_of(rows, "G_F").value
    assert told.endswith("N/mm")
    assert f" × {float(told.split()[0]):.4g}/" in row_of(rows, "d").numbers


@pytest.mark.parametrize("system", ["SI", "US"])
def test_a_bar_is_called_by_the_name_of_its_own_system(system):
    """A #5 bar is 5/8 in thick, by ASTM A615; no bar of 16 mm lies there."""
    rows = rows_of(SLABS["inch bars"], system)
    topics = {row.topic for row in rows if row.symbol == "d_b"}
    assert "Across the crack, bar 1: diagonal, #5" in topics
    assert ("0.625\u202fin" in row_of(rows, "d_b").value) == (system == "US")
    metric = {row.topic for row in rows_of(SLABS["metric bars"], system)}
    assert "Across the crack, bar 1: diagonal, 16 mm" in metric


def test_what_a_hand_cannot_do_is_said():
    rows = rows_of(SLABS["metric bars"], "SI")
    for symbol in ("sigma", "w_0", "w", "a", "e"):
        row = row_of(rows, symbol)
        assert not row.numbers and "not for hand calculation" in row.clause


def test_creep_and_ageing_are_told():
    for name in ("no bars", "inch bars"):
        rows = rows_of(SLABS[name], "SI")
        assert row_of(rows, "chi").value == "0.8" and float(row_of(rows, "phi").value) > 0.5
        assert row_of(rows, "f_cm28").numbers


def test_the_cases_reach_every_branch_of_the_bond():
    """The work of bond is told up to its peak, along its level, and on its way down."""
    formulas = {
        row.formula.rsplit(": ", 1)[-1]
        for slab in SLABS.values()
        for row in rows_of(slab, "SI")
        if row.symbol == "W"
    }
    assert len(formulas) == 4
