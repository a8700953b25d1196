"""A cantilever typed in one line becomes the structure it says, in either system of units."""

import inspect

import pytest

from crackkit.sandbox import Cantilever, WrongInput
from crackkit.sandbox.cantilever_inputs import ARGUMENTS, BY_NAME, MEANT
from crackkit.structures import fields

METRIC = {
    "overhang": "1.5 m",
    "depth": "200 mm",
    "tip_depth": "160 mm",
    "width": "1 m",
    "top": "12 @ 150",
    "bottom": "8 @ 200",
    "cover": "30 mm",
    "load": "4 kN/m",
    "point_load": "5 kN at 1.4 m",
    "wall": "300 mm",
    "behind": "260 mm",
    "trodden": "50 mm",
    "concrete": "30 MPa",
    "steel": "500 MPa",
    "exposure": "moist",
}
BEAM = {"overhang": "6 ft", "top": "3 #6", "bottom": "2 #4", "load": "0.5 kip/ft"}
FLOOR = {"overhang": "6 ft", "top": "#4 @ 6 in", "back_span": "13 ft"}

# a start, the keyword, what is typed, and where it must arrive in the structure
ARRIVES = [
    (METRIC, "overhang", "1.6 m", "overhang", 1600.0),
    (METRIC, "back", "floor", "back", "floor"),
    (METRIC, "back", "a wall", "back", "wall"),
    (METRIC, "wall", "12 in", "wall", 304.8),
    (FLOOR, "back_span", "12 ft", "back_span", 3657.6),
    (FLOOR, "back_span", "12 ft", "back", "floor"),
    (METRIC, "shape", "a strip of a slab", "shape", "slab"),
    ({}, "shape", "a strip of a slab", "width", 1000.0),
    ({}, "shape", "a beam", "width", 300.0),
    (METRIC, "width", "1 ft", "width", 304.8),
    (METRIC, "depth", "8 in", "depth", 203.2),
    (METRIC, "tip_depth", "6 in", "tip_depth", 152.4),
    (METRIC, "load", "3 kN/m", "uniform_load", 3.0),
    (FLOOR, "back_load", "0.2 kip/ft", "back_load", 2.918780),
    (METRIC, "point_load", "5 kN at 1 m", "loads.0.from_root", 1000.0),
    (METRIC, "point_load", "5 kN at 1 m, 2 kN at 0.5 m", "loads.1.force", 2000.0),
    (METRIC, "point_load", ["5 kN at 1 m", "2 kN at 0.5 m"], "loads.0.force", 5000.0),
    (METRIC, "point_load", ["5 kN at 1 m", "2 kN at 0.5 m"], "loads.1.from_root", 500.0),
    (METRIC, "point_load", "none", "loads.0.force", 0.0),
    (METRIC, "own_weight", False, "self_weight", False),
    (METRIC, "top", "#4 @ 6 in", "top.spacing", 152.4),
    (METRIC, "top", "#4 @ 6 in", "top.size", "#4"),
    (METRIC, "top", "none", "top.laid", False),
    (BEAM, "top", "4 #5", "top.number", 4),
    (BEAM, "top", "4 #5", "shape", "beam"),
    (METRIC, "bottom", "10 @ 250", "bottom.spacing", 250.0),
    (METRIC, "bottom", "10 @ 250", "bottom.size", "10"),
    (METRIC, "bottom", "none", "bottom.laid", False),
    (BEAM, "bottom", "3 #5", "bottom.number", 3),
    (METRIC, "cover", "35 mm", "top.cover", 35.0),
    (METRIC, "cover", "35 mm", "bottom.cover", 35.0),
    (METRIC, "bottom_cover", "25 mm", "bottom.cover", 25.0),
    (METRIC, "trodden", "3 in", "top.drop", 76.2),
    (METRIC, "bottom_drop", "5 mm", "bottom.drop", 5.0),
    (METRIC, "behind", "200 mm", "top.behind", 200.0),
    (METRIC, "behind", "200 mm", "bottom.behind", 200.0),
    (METRIC, "bottom_behind", "100 mm", "bottom.behind", 100.0),
    (METRIC, "hook", "no", "top.hooked", False),
    (METRIC, "bottom_hook", True, "bottom.hooked", True),
    (METRIC, "tip_gap", "100 mm", "top.tip_gap", 100.0),
    (METRIC, "tip_gap", "100 mm", "bottom.tip_gap", 100.0),
    (METRIC, "bottom_tip_gap", "1 ft", "bottom.tip_gap", 304.8),
    (BEAM, "stirrups", "none", "stirrup", "none"),
    (METRIC, "concrete", "4000 psi", "strength", 27.57903),
    (METRIC, "steel", "60 ksi", "yield_strength", 413.6854),
    (METRIC, "exposure", "sea", "exposure", "sea"),
    (METRIC, "duration", "lasting", "duration", "lasting"),
    (METRIC, "code", "ACI", "code", "ACI"),
]


