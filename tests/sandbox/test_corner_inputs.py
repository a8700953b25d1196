"""What can be typed of a slab with an inside corner, and where it arrives."""

import inspect
from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.sandbox import CornerSlab, WrongInput
from crackkit.sandbox.corner_arguments import PlacedBars
from crackkit.sandbox.corner_inputs import ARGUMENTS, BY_NAME, MEANT, PIECES
from crackkit.structures import corner_slab as slabs
from crackkit.structures import fields
from crackkit.units.bar_notes import BarCount
from tests.sandbox.mistakes import left_unsaid
from tests.sandbox.test_code_line import check
from tests.structures.corner_slabs import corner_slabs

METRIC = {
    "length": "7 m",
    "width": "6 m",
    "diagonals": "4 x 16 mm at 30 mm",
    "edges": "1 x 12 mm at 50 mm",
    "bars": "10 @ 150",
}
# the keyword, what else is typed, what is typed for it, and where it must arrive
ARRIVES = [
    ("shape", {}, "opening", "shape", "opening"),
    ("shape", {}, "a wall with a door", "shape", "door"),
    ("length", {}, "20 ft", "length", 6096.0),
    ("width", {}, "5 m", "width", 5000.0),
    ("thickness", {}, "6 in", "thickness", 152.4),
    ("cut", {}, "3 m x 2 m", "cut_length", 3000.0),
    ("cut", {}, "3 m x 2 m", "cut_width", 2000.0),
    ("cut", {}, "10 ft", "cut_width", 3048.0),
    ("hole", {}, "1.2 x 0.8 m", "cut_length", 1200.0),
    ("hole", {}, ["1.2 m", "0.8 m"], "cut_width", 800.0),
    ("hole", {}, "1.2 m by 0.8 m", "shape", "opening"),
    ("column", {}, "2 ft", "cut_length", 609.6),
    ("column", {}, "500 mm", "shape", "column"),
    ("door", {}, "1 m x 2.1 m", "cut_width", 2100.0),
    ("door", {}, "3'-6\" x 7'", "cut_length", 1066.8),
    ("door", {}, "3 ft x 7 ft", "shape", "door"),
    ("tee", {}, "1.5 m x 2 m", "cut_length", 1500.0),
    ("tee", {}, "1.5 m x 2 m", "cut_width", 2000.0),
    ("tee", {}, "1.5 m x 2 m", "shape", "depot"),
    ("box", {"tee": "1.5 m x 2 m"}, "400 mm", "box", 400.0),
    ("place", {"tee": "1.5 m x 2 m"}, "2 m, 1.5 m", "cut_y", 1500.0),
    ("look", {"hole": "1 m"}, 3, "look", 3),
    ("place", {"hole": "1 m"}, "2 m, 1.5 m", "cut_x", 2000.0),
    ("place", {"hole": "1 m"}, "2 m, 1.5 m", "cut_y", 1500.0),
    ("place", {"hole": "1 m"}, "middle", "cut_x", 3500.0),
    ("place", {"door": "1 m x 2 m"}, "2 m", "cut_x", 2000.0),
    ("rounding", {}, "4 in", "rounding", 101.6),
    ("turn", {"column": "600 mm"}, "turned", "turn", "turned"),
    ("held", {}, "ends", "held", "ends"),
    ("holds", {}, "80 %", "holds", 0.8),
    ("base", {}, "sand", "drag", "sand"),
    ("base", {}, "sand", "held", "base"),
    ("diagonals", {}, "2 #4 at 2 in", "diagonals", "#4"),
    ("diagonals", {}, "2 #4 at 2 in", "diagonal_count", 2),
    ("diagonals", {}, "2 #4 at 2 in", "diagonal_off", 50.8),
    ("diagonals", {}, "3 x 12 @ 75 mm", "diagonal_off", 75.0),
    ("diagonals", {}, "none", "diagonals", "none"),
    ("apart", {}, "80 mm", "diagonal_apart", 80.0),
    ("long", {}, "1.5 m", "diagonal_length", 1500.0),
    ("edges", {}, "2 x 10 mm at 60 mm", "edge_off", 60.0),
    ("edges", {}, "2 x 10 mm at 60 mm", "edge_count", 2),
    ("edges", {}, "2 x 10 mm at 60 mm", "edges", "10"),
    ("past", {}, "2 ft", "edge_past", 609.6),
    ("bars", {}, "#4 @ 12 in", "mat", "#4"),
    ("bars", {}, "#4 @ 12 in", "spacing", 304.8),
    ("bars", {}, "none", "mat", "none"),
    ("cover", {}, "1.5 in", "cover", 38.1),
    ("fibres", {}, "steel_30", "fibres", "steel_30"),
    ("f_R1", {}, "2 MPa", "residual_1", 2.0),
    ("f_R3", {}, "290.0755 psi", "residual_3", 2.0),
    ("f_R3", {}, "2 MPa", "fibres", "tested"),
    ("joint", {}, "joint", "joint", "joint"),
    ("saw_depth", {}, "30 %", "cut_depth", 0.3),
    ("saw_length", {}, "1.5 m", "saw_length", 1500.0),
    ("saw_length", {}, "1.5 m", "joint", "saw"),
    ("humidity", {}, "40 %", "humidity", 0.4),
    ("curing", {}, "2 weeks", "curing", 14.0),
    ("both_sides", {}, True, "both_sides", True),
    ("cooling", {}, "27 °F", "cooling", 15.0),
    ("age", {}, "18 months", "age", 547.5),
    ("model", {}, "MC2010", "model", "MC2010"),
    ("concrete", {}, "4000 psi", "strength", 27.57903),
    ("steel", {}, "60 ksi", "yield_strength", 413.6854),
    ("exposure", {}, "dry", "exposure", "dry"),
    ("code", {}, "ACI", "code", "ACI"),
]


