"""What the kernel spends on one live picture: solve, compose, write.

Target on a quiet machine with two cores: 6 ms together (median).
"""

import pytest

from crackkit.drawing.beam_picture import beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.structures.fields import fitted
from crackkit.structures.simple_beam import SimpleBeam

pytestmark = pytest.mark.benchmark
BEAM, VIEW = SimpleBeam(), View()


def test_solve(benchmark):
    outcome = benchmark(BEAM.solve)
    assert len(outcome.cracks) > 30


def test_picture(benchmark):
    outcome = BEAM.solve()
    assert benchmark(beam_picture, outcome, VIEW).shapes


def test_svg(benchmark):
    picture = beam_picture(BEAM.solve(), VIEW)
    assert len(benchmark(svg, picture)) > 20_000


def test_change_solve_picture_and_svg(benchmark):
    def one_step():
        beam, _moved = fitted(BEAM, {"loads.0.at": 2500.0})
        return svg(beam_picture(beam.solve(), VIEW))

    assert benchmark(one_step).endswith("</svg>")
    assert benchmark.stats.stats.median < 0.030  # a floor for machines busy with other work
