"""JupyterLab as the workbook starts it: on this computer only, quiet, with our configuration."""

import os
import secrets
import socket
import subprocess
import sys
import tempfile
import time
import urllib.error
import urllib.request
from collections.abc import Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path

from crackkit.launch.places import JUPYTER_CONFIG, JUPYTER_DATA, PROJECT
from crackkit.launch.trouble import Trouble
from crackkit.words import _

HOST = "127.0.0.1"
USUAL_PORT = 8888
_ports_to_try = 100
# Ctrl-C is for us: a server that takes it too, and is told a second time, leaves kernels behind.
_own_process_group = (
    {"creationflags": subprocess.CREATE_NEW_PROCESS_GROUP}
    if os.name == "nt"
    else {"process_group": 0}
)
_direct = urllib.request.build_opener(urllib.request.ProxyHandler({}))  # never by way of a proxy
_patience = 90.0  # s; a first start from a slow disk compiles every module


@dataclass(frozen=True)
class Server:
    """A running JupyterLab.

    Parameters
    ----------
    port : int
        Where it listens on this computer.
    token : str
        What lets a browser in.
    folder : Path
        What it serves.
    log : Path
        What it has to say.
    process : subprocess.Popen
        The server itself.
    """

    port: int
    token: str
    folder: Path
    log: Path
    process: subprocess.Popen

    def address(self, file: Path) -> str:
        """Give the address at which a file under the folder is shown alone on the page."""
        path = urllib.request.pathname2url(file.relative_to(self.folder).as_posix())
        return f"http://{HOST}:{self.port}/doc/tree/{path}?token={self.token}"


@contextmanager
def running_server(
    port: int = USUAL_PORT,
    folder: Path = PROJECT,
    variables: Mapping[str, str] = os.environ,
    options: Sequence[str] = (),
) -> Iterator[Server]:
    """Start JupyterLab, hand it over when it answers, stop it at the end.

    Parameters
    ----------
    port : int
        The first port to try; the next free one is taken.
    folder : Path
        What the file list of the page shows.
    variables : mapping
        Environment variables to start from.
    options : sequence of str
        More options of JupyterLab; the tests use them.

    Raises
    ------
    Trouble
        If no port is free, or the server does not come up; the message names its log.
    """
    token = secrets.token_hex(24)
    port = free_port(port)
    handle, name = tempfile.mkstemp(prefix="crackkit-server-", suffix=".log")
    with os.fdopen(handle, "wb") as record:
        process = subprocess.Popen(
            [*_command(port, folder), *options],
            env=server_environment(variables) | {"JUPYTER_TOKEN": token},
            stdin=subprocess.DEVNULL,
            stdout=record,
            stderr=subprocess.STDOUT,
            **_own_process_group,
        )
    server = Server(port, token, folder, Path(name), process)
    try:
        _wait_for(server)
        yield server
    finally:
        _stop(server)
    server.log.unlink(missing_ok=True)


def server_environment(variables: Mapping[str, str]) -> dict[str, str]:
    """Give the variables under which JupyterLab finds our configuration, before the reader's own.

    Nothing is written into the reader's own Jupyter folders.
    """
    environment = dict(variables)
    for name, ours in {
        "JUPYTER_CONFIG_PATH": JUPYTER_CONFIG,
        "JUPYTER_PATH": JUPYTER_DATA,
        "PYTHONPATH": PROJECT,
    }.items():
        theirs = environment.get(name)
        environment[name] = os.pathsep.join([str(ours), *([theirs] if theirs else [])])
    # Before a notebook imports numpy by itself: small solves are slower on several threads.
    for name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"):
        environment.setdefault(name, "1")
    return environment


def free_port(first: int) -> int:
    """Give the first port, from a number upwards, on which nobody listens here.

    Raises
    ------
    Trouble
        If a hundred ports in a row are taken.
    """
    for port in range(first, min(first + _ports_to_try, 65536)):
        with socket.socket(socket.AF_INET, socket.SOCK_STREAM) as candidate:
            try:
                candidate.bind((HOST, port))
            except OSError:
                continue
            return port
    raise Trouble(
        _("No free port found from {first} upwards. Try another: --port 9000").format(first=first)
    )


def _command(port: int, folder: Path) -> list[str]:
    command = [sys.executable, "-m", "jupyterlab", "--no-browser", f"--ServerApp.ip={HOST}"]
    command += [f"--ServerApp.port={port}", "--ServerApp.port_retries=0"]
    command += [f"--ServerApp.root_dir={folder}", "--ServerApp.answer_yes=True"]
    # In a container everybody is root, and the server refuses root unless told.
    is_root = hasattr(os, "geteuid") and os.geteuid() == 0
    return [*command, "--allow-root"] if is_root else command


def _wait_for(server: Server) -> None:
    end = time.monotonic() + _patience
    while time.monotonic() < end and server.process.poll() is None:
        try:
            with _direct.open(f"http://{HOST}:{server.port}/api", timeout=5):
                return
        except (urllib.error.URLError, OSError):
            time.sleep(0.05)
    raise Trouble(_("JupyterLab did not start. What it said is in {log}").format(log=server.log))


def _stop(server: Server) -> None:
    """Ask the server to end, which ends its kernels too; insist only if it does not listen."""
    request = urllib.request.Request(
        f"http://{HOST}:{server.port}/api/shutdown",
        method="POST",
        headers={"Authorization": f"token {server.token}"},
    )
    for insist in (lambda: _direct.open(request, timeout=5).close(), server.process.terminate):
        try:
            insist()
            server.process.wait(timeout=10)
            return
        except (OSError, subprocess.TimeoutExpired):
            continue
    server.process.kill()
    server.process.wait()
