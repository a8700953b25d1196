"""Notes on a drawing: bars and point loads."""

import pytest

from crackkit.units import UnitError, parse_bars, parse_point_load, parse_point_loads


@pytest.mark.parametrize(
    ("text", "bars"),
    [
        ("3 #6", (3, "#6")),
        ("3-#6", (3, "#6")),
        ("(2) #8", (2, "#8")),
        ("4#5", (4, "#5")),
        ("4 No. 5", (4, "#5")),
        ("4 x 16 mm", (4, "16")),
        ("4 x 16", (4, "16")),
        ("4 × 16mm", (4, "16")),
        ("4 16 mm", (4, "16")),
        ("4 ø16", (4, "16")),
        ("4ø16", (4, "16")),
        ("0 #5", (0, "#5")),
    ],
)
def test_a_number_of_bars_is_read(text, bars):
    assert parse_bars(text) == bars


@pytest.mark.parametrize(
    ("text", "bars"),
    [
        ("#5 @ 12 in", ("#5", 304.8)),
        ('#5@12"', ("#5", 304.8)),
        ("#5 @ 12", ("#5", 304.8)),
        ("#5 at 300 mm", ("#5", 300.0)),
        ("12 @ 150 mm", ("12", 150.0)),
        ("12 @ 150", ("12", 150.0)),
        ("12 mm @ 6 in", ("12", 152.4)),
        ("ø12 @ 150", ("12", 150.0)),
    ],
)
def test_a_spacing_is_read(text, bars):
    assert parse_bars(text) == bars


@pytest.mark.parametrize("text", ["", "416", "3", "#6", "3 #0", "three #6", "#5 @ -3 in", "#5 @ 0"])
def test_what_names_no_bars_is_refused(text):
    with pytest.raises(UnitError, match="3 #6"):
        parse_bars(text)


def test_a_spacing_in_kilograms_is_refused():
    with pytest.raises(UnitError, match="does not measure size"):
        parse_bars("#5 @ 12 kg", field="Mat")


@pytest.mark.parametrize(
    ("text", "force", "position"),
    [
        ("10 kip at 8 ft", 44482.2161526, 2438.4),
        ("45 kN @ 2,5 m", 45000.0, 2500.0),
        ("10 kips at 8'-6\"", 44482.2161526, 2590.8),
    ],
)
def test_a_point_load_is_read(text, force, position):
    load = parse_point_load(text)
    assert load.force == pytest.approx(force, rel=1e-11)
    assert load.position == pytest.approx(position, rel=1e-11)


def test_several_loads_may_be_divided_in_any_usual_way():
    text = "10 kN at 1 m, 20 kN at 2,5 m; 30 kN at 3 m and 40 kN at 4 m,50 kN at 5 m"
    assert [tuple(load) for load in parse_point_loads(text)] == [
        (10000, 1000),
        (20000, 2500),
        (30000, 3000),
        (40000, 4000),
        (50000, 5000),
    ]


def test_no_text_holds_no_load():
    assert parse_point_loads("  ") == ()


@pytest.mark.parametrize(
    "text", ["10 kip", "10 kip at", "at 8 ft", "10 kip at 8", "8 ft at 10 kip"]
)
def test_a_load_without_force_or_place_is_refused(text):
    with pytest.raises(UnitError, match="Load"):
        parse_point_load(text)
