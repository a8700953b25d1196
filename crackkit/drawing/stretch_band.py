"""Band 2, where is it stretched and where does it crack? Stress map, hatch, cracks and bars."""

from functools import cache

import numpy as np

from crackkit.drawing.frames import Along, Frame, View, along
from crackkit.drawing.shapes import (
    Circle,
    Group,
    Handle,
    Lines,
    Polygon,
    Polygons,
    Polyline,
    Raster,
    rectangle,
)
from crackkit.drawing.words_on import Label, heading, label_row
from crackkit.units import shown
from crackkit.words import _

FULL_SHADE = 1.6  # multiple of the tensile strength that has the full colour
RIBBON = 8.0  # height of the hatch beside a stretched face
DEPTHS = (88.0, 112.0)  # least and largest drawn depth
WIDEST = 5.0  # drawn width of a crack of 0.5 mm or more
NARROWEST = 0.9
GAPING = 7.0  # of a crack that nothing holds
CROWDED = 0.4  # largest share of the distance to the next crack
RAGGED = 1.7  # how far a crack strays from its smooth line


def stretch_band(outcome, frame: Frame, view: View) -> list:
    """Draw the band."""
    body = Body(outcome, frame)
    return [
        *heading(frame, 2, _("Where is it stretched? Where does it crack?"), _notes(body)),
        body.raster(outcome.stresses),
        *(_ribbon(zone, body) for zone in outcome.tension),
        *_dense_ribbons(outcome, body),
        body.outline(),
        *crack_shapes(outcome.cracks, body),
        *_bars(outcome, body, view),
        *_support_marks(outcome.structure, body),
        *_top_words(outcome, body, view),
        *_bottom_words(outcome, body, view),
    ]


class Body:
    """The member on the drawing: the way from (x, z) in mm to the paper."""

    def __init__(self, outcome, frame: Frame):
        self.along: Along = along(frame, float(outcome.x[-1]))
        self.depth_mm = float(outcome.stresses.z[-1])
        self.depth = min(max(self.depth_mm * self.along.scale, DEPTHS[0]), DEPTHS[1])
        self.top = frame.top + 54.0 + (DEPTHS[1] - self.depth) / 2
        self.frame = frame

    @property
    def bottom(self) -> float:
        """Height of the bottom face."""
        return self.top + self.depth

    @property
    def down(self) -> float:
        """Drawing units for one mm of depth."""
        return self.depth / self.depth_mm

    def points(self, path: np.ndarray) -> np.ndarray:
        """Drawing points of (x, z) [mm]; the last axis holds the pair."""
        return np.stack([self.along(path[..., 0]), self.top + path[..., 1] * self.down], axis=-1)

    def outline(self) -> Polyline:
        """The edge of the concrete."""
        left, right = self.along.left, self.along.right
        corners = [(left, self.top), (right, self.top), (right, self.bottom), (left, self.bottom)]
        return Polyline(np.array([*corners, corners[0]]), "outline")

    def raster(self, stresses) -> Raster:
        """The stress map behind everything."""
        width = self.along.right - self.along.left
        values = stresses.ratio / FULL_SHADE
        return Raster(self.along.left, self.top, width, self.depth, values)

    def face(self, face: str) -> tuple[float, float]:
        """Height of a face, and the direction away from the concrete."""
        return (self.top, -1.0) if face == "top" else (self.bottom, 1.0)


def _notes(body: Body) -> tuple[str, ...]:
    """State how the height is drawn where it is not to the scale of the length."""
    factor = body.down / body.along.scale
    if abs(factor - 1.0) < 0.05:
        return ()
    long, short = _("height drawn {n} times larger"), _("height ×{n}")
    return long.format(n=f"{factor:.2g}"), short.format(n=f"{factor:.2g}")


def _hatch(body: Body, face: str, start: float, end: float, step: float, role: str) -> Lines:
    y, away = body.face(face)
    left, right = body.along(start), body.along(end)
    x = np.arange(left, max(right - 4.0, left + 1.0), step)
    strokes = np.empty((x.size, 2, 2))
    strokes[:, 0, 0], strokes[:, 0, 1] = x, y + away * 2.0
    strokes[:, 1, 0], strokes[:, 1, 1] = np.minimum(x + 6.0, right), y + away * (2.0 + RIBBON)
    return Lines(strokes, role)


def _ribbon(zone, body: Body) -> Lines:
    """Light hatch beside a stretched face."""
    return _hatch(body, zone.face, zone.start, zone.end, 9.0, "hatch")


def _dense_ribbons(outcome, body: Body) -> list:
    """Dense hatch where the stretch is more than the concrete can bear."""
    return [
        _hatch(body, zone.face, start, end, 4.5, "hatch_dense")
        for zone in outcome.tension
        for start, end in zone.cracked
    ]


