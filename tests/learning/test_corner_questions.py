"""What questions about inside corners call right, found by hand or in the panel itself."""

import re
from dataclasses import replace
from functools import cache
from math import cos, pi, sin
from random import Random

import numpy as np
import pytest

from crackkit.learning.corner_asked import corner_pull
from crackkit.learning.questions import question
from crackkit.mechanics.hole_stress import round_hole_stress
from crackkit.structures.corner_slab import CornerSlab
from crackkit.units import inner

SEEDS = range(3)
BOTH = ("SI", "US")


def _numbers(text: str) -> list[float]:
    return [float(n.replace("\u202f", "")) for n in re.findall(r"\d+(?:\.\d+)?", text)]


def _right(asked) -> float:
    return _numbers(asked.right.text)[0]


def _told(pattern: str, text: str) -> float:
    return float(re.search(pattern, text)[1])


@cache
def _asked(key: str):
    """The same question with several numbers, in both systems of units."""
    return [(question(key, Random(seed), system), system) for seed in SEEDS for system in BOTH]


def test_half_as_far_from_a_corner_the_pull_is_that_of_williams():
    """WILLIAMS1952: sin(3 pi/2 lambda) = lambda, solved here by halving."""
    low, high = 0.5, 0.6
    for _again in range(50):
        middle = (low + high) / 2
        low, high = (middle, high) if sin(1.5 * pi * middle) > middle else (low, middle)
    for seed in range(40):
        asked = question("nearer_the_corner", Random(seed), "US")
        _far, pull, near, times = _numbers(asked.text)
        assert _right(asked) == pytest.approx(pull * times ** (1 - low), abs=0.51)
        assert near * times == pytest.approx(_far)


def test_the_rim_of_a_round_hole_is_pulled_as_kirsch_found():
    """The greatest of the stresses all round the rim, not the factor that the question uses."""
    turns = np.linspace(0.0, 2 * pi, 721)
    for seed in range(40):
        asked = question("rim_of_a_round_hole", Random(seed), "US")
        _wide, pull = _numbers(asked.text)[:2]
        across = pull if "all directions" in asked.text else 0.0
        rim = round_hole_stress(1.0, turns, 1.0, pull, across)[:, 1]
        assert _right(asked) == pytest.approx(rim.max(), abs=0.51)


def test_a_hole_is_drawn_held_as_it_is_told():
    held = {"all directions": "edges", "one way": "ends"}
    for asked, _system in _asked("rim_of_a_round_hole"):
        (found,) = (way for words, way in held.items() if words in asked.text)
        assert asked.structure.held == found
        assert asked.structure.rounding == asked.structure.cut_length / 2


@pytest.mark.parametrize(
    "slab",
    [
        CornerSlab(),
        CornerSlab(held="ends", age=90.0, rounding=200.0),
        CornerSlab(shape="opening", humidity=0.4),
        CornerSlab(shape="column", turn="turned", held="ends"),
        CornerSlab(shape="door", held="foot"),
        CornerSlab(held="base", thickness=100.0),
    ],
    ids=lambda s: f"{s.shape} {s.held}",
)
def test_the_pull_that_is_asked_about_is_that_of_the_panel(slab):
    assert corner_pull(slab) == pytest.approx(slab.cornered.share, rel=1e-9)


def test_the_panel_cracks_where_the_question_says():
    for asked, _system in _asked("where_it_starts"):
        slab = asked.structure
        state = slab.cornered
        corner = slab.length - slab.cut_length, slab.width - slab.cut_width
        assert asked.right.text == "At the inside corner"
        assert state.corner.at == pytest.approx(corner)
        told = _numbers(asked.right.why)
        assert told[0] == pytest.approx(state.share, abs=0.0051)
        assert told[1] < 0.5 * told[0]


def test_stronger_concrete_is_pulled_harder_for_the_reasons_given():
    for asked, system in _asked("stronger_at_the_corner"):
        weak = asked.structure
        strong = inner(_told(r"concrete of ([\d.]+)\W+(?:MPa|psi), held", asked.text),
                       "strength", system)  # fmt: skip
        before, after = weak.cornered, replace(weak, strength=strong).cornered
        assert _told(r"pulled with ([\d.]+)", asked.text) == pytest.approx(before.share, abs=0.0051)
        assert _right(asked) == pytest.approx(after.share, abs=0.0051)
        assert after.modulus > before.modulus
        assert after.strength > before.strength
        assert after.material_length < before.material_length


def test_a_thicker_floor_is_pulled_a_little_less_for_it_shrinks_less():
    for asked, system in _asked("thicker_at_the_corner"):
        thin = asked.structure
        deep = inner(_told(r"it were ([\d.]+)", asked.text), "size", system)
        before, after = thin.cornered, replace(thin, thickness=deep).cornered
        assert _right(asked) == pytest.approx(after.share, abs=0.0051)
        assert 0.7 * before.share < after.share < before.share
        assert after.free < before.free


