"""The live panel: what a change does, and what a refused change leaves alone."""

import pytest

from crackkit.learning.simple_beam import canteen_beam, walk
from crackkit.panels.control_rows import topics
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.fields import inputs
from crackkit.structures.ground_slab import GroundSlab
from crackkit.structures.tension_member import TensionMember

WORKING = "being worked out"


@pytest.fixture
def panel():
    return Panel(canteen_beam(), choices=Preferences())


def changed(panel, **message):
    count = panel.view.done + 1
    panel.view.changes = {"n": count, "set": {}, "drag": {}} | message


def act(panel, name, value=None):
    panel._on_message(panel.view, {"kind": "act", "name": name, "value": value}, [])


def typed(panel, path, text):
    panel._on_message(panel.view, {"kind": "text", "path": path, "text": text}, [])


def test_a_slider_changes_structure_picture_and_number(panel):
    before = panel.view.svg
    changed(panel, set={"loads.0.force": 45.0})
    assert panel.structure.loads[0].force == 45e3
    assert panel.view.svg != before
    assert panel.view.values["loads.0.force"][1] == "45.0\u202fkN"
    assert panel.view.done == 1


def test_a_refused_value_is_explained_in_the_readers_units_and_the_last_picture_stays(panel):
    panel.preferences.system = "US"
    before, beam = panel.view.svg, panel.structure
    typed(panel, "span", "70 ft")
    assert "Span" in panel.view.error
    assert "70.0\u202fft" in panel.view.error and "39.4\u202fft" in panel.view.error
    assert panel.view.svg == before
    assert panel.structure == beam


def test_a_text_without_meaning_is_refused_in_place(panel):
    refused = panel.view.refused
    typed(panel, "bottom.cover", "two fingers")
    assert "Cover" in panel.view.error
    assert panel.view.refused == refused + 1


def test_a_good_value_clears_the_message(panel):
    typed(panel, "span", "700 m")
    assert panel.view.error
    typed(panel, "span", "19.5 ft")
    assert not panel.view.error
    assert panel.structure.span == pytest.approx(19.5 * 304.8)


def test_a_load_follows_when_the_beam_is_shortened_and_the_reader_is_told(panel):
    changed(panel, set={"loads.0.at": 5.8})
    changed(panel, set={"span": 3.0})
    assert panel.structure.loads[0].at == 3000.0
    assert "Place" in panel.view.note


def test_dragging_a_support_keeps_the_length_of_the_beam(panel):
    length = panel.structure.length
    changed(panel, drag={"support.left": 900.0})
    assert panel.structure.length == pytest.approx(length)
    assert panel.structure.overhang_left == 900.0


def test_units_change_what_is_shown_and_nothing_of_the_beam(panel):
    beam = panel.structure
    act(panel, "units", "US")
    assert panel.structure is beam
    assert panel.view.values["span"][1] == "19.7\u202fft"
    assert "kip" in panel.view.svg


def test_the_theme_repaints_and_is_remembered(panel):
    act(panel, "theme", "dark")
    assert panel.view.shown_theme == "dark"
    assert Preferences().theme == "dark"


def test_loads_can_be_added_up_to_three_and_taken_away_down_to_one(panel):
    for _again in range(4):
        act(panel, "add_load")
    assert len(panel.structure.loads) == 3
    for _again in range(4):
        act(panel, "drop_load")
    assert len(panel.structure.loads) == 1
    assert not panel.view.error


def test_every_input_has_a_control(panel):
    rows = [row["path"] for topic in panel.view.topics for row in topic["rows"]]
    assert sorted(rows) == sorted(item.path for item in inputs(panel.structure))


def test_locked_inputs_have_no_control():
    panel = Panel(canteen_beam(), locked=("span", "loads"), choices=Preferences())
    rows = [row["path"] for topic in panel.view.topics for row in topic["rows"]]
    assert not [path for path in rows if path == "span" or path.startswith("loads")]


def test_a_handle_that_would_change_a_locked_input_cannot_be_dragged():
    panel = Panel(canteen_beam(), locked=("span", "loads"), choices=Preferences())
    assert 'data-path="bottom.drop"' in panel.view.svg
    assert "support." not in panel.view.svg and "loads." not in panel.view.svg


def test_starting_over_brings_the_first_beam_back(panel):
    changed(panel, set={"span": 4.0})
    act(panel, "reset")
    assert panel.structure == canteen_beam()


