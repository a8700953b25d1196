"""The first call of a lesson, made as a learner makes it."""


def assert_the_picture_answers(lesson) -> None:
    """The first choice is taken, whether right or wrong: the picture changes and says why."""
    call = lesson.page.locator(".ck-exercise").first
    call.scroll_into_view_if_needed()
    before = call.locator(".ck-picture").inner_html()
    call.locator("[role='radio']").first.click()
    lesson.wait_until_idle()
    assert call.locator(".ck-picture").inner_html() != before
    assert call.locator(".ck-headline").inner_text()
    lesson.screenshot("call")
