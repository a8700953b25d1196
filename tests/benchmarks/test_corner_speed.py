"""What a slab with an inside corner takes when something of it is changed.

Targets on a quiet machine: 150 ms for a new plan, 50 ms for any other slider, 150 ms for the curve
of its openings over the ages. What the reader waits for is both: the picture draws that curve.
"""

from dataclasses import replace
from itertools import count

import pytest

from crackkit.drawing.frames import View
from crackkit.drawing.picture_of import picture
from crackkit.structures.corner_slab import CornerSlab

pytestmark = pytest.mark.benchmark
NEW, SLIDER, CURVE = 0.450, 0.150, 0.450  # floors for machines busy with other work
SLAB = CornerSlab(diagonals="16", diagonal_count=3)
OPENING = CornerSlab(shape="opening", holds=0.3, diagonals="16")

# what changes at step k, the slab, and the floor
CASES = {
    "new plan": (SLAB, lambda k: {"length": 6100.0 + k}, NEW),
    "opening dragged": (OPENING, lambda k: {"cut_x": 2600.0 + k}, NEW),
    "corner rounded": (SLAB, lambda k: {"rounding": 100.0 + k}, NEW),
    "held harder": (SLAB, lambda k: {"holds": 0.30 + 1e-3 * k}, SLIDER),
    "age": (SLAB, lambda k: {"age": 100.0 + 10.0 * k}, SLIDER),
    "bars dragged": (SLAB, lambda k: {"diagonal_off": 30.0 + 2.0 * k}, SLIDER),
    "humidity": (SLAB, lambda k: {"humidity": 0.40 + 1e-3 * k}, SLIDER),
    "mat": (SLAB, lambda k: {"mat": "10", "spacing": 100.0 + k}, SLIDER),
    "fibres": (SLAB, lambda k: {"fibres": "tested", "residual_1": 1.0 + 0.01 * k}, SLIDER),
    "age on its base": (replace(SLAB, held="base"), lambda k: {"age": 100.0 + 10.0 * k}, SLIDER),
}


@pytest.mark.parametrize("case", CASES)
def test_a_change(benchmark, case):
    slab, change, floor = CASES[case]
    steps = count()
    outcome = benchmark.pedantic(
        lambda: replace(slab, **change(next(steps))).solve(), rounds=15, warmup_rounds=1
    )
    assert outcome.cornered.settled and outcome.cornered.share > 0
    assert benchmark.stats.stats.median < floor


@pytest.mark.parametrize("case", CASES)
def test_a_change_and_its_picture(benchmark, case):
    slab, change, floor = CASES[case]
    steps = count()

    def shown():
        return picture(replace(slab, **change(next(steps))).solve(), View("SI", width=900))

    assert benchmark.pedantic(shown, rounds=15, warmup_rounds=1).shapes
    assert benchmark.stats.stats.median < 2 * floor


def test_the_curve_over_the_ages(benchmark):
    steps = count()
    slabs = [replace(SLAB, strength=25.0 + 0.1 * k) for k in range(12)]
    states = [slab.cornered for slab in slabs]
    openings = benchmark.pedantic(lambda: states[next(steps)].openings, rounds=10, warmup_rounds=1)
    assert openings[-1] > openings[0]
    assert benchmark.stats.stats.median < CURVE
