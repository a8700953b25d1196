"""What is kept of a member from load to load must change no answer."""

import dataclasses

import numpy as np
from hypothesis import given
from hypothesis import strategies as st

from crackkit.mechanics import moving_load, self_stress
from crackkit.structures import member
from tests.structures.cantilevers import cantilevers
from tests.structures.floors import floors
from tests.structures.test_simple_beam_properties import cases

KEPT = (member._kept, moving_load._known_ends, self_stress._patterns)


def forget():
    """Let nothing be known of any member, as in a kernel that has just begun."""
    for each in KEPT:
        each.cache_clear()


def alike(one, other) -> bool:
    """Whether two Outcomes say the same of cracks, gaps, movement and verdict."""
    return (
        one.verdict == other.verdict
        and one.cautions == other.cautions
        and same_cracks(one.cracks, other.cracks)
        and np.array_equal(one.movement.down, other.movement.down)
    )


def same_cracks(some, others) -> bool:
    same_lines = all(np.array_equal(a.path, b.path) for a, b in zip(some, others, strict=True))
    return same_lines and [a._replace(path=None) for a in some] == [
        b._replace(path=None) for b in others
    ]


@cases(40)
@given(floors(), st.floats(0.0, 1.0), st.floats(0.0, 80.0))
def test_a_floor_answers_the_same_whatever_loads_it_bore_before(floor, share, load):
    forget()
    first = dataclasses.replace(floor, dead_load=load)
    first.solve()
    travelled = dataclasses.replace(floor.loads[0], at=share * floor.length)
    dataclasses.replace(floor, loads=(travelled, *floor.loads[1:])).solve()
    after = floor.solve()
    forget()
    afresh = floor.solve()
    assert alike(after, afresh)
    assert same_cracks(after.range.cracks, afresh.range.cracks)
    assert after.range.gaps == afresh.range.gaps


@cases(40)
@given(cantilevers(), st.floats(0.0, 1.0))
def test_a_cantilever_answers_the_same_whatever_loads_it_bore_before(arm, share):
    forget()
    loads = tuple(dataclasses.replace(load, force=share * load.force) for load in arm.loads)
    dataclasses.replace(arm, loads=loads).solve()
    after = arm.solve()
    forget()
    assert alike(after, arm.solve())


@cases(20)
@given(floors(most=3))
def test_a_member_that_is_the_same_again_is_the_one_that_is_known(floor):
    heavier = dataclasses.replace(floor, dead_load=floor.dead_load / 2)
    assert heavier.member is floor.member
