"""Why: the derivation gives what the panel shows, for whatever beam stands in it."""

import subprocess
import sys
from dataclasses import replace

import pytest

from crackkit.launch.places import PROJECT
from crackkit.learning.cantilever import balcony, balcony_on_floor
from crackkit.learning.floor import one_span_loaded, paper_store
from crackkit.learning.simple_beam import canteen_beam, canteen_beam_with_ends
from crackkit.panels.preferences import Preferences
from crackkit.panels.why import Why
from crackkit.structures.cantilever import ArmLoad
from crackkit.structures.fields import fitted
from crackkit.structures.floor_parts import Traveller
from crackkit.structures.simple_beam import PointLoad


class Bench:
    """Stands in for a panel: a structure, its outcome, and who watches."""

    def __init__(self, structure):
        self.watchers = []
        self.change(structure)

    def change(self, structure):
        self.structure, self.outcome = structure, structure.solve()
        for watcher in self.watchers:
            watcher(self)

    def watch(self, watcher):
        self.watchers.append(watcher)


def unfolded(beam, key="cracked_section", choices=None):
    why = Why(Bench(beam), key, choices or Preferences())
    why.view.unfolded = True
    return why


def compared(why):
    """What the panel's numbers say to the derived ones, where the two can be compared."""
    return [step["shown"] for step in why.view.steps if step["shown"]]


def loaded(beam, force=60e3):
    return replace(beam, loads=(PointLoad(force, beam.loads[0].at),))


def dropped(beam, by):
    return replace(beam, top=replace(beam.top, drop=by))


def beams():
    for system in ("SI", "US"):
        beam, ends = canteen_beam(system), canteen_beam_with_ends(system)
        yield f"{system}-plain", loaded(beam)
        yield f"{system}-no-top-bars", replace(loaded(beam), top=replace(beam.top, number=0))
        yield f"{system}-lasting", replace(loaded(beam), duration="lasting")
        yield f"{system}-top-bars-in-mid-depth", dropped(loaded(beam), 180.0)
        yield f"{system}-hogging", loaded(ends, 90e3)


@pytest.mark.parametrize("beam", [pytest.param(b, id=name) for name, b in beams()])
def test_axis_inertia_stress_and_width_are_those_shown(beam):
    assert beam.solve().worst.cracked
    assert compared(unfolded(beam)) == ["✓ as shown above"] * 4


def test_where_both_layers_lie_near_the_face_the_width_is_left_to_the_panel():
    beam = dropped(loaded(canteen_beam()), 380.0)
    why = unfolded(beam)
    assert compared(why) == ["✓ as shown above"] * 3
    assert why.view.steps[-1]["result"] == ""
    assert "together" in why.view.note


@pytest.mark.parametrize("code", ["ACI", "EN"])
def test_the_cracking_moment_is_the_one_shown(code):
    why = unfolded(replace(canteen_beam(), code=code), "cracking_moment")
    assert compared(why) == ["✓ as shown above"]


def test_a_number_that_differs_from_the_panel_is_shown_beside_it():
    why = unfolded(canteen_beam(), "cracking_moment")
    assert why._compared(100.0, 103.0, "size") == "shown above: 103\u202fmm"


def test_a_beam_without_a_crack_gives_no_numbers_but_the_derivation_stays():
    why = unfolded(replace(canteen_beam(), uniform_load=0.0, loads=(PointLoad(0.0, 3000.0),)))
    assert "Nothing cracks" in why.view.note
    assert [step["result"] for step in why.view.steps if step["result"]] == []
    assert len(why.view.steps) == 7


def test_a_crack_that_nothing_holds_gives_no_numbers():
    beam = loaded(canteen_beam())
    why = unfolded(replace(beam, bottom=replace(beam.bottom, number=0)))
    assert "No bar crosses" in why.view.note


def test_nothing_is_worked_out_before_it_is_unfolded():
    why = Why(Bench(loaded(canteen_beam())), choices=Preferences())
    why.above.change(loaded(canteen_beam(), 70e3))
    assert why.view.steps == []
    why.view.unfolded = True
    assert why.view.steps != []


