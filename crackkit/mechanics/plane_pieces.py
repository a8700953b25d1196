"""Lines that a plane mesh must follow: sides cut where a crack meets them, and the crack itself."""

from crackkit.mechanics.plane_outline import PlaneSide
from crackkit.words import _

CRACK = -1
"""Number that stands for the line of the crack where others are the numbers of sides."""
_SAME = 1e-7  # distance that counts as none, in sizes of the outline


def plane_pieces(outline, crack):
    """Cut the sides of an outline where a crack begins or ends on them.

    Parameters
    ----------
    outline : PlaneOutline
        The body [mm].
    crack : numpy.ndarray
        Corners of the line of the crack from its mouth on [mm]; no rows without one.

    Returns
    -------
    pieces : list of PlaneSide
        Pieces of sides, then those of the crack, whose ends are ends of pieces exactly [mm].
    owners : list of int
        Number of the side that each piece belongs to [-]; CRACK for the crack.

    Raises
    ------
    ValueError
        If the crack does not begin on a side.
    """
    pieces, owners = list(outline.sides), list(range(len(outline.sides)))
    if not len(crack):
        return pieces, owners
    line = [tuple(map(float, point)) for point in crack]
    mouth = joined(pieces, owners, line[0], _SAME * outline.reach)
    if mouth is None:
        raise ValueError(_("A crack begins on a side and runs inside of the body."))
    line[0] = mouth
    line[-1] = joined(pieces, owners, line[-1], _SAME * outline.reach) or line[-1]
    parts = [PlaneSide("crack", a, b) for a, b in zip(line, line[1:], strict=False)]
    return pieces + parts, owners + [CRACK] * len(parts)


def joined(pieces, owners, point, near):
    """Make a point an end of pieces, if it lies on one of them: that one is cut there, in place.

    Parameters
    ----------
    pieces : list of PlaneSide
        Lines [mm].
    owners : list of int
        A number for each of them [-].
    point : tuple of float
        x and y [mm].
    near : float
        Distance that counts as none [mm].

    Returns
    -------
    tuple of float or None
        The end of pieces at the point [mm]; None if the point lies on none of them.
    """
    for piece in pieces:
        for end in (piece.start, piece.end):
            if abs(complex(*end) - complex(*point)) <= near:
                return end
    for k, piece in enumerate(pieces):
        share, distance = piece.share_of(point)
        if distance <= near and 0.0 < share < 1.0:
            pieces[k : k + 1] = piece.cut_at([share])
            owners.insert(k, owners[k])
            return pieces[k].end
    return None
