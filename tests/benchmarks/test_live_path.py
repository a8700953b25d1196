"""What the kernel spends on one live picture: solve, compose, write.

Targets on a quiet machine with two cores (median), together: 6 ms for a beam or an arm, 15 ms for
a floor over six spans, 10 ms for a pulled member whose history is known and for a choice of bars.
The mechanics of a slab that curls may take 12 ms for another place of its wheel.
"""

import pytest

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.structures.cantilever import Cantilever
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.structures.fields import fitted
from crackkit.structures.ground_slab import GroundSlab
from crackkit.structures.simple_beam import SimpleBeam
from tests.benchmarks.floors import six_spans
from tests.benchmarks.ties import long_tie

pytestmark = pytest.mark.benchmark
VIEW = View(width=840.0)


# structure, one of its inputs and a value to drag it to; a median for machines busy otherwise [s]
CASES = {
    "beam": (SimpleBeam(), {"loads.0.at": 2500.0}, 0.030),
    "arm": (Cantilever(uniform_load=25.0), {"loads.0.from_root": 1300.0}, 0.030),
    "tie": (long_tie(), {"pull": 120e3}, 0.050),
    "choice": (CrackControl(), {"spacing": 130.0}, 0.050),
    "ground": (
        GroundSlab(left=0.9, right=0.9, steel="12", spacing=100.0),
        {"age": 300.0},
        0.080,
    ),
    "curled": (
        CurledSlab(thickness=100.0, shrinks=9e-4, loads=(WheelLoad(25e3),)),
        {"loads.0.x": 340.0},
        0.080,
    ),
    "floor": (six_spans(), {"loads.0.at": 2600.0}, 0.080),
}


@pytest.fixture(params=CASES)
def case(request):
    return CASES[request.param]


def test_solve(benchmark, case):
    outcome = benchmark(case[0].solve)
    assert outcome.cracks


def test_picture(benchmark, case):
    outcome = case[0].solve()
    assert benchmark(picture_of.picture, outcome, VIEW).shapes


def test_svg(benchmark, case):
    picture = picture_of.picture(case[0].solve(), VIEW)
    assert len(benchmark(svg, picture)) > 15_000


def test_change_solve_picture_and_svg(benchmark, case):
    structure, change, most = case

    def one_step():
        dragged, _moved = fitted(structure, change)
        return svg(picture_of.picture(dragged.solve(), VIEW))

    assert benchmark(one_step).endswith("</svg>")
    assert benchmark.stats.stats.median < most