def crack_shapes(cracks, body: Body) -> list:
    """Cracks as slender wedges: open at the face, closed at the tip, ragged like torn stone."""
    if not cracks:
        return []
    paths = body.points(np.stack([crack.path for crack in cracks]))
    count, points = paths.shape[:2]
    share = np.linspace(0.0, 1.0, points)
    half = 0.5 * _openings(cracks, paths)[:, None] * (1.0 - share) ** 0.7 + 0.2 * (share < 1.0)
    # raggedness follows the number of the crack, so that it does not flicker while dragging
    stray = np.sqrt(share * (1.0 - share))
    centre = paths[..., 0] + 2.0 * RAGGED * stray * _noise(count, points, 1)
    edge = 0.8 * stray * _noise(count, points, 2)
    outlines = np.empty((count, 2 * points, 2))
    outlines[:, :points, 0], outlines[:, points:, 0] = (
        centre - half + edge,
        (centre + half + edge)[:, ::-1],
    )
    outlines[:, :points, 1], outlines[:, points:, 1] = paths[..., 1], paths[:, ::-1, 1]
    return [Polygons(outlines, "crack_gap")]


@cache
def _noise(count: int, points: int, seed: int) -> np.ndarray:
    """Numbers from -0.5 to 0.5 that look random and are always the same."""
    rows, columns = np.arange(1, count + 1)[:, None], np.arange(points)
    wild = np.sin(12.9898 * rows + 78.233 * columns + 37.7 * seed) * 43758.5453
    return wild - np.floor(wild) - 0.5


def _openings(cracks, paths: np.ndarray) -> np.ndarray:
    """Drawn widths at the face, never so wide that neighbours run together."""
    wished = np.array([_drawn_width(crack) for crack in cracks])
    mouths = np.sort(paths[:, 0, 0])
    if mouths.size > 1:
        gap = float(np.diff(mouths).min())
        wished = np.minimum(wished, max(CROWDED * gap, NARROWEST))
    return wished


def _drawn_width(crack) -> float:
    if crack.width is None:
        return GAPING
    return min(max(WIDEST * crack.width.governing / 0.5, NARROWEST), WIDEST)


def _bars(outcome, body: Body, view: View) -> list:
    shapes = []
    for item in outcome.steel:
        y = body.top + item.depth * body.down
        left, right = float(body.along(item.start)), float(body.along(item.end))
        thick = min(max(item.diameter * body.down, 2.0), 6.0)
        rod = Polyline(np.array([(left, y), (right, y)]), "bar", thick)
        shapes.append(_bar_group(outcome, item, rod, left, right, y, body, view))
    return shapes


def _bar_group(outcome, item, rod, left, right, y, body: Body, view: View) -> Group:
    handle = _bar_handle(outcome, item, body, view) if view.live else None
    if handle is None:
        return Group((rod,))
    x = left + 26 if item.key == "bottom" else right - 26
    hit = rectangle(left, y - 7, right - left, 14, "hit")
    return Group((hit, rod, Circle(x, y, 6.0, "grip")), handle)


def _bar_handle(outcome, item, body: Body, view: View) -> Handle:
    drop, _start, _end = outcome.structure.bar_grips(item.key)
    text = _("dropped by {drop}").format(drop=shown(drop.value, "size", view.system))
    return Handle(
        drop.path, item.label, text, "y", 1 / body.down, drop.value, drop.low, drop.high, 5.0
    )


def _support_marks(structure, body: Body) -> list:
    marks = []
    for at in structure.supports:
        x, y = float(body.along(at)), body.bottom
        corners = np.array([(x, y + 1), (x - 7, y + 12), (x + 7, y + 12)])
        marks.append(Polygon(corners, "support"))
    return marks


def _zone_words(outcome, face: str, body: Body) -> list[Label]:
    """The words stretched and squeezed for one face."""
    y, away = body.face(face)
    labels = []
    for zone in outcome.tension:
        if (zone.end - zone.start) * body.along.scale < 24:
            continue
        centre = float(body.along(_word_place(zone)))
        if zone.face == face:
            labels.append(Label(centre, _("stretched"), "stretched_word"))
        else:
            labels.append(Label(centre, _("squeezed"), "squeezed_word"))
    return labels


def _word_place(zone) -> float:
    return 0.25 * (zone.start + zone.end) + 0.5 * zone.at


def _crack_word(outcome, face: str, body: Body, view: View) -> list[Label]:
    widest = outcome.widest
    if widest is None or widest.face != face:
        return []
    y, away = body.face(face)
    x, mouth = float(body.along(widest.at)), y + away * (RIBBON + 4)
    if widest.width is None:
        return [Label(x, _("nothing crosses this crack"), "bad_word", mouth)]
    words = _("widest crack {width}").format(
        width=shown(widest.width.governing, "width", view.system)
    )
    return [Label(x, words, "label_bold", mouth)]


def _top_words(outcome, body: Body, view: View) -> list:
    labels = _zone_words(outcome, "top", body) + _crack_word(outcome, "top", body, view)
    y = body.top - RIBBON - 9
    return label_row(labels, y, body.along.left, body.frame.right - 4)


def _bottom_words(outcome, body: Body, view: View) -> list:
    labels = _zone_words(outcome, "bottom", body) + _crack_word(outcome, "bottom", body, view)
    y = body.bottom + RIBBON + 24
    return label_row(labels, y, body.along.left, body.frame.right - 4)
