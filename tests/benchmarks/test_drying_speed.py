"""What three years of drying take.

Targets on a quiet machine: 6 ms for the humidity of three years; 2 ms for the stress it comes with.
"""

import pytest

from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.humidity_shrinkage import dry_shrinkage, shrinkage_history
from crackkit.mechanics.moisture_diffusion import (
    SEALED,
    Face,
    drying_history,
    on_ground,
)
from crackkit.mechanics.moisture_diffusivity import diffusivity_mc1990
from crackkit.mechanics.surface_stress import surface_stress

pytestmark = pytest.mark.benchmark
BOTTOMS = {"sealed": SEALED, "damp ground": on_ground(), "air": Face(0.5)}


@pytest.mark.parametrize("bottom", BOTTOMS.values(), ids=BOTTOMS)
def test_three_years_of_humidity(benchmark, bottom):
    found = benchmark(drying_history, 150.0, diffusivity_mc1990(30.0), Face(0.5), bottom)
    assert found.days[-1] == pytest.approx(1095.0)
    assert benchmark.stats.stats.median < 0.018  # a floor for machines busy with other work


def test_the_stress_of_three_years(benchmark):
    moisture = drying_history(150.0, diffusivity_mc1990(30.0), Face(0.5))
    shrinkage = shrinkage_history(moisture, dry_shrinkage(38.0))
    slab, mix = DryingSlab(30.0, 50.0, 150.0), concrete(30.0, 150.0, "EN")
    found = benchmark(surface_stress, shrinkage, slab, mix, "EN")
    assert found.crazes.any()
    assert benchmark.stats.stats.median < 0.008
