"""Gaps and places in words that somebody with a tape measure can use."""

from dataclasses import dataclass

import pytest

from crackkit.drawing.frames import View
from crackkit.drawing.gap_words import arrangement_words, gap_words
from crackkit.drawing.places import beside_support, span_number, stretch_name
from crackkit.structures.moment_range import FAULTS, Arrangement, Gap
from crackkit.structures.on_drawing import Footing

SI, US = View("SI"), View("US")


@dataclass(frozen=True)
class Floor:
    origin: float = 0.0
    origin_name: str = "from the left end"

    @property
    def footings(self):
        places = (0.0, 4000.0, 9000.0)
        return tuple(
            Footing(at, "pin", f"support {letter}", letter)
            for at, letter in zip(places, "ABC", strict=True)
        )


@pytest.mark.parametrize(
    ("at", "words"),
    [
        (4000.0, "over support B"),
        (4040.0, "over support B"),
        (4400.0, "0.40\u202fm past support B"),
        (3000.0, "1.00\u202fm before support B"),
        (8600.0, "0.40\u202fm before support C"),
        (6400.0, "in the middle of span 2"),
        (2100.0, "in the middle of span 1"),
        (9700.0, "0.70\u202fm past support C"),
    ],
)
def test_a_place_is_told_from_the_nearest_support(at, words):
    assert beside_support(at, Floor(), SI) == words


def test_a_place_is_told_in_the_units_of_the_reader():
    assert beside_support(4304.8, Floor(), US) == "1.0\u202fft past support B"


def test_spans_are_counted_from_one_and_overhangs_are_none():
    assert [span_number(Floor(), at) for at in (-5.0, 100.0, 5000.0, 9500.0)] == [None, 1, 2, None]
    assert stretch_name(Floor(), 4000.0, 9000.0, SI) == "span 2"
    assert stretch_name(Floor(), 9000.0, 9900.0, SI) == "9.00\u202fm to 9.90\u202fm"


@pytest.mark.parametrize(("key", "fault"), FAULTS.items())
def test_a_gap_names_face_place_fault_and_load(key, fault):
    loads = Arrangement((1, 3), (), "live load on spans 1 and 3", 3, ())
    gap = Gap("top", 4100.0, 4900.0, 4400.0, key, loads)
    words = gap_words(gap, Floor(), SI)
    assert words == (f"top, 0.40\u202fm past support B: {fault} (live load on spans 1 and 3)")
    assert arrangement_words(loads) in words
