"""Slabs with inside corners, shared by several tests."""

import numpy as np
from hypothesis import strategies as st

from crackkit.structures.corner_slab import CornerSlab
from tests.structures.drawn import anywhere

# one of each shape, held so that it cracks
CASES = {
    "corner": CornerSlab(),
    "rounded": CornerSlab(rounding=150.0, holds=0.3),
    "ends": CornerSlab(held="ends", holds=0.4),
    "opening": CornerSlab(shape="opening", holds=0.4),
    "circle": CornerSlab(shape="opening", rounding=600.0, holds=0.6),
    "column": CornerSlab(shape="column", holds=0.4),
    "turned": CornerSlab(shape="column", turn="turned", holds=0.4),
    "round": CornerSlab(shape="column", turn="round", holds=0.6),
    "door": CornerSlab(shape="door", held="ends", holds=0.4),
    "depot": CornerSlab(shape="depot", holds=0.3),
}


SHAPES = ("corner", "opening", "column", "door", "depot")


@st.composite
def corner_slabs(draw, **fixed):
    """Any slab that the ranges allow."""
    start = CornerSlab(shape=draw(st.sampled_from(SHAPES)))
    return anywhere(draw, start, {"shape": start.shape, **fixed})


def widest(slab) -> float:
    """Greatest opening of the crack that is worked out [mm]."""
    return float(np.max(slab.cornered.crack.opening))
