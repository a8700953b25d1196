"""The picture of a choice of bars: readable whatever the inputs, and true to what is worked out."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.choice_cut import Cut
from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_kinds import CLOSE, FAR, GAPING, TIGHT, WIDE, YIELDS, ChoiceKinds
from crackkit.drawing.choice_lines import crossings, main_mass, steel_places
from crackkit.drawing.choice_picture import before, description, picture, sheet
from crackkit.drawing.choice_piece import layers
from crackkit.drawing.choice_section_words import main_told
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.shapes import Circle, Polygons, every_shape, handles
from crackkit.structures import outcome as verdicts
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import fitted
from tests.drawing.looked_at import (
    BLANKS,
    at_every_width,
    complaints,
    off_the_paper,
    roles,
    views,
    words,
)
from tests.structures.controls import crack_controls

WIDTHS = (560.0, 640.0, 779.0, 780.0, 840.0, 1000.0, 1200.0)
VIEWS = views(*WIDTHS)
SLAB = CrackControl()
KNOWN = {
    "slab": SLAB,
    "pulled": CrackControl(action="pulled"),
    "one layer": CrackControl(action="pulled", rows="middle"),
    "fibres": CrackControl(fibres="steel_30", size="10", spacing=200.0),
    "beam": CrackControl(shape="beam", width=300.0, depth=500.0, size="20"),
    "one bar": CrackControl(shape="beam", number=1, width=200.0),
    "no room": CrackControl(shape="beam", number=12, size="32", width=150.0),
    "yields": CrackControl(given="load", moment=60e6, size="10", spacing=200.0),
    "too close": CrackControl(size="25", spacing=60.0, stones=40.0),
    "too far": CrackControl(spacing=350.0, depth=80.0, cover=10.0),
    "uncracked": CrackControl(given="load", moment=5e6),
    "no load": CrackControl(given="load", moment=0.0),
    "both ways": CrackControl(both_ways=True, spacing=180.0, stress=280.0),
    "thick": CrackControl(size="32", spacing=300.0, depth=600.0, cover=60.0, outer="across"),
    "thick in the middle": CrackControl(
        action="pulled", rows="middle", size="#14", cross_size="#10", depth=200.0, cover=10.0
    ),
    "little cover": CrackControl(cover=10.0, slack=5.0, air="inside", strength=20.0),
    "no bars across": CrackControl(cross_size="none"),
}


def choices(**fixed):
    return crack_controls(**fixed)


@pytest.mark.parametrize("name", KNOWN)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    outcome = KNOWN[name].solve()
    assert at_every_width(picture, outcome, VIEWS) == {}


@settings(max_examples=120, deadline=None)
@given(choices(), st.lists(st.sampled_from(VIEWS), min_size=2, max_size=2))
def test_words_keep_clear_for_any_choice(choice, some):
    outcome = choice.solve()
    for view in some:
        assert complaints(picture(outcome, view)) == []


@settings(max_examples=60, deadline=None)
@given(choices(), st.sampled_from(BLANKS))
def test_blank_drawings_keep_their_words_clear(choice, view):
    assert complaints(before(choice, view)) == []
    assert complaints(sheet(choice, view)) == []


@settings(max_examples=80, deadline=None)
@given(choices(), st.sampled_from([560.0, 780.0]))
def test_nothing_that_is_drawn_leaves_the_paper(choice, width):
    assert off_the_paper(picture(choice.solve(), View(width=width))) == []


def field_of(choice) -> ChoiceField:
    return ChoiceField(ChoiceKinds(choice.solve()), Frame(0.0, 0.0, 420.0, 200.0))


def kind_of_chosen(field) -> int:
    at = np.abs(field.kinds.spacings - field.spacing).argmin()
    return int(field.kinds.said[field.chosen, at])


SIZES = st.sampled_from(["6", "8", "10", "12", "14", "16", "20", "25"])
ON_GRID = st.integers(11, 69).map(lambda n: 5.0 * n)  # spacings of which the chart knows the width


@settings(max_examples=80, deadline=None)
@given(choices(shape="slab", both_ways=False), SIZES, ON_GRID)
def test_the_chart_says_of_the_chosen_bars_what_the_verdict_says(choice, size, spacing):
    wanted = {"size": size, "spacing": spacing, "given": "load", "slack": 0.0}
    choice, _moved = fitted(choice, wanted)
    outcome = choice.solve()
    kind = kind_of_chosen(ChoiceField(ChoiceKinds(outcome), Frame(0.0, 0.0, 420.0, 200.0)))
    close = outcome.control.main.bars.gap < outcome.control.least_gap
    assert (kind == CLOSE) == close
    if kind in (CLOSE, FAR) or outcome.verdict.key == verdicts.UNCRACKED:
        return
    said = {TIGHT: verdicts.TIGHT, WIDE: verdicts.TOO_WIDE, GAPING: verdicts.TOO_WIDE}
    assert (said | {YIELDS: verdicts.YIELDS})[kind] == outcome.verdict.key


def test_where_fibres_carry_it_alone_chart_and_verdict_call_no_bars_good():
    choice = CrackControl(size="6", spacing=55.0, fibres="steel_40", action="pulled", given="load")
    choice = replace(choice, depth=241.0, width=150.0, pull=51.6e3, strength=15.0, cover=10.0)
    choice = replace(choice, code="ACI", curing=1.0, stones=8.0, yield_strength=250.0)
    outcome = choice.solve()
    assert outcome.verdict.key == verdicts.TOO_WIDE and "alone" in outcome.verdict.why
    assert kind_of_chosen(field_of(choice)) == WIDE


@settings(max_examples=80, deadline=None)
@given(choices(shape="slab"))
def test_along_a_dashed_line_thin_bars_close_together_are_finer(choice):
    """What the words over the chart promise, wherever bars can be laid and do not yield."""
    field = field_of(choice)
    widths, last = field.kinds.widths, 0.0
    for k, x in sorted(steel_places(field, 1.0).items()):
        at = int(np.abs(field.x(field.kinds.spacings) - x).argmin())
        alone = widths[k, at] < 0.01  # so many fibres that bars have next to nothing to hold
        if alone or field.kinds.said[k, at] in (YIELDS, CLOSE, FAR):
            last = 0.0
            continue
        # places are a millimetre apart
        assert widths[k, min(at + 1, widths.shape[1] - 1)] >= last
        last = widths[k, max(at - 1, 0)]


def test_bars_that_no_rule_gives_a_width_are_not_called_tight():
    kinds = ChoiceKinds(SLAB.solve())
    kinds.widths[3, 10:20] = np.nan
    assert (kinds.said[3, 10:20] == YIELDS).all() and (kinds.said[2, 10:20] != YIELDS).all()


def test_bars_on_a_dashed_line_weigh_as_much_as_the_chosen_ones():
    field = field_of(SLAB)
    first, last = field.chart.spacings[[0, -1]]
    for k, x in steel_places(field, 2.0).items():
        across = (x - field.left) / (field.right - field.left)
        other = replace(SLAB, size=field.chart.sizes[k], spacing=first + across * (last - first))
        assert main_mass(other.solve()) == pytest.approx(2.0 * main_mass(SLAB.solve()))


def test_a_line_of_equal_width_has_that_width():
    field = field_of(SLAB)
    places = crossings(field, 0.2)
    assert len(places) >= 3
    for k, x in places.items():
        across = (x - field.left) / (field.right - field.left)
        found = np.interp(50.0 + 300.0 * across, field.chart.spacings, field.chart.widths[k])
        assert found == pytest.approx(0.2, rel=0.02)


@pytest.mark.parametrize("action", ["bent", "pulled"])
@pytest.mark.parametrize("outer", ["main", "across"])
def test_bars_are_drawn_where_their_cover_puts_them(action, outer):
    choice = replace(SLAB, action=action, outer=outer, cross_size="16")
    nearest = choice.main_bars() if outer == "main" else choice.cross_bars()
    cut = Cut(choice, Frame(0.0, 0.0, 500.0, 320.0))
    edge = max(cut.heights(nearest)) + nearest.diameter / 2 * cut.scale
    assert cut.face - edge == pytest.approx(choice.cover * cut.scale)
    assert len(cut.heights(nearest)) == len(layers(choice, nearest)) == (1 + (action == "pulled"))
    a, b = cut.bay
    assert b - a == pytest.approx(choice.spacing * cut.scale)


def test_of_one_layer_at_mid_depth_both_directions_lie_one_on_the_other():
    choice = replace(SLAB, action="pulled", rows="middle", cross_size="10")
    (main,), (across,) = layers(choice, choice.main_bars()), layers(choice, choice.cross_bars())
    assert main - across == pytest.approx((12.0 + 10.0) / 2)
    assert (main + across) / 2 == pytest.approx(choice.depth / 2)


def test_cover_and_spacing_can_be_dragged_and_a_beam_counts_its_bars():
    slab = [h.path for h in handles(picture(SLAB.solve(), View(width=1000.0)).shapes)]
    assert sorted(slab) == ["cover", "spacing", "spacing"]
    beam = [h.path for h in handles(picture(KNOWN["beam"].solve(), View(width=1000.0)).shapes)]
    assert beam == ["cover"]
    assert not list(handles(picture(SLAB.solve(), View(live=False)).shapes))


@pytest.mark.parametrize("view", [View(width=560.0), View("US", width=1000.0)])
def test_what_is_dragged_follows_the_pointer(view):
    """Grips move as far as they are dragged, where the drawing keeps its scale."""
    deep = replace(SLAB, depth=400.0, cover=30.0)
    for path, axis in (("cover", 1), ("spacing", 0)):
        start = grips(deep, view)[path]
        dragged = deep
        for handle in handles(picture(deep.solve(), view).shapes):
            if handle.path == path:
                way = 4.0 if path == "spacing" else -4.0
                dragged = replace(deep, **{path: handle.value + way * handle.per_unit})
        moved = grips(dragged, view)[path]
        assert moved[-1][axis] - start[-1][axis] == pytest.approx(way, abs=0.15)


def grips(choice, view) -> dict:
    """Places of the grips, by path; those of the chart last."""
    found = {}
    for shape in picture(choice.solve(), view).shapes:
        if getattr(shape, "handle", None):
            grip = next(s for s in shape.shapes if isinstance(s, Circle) and s.role == "grip")
            found.setdefault(shape.handle.path, []).append((grip.x, grip.y))
    return found


def test_as_many_cracks_are_drawn_as_there_are():
    for name in ("slab", "pulled"):
        outcome = KNOWN[name].solve()
        drawn = picture(outcome, View(width=1000.0))
        gaps = [s for s in every_shape(drawn.shapes) if getattr(s, "role", "") == "crack_gap"]
        assert [len(shape.outlines) for shape in gaps] == [len(outcome.cracks)]


def test_an_uncracked_strip_shows_no_crack():
    drawn = picture(KNOWN["uncracked"].solve(), View())
    assert not {"crack_gap", "band"} & set(roles(drawn))
    assert "This load does not crack it." in words(drawn)
    assert "stretched_area" not in roles(picture(KNOWN["no load"].solve(), View()))


def test_fibres_are_sprinkled_over_the_section():
    with_fibres, without = KNOWN["fibres"], replace(KNOWN["fibres"], fibres="none")
    told = "Strokes: fibres."
    assert told in " ".join(words(picture(with_fibres.solve(), View())))
    assert told not in " ".join(words(picture(without.solve(), View())))


@pytest.mark.parametrize("view", BLANKS)
def test_before_the_call_nothing_is_shown_of_what_is_worked_out(view):
    drawn = before(SLAB, view)
    assert not any(isinstance(shape, Polygons) for shape in every_shape(drawn.shapes))
    assert not {"uncovered", "threshold", "stretched_area", "bad_word"} & set(roles(drawn))
    other = replace(SLAB, stress=400.0, strength=20.0, exposure="dry", air="inside", curing=1.0)
    assert words(before(other, view)) == words(drawn)


def test_the_sheet_has_four_questions_and_fits_its_page():
    drawn = sheet(SLAB, View())
    assert (drawn.width, drawn.height) == (1000.0, 652.0)
    assert {"1", "2", "3", "4"} <= set(words(drawn))
    assert not any(isinstance(shape, Polygons) for shape in every_shape(drawn.shapes))


@pytest.mark.parametrize("name", KNOWN)
def test_the_same_in_words_says_bars_cracks_and_verdict(name):
    outcome = KNOWN[name].solve()
    said = description(outcome, View())
    assert outcome.verdict.why in said
    assert ("This load does not crack it." in said) == (not outcome.cracks)
    assert main_told(outcome.structure, View()) in said


GOLDEN = {
    "slab": ["217\u202fmm"],
    "both ways": ["main bars 0.27\u202fmm", "across 0.25\u202fmm"],
    "thick": ["32 mm: thicker than these"],
    "too close": ["stones do not pass", "clear between them 35\u202fmm"],
    "no room": ["no room side by side"],
    "yields": ["bars give way"],
}


@pytest.mark.parametrize("name", GOLDEN)
def test_a_few_pictures_say_what_they_always_said(name):
    texts = " | ".join(words(picture(KNOWN[name].solve(), View(width=1000.0))))
    assert [told for told in GOLDEN[name] if told not in texts] == []