def test_numbers_follow_the_panel_and_the_units():
    choices = Preferences()
    why = unfolded(loaded(canteen_beam()), choices=choices)
    before = [step["result"] for step in why.view.steps]
    assert any("mm" in text for text in before)
    why.above.change(loaded(canteen_beam(), 80e3))
    assert [step["result"] for step in why.view.steps] != before
    choices.system = "US"
    assert any("ksi" in step["result"] for step in why.view.steps)
    assert not any(text.endswith("mm") for _letter, _meaning, text in why.view.letters)


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("drop", [0.0, 40.0])
def test_the_lever_arm_of_a_balcony_gives_the_pull_that_is_shown(system, drop):
    arm = balcony(system)
    why = unfolded(replace(arm, top=replace(arm.top, drop=drop)), "lever_arm")
    assert compared(why) == ["✓ as shown above"] * 2
    lost = float(why.view.steps[-1]["result"])
    depth = arm.depth - arm.top.cover - (12.7 if system == "US" else 12.0) / 2
    assert lost == pytest.approx(drop / depth, abs=1e-4)


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_moment_at_the_root_of_a_balcony_is_the_one_shown(system):
    for arm in (balcony(system), replace(balcony(system), tip_depth=150.0)):
        assert compared(unfolded(arm, "arm_moment")) == ["✓ as shown above"]
    heavy = replace(balcony(system), loads=(ArmLoad(2e3, 500.0), ArmLoad(6e3, 2000.0)))
    assert compared(unfolded(heavy, "arm_moment")) == ["✓ as shown above"]
    assert compared(unfolded(balcony_on_floor(system), "arm_moment")) == ["✓ as shown above"]


def test_the_cracked_section_of_a_tapered_balcony_is_the_one_shown():
    arm = replace(balcony(), tip_depth=150.0)
    assert compared(unfolded(arm)) == ["✓ as shown above"] * 4


def test_a_balcony_that_nothing_holds_gives_no_lever_arm():
    arm = balcony()
    why = unfolded(replace(arm, top=replace(arm.top, laid=False)), "lever_arm")
    assert "No bar crosses" in why.view.note


def test_bars_near_the_other_face_are_said_to_be_left_out():
    arm = balcony()
    why = unfolded(replace(arm, bottom=replace(arm.bottom, laid=True)), "lever_arm")
    assert "left out" in why.view.note and why.view.steps[-1]["result"]


def test_an_outcome_does_as_well_as_a_panel():
    why = Why(loaded(canteen_beam()).solve(), choices=Preferences())
    why.view.unfolded = True
    assert compared(why) == ["✓ as shown above"] * 4


def test_why_cracks_lean_has_no_numbers_to_put_in():
    why = unfolded(canteen_beam(), "lean")
    assert [step["result"] for step in why.view.steps] == [""] * 4
    assert why.view.error == ""


def test_an_unknown_derivation_is_refused_at_once():
    with pytest.raises(KeyError):
        Why(Bench(canteen_beam()), "perpetual_motion", Preferences())


def test_without_a_kernel_the_mathematics_stands_between_dollars():
    html = Why(Bench(canteen_beam()), choices=Preferences()).view.still()
    assert html.startswith("<details>")
    assert html.count("$\\displaystyle") == 7


def test_the_page_never_loads_sympy():
    program = (
        "import sys; from crackkit.learning.simple_beam import canteen_beam;"
        "from crackkit.panels.why import Why; w = Why(canteen_beam().solve());"
        "w.view.unfolded = True; assert w.view.steps; assert 'sympy' not in sys.modules"
    )
    ended = subprocess.run([sys.executable, "-c", program], cwd=PROJECT, capture_output=True)
    assert ended.returncode == 0, ended.stderr.decode()


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_moment_over_support_b_is_the_one_shown_wherever_the_loads_stand(system):
    floor = paper_store(system)
    fixed = replace(floor, left_end="fixed")
    shorter, _moved = fitted(floor, {"spans.0.length": 3300.0})
    away = [fitted(floor, {"loads.0.at": share * floor.length})[0] for share in (0.0, 0.2, 0.9)]
    for one in (floor, one_span_loaded(system), fixed, shorter, *away):
        assert compared(unfolded(one, "over_support")) == ["✓ as shown above"]


def test_what_the_derivation_leaves_out_is_said():
    floor = paper_store()
    sunk = fitted(floor, {"supports.1.sunk": 10.0})[0]
    assert "sunk" in unfolded(sunk, "over_support").view.note
    light = fitted(floor, {"top.spacing": 175.0, "shifted": True})[0]
    why = unfolded(light, "over_support")
    assert "cracks shift" in why.view.note and "shown above" in compared(why)[0]
    two = replace(floor, loads=(*floor.loads, Traveller(5e3, 1000.0)))
    assert "move one away" in unfolded(two, "over_support").view.note
