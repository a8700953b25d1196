"""The lesson on the simple beam, used as a learner uses it."""

import pytest

from tests.browser.panel_page import PanelPage

LESSON = "02_simple_beam"
SIZES = [(1280, 900), (800, 900)]


def test_every_control_of_the_panel_changes_something_and_none_breaks(panel):
    for path in panel.paths():
        row = panel.row(path)
        before = panel.picture()
        if row.locator(".ck-range").count():
            row.locator(".ck-range").press("ArrowRight")
        elif row.locator("select").count():
            choose_another(row.locator("select"))
        else:
            row.locator("input").click()
        panel.lesson.wait_until_idle()
        assert not panel.error(), path
        if row.locator(".ck-range").count() and panel.picture() == before:
            row.locator(".ck-range").press("ArrowLeft")  # it stood at the upper end
            panel.lesson.wait_until_idle()
        assert panel.picture() != before, f"{path} changes nothing"


def choose_another(select):
    values = select.locator("option").evaluate_all("all => all.map(option => option.value)")
    select.select_option(next(value for value in values if value != select.input_value()))


def test_an_answer_of_the_kernel_leaves_alone_what_is_half_typed(panel):
    entry = panel.row("depth").locator(".ck-entry")
    entry.fill("555 mm")
    slider = panel.row("width").locator(".ck-range")
    slider.evaluate(
        "range => { range.stepUp(3); range.dispatchEvent(new Event('input', {bubbles: true})); }"
    )
    panel.lesson.wait_until_idle()
    assert entry.input_value() == "555 mm"
    entry.press("Enter")
    panel.lesson.wait_until_idle()
    assert entry.input_value() == "555\u202fmm" and not panel.error()


def test_every_handle_can_be_dragged_and_moved_by_keys(panel):
    for path in panel.handles():
        across, down = (0, 6) if path.endswith("drop") else (-50 if "right" in path else 50, 0)
        before = panel.picture()
        panel.drag(path, across, down)
        assert panel.picture() != before, f"dragging {path} changes nothing"
        before = panel.handle(path).get_attribute("aria-valuenow")
        panel.handle(path).press("ArrowUp" if path.endswith("drop") else "ArrowLeft")
        panel.lesson.wait_until_idle()
        assert panel.handle(path).get_attribute("aria-valuenow") != before, path
        assert not panel.error()


def test_a_handle_and_its_slider_stay_together(panel):
    panel.drag("loads.0.at", 80, 0)
    shown = float(panel.text("loads.0.at").split("\u202f")[0])
    handle = float(panel.handle("loads.0.at").get_attribute("aria-valuenow"))
    assert shown == pytest.approx(handle / 1000, abs=0.006)


def test_a_refused_value_is_told_in_place_and_the_picture_stays(panel):
    before = panel.picture()
    panel.type("span", "90 m")
    assert "Span" in panel.error() and "12.00\u202fm" in panel.error()
    assert panel.picture() == before
    assert panel.text("span") == "6.00\u202fm"
    panel.type("span", "20 ft")
    assert not panel.error()
    assert panel.text("span") == "6.10\u202fm"


def test_units_and_theme_switch_and_switch_back(panel):
    before = panel.picture()
    panel.choose("units", "US")
    assert "kip" in panel.picture() and "kN" not in panel.picture()
    panel.choose("theme", "dark")
    assert panel.root.get_attribute("data-ck-theme") == "dark"
    panel.choose("theme", "projector")
    panel.choose("theme", "light")
    panel.choose("units", "SI")
    assert panel.picture() == before


def test_the_walk_leads_through_its_steps(panel):
    for step in range(5):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        if step < 4:
            panel.act("walk_next")
    assert not panel.error()


def test_working_and_code_unfold_and_a_picture_can_be_saved(panel):
    panel.act("working")
    assert "EN 1992-1-1" in panel.root.locator(".ck-more").inner_text()
    panel.act("code")
    assert panel.root.locator(".ck-more textarea").input_value().startswith("SimpleBeam(")
    for kind in ("svg", "png", "pdf"):
        with panel.page.expect_download() as download:
            panel.root.locator(f"button[data-act='save_{kind}']").click()
        assert download.value.path().stat().st_size > 5000


