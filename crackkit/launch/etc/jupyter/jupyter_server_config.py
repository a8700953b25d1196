"""How the workbook's server differs from a plain one; used by its start command only."""

import os
from pathlib import Path

import nbformat
import platformdirs
from jupyter_server.services.kernels.connection.channels import ZMQChannelsWebsocketConnection
from nbformat.sign import NotebookNotary

_project = Path(__file__).resolve().parents[4]
_home = Path(
    os.environ.get("CRACKKIT_HOME") or platformdirs.user_data_path("crackkit", False)
).expanduser()
_jupyter = _home / "jupyter"
_jupyter.mkdir(parents=True, exist_ok=True)


class PromptConnection(ZMQChannelsWebsocketConnection):
    """Send each small message at once: held back, pictures stutter while a slider is dragged."""

    def connect(self):
        """Switch Nagle's algorithm off, then connect."""
        self.websocket_handler.set_nodelay(True)
        return super().connect()


WIDGET = "application/vnd.jupyter.widget-view+json"
_handed_out = {file.name for file in (_project / "lessons").glob("*.ipynb")}


def store_lesson(model, path="", **_):
    """Keep a lesson as it was handed out; keep the still pictures of a copy.

    The lesson itself is stripped, so that it opens fresh. A copy under a name of its own is
    somebody's work: it keeps what it showed, without the widgets, which are dead without a
    kernel and would stand before the pictures.
    """
    notebook = model["content"]
    if model["type"] != "notebook" or "crackkit" not in notebook["metadata"]:
        return
    keep = Path(path).name not in _handed_out
    notebook["metadata"].pop("widgets", None)
    notebook["metadata"]["language_info"] = {"name": "python"}
    for cell in notebook["cells"]:
        cell["metadata"].pop("execution", None)
        if cell["cell_type"] == "code":
            cell["outputs"] = [_still(output) for output in cell["outputs"]] if keep else []
            cell["execution_count"] = cell["execution_count"] if keep else None


def _still(output):
    data = output.get("data", {})
    if WIDGET in data and "text/html" in data:
        return {**output, "data": {kind: data[kind] for kind in data if kind != WIDGET}}
    return output


def trust_lessons(notary: NotebookNotary) -> None:
    """Sign the lessons that lie beside this package: their buttons and pictures then show."""
    for file in sorted((_project / "lessons").rglob("*.ipynb")):
        try:
            lesson = nbformat.read(file, as_version=4)
        except (OSError, ValueError):  # a broken file is for the page to report, not for the start
            continue
        if "crackkit" in lesson.metadata:
            notary.sign(lesson)
    notary.store.close()


_signatures = {
    "db_file": str(_jupyter / "signatures.db"),
    "secret_file": str(_jupyter / "signature_secret"),
}
trust_lessons(NotebookNotary(**_signatures))

c.NotebookNotary.update(_signatures)
c.ServerApp.kernel_websocket_connection_class = PromptConnection
# A lesson nobody looks at any more gives its memory back (s).
c.MappingKernelManager.cull_idle_timeout = 1800
c.FileContentsManager.pre_save_hook = store_lesson
if "JUPYTER_TOKEN" in os.environ:  # a token or password of the reader's own must not lock us out
    c.IdentityProvider.token = os.environ["JUPYTER_TOKEN"]

# The reader's own JupyterLab keeps its settings and its open tabs; the workbook has its own.
c.LabApp.user_settings_dir = str(_jupyter / "settings")
c.LabApp.workspaces_dir = str(_jupyter / "workspaces")
