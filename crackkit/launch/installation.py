"""Installing packages with pip: one moving line for the reader, everything in a log."""

import re
import subprocess
import sys
from collections.abc import Iterable
from pathlib import Path

from crackkit.launch.trouble import Trouble
from crackkit.words import _

_no_network = re.compile(
    r"NewConnectionError|NameResolutionError|ConnectTimeout|Failed to establish a new connection"
    r"|Temporary failure in name resolution|getaddrinfo failed|Network is unreachable"
)
# A package from an index, or a wheel that already lies on this computer.
_fetching = re.compile(r"Collecting (?P<name>[A-Za-z0-9][\w.-]*)|Processing .*[/\\](?P<wheel>\w+)-")
_error = re.compile(r"^\s*(?:ERROR|\w*Error): .*$", re.MULTILINE)
_width = 78


def install(python: Path, arguments: list[str], folder: Path, log: Path) -> None:
    """Run ``pip install`` with an interpreter, in a folder.

    Raises
    ------
    Trouble
        If pip fails; the message names the log, and the network where that was the reason.
    """
    command = [str(python), "-m", "pip", "install", "--no-input", "--progress-bar=off"]
    command += ["--disable-pip-version-check", "--retries=2", *arguments]
    with (
        log.open("w", encoding="utf-8") as record,
        subprocess.Popen(
            command,
            cwd=folder,
            stdin=subprocess.DEVNULL,
            stdout=subprocess.PIPE,
            stderr=subprocess.STDOUT,
            text=True,
            encoding="utf-8",
            errors="replace",
        ) as pip,
    ):
        _show(_progress(_recorded(pip.stdout, record)))
    if pip.returncode != 0:
        raise Trouble(_reason(log))


def _recorded(lines: Iterable[str], record) -> Iterable[str]:
    for line in lines:
        record.write(line)
        yield line


def _progress(lines: Iterable[str]) -> Iterable[str]:
    """Turn pip's own lines into short ones: which package is fetched, then the long last step."""
    seen: set[str] = set()
    for line in lines:
        if match := _fetching.match(line.strip()):
            name = match["name"] or match["wheel"]
            seen.add(name)
            yield _("  fetching packages: {count}, {name}").format(count=len(seen), name=name)
        elif line.startswith("Installing collected packages"):
            count = line.count(",") + 1
            yield _("  putting {count} packages in place (a minute or so)").format(count=count)


def _show(texts: Iterable[str]) -> None:
    """Write each text over the last one; where no screen listens, write only the last."""
    moving, text = sys.stdout.isatty(), ""
    for text in texts:
        if moving:
            print("\r" + text[:_width].ljust(_width), end="", flush=True)
    if text:
        print("\r" if moving else "", text if not moving else "", sep="", flush=True)


def _reason(log: Path) -> str:
    text = log.read_text("utf-8", errors="replace")
    if _no_network.search(text):
        return _(
            "The packages could not be fetched: there seems to be no network connection.\n"
            "Connect this computer to the internet and start again: what is already here is kept.\n"
            "The whole story is in {log}"
        ).format(log=log)
    errors = _error.findall(text)
    return _("The packages could not be installed.\n{error}\nThe whole story is in {log}").format(
        error=errors[0].strip() if errors else "", log=log
    )
