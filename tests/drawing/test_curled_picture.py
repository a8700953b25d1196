"""The picture of a curled slab: readable whatever the inputs, true to what is worked out."""

import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.curled_frames import curled_layout
from crackkit.drawing.curled_grid import at_grid, at_points, zero_lines
from crackkit.drawing.curled_map import air_edge, strokes
from crackkit.drawing.curled_oblique import ROOM, enlarged, oblique_in, on_top
from crackkit.drawing.curled_picture import before, description, picture, sheet
from crackkit.drawing.curled_plan import plan_in
from crackkit.drawing.curled_risen import CORNER, MIDDLE, risen
from crackkit.drawing.curled_stretch import ASIDE
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Polygons, Raster, every_shape, handles
from crackkit.drawing.strip_map import FULL_SHADE
from crackkit.drawing.svg import svg
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.units import shown
from tests.drawing.curled_stand_in import Load, Slab, outcome
from tests.drawing.looked_at import (
    BLANKS,
    at_every_width,
    blemishes,
    left_out,
    roles,
    views,
    words,
)
from tests.structures.curled_slabs import curled_slabs
from tests.structures.drawn import anywhere

VIEWS = views(560.0, 640.0, 800.0, 919.0, 920.0, 1000.0, 1200.0)
WIDE = View(width=1200.0)
SLAB = Slab()
MAT = replace(SLAB, steel="12", transfer=0.8, loads=(Load(14e3, 4200.0, 4100.0),))
KNOWN = {
    "corner": SLAB,
    "corner breaks off": replace(SLAB, loads=(Load(14e3, 200.0, 200.0),)),
    "middle": replace(SLAB, loads=(Load(12e3, 2250.0, 2250.0),)),
    "mat": MAT,
    "two wheels": replace(MAT, loads=(*MAT.loads, Load(9e3, 4000.0, 4000.0)), under="open"),
    "flat": replace(SLAB, rise=0.0, age=3.0, loads=(Load(0.0),), under="damp"),
    "day": replace(SLAB, rise=-3.0, loads=(Load(0.0),)),
    "long": replace(SLAB, length=8000.0, width=2000.0, steel="#3", under="blotter"),
    "across": replace(SLAB, length=2000.0, width=8000.0, loads=(Load(20e3, 1800.0, 7800.0),)),
    "thick": replace(SLAB, thickness=300.0, steel="40", spacing=75.0, cover=20.0, age=1095.0),
    "moist": replace(SLAB, age=1.0, curing=28.0, rise=16.0, humidity=0.95),
}
OUTCOMES = {name: outcome(slab) for name, slab in KNOWN.items()}


@st.composite
def slabs(draw):
    start = replace(SLAB, loads=(Load(),) * draw(st.integers(1, 2)))
    return anywhere(draw, start, {})


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    assert at_every_width(picture, OUTCOMES[name], VIEWS) == {}


@settings(max_examples=30, deadline=None)
@given(slabs(), st.lists(st.sampled_from(VIEWS), min_size=3, max_size=3))
def test_words_keep_clear_and_shapes_on_the_paper_for_any_slab(slab, some):
    found = outcome(slab)
    for view in some:
        drawn = picture(found, view)
        assert blemishes(drawn) == []


@settings(max_examples=30, deadline=None)
@given(curled_slabs(), st.sampled_from(VIEWS))
def test_words_keep_clear_and_none_is_lost_for_any_slab_that_is_worked_out(slab, view):
    found = slab.solve()
    drawn = picture(found, view)
    assert blemishes(drawn) == []
    assert left_out(found.verdict.why, drawn) == []


def test_the_height_of_the_corner_in_words_is_the_one_that_is_worked_out():
    found = CurledSlab().solve()
    rise = shown(found.curled.corner_rise, "movement", "SI")
    drawn = " ".join(words(picture(found, WIDE)))
    assert drawn.count(f"stands up {rise}") == 3  # over the slab, beside the plan, on a tile


