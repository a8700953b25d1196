"""The lesson on the cantilever, used as a learner uses it."""

from tests.browser.panel_page import PanelPage

LESSON = "03_cantilever"


def test_every_handle_of_the_balcony_can_be_dragged(panel):
    assert {"loads.0.at", "top.drop"} <= set(panel.handles())
    for path in panel.handles():
        across, down = (0, 6) if path.endswith("drop") else (-40, 0)
        across = 40 if path.endswith("start") else across
        before = panel.picture()
        panel.drag(path, across, down)
        assert panel.picture() != before, f"dragging {path} changes nothing"
        assert not panel.error()


def test_what_means_nothing_has_no_control(panel):
    assert "wall" in panel.paths() and "back_span" not in panel.paths()
    panel.row("back").locator("select").select_option("floor")
    panel.lesson.wait_until_idle()
    assert "back_span" in panel.paths() and "wall" not in panel.paths()


def test_the_walk_goes_from_trodden_bars_to_the_short_span_behind(panel):
    told = []
    for step in range(5):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        told.append(panel.root.locator(".ck-walk-answer").inner_text())
        panel.lesson.screenshot(f"walk_{step + 1}")
        if step < 4:
            panel.act("walk_next")
    assert "a third of the strength" in told[0] and "→ falls" in told[1]
    assert "hold the slab down" in told[4] and not panel.error()
    assert "has to hold it down" in panel.root.inner_text()  # the caution


def test_the_top_is_painted_and_found_right(lesson):
    exercise = lesson.page.locator(".ck-predict").first
    strip = exercise.locator(".ck-strip[data-face='top']")
    strip.focus()
    strip.press("Home")
    strip.press(" ")
    for _cell in range(23):
        strip.press("Shift+ArrowRight")
    exercise.locator("[data-act='call']").click()
    lesson.wait_until_idle()
    assert "✓" in exercise.locator(".ck-headline").inner_text()
    assert "wall" in exercise.locator(".ck-remark").first.inner_text()


def test_the_rain_roof_is_made_to_hold(lesson):
    panel = PanelPage(lesson, ".ck-panel:has([data-path='top.size']) >> nth=1")
    panel.row("top.size").locator("select").select_option("12")
    panel.row("top.hooked").locator("input").click()
    lesson.wait_until_idle()
    panel.type("top.spacing", "140 mm")
    panel.type("top.behind", "380 mm")
    lesson.page.locator("[data-act='check']").click()
    lesson.wait_until_idle()
    headline = lesson.page.locator(".ck-exercise.ck-task .ck-headline")
    assert headline.get_attribute("data-good") == "true", headline.inner_text()


def test_a_derivation_unfolds_with_the_numbers_of_the_panel(panel):
    why = panel.page.locator(".ck-why").nth(1)
    why.scroll_into_view_if_needed()
    why.locator("summary").click()
    why.locator(".ck-why-numbers, li").first.wait_for()
    panel.lesson.wait_until_idle()
    assert why.inner_text().count("as shown above") == 2
