"""Declared inputs: listed, checked, changed, and drawn back when others move."""

import dataclasses
import math

import pytest

from crackkit.structures import fields
from crackkit.structures.laid_bars import LaidBars
from crackkit.structures.simple_beam import PointLoad, SimpleBeam


def refused(**changes) -> fields.InputError:
    with pytest.raises(fields.InputError) as caught:
        SimpleBeam(**changes)
    return caught.value


def test_every_input_has_a_label_a_range_and_a_value_inside_it():
    beam = SimpleBeam()
    for item in fields.inputs(beam):
        assert item.declared.label
        if not item.declared.choices:
            assert item.low <= item.value <= item.high
    paths = [item.path for item in fields.inputs(beam)]
    assert len(paths) == len(set(paths))
    assert {"span", "loads.0.at", "bottom.cover", "top.drop", "code"} <= set(paths)


def test_one_input_is_found_by_its_path():
    assert fields.input_at(SimpleBeam(), "bottom.cover").low == 10.0
    with pytest.raises(KeyError):
        fields.input_at(SimpleBeam(), "bottom.colour")


def test_a_value_out_of_range_is_named_with_field_value_and_range():
    error = refused(span=20000.0)
    assert (error.path, error.value, error.low, error.high) == ("span", 20000.0, 1000.0, 12000.0)
    assert str(error) == "Span: 20000.0 is outside 1000 to 12000 (N, mm, MPa)"


def test_the_name_of_a_part_stands_before_that_of_its_input():
    assert refused(bottom=LaidBars(cover=300.0)).field == "Bottom bars, Cover"
    assert refused(loads=(PointLoad(), PointLoad(-1.0))).field == "Point load 2, Load"


def test_a_bound_may_follow_other_inputs():
    assert refused(loads=(PointLoad(1000.0, 6500.0),)).high == 6000.0
    SimpleBeam(overhang_right=1000.0, loads=(PointLoad(1000.0, 6500.0),))


def test_the_input_at_fault_is_named_not_the_one_that_follows_it():
    # a load at 3 m lies beyond a beam of -5 m, but it is the overhang that is wrong
    assert refused(overhang_left=-9000.0).path == "overhang_left"
    assert refused(stirrup="17").path == "stirrup"


@pytest.mark.parametrize("value", [math.nan, math.inf, -math.inf, "6 m", None, True, 3 + 1j])
def test_what_is_no_number_is_refused(value):
    error = refused(overhang_left=value)
    assert error.path == "overhang_left"
    assert "is not a number" in str(error)


def test_bars_are_counted_in_whole_numbers():
    assert "whole number from 0 to 12" in str(refused(bottom=LaidBars(number=2.5)))
    assert SimpleBeam(bottom=LaidBars(number=3.0)).solve().steel[0].number == 3


def test_a_choice_must_be_one_of_those_named():
    error = refused(code="XX")
    assert error.choices == ("ACI", "EN")
    assert "is not one of ACI, EN" in str(error)
    assert refused(self_weight="maybe").choices == (True, False)


def test_bars_lie_at_one_face_or_the_other():
    with pytest.raises(fields.InputError, match="bottom, top"):
        LaidBars(face="middle")


def test_there_are_one_to_three_point_loads():
    assert refused(loads=()).quantity == "count"
    assert refused(loads=(PointLoad(),) * 4).high == 3


def test_a_list_of_loads_is_as_good_as_a_tuple():
    assert SimpleBeam(loads=[PointLoad()]).loads == (PointLoad(),)


def test_one_input_is_changed_in_a_copy():
    beam = SimpleBeam()
    changed = fields.with_value(beam, "bottom.cover", 30.0)
    assert (beam.bottom.cover, changed.bottom.cover) == (40.0, 30.0)
    assert dataclasses.replace(changed, bottom=beam.bottom) == beam


def test_others_are_drawn_back_into_their_ranges_and_named():
    beam = SimpleBeam(loads=(PointLoad(10e3, 5500.0),))
    changed, moved = fields.fitted(beam, {"span": 4000.0})
    assert changed.loads[0].at == 4000.0
    assert moved == ("Point load 1, Place",)


def test_a_chain_of_ranges_settles():
    beam = SimpleBeam(depth=500.0, bottom=LaidBars(cover=60.0, drop=50.0))
    changed, moved = fields.fitted(beam, {"depth": 200.0})
    assert changed.bottom.cover == 40.0
    assert changed.bottom.drop == 35.0
    assert moved == ("Bottom bars, Cover", "Bottom bars, Dropped by")


def test_what_is_asked_for_is_never_drawn_back():
    with pytest.raises(fields.InputError, match="Span"):
        fields.fitted(SimpleBeam(), {"span": 200.0})
    with pytest.raises(fields.InputError, match="not a number"):
        fields.fitted(SimpleBeam(), {"span": "long"})


def test_a_count_stays_a_count_when_drawn_back():
    beam = SimpleBeam()
    object.__setattr__(beam, "bottom", dataclasses.replace(beam.bottom, number=40))
    changed, _moved = fields.fitted(beam, {"depth": 500.0})
    assert changed.bottom.number == 12 and isinstance(changed.bottom.number, int)


def test_a_value_at_the_end_of_its_range_may_be_off_by_the_last_of_twelve_digits():
    end = next(item.high for item in fields.inputs(SimpleBeam()) if item.path == "span")
    assert SimpleBeam(span=end * (1 + 5e-9)).span > end
    assert "outside" in str(refused(span=end * (1 + 1e-6)))
