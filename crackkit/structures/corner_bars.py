"""Bars of a slab with inside corners as laid: diagonal ones, ones along the sides, a mat."""

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.plane_meeting import meeting_shares
from crackkit.structures.corner_shapes import Form, Nook, form, nooks, polygons

END = 40.0  # mm of concrete over the end of a bar; common practice
SHORT = 150.0  # mm: a piece shorter than this is not laid
APART = 100.0  # mm between bars along a side, centre to centre; common practice


@dataclass(frozen=True)
class Laid:
    """A bar as laid.

    Attributes
    ----------
    start, end : tuple of float
        Its ends [mm].
    size : str
        Name of its size.
    kind : str
        ``"diagonal"``, ``"edge"`` or ``"mat"``.
    clear : float
        Concrete between the bar and the nearest face or side along it [mm].
    """

    start: tuple[float, float]
    end: tuple[float, float]
    size: str
    kind: str
    clear: float


@dataclass(frozen=True)
class Layout:
    """Which bars are laid, in the words of CornerSlab; empty where there are none."""

    form: Form
    cover: float
    diagonals: tuple = ()
    edges: tuple = ()
    mat: tuple = ()


def layout(it) -> Layout:
    """Read the bars off a CornerSlab; inputs that do not matter do not count."""
    diagonals = (
        it.diagonals, int(it.diagonal_count), it.diagonal_off, it.diagonal_apart,
        it.diagonal_length,
    )  # fmt: skip
    edges = (it.edges, int(it.edge_count), it.edge_off, it.edge_past)
    return Layout(
        form(it),
        it.cover,
        diagonals if it.diagonals != "none" else (),
        edges if it.edges != "none" else (),
        (it.mat, it.spacing) if it.mat != "none" else (),
    )


@lru_cache(maxsize=128)
def laid_bars(of: Layout) -> tuple[Laid, ...]:
    """List all bars, cut where there is no concrete."""
    return (*_diagonals(of), *_edges(of), *_mat(of.form, of.mat, of.cover))


def steel_mass(it) -> float:
    """All bars of a CornerSlab [kg]."""
    return sum(
        bar(each.size).mass * math.dist(each.start, each.end) / 1000.0
        for each in laid_bars(layout(it))
    )


def _diagonals(of: Layout):
    if not of.diagonals:
        return
    size, count, off, apart, length = of.diagonals
    step = bar(size).diameter
    for nook in nooks(of.form):
        inward = np.array([math.cos(nook.inward), math.sin(nook.inward)])
        along = np.array([-inward[1], inward[0]])
        for k in range(count):
            middle = np.asarray(nook.at) + (off + step / 2 + k * apart) * inward
            ends = middle - along * length / 2, middle + along * length / 2
            clear = min(of.cover, off) if k == 0 else of.cover
            yield from _held_pieces(of.form, ends, (size, "diagonal", clear), middle)


def _held_pieces(of: Form, ends, told: tuple, middle):
    """The piece of a bar that holds its middle; none where that lies outside of the concrete."""
    for start, end in _inside(of, *([end] for end in ends)):
        way = np.subtract(end, start)
        share = np.dot(np.subtract(middle, start), way) / np.dot(way, way)
        if 0.0 < share < 1.0:
            yield Laid(start, end, *told)


def _edges(of: Layout):
    if not of.edges:
        return
    size, count, off, past = of.edges
    thick = bar(size).diameter
    for side, at_start, at_end in _sides_of_corners(nooks(of.form)):
        way = side.chord / abs(side.chord)
        left = way * 1j
        for k in range(count):
            away = (off + thick / 2 + k * APART) * left
            start = complex(*side.start) - way * _past(at_start, side, past) + away
            end = complex(*side.end) + way * _past(at_end, side, past) + away
            clear = min(of.cover, off) if k == 0 else of.cover
            told = (size, "edge", clear)
            middle = complex(*side.points([0.5])[0]) + away
            ends = [np.array([z.real, z.imag]) for z in (start, end)]
            yield from _held_pieces(of.form, ends, told, np.array([middle.real, middle.imag]))


def _past(nook: Nook | None, side, past: float) -> float:
    """How far a bar runs on beyond the end of a side [mm], from its corner if that is rounded."""
    if nook is None:
        return 0.0
    rounded = 0.0 if nook.arc is None else nook.arc.radius * math.tan(abs(nook.arc.turn) / 2)
    return past + rounded


