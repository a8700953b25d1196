"""The lesson on slabs that curl in a real browser."""

LESSON = "07_curling"


def test_a_call_is_made_and_the_picture_answers(lesson):
    call = lesson.page.locator(".ck-exercise").first
    call.locator("[role='radio'], input[type='radio']").first.click()
    lesson.wait_until_idle()
    lesson.screenshot("call")


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
    steps = 0
    while True:
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        panel.lesson.screenshot(f"walk_{steps + 1}")
        steps += 1
        onward = panel.root.locator("button[data-act='walk_next']")
        if not onward.is_visible() or onward.is_disabled():
            break
        panel.act("walk_next")
    assert steps == 10 and not panel.error()
