"""The lesson on floors over several spans, used as a learner uses it."""

LESSON = "04_continuous_spans"


def test_the_walk_goes_from_an_empty_span_to_cracks_that_shift_moments(panel):
    told = []
    for step in range(5):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        told.append(panel.root.locator(".ck-walk-answer").inner_text())
        panel.lesson.screenshot(f"walk_{step + 1}")
        if step < 4:
            panel.act("walk_next")
    assert "moment over B" in told[0] and "places without bars: 0 → 1" in told[1]
    assert "bars weigh" in told[2] and "support C" in told[3] and "tenth" in told[4]
    assert not panel.error()


def test_a_place_without_bars_is_shown_with_the_loads_that_crack_it(panel):
    while panel.page.locator("[data-act='walk_back']").is_enabled():
        panel.act("walk_back")
    panel.act("walk_next")
    panel.act("walk_set")
    before = panel.picture()
    panel.root.get_by_role("button", name="Show me").first.click()
    panel.lesson.wait_until_idle()
    assert panel.picture() != before and not panel.error()
    switch = panel.root.locator(".ck-handle[data-path='spans.1.live']")
    assert switch.get_attribute("aria-checked") == "false"


def test_the_places_beside_a_floor_are_told_anew_line_by_line(panel):
    lines = panel.root.locator(".ck-open-places li")

    def told():
        assert lines.locator("button").count() == lines.count()
        return lines.locator("span").all_inner_texts()

    panel.type("live_load", "0 kN/m")
    calm = told()
    panel.type("live_load", "20 kN/m")
    loaded = told()
    assert len(loaded) > len(calm)
    panel.choose("units", "US")
    feet = told()
    assert len(feet) == len(loaded) and not {*feet} & {*loaded} and "ft" in feet[0]
    panel.choose("units", "SI")
    assert told() == loaded
    panel.type("live_load", "0 kN/m")
    assert told() == calm


def test_a_drawing_of_bars_is_chosen_and_answered(lesson):
    exercise = lesson.page.locator(".ck-predict").nth(3)
    exercise.scroll_into_view_if_needed()
    assert exercise.locator("[role='radio']").count() == 4
    exercise.locator("[role='radio']").nth(2).click()
    exercise.locator("[data-act='call']").click()
    lesson.wait_until_idle()
    assert "✓" in exercise.locator(".ck-headline").inner_text()
    assert exercise.locator(".ck-picture").text_content().count("bars cross") >= 3


def test_a_derivation_unfolds_with_the_numbers_of_the_panel(panel):
    why = panel.page.locator(".ck-why").first
    why.scroll_into_view_if_needed()
    why.locator("summary").click()
    why.locator(".ck-why-numbers, li").first.wait_for()
    panel.lesson.wait_until_idle()
    assert why.inner_text().count("as shown above") == 1
