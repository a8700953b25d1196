"""A slab seen as a thin plate: its size, its ground, its four edges, and what stands on it."""

from dataclasses import dataclass

from crackkit.words import _

HOLDS = {"free": 0, "supported": 1, "clamped": 2}
"""How an edge may be held, and how much of it: height, and slope."""


@dataclass(frozen=True)
class PlateEdge:
    """What one edge of a slab is tied to.

    Parameters
    ----------
    hold : str
        "free", "supported" (cannot move up or down) or "clamped" (cannot turn either).
    transfer : float
        Load transfer of the joint [-], 0 to 1: how far the edge of the neighbour goes along with
        this one, as a share. Only for a free edge.

    Raises
    ------
    ValueError
        If the hold is unknown or the share is not 0 to 1.
    """

    hold: str = "free"
    transfer: float = 0.0

    def __post_init__(self):
        if self.hold not in HOLDS:
            raise ValueError(_("An edge is free, supported or clamped."))
        if not 0 <= self.transfer <= 1 or (self.transfer and self.hold != "free"):
            raise ValueError(_("A joint transfers 0 to 100 %, and only at a free edge."))


FREE = PlateEdge()
"""An edge that nothing ties."""


@dataclass(frozen=True)
class PlateSlab:
    """A slab of even thickness, on springs that push but never pull.

    Parameters
    ----------
    length : float
        Size along x [mm], above 0.
    width : float
        Size along y [mm], above 0.
    thickness : float
        Thickness t [mm], above 0.
    modulus : float
        Modulus E of the concrete [MPa], above 0.
    ground : float
        Stiffness k of the ground [N/mm3], 0 or more: pressure for each mm that it is pushed in.
    weight : float
        Weight of the slab [N/mm2], 0 or more.
    poisson : float
        Poisson's ratio [-], 0 up to below 0.5.
    left, right, near, far : PlateEdge
        Edges at x = 0, x = length, y = 0 and y = width.

    Raises
    ------
    ValueError
        If a number lies outside of its range, or if nothing holds the slab up.
    """

    length: float
    width: float
    thickness: float
    modulus: float
    ground: float
    weight: float = 0.0
    poisson: float = 0.15
    left: PlateEdge = FREE
    right: PlateEdge = FREE
    near: PlateEdge = FREE
    far: PlateEdge = FREE

    def __post_init__(self):
        if not min(self.length, self.width, self.thickness, self.modulus) > 0:
            raise ValueError(_("A slab needs a size, a thickness and a modulus above zero."))
        if not (min(self.ground, self.weight) >= 0 and 0 <= self.poisson < 0.5):
            raise ValueError(_("Ground and weight are not negative; Poisson's ratio is 0 to 0.5."))
        if self.ground == 0 and all(edge.hold == "free" for edge in self.edges):
            raise ValueError(_("Without ground, an edge must hold the slab up."))

    @property
    def edges(self):
        """The four edges: left, right, near and far."""
        return self.left, self.right, self.near, self.far

    @property
    def rigidity(self):
        """Bending stiffness D of the plate [N mm]: E t^3 / (12 (1 - nu^2))."""
        return self.modulus * self.thickness**3 / (12.0 * (1.0 - self.poisson**2))

    @property
    def reach(self):
        """Radius of relative stiffness l [mm]; infinite without ground (Westergaard 1926)."""
        return (self.rigidity / self.ground) ** 0.25 if self.ground else float("inf")

    @property
    def settlement(self):
        """How far the slab sinks in under its own weight while it is flat [mm]."""
        return self.weight / self.ground if self.ground else 0.0

    def joint_stiffness(self, edge):
        """Stiffness that a joint adds along an edge.

        The neighbour is a large slab of the same kind that rests on the ground: a load spread
        along its edge meets k l/sqrt 2 (half-infinite beam on an elastic foundation, Hetenyi,
        from memory). The share `transfer` of it is what this edge feels, whatever the joint is
        made of.

        Parameters
        ----------
        edge : PlateEdge
            An edge of this slab.

        Returns
        -------
        float
            Force for each mm of edge and each mm of movement [N/mm2].
        """
        return edge.transfer * self.ground * self.reach / 2**0.5 if edge.transfer else 0.0


@dataclass(frozen=True)
class LoadPatch:
    """A load spread evenly over a rectangle: a wheel, the foot of a rack.

    Parameters
    ----------
    x, y : float
        Its centre [mm].
    length, width : float
        Its size along x and y [mm], above 0.
    force : float
        Load [N], downward positive.

    Raises
    ------
    ValueError
        If the rectangle has no size.
    """

    x: float
    y: float
    length: float
    width: float
    force: float

    def __post_init__(self):
        if not min(self.length, self.width) > 0:
            raise ValueError(_("A load needs a rectangle to stand on."))

    @property
    def along(self):
        """Where it begins and ends along x [mm]."""
        return self.x - 0.5 * self.length, self.x + 0.5 * self.length

    @property
    def across(self):
        """Where it begins and ends along y [mm]."""
        return self.y - 0.5 * self.width, self.y + 0.5 * self.width


@dataclass(frozen=True)
class Curvature:
    """How a slab would bend if nothing held it, its edges rising where positive.

    Parameters
    ----------
    x, y : float
        Free curvature along x and y [1/mm]: shrinkage of the top beyond that of the bottom, over
        the thickness.
    """

    x: float = 0.0
    y: float = 0.0


FLAT = Curvature()
"""No wish to bend."""


def even_curvature(difference, thickness):
    """Free curvature, alike in both directions, from a difference between the faces.

    Parameters
    ----------
    difference : float
        Shortening of the top beyond that of the bottom [-]: drier or colder on top is positive.
    thickness : float
        Thickness of the slab [mm], above 0.

    Returns
    -------
    Curvature
        Difference over thickness, both ways [1/mm].
    """
    return Curvature(difference / thickness, difference / thickness)
