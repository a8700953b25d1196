"""Pictures of arms and floors: every word in its place, and what must be seen is there."""

import random
from dataclasses import replace
from functools import cache

import pytest

from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.blank_beam import blank_beam
from crackkit.drawing.blank_member import blank_member
from crackkit.drawing.frames import View
from crackkit.drawing.labels import Box, box, covered_grips, faults
from crackkit.drawing.shapes import Circle, Hint, Lines, Polygon, Text, every_shape, handles
from crackkit.drawing.verdict_card import verdict_word
from crackkit.structures import fields
from crackkit.structures.cantilever import ArmLoad, Cantilever
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.structures.moment_range import Gap

WIDTHS = (560.0, 620.0, 779.0, 780.0, 1000.0, 1200.0)
VIEWS = [
    View(system, width=width, live=live)
    for system in ("SI", "US")
    for width in WIDTHS
    for live in (True, False)
]


def floor(*lengths, sunk=(), **inputs) -> ContinuousBeam:
    """A floor over spans of these lengths [mm]; every second one carries live load."""
    lengths = lengths or (4000.0, 4000.0, 4000.0)
    spans = tuple(Span(length, live=k % 2 == 0) for k, length in enumerate(lengths))
    deep = [*sunk, *[0.0] * (len(lengths) + 1 - len(sunk))]
    reach = min(lengths) / 4
    supports = tuple(Support(left_reach=reach, right_reach=reach, sunk=s) for s in deep)
    inputs = {"loads": (Traveller(0.0, 500.0),)} | inputs
    return ContinuousBeam(spans=spans, supports=supports, **inputs)


HEAVY = {"live_load": 60.0, "dead_load": 30.0}
STRUCTURES = {
    "three spans": floor(),
    "two short spans": floor(1000.0, 1000.0),
    "six short spans": floor(*[1000.0] * 6, **HEAVY),
    "six long spans": floor(*[10000.0] * 6, **HEAVY),
    "five long and a short one": floor(*[10000.0] * 5, 1000.0, **HEAVY),
    "a short one in the middle": floor(10000.0, 10000.0, 1000.0, 10000.0, 10000.0, 10000.0),
    "all supports sunk": floor(*[3000.0] * 6, sunk=(5.0, 4.0, 3.0, 6.0, 5.0, 4.0, 3.0)),
    "two travelling loads": floor(
        6000.0, 4000.0, loads=(Traveller(200e3, 5000.0), Traveller(150e3, 5100.0)), **HEAVY
    ),
    "held fast, with its slab": floor(
        7000.0,
        5000.0,
        left_end="fixed",
        right_end="fixed",
        shape="tee",
        width=300.0,
        depth=500.0,
        flange_width=1500.0,
        flange_depth=120.0,
        **HEAVY,
    ),  # fmt: skip
    "arm in a wall": Cantilever(uniform_load=25.0),
    "arm without bars": Cantilever(
        uniform_load=25.0, top=replace(Cantilever().top, laid=False), tip_depth=80.0
    ),
    "arm out of a floor": Cantilever(back="floor", uniform_load=25.0, back_load=3.0),
    "two loads at the tip": Cantilever(loads=(ArmLoad(90e3, 1500.0), ArmLoad(80e3, 1490.0))),
}


@pytest.fixture(scope="module")
def outcomes():
    return {name: structure.solve() for name, structure in STRUCTURES.items()}


def complaints(outcome, view: View) -> list[str]:
    picture = beam_picture(outcome, view)
    return faults(picture) + covered_grips(picture) + crowded_grips(picture)


def crowded_grips(picture) -> list[str]:
    """Grips on bars that pile up; those of supports and loads stand where these stand."""
    grips = [s for s in every_shape(picture.shapes) if isinstance(s, Circle) and s.role == "grip"]
    bars = [g for g in grips if picture_band(g, picture)]
    near = [
        (a, b)
        for k, a in enumerate(bars)
        for b in bars[k + 1 :]
        if (a.x - b.x) ** 2 + (a.y - b.y) ** 2 < 14.0**2
    ]
    return [f"grips pile up at {a.x:.0f}, {a.y:.0f}" for a, _b in near]


def picture_band(grip, picture) -> bool:
    """Whether a grip lies in the band of the stretched member, by the heading above it."""
    heads = [
        s
        for s in every_shape(picture.shapes)
        if isinstance(s, Text) and s.text.startswith("Where is it stretched")
    ]
    return heads[0].y < grip.y < heads[0].y + 200.0


