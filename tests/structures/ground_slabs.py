"""Slabs on the ground that several tests share."""

from hypothesis import strategies as st

from crackkit.structures.ground_slab import GroundSlab
from tests.structures.drawn import anywhere


@st.composite
def ground_slabs(draw, **fixed):
    """Any slab that the ranges allow."""
    return anywhere(draw, GroundSlab(), fixed)
