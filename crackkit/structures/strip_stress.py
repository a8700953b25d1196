"""What a moment or a pull does to the bars of a strip, with and without fibres beside them."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.concrete import concrete, effective_modulus, modulus_en, tensile_strength_en
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.mechanics.fibre_section import fibre_cracked, tension_with_fibres
from crackkit.structures.member import CREEP, STEEL_MODULUS, bent_strength
from crackkit.structures.strip_bars import StripBars

BENT, PULLED = "bent", "pulled"
UNIT = 1e6  # N mm, a moment by which stresses of a section without fibres are scaled


@dataclass(frozen=True)
class Strip:
    """Concrete of a strip, and how it is loaded.

    Attributes
    ----------
    width, depth : float
        Of the strip [mm].
    strength : float
        Cylinder strength [MPa].
    code, duration, action : str
        ``"ACI"`` or ``"EN"``; ``"short"`` or ``"lasting"``; ``"bent"`` or ``"pulled"``.
    residual : float
        What fibres carry across a fine crack, f_Fts [MPa]; 0 without fibres.
    """

    width: float
    depth: float
    strength: float
    code: str
    duration: str
    action: str
    residual: float = 0.0

    @property
    def modulus(self) -> float:
        """Modulus of the concrete, the effective one for lasting load [MPa]."""
        short = concrete(self.strength, self.depth, self.code).modulus
        return short if self.duration == "short" else float(effective_modulus(short, CREEP))

    @property
    def ratio(self) -> float:
        """Modular ratio [-]."""
        return STEEL_MODULUS / self.modulus

    @property
    def area(self) -> float:
        """Cross-section [mm2]."""
        return self.width * self.depth

    @property
    def cracks_at(self) -> float:
        """Moment [N mm] or pull [N] at which the concrete cracks, bars left out."""
        own = concrete(self.strength, self.depth, self.code)
        if self.action == BENT:
            return bent_strength(own, self.code, self.duration) * self.width * self.depth**2 / 6.0
        return own.tensile * self.area


@dataclass(frozen=True)
class StripStress:
    """Bars of a strip in a crack; each number may be an array of cases.

    Attributes
    ----------
    alone : float or ndarray
        Stress the bars would have without fibres [MPa].
    stress : float or ndarray
        Stress the bars have [MPa]; 0 where the fibres alone carry the load.
    axis : float or ndarray
        Depth of the squeezed part [mm]; 0 in a pulled strip.
    d : float or ndarray
        Squeezed face to the bars [mm]; in a pulled strip the far face.
    """

    alone: float | np.ndarray
    stress: float | np.ndarray
    axis: float | np.ndarray
    d: float | np.ndarray


def load_of(strip: Strip, bars: StripBars, stress: float):
    """Give the moment [N mm] or pull [N] that gives the bars a stress [MPa] without fibres."""
    if strip.action == PULLED:
        return stress * bars.total
    return stress * UNIT / _bent(strip, bars, UNIT, 0.0)[0]


def strip_stress(strip: Strip, bars: StripBars, load) -> StripStress:
    """Give the stress in the bars under a moment [N mm] or a pull [N]."""
    d = effective_depth(strip, bars)
    if strip.action == PULLED:
        concrete_area = strip.area - bars.total
        held = tension_with_fibres(load, bars.total, concrete_area, strip.residual)
        return StripStress(load / bars.total, held, 0.0, d)
    alone, axis = _bent(strip, bars, load, 0.0)
    if strip.residual > 0.0:
        stress, axis = _bent(strip, bars, load, strip.residual)
        return StripStress(alone, np.maximum(stress, 0.0)[()], np.minimum(axis, 0.99 * d)[()], d)
    return StripStress(alone, alone, axis, d)


def _bent(strip: Strip, bars: StripBars, load, residual: float):
    """Stress in the bars [MPa] and squeezed depth [mm]."""
    d = effective_depth(strip, bars)
    depths, areas = np.asarray(d)[None], np.asarray(bars.area)[None]
    found = fibre_cracked(
        strip.width, strip.depth, depths, areas, strip.ratio, strip.modulus, load, residual
    )
    return found.steel_stresses[0], found.squeezed


def effective_depth(strip: Strip, bars: StripBars):
    """Depth of the bars under the squeezed face, or under the far one [mm]."""
    if bars.faces == 0.5:
        return strip.depth / 2
    return strip.depth - bars.cover - bars.diameter / 2


def zone(strip: Strip, bars: StripBars, held: StripStress) -> CrackZone:
    """Describe the cracked zone next to the face in the words that every width rule reads."""
    share = 0.5 if bars.faces == 0.5 else 1.0  # a layer at mid-depth serves both faces
    return CrackZone(
        steel_stress=held.stress,
        diameter=bars.diameter,
        clear_cover=strip.depth - held.d - bars.diameter / 2,
        spacing=bars.spacing,
        steel_area=share * bars.area,
        width=strip.width,
        depth=strip.depth,
        effective_depth=held.d,
        neutral_axis=held.axis,
        side_cover=bars.side_cover,
        number=share * bars.number,
        # only the European rules read these two, so they follow EN 1992-1-1 Table 3.1
        tensile_strength=tensile_strength_en(strip.strength),
        modular_ratio=STEEL_MODULUS / modulus_en(strip.strength),
        duration=strip.duration,
        action="bending" if strip.action == BENT else "tension",
    )
