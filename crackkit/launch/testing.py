"""``python -m crackkit test``: what pytest is asked to do, and where Chromium is."""

import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Sequence
from pathlib import Path

from crackkit.launch.places import LESSONS, PROJECT
from crackkit.launch.server import server_environment

CHROMIUM_NAMES = (
    "chromium",
    "chromium-browser",
    "google-chrome",
    "google-chrome-stable",
    "chrome",
    "msedge",
)
_places = (
    "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
    "/Applications/Chromium.app/Contents/MacOS/Chromium",
    "{PROGRAMFILES}/Google/Chrome/Application/chrome.exe",
    "{PROGRAMFILES(X86)}/Google/Chrome/Application/chrome.exe",
    "{LOCALAPPDATA}/Google/Chrome/Application/chrome.exe",
    "{PROGRAMFILES(X86)}/Microsoft/Edge/Application/msedge.exe",
)


def run_tests(arguments: Sequence[str] = (), benchmark: bool = False) -> int:
    """Run every test of the workbook; give pytest's exit code.

    Parameters
    ----------
    arguments : sequence of str
        Passed on to pytest; a path among them narrows what is run.
    benchmark : bool
        Time the live path instead of testing.
    """
    command = [sys.executable, "-m", "pytest", *pytest_arguments(arguments, benchmark)]
    with tempfile.TemporaryDirectory(prefix="crackkit-test-home-") as home:
        # Lessons under test keep their progress apart from the reader's own.
        variables = server_environment(os.environ) | {"CRACKKIT_HOME": home}
        return subprocess.call(command, cwd=PROJECT, env=variables)


def pytest_arguments(arguments: Sequence[str], benchmark: bool) -> list[str]:
    """Give pytest's arguments: everything, unless the reader names a path."""
    if benchmark:
        return ["tests/benchmarks", *arguments]
    paths = [] if any(_is_path(argument) for argument in arguments) else _everything()
    # A timing on a busy machine proves nothing: nothing is timed here, page or kernel.
    untimed = ["--benchmark-disable", "-m", "not benchmark"]
    return [*paths, "--nbval-lax", *untimed, *arguments]


def chromium() -> Path | None:
    """Give the Chromium or Chrome of this computer; CRACKKIT_CHROMIUM names another."""
    if chosen := os.environ.get("CRACKKIT_CHROMIUM"):
        return Path(chosen) if Path(chosen).exists() else None
    found = (shutil.which(name) for name in CHROMIUM_NAMES)
    usual = (Path(place.format_map(_Folders(os.environ))) for place in _places)
    return next((Path(place) for place in (*found, *usual) if place and Path(place).exists()), None)


class _Folders(dict):
    def __missing__(self, name: str) -> str:
        return "none"


def _is_path(argument: str) -> bool:
    return not argument.startswith("-") and (PROJECT / argument.split("::")[0]).exists()


def _everything() -> list[str]:
    return ["tests", *(["lessons"] if LESSONS.exists() else [])]
