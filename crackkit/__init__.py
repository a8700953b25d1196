"""Where concrete cracks, and how bars keep the cracks too small to matter.

The names an engineer types (``SimpleBeam``, ``compare``, ...) are handed on lazily, so that
``import crackkit`` costs next to nothing.
"""

import importlib
import importlib.util
import os
import sys

__version__ = "0.1.0"

# Small solves run ten to a hundred times slower when BLAS threads fight for two cores. The
# variables count for what is loaded from now on; a numpy that is here already is told itself.
for _name in ("OPENBLAS_NUM_THREADS", "OMP_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ.setdefault(_name, "1")
if "numpy" in sys.modules and importlib.util.find_spec("threadpoolctl"):
    importlib.import_module("threadpoolctl").threadpool_limits(1)

_homes = {
    "Cantilever": "crackkit.sandbox",
    "ContinuousBeam": "crackkit.sandbox",
    "CornerSlab": "crackkit.sandbox",
    "CrackControl": "crackkit.sandbox",
    "CurledSlab": "crackkit.sandbox",
    "GroundSlab": "crackkit.sandbox",
    "SimpleBeam": "crackkit.sandbox",
    "TensionMember": "crackkit.sandbox",
    "compare": "crackkit.sandbox",
    "report": "crackkit.sandbox",
    "sweep": "crackkit.sandbox",
}

__all__ = list(_homes)


def __getattr__(name: str):
    if name in _homes:
        return getattr(importlib.import_module(_homes[name]), name)
    raise AttributeError(f"module {__name__!r} has no attribute {name!r}")


def __dir__() -> "list[str]":  # in quotes: an old Python must get as far as our message
    return sorted([*globals(), *_homes])
