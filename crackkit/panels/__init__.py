"""Panels: controls, live pictures, predictions, tasks and questions on the page.

The names that lessons use are handed on lazily, so that a lesson loads only what it shows.
"""

import importlib

_homes = {
    "Call": "crackkit.panels.call",
    "Comparison": "crackkit.panels.comparison",
    "Finish": "crackkit.panels.finish",
    "LayoutCall": "crackkit.panels.layout_call",
    "MeasuredTable": "crackkit.panels.measured_table",
    "Panel": "crackkit.panels.panel",
    "Predict": "crackkit.panels.predict",
    "Prices": "crackkit.panels.prices",
    "PublishedTable": "crackkit.panels.published_table",
    "Quiz": "crackkit.panels.quiz",
    "StartPage": "crackkit.panels.start_page",
    "Task": "crackkit.panels.task",
    "Why": "crackkit.panels.why",
}

__all__ = list(_homes)


def __getattr__(name: str):
    if name in _homes:
        return getattr(importlib.import_module(_homes[name]), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")
