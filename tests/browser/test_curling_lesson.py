"""The lesson on slabs that curl in a real browser."""

from tests.browser.calls import assert_the_picture_answers

LESSON = "07_curling"


def test_a_call_is_made_and_the_picture_answers(lesson):
    assert_the_picture_answers(lesson)


def test_the_wheel_is_dragged_all_over_the_plan(panel):
    panel.act("walk_set")  # to the middle
    panel.type("age", "90 d")
    along, across = panel.text("loads.0.x"), panel.text("loads.0.y")
    grip = panel.handle("loads.0.x")
    grip.scroll_into_view_if_needed()
    box = grip.locator("circle").last.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    panel.page.mouse.move(x, y)
    panel.page.mouse.down()
    panel.page.mouse.move(x - 60, y + 40, steps=4)
    panel.page.mouse.up()
    panel.lesson.wait_until_idle()
    assert panel.text("loads.0.x") != along and panel.text("loads.0.y") != across
    assert not panel.error()


def test_up_on_the_keyboard_is_up_on_the_plan(panel):
    grip = panel.handle("loads.0.x")
    grip.focus()
    across = float(panel.text("loads.0.y").split("\u202f")[0])
    grip.press("PageUp")
    panel.lesson.wait_until_idle()
    assert float(panel.text("loads.0.y").split("\u202f")[0]) > across
    along = panel.text("loads.0.x")
    panel.handle("loads.0.x").press("ArrowRight")
    panel.lesson.wait_until_idle()
    assert panel.text("loads.0.x") != along


def test_the_walk_goes_from_the_middle_to_the_corner(panel):
    assert panel.walk_through() == 10 and not panel.error()
