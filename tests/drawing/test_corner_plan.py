"""What is drawn of a slab with inside corners lies where it belongs, and is as large as is said."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.corner_break import HAIR, MOST, times_wider
from crackkit.drawing.corner_close import INTO, OUT, close_up, crossing
from crackkit.drawing.corner_map import full_shade, past_the_edge, strokes
from crackkit.drawing.corner_movement import ROOM, enlarged, largest
from crackkit.drawing.corner_picture import before, picture
from crackkit.drawing.corner_plan import plan_in
from crackkit.drawing.corner_sides import BLOCK, outward, tied_sides, within
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import (
    Polygon,
    Polygons,
    Polyline,
    Raster,
    every_shape,
)
from crackkit.structures.corner_shapes import form, polygons
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.cornered import LaidBar
from tests.drawing.corner_known import (
    KNOWN,
    OPENING,
    OUTCOMES,
    PULLS,
    WIDE,
    layout_of,
    plan_of,
    slabs,
)
from tests.drawing.corner_outcomes import outcome
from tests.drawing.looked_at import (
    roles,
    words,
)


def test_the_plan_is_to_scale_with_the_near_side_below():
    plan = plan_in(KNOWN["strip"][0], Frame(100.0, 50.0, 400.0, 300.0))
    assert plan.right - plan.left == pytest.approx(6 * (plan.bottom - plan.top))
    assert plan((0.0, 0.0)) == pytest.approx((plan.left, plan.bottom))


def winding(point, outline: np.ndarray) -> int:
    """How often an outline goes round a point."""
    off = np.asarray(outline) - point
    turn = np.arctan2(off[:, 1], off[:, 0])
    steps = np.diff(np.append(turn, turn[0]))
    return round(float(((steps + np.pi) % (2 * np.pi) - np.pi).sum()) / (2 * np.pi))


@settings(max_examples=60, deadline=None)
@given(slabs(), st.floats(0.01, 0.99), st.floats(0.01, 0.99))
def test_paper_covers_the_map_wherever_there_is_no_concrete_and_nowhere_else(slab, a, b):
    plan, loops = plan_in(slab, Frame(100.0, 50.0, 400.0, 300.0)), polygons(form(slab))
    point = np.array([a * slab.length, b * slab.width])
    covers = [winding(plan(point), cover.points) for cover in plan.beside(loops)]
    assert any(covers) == (not within(point, loops))


@settings(max_examples=60, deadline=None)
@given(slabs())
def test_what_holds_a_side_is_drawn_outside_of_the_concrete(slab):
    loops = polygons(form(slab))
    plan = plan_in(slab, Frame(100.0, 50.0, 400.0, 300.0))
    for side in outcome(slab).cornered.tied:
        on, out = outward(side, loops)
        assert on == pytest.approx(side.mean(axis=0))
        assert not within(out, loops) and within(2 * on - out, loops)
        block = tied_sides(slab, [side], loops, plan)[0].points
        far = (block - plan(on)) @ (plan(out) - plan(on)) / np.hypot(*(plan(out) - plan(on)))
        assert far.min() > -1e-6 and far.max() >= BLOCK - 1e-6


@settings(max_examples=60, deadline=None)
@given(slabs(), PULLS)
def test_the_movement_is_drawn_as_large_as_there_is_room_and_no_larger(slab, pull):
    state = outcome(slab, pull).cornered
    drawn = largest(state)[0] * 0.05
    factor = enlarged(state, 0.05)
    assert drawn * factor <= ROOM * 1.000001
    assert drawn * factor * 3.0 >= ROOM or factor == 2500.0


def test_values_are_carried_past_the_edge_and_none_of_the_known_is_changed():
    values = np.full((9, 11), np.nan)
    values[2:6, 3:8] = np.arange(20.0).reshape(4, 5)
    filled = past_the_edge(values)
    known = ~np.isnan(values)
    assert (filled[known] == values[known]).all()
    assert not np.isnan(filled[1:7, 2:9]).any()
    assert np.isnan(filled[8, 10])


@pytest.mark.parametrize("name", ["corner", "opening", "turned", "door"])
def test_the_map_is_darkest_at_a_corner_and_says_what_its_full_colour_means(name):
    found = OUTCOMES[name]
    state, plan = found.cornered, plan_of(found)
    drawn = picture(found, WIDE)
    maps = [s for s in every_shape(drawn.shapes) if isinstance(s, Raster)]
    chart = max(maps, key=lambda one: one.height)
    rows, columns = chart.values.shape
    grid = np.stack(
        np.meshgrid(
            chart.x + (np.arange(columns) + 0.5) * chart.width / columns,
            chart.y + (np.arange(rows) + 0.5) * chart.height / rows,
        ),
        axis=-1,
    )
    darkest = grid.reshape(-1, 2)[np.nanargmax(chart.values)]
    corners = plan([corner.at for corner in state.corners])
    assert np.hypot(*(corners - darkest).T).min() < 12.0
    peak = np.nanmax(state.field.share) / full_shade(state.field)
    assert np.nanmax(chart.values) == pytest.approx(peak, rel=0.08)
    full = full_shade(state.field)
    written = " ".join(words(drawn))
    assert ("up to strength" if full < 2 else f"up to {full:g}\u00a0×") in written


def test_strokes_lie_along_the_pull_and_only_on_concrete():
    found = OUTCOMES["opening"]
    state, plan = found.cornered, plan_of(found)
    lines = np.concatenate([shape.segments for shape in strokes(state, plan)])
    along = (lines[:, 1] - lines[:, 0]) * (1.0, -1.0)
    middle = (lines.mean(axis=1) - (plan.left, plan.bottom)) / (plan.scale, -plan.scale)
    k = np.abs(state.field.y - middle[:, 1, None]).argmin(axis=1)
    j = np.abs(state.field.x - middle[:, 0, None]).argmin(axis=1)
    assert not np.isnan(state.field.share[k, j]).any()
    turn = np.arctan2(along[:, 1], along[:, 0]) - state.field.direction[k, j]
    assert np.abs(np.sin(turn)).max() < 1e-6


def gaps(found) -> list[np.ndarray]:
    """Outlines of the drawn crack, on the plan and in the close-up."""
    shapes = every_shape(picture(found, WIDE).shapes)
    return [s.outlines[0] for s in shapes if isinstance(s, Polygons) and s.role == "crack_gap"]


@pytest.mark.parametrize("name", ["corner", "diagonals", "opening"])
def test_the_crack_is_as_wide_as_it_is_times_what_is_stated(name):
    found = OUTCOMES[name]
    crack, plan = found.cornered.crack, plan_of(found)
    outline = gaps(found)[0]
    side = len(outline) // 2
    wide = np.hypot(*(outline[:side] - outline[side:][::-1]).T)
    times = times_wider(crack, plan.scale)
    end = float(crack.along[crack.opening > HAIR].max())
    opening = np.interp(np.linspace(0.0, end, side), crack.along, crack.opening)
    assert wide.mean() == pytest.approx((opening * plan.scale * times).mean(), rel=0.12)
    assert f"crack drawn {times:.0f} times wider" in " ".join(words(picture(found, WIDE)))


@settings(max_examples=60, deadline=None)
@given(slabs(), PULLS, st.floats(0.02, 0.3))
def test_a_crack_is_drawn_no_wider_than_there_is_room_and_alike_with_and_without_bars(
    slab, pull, scale
):
    crack = outcome(slab, pull).cornered.crack
    times = times_wider(crack, scale)
    assert crack.bare.max() * scale * times <= MOST * 1.000001
    assert times_wider(replace(crack, opening=0.3 * crack.bare), scale) == times


def test_other_corners_are_ringed_from_their_strength_on():
    def rings(pull: float) -> int:
        shapes = every_shape(picture(outcome(OPENING, pull), WIDE).shapes)
        return sum(isinstance(s, Polyline) and len(s.points) == 21 for s in shapes)

    # shares fall by 8 % from corner to corner; each ring is drawn light below dark
    assert [rings(pull) for pull in (0.9, 1.05, 1.1, 1.3, 2.0)] == [0, 0, 2, 4, 6]


@pytest.mark.parametrize("name", KNOWN)
def test_the_close_up_shows_the_corner_and_mostly_the_concrete_behind_it(name):
    state = OUTCOMES[name].cornered
    near = close_up(state, Frame(0.0, 0.0, 320.0, 240.0))
    assert near.scale == pytest.approx(240.0 / (INTO + OUT))
    x, y = near(state.corner.at).tolist()
    assert 0.0 < x < 320.0 and 0.0 < y < 240.0
    ahead = near(np.array(state.corner.at) + 300.0 * (state.crack.points[3] - state.corner.at)
                 / np.hypot(*(state.crack.points[3] - state.corner.at)))  # fmt: skip
    assert 0.0 < ahead[0] < 320.0 and 0.0 < ahead[1] < 240.0


def test_a_bar_meets_a_crack_where_both_lie():
    line = np.array([(0.0, 0.0), (100.0, 10.0), (200.0, 0.0)])
    upright = LaidBar((150.0, -50.0), (150.0, 50.0), 12.0, "diagonal", True, 0.0, "")
    assert crossing(upright, line) == pytest.approx((150.0, 5.0))
    short = replace(upright, start=(150.0, 20.0))
    assert crossing(short, line) is None
    aside = replace(upright, start=(250.0, -50.0), end=(250.0, 50.0))
    assert crossing(aside, line) is None


@pytest.mark.parametrize("width", [560.0, 1200.0])
def test_both_charts_end_at_the_opening_that_is_told(width):
    found = OUTCOMES["diagonals"]
    crack, layout = found.cornered.crack, layout_of(found, View(width=width))
    lines = [
        s.points
        for s in every_shape(picture(found, View(width=width)).shapes)
        if isinstance(s, Polyline) and s.role in ("now_line", "second_line", "capacity")
    ]
    for frame in (layout.along, layout.days):
        inside = [
            p for p in lines
            if frame.left < p[0, 0] < frame.right and frame.top + 44 < p[0, 1] < frame.bottom
        ]  # fmt: skip
        flat = [p for p in inside if len(p) == 2]
        bare, now = (p for p in inside if len(p) > 2)
        foot = max(float(p[:, 1].max()) for p in (bare, now))
        (limit,) = flat
        per = (foot - limit[0, 1]) / found.verdict.limit.width
        if frame is layout.along:
            assert foot - now[:, 1].min() == pytest.approx(per * crack.widest, rel=1e-3)
            assert foot - bare[:, 1].min() == pytest.approx(per * crack.bare.max(), rel=1e-3)
        else:
            days, openings, _bare = found.cornered.told_openings()
            assert foot - now[:, 1].min() == pytest.approx(per * openings.max(), rel=1e-3)


def test_rollers_are_drawn_where_sides_slide_and_no_hatch_where_nothing_is_tied():
    def found(held: str) -> list[str]:
        return roles(before(CornerSlab(held=held), View(width=840.0)))

    assert "support" in found("edges") and "support" not in found("ends")
    assert "wall" in found("ends") and "wall" not in found("base")


def test_a_column_stands_in_its_box_out():
    shapes = list(every_shape(before(CornerSlab(shape="column"), View(width=840.0)).shapes))
    (hole,) = (s for s in shapes if isinstance(s, Polygon) and s.role == "paper")
    blocks = [s.points for s in shapes if isinstance(s, Polygon) and s.role == "wall"]
    inside = [p for p in blocks if all(winding(point, hole.points) for point in p)]
    assert len(inside) == 1
