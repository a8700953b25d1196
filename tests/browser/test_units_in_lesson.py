"""A reader changes units in an open lesson: what stands on the page follows."""

LESSON = "05_bar_choice"


def test_walk_answered_call_and_table_follow_the_units_and_the_answer_stays(lesson, panel):
    call = lesson.page.locator(".ck-exercise").first
    call.scroll_into_view_if_needed()
    call.locator("[role='radio']", has_text="more than half").click()
    lesson.wait_until_idle()
    headline = call.locator(".ck-headline").inner_text()
    table = lesson.page.locator(".ck-measured")
    table.scroll_into_view_if_needed()
    assert "\u202fmm" in table.inner_text()
    panel.choose("units", "US")
    for shown in (call, table, panel.root.locator(".ck-walk")):
        shown.scroll_into_view_if_needed()
        text = shown.inner_text()
        assert "\u202fin" in text and "\u202fmm" not in text
    assert call.locator(".ck-headline").inner_text() == headline
    assert call.locator("[role='radio'][data-kind='right']").count() == 1
    lesson.screenshot("units")
    panel.choose("units", "SI")
    assert "\u202fmm" in panel.root.locator(".ck-walk").inner_text()
