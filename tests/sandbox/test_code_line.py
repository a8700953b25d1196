"""The line a panel hands out makes the same structure again."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

import crackkit
from crackkit.learning.simple_beam import canteen_beam, canteen_beam_with_ends
from crackkit.sandbox import code_line
from crackkit.sandbox.code_line import FORMS
from crackkit.structures.fields import inputs
from tests.structures.beams import simple_beams
from tests.structures.cantilevers import cantilevers
from tests.structures.controls import crack_controls
from tests.structures.floors import floors
from tests.structures.ground_slabs import ground_slabs
from tests.structures.tension_members import KNOWN, tension_members

systems = st.sampled_from(["SI", "US"])


def made_again(line):
    return eval(line, {form.call: getattr(crackkit, form.call) for form in FORMS.values()})


def apart(one, other):
    """Inputs in which two structures differ, those left out that mean nothing in the first."""
    bare = FORMS[type(one)].bare(one)
    again = {item.path: item.value for item in inputs(other)}
    return [
        (item.path, item.value, again.get(item.path))
        for item in inputs(one)
        if item.applies and not _says_nothing(item.path, bare) and not _same(item, again)
    ]


def _says_nothing(path, bare):
    """How a layer lies in which there are no bars; a load of nothing."""
    layer, _dot, last = path.partition(".")
    return layer in bare and last not in ("number", "laid", "cover")


def _same(item, again):
    value = again.get(item.path)
    if isinstance(item.value, (str, bool)):
        return value == item.value
    return value == pytest.approx(item.value, rel=1e-9, abs=1e-6)


def check(structure, system):
    typed = made_again(code_line(structure, system))
    assert apart(structure, typed.structure) == []
    assert typed.system == system
    assert typed.notes == []


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("beam", [canteen_beam("SI"), canteen_beam_with_ends("US")])
def test_the_line_makes_the_same_beam(beam, system):
    check(beam, system)


def loaded(structure):
    """Loads of nothing are not written: only structures that have none of them."""
    return all(load.force for load in structure.loads)


@settings(max_examples=60, deadline=None)
@given(simple_beams().filter(loaded), systems)
def test_the_line_makes_any_beam_again(beam, system):
    check(beam, system)


@settings(max_examples=50, deadline=None)
@given(simple_beams(), systems)
def test_the_line_makes_the_same_answer(beam, system):
    widest = beam.solve().widest
    again = made_again(code_line(beam, system)).outcome.widest
    assert (widest is None) == (again is None)


@settings(max_examples=60, deadline=None)
@given(cantilevers().filter(loaded), systems)
def test_the_line_makes_any_cantilever_again(arm, system):
    check(arm, system)


@settings(max_examples=60, deadline=None)
@given(floors().filter(loaded), systems)
def test_the_line_makes_any_floor_again(floor, system):
    check(floor, system)


@settings(max_examples=60, deadline=None)
@given(tension_members(), systems)
def test_the_line_makes_any_pulled_member_again(member, system):
    check(member, system)


@pytest.mark.parametrize("name", KNOWN)
def test_the_line_makes_the_same_state_of_a_pulled_member(name):
    member = KNOWN[name]
    again = made_again(code_line(member, "SI")).outcome
    assert again.verdict.key == member.solve().verdict.key
    assert len(again.cracks) == len(member.solve().cracks)


@settings(max_examples=60, deadline=None)
@given(crack_controls(), systems)
def test_the_line_makes_any_choice_of_bars_again(control, system):
    check(control, system)


@settings(max_examples=30, deadline=None)
@given(crack_controls(), systems)
def test_the_line_makes_the_same_crack_of_a_choice_of_bars(control, system):
    again = made_again(code_line(control, system)).structure.control
    assert again.worse.band.governing == pytest.approx(
        control.control.worse.band.governing, rel=1e-6, abs=1e-9
    )


@settings(max_examples=60, deadline=None)
@given(ground_slabs(), systems)
def test_the_line_makes_any_slab_on_the_ground_again(slab, system):
    check(slab, system)


@settings(max_examples=8, deadline=None)
@given(ground_slabs(), systems)
def test_the_line_makes_the_same_pull_in_a_slab_on_the_ground(slab, system):
    again = made_again(code_line(slab, system)).structure
    assert again.panels == slab.panels
    assert again.ground.free == pytest.approx(slab.ground.free, rel=1e-6, abs=1e-9)
