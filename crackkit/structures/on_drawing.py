"""What a drawing shows of the inputs: supports, loads, and what of them can be dragged.

Every structure along a line gives ``footings``, ``hung`` and ``spread`` in these words, and its
``origin``: the place [mm from the left end] from which its reader counts. Drawings read nothing
else of the loads and supports, so a new structure needs no new drawing code for them.
"""

from dataclasses import dataclass

PIN, FIXED, WALL = "pin", "fixed", "wall"


@dataclass(frozen=True)
class Grip:
    """Something that can be dragged.

    Attributes
    ----------
    path : str
        What ``handle_changes`` of the structure is asked with.
    value, low, high : float
        Where it is and how far it goes [mm]: a place from the left end, or a drop.
    """

    path: str
    value: float
    low: float
    high: float


@dataclass(frozen=True)
class Footing:
    """Where the member is carried.

    Attributes
    ----------
    at : float
        Place [mm]; of a wall the face that the member grows out of.
    kind : str
        ``"pin"``, ``"fixed"`` or ``"wall"`` (a wall holds all of the member inside it).
    name : str
        For the reader, for instance ``"support B"``.
    letter : str
        Short mark beside it on the drawing; may be empty.
    sunk : float
        How far it has settled [mm].
    start, end : float or None
        Extent of a wall along the member [mm].
    grip : Grip or None
    """

    at: float
    kind: str
    name: str
    letter: str = ""
    sunk: float = 0.0
    start: float | None = None
    end: float | None = None
    grip: Grip | None = None


@dataclass(frozen=True)
class HungLoad:
    """A load on one place.

    Attributes
    ----------
    force : float
        Downward [N].
    at : float
        Place [mm].
    name : str
        For the reader, for instance ``"point load 1"``.
    grip : Grip or None
    """

    force: float
    at: float
    name: str
    grip: Grip | None = None


@dataclass(frozen=True)
class SpreadLoad:
    """A load spread evenly over a stretch.

    Attributes
    ----------
    start, end : float
        From where to where [mm].
    added : float
        Load [N/mm] without the weight of the member.
    own : float
        Weight of the member that counts [N/mm].
    kind : str
        ``"always"``, or ``"live"`` for a load that comes and goes.
    on : bool
        Whether a live load is there now.
    path : str
        Of the switch that turns a live load on and off.
    """

    start: float
    end: float
    added: float
    own: float = 0.0
    kind: str = "always"
    on: bool = True
    path: str = ""

    @property
    def total(self) -> float:
        """Load with own weight [N/mm]; 0 while it is off."""
        return self.added + self.own if self.on else 0.0
