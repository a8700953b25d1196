"""One input runs through its values."""

import numpy as np
import pytest

from crackkit.drawing.labels import faults
from crackkit.sandbox import Cantilever, ContinuousBeam, SimpleBeam, WrongInput, sweep
from crackkit.sandbox.beam_inputs import ARGUMENTS


@pytest.fixture(scope="module")
def beam():
    return SimpleBeam(
        span="20 ft", bars="4 #6", top_bars="2 #4", dead="0.8 kip/ft", point_load="6 kip at 8 ft"
    )


def test_each_row_is_the_beam_typed_with_that_value(beam):
    course = sweep(beam, "cover", "1 in", "2 in", steps=5).course
    assert course.x == pytest.approx([1.0, 1.25, 1.5, 1.75, 2.0])
    alone = beam.but(cover="1.75 in").outcome.widest.width
    assert course.governing[3] == pytest.approx(alone.governing, rel=1e-9)
    assert (course.low[3], course.high[3]) == pytest.approx((alone.low, alone.high), rel=1e-9)


def test_more_cover_opens_the_crack(beam):
    assert (np.diff(sweep(beam, "cover", "1 in", "2 in").course.governing) > 0).all()


def test_bars_are_counted_one_by_one(beam):
    found = sweep(beam, "bars", "3 #6", "6 #6")
    assert found.course.x.tolist() == [3, 4, 5, 6]
    assert (np.diff(found.course.governing) < 0).all()


def test_a_load_grows_or_wanders(beam):
    grown = sweep(beam, "point_load", "2 kip at 8 ft", "6 kip at 8 ft", steps=3)
    assert (grown.course.unit, grown.course.x.tolist()) == ("kip", pytest.approx([2, 4, 6]))
    walked = sweep(beam, "point_load", "6 kip at 2 ft", "6 kip at 18 ft", steps=9)
    assert walked.course.unit == "ft"
    assert int(np.argmax(walked.course.governing)) == 4


def test_a_sweep_typed_backwards_shows_the_same_chart(beam):
    ahead = sweep(beam, "cover", "1 in", "2 in", steps=4)
    back = sweep(beam, "cover", "2 in", "1 in", steps=4)
    assert back.course.governing == pytest.approx(ahead.course.governing)
    assert back.rows == ahead.rows[::-1]


@pytest.mark.parametrize("name", [a.name for a in ARGUMENTS if a.quantity])
def test_every_number_can_run(beam, name):
    start = beam.texts[name] or beam.texts["cover"]
    amount, unit = start.split(" ")
    end = f"{float(amount) * 1.05 + 0.05} {unit}"
    found = sweep(beam, name, start, end, steps=3)
    assert len(found.rows) == 3
    assert faults(found.picture()) == []


@pytest.mark.parametrize(
    "asked",
    [
        ("cover", "1 in", "2.4 in"),
        ("cover", "25 mm", "60 mm"),
        ("bars", "1 #6", "6 #6"),
        ("bars", "1 #4", "2 #4"),
        ("dead", "0 kip/ft", "0.1 kip/ft"),
        ("dead", "0 kip/ft", "5 kip/ft"),
        ("span", "9 ft", "39 ft"),
        ("concrete", "2500 psi", "8000 psi"),
    ],
)
def test_no_words_of_a_chart_touch(beam, asked):
    assert faults(sweep(beam, *asked).picture()) == []


def test_where_bars_yield_the_line_stops_and_the_table_says_so(beam):
    found = sweep(beam, "bars", "1 #6", "6 #6")
    gone = np.isnan(found.course.governing)
    assert gone[0]
    assert not gone[-1]
    assert found.rows[0][2] == "—"
    assert "give way" in found.rows[0][1] or "nothing holds" in found.rows[0][1]


def test_the_chart_is_said_in_words(beam):
    picture = sweep(beam, "cover", "1 in", "2 in").picture()
    assert "1 in" in picture.description
    assert "limit" in picture.description


@pytest.mark.parametrize(
    ("asked", "part"),
    [
        (("covr", "1 in", "2 in"), "Did you mean cover"),
        (("code", "ACI", "EN"), "does not run"),
        (("cover", "1 in", "9 in"), "is outside"),
        (("cover", 1, "2 in"), "has no unit"),
        (("bars", "2 #6", "3 #5"), "different sizes"),
        (("bars", "none", "3 #6"), "does not run"),
        (("point_load", "none", "2 kip at 3 ft"), "one load each"),
    ],
)
def test_a_sweep_that_cannot_be_made_says_why(beam, asked, part):
    with pytest.raises(WrongInput, match=part):
        sweep(beam, *asked)


