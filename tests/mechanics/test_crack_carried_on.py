"""A crack carried on from an earlier rest, against the whole path, step by step."""

import numpy as np
import pytest

from crackkit.mechanics.cohesive_crack import cut_before
from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.crack_at_load import out_of_balance
from crackkit.mechanics.crack_carried_on import carried_on
from crackkit.mechanics.crack_growth import Opened, at_load
from tests.mechanics.test_bars_across_crack import diagonal, floor
from tests.mechanics.test_cohesive_crack import l_panel

BRITTLE, TOUGH = CohesiveLaw(2.9, 0.12, "bilinear"), CohesiveLaw(2.9, 0.12, fibres=(0.8, 0.6))
STRAINS = [10e-6, 30e-6, 36e-6, 60e-6, 90e-6, 150e-6, 400e-6]


@pytest.fixture(scope="module")
def slab():
    return floor()


@pytest.mark.parametrize("law", [BRITTLE, TOUGH], ids=["brittle", "tough"])
@pytest.mark.parametrize("bars", [0, 2])
def test_from_load_to_load_it_comes_to_the_rest_of_the_whole_path(slab, law, bars):
    crack = slab.crack(law, [diagonal(60.0 + 100.0 * k) for k in range(bars)])
    found = at_load(crack, STRAINS[0])
    for strain in STRAINS[1:]:
        found = carried_on(crack, strain, found)
        assert found.load == strain
        assert out_of_balance(crack, found) < 1e-6
        assert found.q == pytest.approx(at_load(crack, strain).q, rel=5e-3, abs=2e-4)


def test_small_steps_and_one_great_step_end_alike(slab):
    crack = slab.crack(TOUGH, [diagonal(60.0)])
    first = at_load(crack, 20e-6)
    by_steps = first
    for strain in np.linspace(30e-6, 300e-6, 10):
        by_steps = carried_on(crack, strain, by_steps)
    assert carried_on(crack, 300e-6, first).q == pytest.approx(by_steps.q, rel=5e-3, abs=2e-4)


def test_concrete_that_has_grown_stronger_since_keeps_what_was_torn(slab):
    """A crack that has run does not close for strength that is gained later."""
    young, old = slab.crack(BRITTLE), slab.crack(CohesiveLaw(5.8, 0.24, "bilinear"))
    ran = at_load(young, 45e-6)
    later, mouth = carried_on(old, 45e-6, ran), ran.q[: old.count].max()
    assert np.all(later.greatest >= ran.greatest)
    assert later.q[: old.count].max() > 0.9 * mouth
    assert at_load(old, 45e-6).q[: old.count].max() < 0.2 * mouth  # had it been as strong before


@pytest.mark.parametrize("bars", [2, 3])
@pytest.mark.parametrize("apart", [0.0, 1e-7])
def test_bars_that_lie_in_one_place_stop_nobody(slab, bars, apart):
    """Their elongations are one and the same, so the compliance has no inverse."""
    crack = slab.crack(BRITTLE, [diagonal(60.0 + apart * k) for k in range(bars)])
    found = at_load(crack, 30e-6)
    for strain in (60e-6, 150e-6, 400e-6):
        found = carried_on(crack, strain, found)
        assert found.q == pytest.approx(at_load(crack, strain).q, rel=5e-3, abs=2e-4)


def test_a_joint_opens_as_if_it_had_never_stood_anywhere(slab):
    crack = slab.crack(BRITTLE, share=cut_before(slab.line, np.inf))
    whole = carried_on(crack, 200e-6, at_load(crack, 100e-6))
    assert whole.q == pytest.approx(at_load(crack, 200e-6).q, rel=1e-6, abs=1e-7)


def test_nothing_new_moves_nothing(slab):
    crack = slab.crack(BRITTLE, [diagonal(60.0)])
    here = at_load(crack, 80e-6)
    again = carried_on(crack, here.load, here)
    assert again.q == pytest.approx(here.q, abs=1e-6)


def test_a_load_too_great_has_no_answer():
    crack = l_panel(50.0)[2]
    nothing = Opened(0.0, np.zeros(len(crack.compliance)), np.zeros(crack.count))
    assert carried_on(crack, 20e3, nothing) is None
