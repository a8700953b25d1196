"""What the driver does on a panel, shown on a stand-in with one control of each kind."""

import pytest

from tests.lessons.panel_moves import is_panel, panel_moves
from tests.lessons.test_widget_driver import notebook_with
from tests.lessons.widget_driver import drive

BROKEN_PANEL = """
from crackkit.panels.panel import Panel
from crackkit.structures.simple_beam import SimpleBeam
panel = Panel(SimpleBeam(), locked=("loads", "top", "bottom", "support"))
longest = max(row["bounds"][1] for topic in panel.view.topics for row in topic["rows"]
              if row["path"] == "span")
panel.watch(lambda panel: 1 / (panel.view.values["span"][0] - longest))
panel
"""


@pytest.fixture
def panel():
    rows = [
        {"path": "span", "kind": "slider"},
        {"path": "bars", "kind": "choice", "choices": [["#4", "#4"], ["#5", "#5"]]},
        {"path": "hooked", "kind": "switch"},
    ]
    return {
        "topics": [{"label": "Beam", "rows": rows}],
        "values": {"span": [5.0, "5 m"], "bars": ["#4", ""], "hooked": [False, ""]},
        "bounds": {"span": [2.0, 8.0, 0.1]},
        "svg": '<g class="ck-handle" data-path="load" aria-valuemin="1" aria-valuemax="3" '
        'aria-valuenow="2"></g><g class="ck-handle" data-path="live" data-axis="toggle"></g>',
        "open_places": {"rows": ["top, over B", "bottom, in span 2"]},
        "buttons": [["reset", "Start over"]],
        "walk": {"text": "Try this", "next": False},
        "changes": {},
    }


def sent(panel, kind, path):
    changes = [m["state"]["changes"] for m in panel_moves(panel) if "state" in m]
    return [change[kind][path] for change in changes if path in change[kind]]


def test_a_panel_is_known_by_its_state(panel):
    assert is_panel(panel)
    assert not is_panel({"value": 3})


def test_places_without_bars_are_shown_and_switches_on_the_drawing_left_to_their_controls(panel):
    acts = [m["content"] for m in panel_moves(panel) if "content" in m]
    assert [a["value"] for a in acts if a["name"] == "show_place"] == [0, 1]
    assert sent(panel, "drag", "live") == [] and sent(panel, "drag", "load")


def test_a_panel_s_slider_goes_to_both_ends_and_comes_back(panel):
    values = sent(panel, "set", "span")
    assert (min(values), max(values), values[-1]) == (2.0, 8.0, 5.0)
    assert len(values) == 23  # both ends, twenty places between them, and back


def test_every_choice_and_both_sides_of_a_switch_are_tried(panel):
    assert sent(panel, "set", "bars") == ["#4", "#5", "#4"]
    assert sent(panel, "set", "hooked") == [True, False]


def test_a_control_tried_in_another_panel_goes_to_its_ends_only_unless_its_range_is_new(panel):
    tried = set()
    list(panel_moves(panel, tried))
    panel["topics"][0]["rows"].append({"path": "depth", "kind": "slider"})
    panel["values"]["depth"], panel["bounds"]["depth"] = [300.0, ""], [100.0, 900.0, 10.0]
    again = [m["state"]["changes"] for m in panel_moves(panel, tried) if "state" in m]
    spans = [change["set"]["span"] for change in again if "span" in change["set"]]
    assert spans == [2.0, 8.0, 5.0, 5.0]
    assert [c["set"]["bars"] for c in again if "bars" in c["set"]] == ["#4", "#5", "#4"]
    assert [c["drag"]["load"] for c in again if "load" in c["drag"]] == [1.0, 3.0, 2.0, 2.0]
    assert sum("depth" in change["set"] for change in again) == 23
    panel["bounds"]["span"] = [2.0, 9.0, 0.1]
    again = [m["state"]["changes"] for m in panel_moves(panel, tried) if "state" in m]
    assert sum("span" in change["set"] for change in again) == 23


def test_a_handle_is_dragged_to_both_ends_and_back(panel):
    values = sent(panel, "drag", "load")
    assert (min(values), max(values), values[-1]) == (1.0, 3.0, 2.0)


def test_bounds_that_another_control_has_changed_meanwhile_are_kept(panel):
    panel["topics"][0]["rows"].append({"path": "depth", "kind": "slider"})
    panel["values"]["depth"], panel["bounds"]["depth"] = [300.0, ""], [100.0, 900.0, 10.0]
    depths = []
    for message in panel_moves(panel):
        wanted = message.get("state", {}).get("changes", {}).get("set", {})
        if wanted.get("span") == 2.0:
            panel["bounds"]["depth"] = [100.0, 500.0, 10.0]
        depths += [wanted["depth"]] if "depth" in wanted else []
    assert max(depths) == 500.0


def test_buttons_walk_units_and_themes_are_used(panel):
    acts = [m["content"]["name"] for m in panel_moves(panel) if m["method"] == "custom"]
    assert {"reset", "walk_set", "walk_told", "units", "theme"} <= set(acts)


def test_an_error_behind_a_panel_s_control_is_caught(tmp_path):
    result = drive(notebook_with(tmp_path, BROKEN_PANEL))
    assert any("ZeroDivisionError" in error for error in result.errors), result
