"""The table of comparisons below a panel, used as a learner uses it."""


def assert_one_click_compares_and_another_puts_a_variant_in(panel) -> None:
    """Bars are compared, the second row is put into the panel, and the panel is put back."""
    table = panel.page.locator(".ck-comparison")
    table.scroll_into_view_if_needed()
    table.locator("[data-key='bars']").click()
    table.locator("[data-place='1']").wait_for()
    panel.lesson.screenshot("compared")
    title = panel.root.locator(".ck-picture svg title")
    before = title.text_content()
    table.locator("[data-place='1']").click()
    panel.lesson.wait_until_idle()
    assert title.text_content() != before
    table.locator("[data-act='put_back']").click()
    panel.lesson.wait_until_idle()
    assert title.text_content() == before
