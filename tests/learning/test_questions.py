"""Every question, whatever its numbers, has one right answer and names each mistake."""

import re
from functools import cache
from random import Random

import pytest

from crackkit.learning.choices import drawn
from crackkit.learning.questions import GENERATORS, OF_LESSON, question
from crackkit.units import number

SEEDS = 100
# Each of their questions solves several slabs on grids or triangles.
DEAR = ("06_ground_slab", "07_curling", "08_reentrant_corner")
SEEDS_OF = {key: 40 for lesson in DEAR for key in OF_LESSON[lesson]}


@cache
def asked_of(key: str, seed: int, system: str = "SI"):
    """Give a question; several tests look at the same one."""
    return question(key, Random(seed), system)


def in_si(count: int) -> range:
    """Give seeds whose questions are asked in SI units in the test of them all."""
    return range(0, 2 * count, 2)


def faults(asked) -> list[str]:
    """List what is wrong with a question."""
    texts = [choice.text for choice in asked.choices]
    every = [asked.text, *texts, *(c.why for c in asked.choices)]
    named = [c.misconception for c in asked.choices if not c.right]
    return [
        *(["not one right"] if sum(c.right for c in asked.choices) != 1 else []),
        *(["same texts"] if len(set(texts)) < len(texts) or len(texts) < 3 else []),
        *(["a mistake without a name"] if not all(named) or len(set(named)) < len(named) else []),
        *(["the right one names a mistake"] if asked.right.misconception else []),
        *(f"bad words: {t}" for t in every if re.search(r"nan|inf\b|∞|—|None|[{}]", t) or not t),
        *(["nothing to draw"] if not hasattr(asked.structure, "solve") else []),
    ]


@pytest.mark.parametrize("key", GENERATORS)
def test_each_question_is_sound_whatever_its_numbers(key):
    found = {}
    for seed in range(SEEDS_OF.get(key, SEEDS)):
        asked = asked_of(key, seed, ("SI", "US")[seed % 2])
        assert asked.key == key
        if wrong := faults(asked):
            found[seed] = wrong
    assert not found


@pytest.mark.parametrize("key", GENERATORS)
def test_numbers_and_order_are_fresh_each_time_and_the_same_for_the_same_seed(key):
    asked = [asked_of(key, seed) for seed in range(12)]
    assert len({q.text for q in asked}) >= 6
    assert len({[c.right for c in q.choices].index(True) for q in asked}) >= 2
    assert question(key, Random(5)) == asked[5]


@pytest.mark.parametrize("key", GENERATORS)
@pytest.mark.parametrize(
    ("system", "foreign"),
    [("SI", r"#\d|\d\W?(ft|kip|in|ksi|psi)\b"), ("US", r"\d\W?(mm|m|kN|MPa|kN·m)\b")],
)
def test_a_question_speaks_the_readers_units_only(key, system, foreign):
    asked = asked_of(key, 2 if system == "SI" else 1, system)
    words = " ".join([asked.text, *(c.text + c.why for c in asked.choices)])
    assert not re.search(foreign, words)


