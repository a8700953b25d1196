"""Slabs that curl, shared by several tests."""

from hypothesis import strategies as st

from crackkit.structures.curled_slab import CurledSlab
from tests.structures.drawn import anywhere


@st.composite
def curled_slabs(draw, **fixed):
    """Any slab that the ranges allow."""
    return anywhere(draw, CurledSlab(), fixed)
