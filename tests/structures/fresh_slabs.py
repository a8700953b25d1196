"""Fresh slabs that several tests share."""

from hypothesis import strategies as st

from crackkit.structures.fresh_slab import FreshSlab
from tests.structures.drawn import anywhere


@st.composite
def fresh_slabs(draw, **fixed):
    """Any slab and weather that the ranges allow."""
    return anywhere(draw, FreshSlab(), fixed)