def predict_the_bottom(lesson):
    """Paint the whole bottom, by keyboard, and commit."""
    exercise = lesson.page.locator(".ck-predict").first
    if exercise.locator("[data-act='again']").is_visible():
        return exercise
    strip = exercise.locator(".ck-strip[data-face='bottom']")
    strip.focus()
    strip.press("Home")
    strip.press(" ")
    for _cell in range(23):
        strip.press("Shift+ArrowRight")
    exercise.locator("[data-act='call']").click()
    lesson.wait_until_idle()
    return exercise


def test_a_prediction_is_marked_only_after_it_was_made(lesson):
    exercise = lesson.page.locator(".ck-predict").first
    if exercise.locator("[data-act='again']").is_visible():
        exercise.locator("[data-act='again']").click()
        lesson.wait_until_idle()
    assert not exercise.locator(".ck-headline").is_visible()
    predict_the_bottom(lesson)
    assert "✓" in exercise.locator(".ck-headline").inner_text()
    assert exercise.locator(".ck-remark").count() >= 1


def test_the_task_is_solved_and_found_again_after_a_reload(lesson):
    predict_the_bottom(lesson)
    solve_the_task(lesson)
    lesson.page.reload()
    lesson.wait_until_run()
    assert "kg" in lesson.page.locator(".ck-exercise.ck-task .ck-tally").inner_text()
    told = lesson.page.locator(".ck-finish").inner_text()
    assert "Make it hold: passed" in told and "0 of 3" not in told


def solve_the_task(lesson):
    """Lay four bars of 20 mm in the beam over the wash bay, and have it checked."""
    panel = PanelPage(lesson, ".ck-panel:has([data-path='bottom.size']) >> nth=1")
    panel.row("bottom.size").locator("select").select_option("20")
    lesson.wait_until_idle()
    panel.type("bottom.number", "4")
    check = lesson.page.locator("[data-act='check']")
    check.click()
    lesson.wait_until_idle()
    headline = lesson.page.locator(".ck-exercise.ck-task .ck-headline")
    assert headline.get_attribute("data-good") == "true", headline.inner_text()


def test_a_question_is_answered_and_the_reason_given(lesson):
    quiz = lesson.page.locator(".ck-quiz")
    first = quiz.locator(".ck-ask").inner_text()
    quiz.locator("[role='radio']").first.click()
    lesson.wait_until_idle()
    assert quiz.locator(".ck-option-why").count() >= 1
    quiz.locator("[data-act='another']").click()
    lesson.wait_until_idle()
    assert quiz.locator(".ck-ask").inner_text() != first


@pytest.mark.parametrize("size", SIZES, ids=lambda size: f"{size[0]}px")
@pytest.mark.parametrize("theme", ["light", "dark"])
@pytest.mark.parametrize("units", ["SI", "US"])
def test_no_words_overlap_on_the_page(lesson, size, theme, units):
    panel = PanelPage(lesson)
    panel.act("reset")
    panel.page.set_viewport_size({"width": size[0], "height": size[1]})
    panel.choose("units", units)
    panel.choose("theme", theme)
    panel.page.wait_for_timeout(400)
    panel.root.scroll_into_view_if_needed()
    panel.lesson.screenshot(f"panel_{units}_{theme}_{size[0]}")
    boxes = panel.root.locator(".ck-picture svg text").evaluate_all(
        "all => all.map(t => { const b = t.getBoundingClientRect();"
        " return [b.left, b.top + 2, b.right, b.bottom - 2, t.textContent]; })"
    )
    meeting = [
        (one[4], two[4])
        for k, one in enumerate(boxes)
        for two in boxes[k + 1 :]
        if min(one[2], two[2]) - max(one[0], two[0]) > 1
        and min(one[3], two[3]) - max(one[1], two[1]) > 1
    ]
    assert meeting == []