@pytest.mark.parametrize(("start", "name", "typed", "path", "expected"), ARRIVES)
def test_every_keyword_arrives_in_the_structure(start, name, typed, path, expected):
    structure = Cantilever(**(start | {name: typed})).structure
    value = fields.input_at(structure, path).value
    assert value == (pytest.approx(expected, rel=1e-5) if isinstance(expected, float) else expected)


def test_every_keyword_is_tried_and_documented():
    signature = [n for n in inspect.signature(Cantilever).parameters if n != "unknown"]
    assert signature == [a.name for a in ARGUMENTS] + ["system"]
    assert {name for _start, name, *_rest in ARRIVES} == set(BY_NAME)
    words = inspect.getdoc(Cantilever)
    assert [name for name in signature if name not in words] == []


def test_every_input_of_the_structure_can_be_reached():
    reached = {path.replace("loads.1", "loads.0") for *_rest, path, _value in ARRIVES}
    assert {item.path for item in fields.inputs(Cantilever().structure)} == reached


def test_other_words_lead_to_names_that_exist():
    assert set(MEANT.values()) - set(BY_NAME) == {"system"}
    assert set(MEANT) & set(BY_NAME) == set()


@pytest.mark.parametrize("system", ["US", "SI"])
@pytest.mark.parametrize("shape", ["slab", "beam"])
@pytest.mark.parametrize("back", ["wall", "floor"])
def test_nothing_else_typed_still_gives_an_arm(system, shape, back):
    arm = Cantilever(system=system, shape=shape, back=back)
    assert (arm.structure.shape, arm.structure.back) == (shape, back)
    assert arm.outcome.verdict.key in ("uncracked", "tight")


def test_a_load_per_area_is_taken_for_the_width_of_the_strip_and_that_is_said():
    arm = Cantilever(overhang="5 ft", width="2 ft", load="100 psf")
    assert arm.structure.uniform_load == pytest.approx(200 * 4.4482216 / 304.8)
    assert [n.replace("\u202f", " ") for n in arm.notes] == [
        "load='100 psf': on a strip 24.00 in wide that makes 0.20 kip/ft."
    ]
    assert arm.notes[0] in repr(arm)
    assert Cantilever(overhang="1 m", load="4 kN/m").notes == []


def test_what_means_nothing_with_the_rest_is_said_and_not_listed():
    arm = Cantilever(overhang="1 m", wall="250 mm", back="floor")
    assert arm.notes == ["wall='250 mm' is not used: it means nothing with the other inputs."]
    assert "back_span" not in {name for name, *_rest in Cantilever(overhang="1 m").inputs}


