"""Which packages are needed, and which of them an interpreter lacks."""

import re
import tomllib
from importlib import metadata
from pathlib import Path

from crackkit.launch.places import PYPROJECT, REQUIREMENTS

_requirement = re.compile(r"(?P<name>[A-Za-z0-9][\w.-]*)\s*(?:>=\s*(?P<floor>[\d.]+))?")


def requirements_of_workbook(file: Path = REQUIREMENTS) -> list[str]:
    """Give the lines of requirements.txt that name a package, without their comments."""
    lines = (line.split("#")[0].strip() for line in file.read_text("utf-8").splitlines())
    return [line for line in lines if line and not line.startswith("-")]


def requirements_of_tests(file: Path = PYPROJECT) -> list[str]:
    """Give the packages of the extra ``test`` in pyproject.toml."""
    project = tomllib.loads(file.read_text("utf-8"))["project"]
    return project["optional-dependencies"]["test"]


def lacking(requirements: list[str]) -> list[str]:
    """Give the names of the packages that this interpreter lacks or has too old a release of."""
    return [name for name, floor in map(_name_and_floor, requirements) if not _has(name, floor)]


def _name_and_floor(requirement: str) -> tuple[str, str]:
    match = _requirement.match(requirement)
    if match is None:
        raise ValueError(f"not a requirement: {requirement!r}")
    return match["name"], match["floor"] or "0"


def _has(name: str, floor: str) -> bool:
    try:
        return _numbers(metadata.version(name)) >= _numbers(floor)
    except metadata.PackageNotFoundError:
        return False


def _numbers(version: str) -> tuple[int, ...]:
    return tuple(int(part) for part in re.findall(r"\d+", version)[:4])
