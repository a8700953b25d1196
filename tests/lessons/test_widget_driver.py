"""The driver itself: it must catch what a lesson could hide."""

import nbformat
import pytest

from tests.lessons.widget_driver import drive, states

PANEL = """
import ipywidgets
{control}
def follow(change):
    {body}
control.observe(follow, "value")
control
"""
SLIDER = "control = ipywidgets.FloatSlider(min=0, max=10, step=0.5, value=2)"
MENU = "control = ipywidgets.Dropdown(options=['tight', 'wide', 'open'])"
BOX = "control = ipywidgets.Checkbox(value=False)"


def notebook_with(folder, *sources):
    notebook = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(s) for s in sources])
    file = folder / "lesson.ipynb"
    nbformat.write(notebook, file)
    return file


@pytest.mark.parametrize(
    ("control", "broken"),
    [
        (SLIDER, "1 / (change.new - 10)"),
        (SLIDER, "1 / change.new"),
        (MENU, "{'tight': 1, 'wide': 2}[change.new]"),
        (BOX, "assert not change.new, 'ticked'"),
    ],
    ids=["slider, upper end", "slider, lower end", "menu, last option", "box, ticked"],
)
def test_an_error_that_only_a_moved_control_meets_is_caught(tmp_path, control, broken):
    result = drive(notebook_with(tmp_path, PANEL.format(control=control, body=broken)))
    assert len(result.errors) == 1, result


def test_a_cell_that_fails_is_caught(tmp_path):
    sound = PANEL.format(control=SLIDER, body="pass")
    result = drive(notebook_with(tmp_path, sound, "1 / 0"))
    assert ["ZeroDivisionError" in error for error in result.errors] == [True]


def test_sound_controls_are_moved_over_their_whole_range(tmp_path):
    told = "open('told.txt', 'a').write(f'{change.new}\\n')"
    result = drive(notebook_with(tmp_path, PANEL.format(control=SLIDER, body=told)))
    values = {float(line) for line in (tmp_path / "told.txt").read_text().split()}
    assert result.errors == []
    assert len(values) >= 20
    assert (min(values), max(values)) == (0.0, 10.0)


def test_a_control_ends_where_it_was():
    slider = {"_model_name": "IntSliderModel", "min": 1, "max": 9, "step": 2, "value": 5}
    assert list(states(slider))[-1] == {"value": 5}
    assert {move["value"] for move in states(slider)} == {1, 3, 5, 7, 9}


def test_what_is_no_control_is_left_alone():
    assert list(states({"_model_name": "LayoutModel"})) == []
