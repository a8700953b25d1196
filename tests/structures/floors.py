"""Any floor over several spans at all."""

import dataclasses

from hypothesis import strategies as st

from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_parts import Span, Support, Traveller
from tests.structures.drawn import anywhere


@st.composite
def floors(draw, most=6, **fixed):
    """Draw a floor of two to `most` spans, every input anywhere in its range."""
    spans = draw(st.integers(2, most))
    loads = draw(st.integers(1, 2))
    start = ContinuousBeam(
        spans=(Span(),) * spans, supports=(Support(),) * (spans + 1), loads=(Traveller(),) * loads
    )
    return anywhere(draw, start, fixed)


def mirrored(floor: ContinuousBeam) -> ContinuousBeam:
    """The same floor seen from behind."""
    spans = [
        dataclasses.replace(span, left_gap=span.right_gap, right_gap=span.left_gap)
        for span in reversed(floor.spans)
    ]
    supports = [
        dataclasses.replace(one, left_reach=one.right_reach, right_reach=one.left_reach)
        for one in reversed(floor.supports)
    ]
    loads = [dataclasses.replace(load, at=floor.length - load.at) for load in floor.loads]
    return dataclasses.replace(
        floor,
        spans=tuple(spans),
        supports=tuple(supports),
        loads=tuple(loads),
        left_end=floor.right_end,
        right_end=floor.left_end,
    )
