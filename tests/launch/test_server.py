"""JupyterLab, really started."""

import json
import os
import socket
import urllib.error
import urllib.request
from pathlib import Path

import pytest

from crackkit.launch import server as server_room
from crackkit.launch.places import JUPYTER_CONFIG, JUPYTER_DATA, PROJECT
from crackkit.launch.server import HOST, free_port, running_server, server_environment
from crackkit.launch.trouble import Trouble

FIRST = 19300 + 100 * int(os.environ.get("PYTEST_XDIST_WORKER", "gw0").removeprefix("gw"))


def own_home(folder: Path) -> dict[str, str]:
    plain = {k: v for k, v in os.environ.items() if not k.startswith(("JUPYTER", "CRACKKIT"))}
    homes = {"HOME": folder, "USERPROFILE": folder, "CRACKKIT_HOME": folder / "crackkit"}
    return plain | {name: str(home) for name, home in homes.items()}


def asked(address: str, token: str = "") -> dict:
    headers = {"Authorization": f"token {token}"} if token else {}
    with urllib.request.urlopen(urllib.request.Request(address, headers=headers)) as answer:
        return json.load(answer)


@pytest.fixture(scope="module")
def home(tmp_path_factory):
    """A reader with a JupyterLab of their own, with a password and settings of their own."""
    folder = tmp_path_factory.mktemp("reader")
    (folder / ".jupyter").mkdir()
    (folder / ".jupyter" / "jupyter_server_config.py").write_text(
        "c.ServerApp.port = 1\nc.IdentityProvider.token = 'theirs'\n"
    )
    return folder


@pytest.fixture(scope="module")
def running(home):
    with running_server(FIRST, variables=own_home(home)) as server:
        yield server


def test_a_taken_port_is_left_for_the_next():
    with socket.socket() as taken:
        taken.bind((HOST, 0))
        taken.listen()
        port = taken.getsockname()[1]
        assert port < free_port(port) < port + 100


def test_without_a_free_port_the_reader_is_told_what_to_type(monkeypatch):
    monkeypatch.setattr(server_room, "_ports_to_try", 0)
    with pytest.raises(Trouble, match="--port 9000"):
        free_port(8888)


def test_our_configuration_goes_before_the_reader_s_and_keeps_it():
    variables = server_environment({"JUPYTER_PATH": "theirs", "OMP_NUM_THREADS": "7"})
    assert variables["JUPYTER_PATH"] == f"{JUPYTER_DATA}{os.pathsep}theirs"
    assert variables["JUPYTER_CONFIG_PATH"] == str(JUPYTER_CONFIG)
    assert variables["OMP_NUM_THREADS"] == "7"
    assert variables["OPENBLAS_NUM_THREADS"] == "1"


def test_the_server_lets_in_only_who_has_the_token(running):
    address = f"http://{HOST}:{running.port}/api/status"
    assert "kernels" in asked(address, running.token)
    with pytest.raises(urllib.error.HTTPError, match="403"):
        asked(address)


def test_the_address_opens_the_lesson_alone_on_the_page(running):
    address = running.address(PROJECT / "lessons" / "00 start.ipynb")
    assert "/doc/tree/lessons/00%20start.ipynb?token=" in address
    assert urllib.request.urlopen(address).status == 200


def test_the_page_loads_the_extension_that_starts_lessons(running):
    address = f"http://{HOST}:{running.port}/lab?token={running.token}"
    page = urllib.request.urlopen(address).read().decode()
    config = json.loads(page.split('id="jupyter-config-data" type="application/json">')[1]
                        .split("</script>")[0])  # fmt: skip
    assert "crackkit-start" in [extension["name"] for extension in config["federated_extensions"]]
    disabled = config["disabledExtensions"]
    assert "@jupyterlab/apputils-extension:announcements" in disabled
    assert "@jupyterlab/extensionmanager-extension" in disabled


def test_the_reader_s_own_jupyter_folder_is_as_it_was(running, home):
    asked(f"http://{HOST}:{running.port}/lab/api/settings", running.token)
    asked(f"http://{HOST}:{running.port}/lab/api/workspaces", running.token)
    ours = sorted(file.name for file in (home / "crackkit" / "jupyter").iterdir())
    assert "signatures.db" in ours
    theirs = {file.name for file in (home / ".jupyter").rglob("*")} - {"migrated"}
    assert theirs == {"jupyter_server_config.py"}


def test_a_server_that_cannot_start_names_its_log(tmp_path):
    with (
        pytest.raises(Trouble, match=r"crackkit-server-\w+\.log"),
        running_server(FIRST + 50, folder=tmp_path / "nowhere", variables=own_home(tmp_path)),
    ):
        pass
