"""The slab on the ground seen from above: true to what is worked out, and to its scale."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.age_words import day_words
from crackkit.drawing.frames import Along, Frame, View
from crackkit.drawing.ground_cracks import (
    WIDE,
    birth_order,
    by_birth,
    dated_in_row,
    drawn_widths,
    undated,
)
from crackkit.drawing.ground_picture import before, description, picture
from crackkit.drawing.ground_plan import NARROW, laid, plan_shapes
from crackkit.drawing.ground_plan_words import (
    LINE,
    cracks_along,
    dated_beside,
    days_along,
    scale_words,
)
from crackkit.drawing.shapes import Lines, Polygons, Text
from crackkit.structures.ground_slab import GroundSlab
from tests.drawing.looked_at import words
from tests.structures.ground_slabs import ground_slabs

FRAME, ALONG = Frame(0.0, 100.0, 700.0, 150.0), (50.0, 650.0)
HELD = GroundSlab(left=1.0, right=1.0, sides=1.0, width=18000.0)
SLABS = {
    "wide, bare": HELD,
    "barred both ways": replace(HELD, steel="12", spacing=100.0, both_ways=True),
    "jointed": replace(HELD, jointed=True),
    "panels": replace(HELD, jointed=True, steel="10", both_ways=True, middle=0.5),
}
OUTCOMES = {name: slab.solve() for name, slab in SLABS.items()}


def plan_of(slab, frame: Frame = FRAME):
    return laid(slab, frame, Along(*ALONG, slab.length))


def gaps(plan, outcome) -> tuple[list, list]:
    """Outlines of all that is open: from side to side, and from end to end."""
    shapes = plan.opened(outcome.ground, outcome.across)
    outlines = [one for shape in shapes if isinstance(shape, Polygons) for one in shape.outlines]
    tall = [one for one in outlines if np.ptp(one[:, 1]) > np.ptp(one[:, 0])]
    return tall, [one for one in outlines if np.ptp(one[:, 1]) <= np.ptp(one[:, 0])]


@settings(max_examples=60, deadline=None)
@given(st.floats(3000.0, 60000.0), st.floats(2000.0, 60000.0))
def test_the_width_has_the_scale_of_the_length_wherever_there_is_room(length, width):
    plan = plan_of(GroundSlab(length=length, width=width, joint_every=2000.0))
    true = 600.0 * width / length
    if NARROW * FRAME.height <= true <= FRAME.height:
        assert plan.larger == pytest.approx(1.0)
        assert plan.bottom - plan.top == pytest.approx(true)
    assert FRAME.top <= plan.top < plan.bottom <= FRAME.bottom + 1e-9


def test_a_width_that_is_not_to_scale_is_said_to_be():
    told = {
        width: scale_words(plan_of(GroundSlab(width=width))) for width in (6000.0, 12000.0, 2000.0)
    }
    assert told == {
        6000.0: "to scale",
        12000.0: "width drawn 2 times smaller",
        2000.0: "width drawn 1.5 times larger",
    }


@pytest.mark.parametrize("name", SLABS)
def test_each_crack_and_open_joint_lies_at_its_place_and_reaches_both_sides(name):
    slab, outcome = SLABS[name], OUTCOMES[name]
    plan = plan_of(slab)
    across, along = gaps(plan, outcome)
    for found, state, way, other, axis in (
        (across, outcome.ground, plan.along, plan.across, 0),
        (along, outcome.across, plan.across, plan.along, 1),
    ):
        places = [crack.at for crack in state.wild]
        places += [joint.at for joint in state.joints if joint.opening > 1e-3]
        middles = sorted(float(one[:, axis].mean()) for one in found)
        assert middles == pytest.approx(sorted(way(np.array(places))), abs=2.5)
        for one in found:
            ends = one[:, 1 - axis].min(), one[:, 1 - axis].max()
            assert ends == pytest.approx((other.left, other.right))
    assert across or along


def test_wider_cracks_are_drawn_wider_and_the_widest_alike():
    drawn = drawn_widths([0.1, 0.4, 2.0, WIDE, 2 * WIDE])
    assert (np.diff(drawn)[:3] > 0).all() and drawn[3] == drawn[4]


def test_a_crack_keeps_its_number_when_later_ones_come():
    early = birth_order([30.0, 10.0, 20.0]).tolist()
    later = birth_order([30.0, 10.0, 20.0, 40.0]).tolist()
    assert early == [3, 1, 2] and later[:3] == early


@pytest.mark.parametrize("room", [60.0, 200.0, 5000.0])
def test_the_first_cracks_are_dated_and_the_others_counted(room):
    state = OUTCOMES["barred both ways"].ground
    dated = dated_in_row(state, room)
    first = {crack.at for crack in by_birth(state)[: len(dated)]}
    assert {crack.at for crack in dated} == first
    assert undated(state, dated) == len(state.wild) - len(dated)


def test_days_beside_the_plan_stand_apart():
    outcome = OUTCOMES["barred both ways"]
    plan = plan_of(outcome.structure, Frame(0.0, 100.0, 700.0, 60.0))
    texts = [one for one in days_along(plan, outcome.across) if isinstance(one, Text)]
    assert len(outcome.across.wild) > len(texts) == len(dated_beside(plan, outcome.across)) > 2
    assert (np.diff([one.y for one in texts]) >= LINE - 1e-6).all()


def test_a_crack_along_carries_its_day_and_its_width_is_told():
    outcome = OUTCOMES["wide, bare"]
    written = words(picture(outcome, View(width=1000.0)))
    crack = outcome.across.wild[0]
    assert day_words(crack.birth) in written
    told = cracks_along(outcome.across, View())
    assert told.startswith("1 crack runs along it") and told in description(outcome, View())
    assert f"{crack.width:.2f}\u202fmm" in " ".join(written)


def bar_lines(slab) -> np.ndarray:
    """Segments of the bars of a slab without joints."""
    (lines,) = (s for s in plan_shapes(plan_of(slab)) if isinstance(s, Lines) and s.role == "grid")
    return lines.segments


def test_bars_lie_in_the_ways_they_were_laid():
    one_way = bar_lines(replace(HELD, steel="12"))
    assert (one_way[:, 0, 1] == one_way[:, 1, 1]).all()
    both = bar_lines(replace(HELD, steel="12", both_ways=True))
    upright = both[:, 0, 0] == both[:, 1, 0]
    assert upright.any() and (~upright).sum() == len(one_way)


def test_a_line_stands_for_as_many_bars_as_is_said():
    slab = replace(HELD, steel="12", spacing=100.0)
    plan = plan_of(slab)
    apart = np.diff(bar_lines(slab)[:, 0, 1])
    assert apart == pytest.approx(plan.every * 100.0 * plan.across.scale)
    assert plan.every > 1


def test_bars_that_are_cut_end_at_the_joints_and_others_run_through():
    slab = replace(SLABS["panels"], both_ways=False)
    cut, through = (len(bar_lines(replace(slab, through=way))) for way in ("cut", "through"))
    assert cut == slab.panels * through


def test_what_holds_the_slab_is_drawn_where_it_holds():
    bare = plan_of(GroundSlab())
    assert bare.holds() == []
    for field in ("left", "right", "sides", "middle"):
        plan = plan_of(replace(GroundSlab(), **{field: 0.5}))
        blocks = [one for one in plan.holds() if getattr(one, "role", "") == "wall"]
        assert len(blocks) == (2 if field == "sides" else 1)


@settings(max_examples=25, deadline=None)
@given(ground_slabs())
def test_before_the_call_the_plan_shows_no_crack(slab):
    shapes = before(slab, View()).shapes
    assert not [one for one in shapes if getattr(one, "role", "") == "crack_gap"]
