"""Any simple beam at all: a strategy that reads the ranges which the beam itself declares."""

import dataclasses

from hypothesis import strategies as st

from crackkit.structures.simple_beam import PointLoad, SimpleBeam
from tests.structures.drawn import anywhere


@st.composite
def simple_beams(draw, **fixed):
    """Draw a beam with one to three loads, every input anywhere in its range.

    `fixed` holds inputs that are not drawn, by path ("bottom__number" for "bottom.number").
    """
    loads = draw(st.integers(1, 3))
    return anywhere(draw, SimpleBeam(loads=(PointLoad(),) * loads), fixed)


def mirrored(beam: SimpleBeam) -> SimpleBeam:
    """The same beam seen from behind."""
    loads = [dataclasses.replace(load, at=beam.length - load.at) for load in beam.loads]
    return dataclasses.replace(
        beam,
        loads=tuple(loads),
        overhang_left=beam.overhang_right,
        overhang_right=beam.overhang_left,
        bottom=_turned(beam.bottom),
        top=_turned(beam.top),
    )


def _turned(bars):
    return dataclasses.replace(bars, left_gap=bars.right_gap, right_gap=bars.left_gap)
