"""No word meets another, leaves the picture, is lost, or lies on a grip, whatever the inputs."""

import itertools
import random

import pytest

from crackkit.drawing import labels
from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.labels import covered_grips, faults, spread, width_of
from crackkit.drawing.lettering import DESCENT
from crackkit.drawing.palette import THEMES
from crackkit.drawing.shapes import Arrow, Circle, Picture, Polygon, Text, every_shape, handles
from crackkit.drawing.verdict_card import verdict_word
from crackkit.structures import fields
from crackkit.structures.laid_bars import LaidBars
from crackkit.structures.materials import CODES, DURATIONS, EXPOSURES
from crackkit.structures.simple_beam import PointLoad, SimpleBeam

NONE, NO_TOP = LaidBars(number=0), LaidBars(number=0, face="top")
WIDTHS = (560.0, 620.0, 779.0, 780.0, 860.0, 1000.0, 1200.0)
VIEWS = [View(system, width=width) for system in ("SI", "US") for width in WIDTHS]
THIN, THIN_TOP = LaidBars(cover=25.0), LaidBars(cover=25.0, number=2, face="top")
STRONG = LaidBars(size="32", number=12, face="top")


def loads(*places, force=60e3):
    return tuple(PointLoad(force, at) for at in places)


BEAMS = {
    "default": SimpleBeam(),
    "three loads on one spot": SimpleBeam(loads=loads(3000.0, 3000.0, 3000.0, force=300e3)),
    "three loads at the left end": SimpleBeam(loads=loads(0.0, 0.0, 0.0, force=300e3)),
    "three loads at the right end": SimpleBeam(loads=loads(6000.0, 5990.0, 5980.0, force=299e3)),
    "loads close together": SimpleBeam(loads=loads(2800.0, 3000.0, 3200.0, force=123.4e3)),
    "no load at all": SimpleBeam(loads=loads(0.0, force=0.0), uniform_load=0.0, self_weight=False),
    "own weight only": SimpleBeam(loads=loads(3000.0, force=0.0), uniform_load=0.0),
    "no bars, falling": SimpleBeam(bottom=NONE, top=NO_TOP, loads=loads(2000.0)),
    "no bars, uncracked": SimpleBeam(
        bottom=NONE, top=NO_TOP, loads=loads(2000.0, force=1e3), uniform_load=0.0, span=3000.0
    ),
    "bars on top only": SimpleBeam(bottom=NONE, top=LaidBars(number=4, face="top")),
    "bars trodden down": SimpleBeam(
        span=4000.0,
        overhang_left=2000.0,
        loads=loads(0.0),
        top=LaidBars(size="16", number=3, face="top", drop=300.0),
    ),
    "both ends past the supports": SimpleBeam(
        span=4000.0, overhang_left=2000.0, overhang_right=2000.0, loads=loads(0.0, 4000.0, 8000.0)
    ),
    "short bars": SimpleBeam(bottom=LaidBars(left_gap=2000.0, right_gap=2000.0)),
    "crushed": SimpleBeam(bottom=STRONG, strength=15.0, loads=loads(3000.0, force=300e3)),
    "the shortest": SimpleBeam(
        span=1000.0, width=150.0, depth=150.0, loads=loads(500.0), bottom=THIN, top=THIN_TOP
    ),
    "the longest": SimpleBeam(span=12000.0, width=800.0, depth=1200.0, loads=loads(6000.0)),
    "a wide flat plank": SimpleBeam(
        width=800.0, depth=150.0, loads=loads(3000.0, force=9e3), bottom=THIN, top=THIN_TOP
    ),
    "many thin bars": SimpleBeam(bottom=LaidBars(size="6", number=12), stirrup="none"),
}


def complaints(picture: Picture) -> list[str]:
    return faults(picture) + covered_grips(picture) + leaving_cards(picture)


def leaving_cards(picture: Picture) -> list[str]:
    """Words that begin on a card but do not end on it."""
    cards = [
        (*s.points.min(axis=0).tolist(), *s.points.max(axis=0).tolist())
        for s in every_shape(picture.shapes)
        if isinstance(s, Polygon) and s.role == "card"
    ]
    found = []
    for one in labels.text_boxes(picture):
        for left, top, right, bottom in cards:
            starts = left <= one.left <= right and top <= one.top <= bottom
            if starts and (one.right > right or one.bottom > bottom + 1.0):
                found.append(f"'{one.text}' leaves its card")
    return found


@pytest.mark.parametrize("name", BEAMS)
def test_words_keep_clear_at_every_width_and_in_both_systems(name):
    outcome = BEAMS[name].solve()
    found = {(view.system, view.width): complaints(beam_picture(outcome, view)) for view in VIEWS}
    assert {key: faulty for key, faulty in found.items() if faulty} == {}


