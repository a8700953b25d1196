"""Installing, with a stand-in for pip: what it prints is printed by a script of ours."""

import os
from pathlib import Path

import pytest

from crackkit.launch.installation import install
from crackkit.launch.trouble import Trouble

pytestmark = pytest.mark.skipif(os.name == "nt", reason="the stand-in for pip is a shell script")


@pytest.fixture
def pip_that(tmp_path):
    def made(says: str, exit_code: int = 0) -> Path:
        script = tmp_path / "python"
        script.write_text(f"#!/bin/sh\ncat <<'END'\n{says}\nEND\nexit {exit_code}\n")
        script.chmod(0o755)
        return script

    return made


def test_progress_ends_with_how_many_packages_are_put_in_place(pip_that, tmp_path, capsys):
    python = pip_that("Collecting a\nCollecting b-c>=1\nInstalling collected packages: a, b-c")
    install(python, [], tmp_path, tmp_path / "log")
    assert capsys.readouterr().out.strip().startswith("putting 2 packages in place")


def test_everything_pip_says_is_in_the_log(pip_that, tmp_path):
    install(pip_that("Collecting a\nsomething rare"), [], tmp_path, tmp_path / "log")
    assert "something rare" in (tmp_path / "log").read_text()


def test_without_a_network_the_message_says_so(pip_that, tmp_path):
    python = pip_that(
        "Collecting a\nWARNING: Retrying after connection broken by 'NewConnectionError(...)'\n"
        "ERROR: Could not find a version that satisfies the requirement a",
        exit_code=1,
    )
    with pytest.raises(Trouble, match="no network connection"):
        install(python, [], tmp_path, tmp_path / "log")


def test_another_failure_names_pip_s_error_and_the_log(pip_that, tmp_path):
    python = pip_that("  OSError: [Errno 28] No space left on device", exit_code=1)
    with pytest.raises(Trouble, match=r"No space left on device(.|\n)*pip\.log"):
        install(python, [], tmp_path, tmp_path / "pip.log")
