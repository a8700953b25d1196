"""The picture of a fresh slab: readable whatever the weather, true to what is worked out."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.fresh_air import drops, vapour, wind_arrows
from crackkit.drawing.fresh_chart import FASTEST
from crackkit.drawing.fresh_picture import before, description, picture, sheet
from crackkit.drawing.labels import covered_grips, faults, text_boxes
from crackkit.drawing.shapes import Circle, Polyline, every_shape, handles
from crackkit.drawing.svg import svg
from crackkit.drawing.verdict_card import verdict_word
from crackkit.structures.fresh_slab import FreshSlab
from crackkit.units import shown
from tests.drawing.test_no_label_overlaps import leaving_cards
from tests.structures.fresh_slabs import fresh_slabs

WIDTHS = (560.0, 640.0, 779.0, 780.0, 800.0, 989.0, 990.0, 1200.0)
VIEWS = [View(system, width=width) for system in ("SI", "US") for width in WIDTHS]
BLANKS = [View(system, width=width) for system in ("SI", "US") for width in (460.0, 840.0, 1200.0)]
KNOWN = {
    "dries out": FreshSlab(),
    "be ready": FreshSlab(wind=12.0, concrete=27.0, air=25.0, humidity=0.45),
    "stays wet": FreshSlab(wind=4.0, concrete=20.0, air=20.0, humidity=0.6),
    "dew": FreshSlab(wind=10.0, concrete=15.0, air=30.0, humidity=1.0),
    "worst": FreshSlab(wind=60.0, concrete=40.0, air=-5.0, humidity=0.1),
    "too much in still air": FreshSlab(wind=0.0, concrete=40.0, air=-5.0, humidity=0.1),
    "at the limit": FreshSlab(wind=16.882),
}
OUTCOMES = {name: slab.solve() for name, slab in KNOWN.items()}


def complaints(drawn) -> list[str]:
    return faults(drawn) + covered_grips(drawn) + leaving_cards(drawn)


def words(drawn) -> list[str]:
    return [box.text for box in text_boxes(drawn)]


def of_role(drawn, role: str) -> list:
    return [s for s in every_shape(drawn.shapes) if getattr(s, "role", "") == role]


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    found = {(v.system, v.width): complaints(picture(OUTCOMES[name], v)) for v in VIEWS}
    assert {key: faulty for key, faulty in found.items() if faulty} == {}


@settings(max_examples=150, deadline=None)
@given(fresh_slabs(), st.lists(st.sampled_from(VIEWS), min_size=3, max_size=3))
def test_words_keep_clear_in_any_weather(slab, views):
    outcome = slab.solve()
    for view in views:
        assert complaints(picture(outcome, view)) == []


@settings(max_examples=30, deadline=None)
@given(fresh_slabs(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(slab, view):
    assert complaints(before(slab, view)) == []
    assert complaints(sheet(slab, view)) == []


def points_of(shape) -> np.ndarray:
    found = [
        np.asarray(getattr(shape, name)).reshape(-1, 2)
        for name in ("points", "outlines", "segments")
        if hasattr(shape, name)
    ]
    return np.concatenate(found) if found else np.zeros((0, 2))


@settings(max_examples=60, deadline=None)
@given(fresh_slabs(), st.sampled_from(VIEWS))
def test_nothing_that_is_drawn_leaves_the_paper(slab, view):
    drawn = picture(slab.solve(), view)
    for shape in every_shape(drawn.shapes):
        points = points_of(shape)
        assert np.isfinite(points).all()
        assert (points >= 0.0).all()
        assert (points <= (drawn.width, drawn.height)).all()


@settings(max_examples=60, deadline=None)
@given(fresh_slabs(), st.sampled_from(VIEWS))
def test_no_line_of_the_chart_runs_through_its_words(slab, view):
    drawn = picture(slab.solve(), view)
    along = max(of_role(drawn, "squeezed_line"), key=_reach)
    (x1, y1), (x2, y2) = along.points
    chart = [box for box in text_boxes(drawn) if "from" in box.text and box.left > x1 - 1]
    for box in chart:
        for x in np.linspace(max(box.left, x1), min(box.right, x2), 9):
            if x1 <= x <= x2:
                y = y1 + (y2 - y1) * (x - x1) / max(x2 - x1, 1e-9)
                assert not box.top < y < box.bottom, box.text


def _reach(shape) -> float:
    """How far the ends of a line of two points are apart; the waves have more points."""
    if not isinstance(shape, Polyline) or len(shape.points) != 2:
        return -1.0
    return float(np.hypot(*(shape.points[1] - shape.points[0])))


@settings(max_examples=30, deadline=None)
@given(fresh_slabs(), st.sampled_from(VIEWS))
def test_no_word_of_the_verdict_is_lost(slab, view):
    outcome = slab.solve()
    written = " ".join(words(picture(outcome, view)))
    assert verdict_word(outcome) in written
    assert [word for word in outcome.verdict.why.split() if word not in written.split()] == []


@pytest.mark.parametrize("name", KNOWN)
@pytest.mark.parametrize("system", ["SI", "US"])
def test_what_is_said_for_those_who_cannot_see_stands_in_the_picture_too(name, system):
    outcome, view = OUTCOMES[name], View(system, width=1000.0)
    said, written = description(outcome, view), " ".join(words(picture(outcome, view)))
    told = shown(outcome.fresh.rate, "mass_rate", system)
    weather = [
        shown(outcome.structure.wind, "wind", system),
        shown(outcome.structure.air, "warmth", system),
        shown(outcome.structure.concrete, "warmth", system),
    ]
    for number in (told, *weather):
        assert number in said and number in written


def test_cracks_are_drawn_only_where_it_dries_out_and_water_stands_only_where_it_does_not():
    cracked = {name: bool(of_role(picture(o), "crack_gap")) for name, o in OUTCOMES.items()}
    assert {name for name, found in cracked.items() if found} == {
        name for name, outcome in OUTCOMES.items() if outcome.fresh.times >= 1.0
    }
    thick = [_film(OUTCOMES[name]) for name in ("dew", "stays wet", "be ready", "dries out")]
    assert thick == sorted(thick, reverse=True)
    assert thick[0] > thick[2] > thick[3] == 0.0


def _film(outcome) -> float:
    """Drawn thickness of the water on the face: the only area of its role with four corners."""
    areas = [s for s in of_role(picture(outcome), "squeezed_area") if hasattr(s, "points")]
    return max((float(np.ptp(area.points[:, 1])) for area in areas), default=0.0)


def test_more_wind_longer_arrows_moister_air_more_drops_faster_drying_taller_waves():
    arrows = [wind_arrows(0.0, 400.0, 0.0, wind)[0] for wind in (5.0, 20.0, 60.0)]
    long = [arrow.x2 - arrow.x1 for arrow in arrows]
    assert long == sorted(set(long)) and wind_arrows(0.0, 400.0, 0.0, 0.0) == []
    many = [len(drops(0.0, 400.0, 0.0, share)[0].outlines) for share in (0.1, 0.5, 1.0)]
    assert many == sorted(set(many))
    tall = [np.ptp(vapour(0.0, 400.0, 100.0, n, 10.0)[0].points[:, 1]) for n in (0.1, 1.0, 2.0)]
    assert tall == sorted(set(tall)) and vapour(0.0, 400.0, 100.0, 0.0, 10.0) == []


@settings(max_examples=40, deadline=None)
@given(fresh_slabs())
def test_the_ring_lies_on_the_line_and_the_line_crosses_the_limit_where_it_is_told(slab):
    outcome = slab.solve()
    drawn = picture(outcome, View(width=1000.0))
    (ring,) = of_role(drawn, "grip")
    (x1, y1), (x2, y2) = max(of_role(drawn, "squeezed_line"), key=_reach).points
    assert y1 + (y2 - y1) * (ring.x - x1) / (x2 - x1) == pytest.approx(ring.y, abs=0.1)
    dots = [s for s in of_role(drawn, "rule_dot") if isinstance(s, Circle)]
    (level,) = of_role(drawn, "limit")
    assert bool(dots) == (0 <= outcome.fresh.wind <= FASTEST)
    for dot in dots:
        assert dot.y == pytest.approx(level.points[0, 1])
        assert y1 + (y2 - y1) * (dot.x - x1) / (x2 - x1) == pytest.approx(dot.y, abs=0.1)


@pytest.mark.parametrize("system", ["SI", "US"])
def test_dragging_the_ring_along_the_chart_blows_as_its_axis_says(system):
    slab = KNOWN["stays wet"]
    drawn = picture(slab.solve(), View(system, width=1000.0))
    (handle,) = handles(drawn.shapes)
    assert slab.handle_changes(handle.path, 30.0) == {"wind": 30.0}
    (ring,) = of_role(drawn, "grip")
    moved = replace(slab, wind=slab.wind + 50.0 * handle.per_unit)
    (there,) = of_role(picture(moved.solve(), View(system, width=1000.0)), "grip")
    assert there.x - ring.x == pytest.approx(50.0)
    assert not list(handles(picture(slab.solve(), View(system, live=False)).shapes))


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_shown_of_what_is_worked_out(view):
    drawn = before(KNOWN["worst"], view)
    for role in ("crack_gap", "squeezed_line", "squeezed_word", "spread_load", "limit"):
        assert of_role(drawn, role) == []
    assert not any("leaves" in text for text in words(drawn))


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(KNOWN["dries out"], View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))


@pytest.mark.parametrize("theme", ["light", "dark", "projector", "print"])
def test_it_is_found_by_its_structure_and_painted_in_every_theme(theme):
    outcome = OUTCOMES["dries out"]
    assert "<svg" in svg(picture_of.picture(outcome, View()), theme)
    assert picture_of.description(outcome, View()) == description(outcome, View())
