"""What it takes to let a slab crack bond by bond, points and all.

Target on a quiet machine: 200 ms for the whole run, new geometry and new seed each time; 10 ms for
the picture of a frame.
"""

from itertools import count

import pytest

from crackkit.drawing.lattice_picture import picture
from crackkit.drawing.svg import svg
from crackkit.mechanics.lattice import lattice_run
from crackkit.mechanics.plane_bodies import slab_with_opening
from crackkit.structures.corner_slab import CornerSlab
from tests.mechanics.lattices import CONCRETE, L_SLAB, ROLLERS

pytestmark = pytest.mark.benchmark
BUSY = 3.0  # times the target, for machines busy with other work


@pytest.fixture
def seeds():
    return count()


def test_an_l_slab_cracks(benchmark, seeds):
    run = benchmark(lambda: lattice_run(L_SLAB, ROLLERS, CONCRETE, 3e-4, next(seeds)))
    assert len(run.order) > 200
    assert benchmark.stats.stats.median < BUSY * 0.2


def test_a_slab_with_an_opening_cracks_for_as_many_steps_as_there_are(benchmark, seeds):
    outline = slab_with_opening(6000.0, 6000.0, (3000.0, 3000.0), (1200.0, 1200.0))
    run = benchmark(lambda: lattice_run(outline, ROLLERS, CONCRETE, 1e-3, next(seeds)))
    assert run.ended == "steps"
    assert benchmark.stats.stats.median < BUSY * 0.2


def test_a_frame_is_drawn(benchmark, seeds):
    run = lattice_run(L_SLAB, ROLLERS, CONCRETE, 3e-4)
    slab = CornerSlab(shape="corner", held="edges")
    drawn = benchmark(lambda: svg(picture(slab, run, next(seeds) % len(run.frames))))
    assert len(drawn) < 40_000
    assert benchmark.stats.stats.median < BUSY * 0.01