@pytest.mark.parametrize(("x", "y", "face"), [(2250.0, 2250.0, "BOTTOM"), (100.0, 100.0, "TOP")])
def test_walked_to_the_corner_the_wheel_pulls_the_other_face(x, y, face):
    flat = CurledSlab(age=8.0, loads=(WheelLoad(40e3, x, y, 200.0),))
    assert face in " ".join(words(picture(flat.solve(), WIDE)))


@settings(max_examples=40, deadline=None)
@given(slabs(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(slab, view):
    for drawn in (before(slab, view), sheet(slab, view)):
        assert blemishes(drawn) == []


@pytest.mark.parametrize("name", KNOWN)
def test_what_is_said_for_those_who_cannot_see_stands_in_the_picture_too(name):
    found = OUTCOMES[name]
    said, written = description(found, WIDE), " ".join(words(picture(found, WIDE)))
    mark = found.verdict.why
    assert mark in said
    for number in re.findall(r"stands up ([0-9.]+\u202fmm)|: ([0-9.]+)\u00a0×", said):
        assert [text for text in number if text and text not in written] == []


def test_a_wheel_is_dragged_all_over_the_plan_and_the_age_along_its_axis():
    drawn = picture(OUTCOMES["two wheels"], WIDE)
    paths = [handle.path for handle in handles(drawn.shapes)]
    assert paths == ["loads.0.x", "loads.0.y", "loads.1.x", "loads.1.y", "decades"]
    still = picture(OUTCOMES["two wheels"], replace(WIDE, live=False))
    assert not list(handles(still.shapes))


def test_a_grip_follows_the_finger():
    view = View(width=1000.0)
    plan = plan_in(SLAB, curled_layout(view).plan, ASIDE)
    along, across = list(handles(picture(OUTCOMES["corner"], view).shapes))[:2]
    here = plan((along.value, across.value))
    there = here + (30.0, -20.0)
    moved = along.value + 30.0 * along.per_unit, across.value - 20.0 * across.per_unit
    assert plan(moved) == pytest.approx(there)
    # the key that goes up moves it up the paper
    assert plan((along.value, across.value - across.step))[1] < here[1]


def test_the_plan_is_to_scale_with_the_near_side_below():
    plan = plan_in(KNOWN["long"], Frame(100.0, 50.0, 400.0, 300.0))
    assert plan.right - plan.left == pytest.approx(4 * (plan.bottom - plan.top))
    assert plan((0.0, 0.0)) == pytest.approx((plan.left, plan.bottom))
    assert plan((8000.0, 2000.0)) == pytest.approx((plan.right, plan.top))


def test_values_are_read_straight_between_the_lines_of_an_uneven_grid():
    x, y = np.array([0.0, 1.0, 4.0, 9.0]), np.array([0.0, 2.0, 3.0])
    values = 2.0 * x[None] - 3.0 * y[:, None] + 1.0
    columns, rows = np.array([0.0, 0.3, 5.5, 9.0]), np.array([0.1, 2.2, 3.0])
    expected = 2.0 * columns[None] - 3.0 * rows[:, None] + 1.0
    assert at_grid(values, x, y, columns, rows) == pytest.approx(expected)
    points = np.array([(0.3, 2.2), (5.5, 0.1), (9.0, 3.0)])
    assert at_points(values, x, y, points) == pytest.approx(
        2.0 * points[:, 0] - 3.0 * points[:, 1] + 1.0
    )


@settings(max_examples=60, deadline=None)
@given(st.floats(0.6, 3.6), st.floats(-1.0, 1.0), st.floats(-1.0, 1.0), st.booleans())
def test_the_edge_of_a_round_hollow_is_a_circle_with_teeth_outward(radius, a, b, inside):
    x, y = np.linspace(-5.0, 5.0, 81), np.linspace(-5.0, 5.0, 67)
    X, Y = np.meshgrid(x, y)
    turn = -1.0 if inside else 1.0
    segments, uphill = zero_lines(turn * ((X - a) ** 2 + (Y - b) ** 2 - radius**2), x, y)
    away = segments - (a, b)
    assert np.hypot(away[..., 0], away[..., 1]) == pytest.approx(radius, abs=0.03)
    length = np.hypot(*(segments[:, 1] - segments[:, 0]).T)
    assert length.sum() == pytest.approx(2 * np.pi * radius, rel=0.01)
    some = length > 1e-3
    outward = (away.mean(axis=1) * uphill).sum(axis=1)[some] * turn
    assert (outward > 0.9 * radius).all()


def test_strokes_lie_along_the_pull_and_are_longest_where_it_tears():
    found = OUTCOMES["corner breaks off"]
    state, plan = found.curled, plan_in(found.structure, Frame(0.0, 0.0, 400.0, 400.0))
    lines = np.concatenate([shape.segments for shape in strokes(state, state.top, plan)])
    along = (lines[:, 1] - lines[:, 0]) * (1.0, -1.0)
    middle = (lines.mean(axis=1) - (plan.left, plan.bottom)) / (plan.scale, -plan.scale)
    k = np.abs(state.y - middle[:, 1, None]).argmin(axis=1)
    j = np.abs(state.x - middle[:, 0, None]).argmin(axis=1)
    turn = np.arctan2(along[:, 1], along[:, 0]) - state.top.direction[k, j]
    assert np.abs(np.sin(turn)).max() < 1e-6
    length, pull = np.hypot(*along.T), state.top.stress[k, j]
    order = np.argsort(pull)
    assert (np.diff(length[order]) > -1e-9).all()
    assert length.max() > 3.0 * length.min()


@pytest.mark.parametrize("name", ["corner", "mat", "middle"])
def test_the_edge_of_the_air_parts_lifted_ground_from_the_rest(name):
    state, plan = OUTCOMES[name].curled, plan_in(KNOWN[name], Frame(0.0, 0.0, 400.0, 400.0))
    _lines, teeth = air_edge(state, plan)
    back = (teeth - (plan.left, plan.bottom)) / (plan.scale, -plan.scale)
    tips, feet = (at_points(state.lift, state.x, state.y, back[:, k]) for k in (1, 0))
    assert len(teeth) > 20
    assert (tips > 0).all()
    assert np.abs(feet).max() < 0.05 * state.lift.max()


@settings(max_examples=40, deadline=None)
@given(slabs())
def test_the_movement_is_drawn_as_large_as_there_is_room_and_no_larger(slab):
    found = outcome(slab)
    sight = oblique_in(found, Frame(0.0, 0.0, 800.0, 140.0))
    drawn = float(np.abs(found.curled.lift).max()) * sight.scale * sight.factor
    assert drawn <= ROOM * 1.000001
    assert sight.factor == enlarged(found.curled, sight.scale)


def test_a_lifted_corner_is_drawn_higher_than_a_flat_one():
    room = Frame(0.0, 0.0, 800.0, 140.0)
    sight = oblique_in(OUTCOMES["corner"], room)
    corner = (SLAB.length, 0.0)
    raised = on_top(OUTCOMES["corner"], sight, corner)[0]
    flat = sight.top(*corner, 0.0)
    rise = OUTCOMES["corner"].curled.lift[0, -1]
    assert flat - raised == pytest.approx((0.0, rise * sight.scale * sight.factor))


def test_the_highest_place_is_a_corner_as_it_dries_and_the_middle_in_the_sun():
    assert risen(OUTCOMES["corner"].curled).kind == CORNER
    humped = risen(OUTCOMES["day"].curled)
    assert humped.kind == MIDDLE
    assert (humped.x, humped.y) == pytest.approx((2250.0, 2250.0))
    assert not risen(OUTCOMES["flat"].curled).seen


def test_the_words_name_the_face_that_is_pulled_more():
    corner, middle = (" ".join(words(picture(OUTCOMES[k], WIDE))) for k in ("corner", "middle"))
    assert "the wheel pulls the TOP most here" in corner and "BOTTOM" not in corner
    assert "under the wheel the BOTTOM is pulled most" in middle and "TOP" not in middle
    assert "its bottom face" in middle


def test_the_map_has_its_full_shade_where_the_face_is_pulled_most():
    found = OUTCOMES["corner breaks off"]
    plan = plan_in(found.structure, curled_layout(WIDE).plan, ASIDE)
    drawn = every_shape(picture(found, WIDE).shapes)
    chart = max((s for s in drawn if isinstance(s, Raster)), key=lambda one: one.height)
    rows, columns = chart.values.shape
    x, y = plan(found.curled.top.at)
    here = chart.values[
        int((y - chart.y) / chart.height * rows), int((x - chart.x) / chart.width * columns)
    ]
    full = found.curled.top.peak / (FULL_SHADE * found.curled.strength)
    assert here == pytest.approx(full, rel=0.02)
    assert chart.values.max() == pytest.approx(full, rel=0.02)


def test_a_crack_is_drawn_and_told_only_where_it_comes():
    broken, whole = (picture(OUTCOMES[name], WIDE) for name in ("corner breaks off", "corner"))
    assert "it breaks along this line:" in " ".join(words(broken))
    assert "along this line" not in " ".join(words(whole))
    assert "crack_gap" in roles(broken) and "crack_gap" not in roles(whole)


def test_a_mat_tells_the_width_of_the_crack():
    drawn = " ".join(words(picture(OUTCOMES["mat"], WIDE)))
    assert "it cracks along this line: 0.31\u202fmm" in drawn
    assert "12\u202fmm every" in drawn or "12 mm every" in drawn


def test_crazing_is_said_where_the_stress_was_cut_off():
    drawn = OUTCOMES["corner"]
    calm = replace(drawn.curled.dryness, capped=False)
    without = replace(drawn, curled=replace(drawn.curled, dryness=calm))
    assert "crazes" not in words(picture(without, WIDE))
    hard = replace(drawn.curled.dryness, capped=True)
    with_it = replace(drawn, curled=replace(drawn.curled, dryness=hard))
    assert "crazes" in words(picture(with_it, WIDE))


def test_dowels_are_drawn_where_joints_pass_something_on():
    def ticks(slab) -> int:
        shapes = every_shape(before(slab, View(width=840.0)).shapes)
        return sum(len(s.segments) for s in shapes if getattr(s, "role", "") == "bears")

    assert ticks(SLAB) == 0
    assert ticks(MAT) > 20


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_shown_of_what_is_worked_out(view):
    drawn = before(KNOWN["mat"], view)
    assert not any(isinstance(shape, Raster | Polygons) for shape in _beyond_joints(drawn))
    assert not {"crack_gap", "air", "hatch", "stretched_line"} & set(roles(drawn))
    assert words(before(replace(KNOWN["mat"], rise=16.0), view)) == words(drawn)


def _beyond_joints(drawn) -> list:
    return [s for s in every_shape(drawn.shapes) if getattr(s, "role", "") != "wall"]


@pytest.mark.parametrize("at", [(150.0, 150.0), (2250.0, 2250.0), (4350.0, 4350.0)])
def test_on_a_blank_drawing_the_load_stands_beside_its_wheel(at):
    load = WheelLoad(9000.0, *at)
    drawn = before(CurledSlab(length=4500.0, width=4500.0, loads=(load,)))
    said = shown(load.force, "force", "SI")
    told = next(one for one in every_shape(drawn.shapes) if getattr(one, "text", "") == said)
    wheel = next(one for one in every_shape(drawn.shapes) if isinstance(one, Circle))
    assert np.hypot(told.x - wheel.x, told.y - wheel.y) < 60.0


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(MAT, View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))


def test_a_heavier_wheel_keeps_the_size_of_its_foot():
    def discs(force: float) -> list[float]:
        found = outcome(replace(SLAB, loads=(Load(force),)))
        shapes = every_shape(picture(found, WIDE).shapes)
        return [s.radius for s in shapes if isinstance(s, Circle) and s.role == "grip"]

    assert discs(5e3) == discs(30e3)


@pytest.mark.parametrize("theme", ["light", "dark", "projector", "print"])
def test_every_role_has_a_look_in_every_theme(theme):
    assert svg(picture(OUTCOMES["two wheels"], WIDE), theme).endswith("</svg>")