def _sides_of_corners(found: tuple[Nook, ...]):
    """Straight sides beside inside corners, with the corner at their start and at their end."""
    sides = dict.fromkeys(
        side for nook in found for side in (nook.before, nook.after) if not side.turn
    )
    starts = {nook.after: nook for nook in found}
    ends = {nook.before: nook for nook in found}
    for side in sides:
        yield side, starts.get(side), ends.get(side)


@lru_cache(maxsize=64)
def _mat(of: Form, mat: tuple, cover: float) -> tuple[Laid, ...]:
    if not mat:
        return ()
    size, spacing = mat
    spans = ((of.length, of.width), (of.width, of.length))
    found = []
    for axis, (length, width) in enumerate(spans):
        count = int((width - 2 * END) // spacing) + 1
        at = (width - (count - 1) * spacing) / 2 + spacing * np.arange(count)
        ends = [np.column_stack([np.full(count, along), at]) for along in (0.0, length)]
        ends = [each[:, ::-1] for each in ends] if axis else ends
        found += [Laid(*piece, size, "mat", cover) for piece in _inside(of, *ends)]
    return tuple(found)


def _inside(of: Form, starts, ends) -> list:
    """Pieces of straight lines that lie in concrete, with cover at their ends; line by line."""
    starts, ways = np.asarray(starts, dtype=float), np.subtract(ends, starts)
    cuts = [np.unique([0.0, 1.0, *row]) for row in _cuts(of, starts, ways)]
    middles = [
        start + 0.5 * (at[1:] + at[:-1])[:, None] * way
        for at, start, way in zip(cuts, starts, ways, strict=True)
    ]
    there = iter(_within(of, np.concatenate(middles)).tolist())
    pieces = []
    for at, start, way in zip(cuts, starts.tolist(), ways.tolist(), strict=True):
        at = at.tolist()
        for low, high in _runs(at, [next(there) for _piece in at[1:]]):
            pieces += _covered(of, start, way, (low, high))
    return pieces


def _covered(of: Form, start, way, piece: tuple[float, float]) -> list:
    """A piece of a line from side to side drawn back from both; nothing if it is short then."""
    size = math.hypot(*way)
    low, high = piece
    low, high = low + END / size * (low > 0), high - END / size * (high < 1)
    if _at_the_rim(of, start, way, low):
        low += END / size
    if _at_the_rim(of, start, way, high):
        high -= END / size
    if (high - low) * size <= SHORT:
        return []
    (x, y), (across, up) = start, way
    return [((x + low * across, y + low * up), (x + high * across, y + high * up))]


def _at_the_rim(of: Form, start, way, share: float) -> bool:
    """Whether a place on a line lies on the rim of the rectangle, or beyond it."""
    x, y = start[0] + share * way[0], start[1] + share * way[1]
    return min(x, y, of.length - x, of.width - y) < 1.0


@lru_cache(maxsize=64)
def _sides(of: Form) -> tuple[np.ndarray, np.ndarray]:
    """Where the sides of all loops begin, and how they run [mm], each of shape (sides, 2)."""
    loops = polygons(of)
    steps = [np.roll(loop, -1, axis=0) - loop for loop in loops]
    return np.concatenate(loops), np.concatenate(steps)


def _cuts(of: Form, starts, ways) -> list[np.ndarray]:
    """Shares of lines at which they cross a side."""
    on_line, on_side = meeting_shares(starts, ways, *_sides(of))
    hit = (on_side >= 0) & (on_side <= 1) & (on_line > 0) & (on_line < 1)
    return [shares[there] for shares, there in zip(on_line, hit, strict=True)]


def _within(of: Form, places: np.ndarray) -> np.ndarray:
    """Which places lie in concrete: inside of the first loop and outside of the others."""
    a, step = _sides(of)
    x, y = places[:, 0, None], places[:, 1, None]
    spans = (a[:, 1] > y) != (a[:, 1] + step[:, 1] > y)
    rise = np.where(step[:, 1] == 0.0, 1.0, step[:, 1])  # level sides span nothing
    beyond = a[:, 0] + (y - a[:, 1]) * step[:, 0] / rise > x
    return np.sum(spans & beyond, axis=1) % 2 == 1


def _runs(shares: list[float], there: list[bool]):
    """Stretches of pieces that follow each other in concrete."""
    begun = None
    for k, inside in enumerate(there):
        if inside and begun is None:
            begun = shares[k]
        if not inside and begun is not None:
            yield begun, shares[k]
            begun = None
    if begun is not None:
        yield begun, shares[-1]