def test_a_box_out_turned_is_what_the_panel_says_of_it():
    seen = set()
    for seed in range(10):
        asked = question("box_out_turned", Random(seed))
        along, turned = (
            replace(asked.structure, turn=turn).cornered.share for turn in ("square", "turned")
        )
        assert _told(r"pulled with ([\d.]+)", asked.text) == pytest.approx(along, abs=0.0051)
        assert _right(asked) == pytest.approx(turned, rel=0.03)
        assert ("one way" in asked.text) == (turned > 1.2 * along)
        seen.add(asked.right.text.startswith(f"{along:.2f}"))
    assert seen == {True, False}


def test_bars_hold_close_to_the_corner_and_do_little_along_the_walls():
    for asked, system in _asked("bars_that_hold"):
        size, count = _bars(asked.text, system)
        close, far = (
            inner(_numbers(c.text)[0], "size", system)
            for c in sorted(asked.choices, key=lambda c: not c.right)
            if _numbers(c.text)
        )
        bare = asked.structure.cornered.crack
        long = asked.structure.diagonal_length
        slanting = replace(
            asked.structure, diagonals=size, diagonal_count=count, diagonal_off=close
        ).cornered
        walls = replace(asked.structure, edges=size, edge_off=far, edge_past=long / 2).cornered
        assert slanting.crack.widest < 0.3 * bare.widest
        assert walls.crack.widest > 0.9 * bare.widest


def test_the_bars_lie_across_the_line_of_the_crack():
    for asked, _system in _asked("near_or_far"):
        state = asked.structure.cornered
        line = state.crack.points[-1] - state.crack.points[0]
        for bar in state.bars:
            way = np.subtract(bar.end, bar.start)
            turn = abs(float(line @ way)) / np.hypot(*line) / np.hypot(*way)
            assert turn < cos(pi / 2 - 0.1)


def _bars(text: str, system: str) -> tuple[str, int]:
    count, size = re.search(r"(\d) × (#?\d+)", text).groups()
    assert size.startswith("#") == (system == "US")
    return size, int(count)


def test_the_same_bars_farther_off_hold_the_crack_wider():
    for asked, system in _asked("near_or_far"):
        near = asked.structure
        off = inner(_told(r"they lay ([\d.]+)", asked.text), "size", system)
        rounding = inner({"SI": 0.0051, "US": 0.000051}[system], "width", system)
        widths = [s.cornered.crack.widest for s in (near, replace(near, diagonal_off=off))]
        told = _told(r"it is ([\d.]+)", asked.text), _right(asked)
        assert [inner(w, "width", system) for w in told] == pytest.approx(widths, abs=rounding)
        assert widths[1] > 1.4 * widths[0]


def test_bars_trim_a_crack_in_a_floor_that_is_held_fast_and_do_not_close_it():
    for asked, system in _asked("what_bars_can_do"):
        size, count = _bars(asked.text, system)
        slab = replace(asked.structure, diagonals=size, diagonal_count=count)
        state = slab.cornered
        rounding = inner({"SI": 0.0051, "US": 0.000051}[system], "width", system)
        told = inner(_right(asked), "width", system)
        assert told == pytest.approx(state.crack.widest, abs=rounding)
        assert 0.0 < state.crack.widest < state.crack.bare.max()


def test_bars_delay_a_crack_as_that_question_says():
    """There are weeks in which the bare floor is torn, and the one with bars is not."""
    asked = question("what_bars_can_do", Random(0))
    size, count = _bars(asked.text, "SI")
    slab = replace(asked.structure, diagonals=size, diagonal_count=count)
    ages = np.geomspace(60.0, slab.age, 16)
    states = [replace(slab, age=float(age)).cornered.crack for age in ages]
    bare = [float(ages[k]) for k, crack in enumerate(states) if crack.bare.max() > 0.5]
    held = [float(ages[k]) for k, crack in enumerate(states) if crack.widest > 0.5]
    assert bare[0] < held[0]


def test_a_cut_is_in_time_until_the_corner_has_torn():
    seen = set()
    for asked, _system in _asked("sawn_in_time"):
        day = _told(r"on day (\d+)", asked.text)
        torn = replace(asked.structure, age=day).cornered.crack.runs
        assert torn == asked.right.text.startswith("Nothing")
        seen.add(torn)
    assert seen == {True, False}


def test_under_a_cut_the_floor_tears_before_it_would_without():
    """So in time it comes under the cut: there are days when nothing else has torn yet."""
    slab = question("sawn_in_time", Random(0)).structure
    cut = replace(slab, joint="saw", saw_length=12_000.0)
    cracks = [replace(cut, age=float(age)).cornered.crack for age in np.geomspace(60.0, 400.0, 12)]
    assert any(crack.widest > 0.5 and crack.bare.max() < 0.1 for crack in cracks)
    assert all(crack.widest >= 0.999 * crack.bare.max() for crack in cracks)
