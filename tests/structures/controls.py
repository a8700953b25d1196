"""Choices of bars that several tests share."""

from hypothesis import strategies as st

from crackkit.structures.crack_control import CrackControl
from tests.structures.drawn import anywhere


@st.composite
def crack_controls(draw, **fixed):
    """Any choice of bars that the ranges allow."""
    return anywhere(draw, CrackControl(), fixed)