@pytest.mark.parametrize("code", [code for code, _label in CODES])
@pytest.mark.parametrize("duration", [key for key, _label in DURATIONS])
@pytest.mark.parametrize("exposure", [key for key, _label in EXPOSURES])
def test_words_keep_clear_for_every_use_and_rule(code, duration, exposure):
    for uniform, bars in itertools.product((0.0, 8.0, 25.0), (3, 8)):
        beam = SimpleBeam(
            code=code,
            duration=duration,
            exposure=exposure,
            uniform_load=uniform,
            bottom=LaidBars(size="25", number=bars),
        )
        outcome = beam.solve()
        for view in VIEWS[::3]:
            assert complaints(beam_picture(outcome, view)) == []


def corner(dice: random.Random) -> SimpleBeam:
    """A beam with every input at one end of its range."""
    beam = SimpleBeam(loads=(PointLoad(),) * dice.randint(1, 3))
    for _round in range(2):  # bounds that follow others settle in the second round
        for path in [item.path for item in fields.inputs(beam)]:
            item = fields.input_at(beam, path)
            values = [v for v, _l in item.declared.choices] or [item.low, item.high]
            value = dice.choice(values)
            beam, _moved = fields.fitted(
                beam, {path: int(value) if item.declared.quantity == "count" else value}
            )
    return beam


@pytest.mark.parametrize("seed", range(120))
def test_words_keep_clear_at_random_corners_of_the_inputs(seed):
    dice = random.Random(seed)
    beam = corner(dice)
    outcome = beam.solve()
    for view in dice.sample(VIEWS, 4):
        assert complaints(beam_picture(outcome, view)) == []


@pytest.mark.parametrize("seed", range(120))
def test_no_word_of_the_verdict_is_lost(seed):
    outcome = corner(random.Random(1000 + seed)).solve()
    for view in (View(width=560.0), View(width=780.0), View()):
        words = " ".join(_texts(beam_picture(outcome, view)))
        assert verdict_word(outcome) in words
        for word in outcome.verdict.why.split():
            assert word in words


def _texts(picture: Picture) -> list[str]:
    return [s.text for s in every_shape(picture.shapes) if isinstance(s, Text)]


def test_an_overlap_would_be_noticed():
    words = (Text(50.0, 50.0, "one", "label"), Text(60.0, 52.0, "two", "label"))
    assert faults(Picture(200, 100, words, "")) == ["'one' meets 'two'"]
    assert faults(Picture(60, 100, words[:1], "")) == ["'one' leaves the picture"]


def test_a_covered_grip_would_be_noticed():
    shapes = (Text(50.0, 50.0, "one", "label"), Circle(60.0, 48.0, 6.0, "grip"))
    assert covered_grips(Picture(200, 100, shapes, "")) == ["'one' lies on a grip"]
    assert covered_grips(Picture(200, 100, (shapes[0], Circle(60.0, 70.0, 6.0, "grip")), "")) == []


def test_boxes_have_the_size_of_their_words():
    shape = Text(100.0, 50.0, "crack", "label", "end")
    size = THEMES["light"].style("label").size
    found = labels.box(shape)
    assert found.right == 100.0
    assert found.left == pytest.approx(100.0 - width_of("crack", "label"))
    assert found.bottom == pytest.approx(50.0 + DESCENT * size)


def test_labels_in_a_row_keep_their_order_and_their_distance():
    dice = random.Random(5)
    for _case in range(300):
        count = dice.randint(1, 5)
        centres = [dice.uniform(0, 500) for _k in range(count)]
        widths = [dice.uniform(20, 90) for _k in range(count)]
        placed = spread(centres, widths, 0.0, 500.0)
        boxes = sorted((x - w / 2, x + w / 2) for x, w in zip(placed, widths, strict=True))
        assert boxes[0][0] >= -1e-9 and boxes[-1][1] <= 500.0 + 1e-9
        assert all(b[0] - a[1] >= 7.99 for a, b in itertools.pairwise(boxes))
        by_wish = sorted(range(count), key=lambda k: centres[k])
        assert [placed[k] for k in by_wish] == sorted(placed)


def test_a_covered_badge_would_be_noticed():
    word, number = (
        Text(50.0, 50.0, "B", "label_bold"),
        Text(60.0, 54.2, "2", "badge_word", "middle"),
    )
    for role in ("bad", "badge"):
        near = (word, Circle(62.0, 46.0, 6.0, role))
        assert faults(Picture(200, 100, near, "")) == ["'B' lies on a badge"]
    assert faults(Picture(200, 100, (number, Circle(60.0, 50.0, 10.0, "badge")), "")) == []


def test_a_load_of_no_force_is_only_something_to_drag():
    outcome = BEAMS["no load at all"].solve()
    live, still = (beam_picture(outcome, View(live=live)) for live in (True, False))
    for picture in (live, still):
        assert not any("kN" in text and "0.0" in text for text in _loads_told(picture))
    assert "loads.0.at" in [handle.path for handle in handles(live.shapes)]
    movement = [s for s in every_shape(still.shapes) if isinstance(s, Arrow)]
    assert not movement


def _loads_told(picture: Picture) -> list[str]:
    return [s.text for s in every_shape(picture.shapes) if getattr(s, "role", "") == "load_word"]
