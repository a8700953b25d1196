"""What the whole story of a pulled member takes: all cracks, and the diagram from 0 to yield.

Target on a quiet machine: 20 ms for 15 to 20 cracks and some 70 pulls; 2 ms for one state more.
"""

import pytest

from crackkit.mechanics.crack_sequence import crack_sequence
from crackkit.mechanics.tension_response import force_strain, telling_pulls, tension_response
from tests.mechanics.pulled import tie

pytestmark = pytest.mark.benchmark
MEMBER = tie(1, length=4000.0)


def story():
    sequence = crack_sequence(MEMBER)
    return sequence, force_strain(MEMBER, sequence, telling_pulls(sequence))


def test_all_cracks_and_the_diagram(benchmark):
    sequence, diagram = benchmark(story)
    assert 15 <= len(sequence.pull) <= 20
    assert len(diagram.pull) > 60
    assert benchmark.stats.stats.median < 0.060  # a floor for machines busy with other work


@pytest.mark.parametrize("pull", [4.5e4, 1e4], ids=["growing", "eased"])
def test_one_state(benchmark, pull):
    sequence = crack_sequence(MEMBER)
    state = benchmark(tension_response, MEMBER, sequence, pull, 4.5e4)
    assert len(state.cracks) > 10
    assert benchmark.stats.stats.median < 0.010
