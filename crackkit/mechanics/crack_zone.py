"""The cracked zone around a layer of bars: the one description that every width rule reads."""

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np

from crackkit.words import _


@dataclass(frozen=True)
class CrackZone:
    """Concrete that is stretched, and the layer of bars that crosses it.

    Every number may be a float or an array; arrays broadcast against each other, so that one zone
    can stand for a whole row of stations along a member.

    Under direct tension the zone is the half of the member next to the face that is looked at:
    `steel_area` and `number` are those of that half (a single layer at mid-depth gives half its
    area to either face), `depth` is still the full depth, and `neutral_axis` is not read.

    Parameters
    ----------
    steel_stress : float or ndarray
        Stress in the bars where the crack crosses them, tension positive [MPa].
    diameter : float
        Bar diameter; for mixed bars see `equivalent_diameter` [mm].
    clear_cover : float
        From the stretched face to the surface of the nearest bar [mm].
    spacing : float
        Bars centre to centre; for a single bar the width of the zone [mm].
    steel_area : float
        Area of the bars in the zone [mm2].
    width : float
        Width of the section at the stretched face [mm].
    depth : float
        Full depth h of the section [mm].
    effective_depth : float
        From the squeezed face to the centroid of the bars, d [mm].
    neutral_axis : float or ndarray
        Depth x of the squeezed part of the cracked section [mm].
    side_cover : float
        From the side face to the surface of the nearest bar; infinite in a slab [mm].
    number : float
        Bars in the zone; mixed bars count as area over the area of the largest [-].
    tensile_strength : float
        Strength of the concrete in tension when it cracks, f_ct,eff [MPa].
    modular_ratio : float
        Modulus of steel over modulus of concrete [-].
    steel_modulus : float
        Modulus of elasticity of the steel [MPa].
    duration : {"short", "lasting"}
        How long the load acts.
    action : {"bending", "tension"}
        What stretches the zone.
    bond : {"good", "poor"}
        Bond condition from the position of the bar while the concrete was placed.
    layers : int
        Layers of bars [-].

    Raises
    ------
    ValueError
        Where no steel crosses the zone, where the bars do not lie in the stretched part, or where
        one of the named choices is unknown.
    """

    steel_stress: float | np.ndarray
    diameter: float
    clear_cover: float
    spacing: float
    steel_area: float
    width: float
    depth: float
    effective_depth: float
    neutral_axis: float | np.ndarray
    side_cover: float
    number: float
    tensile_strength: float
    modular_ratio: float
    steel_modulus: float = 200000.0
    duration: Literal["short", "lasting"] = "short"
    action: Literal["bending", "tension"] = "bending"
    bond: Literal["good", "poor"] = "good"
    layers: int = 1

    def __post_init__(self):
        _check_choices(self)
        _check_bars(self)

    @cached_property
    def steel_tension(self):
        """Steel stress, nothing where the bar is squeezed [MPa]."""
        return np.maximum(self.steel_stress, 0.0)

    @cached_property
    def stretched_depth(self):
        """Depth h - x of the stretched part; all of it under direct tension [mm]."""
        return self.depth - self.neutral_axis if self.action == "bending" else self.depth

    @cached_property
    def beta(self):
        """Strain at the face over strain at the bars, (h - x)/(d - x) [-]."""
        if self.action == "tension":
            return 1.0
        return self.stretched_depth / (self.effective_depth - self.neutral_axis)

    @cached_property
    def centre_cover(self):
        """From the stretched face to the centre of the nearest bar, d_c [mm]."""
        return self.clear_cover + 0.5 * self.diameter

    @cached_property
    def centroid_cover(self):
        """From the stretched face to the centroid of all bars, h - d [mm]."""
        return self.depth - self.effective_depth

    @cached_property
    def area_per_bar(self):
        """Concrete with the same centroid as the bars, shared among them, A [mm2]."""
        return 2.0 * self.centroid_cover * self.width / self.number


def _positive(value) -> bool:
    return bool(np.all(value > 0.0)) if isinstance(value, np.ndarray) else bool(value > 0.0)


def _check_choices(zone: CrackZone) -> None:
    if zone.duration not in ("short", "lasting"):
        raise ValueError(_("A load is short or lasting, not {}.").format(zone.duration))
    if zone.action not in ("bending", "tension"):
        raise ValueError(_("A zone is in bending or in tension, not {}.").format(zone.action))
    if zone.bond not in ("good", "poor"):
        raise ValueError(_("Bond is good or poor, not {}.").format(zone.bond))


def _check_bars(zone: CrackZone) -> None:
    if not (_positive(zone.steel_area) and _positive(zone.number) and _positive(zone.diameter)):
        raise ValueError(_("No steel crosses the crack: no rule gives it a width."))
    if not _positive(zone.depth - zone.effective_depth):
        raise ValueError(_("The bars lie outside the section."))
    if zone.action == "bending" and not _positive(zone.effective_depth - zone.neutral_axis):
        raise ValueError(_("The bars lie in the squeezed part: they do not hold the crack."))
