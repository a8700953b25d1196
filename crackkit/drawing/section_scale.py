"""Where the cross-section lies on the paper: upright ones with words beside, flat ones below."""

from dataclasses import dataclass

from crackkit.drawing.frames import Frame
from crackkit.mechanics.section import Section, bands

TOP_ROOM = 44.0  # for the heading
BOTTOM_ROOM = 12.0
WORDS_WIDTH = 128.0  # for the labels on the right
WORDS_ROOM = 92.0  # for the labels below a flat section
FLAT = 2.5  # times as wide as deep: too flat for words at its side


@dataclass(frozen=True)
class SectionScale:
    """The way from (y across, z down) in mm to the drawing; y from the left edge of the web."""

    left: float
    top: float
    per_mm: float
    section: Section
    flat: bool

    @property
    def width(self) -> float:
        """Width of the web or the rectangle [mm]."""
        return self.section.width

    @property
    def depth(self) -> float:
        """Depth of the section [mm]."""
        return self.section.depth

    @property
    def right(self) -> float:
        """Right edge of the widest part."""
        return self.left + broadest(self.section) * self.per_mm

    @property
    def bottom(self) -> float:
        """Lower edge."""
        return self.top + self.depth * self.per_mm

    def x(self, across: float) -> float:
        """Drawing coordinate of a place across."""
        past = (broadest(self.section) - self.width) / 2
        return self.left + (past + across) * self.per_mm

    def y(self, down: float) -> float:
        """Drawing coordinate of a depth."""
        return self.top + down * self.per_mm

    def parts(self, high: float, low: float) -> list[tuple[float, float, float, float]]:
        """Rectangles (left, top, right, bottom) of the concrete between two depths [mm]."""
        found = []
        for start, end, wide in bands(self.section, 1):
            a, b = max(start, high), min(end, low)
            if b > a:
                edge = (self.width - wide) / 2
                found.append((self.x(edge), self.y(a), self.x(edge + wide), self.y(b)))
        return found


def broadest(section: Section) -> float:
    """Width of the widest part [mm]."""
    return section.width if section.flange_width is None else section.flange_width


def section_scale(section: Section, mats: bool, frame: Frame) -> SectionScale:
    """Fit a section into its frame; a slab or a T that is flat has the whole width."""
    broad = broadest(section)
    flat = broad > FLAT * section.depth and (mats or section.flange_width is not None)
    room = frame.height - TOP_ROOM - (WORDS_ROOM if flat else BOTTOM_ROOM)
    wide = frame.width - 8 - (0.0 if flat else WORDS_WIDTH)
    per_mm = min(room / section.depth, wide / broad)
    top = frame.top + TOP_ROOM + (0.0 if flat else (room - section.depth * per_mm) / 2)
    return SectionScale(frame.left + 4, top, per_mm, section, flat)
