"""Slabs with inside corners, as any panel may hand them to the sandbox."""

from hypothesis import strategies as st

from crackkit.sandbox.corner_inputs import PIECES
from crackkit.structures.corner_slab import CornerSlab
from tests.structures.drawn import anywhere


@st.composite
def corner_slabs(draw, **fixed):
    """Any slab with an inside corner that the ranges allow."""
    shape = draw(st.sampled_from(sorted(PIECES.values())))
    return anywhere(draw, CornerSlab(shape=shape), {"shape": shape} | fixed)
