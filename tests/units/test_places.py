"""Places are told as their reader counts them."""

from crackkit.structures.cantilever import Cantilever
from crackkit.structures.simple_beam import SimpleBeam
from crackkit.units.places import at_place, place_named, place_told, stretch_told


def test_a_beam_is_counted_from_its_left_end():
    assert place_told(SimpleBeam(), 1500.0, "SI") == "1.50\u202fm"
    assert place_named(SimpleBeam(), 1500.0, "SI") == "1.50\u202fm from the left end"


def test_an_arm_is_counted_from_its_root_both_ways():
    arm = Cantilever()
    assert place_told(arm, arm.root + 500.0, "SI") == "0.50\u202fm from the root"
    assert place_told(arm, arm.root - 200.0, "SI") == "0.20\u202fm behind the root"
    assert place_named(arm, arm.root + 0.4, "SI") == "the root"
    assert at_place(arm, arm.root + 0.4, "SI") == "at the root"
    assert at_place(arm, arm.root + 500.0, "SI") == "0.50\u202fm from the root"


def test_a_stretch_whose_ends_read_the_same_is_a_place():
    assert stretch_told(SimpleBeam(), 1500.0, 1501.0, "SI") == "1.50\u202fm"
    assert stretch_told(SimpleBeam(), 1000.0, 1500.0, "SI") == "1.00\u202fm to 1.50\u202fm"


def test_the_side_of_the_root_is_said_once_where_a_stretch_lies_on_one_side():
    arm = Cantilever()
    root, told = arm.root, "0.20\u202fm to 0.60\u202fm from the root"
    assert stretch_told(arm, root + 200.0, root + 600.0, "SI") == told
    assert stretch_told(arm, root - 200.0, root - 100.0, "SI").endswith(
        "0.10\u202fm behind the root"
    )
    across = stretch_told(arm, root - 200.0, root + 600.0, "SI")
    assert across == "0.20\u202fm behind the root to 0.60\u202fm from the root"