@pytest.mark.parametrize(("name", "others", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(name, others, typed, path, expected):
    structure = CornerSlab(**(METRIC | others | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-6) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(CornerSlab).parameters if n != "unknown"]
    assert set(signature) == {*BY_NAME, "system"}
    assert {name for name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(CornerSlab)
    assert [name for name in signature if name not in words] == []
    for name in ("shape", "turn", "held", "base", "joint"):
        assert [key for key, _label in BY_NAME[name].choices if f'"{key}"' not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path for _name, _others, _typed, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(slabs.CornerSlab())} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("shape", PIECES.values())
def test_nothing_else_typed_gives_what_the_panel_starts_from(shape):
    """A wall stands on its foot and dries from both faces; a panel is told so by hand."""
    usual = slabs.CornerSlab(shape=shape)
    wall = {"held": "foot", "both_sides": True} if shape == "door" else {}
    assert CornerSlab(shape=shape, system="SI").structure == replace(usual, **wall)


@pytest.mark.parametrize("shape", PIECES.values())
def test_nothing_else_typed_makes_about_the_same_slab_in_feet(shape):
    us, si = (CornerSlab(shape=shape, system=system).structure for system in ("US", "SI"))
    assert us.code == "ACI" and si.code == "EN"
    for path in ("length", "width", "cut_length", "cut_width", "thickness"):
        assert getattr(us, path) == pytest.approx(getattr(si, path), rel=0.1)


def test_a_missing_piece_that_nobody_typed_fits_into_a_small_slab():
    for piece, shape in PIECES.items():
        small = CornerSlab(shape=shape, length="2 m", width="2 m").structure
        assert small.cut_length <= 1000.0
        assert CornerSlab(shape=shape, length="2 m", width="2 m").said(piece).endswith("m")


def test_units_of_what_was_typed_are_those_of_the_answers():
    assert CornerSlab(diagonals="2 #4 at 2 in").system == "US"
    assert CornerSlab(hole="1.2 m").system == "SI"
    assert CornerSlab(length="20 ft").structure.code == "ACI"


@pytest.mark.parametrize(
    ("typed", "parts"),
    [
        ({"length": "6"}, ["length='6'", "no unit"]),
        ({"length": "20 m"}, ["length='20 m'", "2.00 to 12.00 m"]),
        ({"cut": "6 m x 3 m"}, ["cut='6 m x 3 m'", "0.20 to 5.70 m"]),
        ({"cut": "3 m x 9 m"}, ["cut='3 m x 9 m'", "0.20 to 5.70 m"]),
        ({"cut": "1 m x 2 m x 3 m"}, ["one side of a square, or two"]),
        ({"cut": "1 m x"}, ["cut='1 m x'", "empty"]),
        ({"hole": "1.2 m x 0.1 m"}, ["hole='1.2 m x 0.1 m'", "0.20 to"]),
        ({"hole": "12 kN"}, ["hole='12 kN'", "does not measure"]),
        ({"column": "1 m x 2 m"}, ["column='1 m x 2 m'", "as long as it is wide"]),
        ({"column": "7 m"}, ["column='7 m'", "0.20 to 5.40 m"]),
        ({"tee": "3 m x 2 m"}, ["tee='3 m x 2 m'", "0.20 to 2.70 m"]),
        ({"hole": "1 m", "look": 5}, ["look=5", "0 to 4"]),
        ({"door": "1 m x 2.9 m"}, ["door='1 m x 2.9 m'", "0.20 to 2.70 m"]),
        ({"cut": "3 m", "hole": "1 m"}, ["cut='3 m' and hole='1 m'", "give one of cut, hole"]),
        ({"shape": "door", "hole": "1 m"}, ["hole='1 m'", "is typed as door"]),
        ({"hole": "1 m", "place": "9 m, 2 m"}, ["place='9 m, 2 m'", "0.80 to 5.20 m"]),
        ({"hole": "1 m", "place": "2 m, 9 m"}, ["place='2 m, 9 m'", "0.80 to 5.20 m"]),
        ({"hole": "1 m", "place": "2 m"}, ["place='2 m'", "two places, along and across"]),
        ({"door": "1 m x 2 m", "place": "2 m, 1 m"}, ["along the wall alone"]),
        ({"turn": "triangle"}, ["turn='triangle'", "square, turned, round"]),
        ({"rounding": "2 m"}, ["rounding='2 m'", "0 to 1500 mm"]),
        ({"held": "nails"}, ["held='nails'", "base, ends, edges, foot"]),
        ({"holds": 1.5}, ["holds=1.5", "0.00 to 1.00"]),
        ({"base": "moss"}, ["base='moss'", "two_sheets"]),
        ({"diagonals": "12 mm"}, ["diagonals='12 mm'", "2 x 12 mm at 50 mm"]),
        ({"diagonals": "12 @ 200"}, ["diagonals='12 @ 200'", "how far the first one lies off"]),
        ({"diagonals": "2 x 12 mm at 50"}, ["no unit"]),
        ({"diagonals": "6 x 12 mm at 50 mm"}, ["diagonals='6 x 12 mm at 50 mm'", "1 to 4"]),
        ({"diagonals": "2 x 12 mm at 2 m"}, ["25 to 1000 mm"]),
        ({"diagonals": "2 x 13 mm at 50 mm"}, ["diagonals='2 x 13 mm at 50 mm'", "not one of"]),
        ({"edges": "4 x 12 mm at 50 mm"}, ["edges='4 x 12 mm at 50 mm'", "1 to 3"]),
        ({"bars": "4 x 12"}, ["bars='4 x 12'", "at a spacing", "10 @ 200"]),
        ({"bars": "10 @ 200", "cover": "90 mm"}, ["cover='90 mm'", "20 to 75 mm"]),
        ({"fibres": "hair"}, ["fibres='hair'", "steel_20"]),
        ({"joint": "glue"}, ["joint='glue'", "none, saw, joint"]),
        ({"saw_depth": "80 %"}, ["saw_depth='80 %'", "0.10 to 0.50"]),
        ({"age": "11 years"}, ["age='11 years'", "1 to 3650 d"]),
        ({"depth": "150 mm"}, ["no input 'depth'", "Did you mean thickness?"]),
        ({"opening": "1 m"}, ["Did you mean hole?"]),
        ({"mat": "10 @ 200"}, ["Did you mean bars?"]),
        ({"duration": "short"}, ["no input 'duration'"]),
    ],
)
def test_each_mistake_names_the_input_what_was_typed_and_what_may_be(typed, parts):
    assert left_unsaid(CornerSlab, typed, parts) == []


def test_a_size_that_was_assumed_is_called_so():
    with pytest.raises(WrongInput, match=r"box='500 mm' \(assumed\)"):
        CornerSlab(tee="1 m x 2 m", width="3 m")


def test_what_is_typed_in_vain_is_said():
    note = "{}={!r} is not used: it means nothing with the other inputs."
    assert CornerSlab(cover="30 mm").notes == [note.format("cover", "30 mm")]
    assert CornerSlab(place="2 m, 2 m").notes == [note.format("place", "2 m, 2 m")]
    assert CornerSlab(apart="80 mm").notes == [note.format("apart", "80 mm")]
    assert CornerSlab(held="edges", base="sand").notes == [note.format("base", "sand")]
    shown_names = {name for name, *_rest in CornerSlab(hole="1 m").inputs}
    assert shown_names & {*PIECES, "cover", "place", "base"} == {"hole", "place"}


def test_a_distance_that_nobody_typed_is_told():
    case = CornerSlab(diagonals="2 x 12 mm")
    (note,) = (one.replace("\u202f", " ") for one in case.notes)
    assert note.startswith("diagonals='2 x 12 mm': 50 mm off is assumed")
    assert case.structure.diagonal_off == 50.0
    assert CornerSlab(diagonals="2 x 12 mm at 50 mm").structure == case.structure
    in_feet = CornerSlab(edges="1 #4")
    assert in_feet.structure.edge_off == 50.8 and "2.00 in off" in in_feet.notes[0].replace(
        "\u202f", " "
    )


def test_one_piece_takes_the_place_of_another():
    cut = CornerSlab(length="7 m", cut="3 m x 2 m")
    assert cut.but(hole="1 m").structure.shape == "opening"
    assert cut.but(door="1 m x 2 m", width="3 m").structure.held == "foot"


def test_a_note_of_bars_off_a_corner_is_read_and_written():
    argument = BY_NAME["diagonals"]
    assert argument.read("2 x 12 mm @ 50 mm") == PlacedBars(BarCount(2, "12"), 50.0)
    assert argument.written(argument.read("2 #4 at 2 in"), "US") == "2 x #4 at 2 in"
    assert argument.written(argument.read("none"), "SI") == "none"


@settings(max_examples=40, deadline=None)
@given(corner_slabs(), st.sampled_from(["SI", "US"]))
def test_the_line_makes_the_same_slab(slab, system):
    check(slab, system)


def test_arguments_stand_in_the_order_of_the_call():
    signature = list(inspect.signature(CornerSlab).parameters)
    assert [argument.name for argument in ARGUMENTS] == signature[: len(ARGUMENTS)]