def test_the_anchorage_at_the_root_is_told_and_is_that_of_the_mechanics():
    arm = Cantilever(**METRIC)
    bars = next(line for line in arm.outcome.steel if line.face == "top")
    at_root = bars.capacity[bars.x == arm.structure.root][0] / 500.0
    said = arm.told[0].sentences[0]
    assert "260" in said
    assert "hooked" in said
    assert f"{100 * at_root:.0f} %" in said
    through = Cantilever(overhang="1 m", back_span="4 m", behind="1.5 m")
    assert "all of their strength" in through.told[0].sentences[0]
    bare = Cantilever(overhang="1 m", top="none")
    assert bare.told[0].sentences == ("There are no top bars.",)


def test_places_are_told_from_the_root_and_movement_as_a_share_of_the_overhang():
    said = dict(Cantilever(**(METRIC | {"load": "20 kN/m"})).answers)
    assert "of the overhang" in said["How does it move?"]
    assert "from the root" in said["Where is it stretched?"]
    assert "in the top" in said["Where will it crack?"]


@pytest.mark.parametrize(
    ("typed", "part"),
    [
        ({"top": "3 #6", "shape": "slab"}, "12 @ 150"),
        ({"top": "12 @ 150", "shape": "beam"}, "3 #6"),
        ({"top": "12 @ 150", "bottom": "3 #6"}, "a number of bars"),
        ({"top": "three"}, "12 @ 150"),
        ({"top": "12 @ 20"}, "60 to 400 mm"),
        ({"load": "4"}, "kN/m2"),
        ({"load": "4 kip"}, "does not measure"),
        ({"load": "100 psf", "shape": "beam"}, "load per length"),
        ({"behind": "290 mm", "wall": "300 mm"}, "0.00 to 0.28 m"),
        ({"tip_depth": "250 mm", "depth": "200 mm"}, "80 to 200 mm"),
        ({"point_load": "5 kN at 2 m", "overhang": "1.5 m"}, "0.00 to 1.50 m"),
        ({"point_load": ["1 kN at 1 m"] * 3}, "1 to 2"),
        ({"back": "rock"}, "wall, floor"),
        ({"hook": "maybe"}, "yes or no"),
        ({"overhang": "six"}, "does not begin with a number"),
        ({"wall": "thick"}, "does not begin with a number"),
    ],
)
def test_each_mistake_names_the_input_and_a_way_out(typed, part):
    with pytest.raises(WrongInput) as caught:
        Cantilever(**typed)
    said = str(caught.value).replace("\u202f", " ")
    assert said.startswith(tuple(f"{name}=" for name in typed))
    assert part in said


@pytest.mark.parametrize(
    ("wrong", "meant"),
    [("span", "overhang"), ("top_drop", "trodden"), ("bars", "top"), ("tipdepth", "tip_depth")],
)
def test_a_misspelled_name_is_answered_with_the_near_ones(wrong, meant):
    with pytest.raises(WrongInput, match=f"Did you mean {meant}"):
        Cantilever(**{wrong: "3 m"})


def test_us_and_metric_texts_of_one_arm_give_one_answer():
    us = Cantilever(
        **{"overhang": "5 ft", "depth": "8 in", "top": "#4 @ 6 in", "load": "400 plf"},
        **{"wall": "12 in", "behind": "10 in", "width": "12 in", "cover": "1.5 in"},
        **{"tip_gap": "1.5 in", "concrete": "4000 psi", "steel": "60 ksi"},
    )
    si = Cantilever(
        **{"overhang": "1.524 m", "depth": "203.2 mm", "top": "#4 @ 152.4 mm"},
        **{"load": "5.837561 kN/m", "wall": "304.8 mm", "behind": "254 mm", "width": "304.8 mm"},
        **{"cover": "38.1 mm", "tip_gap": "38.1 mm", "concrete": "27.579029 MPa"},
        **{"steel": "413.68544 MPa", "code": "ACI"},
    )
    assert (us.system, si.system) == ("US", "SI")
    assert si.outcome.movement.largest == pytest.approx(us.outcome.movement.largest, rel=1e-6)
