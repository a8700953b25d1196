"""The first lesson, used as a learner uses it."""

from tests.browser.panel_page import PanelPage

LESSON = "01_pull"


def press(panel, name: str) -> None:
    """Press a button beside a control."""
    panel.root.get_by_role("button", name=name).click()
    panel.lesson.wait_until_idle()


def tile(panel, name: str) -> str:
    """Give the number on a tile of the picture."""
    texts = panel.root.locator(".ck-picture svg text")
    words = texts.evaluate_all("all => all.map(text => text.textContent)")
    return words[words.index(name) + 1]


def test_a_call_is_made_and_the_picture_answers(lesson):
    call = lesson.page.locator(".ck-exercise").first
    call.scroll_into_view_if_needed()
    before = call.locator(".ck-picture").inner_html()
    call.get_by_role("radio").filter(has_text="weakest").click()
    call.locator(".ck-option-why").first.wait_for()
    lesson.wait_until_idle()
    assert call.locator(".ck-picture").inner_html() != before
    assert call.locator("[role=radio][data-kind='right']").count() == 1
    assert call.locator("[role=radio][data-kind='wrong']").count() == 0
    lesson.screenshot("call")


def test_the_dot_pulls_crack_after_crack(panel):
    before = panel.picture()
    panel.drag("pull", 200, 0)
    assert panel.picture() != before and not panel.error()
    assert float(panel.handle("pull").get_attribute("aria-valuenow")) > 50e3


def test_the_button_brings_one_crack_and_letting_go_keeps_it(panel):
    for _crack in range(3):
        press(panel, "Next crack")
    wide = tile(panel, "widest crack")
    assert tile(panel, "cracks") == "3"
    press(panel, "Let go")
    assert tile(panel, "cracks") == "3" and tile(panel, "widest crack") < wide


def test_the_walk_goes_from_no_bar_to_ten_hangers(panel):
    told = []
    for step in range(7):
        panel.act("walk_set")
        panel.act("walk_told")
        panel.root.locator(".ck-walk-answer:not([hidden])").wait_for()
        told.append(panel.root.locator(".ck-walk-answer").inner_text())
        panel.lesson.screenshot(f"walk_{step + 1}")
        if step < 6:
            panel.act("walk_next")
    assert "never hang" in told[0] and "much finer" in told[3] and "No two" in told[6]
    assert not panel.error()


def test_the_tie_of_the_salt_shed_is_made_to_hold(lesson):
    panel = PanelPage(lesson, ".ck-panel:has([data-path='number']) >> nth=1")
    panel.row("number").locator("select").select_option("6")
    panel.row("size").locator("select").select_option("16")
    lesson.wait_until_idle()
    panel.type("cover", "55 mm")
    lesson.screenshot("task")
    lesson.page.locator("[data-act='check']").click()
    lesson.wait_until_idle()
    headline = lesson.page.locator(".ck-exercise.ck-task .ck-headline")
    assert headline.get_attribute("data-good") == "true", headline.inner_text()


def test_the_derivation_unfolds_with_the_numbers_of_the_panel(panel):
    press(panel, "Next crack")
    why = panel.page.locator(".ck-why").first
    why.scroll_into_view_if_needed()
    why.locator("summary").click()
    why.locator(".ck-why-numbers, li").first.wait_for()
    panel.lesson.wait_until_idle()
    panel.lesson.screenshot("why")
    assert why.inner_text().count("as shown above") == 1
