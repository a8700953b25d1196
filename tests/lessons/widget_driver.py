"""Runs a notebook, then moves every control in it as the browser would.

The notebook's own cells move no slider, so an error in what a slider calls would show only to a
learner. Errors are taken from where the page takes them (the kernel's broadcast), and from the
kernel's own complaints on standard error.
"""

import os
import tempfile
import time
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field
from itertools import pairwise
from pathlib import Path
from queue import Empty

import nbformat
from jupyter_client.manager import KernelManager

from crackkit.launch.server import server_environment
from tests.lessons.panel_moves import STEPS as PANEL_STEPS
from tests.lessons.panel_moves import is_panel, panel_moves

PATIENCE = 60.0  # s for one cell
STEPS = 20
ROUNDS = 3  # a committed answer shows a panel, whose controls may show another
NUMBERS = {
    "IntSliderModel",
    "FloatSliderModel",
    "FloatLogSliderModel",
    "BoundedIntTextModel",
    "BoundedFloatTextModel",
}
PAIRS = {"IntRangeSliderModel", "FloatRangeSliderModel"}


@dataclass
class Drive:
    """What happened to one notebook."""

    moves: int = 0
    errors: list[str] = field(default_factory=list)
    seconds: float = 0.0


@dataclass
class Session:
    """A running kernel, and the state of the controls it has shown so far."""

    client: object
    drive: Drive
    steps: int = PANEL_STEPS
    models: dict[str, dict] = field(default_factory=dict)

    def run(self, code: str) -> None:
        """Run one cell."""
        self._listen(self.client.execute(code), f"cell {code.splitlines()[0]!r}")

    def move_everything(self) -> None:
        """Move every control, buttons last, and then those that came to light meanwhile."""
        moved, tried = set(), set()
        for _round in range(ROUNDS):
            new = [model for model in self.models if model not in moved]
            new.sort(key=lambda model: self.models[model].get("_model_name") == "ButtonModel")
            for model in new:
                state, panel = self.models[model], is_panel(self.models[model])
                for message in panel_moves(state, tried, self.steps) if panel else moves(state):
                    self.move(model, message)
            moved.update(new)

    def move(self, model: str, data: dict) -> None:
        """Send the message the browser sends when a control is moved."""
        message = self.client.session.msg("comm_msg", {"comm_id": model, "data": data})
        self.client.shell_channel.send(message)
        self.drive.moves += 1
        self._listen(message["header"]["msg_id"], self._name(model, data))
        # A panel says in place what it refuses; but it may refuse nothing that it offers.
        if is_panel(self.models[model]) and (refusal := self.models[model].get("error")):
            self.drive.errors.append(f"{self._name(model, data)}: {refusal}")

    def _listen(self, request: str, what: str) -> None:
        """Read the broadcast until the request is dealt with."""
        end = time.monotonic() + PATIENCE
        while time.monotonic() < end:
            try:
                message = self.client.get_iopub_msg(timeout=1.0)
            except Empty:
                continue
            self._learn(message, what)
            if _ends(message, request):
                return
        self.drive.errors.append(f"{what}: no answer within {PATIENCE} s")

    def _learn(self, message: dict, what: str) -> None:
        kind, content = message["msg_type"], message["content"]
        if kind == "error":
            self.drive.errors.append(f"{what}: {content['ename']}: {content['evalue']}")
        elif kind == "comm_open" and content["target_name"] == "jupyter.widget":
            self.models[content["comm_id"]] = dict(content["data"]["state"])
        elif kind == "comm_msg" and content["data"].get("method") == "update":
            self.models.setdefault(content["comm_id"], {}).update(content["data"]["state"])

    def _name(self, model: str, data: dict) -> str:
        known = self.models[model]
        to = data.get("state") or data["content"]
        return f"{known.get('description') or known.get('_model_name')}: {to}"


def _ends(message: dict, request: str) -> bool:
    is_idle = message["content"].get("execution_state") == "idle"
    return is_idle and message["parent_header"].get("msg_id") == request


def drive(notebook: Path, steps: int = PANEL_STEPS) -> Drive:
    """Run a notebook and move each of its controls over its range.

    Parameters
    ----------
    notebook : Path
        The notebook.
    steps : int
        Places between the ends of a panel's sliders.
    """
    result, start = Drive(), time.monotonic()
    cells = nbformat.read(notebook, as_version=4).cells
    with _kernel(notebook.parent, result) as client:
        session = Session(client, result, steps)
        for cell in cells:
            if cell.cell_type == "code" and cell.source.strip():
                session.run(cell.source)
        session.move_everything()
    result.seconds = time.monotonic() - start
    return result


def moves(model: dict) -> Iterator[dict]:
    """Give the messages by which a user moves a control, the ends first; at the last, back."""
    name = model.get("_model_name", "")
    if name == "ButtonModel":
        yield {"method": "custom", "content": {"event": "click"}}
        return
    key = "index" if "_options_labels" in model and "index" in model else "value"
    for value in _positions(name, key, model):
        yield {"method": "update", "state": {key: value}, "buffer_paths": []}


def _positions(name: str, key: str, model: dict) -> Iterator:
    now = model.get(key)
    if key == "index":
        yield from (*range(len(model["_options_labels"])), now)
    elif name in ("CheckboxModel", "ToggleButtonModel"):
        yield from (not now, now)
    elif name in PAIRS:
        yield from ([low, high] for low, high in pairwise([*sorted(_values(model)), model["max"]]))
        yield now
    elif name in NUMBERS:
        yield from (*_values(model), now)


def _values(model: dict) -> Iterator[float]:
    low, high, step = model["min"], model["max"], model.get("step") or 1e-6
    is_whole, base = model["_model_name"].startswith(("Int", "BoundedInt")), model.get("base")
    for part in (0, STEPS + 1, *range(1, STEPS + 1)):
        value = low + round((high - low) * part / (STEPS + 1) / step) * step
        value = min(max(value, low), high)
        value = base**value if base else value
        yield int(value) if is_whole else value


@contextmanager
def _kernel(folder: Path, result: Drive):
    with tempfile.TemporaryFile("w+", encoding="utf-8") as complaints:
        manager = KernelManager(kernel_name="python3")
        manager.start_kernel(cwd=str(folder), env=server_environment(os.environ), stderr=complaints)
        client = manager.blocking_client()
        client.start_channels()
        try:
            client.wait_for_ready(timeout=PATIENCE)
            yield client
        finally:
            client.stop_channels()
            manager.shutdown_kernel(now=True)
            complaints.seek(0)
            result.errors += [
                line.strip() for line in complaints if "Exception in comm_msg" in line
            ]
