"""What was built in one system of units and is told in the other stays what it is."""

from functools import partial
from random import Random

import pytest

from crackkit.learning import (
    arm_task,
    bar_choice,
    beam_task,
    cantilever,
    choice_task,
    corner,
    corner_task,
    curling,
    curling_task,
    floor,
    floor_task,
    floor_walk,
    ground,
    ground_task,
    pull_task,
    pulled,
    simple_beam,
)
from crackkit.learning.questions import GENERATORS, question
from crackkit.learning.telling import Retold, briefly, shown, told_in, unit
from crackkit.units.quantities import FOOT
from tests.lessons.foreign_units import OTHER, left

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])
LESSONS = (pulled, simple_beam, cantilever, bar_choice, ground, curling, corner)
WALKS = {lesson.LESSON: lesson.walk for lesson in LESSONS}
WALKS[floor.LESSON] = lambda system: floor_walk.walk(floor.paper_store(system), system)
TASKS = (
    pull_task.shed_tie,
    beam_task.wash_bay,
    arm_task.rain_roof,
    floor_task.parts_store,
    choice_task.wash_floor,
    ground_task.store_floor,
    curling_task.canteen_floor,
    corner_task.bus_depot,
)


def test_a_retold_system_is_looked_up_as_what_it_is_built_in_and_written_as_the_other():
    system = Retold("SI", told="US")
    assert {"SI": 1500.0, "US": 5 * FOOT}[system] == 1500.0
    assert (told_in(system), told_in("SI")) == ("US", "SI")
    assert shown(1500.0, "length", system) == "4.9\u202fft"
    assert unit("size", system) == "in"


def test_numbers_that_would_read_alike_are_told_with_more_digits():
    areas = (31.0, 29.5)
    assert {shown(area, "area", Retold("SI", "US")) for area in areas} == {"0.05\u202fin²"}
    told = {shown(area, "area", Retold("SI", "US", finer=1)) for area in areas}
    assert told == {"0.048\u202fin²", "0.046\u202fin²"}


def test_choices_that_would_read_alike_in_other_units_are_told_apart():
    finer = []
    for seed in range(40):
        posed = question("drag_bars", Random(seed), "SI")
        texts = [choice.text for choice in posed.again("US").choices]
        assert len(set(texts)) == len(texts)
        finer += [text for text in texts if len(text.split("\u202f")[0].split(".")[1]) > 2]
    assert finer  # some of them needed it


@pytest.mark.parametrize(
    ("value", "quantity", "system", "written"),
    [
        (5 * FOOT, "length", "US", "5\u202fft"),
        (1500.0, "length", "SI", "1.5\u202fm"),
        (19.05, "size", "US", "0.75\u202fin"),
        (100.0, "size", "SI", "100\u202fmm"),
    ],
)
def test_briefly_leaves_out_zeros_that_say_nothing(value, quantity, system, written):
    assert briefly(value, quantity, system) == written


@SYSTEMS
@pytest.mark.parametrize("lesson", sorted(WALKS))
def test_a_walk_told_in_other_units_sets_the_same_and_says_nothing_in_the_old_ones(lesson, system):
    walk = WALKS[lesson](system)
    told = walk.told(OTHER[system])
    assert [step.changes for step in told] == [step.changes for step in walk]
    assert [step.from_start for step in told] == [step.from_start for step in walk]
    assert [left(s.text + s.answer, OTHER[system]) for s in told] == [[] for _step in told]
    assert walk.told(system) == walk


@SYSTEMS
@pytest.mark.parametrize("key", sorted(GENERATORS))
def test_a_question_told_in_other_units_is_the_same_question(key, system):
    posed = question(key, Random(7), system)
    told = posed.again(OTHER[system])
    assert (told.structure, told.after) == (posed.structure, posed.after)
    assert [c.misconception for c in told.choices] == [c.misconception for c in posed.choices]
    texts = [told.text, *(part for c in told.choices for part in (c.text, c.why))]
    assert [left(text, OTHER[system]) for text in texts] == [[] for _text in texts]
    assert posed.again(system).choices == posed.choices


@SYSTEMS
@pytest.mark.parametrize("make", TASKS, ids=lambda make: make.__name__)
def test_a_task_told_in_other_units_asks_for_the_same(make, system):
    job, telling = make(system), Retold(system, told=OTHER[system])
    outcome = job.structure.solve()
    assess = partial(job.assess, job.structure, outcome)
    assert [c.ok for c in assess(telling)] == [c.ok for c in assess(system)]
    goals = job.goals(telling)
    said = [part for c in assess(telling) for part in (c.measured, c.wanted, c.text)]
    told = [*goals, job.story, *said]
    assert [left(text, OTHER[system]) for text in told] == [[] for _text in told]
