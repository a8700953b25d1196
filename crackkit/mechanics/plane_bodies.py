"""Slabs and walls with inside corners: the outlines that the workbook looks at."""

import numpy as np

from crackkit.mechanics.plane_outline import PlaneOutline, PlaneSide, rounded_loop
from crackkit.words import _

_AROUND = ("near", "right", "far", "left")
_THINNEST = np.radians(30.0)  # of a wedge of concrete between a round box-out and the edge


def l_slab(length, width, notch_length, notch_width, radius=0.0):
    """Slab in the form of an L: a rectangle without its far right corner.

    Parameters
    ----------
    length, width : float
        Size of the rectangle along x and y [mm].
    notch_length, notch_width : float
        Size along x and y of what is missing [mm], above 0 and below the rectangle's.
    radius : float
        Radius of the inside corner [mm], 0 = sharp, up to the smaller size of the notch.

    Returns
    -------
    PlaneOutline
        Sides "near", "right", "shelf" (along x, at the notch), "inside" (the arc), "riser" (along
        y, at the notch), "far" and "left", in [mm].

    Raises
    ------
    ValueError
        If the notch is not smaller than the rectangle, or the radius does not fit.
    """
    if not (0 < notch_length < length and 0 < notch_width < width):
        raise ValueError(_("The missing corner must be smaller than the slab."))
    x, y = length - notch_length, width - notch_width
    corners = [(0, 0), (length, 0), (length, y), (x, y), (x, width), (0, width)]
    names = ("near", "right", "shelf", "riser", "far", "left")
    arcs = [f"corner of {name}" for name in names]
    arcs[3] = "inside"
    return PlaneOutline((rounded_loop(corners, names, [0, 0, 0, radius, 0, 0], arcs),))


def tee_slab(length, width, notch_length, notch_width, column=None):
    """Slab in the form of a T: a rectangle without its two far corners, perhaps with a column.

    Parameters
    ----------
    length, width : float
        Size of the rectangle along x and y [mm].
    notch_length, notch_width : float
        Size along x and y of what is missing at either corner [mm], above 0; below half of the
        length, and below the width.
    column : tuple or None
        Box-out round a column inside of the T: middle (x, y) [mm], size [mm] and form, as
        `slab_round_column` takes them.

    Returns
    -------
    PlaneOutline
        Sides "near", "right", "shelf right", "riser right", "far", "riser left", "shelf left"
        and "left", and "opening 1" and so on; in [mm].

    Raises
    ------
    ValueError
        If a missing corner or the box-out does not fit.
    """
    if not (0 < notch_length < length / 2 and 0 < notch_width < width):
        raise ValueError(_("The missing corners must be smaller than the slab."))
    x, y = (notch_length, length - notch_length), width - notch_width
    corners = [(0, 0), (length, 0), (length, y), (x[1], y), (x[1], width), (x[0], width)]
    corners += [(x[0], y), (0, y)]
    names = ["near", "right", "shelf right", "riser right", "far", "riser left", "shelf left"]
    loop = rounded_loop(corners, [*names, "left"])
    if column is None:
        return PlaneOutline((loop,))
    centre, size, form = column
    ring = _ring(form, 0.5 * size, centre)
    _must_lie_inside(ring, length, width)
    if _top(ring) >= y:  # it reaches into the narrow part
        _must_lie_inside(_moved(ring, -x[0]), x[1] - x[0], width)
    return PlaneOutline((loop, ring))


def rectangle(length, width):
    """Slab or wall without an opening.

    Parameters
    ----------
    length, width : float
        Size along x and y [mm], above 0.

    Returns
    -------
    PlaneOutline
        Sides "near" (y = 0), "right", "far" and "left", in [mm].
    """
    return PlaneOutline((_rectangle_loop(length, width),))


