"""Where things lie: the project, its environment, and the data shipped with this room."""

import os
from pathlib import Path

_room = Path(__file__).resolve().parent

PROJECT = _room.parents[1]
LESSONS = PROJECT / "lessons"
REQUIREMENTS = PROJECT / "requirements.txt"
PYPROJECT = PROJECT / "pyproject.toml"
ENVIRONMENT = PROJECT / ".venv"

JUPYTER_CONFIG = _room / "etc" / "jupyter"
JUPYTER_DATA = _room / "share" / "jupyter"


def environment_python(environment: Path = ENVIRONMENT) -> Path:
    """Give the interpreter of a virtual environment, which lies elsewhere on Windows."""
    if os.name == "nt":
        return environment / "Scripts" / "python.exe"
    return environment / "bin" / "python"
