"""A panel in the browser: its controls, its handles, what it shows."""

PANEL = ".ck-panel:has(> .ck-walk:not([hidden]))"  # the panel with the walk


class PanelPage:
    """The live panel of an open lesson.

    Parameters
    ----------
    lesson : LessonPage
        The lesson that holds it.
    root : str
        Selector of the panel.
    """

    def __init__(self, lesson, root: str = PANEL):
        self.lesson, self.page = lesson, lesson.page
        self.root = self.page.locator(root).first
        self.root.scroll_into_view_if_needed()

    def picture(self) -> str:
        """Give the SVG that is shown."""
        return self.root.locator(".ck-picture").inner_html()

    def error(self) -> str:
        """Give the message about a refused input; empty when there is none."""
        return self.root.locator(":scope > .ck-error").inner_text()

    def act(self, name: str) -> None:
        """Press a button."""
        self.root.locator(f"button[data-act='{name}']").click()
        self.lesson.wait_until_idle()

    def choose(self, name: str, value: str) -> None:
        """Choose units or theme; what is chosen already stays, as for a reader."""
        menu = self.root.locator(f"select[data-act='{name}']")
        if menu.input_value() != value:
            menu.select_option(value)
            self.lesson.wait_until_idle()

    def walk_through(self) -> int:
        """Walk from where the walk stands to its end; give how many steps that took."""
        steps = 0
        while True:
            self.act("walk_set")
            self.act("walk_told")
            self.root.locator(".ck-walk-answer:not([hidden])").wait_for()
            self.lesson.screenshot(f"walk_{steps + 1}")
            steps += 1
            onward = self.root.locator("button[data-act='walk_next']")
            if not onward.is_visible() or onward.is_disabled():
                return steps
            self.act("walk_next")

    def row(self, path: str):
        """Give the row of a control, its tab opened."""
        row = self.root.locator(f".ck-row[data-path='{path}']")
        if not row.is_visible():
            sheet = row.locator("xpath=ancestor::*[contains(@class, 'ck-sheet')]")
            self.root.locator(f"[aria-controls='{sheet.get_attribute('id')}']").click()
        return row

    def paths(self) -> list[str]:
        """Give the paths of all controls."""
        return self.root.locator(".ck-row[data-path]").evaluate_all(
            "rows => rows.map(row => row.dataset.path)"
        )

    def text(self, path: str) -> str:
        """Give what a control says its value is."""
        return self.row(path).locator(".ck-entry").input_value()

    def type(self, path: str, text: str) -> None:
        """Type a value."""
        entry = self.row(path).locator(".ck-entry")
        entry.fill(text)
        entry.press("Enter")
        self.lesson.wait_until_idle()

    def handles(self) -> list[str]:
        """Give the paths of all handles on the drawing."""
        return self.root.locator(".ck-handle").evaluate_all("all => all.map(h => h.dataset.path)")

    def handle(self, path: str):
        """Give a handle on the drawing."""
        return self.root.locator(f".ck-handle[data-path='{path}']")

    def drag(self, path: str, across: float, down: float) -> None:
        """Drag a handle by its grip [px]."""
        box = self.handle(path).locator("circle").last.bounding_box()
        x, y = box["x"] + box["width"] / 2, box["y"] + box["height"] / 2
        self.page.mouse.move(x, y)
        self.page.mouse.down()
        self.page.mouse.move(x + across / 2, y + down / 2, steps=5)
        self.page.mouse.move(x + across, y + down, steps=5)
        self.page.mouse.up()
        self.lesson.wait_until_idle()