def _numbers(text: str) -> list[float]:
    return [float(n.replace("\u202f", "")) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def test_twice_the_depth_moves_an_eighth():
    for seed in in_si(40):
        asked = asked_of("twice_as_deep", seed)
        moved = float(re.search(r"moves ([\d.]+)", asked.text)[1])
        assert _numbers(asked.right.text)[0] == pytest.approx(moved / 8, abs=0.06)


def test_the_moment_of_a_spread_load_grows_with_the_square_of_the_span():
    for seed in in_si(40):
        text = asked_of("longer_span", seed).text
        load, span, _moment, longer = _numbers(text)
        asked = asked_of("longer_span", seed)
        assert _numbers(asked.right.text)[0] == pytest.approx(load * longer**2 / 8, rel=0.005)
        assert span < longer


def test_a_load_off_the_middle_bends_by_load_times_both_arms_over_the_span():
    for seed in in_si(40):
        asked = asked_of("load_moved", seed)
        load, span, _moment, at = _numbers(asked.text)
        expected = load * at * (span - at) / span
        assert _numbers(asked.right.text)[0] == pytest.approx(expected, rel=0.005, abs=0.06)


def test_more_cover_is_never_asked_with_a_finer_crack_as_the_right_answer():
    for seed in in_si(40):
        asked = asked_of("more_cover", seed)
        before = float(re.search(r"cracks of ([\d.]+)", asked.text)[1])
        assert _numbers(asked.right.text)[0] > before and asked.right.text.startswith(
            "They are wider"
        )


def test_twice_the_strength_delays_the_first_crack_by_less_than_two():
    for system in ("SI", "US"):
        asked = question("stronger_concrete", Random(2), system)
        before = float(re.search(r"cracks under ([\d.]+)", asked.text)[1])
        assert 1.3 < _numbers(asked.right.text)[0] / before < 1.7


def test_the_moment_of_a_spread_load_on_an_arm_is_load_times_reach_squared_over_two():
    for seed in in_si(40):
        asked = asked_of("moment_of_an_arm", seed)
        load, reach = _numbers(asked.text)
        assert _numbers(asked.right.text)[0] == pytest.approx(
            load * reach**2 / 2, rel=0.005, abs=0.051
        )


def test_a_load_on_an_arm_bends_it_by_load_times_distance():
    for seed in in_si(40):
        asked = asked_of("load_moved_in", seed)
        load, _reach, _moment, near = _numbers(asked.text)
        assert _numbers(asked.right.text)[0] == pytest.approx(load * near, rel=0.006, abs=0.06)


def test_bars_that_reach_a_part_of_the_way_build_up_that_part():
    for seed in in_si(40):
        asked = asked_of("grip_in_the_wall", seed)
        short, yields, needed = _numbers(asked.text)[-3:]
        assert _numbers(asked.right.text)[0] == pytest.approx(yields * short / needed, rel=0.01)


def test_the_moment_over_the_support_vanishes_where_the_top_stops_to_be_stretched():
    for seed in in_si(20):
        slab = asked_of("floor_behind", seed).structure
        told = _numbers(asked_of("floor_behind", seed).right.text)[0]
        own = sum(slab.own_weight) / 2
        over = (slab.uniform_load + own) * slab.overhang**2 / 2
        back, load = slab.back_span, own  # nobody stands on the floor any more
        first = load * back / 2 - over / back  # what the far support bears
        turn = 2 * first / load if first > 0 else 0.0
        assert told == pytest.approx((back - turn) / 1000, abs=0.01)


def test_trodden_bars_never_make_the_right_answer_a_finer_crack():
    for seed in in_si(40):
        asked = asked_of("trodden_down", seed)
        before = float(re.search(r"is ([\d.]+)\W?mm wide", asked.text)[1])
        assert _numbers(asked.right.text)[0] > before


def _named(text: str) -> set[int]:
    return {int(n) for n in re.findall(r"\d+", text)}


def test_the_worst_spans_are_those_of_every_arrangement_tried_out():
    """The span itself and every second one; both beside a support and every second from there."""
    for seed in in_si(40):
        asked = asked_of("worst_for_span", seed)
        count = len(asked.structure.spans)
        span = int(re.search(r"of span (\d)\?", asked.text)[1])
        wanted = {k for k in range(1, count + 1) if (k - span) % 2 == 0}
        assert _named(asked.right.text) == wanted
        asked = asked_of("worst_over_support", seed)
        count, left = len(asked.structure.spans), int(re.search(r"spans (\d) and", asked.text)[1])
        before = set(range(left, 0, -2))
        assert _named(asked.right.text) == before | set(range(left + 1, count + 1, 2))


def test_the_top_of_an_end_span_is_stretched_as_far_as_the_table_of_equal_spans_says():
    """HICKS2010 Table 2.1, three spans: w L^2/10 over B under load on all, /20 on span 2."""
    for seed in in_si(40):
        asked = asked_of("reach_of_top_bars", seed)
        floor, told = asked.structure, float(re.search(r"0\.\d+", asked.right.text)[0])
        dead, live = floor.dead_load, floor.live_load
        over = dead / 10 + live / 20  # live on span 2 only; span and load one
        assert told == pytest.approx(min(2 * over / dead, 1.0), abs=0.011)


def test_a_support_that_sinks_takes_moment_off_itself():
    for seed in in_si(40):
        asked = asked_of("sunk_support", seed)
        before = float(re.search(r"bent by ([\d.]+)", asked.text)[1])
        assert _numbers(asked.right.text)[0] < before


def test_without_its_own_load_more_of_the_top_is_stretched():
    for seed in in_si(40):
        asked = asked_of("one_span_loaded", seed)
        before = float(re.search(r"stretched to ([\d.]+)", asked.text)[1])
        assert _numbers(asked.right.text)[0] > 1.1 * before


def test_each_lesson_asks_its_own_questions():
    assert set(OF_LESSON["02_simple_beam"]) & set(OF_LESSON["03_cantilever"]) == set()
    assert all(len(asked) >= 5 for asked in OF_LESSON.values())
    assert len(GENERATORS) == sum(len(asked) for asked in OF_LESSON.values())


def test_drawn_values_are_round_in_the_readers_units():
    for seed in range(50):
        value = drawn(Random(seed), "length", "US", 4000, 8000)
        assert 4000 <= value <= 8000
        halves = 2 * number(value, "length", "US")
        assert halves == pytest.approx(round(halves))


def test_an_unknown_question_is_named():
    with pytest.raises(ValueError, match="tea"):
        question("tea", Random(0))
