"""Beams over equal spans, in multiples of w, L and EI."""

import numpy as np
import pytest

from crackkit.mechanics.equal_spans import equal_spans


def test_loads_on_single_spans_add_up_to_load_on_all():
    x = np.linspace(0, 4, 81)
    alone = sum(equal_spans(4, [span]).moment(x) for span in (1, 2, 3, 4))
    assert alone == pytest.approx(equal_spans(4, [1, 2, 3, 4]).moment(x), abs=1e-12)


@pytest.mark.parametrize(
    ("spans", "loaded", "support", "moment"),
    [
        (2, [1], 1, -0.0625),
        (3, [2], 1, -0.050),
        (5, [1, 3, 5], 1, -0.0526),
        (5, [1, 3, 5], 2, -0.0395),
        (5, [1, 2, 4], 1, -0.1196),
        (5, [1, 2, 4], 2, -0.0215),
    ],
)
def test_independent_recomputation_by_three_moments(spans, loaded, support, moment):
    ours = equal_spans(spans, loaded).moment(float(support))
    assert ours == pytest.approx(moment, abs=0.00005)


def test_load_beside_the_beam_is_refused():
    with pytest.raises(ValueError, match="outside"):
        equal_spans(3, [4])
