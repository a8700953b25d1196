"""Which room may know which other, and what each may pull in from outside."""

import importlib.util
import json
import subprocess
import sys

import pytest

from crackkit.launch.places import PROJECT

NUMBERS = {"numpy", "scipy"}
UNITS = {"pint", "flexcache", "flexparser", "platformdirs", "typing_extensions"}

# What a room, every module of it, may load from outside the standard library. The painter for
# print is loaded by need, so drawing as such must do without matplotlib.
MAY_LOAD = {
    "crackkit": set(),
    "crackkit.words": set(),
    "crackkit.launch": set(),
    "crackkit.mechanics": NUMBERS,
    "crackkit.structures": NUMBERS,
    "crackkit.checks": NUMBERS,
    "crackkit.derive": {"sympy", "mpmath"},
    "crackkit.learning": NUMBERS | {"filelock", "platformdirs"},
    "crackkit.units": NUMBERS | UNITS,
    "crackkit.drawing": NUMBERS,
    "crackkit.sandbox": NUMBERS | UNITS,
}
ONLY_ITSELF = {"crackkit", "crackkit.drawing"}

_ASK = """
import importlib, json, pkgutil, sys
before = set(sys.modules)
room, whole = sys.argv[1], sys.argv[2] == "whole"
module = importlib.import_module(room)
if whole:
    for found in pkgutil.walk_packages(getattr(module, "__path__", []), room + "."):
        importlib.import_module(found.name)
roots = {name.split(".")[0] for name in set(sys.modules) - before}
outside = {r for r in roots if r not in sys.stdlib_module_names and not r.startswith("_")}
print(json.dumps(sorted(outside - {"crackkit"})))
"""
_TIME = """
import time
start = time.perf_counter()
import crackkit
print(time.perf_counter() - start)
"""


def fresh_interpreter(program: str, *arguments: str) -> str:
    command = [sys.executable, "-c", program, *arguments]
    ended = subprocess.run(command, cwd=PROJECT, capture_output=True, text=True)
    assert ended.returncode == 0, ended.stderr
    return ended.stdout


def exists(room: str) -> bool:
    return importlib.util.find_spec(room) is not None


@pytest.mark.parametrize("room", [room for room in MAY_LOAD if exists(room)])
def test_a_room_loads_only_what_it_may(room):
    extent = "alone" if room in ONLY_ITSELF else "whole"
    loaded = set(json.loads(fresh_interpreter(_ASK, room, extent)))
    assert loaded - MAY_LOAD[room] == set()


def test_loading_crackkit_alone_takes_no_time():
    seconds = min(float(fresh_interpreter(_TIME)) for _ in range(3))
    assert seconds < 0.050


def test_imports_keep_to_the_contracts():
    program = "from importlinter.cli import lint_imports; raise SystemExit(lint_imports())"
    ended = subprocess.run(
        [sys.executable, "-c", program], cwd=PROJECT, capture_output=True, text=True
    )
    broken = ended.stdout[ended.stdout.find("Contracts") :]
    assert ended.returncode == 0, broken or ended.stderr
