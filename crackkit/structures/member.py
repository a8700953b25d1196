"""A straight member with bars, and the state of its cross-section at every station."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import Bar
from crackkit.mechanics.concrete import Concrete, concrete, effective_modulus
from crackkit.mechanics.development import developed_share, development_length
from crackkit.mechanics.section import Section, cracked, uncracked

STEEL_MODULUS = 200000.0  # MPa, EN 1992-1-1 3.2.7(4); ACI 318-19 20.2.2.2
CREEP = 2.0  # creep coefficient of a load that stays for years; common practice
LASTING_STRENGTH_ACI = 2 / 3  # share of the cracking moment, ACI 318-19 Table 24.2.3.5


@dataclass(frozen=True)
class Layer:
    """Bars side by side at one depth.

    Attributes
    ----------
    key, label : str
        Name inside the structure, and for the reader.
    bar : Bar
        Size of each bar.
    number : int
        Bars side by side.
    depth : float
        Depth of their centres from the top face [mm].
    start, end : float
        Ends of the bars [mm from the left end].
    side_cover : float
        Clear concrete beside the outer bars [mm].
    """

    key: str
    label: str
    bar: Bar
    number: int
    depth: float
    start: float
    end: float
    side_cover: float

    @property
    def area(self) -> float:
        """Area of all bars [mm2]."""
        return self.number * self.bar.area

    @property
    def mass(self) -> float:
        """Mass of all bars [kg]."""
        return self.number * self.bar.mass * (self.end - self.start) / 1000.0


@dataclass(frozen=True)
class Member:
    """Everything the cracking of a straight member depends on, loads apart (N, mm, MPa)."""

    length: float
    section: Section
    layers: tuple[Layer, ...]
    concrete: Concrete
    yield_strength: float
    code: str
    duration: str
    exposure: str

    @classmethod
    def of(cls, *, length, width, depth, layers, strength, yield_strength, **chosen) -> "Member":
        """Make a rectangular member [mm, MPa]; `chosen` holds code, duration and exposure."""
        section = Section(width, depth)
        material = concrete(strength, depth, chosen["code"])
        return cls(length, section, layers, material, yield_strength, **chosen)

    @property
    def cracking_strength(self) -> float:
        """Stress at which the face cracks [MPa].

        The flexural strength for a short load. For a load that stays, shrinkage has used part
        of it: the mean direct strength by EN 1992-1-1 7.1(2), two thirds by ACI 318-19
        Table 24.2.3.5.
        """
        if self.duration == "short":
            return self.concrete.flexural
        if self.code == "EN":
            return self.concrete.tensile
        return LASTING_STRENGTH_ACI * self.concrete.flexural

    @property
    def modulus(self) -> float:
        """Modulus of the concrete under this load [MPa], lowered by creep if the load stays."""
        if self.duration == "short":
            return self.concrete.modulus
        return effective_modulus(self.concrete.modulus, CREEP)

    @property
    def ratio(self) -> float:
        """Modular ratio Es/Ec under this load [-]."""
        return STEEL_MODULUS / self.modulus

    @property
    def steel_mass(self) -> float:
        """Mass of the bars along the member [kg]; stirrups are not counted."""
        return sum(item.mass for item in self.layers)

    def anchorage(self, item: Layer) -> float:
        """Length past which a layer of bars counts fully [mm]."""
        return development_length(
            item.bar.diameter, self.yield_strength, self.concrete.strength, self.code
        )


@dataclass(frozen=True)
class States:
    """Section states at stations; row 0 uncracked, row 1 cracked at the bottom, 2 at the top.

    Attributes
    ----------
    x : ndarray, shape (n,)
        Stations [mm].
    present : ndarray of bool, shape (layers, n)
        Which layers run through each station.
    share : ndarray, shape (layers, n)
        Share of their strength they can build up there [-].
    axis, inertia : ndarray, shape (3, n)
        Depth of the neutral axis from the top [mm], transformed inertia [mm4].
    """

    x: np.ndarray
    present: np.ndarray
    share: np.ndarray
    axis: np.ndarray
    inertia: np.ndarray

    def at_row(self, row: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Pick axis and inertia of the given row at each station."""
        along = np.arange(self.x.size)
        return self.axis[row, along], self.inertia[row, along]


def states(member: Member, x: np.ndarray) -> States:
    """Work out the section states at stations x [mm]: once for each combination of bars."""
    share = _shares(member, x)
    present = share > 0.0
    weights = 2 ** np.arange(len(member.layers))
    code = weights @ present if len(member.layers) else np.zeros(x.size, dtype=int)
    axis, inertia = np.empty((3, x.size)), np.empty((3, x.size))
    for value in set(code.tolist()):
        here = code == value
        chosen = [item for bit, item in enumerate(member.layers) if value >> bit & 1]
        for row, state in enumerate(section_states(member, chosen)):
            axis[row, here], inertia[row, here] = state.axis, state.inertia
            if not _held(row, axis[0, here][0], chosen):
                inertia[row, here] = 0.0
    return States(x, present, share, axis, inertia)


def _held(row: int, axis: float, layers) -> bool:
    """Tell whether a bar lies on the stretched side before the crack comes.

    A bar on the squeezed side meets the crack only when it has run past the neutral axis, and
    by then the load is more than such a bar can bear: it does not count as crossing.
    """
    sense = (0, 1, -1)[row]
    return row == 0 or any(sense * (item.depth - axis) > 0 for item in layers)


def _shares(member: Member, x: np.ndarray) -> np.ndarray:
    rows = [developed_share(x, i.start, i.end, member.anchorage(i)) for i in member.layers]
    return np.array(rows).reshape(len(rows), x.size)


def section_states(member: Member, layers) -> tuple:
    """Give the uncracked, the bottom-cracked and the top-cracked section with these layers."""
    depths, areas = [i.depth for i in layers], [i.area for i in layers]
    n = member.ratio
    return (
        uncracked(member.section, depths, areas, n),
        cracked(member.section, depths, areas, n, 1),
        cracked(member.section, depths, areas, n, -1),
    )
