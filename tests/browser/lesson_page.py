"""A lesson in the browser: opened, waited for, looked at, listened to."""

import contextlib
import os
import re
import time
from pathlib import Path

WANTED = "CRACKKIT_SCREENSHOTS"  # set to anything: the tests of the pages keep pictures of them
# What the page or Chromium itself reports in every JupyterLab, lesson or not.
HARMLESS = re.compile(r"favicon|ResizeObserver loop|workspaces/.* 404", re.IGNORECASE)
_error_message = re.compile(rb'"msg_type":\s*"error"')
_error_text = re.compile(rb'"ename":\s*"(?P<name>[^"]*)",\s*"evalue":\s*"(?P<value>[^"]*)"')

# The first panel with a notebook, its kernel, and whether each code cell was run.
_STATE = """() => {
  const app = window.jupyterapp;
  const panel = app && app.shell.currentWidget;
  const session = panel && panel.sessionContext && panel.sessionContext.session;
  const kernel = session && session.kernel;
  if (!kernel || !panel.content || !panel.content.widgets) return {ready: false};
  const code = panel.content.widgets.filter(cell => cell.model.type === 'code');
  return {
    ready: kernel.connectionStatus === 'connected' && kernel.status === 'idle',
    ran: code.filter(cell => cell.model.executionCount !== null).length,
    code: code.filter(cell => cell.model.sharedModel.getSource().trim()).length,
  };
}"""

# The kernel answers in turn, so that its answer to a last question comes after all that was asked
# before. Three times: an answer may let the page send what it held back, and that once more. The
# page asks by itself: asked from outside, three processes would be busy with the question.
_IDLE = """async patience => {
  const end = Date.now() + patience;
  const rest = time => new Promise(resolve => setTimeout(resolve, Math.max(time, 0)));
  let rounds = 0;
  while (rounds < 3 && Date.now() < end) {
    const panel = window.jupyterapp && window.jupyterapp.shell.currentWidget;
    const session = panel && panel.sessionContext && panel.sessionContext.session;
    const kernel = panel && panel.content && panel.content.widgets && session && session.kernel;
    if (!kernel || kernel.connectionStatus !== 'connected') { await rest(30); continue; }
    await Promise.race([kernel.requestKernelInfo(), rest(end - Date.now())]);
    while (kernel.status !== 'idle' && Date.now() < end) await rest(10);
    await rest(25); // what it told the page comes by another way
    rounds = document.querySelector(".ck-picture[aria-busy='true']") ? 0 : rounds + 1;
  }
  return rounds >= 3;
}"""


class LessonPage:
    """One browser page on one lesson.

    Parameters
    ----------
    page : playwright.sync_api.Page
        The page; its other methods are there for the tests.
    server : crackkit.launch.server.Server
        What serves the lesson.
    pictures : Path
        Folder for screenshots.
    """

    def __init__(self, page, server, pictures: Path):
        self.page, self.server, self.pictures = page, server, pictures
        self.troubles: list[str] = []
        page.on("console", self._hear_console)
        page.on("pageerror", lambda error: self._note("page", str(error)))
        page.on("websocket", lambda socket: socket.on("framereceived", self._hear_kernel))

    def open(self, lesson: Path, patience: float = 60.0) -> "LessonPage":
        """Open a lesson and wait until its cells have run by themselves and its widgets show."""
        self.page.goto(self.server.address(lesson))
        self.wait_until_run(patience)
        return self

    def wait_until_run(self, patience: float = 60.0) -> None:
        """Wait until every code cell of the current notebook has run and the kernel is idle."""
        end, state = time.monotonic() + patience, {}
        while time.monotonic() < end:
            state = self._state()
            if state["ready"] and state["ran"] >= state["code"]:
                self.page.wait_for_timeout(150)  # the last widget is still being painted
                return
            self.page.wait_for_timeout(50)
        self.screenshot("never_ready", always=True)
        said = self.page.locator(".jp-Dialog, .jp-Notification").all_inner_texts()
        raise AssertionError(
            f"the lesson did not come alive within {patience} s: {state}; {self.page.url};"
            f" {said}; {self.troubles}"
        )

    def _state(self) -> dict:
        """Ask the page how far it is; while it goes to its workspace it cannot answer."""
        try:
            return self.page.evaluate(_STATE)
        except Exception as trouble:
            if "navigation" not in str(trouble):
                raise
            return {"ready": False}

    def wait_until_idle(self, patience: float = 20.0) -> None:
        """Wait until the kernel has answered everything the page asked."""
        end = time.monotonic() + patience
        while (left := end - time.monotonic()) > 0:
            try:
                if self.page.evaluate(_IDLE, 1000 * left):
                    return
            except Exception as trouble:  # a page on its way to its workspace cannot answer
                if "navigation" not in str(trouble):
                    raise
                self.page.wait_for_timeout(50)
        raise AssertionError(f"the kernel was still busy after {patience} s")

    def screenshot(self, name: str, always: bool = False) -> None:
        """Keep a picture of the window, if pictures are wanted: each takes as long as a step."""
        if always or WANTED in os.environ:
            self.pictures.mkdir(parents=True, exist_ok=True)
            self.page.screenshot(path=self.pictures / f"{name}.png")

    def close(self) -> list[str]:
        """End the lesson's kernel and close the page; give what went wrong on it."""
        self.page.wait_for_timeout(100)
        troubles = list(self.troubles)  # what comes while closing is of no interest
        with contextlib.suppress(Exception):  # a page that never came alive is closed all the same
            self.page.evaluate(
                "async () => { const app = window.jupyterapp;"
                " if (app) await app.serviceManager.sessions.shutdownAll(); }"
            )
        self.page.close()
        return troubles

    def _hear_console(self, message) -> None:
        if message.type == "error":
            self._note("console", f"{message.text} ({message.location.get('url', '')})")

    def _hear_kernel(self, payload) -> None:
        data = payload.encode() if isinstance(payload, str) else payload
        if _error_message.search(data):
            found = _error_text.search(data)
            text = b": ".join(found.groups()).decode() if found else "unreadable"
            self._note("kernel", text)

    def _note(self, where: str, text: str) -> None:
        if not HARMLESS.search(text):
            self.troubles.append(f"{where}: {text}")
