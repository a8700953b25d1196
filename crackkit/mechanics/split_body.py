"""An elastic body split along a line, reduced to what the line feels of it.

The displacement of the first face is that of the second and the jump between them. With the jumps
as unknowns of their own, put last in the order of elimination, what is left of the stiffness when
all others are eliminated is that of the line itself; no equation is solved for each node of the
line. The line is held by springs as stiff as it is while whole, which are taken off again exactly
where it is not.
"""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics.other_grip import Grip, moves_for_units
from crackkit.mechanics.plane_factor import symmetric_factors
from crackkit.words import _

_THIN = 0.5  # mm of concrete, as soft as the line while it is whole
_LOOSE = 1e-8  # of the greatest pivot; what moves freely leaves no more than rounding errors
_FEW = 1500  # unknowns left at the end that are quicker inverted than solved for


def line_stiffness(modulus):
    """Stiffness of a line that is still whole: that of half a millimetre of concrete.

    It stands for a line that is rigid until it cracks. The strength is reached at an opening of
    0.00005 mm, and the body becomes softer by no more than that half millimetre.

    Parameters
    ----------
    modulus : float
        Modulus E of the concrete [MPa], above 0.

    Returns
    -------
    float
        Stress for each millimetre of opening [MPa/mm].
    """
    return modulus / _THIN


@dataclass(frozen=True, eq=False)
class SplitBody:
    """A body with its line held by springs, factorised once for all loads, laws and bars.

    Parameters
    ----------
    line : CrackLine
        The line.
    area : numpy.ndarray
        Area of crack that each node of the line stands for [mm2], shape (p,).
    stiffness : float
        Stiffness of the springs that hold the line [MPa/mm].
    factor : scipy.sparse.linalg.SuperLU
        Factor of the stiffness in the unknowns of the body.
    spread : scipy.sparse.csr_array
        Displacements from these unknowns [-], shape (2 n, unknowns).
    jumps : scipy.sparse.csr_array
        Opening of all nodes of the line, then sliding, from these unknowns [-], shape
        (2 p, unknowns).
    compliance : numpy.ndarray
        Opening and sliding [mm] for a force of 1 N between the faces, shape (2 p, 2 p).
    grip : Grip or None
        What springs that hold the body do, where they may be changed.
    gripped : numpy.ndarray or None
        Opening and sliding [mm] for a force of 1 N where these springs act, shape (2 p, m).
    """

    line: object
    area: np.ndarray
    stiffness: float
    factor: object
    spread: object
    jumps: object
    compliance: np.ndarray
    grip: Grip | None = None
    gripped: np.ndarray | None = None

    def unknowns(self, loads):
        """Answer to loads while the line is held.

        Parameters
        ----------
        loads : numpy.ndarray
            Forces on the unknowns [N], shape (unknowns,) or (unknowns, loads).

        Returns
        -------
        numpy.ndarray
            Unknowns [mm], of the same shape.
        """
        return self.factor.solve(np.ascontiguousarray(loads))

    def held(self, times):
        """The same body, its springs of another stiffness.

        Parameters
        ----------
        times : float
            How many times as stiff as factorised they are [-], above 0.

        Returns
        -------
        SplitBody
            To be changed no further [mm/N].
        """
        factor = self.grip.held(times)
        compliance = self.compliance - self.gripped @ factor.lacking @ self.gripped.T
        return replace(self, factor=factor, compliance=compliance, grip=None, gripped=None)


