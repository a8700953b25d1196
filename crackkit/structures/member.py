"""A straight member with bars, and the state of its cross-section at every station."""

from dataclasses import dataclass, replace
from functools import cached_property, lru_cache

import numpy as np

from crackkit.mechanics.bars import Bar, clear_spacing
from crackkit.mechanics.concrete import Concrete, concrete, effective_modulus
from crackkit.mechanics.development import (
    developed_share,
    development_length_aci,
    development_length_en,
)
from crackkit.mechanics.hooks import hooked_length_aci, hooked_length_en
from crackkit.mechanics.section import Section, cracked, uncracked
from crackkit.mechanics.tapered import states_along
from crackkit.mechanics.us_customary import INCH

STEEL_MODULUS = 200000.0  # MPa, EN 1992-1-1 3.2.7(4); ACI 318-19 20.2.2.2
LEAST_COAT = 5.0  # mm of concrete that always stays under a bar trodden to the bottom
LINE_POINTS = 9  # of the drawn line of a layer in a tapered member
CREEP = 2.0  # creep coefficient of a load that stays for years; common practice
STEEL_FACTOR = 1.15  # gamma_s, EN 1992-1-1 Table 2.1N: anchorage is for the design stress
LASTING_STRENGTH_ACI = 2 / 3  # share of the cracking moment, ACI 318-19 Table 24.2.3.5


def bent_strength(concrete: Concrete, code: str, duration: str) -> float:
    """Stress at which a bent face cracks [MPa], see `Member.cracking_strength`."""
    if duration == "short":
        return concrete.flexural
    return concrete.tensile if code == "EN" else LASTING_STRENGTH_ACI * concrete.flexural


@dataclass(frozen=True)
class Layer:
    """Bars side by side at one depth.

    Attributes
    ----------
    key, label : str
        Name inside the structure, and for the reader.
    bar : Bar
        Size of each bar.
    number : float
        Bars side by side; of a mat those in the width that is looked at.
    depth : float
        Depth of their centres from the top face [mm], where the member is deepest.
    start, end : float
        Ends of the bars [mm from the left end].
    side_cover : float
        Clear concrete beside the outer bars [mm].
    wrap : float
        Diameter of the stirrups around them [mm]; 0 without stirrups.
    face : str
        The face the drawing asked for, ``"bottom"`` or ``"top"``; in a tapered member they
        follow it.
    hooks : tuple of bool
        Whether the left and the right end are bent into a standard hook.
    spacing : float or None
        Distance of the bars of a mat, centre to centre [mm]; None where bars are counted.
    anchored : tuple of bool
        Whether the left and the right end are anchored in what lies beyond the member, such as
        the column or wall that holds its end fast: they count fully up to there.
    """

    key: str
    label: str
    bar: Bar
    number: float
    depth: float
    start: float
    end: float
    side_cover: float
    wrap: float = 0.0
    face: str = "bottom"
    hooks: tuple[bool, bool] = (False, False)
    spacing: float | None = None
    anchored: tuple[bool, bool] = (False, False)

    @cached_property
    def area(self) -> float:
        """Area of all bars [mm2]."""
        return self.number * self.bar.area

    @property
    def mass(self) -> float:
        """Mass of all bars [kg]."""
        return self.number * self.bar.mass * (self.end - self.start) / 1000.0


