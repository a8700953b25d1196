"""``python -m crackkit``: a lesson on the screen, until Ctrl-C."""

import os
import signal
import sys
import webbrowser
from pathlib import Path

from crackkit.launch.places import LESSONS
from crackkit.launch.server import USUAL_PORT, running_server
from crackkit.launch.trouble import Trouble
from crackkit.words import _

FIRST_LESSON = "00_start_here"


def open_lesson(
    name: str = FIRST_LESSON, port: int = USUAL_PORT, with_browser: bool = True
) -> None:
    """Serve the workbook and show a lesson in the browser; return after Ctrl-C.

    Parameters
    ----------
    name : str
        The lesson's file name, or the number it begins with.
    port : int
        The first port to try.
    with_browser : bool
        Whether to open a browser, or only to print the address.

    Raises
    ------
    Trouble
        If there is no such lesson, or the server does not come up.
    """
    file = lesson_file(name)
    # A closed terminal or a service manager's stop must end the server as gently as Ctrl-C.
    for sign in {"SIGTERM", "SIGHUP"} & set(dir(signal)):
        signal.signal(getattr(signal, sign), signal.default_int_handler)
    try:
        print(_("Starting the workbook ..."), flush=True)
        with running_server(port) as server:
            address = server.address(file)
            if server.port != port:
                print(_("Port {busy} is taken; using {port}.").format(busy=port, port=server.port))
            print(_invitation(address, with_browser and _shown_in_browser(address)), flush=True)
            server.process.wait()
            raise Trouble(
                _("JupyterLab has ended. What it said is in {log}").format(log=server.log)
            )
    except KeyboardInterrupt:
        print(_("\nThe workbook is closed. Your progress is kept."))


def lesson_file(name: str, folder: Path = LESSONS) -> Path:
    """Find a lesson by its file name or the number it begins with.

    Raises
    ------
    Trouble
        If there is none; the message lists the lessons.
    """
    lessons = sorted(folder.glob("*.ipynb"))
    stem = Path(name).name.removesuffix(".ipynb")
    for lesson in lessons:
        if stem == lesson.stem or stem.zfill(2) == lesson.stem.split("_")[0]:
            return lesson
    if not lessons:
        raise Trouble(
            _(
                "There is no folder of lessons in {folder}.\n"
                "Run the command in the unpacked workbook, the folder that holds README.md."
            ).format(folder=folder.parent)
        )
    raise Trouble(
        _("There is no lesson {name!r}. There are:\n  {list}").format(
            name=name, list="\n  ".join(lesson.stem for lesson in lessons)
        )
    )


def _shown_in_browser(address: str) -> bool:
    """Tell whether a browser with a window took the address."""
    if sys.platform.startswith("linux") and not _has_screen():
        return False  # a text browser would take over this terminal instead
    try:
        return webbrowser.open(address)
    except webbrowser.Error:
        return False


def _has_screen() -> bool:
    return any(os.environ.get(name) for name in ("DISPLAY", "WAYLAND_DISPLAY", "BROWSER"))


def _invitation(address: str, shown: bool) -> str:
    ending = _("To stop: Ctrl-C in this window.")
    if shown:
        text = _("The workbook is open in your browser. If you do not see it, open this address:")
    else:
        text = _("The workbook is ready. Open this address in a browser on this computer:")
    return f"{text}\n\n    {address}\n\n{ending}"
