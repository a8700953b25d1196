"""The line a panel hands out makes the same beam again."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import crackkit
from crackkit.learning.simple_beam import canteen_beam, canteen_beam_with_ends
from crackkit.sandbox import code_line
from crackkit.structures.fields import inputs
from tests.structures.beams import simple_beams


def made_again(line):
    return eval(line, {"SimpleBeam": crackkit.SimpleBeam}).structure  # our own text


def numbers(beam):
    return {i.path: i.value for i in inputs(beam) if not isinstance(i.value, (str, bool))}


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("beam", [canteen_beam("SI"), canteen_beam_with_ends("US")])
def test_the_line_makes_the_same_beam(beam, system):
    again = made_again(code_line(beam, system))
    assert numbers(again) == pytest.approx(numbers(beam), rel=1e-6, abs=1e-6)
    assert again.code == beam.code and again.bottom.size == beam.bottom.size


@settings(max_examples=150, deadline=None)
@given(simple_beams(), st.sampled_from(["SI", "US"]))
def test_the_line_makes_the_same_answer(beam, system):
    widest, again = beam.solve().widest, made_again(code_line(beam, system)).solve().widest
    assert (widest is None) == (again is None)
