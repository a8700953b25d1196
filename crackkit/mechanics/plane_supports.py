"""What holds the edges and points of a slab in its own plane, and what pulls at its edges."""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _

_DIRECTIONS = {"x": (1.0, 0.0), "y": (0.0, 1.0)}
_PLACES, _WEIGHTS = np.polynomial.legendre.leggauss(3)


@dataclass(frozen=True, eq=False)
class Hold:
    """Something that holds a side, or some nodes, in one direction.

    Parameters
    ----------
    where : str or array_like of int
        Name of a side, or numbers of nodes [-].
    direction : str
        "x", "y", or "normal" (square to the side; for sides only).
    stiffness : float
        Infinite for what cannot move. For a side, force for each mm of its length and of movement
        [MPa], see `slab_on_friction.grip_stiffness`; for nodes, force for each mm of movement
        [N/mm] at each of them.
    movement : float or array_like
        How far the hold itself is moved [mm]; one for all, or one for each node. A side that
        springs hold is moved evenly.

    Raises
    ------
    ValueError
        If the direction is unknown or the stiffness is below 0.
    """

    where: object
    direction: str
    stiffness: float = np.inf
    movement: object = 0.0

    def __post_init__(self):
        on_side = isinstance(self.where, str)
        if self.direction not in _DIRECTIONS and not (self.direction == "normal" and on_side):
            raise ValueError(_("A hold acts along x, along y, or square to a side."))
        if not self.stiffness >= 0:
            raise ValueError(_("A hold is as stiff as nothing, 0, or stiffer."))

    @property
    def is_rigid(self):
        """Whether it lets nothing move."""
        return np.isinf(self.stiffness)


def side_nodes(mesh, name):
    """Nodes of a side, in order along it.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and named sides.
    name : str
        Name of the side.

    Returns
    -------
    numpy.ndarray of int
        Numbers of the nodes, corners and middles in turn.

    Raises
    ------
    ValueError
        If no side has the name.
    """
    walk = _edges(mesh, name)[:, [0, 2, 1]].ravel()
    # The end of an edge begins the next one, except where a crack opens on the side.
    return walk[np.sort(np.unique(walk, return_index=True)[1])]


def _edges(mesh, name):
    if name not in mesh.sides:
        raise ValueError(_("The slab has no side named {!r}.").format(name))
    return np.asarray(mesh.sides[name])


@dataclass(frozen=True, eq=False)
class SidePlaces:
    """Three Gauss points on each edge of a side.

    Parameters
    ----------
    edges : numpy.ndarray of int
        Nodes of the edges: both corners, then the middle [-], shape (k, 3).
    shapes : numpy.ndarray
        Share of each of the three nodes [-], shape (3 points, 3 nodes).
    points : numpy.ndarray
        Where the points are [mm], shape (k, 3, 2).
    normals : numpy.ndarray
        Unit vectors that point out of the slab [-], shape (k, 3, 2).
    lengths : numpy.ndarray
        Length that each point stands for [mm], shape (k, 3).
    """

    edges: np.ndarray
    shapes: np.ndarray
    points: np.ndarray
    normals: np.ndarray
    lengths: np.ndarray


def side_places(mesh, name):
    """Gauss points of a side.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and named sides; the body lies on the left of each side.
    name : str
        Name of the side.

    Returns
    -------
    SidePlaces
        Three points on each edge [mm].

    Raises
    ------
    ValueError
        If no side has the name.
    """
    edges, s = _edges(mesh, name), _PLACES
    shape = np.stack([0.5 * s * (s - 1), 0.5 * s * (s + 1), 1 - s * s], axis=1)
    slope = np.stack([s - 0.5, s + 0.5, -2 * s], axis=1)
    corners = mesh.points[edges]
    along = slope @ corners
    length = np.hypot(along[..., 0], along[..., 1])
    out = np.stack([along[..., 1], -along[..., 0]], axis=-1) / length[..., None]
    return SidePlaces(edges, shape, shape @ corners, out, length * _WEIGHTS)


def edge_forces(mesh, name, traction):
    """Forces on the nodes of a side that is pulled or pushed.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and named sides.
    name : str
        Name of the side.
    traction : array_like or callable
        Force along x and y for each mm of the side [N/mm], two numbers; or what gives it, shape
        (k, 3, 2), from the points [mm] and the outward normals [-] of that shape.

    Returns
    -------
    numpy.ndarray
        Forces on all nodes [N], shape (2 n,).

    Raises
    ------
    ValueError
        If no side has the name.
    """
    places = side_places(mesh, name)
    t = traction(places.points, places.normals) if callable(traction) else traction
    t = np.broadcast_to(np.asarray(t, dtype=float), places.points.shape)
    each = places.shapes.T @ (places.lengths[..., None] * t)
    return _summed(mesh, places.edges, each)


