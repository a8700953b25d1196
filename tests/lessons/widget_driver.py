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
from pathlib import Path
from queue import Empty

import nbformat
from jupyter_client.manager import KernelManager

from crackkit.launch.server import server_environment

PATIENCE = 60.0  # s for one cell
STEPS = 20


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
    models: dict[str, dict] = field(default_factory=dict)

    def run(self, code: str) -> None:
        """Run one cell."""
        self._listen(self.client.execute(code), f"cell {code.splitlines()[0]!r}")

    def move(self, model: str, state: dict) -> None:
        """Send the message the browser sends when a control is moved."""
        content = {
            "comm_id": model,
            "data": {"method": "update", "state": state, "buffer_paths": []},
        }
        message = self.client.session.msg("comm_msg", content)
        self.client.shell_channel.send(message)
        self.drive.moves += 1
        self._listen(message["header"]["msg_id"], self._name(model, state))

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

    def _name(self, model: str, state: dict) -> str:
        known = self.models[model]
        return f"{known.get('description') or known.get('_model_name')} set to {state}"


def _ends(message: dict, request: str) -> bool:
    is_idle = message["content"].get("execution_state") == "idle"
    return is_idle and message["parent_header"].get("msg_id") == request


def drive(notebook: Path) -> Drive:
    """Run a notebook and move each of its controls over its range.

    Parameters
    ----------
    notebook : Path
        The notebook.
    """
    result, start = Drive(), time.monotonic()
    cells = nbformat.read(notebook, as_version=4).cells
    with _kernel(notebook.parent, result) as client:
        session = Session(client, result)
        for cell in cells:
            if cell.cell_type == "code" and cell.source.strip():
                session.run(cell.source)
        for model in list(session.models):
            before = dict(session.models[model])
            for state in states(before):
                session.move(model, state)
    result.seconds = time.monotonic() - start
    return result


def states(model: dict) -> Iterator[dict]:
    """Give the states a user can bring a control into, the ends first; at the last, the old one."""
    name = model.get("_model_name", "")
    if name in ("IntSliderModel", "FloatSliderModel", "FloatLogSliderModel"):
        yield from ({"value": value} for value in _slider_values(model))
        yield {"value": model["value"]}
    elif name in ("CheckboxModel", "ToggleButtonModel"):
        yield from ({"value": value} for value in (not model["value"], model["value"]))
    elif "_options_labels" in model and "index" in model:
        yield from ({"index": index} for index in range(len(model["_options_labels"])))
        yield {"index": model["index"]}


def _slider_values(model: dict) -> Iterator[float]:
    low, high, step = model["min"], model["max"], model.get("step") or 1
    whole = model["_model_name"] == "IntSliderModel"
    yield from (low, high)
    for part in range(1, STEPS + 1):
        value = low + (high - low) * part / (STEPS + 1)
        value = low + round((value - low) / step) * step
        yield int(value) if whole else min(max(value, low), high)


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
