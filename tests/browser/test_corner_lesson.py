"""The lesson on the inside corner in a real browser."""

from tests.browser.calls import assert_the_picture_answers
from tests.browser.comparisons import assert_one_click_compares_and_another_puts_a_variant_in
from tests.browser.panel_page import PanelPage

LESSON = "08_reentrant_corner"


def test_a_call_is_made_and_the_picture_answers(lesson):
    assert_the_picture_answers(lesson)


def test_the_diagonal_bars_are_dragged_away_from_the_corner(panel):
    _to_step(panel, 3)
    panel.act("walk_set")  # two diagonal bars close to the corner
    panel.lesson.screenshot("close")
    near, before = _number(panel, "diagonal_off"), panel.picture()
    panel.handle("diagonal_off").scroll_into_view_if_needed()
    panel.drag("diagonal_off", -40, 40)
    panel.lesson.screenshot("dragged")
    assert _number(panel, "diagonal_off") > near and panel.picture() != before
    assert not panel.error()


def test_the_curve_over_the_ages_follows_as_soon_as_nothing_moves(panel):
    panel.root.locator(".ck-picture").evaluate(
        """(box) => { window.ckNotes = [];
          new MutationObserver(() => window.ckNotes.push(box.textContent.includes("worked out …")))
            .observe(box, {childList: true, subtree: true}); }"""
    )
    slider = panel.row("thickness").locator(".ck-range")
    for _press in range(3):
        slider.press("ArrowRight")
    panel.lesson.wait_until_idle()
    notes = panel.page.evaluate("window.ckNotes")
    assert notes[0] and not notes[-1]
    assert panel.root.locator(".ck-picture").get_attribute("aria-busy") == "false"


def test_an_arrow_key_moves_them_as_well(panel):
    panel.act("walk_set")  # the walk still stands where the test before left it
    near = _number(panel, "diagonal_off")
    panel.handle("diagonal_off").focus()
    panel.handle("diagonal_off").press("ArrowRight")
    panel.lesson.wait_until_idle()
    assert _number(panel, "diagonal_off") != near and not panel.error()


def test_the_day_can_be_dragged_along_the_ages(panel):
    panel.type("age", "365 d")
    before = panel.text("age")
    panel.handle("decades").focus()
    panel.handle("decades").press("PageDown")
    panel.lesson.wait_until_idle()
    assert panel.text("age") != before and not panel.error()


def test_the_walk_goes_from_the_first_month_to_the_second_year(panel):
    while panel.root.locator("button[data-act='walk_back']").is_enabled():
        panel.act("walk_back")
    assert panel.walk_through() == 10 and not panel.error()


def test_one_click_compares_and_another_puts_a_variant_in(panel):
    assert_one_click_compares_and_another_puts_a_variant_in(panel)


def test_the_film_plays_by_itself_and_stops_at_its_end(lesson):
    film = PanelPage(lesson, ".ck-panel:has([data-path='frame'])")
    film.root.scroll_into_view_if_needed()
    play = film.root.locator(".ck-run")
    before = film.picture()
    play.click()
    lesson.page.wait_for_function(
        "() => document.querySelector(\".ck-row[data-path='frame'] .ck-entry\").value === '60'"
    )
    lesson.wait_until_idle()
    assert play.inner_text() == "Play" and film.picture() != before
    lesson.screenshot("film")
    film.root.get_by_role("button", name="Another concrete").click()
    lesson.wait_until_idle()
    assert film.text("seed") == "2" and not film.error()


def test_the_depot_is_held_by_bars_close_to_its_corners(lesson):
    task = PanelPage(lesson, ".ck-panel:has([data-path='look'])")
    check = lesson.page.locator("[data-act='check']")
    headline = lesson.page.locator(".ck-exercise.ck-task .ck-headline")
    check.click()
    headline.wait_for()
    assert headline.get_attribute("data-good") != "true"
    task.row("diagonals").locator("select").select_option("16")
    lesson.wait_until_idle()
    task.type("diagonal_count", "4")
    check.click()
    lesson.page.wait_for_function(
        "() => document.querySelector('.ck-task .ck-headline').dataset.good === 'true'"
    )
    lesson.screenshot("held")


def _number(panel, path: str) -> float:
    return float(panel.text(path).split("\u202f")[0])


def _to_step(panel, number: int) -> None:
    for _step in range(number - 1):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.act("walk_next")
