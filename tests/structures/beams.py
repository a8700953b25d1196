"""Any simple beam at all: a strategy that reads the ranges which the beam itself declares."""

import dataclasses

from hypothesis import strategies as st

from crackkit.structures import fields
from crackkit.structures.simple_beam import PointLoad, SimpleBeam


def _values(item: fields.Input):
    if item.declared.choices:
        return st.sampled_from([value for value, _label in item.declared.choices])
    if item.declared.quantity == "count":
        return st.integers(int(item.low), int(item.high))
    ends = st.sampled_from([item.low, item.high])
    return st.one_of(st.floats(item.low, item.high), ends)


def _follows(item: fields.Input) -> bool:
    return callable(item.declared.low) or callable(item.declared.high)


@st.composite
def simple_beams(draw, **fixed):
    """Draw a beam with one to three loads, every input anywhere in its range.

    `fixed` holds inputs that are not drawn, by path ("bottom__number" for "bottom.number").
    """
    fixed = {path.replace("__", "."): value for path, value in fixed.items()}
    loads = draw(st.integers(1, 3))
    beam = SimpleBeam(loads=(PointLoad(),) * loads)
    plain = [i for i in fields.inputs(beam) if not _follows(i) and i.path not in fixed]
    chosen = {item.path: draw(_values(item)) for item in plain}
    beam, _moved = fields.fitted(beam, chosen | fixed)
    following = sorted((i for i in fields.inputs(beam) if _follows(i)), key=_depth)
    for path in [item.path for item in following if item.path not in fixed]:
        beam = fields.with_value(beam, path, draw(_values(fields.input_at(beam, path))))
    return beam


def _depth(item: fields.Input):
    return item.path.count("."), item.path


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