@pytest.mark.parametrize("steps", [1, 0, 2.5, 1000])
def test_the_number_of_steps_is_a_sensible_one(beam, steps):
    with pytest.raises(WrongInput, match="2 to 200"):
        sweep(beam, "cover", "1 in", "2 in", steps=steps)


ARM = {"overhang": "1.5 m", "load": "12 kN/m", "point_load": "6 kN at 1.4 m", "top": "12 @ 150"}
FLOOR = {"spans": "5 m, 6 m, 5 m", "dead": "1.5 kN/m", "live": "5 kN/m", "top": "12 @ 150"}
COURSES = [
    (Cantilever, ARM, "trodden", "0 mm", "60 mm", "mm", [0, 30, 60]),
    (Cantilever, ARM, "top", "12 @ 200", "12 @ 100", "mm", [200, 150, 100]),
    (Cantilever, ARM, "load", "10 kN/m", "14 kN/m", "kN/m", [10, 12, 14]),
    (Cantilever, ARM, "load", "10 kN/m2", "14 kN/m2", "kPa", [10, 12, 14]),
    (Cantilever, ARM, "point_load", "6 kN at 1 m", "6 kN at 1.4 m", "m", [1.0, 1.2, 1.4]),
    (ContinuousBeam, FLOOR, "top_drop", "0 mm", "40 mm", "mm", [0, 20, 40]),
    (ContinuousBeam, FLOOR, "top_reach", "1 m", "2 m", "m", [1.0, 1.5, 2.0]),
    (ContinuousBeam, FLOOR, "spans", "5 m, 5 m, 5 m", "5 m, 6 m, 5 m", "m", [5.0, 5.5, 6.0]),
    (ContinuousBeam, FLOOR, "settled", "B 0 mm", "B 8 mm", "mm", [0, 4, 8]),
    (ContinuousBeam, FLOOR, "travelling", "2 kN", "4 kN", "kN", [2, 3, 4]),
    (ContinuousBeam, FLOOR, "top", "12 @ 200", "12 @ 100", "mm", [200, 150, 100]),
    (ContinuousBeam, {}, "bottom", "2 #6, 2 #6, 2 #6", "4 #6, 2 #6, 4 #6", "", [2, 3, 4]),
]


@pytest.mark.parametrize(("kind", "typed", "name", "start", "end", "unit", "values"), COURSES)
def test_any_number_of_any_structure_can_run(kind, typed, name, start, end, unit, values):
    structure = kind(**typed) if typed else kind(shape="beam", top="3 #6", system="SI")
    found = sweep(structure, name, start, end, steps=3)
    assert found.course.unit == unit
    assert sorted(found.course.x.tolist()) == pytest.approx(sorted(values))
    assert faults(found.picture()) == []
    last = structure.but(**{name: end})
    assert found.rows[-1][1:3] == sweep(structure, name, end, start, steps=3).rows[0][1:3]
    assert found.rows[-1][1] in repr(last)


def test_a_sweep_of_a_floor_follows_the_widest_crack_of_any_arrangement():
    floor = ContinuousBeam(**FLOOR)
    course = sweep(floor, "top_drop", "0 mm", "20 mm", steps=2).course
    assert course.governing[0] == pytest.approx(floor.outcome.range.widest.width.governing)


@pytest.mark.parametrize(
    ("name", "start", "end", "part"),
    [
        ("top", "12 @ 200", "16 @ 100", "different sizes"),
        ("top", "none", "12 @ 100", "does not run"),
        ("settled", "B 0 mm", "C 5 mm", "different places"),
        ("spans", "5 m, 5 m", "5 m, 5 m, 5 m", "different numbers"),
        ("live", "5 kN/m", "5 kN/m2", "load per area"),
        ("live_on", "1", "2", "does not run"),
    ],
)
def test_ends_that_do_not_go_together_are_told(name, start, end, part):
    with pytest.raises(WrongInput, match=part):
        sweep(ContinuousBeam(**FLOOR), name, start, end)