def slab_with_opening(length, width, centre, opening, radius=0.0, turned=0.0):
    """Rectangular slab with a rectangular opening, whose corners may be rounded.

    Parameters
    ----------
    length, width : float
        Size of the slab along x and y [mm].
    centre : tuple of float
        Middle of the opening, x and y [mm] from the near left corner.
    opening : tuple of float
        Size of the opening along x and y before it is turned [mm], above 0.
    radius : float
        Radius of its corners [mm], 0 up to half of its smaller size: then a square opening is a
        circle.
    turned : float
        Angle by which it is turned counter-clockwise [rad].

    Returns
    -------
    PlaneOutline
        Sides "near", "right", "far", "left"; "opening near" and so on; arcs "opening near right"
        and so on; in [mm].

    Raises
    ------
    ValueError
        If the opening does not lie inside of the slab, or the radius does not fit.
    """
    a, b = 0.5 * opening[0], 0.5 * opening[1]
    if not min(a, b) > 0:
        raise ValueError(_("An opening has a length and a width."))
    # Clockwise, so that the body lies on the left: up the left side, and so on.
    z = np.array([complex(-a, -b), complex(-a, b), complex(a, b), complex(a, -b)])
    z = z * _unit(turned) + complex(*centre)
    names = [f"opening {side}" for side in ("left", "far", "right", "near")]
    arcs = [f"opening {c}" for c in ("near left", "far left", "far right", "near right")]
    hole = rounded_loop(np.stack([z.real, z.imag], axis=1), names, radius, arcs)
    _must_lie_inside(hole, length, width)
    return PlaneOutline((_rectangle_loop(length, width), hole))


def slab_round_column(length, width, centre, size, form="square"):
    """Slab with a box-out round a column, inside of the slab or cut into its near edge.

    Parameters
    ----------
    length, width : float
        Size of the slab along x and y [mm].
    centre : tuple of float
        Middle of the box-out, x and y [mm]; y may be below 0, as long as the box-out cuts the
        slab.
    size : float
        Width of a square box-out, or diameter of a round one [mm].
    form : str
        "square", "diamond" (the square turned by 45 degrees, a corner towards the edge) or
        "round".

    Returns
    -------
    PlaneOutline
        Sides "near", "right", "far", "left", and "opening 1" and so on; cut into the near edge,
        that edge is "near left" and "near right"; in [mm].

    Raises
    ------
    ValueError
        If the form is unknown, the box-out does not fit, or leaves a strip too thin at the edge.
    """
    if form not in ("square", "diamond", "round"):
        raise ValueError(_("A box-out is square, diamond or round."))
    ring = _ring(form, 0.5 * size, centre)
    low = min(min(side.start[1], side.end[1]) for side in ring)
    if low > 0:
        _must_lie_inside(ring, length, width)
        return PlaneOutline((_rectangle_loop(length, width), ring))
    if form == "round" and centre[1] > 0.5 * size * np.cos(_THINNEST):
        raise ValueError(_("The box-out leaves a strip of concrete too thin at the edge."))
    cut = _above_edge(ring)
    _must_lie_inside(cut, length, width, edge=True)
    x = cut[0].start[0], cut[-1].end[0]
    near = (
        PlaneSide("near left", (0.0, 0.0), (x[0], 0.0)),
        *cut,
        PlaneSide("near right", (x[1], 0.0), (float(length), 0.0)),
    )
    return PlaneOutline((near + _rectangle_loop(length, width)[1:],))


