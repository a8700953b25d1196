"""A fresh slab in the live panel: everything a reader can press or type."""

import pytest

from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences
from crackkit.structures.fresh_slab import FreshSlab


@pytest.fixture
def panel():
    return Panel(FreshSlab(), choices=Preferences())


def act(panel, name, value=None):
    panel._on_message(panel.view, {"kind": "act", "name": name, "value": value}, [])


def typed(panel, path, text):
    panel._on_message(panel.view, {"kind": "text", "path": path, "text": text}, [])


def changed(panel, **message):
    count = panel.view.done + 1
    panel.view.changes = {"n": count, "set": {}, "drag": {}} | message


def test_sliders_run_in_degrees_and_miles_of_the_reader(panel):
    act(panel, "units", "US")
    assert panel.view.values["air"] == [86.0, "86\u202f°F"]
    assert panel.view.bounds["concrete"] == [41.0, 104.0, 1.0]
    changed(panel, set={"concrete": 68.0, "wind": 10.0})
    assert panel.structure.concrete == pytest.approx(20.0, abs=1e-12)
    assert panel.structure.wind == pytest.approx(16.09344)
    assert not panel.view.error


def test_both_ends_of_every_slider_are_allowed_in_both_systems(panel):
    for system in ("US", "SI"):
        act(panel, "units", system)
        for path, (low, high, _step) in dict(panel.view.bounds).items():
            for end in (low, high):
                changed(panel, set={path: end})
                assert panel.view.error == ""


def test_a_refused_temperature_is_told_in_the_readers_degrees(panel):
    act(panel, "units", "US")
    typed(panel, "concrete", "150 °F")
    assert "150\u202f°F is outside 41 to 104\u202f°F" in panel.view.error
    typed(panel, "concrete", "30 °C")
    assert panel.view.error == "" and panel.structure.concrete == 30.0


def test_the_ring_can_be_dragged_unless_the_wind_is_locked(panel):
    assert 'data-path="wind"' in panel.view.svg
    changed(panel, drag={"wind": 33.0})
    assert panel.structure.wind == 33.0
    assert 'data-path="wind"' not in Panel(FreshSlab(), locked=("wind",)).view.svg


def test_buttons_change_the_weather(panel):
    for name in ("wind_break", "fog", "cooler", "cooler"):
        act(panel, name)
    assert (panel.structure.wind, panel.structure.humidity) == (10.0, 0.95)
    assert "stays wet" in panel.view.svg and not panel.view.error


def test_working_code_and_files_are_there(panel):
    act(panel, "working")
    assert "Uno 1998" in panel.view.more
    act(panel, "code")
    made = {}
    exec(panel.code(), made)
    assert "FreshSlab(wind=20.0" in panel.view.more
    assert eval(panel.code().splitlines()[-1], made) == panel.structure
    for name in ("save_svg", "save_png", "save_pdf", "reset"):
        act(panel, name)
    assert not panel.view.error


def test_the_grave_caution_comes_first(panel):
    assert panel.view.cautions[0][1] is True
    assert "Plastic shrinkage" in panel.view.cautions[0][0]
    assert [grave for _text, grave in panel.view.cautions[1:]] == [False, False]
