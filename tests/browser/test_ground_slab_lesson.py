"""The lesson on the slab on the ground, used as a learner uses it."""

from tests.browser.calls import assert_the_picture_answers
from tests.browser.comparisons import assert_one_click_compares_and_another_puts_a_variant_in

LESSON = "06_ground_slab"


def test_a_call_is_made_and_the_picture_answers(lesson):
    assert_the_picture_answers(lesson)


def test_the_years_run_by_themselves_and_stop(panel):
    button = panel.row("age").locator(".ck-run")
    panel.type("age", "2 d")
    first = panel.text("age")
    button.click()
    panel.page.wait_for_timeout(1500)
    button.click()
    panel.lesson.wait_until_idle()
    stopped = panel.text("age")
    assert stopped != first and not panel.error()
    panel.page.wait_for_timeout(500)
    assert panel.text("age") == stopped


def test_a_day_that_is_typed_stops_the_running_years(panel):
    panel.type("age", "2 d")
    panel.row("age").locator(".ck-run").click()
    panel.page.wait_for_timeout(600)
    panel.type("age", "700 d")
    panel.page.wait_for_timeout(800)
    assert panel.text("age").startswith("700")


def test_the_day_can_be_dragged_along_the_ages(panel):
    panel.type("age", "30 d")
    grip = panel.handle("decades")
    grip.focus()
    grip.press("PageDown")
    panel.lesson.wait_until_idle()
    days = float(panel.text("age").split("\u202f")[0])
    assert days == round(30 * 10**0.5) and not panel.error()


def test_the_slider_of_ages_runs_from_days_to_years(panel):
    slider = panel.row("age").locator("input[type='range']")
    slider.focus()
    slider.press("Home")
    panel.lesson.wait_until_idle()
    assert panel.text("age").startswith("1")
    slider.press("End")
    panel.lesson.wait_until_idle()
    assert panel.text("age").startswith("3650")
    assert not panel.error()


def test_the_button_goes_to_the_day_of_the_next_crack(panel):
    panel.type("age", "1 d")
    panel.row("left").locator(".ck-entry").fill("0.9")
    panel.row("left").locator(".ck-entry").press("Enter")
    panel.row("right").locator(".ck-entry").fill("0.9")
    panel.row("right").locator(".ck-entry").press("Enter")
    panel.lesson.wait_until_idle()
    panel.row("age")
    panel.root.get_by_role("button", name="To the next crack").click()
    panel.lesson.wait_until_idle()
    assert panel.text("age") != "1\u202fd" and not panel.error()


def test_the_walk_goes_through(panel):
    assert panel.walk_through() >= 5 and not panel.error()


def test_one_click_compares_and_another_puts_a_variant_in(panel):
    panel.type("left", "1")
    panel.type("right", "1")
    panel.type("age", "365 d")
    assert_one_click_compares_and_another_puts_a_variant_in(panel)


def test_a_price_that_is_put_right_reaches_the_bill(lesson):
    page = lesson.page
    prices = page.locator(".ck-prices")
    prices.scroll_into_view_if_needed()
    prices.locator("summary, button").first.click()
    entry = prices.locator("tr[data-key='bars'] input")
    entry.wait_for()
    total = prices.locator("tfoot td").last
    before = total.text_content()
    entry.fill("40")
    entry.press("Enter")
    lesson.wait_until_idle()
    assert total.text_content() != before


def test_the_wind_of_the_pour_can_be_halved(lesson):
    weather = lesson.page.locator(".ck-panel:has-text('Wind break: half the wind')").last
    weather.scroll_into_view_if_needed()
    before = weather.locator(".ck-picture svg desc").text_content()
    weather.get_by_role("button", name="Wind break: half the wind").click()
    lesson.wait_until_idle()
    assert weather.locator(".ck-picture svg desc").text_content() != before
    lesson.screenshot("weather")