def point_forces(mesh, node, force):
    """Forces on the nodes of which only one is pulled.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes.
    node : int
        Number of the node [-].
    force : array_like
        Force along x and y [N].

    Returns
    -------
    numpy.ndarray
        Forces on all nodes [N], shape (2 n,).
    """
    whole = np.zeros((len(mesh.points), 2))
    whole[node] = force
    return whole.ravel()


def _summed(mesh, edges, each):
    n, at = len(mesh.points), edges.ravel()
    both = [np.bincount(at, each[..., c].ravel(), minlength=n) for c in (0, 1)]
    return np.stack(both, axis=1).ravel()


def fixed_movements(mesh, holds):
    """Which movements the rigid holds give.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and named sides.
    holds : sequence of Hold
        Holds; those that yield are passed over.

    Returns
    -------
    numpy.ndarray
        Movement along x and y of each node [mm], shape (2 n,); not a number where it is free.

    Raises
    ------
    ValueError
        If a rigid hold acts square to a side that does not run along x or y.
    """
    given = np.full((len(mesh.points), 2), np.nan)
    for hold in holds:
        if hold.is_rigid:
            on_side = isinstance(hold.where, str)
            nodes = side_nodes(mesh, hold.where) if on_side else np.asarray(hold.where)
            axis, sign = _axis(mesh, hold)
            given[nodes, axis] = sign * np.asarray(hold.movement, dtype=float)
    return given.ravel()


def _axis(mesh, hold):
    """Axis of a rigid hold and whether it counts along it, 1, or against it, -1."""
    if hold.direction in _DIRECTIONS:
        return "xy".index(hold.direction), 1.0
    normal = side_places(mesh, hold.where).normals.reshape(-1, 2)
    axis = int(np.argmax(abs(normal[0])))
    if abs(normal - np.sign(normal[0, axis]) * np.eye(2)[axis]).max() > 1e-9:
        raise ValueError(_("Only a side along x or y can be held rigidly square to itself."))
    return axis, np.sign(normal[0, axis])


def springs(mesh, holds):
    """Stiffness and forces of the holds that yield.

    Parameters
    ----------
    mesh : PlaneMesh
        Nodes and named sides.
    holds : sequence of Hold
        Holds; the rigid ones are passed over.

    Returns
    -------
    stiffness : scipy.sparse.csr_array
        Force for each unit of movement [N/mm], shape (2 n, 2 n).
    forces : numpy.ndarray
        Forces on the nodes from holds that are moved [N], shape (2 n,).
    """
    from scipy.sparse import coo_array, csr_array

    size = 2 * len(mesh.points)
    whole, forces = csr_array((size, size)), np.zeros(size)
    for hold in holds:
        if not hold.is_rigid and hold.stiffness > 0:
            at, each, push = _side_spring(mesh, hold)
            rows, columns = (a.ravel() for a in np.broadcast_arrays(at[:, :, None], at[:, None]))
            whole = whole + coo_array((each.ravel(), (rows, columns)), shape=(size, size)).tocsr()
            forces += np.bincount(at.ravel(), push.ravel(), minlength=size)
    return whole, forces


def _side_spring(mesh, hold):
    """Equations (k, e) of each edge or node, its stiffness (k, e, e) and its push (k, e)."""
    if not isinstance(hold.where, str):
        at = 2 * np.asarray(hold.where)[:, None] + "xy".index(hold.direction)
        push = hold.stiffness * np.broadcast_to(np.asarray(hold.movement, float), len(at))
        return at, np.full((len(at), 1, 1), hold.stiffness), push[:, None]
    places = side_places(mesh, hold.where)
    way = _DIRECTIONS.get(hold.direction)
    way = places.normals if way is None else np.broadcast_to(way, places.normals.shape)
    row = (places.shapes[:, :, None] * way[:, :, None, :]).reshape(*way.shape[:2], 6)
    weighted = hold.stiffness * places.lengths[..., None] * row
    at = (2 * places.edges[:, :, None] + np.arange(2)).reshape(-1, 6)
    push = weighted.sum(axis=1) * np.asarray(hold.movement, float)
    return at, weighted.transpose(0, 2, 1) @ row, push
