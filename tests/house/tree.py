"""The files of the project, as git sees them or, without git, as they lie."""

import shutil
import subprocess
from functools import cache
from pathlib import Path

from crackkit.launch.places import PROJECT

_not_ours = {".git", ".venv", "out", "build", "dist", "node_modules"}


@cache
def project_files(*suffixes: str) -> tuple[Path, ...]:
    """Give the files of the project with one of some suffixes; all of them without any."""
    return tuple(
        file
        for file in _all_files()
        if file.is_file() and (file.suffix in suffixes or not suffixes)
    )


@cache
def _all_files() -> tuple[Path, ...]:
    if (PROJECT / ".git").exists() and shutil.which("git"):
        command = ["git", "ls-files", "-z", "--cached", "--others", "--exclude-standard"]
        listed = subprocess.run(command, cwd=PROJECT, capture_output=True, check=True).stdout
        return tuple(sorted(PROJECT / name for name in listed.decode().split("\0") if name))
    return tuple(
        file
        for file in sorted(PROJECT.rglob("*"))
        if not _not_ours.intersection(file.relative_to(PROJECT).parts)
        and "__pycache__" not in file.parts
    )


def name(file: Path) -> str:
    """Give a file's path from the top of the project, for the names of tests."""
    return file.relative_to(PROJECT).as_posix()
