"""An open lesson in this process: its cells are run, its widgets used and read as the page does.

No browser and no kernel take part, so that every text of every widget can be looked at after each
step; what travels between page and kernel is tried elsewhere.
"""

import ast
import json
import re
from collections.abc import Iterator
from html import unescape
from pathlib import Path

from crackkit.panels.asking import Asking
from crackkit.panels.comparison import Comparison
from crackkit.panels.exercise import Exercise
from crackkit.panels.panel import Panel
from crackkit.panels.predict import Predict
from crackkit.panels.task import Task
from crackkit.panels.why import Why

UNREAD = {"_esm", "_css", "layout", "comm", "keys", "tabbable", "tooltip", "words", "changes"}


def opened(lesson: Path) -> list:
    """Run the cells of a lesson up to its promises; give what each of them shows."""
    cells = json.loads(lesson.read_text("utf-8"))["cells"]
    room, shown = {"__name__": "lesson"}, []
    for source in ("".join(c["source"]) for c in cells if c["cell_type"] == "code"):
        tree = ast.parse(source)
        last = tree.body[-1]
        if isinstance(last, ast.Assert):
            break
        if isinstance(last, ast.Expr):
            tree.body.pop()
        exec(compile(tree, lesson.name, "exec"), room)
        if isinstance(last, ast.Expr):
            shown.append(eval(compile(ast.Expression(last.value), lesson.name, "eval"), room))
    return shown


def texts(thing) -> Iterator[tuple[str, str]]:
    """Give every text that a thing shows: where it stands, and what it says."""
    for view in [thing.view, thing.panel.view] if isinstance(thing, Task) else [thing.view]:
        for name in view.keys:
            if name not in UNREAD and not name.startswith("_"):
                yield from _within(f"{type(view).__name__}.{name}", getattr(view, name))


def _within(where: str, value) -> Iterator[tuple[str, str]]:
    if isinstance(value, str):
        yield where, plain(value)
    elif isinstance(value, dict):
        for key, each in value.items():
            yield from _within(f"{where}.{key}", each)
    elif isinstance(value, list | tuple):
        for each in value:
            yield from _within(where, each)


def plain(text: str) -> str:
    """Take the tags out of a text."""
    if "<" in text:
        text = re.sub(r"<(style|script)\b.*?</\1>", " ", text, flags=re.S)
        text = re.sub(r'<[^>]*?(?:aria-label|aria-valuetext)="([^"]*)"[^>]*>', r" \1 ", text)
        text = re.sub(r"<[^>]*>", " ", text)
    return unescape(text)


def uses(thing) -> Iterator[str]:
    """Use a thing step by step as a learner would, and say after each step what was done."""
    yield "opened"
    for kind, used in _USES.items():
        if isinstance(thing, kind):
            yield from used(thing)
            return


def _use_panel(panel: Panel) -> Iterator[str]:
    for number in range(len(panel.guide.steps) if panel.guide else 0):
        panel._on_act("walk_set", None)
        panel._on_act("walk_told", None)
        yield f"step {number + 1} of the walk"
        panel._on_act("walk_next", None)
    for name in ("reset", "working", "code"):
        panel._on_act(name, None)
        yield name


def _use_asking(asking: Asking) -> Iterator[str]:
    for number in range(len(getattr(asking, "keys", asking.view.options))):
        asking.act("answer", {"choice": number % len(asking.view.options)})
        yield f"answered: {asking.question.key}"
        asking.act("another", {})


def _use_predict(call: Predict) -> Iterator[str]:
    for place in list(call.offered) if call.view.ask == "bar" else [""]:
        painted = {"top": [0, 1, 2, 3], "bottom": [5, 6, 7, 8]}
        call.act("call", {"painted": painted, "chosen": place})
        yield f"called {place}"
        call.act("again", {})


def _use_task(task: Task) -> Iterator[str]:
    task.check()
    yield "checked"


def _use_comparison(comparison: Comparison) -> Iterator[str]:
    for key in comparison.offered:
        comparison.choose(key)
        yield key


def _use_why(why: Why) -> Iterator[str]:
    why.view.unfolded = True
    yield "unfolded"


_USES = {
    Panel: _use_panel,
    Asking: _use_asking,
    Predict: _use_predict,
    Task: _use_task,
    Comparison: _use_comparison,
    Why: _use_why,
    Exercise: lambda _thing: iter(()),
}
