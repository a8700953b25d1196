"""The lesson on choosing bars, used as a learner uses it."""

from tests.browser.panel_page import PanelPage

LESSON = "05_bar_choice"


def test_a_call_is_made_and_the_picture_answers(lesson):
    call = lesson.page.locator(".ck-exercise").first
    call.scroll_into_view_if_needed()
    before = call.locator(".ck-picture").inner_html()
    call.locator("[role='radio']", has_text="more than half").click()
    lesson.wait_until_idle()
    assert call.locator(".ck-picture").inner_html() != before
    assert call.locator(".ck-headline").get_attribute("data-good") == "true"
    lesson.screenshot("call")


def drag(panel, dot, across: float, down: float) -> None:
    dot.scroll_into_view_if_needed()
    box = dot.locator("circle").last.bounding_box()
    x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
    panel.page.mouse.move(x, y)
    panel.page.mouse.down()
    panel.page.mouse.move(x + across, y + down, steps=6)
    panel.page.mouse.up()
    panel.lesson.wait_until_idle()


def test_cover_and_spacing_are_dragged_on_the_drawing(panel):
    assert {"cover", "spacing"} <= set(panel.handles())
    for path, across, down in (("cover", 0, -25), ("spacing", -30, 0)):
        before = panel.picture()
        drag(panel, panel.handle(path).first, across, down)
        assert panel.picture() != before, f"dragging {path} changes nothing"
        assert not panel.error()


def test_the_spacing_is_dragged_in_the_chart_too(panel):
    before = panel.text("spacing")
    dots = panel.handle("spacing")
    assert dots.count() == 2
    drag(panel, dots.last, -25, 0)
    assert panel.text("spacing") != before and not panel.error()


def test_a_key_moves_each_of_the_two_dots_and_stays_on_it(panel):
    for dot in (panel.handle("spacing").first, panel.handle("spacing").last):
        dot.focus()
        before = panel.text("spacing")
        for _press in range(2):
            panel.page.keyboard.press("ArrowRight")
            panel.lesson.wait_until_idle()
        assert panel.text("spacing") != before


def test_the_button_gives_the_same_steel_as_thinner_bars(panel):
    panel.row("size")
    before = panel.text("spacing")
    panel.root.get_by_role("button", name="Same steel, thinner bars").click()
    panel.lesson.wait_until_idle()
    assert panel.text("spacing") != before
    assert panel.row("size").locator("select").input_value() == "14"


def test_the_walk_goes_from_thin_bars_to_a_straight_pull(panel):
    told = []
    for step in range(7):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        told.append(panel.root.locator(".ck-walk-answer").inner_text())
        panel.lesson.screenshot(f"walk_{step + 1}")
        if step < 6:
            panel.act("walk_next")
    assert all("→" in text for text in told)
    assert not panel.error()


def test_the_wash_floor_is_made_to_hold(lesson):
    panel = PanelPage(lesson, ".ck-panel:has([data-path='cross_size']) >> nth=1")
    panel.row("fibres").locator("select").select_option("steel_30")
    panel.row("size").locator("select").select_option("14")
    panel.row("cross_size").locator("select").select_option("14")
    lesson.wait_until_idle()
    panel.type("spacing", "120 mm")
    panel.type("cross_spacing", "120 mm")
    panel.type("cover", "35 mm")
    lesson.screenshot("task")
    lesson.page.locator("[data-act='check']").click()
    lesson.wait_until_idle()
    headline = lesson.page.locator(".ck-exercise.ck-task .ck-headline")
    assert headline.get_attribute("data-good") == "true", headline.inner_text()


def test_both_derivations_unfold_with_the_numbers_of_the_panel(panel):
    for k in range(2):
        why = panel.page.locator(".ck-why").nth(k)
        why.scroll_into_view_if_needed()
        why.locator("summary").click()
        why.locator(".ck-why-numbers, li").first.wait_for()
        panel.lesson.wait_until_idle()
        assert "numbers put in" in why.inner_text()
