"""The border is light: neither pint nor numpy is loaded before it is needed."""

import subprocess
import sys
from pathlib import Path

import pytest

import crackkit

ROOT = Path(crackkit.__file__).parents[1]
HEAVY = ("pint", "numpy", "crackkit.structures", "crackkit.mechanics")


def _printed(script: str) -> str:
    command = [sys.executable, "-c", script]
    done = subprocess.run(command, capture_output=True, text=True, cwd=ROOT, check=True)
    return done.stdout.strip()


@pytest.mark.parametrize(
    "code",
    [
        "import crackkit.units",
        "from crackkit.units import shown; shown(6096.0, 'length', 'US')",
        "from crackkit.units import parse; parse('20 ft', 'length')",
        "from crackkit.units import parse; parse('240 in', 'length'); parse('10 kips', 'force')",
        "from crackkit.units import parse; parse('''20'-6\"''', 'length')",
        "from crackkit.units import slider_range; slider_range(1000, 9000, 'length', 'US')",
    ],
)
def test_everyday_use_loads_nothing_heavy(code):
    script = f"{code}\nimport sys\nprint([m for m in {HEAVY!r} if m in sys.modules])"
    assert _printed(script) == "[]"


def test_a_rarer_unit_loads_the_algebra_once():
    script = (
        "from crackkit.units import parse\n"
        "from crackkit.units.algebra import _registry\n"
        "parse('900 plf', 'line_load'); parse('9 yd', 'length')\n"
        "print(_registry.cache_info().misses)"
    )
    assert _printed(script) == "1"