@pytest.mark.parametrize("name", STRUCTURES)
def test_words_and_grips_keep_clear(name, outcomes):
    found = {(v.system, v.width, v.live): complaints(outcomes[name], v) for v in VIEWS}
    assert {key: faulty for key, faulty in found.items() if faulty} == {}


@pytest.mark.parametrize("name", STRUCTURES)
@pytest.mark.parametrize("system", ["SI", "US"])
def test_blank_pictures_keep_their_words_clear(name, system, outcomes):
    structure = STRUCTURES[name]
    assert faults(blank_beam(structure, View(system, live=False))) == []
    for width in (460.0, 560.0, 840.0, 1100.0):
        view = View(system, live=False, width=width)
        assert faults(blank_member(structure, view)) == []
        assert faults(blank_member(structure, view, outcomes[name], "both")) == []


def corner(dice: random.Random, start):
    """A structure with every input at one end of its range or somewhere between."""
    for _round in range(2):  # bounds that follow others settle in the second round
        for path in [item.path for item in fields.inputs(start)]:
            item = fields.input_at(start, path)
            values = [v for v, _l in item.declared.choices]
            values = values or [item.low, item.high, (item.low + item.high) / 2]
            value = dice.choice(values)
            whole = item.declared.quantity == "count"
            start, _moved = fields.fitted(start, {path: int(value) if whole else value})
    return start


@cache
def any_outcome(seed: int):
    """An arm or a floor at a random corner of its inputs, solved."""
    dice = random.Random(seed)
    if seed % 3 == 0:
        return corner(dice, Cantilever(loads=(ArmLoad(),) * dice.randint(1, 2))).solve()
    count = dice.randint(2, 6)
    spans, supports = (Span(),) * count, (Support(),) * (count + 1)
    loads = (Traveller(),) * dice.randint(1, 2)
    return corner(dice, ContinuousBeam(spans=spans, supports=supports, loads=loads)).solve()


@pytest.mark.parametrize("seed", range(60))
def test_words_and_grips_keep_clear_at_random_corners(seed):
    outcome = any_outcome(seed)
    for view in random.Random(seed).sample(VIEWS, 4):
        assert complaints(outcome, view) == []


@pytest.mark.parametrize("seed", range(60))
def test_no_word_of_the_verdict_is_lost(seed):
    outcome = any_outcome(seed)
    for width in (560.0, 780.0):
        words = " ".join(texts(beam_picture(outcome, View(width=width))))
        assert verdict_word(outcome) in words
        assert all(word in words for word in outcome.verdict.why.split())


def texts(picture) -> list[str]:
    return [s.text for s in every_shape(picture.shapes) if isinstance(s, Text)]


def test_every_span_has_a_switch_and_says_whether_it_is_on(outcomes):
    picture = beam_picture(outcomes["three spans"], View())
    switches = [h for h in handles(picture.shapes) if h.axis == "toggle"]
    assert [h.path for h in switches] == ["spans.0.live", "spans.1.live", "spans.2.live"]
    assert [h.value for h in switches] == [1.0, 0.0, 1.0]
    assert "span 2" in switches[1].label


def test_letters_name_the_supports_once_in_each_drawing(outcomes):
    words = texts(beam_picture(outcomes["three spans"], View()))
    assert [words.count(letter) for letter in "ABCD"] == [2, 2, 2, 2]


@pytest.mark.parametrize("at", [150.0, 3900.0, 4100.0, 4300.0, 8200.0, 11900.0])
def test_letters_make_room_for_the_badge_of_a_gap_wherever_it_lies(at, outcomes):
    outcome = outcomes["three spans"]
    gap = Gap("bottom", at - 100.0, at + 100.0, at, "no_bar", outcome.range.arrangement("top", at))
    holed = replace(outcome, range=replace(outcome.range, gaps=(gap, replace(gap, face="top"))))
    for width in WIDTHS:
        assert faults(beam_picture(holed, View(width=width))) == []


@pytest.mark.parametrize("name", ["arm in a wall", "arm without bars", "two loads at the tip"])
@pytest.mark.parametrize("width", [560.0, 620.0, 1000.0])
def test_words_keep_off_the_wall(name, width, outcomes):
    picture = beam_picture(outcomes[name], View(width=width))
    walls = [s for s in every_shape(picture.shapes) if getattr(s, "role", "") == "wall"]
    assert walls
    for one in map(box, (s for s in every_shape(picture.shapes) if isinstance(s, Text))):
        for (left, top), (right, bottom) in ((w.points.min(0), w.points.max(0)) for w in walls):
            wall = Box(left, top, right, bottom, "wall")
            assert not one.meets(wall), one.text