def test_the_working_unfolds_with_clauses_and_follows_the_beam(panel):
    act(panel, "working")
    before = panel.view.more
    assert "EN 1992-1-1" in before and "f_s" in before
    changed(panel, set={"loads.0.force": 20.0})
    assert panel.view.more != before
    act(panel, "working")
    assert panel.view.more == ""


def test_an_error_of_ours_is_shown_and_not_swallowed(panel):
    panel.draw = lambda outcome, view: 1 / 0
    with pytest.raises(ZeroDivisionError):
        changed(panel, set={"span": 5.0})
    assert "went wrong" in panel.view.error


def test_without_a_kernel_a_still_picture_with_words_stays(panel):
    bundle = panel._repr_mimebundle_()
    data = bundle[0] if isinstance(bundle, tuple) else bundle
    assert data["text/html"].startswith('<img alt="The bottom is stretched')
    assert "data:image/svg+xml;base64," in data["text/html"]
    assert data["text/plain"].startswith("The bottom is stretched")


def test_the_walk_sets_the_panel_and_tells_what_happened():
    panel = Panel(canteen_beam(), walk=walk(), choices=Preferences())
    act(panel, "walk_set")
    assert panel.structure.loads[0].at == 3000.0
    act(panel, "walk_told")
    assert "widest crack: 0.23" in panel.view.walk["answer"]
    act(panel, "walk_next")
    assert panel.view.walk["answer"] == ""
    act(panel, "walk_set")
    assert panel.outcome.verdict.key == "unheld"


def test_a_step_that_starts_anew_is_told_beside_the_start():
    steps = walk("SI")
    panel = Panel(canteen_beam("SI"), choices=Preferences(), walk=steps)
    panel.guide.place = 1
    panel.guide.act("walk_set")
    panel.guide.act("walk_told")
    assert "beside the start" in panel.view.walk["answer"]
    assert "→ not held" in panel.view.walk["answer"]


def test_a_pulled_member_remembers_its_cracks_when_the_slider_goes_down():
    panel = Panel(TensionMember(), choices=Preferences())
    changed(panel, set={"pull": 120.0})
    cracks = len(panel.outcome.cracks)
    changed(panel, set={"pull": 10.0})
    assert cracks > 3
    assert len(panel.outcome.cracks) == cracks
    act(panel, "fresh")
    assert not panel.outcome.cracks


def test_a_button_brings_the_next_crack_of_a_pulled_member():
    panel = Panel(TensionMember(), choices=Preferences())
    act(panel, "next_crack")
    act(panel, "next_crack")
    assert len(panel.outcome.cracks) == 2
    assert panel.view.values["pull"][0] > 0


def test_a_choice_of_numbers_comes_back_from_the_page_as_text():
    panel = Panel(TensionMember(), choices=Preferences())
    changed(panel, set={"number": "2"})
    assert panel.structure.number == 2 and not panel.view.error


def test_a_slider_of_ages_can_run_by_itself():
    rows = {
        row["path"]: row
        for topic in topics(GroundSlab(), "SI")
        for row in topic["rows"]
        if row["kind"] == "slider"
    }
    assert rows["age"]["runs"] and rows["age"]["bounds"] == [1.0, 3650.0, 1.0]
    assert "runs" not in rows["curing"]


def step(panel, n: int, **changes) -> None:
    panel.view.changes = {"n": n, "set": changes, "drag": {}}


def test_what_takes_long_is_drawn_as_before_until_the_page_asks_for_the_whole():
    panel = Panel(CornerSlab(diagonals="16"))
    assert not panel.view.unfinished
    step(panel, 1, thickness=160)
    assert panel.view.unfinished and WORKING in panel.view.svg
    panel._on_message(panel.view, {"kind": "act", "name": "finish"}, [])
    assert not panel.view.unfinished and WORKING not in panel.view.svg
    assert panel.view.svg == Panel(panel.structure).view.svg


def test_another_age_of_a_slab_that_is_known_is_drawn_as_a_whole_at_once():
    panel = Panel(CornerSlab(diagonals="16"))
    step(panel, 1, age=90)
    assert not panel.view.unfinished
    assert panel.view.svg == Panel(panel.structure).view.svg


def test_a_change_that_is_no_move_of_a_hand_is_drawn_as_a_whole():
    panel = Panel(CornerSlab(diagonals="16"))
    panel.apply({"thickness": 170.0})
    assert not panel.view.unfinished
    step(panel, 1, thickness=180)
    panel.view.room = 900  # the page has another width
    assert not panel.view.unfinished and WORKING not in panel.view.svg