def wall_with_door(length, height, door_place, door_width, door_height):
    """Wall with a door: an opening from its foot up, with sharp corners at its top.

    Parameters
    ----------
    length, height : float
        Size of the wall along x and y [mm].
    door_place : float
        From the left end of the wall to the door [mm], above 0.
    door_width, door_height : float
        Size of the door [mm].

    Returns
    -------
    PlaneOutline
        Sides "foot left", "door left", "door head", "door right", "foot right", "right", "top"
        and "left", in [mm].

    Raises
    ------
    ValueError
        If the door does not fit into the wall.
    """
    x, w, h = door_place, door_width, door_height
    if not (x > 0 and w > 0 and x + w < length and 0 < h < height):
        raise ValueError(_("The door must fit into the wall."))
    corners = [(0, 0), (x, 0), (x, h), (x + w, h), (x + w, 0), (length, 0)]
    corners += [(length, height), (0, height)]
    names = ["foot left", "door left", "door head", "door right", "foot right"]
    return PlaneOutline((rounded_loop(corners, [*names, "right", "top", "left"]),))


def _rectangle_loop(length, width):
    return rounded_loop([(0, 0), (length, 0), (length, width), (0, width)], _AROUND)


def _unit(angle):
    """Complex number of length 1; a quarter turn is exactly 1j: what is upright stays so."""
    z = np.exp(1j * angle)
    return complex(round(z.real, 15), round(z.imag, 15))


def _ring(form, half, centre):
    """Loop of a box-out as a hole, beginning at its left, clockwise."""
    z = half * np.array([-1.0 - 1.0j, -1.0 + 1.0j, 1.0 + 1.0j, 1.0 - 1.0j])
    if form == "diamond":
        z = half * np.sqrt(2.0) * np.array([-1.0, 1.0j, 1.0, -1.0j])
    z = z + complex(*centre)
    names = [f"opening {k}" for k in (1, 2, 3, 4)]
    return rounded_loop(
        np.stack([z.real, z.imag], axis=1), names, half if form == "round" else 0.0, names
    )


def _top(ring):
    """Greatest y of a loop [mm]."""
    return max(side.points(np.linspace(0.0, 1.0, 9))[:, 1].max() for side in ring)


def _moved(ring, across):
    """The same loop moved along x [mm]."""
    ends = [[(x + across, y) for x, y in (side.start, side.end)] for side in ring]
    return tuple(
        PlaneSide(side.name, *two, side.turn) for side, two in zip(ring, ends, strict=True)
    )


def _above_edge(ring):
    """Sides of a clockwise loop above y = 0, cut there, in one row from left to right."""
    above = [piece for side in ring for piece in _cut_at_edge(side)]
    starts = [k for k, side in enumerate(above) if above[k - 1].end != side.start]
    first = starts[0] if starts else 0
    return tuple(above[first:] + above[:first])


def _cut_at_edge(side):
    """Pieces of a side above y = 0."""
    pieces = side.cut_at(sorted(_crossings(side)))
    middles = [piece.points([0.5])[0, 1] for piece in pieces]
    return [_on_edge(p) for p, y in zip(pieces, middles, strict=True) if y > 0]


def _on_edge(side):
    """Same side with an end that lies at y = 0 but for a rounding error put there exactly."""
    a, b = ((x, 0.0 if abs(y) < 1e-9 * side.length else y) for x, y in (side.start, side.end))
    return PlaneSide(side.name, a, b, side.turn)


def _crossings(side):
    """Shares of the length of a side where it crosses y = 0."""
    if not side.turn:
        a, b = side.start[1], side.end[1]
        found = [a / (a - b)] if a * b < 0 else []
    else:
        x, y = side.centre
        reach = np.sqrt(max(side.radius**2 - y * y, 0.0))
        found = [side.share_of((x + sign * reach, 0.0))[0] for sign in (-1.0, 1.0)]
    return [float(t) for t in found if 1e-9 < t < 1.0 - 1e-9]


def _must_lie_inside(loop, length, width, edge=False):
    points = np.concatenate([side.points(np.linspace(0.0, 1.0, 9)) for side in loop])
    low, high = points.min(axis=0), points.max(axis=0)
    inside = low[0] > 0 and high[0] < length and high[1] < width
    if not inside or (low[1] < 0 if edge else low[1] <= 0):
        raise ValueError(_("The opening must lie inside of the slab."))