def test_a_blank_drawing_measures_what_reaches_past_the_supports():
    arm = Cantilever(back="floor")
    for picture in (blank_beam(arm, View()), blank_member(arm, View(live=False, width=840.0))):
        assert "1.50\u202fm" in texts(picture)
        assert "past the outer supports" in picture.description
    assert "past" not in blank_beam(Cantilever(), View()).description


def test_a_sunk_support_says_so(outcomes):
    sunk = floor(4000.0, 5000.0, sunk=(0.0, 8.0)).solve()
    assert "B sunk 8.0\u202fmm" in texts(beam_picture(sunk, View()))
    assert not any("sunk" in text for text in texts(beam_picture(outcomes["three spans"], View())))


def test_gaps_are_told_three_at_most_and_marked_on_the_member(outcomes):
    outcome = outcomes["six long spans"]
    gaps, picture = outcome.range.gaps, beam_picture(outcome, View())
    words = " ".join(texts(picture))
    assert len(gaps) > 3 and f"and {len(gaps) - 3} more" in words
    badges = [s for s in every_shape(picture.shapes) if isinstance(s, Circle) and s.role == "bad"]
    assert len(badges) == len(gaps) + 3
    uncovered = [s for s in every_shape(picture.shapes) if getattr(s, "role", "") == "uncovered"]
    assert sum(len(s.outlines) for s in uncovered) == len(gaps)


def test_hints_lie_side_by_side_along_the_member_and_only_where_one_can_point(outcomes):
    outcome = outcomes["three spans"]
    hints = [s for s in every_shape(beam_picture(outcome, View()).shapes) if isinstance(s, Hint)]
    assert len(hints) == 40 and len({hint.y for hint in hints}) == 1
    for one, after in zip(hints, hints[1:], strict=False):
        assert one.x + one.width == pytest.approx(after.x)
    assert "sags most" in hints[6].text and "live load on spans 1 and 3" in hints[6].text
    still = beam_picture(outcome, View(live=False))
    assert not any(isinstance(s, Hint) for s in every_shape(still.shapes))


def test_places_are_counted_from_the_root(outcomes):
    outcome = outcomes["arm in a wall"]
    picture = beam_picture(outcome, View())
    assert "\u22120.25" in texts(picture) and "most at the root" in picture.description
    assert "the root" in texts(picture)  # where the section is cut


def test_what_breaks_says_at_which_moment(outcomes):
    outcome = outcomes["arm without bars"]
    assert outcome.movement.falls_at is not None
    assert any(text.startswith("breaks at") for text in texts(beam_picture(outcome, View())))


def test_a_slab_is_drawn_wide_and_flat(outcomes):
    for name in ("three spans", "arm in a wall", "arm without bars"):
        outcome, picture = outcomes[name], beam_picture(outcomes[name], View())
        section = outcome.worst.section
        cut = [
            s.points
            for s in every_shape(picture.shapes)
            if isinstance(s, Polygon) and s.role == "concrete"
        ][-1]
        wide, deep = cut.max(axis=0) - cut.min(axis=0)
        assert wide / deep == pytest.approx(section.width / section.depth)
        assert wide > 200.0


def test_mats_are_named_by_their_spacing(outcomes):
    picture = beam_picture(outcomes["three spans"], View())
    assert "12 mm every 200\u202fmm" in texts(picture)
    widest = max(box(s).right for s in every_shape(picture.shapes) if isinstance(s, Text))
    assert widest <= picture.width


def test_a_second_look_at_the_same_floor_gives_the_same_words(outcomes):
    again = replace(STRUCTURES["three spans"]).solve()
    assert texts(beam_picture(again, View())) == texts(
        beam_picture(outcomes["three spans"], View())
    )


def test_what_the_bars_bear_is_drawn_on_the_chart_and_crosses_the_range_where_there_are_too_few():
    weak = floor(dead_load=30.0, live_load=20.0).solve()
    assert any(gap.fault == "too_few" for gap in weak.range.gaps)
    picture = beam_picture(weak, View())
    shapes = list(every_shape(picture.shapes))
    (line,) = [s for s in shapes if isinstance(s, Lines) and s.role == "bears"]
    _sample, area = [s for s in shapes if getattr(s, "role", "") == "stretched_area"][:2]
    low, high = area.points[:, 1].min(), area.points[:, 1].max()
    assert line.segments[..., 1].min() >= low - 0.01 and line.segments[..., 1].max() <= high + 0.01
    level = [s for s in line.segments if abs(s[0, 1] - s[1, 1]) < 1e-6]
    assert any(low < s[0, 1] < high for s in level)
    assert "bars bear" in texts(picture)