@dataclass(frozen=True)
class Member:
    """Everything the cracking of a straight member depends on, loads apart (N, mm, MPa).

    ``section`` is the section where the member is deepest; ``depths`` holds points (x, depth)
    of a tapered member and is empty where the depth is the same all along.
    """

    length: float
    section: Section
    layers: tuple[Layer, ...]
    concrete: Concrete
    yield_strength: float
    code: str
    duration: str
    exposure: str
    depths: tuple[tuple[float, float], ...] = ()

    @classmethod
    def of(cls, *, length, width, depth, layers, strength, yield_strength, **chosen) -> "Member":
        """Make a member [mm, MPa]; `chosen` holds code, duration, exposure, flange, depths.

        Made as one before, it is that one: what is known of its bars and cracks still holds.
        """
        flange = chosen.pop("flange_width", None), chosen.pop("flange_depth", 0.0)
        section = Section(width, depth, *flange)
        material = concrete(strength, depth, chosen["code"])
        return _kept(cls(length, section, layers, material, yield_strength, **chosen))

    def once(self, key, make):
        """Give what `make()` gave when it was first asked for: what no load changes."""
        if key not in self._known:
            self._known[key] = make()
        return self._known[key]

    @cached_property
    def _known(self) -> dict:
        return {}

    @cached_property
    def tapered(self) -> bool:
        """Whether the depth changes along the member."""
        return bool(self.depths)

    def depth_at(self, x) -> np.ndarray:
        """Depth of the member at places x [mm]."""
        if not self.depths:
            return np.full(np.shape(x), self.section.depth)
        return np.interp(x, *zip(*self.depths, strict=True))

    def section_at(self, place: float) -> Section:
        """Outline of the section at one place [mm]."""
        return (
            replace(self.section, depth=float(self.depth_at(place)))
            if self.depths
            else self.section
        )

    def layer_depth(self, item: Layer, x) -> np.ndarray:
        """Depth of a layer from the top face [mm] at places x [mm].

        Where a member tapers, its soffit rises: bottom bars rise with it, and top bars that lie
        low rest on the form. A float where the depth is the same all along.
        """
        if not self.depths:
            return item.depth
        depth = self.depth_at(x)
        coat = LEAST_COAT + item.wrap + item.bar.diameter / 2
        if item.face == "bottom":
            return np.maximum(depth - (self.section.depth - item.depth), coat)
        return np.minimum(item.depth, depth - coat)

    def line_of(self, item: Layer) -> np.ndarray:
        """Line of a layer: points (x, z) [mm], shape (k, 2)."""
        ends = np.array([item.start, item.end])
        if not self.depths:
            return np.column_stack([ends, (item.depth, item.depth)])
        inner = [x for x, _depth in self.depths if item.start < x < item.end]
        x = np.unique(np.concatenate([ends, inner, np.linspace(*ends, LINE_POINTS)]))
        return np.column_stack([x, self.layer_depth(item, x)])

    @cached_property
    def cracking_strength(self) -> float:
        """Stress at which the face cracks [MPa].

        The flexural strength for a short load. For a load that stays, shrinkage has used part
        of it: the mean direct strength by EN 1992-1-1 7.1(2), two thirds by ACI 318-19
        Table 24.2.3.5.
        """
        return bent_strength(self.concrete, self.code, self.duration)

    @cached_property
    def modulus(self) -> float:
        """Modulus of the concrete under this load [MPa], lowered by creep if the load stays."""
        if self.duration == "short":
            return self.concrete.modulus
        return effective_modulus(self.concrete.modulus, CREEP)

    @property
    def stiffness(self) -> float:
        """Stiffness EI of the whole section, bars left out [N mm2], where it is deepest."""
        return self.modulus * self.section.inertia

    @cached_property
    def ratio(self) -> float:
        """Modular ratio Es/Ec under this load [-]."""
        return STEEL_MODULUS / self.modulus

    @property
    def steel_mass(self) -> float:
        """Mass of the bars along the member [kg]; stirrups are not counted."""
        return sum(item.mass for item in self.layers)

    def bond(self, item: Layer) -> str:
        """Bond of a layer by its place while the concrete was poured, ``"good"`` or ``"poor"``.

        EN 1992-1-1:2004 8.4.2 and Figure 8.2: poor more than 250 mm above the bottom of a pour
        and, in one deeper than 600 mm, in its upper 300 mm.
        """
        below = self.section.depth - item.depth
        high = item.depth < 300.0 if self.section.depth > 600.0 else below > 250.0
        return "poor" if high else "good"

    def anchorage(self, item: Layer) -> float:
        """Length past which a layer of bars counts fully [mm].

        Bars high in a deep pour need more: psi_t of ACI 318-19 Table 25.4.2.5 with more than
        12 in of concrete below the bar, eta_1 of EN 1992-1-1:2004 8.4.2.
        """
        size, strength = item.bar.diameter, self.concrete.strength
        if self.code == "EN":
            share = 1.0 if self.bond(item) == "good" else 0.7
            return development_length_en(size, self.yield_strength / STEEL_FACTOR, strength, share)
        below = self.section.depth - item.depth - size / 2
        top_cast = 1.3 if below > 12 * INCH else 1.0
        return development_length_aci(size, self.yield_strength, strength, top_cast=top_cast)

    def end_lengths(self, item: Layer) -> tuple[float, float]:
        """Lengths past which a layer counts fully, from its left and its right end [mm]."""
        straight = self.anchorage(item)
        if not any(item.hooks):
            return straight, straight
        hooked = min(self.hooked_length(item), straight)
        return tuple(hooked if hook else straight for hook in item.hooks)

    @cached_property
    def bar_ends(self) -> list[float]:
        """Places where bars begin or end [mm], from left to right."""
        return sorted({place for item in self.layers for place in (item.start, item.end)})

    @cached_property
    def developing(self) -> tuple[tuple[float, float], ...]:
        """The `end_lengths` of each layer [mm]."""
        return tuple(self.end_lengths(item) for item in self.layers)

    def hooked_length(self, item: Layer) -> float:
        """Length past which a hooked end counts fully [mm], from the outside of the hook.

        ACI 318-19 25.4.3.1; EN 1992-1-1:2004 8.4.4 with alpha_1 of Table 8.2.
        """
        size, strength = item.bar.diameter, self.concrete.strength
        gap = self.clear_gap(item)
        if self.code == "EN":
            share = 1.0 if self.bond(item) == "good" else 0.7
            cover = min(gap / 2, np.inf if item.spacing else item.side_cover)
            return hooked_length_en(
                size, self.yield_strength / STEEL_FACTOR, strength, share, cover
            )
        cover = np.inf if item.spacing else item.side_cover
        return hooked_length_aci(size, self.yield_strength, strength, cover, gap + size)

    def clear_gap(self, item: Layer) -> float:
        """Clear distance of the bars of a layer [mm]; infinite for a single bar."""
        if item.spacing:
            return item.spacing - item.bar.diameter
        return clear_spacing(self.section.width, item.side_cover, item.bar.diameter, item.number)


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
    depth : ndarray, shape (n,)
        Depth of the member [mm].
    bar_depth : ndarray, shape (layers, n)
        Depth of each layer from the top face [mm].
    """

    x: np.ndarray
    present: np.ndarray
    share: np.ndarray
    axis: np.ndarray
    inertia: np.ndarray
    depth: np.ndarray
    bar_depth: np.ndarray

    @cached_property
    def shares(self) -> list[list[float]]:
        """The shares once more, as lists: a few numbers are sooner looked at one by one."""
        return self.share.tolist()

    def at_row(self, row: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
        """Pick axis and inertia of the given row at each station."""
        along = np.arange(self.x.size)
        return self.axis[row, along], self.inertia[row, along]


@lru_cache(maxsize=16)  # loads move and grow on a member that stays the same
def _kept(member: Member) -> Member:
    """Give the first of equal members."""
    return member


def states(member: Member, x: np.ndarray) -> States:
    """Work out the section states at stations x [mm]."""
    share = _shares(member, x)
    present = share > 0.0
    depth = member.depth_at(x)
    bars = np.array([member.layer_depth(item, x) for item in member.layers])
    if member.tapered:
        bar_depth = bars.reshape(len(bars), x.size)
        return States(
            x, present, share, *_tapered(member, depth, bar_depth, present), depth, bar_depth
        )
    bar_depth = bars[:, None].repeat(x.size, axis=1)
    return States(x, present, share, *_even(member, present), depth, bar_depth)


def _even(member: Member, present: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """Axis and inertia where the depth is the same all along: once for each set of bars."""
    code = (2 ** np.arange(len(member.layers))) @ present
    sets, number = np.unique(code, return_inverse=True)
    rows = [
        section_states(member, [item for k, item in enumerate(member.layers) if one >> k & 1])
        for one in sets.tolist()
    ]
    axis, inertia = np.array(rows).T[:, :, number]
    return axis, inertia


def _tapered(member: Member, depth, bar_depth, present) -> tuple[np.ndarray, np.ndarray]:
    areas = np.array([item.area for item in member.layers]).reshape(-1, 1) * present
    return states_along(member.section.width, depth, bar_depth, areas, member.ratio)


def _shares(member: Member, x: np.ndarray) -> np.ndarray:
    rows = zip(member.layers, member.developing, strict=True)
    ends = [(*_open_ends(item), *lengths) for item, lengths in rows]
    start, end, left, right = np.array(ends).reshape(-1, 4).T[:, :, None]
    return developed_share(x, start, end, left, right)


def _open_ends(item: Layer) -> tuple[float, float]:
    """Ends of a layer [mm]; endless where it is anchored beyond the member."""
    left, right = item.anchored
    return -np.inf if left else item.start, np.inf if right else item.end


def section_states(member: Member, layers) -> tuple[tuple[float, float], ...]:
    """Give axis and inertia of the whole, the bottom-cracked and the top-cracked section.

    The whole section is the gross one (ACI 318-19 24.2.3.5): bars hardly change it, and what they
    add the shrinkage that they restrain takes back. The inertia of a cracked section is 0 where
    nothing holds the crack.
    """
    bars = tuple((item.depth, item.area) for item in layers)
    return _section_states(member.section, bars, member.ratio)


@lru_cache(maxsize=256)  # a load that moves along a beam meets the same few sections
def _section_states(section: Section, bars: tuple, ratio: float):
    depths, areas = [depth for depth, _area in bars], [area for _depth, area in bars]
    whole = uncracked(section, (), (), ratio)
    found = [(whole.axis, whole.inertia)]
    for sense in (1, -1):
        state = cracked(section, depths, areas, ratio, sense)
        holds = _holds(whole.axis, sense, depths)
        found.append((state.axis, state.inertia if holds else 0.0))
    return tuple(found)


def _holds(axis: float, sense: int, depths) -> bool:
    """Tell whether a bar lies on the stretched side before the crack comes.

    A bar on the squeezed side meets the crack only when it has run past the neutral axis, and
    by then the load is more than such a bar can bear: it does not count as crossing.
    """
    return any(sense * (depth - axis) > 0 for depth in depths)
