"""Goals read any structure: a beam, an arm, a floor whose loads come and go."""

from dataclasses import replace

import pytest

from crackkit.learning import goals
from crackkit.learning.cantilever import balcony
from crackkit.learning.task import HoldTask
from crackkit.structures.cantilever import Cantilever
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.fields import fitted
from crackkit.structures.simple_beam import SimpleBeam

ANY = (goals.HOLD, goals.FINE, goals.ANCHORED, goals.STEEL, goals.ROOM, goals.MAT, goals.COVER)
EVERY = (*ANY, goals.COVERED, goals.HOLD_ALWAYS, goals.FINE_ALWAYS)


def assessed(structure, asks, system="SI", most=1000.0):
    task = HoldTask("a_task", "", "", structure, (), most, asks)
    assert all(task.goals(system))
    checks = task.assess(structure, structure.solve(), system)
    assert len(checks) == len(asks)
    return {check.key: check for check in checks}


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize(
    "structure",
    [SimpleBeam(), Cantilever(), Cantilever(shape="beam"), balcony(), ContinuousBeam()],
    ids=["beam", "slab arm", "beam arm", "balcony", "floor"],
)
def test_every_goal_is_said_and_checked_of_any_structure(structure, system):
    found = assessed(structure, ANY, system)
    assert all(check.text and check.measured and check.wanted for check in found.values())


def test_a_good_floor_reaches_all_that_is_asked_of_floors():
    floor, _moved = fitted(ContinuousBeam(), {"top.spacing": 150.0})
    assert floor.solve().range.cracks
    assert [c.key for c in assessed(floor, goals.FLOOR).values() if not c.ok] == []


def test_a_place_without_top_bars_is_an_uncovered_stretch_though_nothing_stands_there_now():
    floor = ContinuousBeam()
    bare, _moved = fitted(floor, {"supports.1.laid": False})
    found = assessed(bare, EVERY)
    assert not found["covered"].ok and "On top" in found["covered"].text
    assert "live load" in found["covered"].text
    assert not found["hold"].ok and not found["width"].ok


def test_a_floor_loaded_too_much_names_the_weak_place():
    heavy = replace(ContinuousBeam(), live_load=16.0)
    found = assessed(heavy, (goals.HOLD_ALWAYS,))
    assert not found["hold"].ok and "from the left end" in found["hold"].text


def test_cover_is_measured_where_a_tapered_arm_is_thinnest():
    arm = replace(Cantilever(), tip_depth=80.0)
    thick, thin = assessed(Cantilever(), ANY)["cover"], assessed(arm, ANY)["cover"]
    assert thick.measured == thin.measured  # the top bars keep their cover
    low = replace(arm, top=replace(arm.top, drop=60.0))
    assert assessed(low, ANY)["cover"].measured == "5\u202fmm"  # they rest on the form at the tip


def test_cover_of_stirrups_counts_where_there_are_any():
    thin = replace(SimpleBeam(), exposure="sea")
    bare = replace(thin, stirrup="none")
    assert not assessed(thin, (goals.COVER,))["cover"].ok
    assert assessed(thin, (goals.COVER,))["cover"].measured != assessed(bare, (goals.COVER,))
    assert assessed(Cantilever(), (goals.COVER,))["cover"].measured == "30\u202fmm"


def test_uncracked_concrete_without_bars_holds_nothing():
    light = replace(balcony(), uniform_load=0.0, top=replace(balcony().top, laid=False))
    assert not light.solve().cracks
    found = assessed(light, ANY)
    assert not found["hold"].ok and not found["anchored"].ok
