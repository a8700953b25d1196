"""The quick way to a crack at rest, against the whole path, step by step."""

import numpy as np
import pytest

from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.crack_at_load import quick_at_load
from crackkit.mechanics.crack_growth import at_load, growth
from tests.mechanics.test_bars_across_crack import diagonal, floor
from tests.mechanics.test_cohesive_crack import l_panel

BRITTLE, TOUGH = CohesiveLaw(2.9, 0.12, "bilinear"), CohesiveLaw(2.9, 0.12, fibres=(0.8, 0.6))


@pytest.fixture(scope="module")
def slab():
    return floor()


@pytest.mark.parametrize("strain", [10e-6, 30e-6, 36e-6, 60e-6, 150e-6, 400e-6])
@pytest.mark.parametrize("law", [BRITTLE, TOUGH], ids=["brittle", "tough"])
@pytest.mark.parametrize("bars", [0, 2])
def test_it_comes_to_the_same_rest_as_the_whole_path(slab, strain, law, bars):
    crack = slab.crack(law, [diagonal(60.0 + 100.0 * k) for k in range(bars)])
    exact, quick = at_load(crack, strain), quick_at_load(crack, strain)
    assert quick.load == pytest.approx(strain, rel=2e-4)
    assert quick.q == pytest.approx(exact.q, rel=5e-3, abs=2e-4)


def test_it_comes_to_rest_in_balance(slab):
    crack = slab.crack(BRITTLE, [diagonal(60.0)])
    for strain in (30e-6, 200e-6):
        found = quick_at_load(crack, strain)
        pushed = crack.forces(found.q, found.greatest)
        pushed[: 2 * crack.count] -= np.tile(crack.springs, 2) * found.q[: 2 * crack.count]
        at_start, per_load = crack.responses
        left = found.q - at_start - found.load * per_load + crack.compliance @ pushed
        assert abs(left).max() < 1e-6


@pytest.mark.parametrize("share", [0.5, 0.9, 0.99])
def test_a_load_below_the_greatest_leaves_the_crack_narrow(share):
    crack = l_panel(25.0)[2]
    most = max(step.load for step in growth(crack, mean=0.05))
    exact, quick = at_load(crack, share * most), quick_at_load(crack, share * most)
    assert quick.q[0] == pytest.approx(exact.q[0], rel=2e-3)


def test_no_load_opens_nothing(slab):
    crack = slab.crack(BRITTLE)
    assert not quick_at_load(crack, 1e-15).q.any()


def test_a_load_too_great_has_no_answer():
    with pytest.raises(ArithmeticError, match="torn apart"):
        quick_at_load(l_panel(50.0)[2], 20e3)