def split_body(stiffness, free, line, thickness, springs, grip=None):
    """Reduce a body to what its line feels.

    Parameters
    ----------
    stiffness : scipy.sparse.csc_array
        Stiffness of the split body, nothing held [N/mm], shape (2 n, 2 n): x and y of node 0, of
        node 1 and so on.
    free : numpy.ndarray
        Unknowns that no support holds [-], as numbers or as 2 n booleans.
    line : CrackLine
        The line.
    thickness : float
        Thickness of the body [mm], above 0.
    springs : float
        Stiffness of the line while it is whole [MPa/mm], above 0; see `line_stiffness`.
    grip : scipy.sparse.sparray, optional
        That part of the stiffness that springs give which may be changed [N/mm], shape
        (2 n, 2 n); see `SplitBody.held`.

    Returns
    -------
    SplitBody
        Factor, and the compliance of the line [mm/N].

    Raises
    ------
    ArithmeticError
        If nothing holds the body where it is.
    """
    spread, pairs = _spread(stiffness.shape[0], free, line)
    area = line.length * thickness
    matrix = (spread.T @ stiffness @ spread).tocsc()
    at, held = _grip_at(grip, spread)
    last = np.union1d(pairs[pairs >= 0], at)
    moving, forces = pairs >= 0, np.zeros(matrix.shape[0])
    forces[pairs[moving]] = np.broadcast_to(area[:, None] * springs, pairs.shape)[moving]
    factor = _factorised(matrix, last, forces[last])
    jumps = _jumps(pairs, line, matrix.shape[0])
    inner = _inverse_at(factor, last, matrix.shape[0])
    turned, there = jumps[:, last], np.searchsorted(last, at)
    felt = turned @ inner
    compliance = turned @ felt.T
    gripped = Grip(factor, at, held, inner[np.ix_(there, there)])
    return SplitBody(
        line, area, springs, factor, spread, jumps, compliance, gripped, felt[:, there]
    )


def _grip_at(grip, spread):
    """Unknowns on which springs act that may be changed, and their stiffness."""
    if grip is None:
        return np.zeros(0, dtype=int), np.zeros((0, 0))
    own = (spread.T @ grip @ spread).tocsr()
    at = np.flatnonzero(np.diff(own.indptr))
    return at, own[at][:, at].toarray()


def _spread(size, free, line):
    """Displacements from the unknowns, and the unknown of each jump in x and y, or -1."""
    from scipy.sparse import csr_array

    kept = np.zeros(size, dtype=bool)
    kept[free] = True
    a, b = (2 * each[:, None] + np.arange(2) for each in (line.first, line.second))
    moving = kept.copy()
    moving[a[kept[a]]] = False
    only = kept[b] & ~kept[a]
    moving[b[only]] = False  # where only the second face can move it moves against the jump
    number = np.cumsum(moving) - 1
    jump = kept[a] | kept[b]
    pairs = np.where(jump, moving.sum() - 1 + np.cumsum(jump).reshape(jump.shape), -1)
    follows = kept[a] & kept[b]
    rows = [np.flatnonzero(moving), a[kept[a]], b[only], a[follows]]
    columns = [number[moving], pairs[kept[a]], pairs[only], number[b[follows]]]
    signs = [np.full(len(each), -1.0 if k == 2 else 1.0) for k, each in enumerate(rows)]
    parts = (np.concatenate(signs), (np.concatenate(rows), np.concatenate(columns)))
    return csr_array(parts, shape=(size, moving.sum() + jump.sum())), pairs


def _factorised(matrix, last, springs):
    """Factor with the last ones at the end: tied all to all, they have the most neighbours."""
    from scipy.sparse import coo_array

    rows, columns = np.repeat(last, len(last)), np.tile(last, len(last))
    ties = np.diag(springs)
    ties[ties == 0.0] = np.finfo(float).tiny
    tied = coo_array((ties.ravel(), (rows, columns)), shape=matrix.shape).tocsc()
    try:
        return symmetric_factors(matrix + tied)
    except RuntimeError as fault:
        raise ArithmeticError(_("Nothing holds the body where it is.")) from fault


def _jumps(pairs, line, unknowns):
    from scipy.sparse import csr_array

    p = len(pairs)
    directions = np.stack([line.across, line.way])  # opening or sliding, node, component
    rows = np.broadcast_to(np.arange(2 * p).reshape(2, p, 1), directions.shape)
    columns = np.broadcast_to(pairs, directions.shape)
    there = columns >= 0
    parts = (directions[there], (rows[there], columns[there]))
    return csr_array(parts, shape=(2 * p, unknowns))


def _inverse_at(factor, last, size):
    """Part of the inverse for the last ones, from the end of the factor."""
    from scipy.linalg.lapack import dtrtri

    pivots = factor.U.diagonal()
    if not pivots.min() > _LOOSE * pivots.max():
        raise ArithmeticError(_("Nothing holds the body where it is."))
    order = factor.perm_c[last]
    start = int(order.min())
    if size - start > _FEW:
        return moves_for_units(factor, size, last)[last]
    upper = factor.U[:, start:].tocsr()[start:].toarray()
    back = dtrtri(upper / np.sqrt(np.diag(upper))[:, None])[0]
    at = order - start
    return (back @ back.T)[np.ix_(at, at)]
