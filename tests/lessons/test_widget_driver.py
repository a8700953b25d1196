"""The driver itself: it must catch what a lesson could hide."""

import ipywidgets
import nbformat
import pytest

from tests.lessons.widget_driver import drive, moves

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


def test_a_control_that_a_button_brings_to_light_is_moved_too(tmp_path):
    inner = PANEL.format(control=SLIDER, body="1 / (change.new - 10)")
    outer = f"""
import ipywidgets
button = ipywidgets.Button(description="Show me")
button.on_click(lambda _: exec({inner!r}, {{}}))
button
"""
    result = drive(notebook_with(tmp_path, outer))
    assert ["ZeroDivisionError" in error for error in result.errors] == [True]


def test_a_failing_button_is_caught(tmp_path):
    broken = "import ipywidgets\nb = ipywidgets.Button()\nb.on_click(lambda _: 1 / 0)\nb"
    assert len(drive(notebook_with(tmp_path, broken)).errors) == 1


@pytest.mark.parametrize(
    "control",
    [
        ipywidgets.IntSlider(value=5, min=1, max=9, step=2),
        ipywidgets.FloatSlider(value=0.3, min=0.2, max=0.4, step=0.01),
        ipywidgets.FloatLogSlider(value=10, min=-1, max=3),
        ipywidgets.BoundedFloatText(value=3, min=0, max=7),
        ipywidgets.IntRangeSlider(value=(2, 5), min=0, max=12),
        ipywidgets.Dropdown(options=["a", "b", "c"], value="b"),
        ipywidgets.ToggleButtons(options=["a", "b"]),
        ipywidgets.RadioButtons(options=["a", "b", "c"]),
        ipywidgets.SelectionSlider(options=[1, 2, 4]),
        ipywidgets.Checkbox(value=True),
    ],
    ids=lambda control: type(control).__name__,
)
def test_a_control_takes_every_move_and_ends_where_it_was(control):
    before, seen = control.value, []
    control.observe(lambda change: seen.append(change.new), "value")
    for message in moves(control.get_state()):
        control.set_state(message["state"])
    assert control.value == pytest.approx(before)
    assert len(seen) >= 2
    if isinstance(control, ipywidgets.IntSlider | ipywidgets.FloatSlider):
        assert (min(seen), max(seen)) == (control.min, control.max)


def test_what_is_no_control_is_left_alone():
    assert list(moves(ipywidgets.Layout().get_state())) == []
