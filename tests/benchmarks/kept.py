"""Figures that benchmarks measure in a page: printed, and kept in a file."""

import json
from contextlib import contextmanager

from crackkit.launch.places import PROJECT


@contextmanager
def kept(name: str):
    """Collect figures in a dict; print and keep them at the end."""
    figures = {}
    yield figures
    folder = PROJECT / "out" / "benchmarks"
    folder.mkdir(parents=True, exist_ok=True)
    (folder / f"{name}.json").write_text(json.dumps(figures, indent=2), "utf-8")
    print("\n" + json.dumps(figures, indent=2))
