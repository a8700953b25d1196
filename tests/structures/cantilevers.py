"""Any cantilever at all."""

from hypothesis import strategies as st

from crackkit.structures.cantilever import ArmLoad, Cantilever
from tests.structures.drawn import anywhere


@st.composite
def cantilevers(draw, **fixed):
    """Draw an arm with one or two loads, every input anywhere in its range."""
    loads = draw(st.integers(1, 2))
    return anywhere(draw, Cantilever(loads=(ArmLoad(),) * loads), fixed)
