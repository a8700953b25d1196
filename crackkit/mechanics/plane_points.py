"""Points inside of a plane mesh, before it is triangulated.

Round each source of the size field the points lie in rows: rings round a point, lines beside a
straight piece, arcs beside an arc, each row as far from the last as the size there asks. Where no
source asks for less than the greatest size they lie in a lattice of equal triangles.
"""

import numpy as np

from crackkit.mechanics.plane_size import grown

_ROW = 0.866  # distance of rows of equal triangles, in sides


def inner_points(outline, field, lines):
    """Points inside of the body, at a distance from its lines and from each other.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    field : SizeField
        Sizes [mm].
    lines : PlaneLines
        Nodes already placed [mm].

    Returns
    -------
    points : numpy.ndarray
        x and y [mm], one row for each.
    """
    reach = outline.reach
    found = [_rings(field, row, lines, reach) for row in field.points]
    found += [_beside_line(field, row, reach) for row in field.lines]
    found += [_beside_arc(field, row, reach) for row in field.arcs]
    found.append(_lattice(outline.box, field.largest))
    points = np.concatenate(found)
    source = np.repeat(np.arange(len(found)), [len(each) for each in found])
    low, high = lines.points.min(axis=0), lines.points.max(axis=0)
    kept = ((points > low) & (points < high)).all(axis=1)
    points, source = points[kept], source[kept]
    asked = field.each(points[:, 0], points[:, 1])
    size = asked.min(axis=0)
    kept = asked[source, np.arange(source.size)] <= size * (1.0 + 1e-9)
    points, size = points[kept], size[kept]
    kept = _far_from_lines(points, size, lines)
    points, size = points[kept], size[kept]
    kept = inside(points, lines)
    points, size = points[kept], size[kept]
    return points[thinned(points, size)]


def _distances(start, own, field, reach):
    """Distances of rows from a source that asks for a size, the first given, and sizes there."""
    far, found = start, []
    while far < reach and grown(own, far, field.growth) < field.largest:
        found.append(far)
        step = _ROW * grown(own, far, field.growth)
        # Half by the size of this row and half by that of the next one.
        far += 0.5 * (step + _ROW * grown(own, far + step, field.growth))
    far = np.array(found)
    return far, grown(own, far, field.growth)


def _rings(field, source, lines, reach):
    """Points on rings round a point, between the lines that leave it."""
    centre, size = source[:2], source[2]
    spokes = _spokes(centre, lines)
    rows = []
    for far, h in zip(*_distances(size, size, field, reach), strict=True):
        for a, b in zip(spokes, spokes[1:], strict=False):
            n = max(1, round((b - a) * far / h))
            angle = a + (b - a) * np.arange(1, n) / n
            rows.append(centre + far * np.stack([np.cos(angle), np.sin(angle)], axis=1))
    return np.concatenate(rows) if rows else np.empty((0, 2))


def _spokes(centre, lines):
    """Directions of the lines that leave a point, once round."""
    at = np.flatnonzero((abs(lines.points - centre) < 1e-9).all(axis=1))
    first, second = lines.edges.T
    ends = np.concatenate([second[np.isin(first, at)], first[np.isin(second, at)]])
    away = lines.points[ends] - centre
    angles = np.sort(np.arctan2(away[:, 1], away[:, 0])) if len(ends) else np.array([0.0])
    return np.append(angles, angles[0] + 2.0 * np.pi)


def _beside_line(field, source, reach):
    """Points in lines beside a straight piece, on both of its sides."""
    start, chord = complex(*source[:2]), complex(*(source[2:4] - source[:2]))
    length, rows = abs(chord), []
    far, size = _distances(_ROW * source[4], source[4], field, reach)
    for k, (d, h) in enumerate(zip(far, size, strict=True)):
        n = max(1, round(length / h))
        along = (np.arange(n) + 0.5) / n if k % 2 == 0 else np.arange(n + 1) / n
        for side in (1j, -1j):
            rows.append(start + chord * (along + side * d / length))
    z = np.concatenate(rows) if rows else np.empty(0, dtype=complex)
    return np.stack([z.real, z.imag], axis=1)


def _beside_arc(field, source, reach):
    """Points on arcs beside an arc, on both of its sides."""
    x, y, radius, middle, half, own = source
    rows = []
    far, size = _distances(_ROW * own, own, field, reach)
    for k, (d, h) in enumerate(zip(far, size, strict=True)):
        for r in (radius + d, radius - d):
            n = max(1, round(2.0 * half * r / h)) if r > 0 else 0
            along = np.arange(n) + 0.5 if k % 2 == 0 else np.arange(n + 1)
            angle = middle + half * (2.0 * along / max(n, 1) - 1.0)
            rows.append(np.stack([x + r * np.cos(angle), y + r * np.sin(angle)], axis=1))
    return np.concatenate(rows) if rows else np.empty((0, 2))


def _lattice(box, size):
    """Lattice of equal triangles over a box, its middle on a row, alike to both sides."""
    half = 0.5 * (box[1] - box[0])
    n = np.ceil(half / (size * np.array([1.0, _ROW]))).astype(int) + 1
    i, j = np.meshgrid(np.arange(-n[0], n[0] + 1), np.arange(-n[1], n[1] + 1))
    x = size * (i + 0.5 * (j % 2))
    points = np.stack([x.ravel(), _ROW * size * j.ravel()], axis=1)
    return box.mean(axis=0) + points


def _far_from_lines(points, size, lines, share=0.5):
    """Whether points are a good half of a side away from all lines."""
    from scipy.spatial import cKDTree

    known = np.concatenate([lines.points, lines.middles])
    ends = lines.points[lines.edges]
    quarter = 0.5 * (ends + lines.middles[:, None])
    known = np.concatenate([known, quarter.reshape(-1, 2)])
    far = cKDTree(known).query(points)[0]
    return far > share * size


def inside(points, lines):
    """Tell whether points lie in what is to be meshed.

    Parameters
    ----------
    points : numpy.ndarray
        x and y [mm], one row for each.
    lines : PlaneLines
        Lines, some of which go round it [mm].

    Returns
    -------
    numpy.ndarray of bool
        True where the number of edges to the right of the point is odd.
    """
    edges = lines.rim
    (x0, y0), (x1, y1) = lines.points[edges[:, 0]].T, lines.points[edges[:, 1]].T
    x, y = points[:, :1], points[:, 1:]
    spans = (y0 <= y) != (y1 <= y)
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = x0 + (y - y0) * ((x1 - x0) / (y1 - y0))
    return (spans & (crossing > x)).sum(axis=1) % 2 == 1


def thinned(points, size, share=0.55):
    """Which points stay when of two that are too close together the later one goes.

    Parameters
    ----------
    points : numpy.ndarray
        x and y [mm], one row for each.
    size : numpy.ndarray
        Size asked for at each [mm].
    share : float
        Least distance as a share of the size [-].

    Returns
    -------
    numpy.ndarray of bool
        True for those that stay.
    """
    from scipy.spatial import cKDTree

    stays = np.ones(len(points), dtype=bool)
    if len(points) < 2:
        return stays
    far, near = cKDTree(points).query(points, k=min(6, len(points)))
    first, column = np.nonzero(far[:, 1:] < share * size[:, None])
    second = near[first, column + 1]
    pair = np.sort(np.stack([first, second], axis=1), axis=1)
    for a, b in pair[np.lexsort((pair[:, 1], pair[:, 0]))]:
        if stays[a] and stays[b]:
            stays[b] = False
    return stays
