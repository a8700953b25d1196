"""A slab on the ground seen from above: joints, cracks both ways, bars, what holds it."""

import math
from dataclasses import dataclass

import numpy as np

from crackkit.drawing.footings import hatched_block
from crackkit.drawing.frames import Along, Frame
from crackkit.drawing.ground_body import POST
from crackkit.drawing.ground_cracks import birth_order, drawn_widths, open_joints
from crackkit.drawing.shapes import Lines, Polygon, Polygons, rectangle
from crackkit.drawing.through_cracks import openings, through_cracks

BESIDE = 8.0  # drawn thickness of what holds the ends and sides
NARROW = 0.5  # least drawn width of a slab, as share of the room for it
PITCH = 9.0  # least distance of two bars on the drawing
STOP = 4.0  # how far bars stay from edges and joints that they do not cross
BOLD = 2.0  # least drawn width of a joint that is open


@dataclass(frozen=True)
class GroundPlan:
    """The way from the slab to the paper: `along` to the right, `across` down."""

    structure: object
    along: Along
    across: Along

    @property
    def larger(self) -> float:
        """How many times larger its width is drawn than its length."""
        return self.across.scale / self.along.scale

    @property
    def top(self) -> float:
        """Height of its far side."""
        return self.across.left

    @property
    def bottom(self) -> float:
        """Height of its near side."""
        return self.across.right

    def concrete(self) -> Polygon:
        """Draw the slab."""
        wide, tall = self.along.right - self.along.left, self.bottom - self.top
        return rectangle(self.along.left, self.top, wide, tall, "concrete")

    def holds(self) -> list:
        """Draw what holds ends, sides and middle, as the section does."""
        s, left, right = self.structure, self.along.left, self.along.right
        top, bottom = self.top, self.bottom
        blocks = (
            (s.left, left - BESIDE, left, top, bottom),
            (s.right, right, right + BESIDE, top, bottom),
            (s.sides, left, right, top - BESIDE, top),
            (s.sides, left, right, bottom, bottom + BESIDE),
            (s.middle, *self._column()),
        )
        return [shape for degree, *block in blocks if degree > 0 for shape in hatched_block(*block)]

    def _column(self) -> tuple[float, float, float, float]:
        x, y = (self.along.left + self.along.right) / 2, (self.top + self.bottom) / 2
        return x - POST, x + POST, y - POST, y + POST

    @property
    def every(self) -> int:
        """One line is drawn for so many bars."""
        apart = self.structure.spacing * min(self.along.scale, self.across.scale)
        return max(math.ceil(PITCH / apart), 1)

    def bars(self) -> list[Lines]:
        """Draw bars as faint lines, in one way or both; cut at joints where they are."""
        s = self.structure
        if s.bar is None:
            return []
        step, cut = self.every * s.spacing, s.through == "cut"
        ways = [_bar_lines(self.along, self.across, step, s.joint_places if cut else ())]
        if s.both_ways:
            marks = s.joint_places_across if cut else ()
            ways.append(_bar_lines(self.across, self.along, step, marks)[..., ::-1])
        return [Lines(np.concatenate(ways), "live_off" if s.place == "ground" else "grid")]

    def joints(self) -> list[Lines]:
        """Draw all saw cuts as thin lines."""
        s = self.structure
        return [
            *_cuts(self.along, self.across, s.joint_places, 1),
            *_cuts(self.across, self.along, s.joint_places_across, -1),
        ]

    def opened(self, state, other) -> list:
        """Draw joints that are open, and cracks, both ways, wider where they are wider."""
        return [
            *_openings(state, self.along, self.across, 1),
            *_openings(other, self.across, self.along, -1),
        ]


def laid(structure, frame: Frame, along: Along) -> GroundPlan:
    """Lay a slab into a frame: its width to the scale of its length where there is room.

    Parameters
    ----------
    structure : GroundSlab
    frame : Frame
        Height there is for the width.
    along : Along
        The way to the paper from end to end.
    """
    tall = min(max(structure.width * along.scale, NARROW * frame.height), frame.height)
    return GroundPlan(structure, along, Along(frame.top, frame.top + tall, structure.width))


def plan_shapes(plan: GroundPlan) -> list:
    """Draw the slab as it was laid, before anything comes of it."""
    return [plan.concrete(), *plan.bars(), *plan.joints(), *plan.holds()]


def _bar_lines(way: Along, other: Along, step: float, marks) -> np.ndarray:
    """Lines along one way, with gaps at these places [mm]; coordinates of this way first."""
    sides = other(np.arange(step / 2, other.length, step))
    ends = way(np.array([0.0, *marks, way.length]))
    lines = np.empty((sides.size, ends.size - 1, 2, 2))
    lines[..., 1] = sides[:, None, None]
    lines[:, :, 0, 0], lines[:, :, 1, 0] = ends[:-1] + STOP, ends[1:] - STOP
    return lines.reshape(-1, 2, 2)


def _cuts(way: Along, other: Along, places, turn: int) -> list[Lines]:
    if not places:
        return []
    lines = np.empty((len(places), 2, 2))
    lines[..., 0] = way(np.array(places))[:, None]
    lines[:, 0, 1], lines[:, 1, 1] = other.left, other.right
    return [Lines(lines[..., ::turn], "axis")]


def _openings(state, way: Along, other: Along, turn: int) -> list[Polygons]:
    """Joints straight, cracks ragged, from side to side; `turn` -1 swaps x and y."""
    shapes = _gaps(open_joints(state), way, other)
    wild = state.wild
    if wild:
        places = way(np.array([crack.at for crack in wild]))
        widths = drawn_widths([crack.width for crack in wild])
        order = birth_order([crack.birth for crack in wild])
        shapes += through_cracks(widths, places, order, other.left, other.right - other.left)
    return [Polygons(shape.outlines[..., ::turn], shape.role) for shape in shapes]


def _gaps(joints, way: Along, other: Along) -> list[Polygons]:
    if not joints:
        return []
    places = way(np.array([joint.at for joint in joints]))
    wide = openings(drawn_widths([joint.opening for joint in joints]), places)
    half = np.maximum(wide, BOLD) / 2
    gaps = np.empty((len(joints), 4, 2))
    gaps[:, (0, 3), 0], gaps[:, (1, 2), 0] = (places - half)[:, None], (places + half)[:, None]
    gaps[:, :2, 1], gaps[:, 2:, 1] = other.left, other.right
    return [Polygons(gaps, "crack_gap")]
