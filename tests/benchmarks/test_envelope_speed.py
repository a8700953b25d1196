"""What the bounds and the redistribution of a six-span floor take.

Targets on a quiet machine: 1 ms for the bounds of 64 arrangements, 60 positions and 400 stations;
1.5 ms for the moments once cracks have shifted them, at 250 stations.
"""

import numpy as np
import pytest

from crackkit.mechanics.beam import LineLoad, Support, solve
from crackkit.mechanics.envelope import moment_envelope
from crackkit.mechanics.redistribution import redistributed
from crackkit.mechanics.tension_stiffening import mean_curvature

pytestmark = pytest.mark.benchmark
SPANS, L, EI = 6, 6000.0, 3e13
SUPPORTS = [Support(L * i) for i in range(SPANS + 1)]
ALWAYS = [LineLoad(0.0, SPANS * L, 12.0)]


def test_bounds_of_all_arrangements(benchmark):
    live = [LineLoad(L * i, L * (i + 1), 10.0) for i in range(SPANS)]
    x = np.union1d(np.linspace(0.0, SPANS * L, 397), [s.at for s in SUPPORTS])
    positions = np.linspace(0.0, SPANS * L, 60)
    found = benchmark(moment_envelope, SPANS * L, SUPPORTS, ALWAYS, live, [5e4], positions, x, EI)
    assert (found.sagging > found.hogging)[1:-1].all()
    assert benchmark.stats.stats.median < 0.010  # a floor for machines busy with other work


@pytest.mark.parametrize("beta", [0.5, 1.0])
def test_moments_shifted_by_cracks(benchmark, beta):
    x = np.union1d(np.linspace(0.0, SPANS * L, 247), [s.at for s in SUPPORTS])
    M = solve(SPANS * L, SUPPORTS, [LineLoad(0.0, SPANS * L, 20.0)], EI).moment(x)

    def law(M):
        return mean_curvature(M, 30e6, EI, 0.3 * EI, beta)

    found = benchmark(redistributed, x, M, SUPPORTS, law, (), EI)
    assert found.converged
    assert benchmark.stats.stats.median < 0.015
