"""What all tests share: a home of their own, and the closing summary of the workbook's parts."""

import os
import tempfile
from collections import Counter, defaultdict
from pathlib import Path

from hypothesis import settings

from crackkit.launch.server import server_environment

# The kernels of lessons under test import crackkit from here, and must not touch real progress.
os.environ.update(server_environment(os.environ))
os.environ.setdefault("CRACKKIT_HOME", tempfile.mkdtemp(prefix="crackkit-test-home-"))

# Speed is measured in benchmarks; a busy machine must not fail a property.
settings.register_profile("untimed", deadline=None, max_examples=60)
settings.load_profile("untimed")

_outcomes = ("passed", "failed", "error", "skipped", "xfailed")


def pytest_terminal_summary(terminalreporter):
    """Say for each folder of tests how it went, and out loud what was skipped and why."""
    stats = terminalreporter.stats
    counts, seconds = defaultdict(Counter), Counter()
    for outcome in _outcomes:
        for report in stats.get(outcome, []):
            counts[_part(report.nodeid)][outcome] += 1
    for report in (report for reports in stats.values() for report in reports):
        if hasattr(report, "duration"):
            seconds[_part(report.nodeid)] += report.duration
    terminalreporter.section("parts of the workbook")
    for part, count in sorted(counts.items()):
        said = ", ".join(f"{count[outcome]} {outcome}" for outcome in _outcomes if count[outcome])
        terminalreporter.line(f"{part:<18} {said}  ({seconds[part]:.1f} s)")
    for line in _what_was_not_run(stats.get("skipped", [])):
        terminalreporter.line(line)


def _what_was_not_run(reports) -> list[str]:
    reasons = Counter((_part(report.nodeid), _reason(report)) for report in reports)
    return [f"NOT RUN: {n} in {part}: {why}" for (part, why), n in sorted(reasons.items())]


def _part(nodeid: str) -> str:
    """Name the part a test belongs to: its folder under tests/; a notebook's is lessons."""
    folders = Path(nodeid.split("::")[0]).with_suffix("").parts
    return folders[1] if folders[0] == "tests" and len(folders) > 1 else folders[0]


def _reason(report) -> str:
    place = report.longrepr
    return str(place[-1] if isinstance(place, tuple) else place).removeprefix("Skipped: ")
