"""The crack from an inside corner, its opening to scale; the length over which pull is averaged."""

import numpy as np

from crackkit.drawing.cracks_drawn import noise
from crackkit.drawing.shapes import Lines, Polygons, Polyline
from crackkit.words import _

POINTS = 40  # along the drawn crack
RAGGED, ROUGH = 3.0, 0.35  # how far it strays, and how much its width does
MOST, LEAST = 9.0, 1.0  # drawn width: the greatest, and where it just gapes
TIMES = tuple(n * 10.0**k for k in range(5) for n in (1.0, 2.0, 5.0))
HAIR, FINE = 0.01, 0.1  # mm: from which an opening is drawn, and below which it is drawn alike
SLOT, RIM = 3.4, 3.2  # drawn width of a cut over that of the crack in it, and of its two edges
TICK = 6.0  # half the stroke at the ends of the material length
RING = 7.0


def times_wider(crack, scale: float) -> float:
    """Pick how many times wider a crack is drawn than all else: few, far apart steps.

    It hangs on the crack without bars, so that the drawn crack is seen to close as bars come.

    Parameters
    ----------
    crack : CornerCrack
    scale : float
        Drawing units for one mm.
    """
    widest = max(float(crack.bare.max()), float(crack.opening.max()), FINE) * scale
    fitting = [times for times in TIMES if widest * times <= MOST]
    return fitting[-1] if fitting else 1.0


def wider_notes(crack, scale: float) -> tuple[str, ...]:
    """State that factor, the longest way first; nothing where no crack is drawn."""
    if crack.widest < HAIR:
        return ()
    times = f"{times_wider(crack, scale):.0f}"
    long, short = _("crack drawn {n} times wider than it is"), _("crack drawn ×{n}")
    return long.format(n=times), short.format(n=times)


def crack_shapes(crack, plan, bounds) -> list:
    """Draw the crack as wide as it gapes, and dashed where it would go on.

    Parameters
    ----------
    crack : CornerCrack
    plan : CornerPlan or CloseUp
        The way to the paper, with its `scale`.
    bounds : tuple
        Upper left and lower right corner of the room [drawing units].
    """
    return [*_coming(crack, plan, bounds), *_gap(crack, plan, bounds)]


def _gap(crack, plan, bounds) -> list:
    gapes = crack.opening > HAIR
    if not gapes.any():
        return []
    end = float(crack.along[gapes].max())
    way = np.linspace(0.0, end, POINTS)
    middle = plan(at_way(crack, way))
    normal = _normals(middle)
    stray = np.ones(POINTS)
    stray[[0, -1]] = 0.0  # it starts at the corner
    middle = middle + normal * (RAGGED * noise(1, POINTS, 5)[0] * stray)[:, None]
    drawn = _drawn(crack, way, plan.scale)
    reach = normal * (drawn / 2 * (1.0 + ROUGH * noise(1, POINTS, 6)[0]))[:, None]
    outline = np.concatenate([middle - reach, (middle + reach)[::-1]])
    return [
        Polyline(np.clip(middle, *bounds), "symbol", float(drawn.max()) + 2.0),
        Polygons(np.clip(outline, *bounds)[None], "crack_gap"),
    ]


def _drawn(crack, way, scale: float) -> np.ndarray:
    """Drawn width of a crack so far along it [mm]."""
    opening = np.interp(way, crack.along, crack.opening)
    return np.maximum(opening * scale * times_wider(crack, scale), LEAST)


def _coming(crack, plan, bounds) -> list:
    """The line along which it would go on."""
    gapes = crack.opening > HAIR
    start = float(crack.along[gapes].max()) if gapes.any() else 0.0
    if crack.along[-1] - start < HAIR:
        return []
    points = plan(at_way(crack, np.linspace(start, float(crack.along[-1]), POINTS)))
    kept = np.all((points >= bounds[0]) & (points <= bounds[1]), axis=1)
    if kept.sum() < 2:
        return []
    return [Polyline(points[kept], "symbol", 3.6), Polyline(points[kept], "neutral")]


def at_way(crack, way: np.ndarray) -> np.ndarray:
    """Points (x, y) [mm] so far along the crack [mm]."""
    return np.column_stack([np.interp(way, crack.along, crack.points[:, k]) for k in (0, 1)])


def _normals(points: np.ndarray) -> np.ndarray:
    way = np.gradient(points, axis=0)
    normal = np.column_stack([-way[:, 1], way[:, 0]])
    return normal / np.maximum(np.hypot(normal[:, 0], normal[:, 1]), 1e-9)[:, None]


def saw_shapes(crack, plan, bounds) -> list:
    """Draw how far a saw cut or a joint reaches along the line: a slot round the crack."""
    if crack.saw <= 0:
        return []
    points = plan(at_way(crack, np.linspace(0.0, crack.saw, POINTS)))
    points = np.clip(points, *bounds)
    slot = float(_drawn(crack, crack.along, plan.scale).max()) + SLOT
    return [Polyline(points, "limit", slot + RIM), Polyline(points, "symbol", slot)]


def length_shapes(corner, plan) -> list:
    """Draw the length over which the pull at a corner is averaged, light below dark."""
    start, end = plan(corner.at), plan(corner.end)
    across = _normals(np.array([start, end]))[0] * TICK
    strokes = np.array(
        [(start, end), (start - across, start + across), (end - across, end + across)]
    )
    return [Lines(strokes, "symbol"), Lines(strokes, "limit")]


def jointed(crack) -> bool:
    """Tell whether a joint goes all the way: what opens is then no crack."""
    return crack.saw > 0.99 * float(crack.along[-1])


def ring(corner, plan) -> list[Polyline]:
    """Draw a ring round a corner, light below dark."""
    turn = np.linspace(0.0, 2 * np.pi, 21)
    points = plan(corner.at) + RING * np.column_stack([np.cos(turn), np.sin(turn)])
    return [Polyline(points, "symbol", 4.6), Polyline(points, "limit", 2.0)]
