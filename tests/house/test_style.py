"""One style, held by tools and not by taste."""

import re
import subprocess
import sys

import pytest

from crackkit.launch.places import PROJECT
from tests.house.tree import name, project_files

LONGEST_FILE = 400
# A home folder or a scratch folder of whoever wrote the file; put together here piece by piece,
# so that this file does not find itself.
_machine_path = re.compile(
    r"(?<![\w.~<{/-])(?:/(?:" + "|".join(["root", "home", "work", "tmp", "Users"]) + r")/\w"
    r"|[A-Z]:\\+(?:Users|home)\b)"
)
_written = (".py", ".js", ".css", ".md", ".toml", ".txt", ".json", ".ipynb", ".svg", "")


def tool(*command: str) -> subprocess.CompletedProcess:
    return subprocess.run(
        [sys.executable, "-m", *command], cwd=PROJECT, capture_output=True, text=True
    )


def test_ruff_finds_nothing():
    checked = tool("ruff", "check", "--no-cache", "--output-format=concise", ".")
    assert checked.returncode == 0, checked.stdout


def test_every_file_is_formatted():
    checked = tool("ruff", "format", "--no-cache", "--check", ".")
    assert checked.returncode == 0, checked.stdout


@pytest.mark.parametrize("file", project_files(".py", ".js", ".css"), ids=name)
def test_no_file_grows_past_the_limit(file):
    assert len(file.read_text("utf-8").splitlines()) <= LONGEST_FILE


@pytest.mark.parametrize("file", project_files(*_written), ids=name)
def test_no_file_names_a_path_of_one_machine(file):
    found = [
        f"line {number}: {line.strip()[:120]}"
        for number, line in enumerate(file.read_text("utf-8").splitlines(), 1)
        if _machine_path.search(line)
    ]
    assert found == []


@pytest.mark.parametrize(
    ("line", "is_caught"),
    [
        ("open('/" + "home/anna/x.csv')", True),
        ('"C:\\' + 'Users\\anna"', True),
        ("lessons/home/page", False),
        ("https://example.org/home/page", False),
    ],
)
def test_a_path_of_a_machine_would_be_noticed(line, is_caught):
    assert bool(_machine_path.search(line)) == is_caught


def test_the_top_of_the_project_stays_clear():
    allowed = {"README.md", "DEVELOPERS.md", "LICENSE", "requirements.txt", "pyproject.toml"}
    allowed |= {"lessons", "crackkit", "tests", "figures", "binder", ".ci", ".gitignore"}
    top = {file.relative_to(PROJECT).parts[0] for file in project_files()}
    assert top - allowed == set()
