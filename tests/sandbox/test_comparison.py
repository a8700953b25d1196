"""Structures side by side."""

import pytest

from crackkit.sandbox import (
    Cantilever,
    ContinuousBeam,
    CrackControl,
    SimpleBeam,
    WrongInput,
    compare,
)
from crackkit.units import shown


@pytest.fixture(scope="module")
def beam():
    return SimpleBeam(span="20 ft", bars="4 #6", dead="0.9 kip/ft", point_load="8 kip at 9 ft")


def row(table, label):
    return next(r for r in table.rows if r[0] == label)


def test_only_inputs_that_differ_are_listed(beam):
    table = compare(beam, beam.but(cover="2 in", bars="3 #7"))
    assert {r[0] for r in table.rows[: [r[0] for r in table.rows].index("verdict")]} == {
        "bottom bars",
        "cover",
    }
    assert row(table, "cover") == ("cover", "1.5 in", "2 in")


def test_the_difference_is_to_the_first(beam):
    other = beam.but(bars="6 #6")
    cell = row(compare(beam, other), "bars weigh")[2]
    assert cell == f"{shown(other.outcome.steel_mass, 'mass', 'US')} (+50%)"


def test_less_than_half_a_percent_is_no_difference():
    slab = CrackControl(
        bars="16 @ 200", moment="50 kNm", depth="220 mm", cover="35 mm", duration="lasting"
    )
    table = compare(slab, slab.but(bars="10 @ 80"))
    pull = row(table, "pull in the bars")
    assert pull[1] != pull[2] and "%" not in pull[2]
    assert "%" in row(table, "widest crack")[2]


def test_what_reads_the_same_has_no_difference(beam):
    weight = row(compare(beam, beam.but(span="20.001 ft")), "bars weigh")
    assert weight[1] == weight[2]


def test_the_same_beam_twice_has_no_differences(beam):
    table = compare(beam, beam)
    assert all(r[1] == r[2] for r in table.rows)
    assert table.rows[0][0] == "verdict"


def test_keywords_become_headings(beam):
    assert compare(drawn=beam, built=beam).names == ("drawn", "built")
    assert compare(beam, built=beam).names == ("case 1", "built")


def test_the_units_are_those_of_the_first(beam):
    metric = SimpleBeam(span="6 m", bars="4 x 20 mm", dead="13 kN/m")
    assert "lb" in row(compare(beam, metric), "bars weigh")[2]
    assert "kg" in row(compare(metric, beam), "bars weigh")[2]


def test_no_width_is_invented_where_nothing_holds(beam):
    table = compare(beam, beam.but(bars="none"))
    assert row(table, "widest crack")[2] == "—"
    assert row(table, "moves at most")[2] == "—"


def test_a_caution_of_one_carries_its_name(beam):
    table = compare(drawn=beam, bare=beam.but(bars="none"))
    assert any(text.startswith("bare: ⚠") for text in table.cautions)
    assert not any(text.startswith("drawn: A teaching") for text in table.cautions)


def test_one_alone_cannot_be_compared(beam):
    with pytest.raises(WrongInput, match="two"):
        compare(beam)


def test_the_place_of_the_widest_crack_is_told(beam):
    other = beam.but(overhang_left="6 ft", point_load="12 kip at 0 ft", top_bars="6 #6")
    cells = row(compare(beam, other), "where")
    assert cells[1].startswith("bottom, at ")
    assert cells[2] == "top, at 6.0\u202fft"


def test_structures_of_different_kinds_stand_side_by_side(beam):
    table = compare(beam, Cantilever(overhang="6 ft"), ContinuousBeam(spans="2 x 16 ft"))
    assert row(table, "overhang")[1:] == ("—", "6 ft", "—")
    assert len(row(table, "verdict")) == 4


def test_a_floor_is_compared_by_the_widest_crack_of_any_arrangement():
    floor = ContinuousBeam(spans="3 x 5 m", dead="1.5 kN/m", live="6 kN/m")
    table = compare(floor, floor.but(live_on="none"))
    cells = row(table, "widest crack")
    assert cells[1] == cells[2] == shown(floor.outcome.verdict.width, "width", "SI")
