"""Hooked bars: the length they need in sound concrete, and the room the hook takes.

A hook is measured along the straight bar, from the critical section to the outside of the bend.
"""

import math
from dataclasses import dataclass

from crackkit.mechanics.development import bond_root_aci, development_length_en
from crackkit.mechanics.us_customary import INCH, PSI
from crackkit.words import _

# Sizes as printed, with a hair for the rounding of the inch.
_NUMBER_EIGHT, _NUMBER_ELEVEN = 1.0 * INCH + 1e-6, 1.41 * INCH + 1e-6


@dataclass(frozen=True)
class HookShape:
    """The bent end of a bar.

    Parameters
    ----------
    diameter : float
        Bar diameter [mm].
    bend_diameter : float
        Least inside diameter of the bend [mm].
    straight : float
        Least straight length past the bend [mm].
    turn : float
        How far the bar turns [rad].
    """

    diameter: float
    bend_diameter: float
    straight: float
    turn: float

    @property
    def height(self) -> float:
        """Room across the bar, from its straight side to the far side of the hook [mm]."""
        outer = 0.5 * self.bend_diameter + self.diameter
        return outer * (1.0 - math.cos(self.turn)) + self.straight * math.sin(self.turn)

    @property
    def bar_length(self) -> float:
        """Length of bar past the start of the bend, along its centre [mm]."""
        return 0.5 * self.turn * (self.bend_diameter + self.diameter) + self.straight


def hook_shape_aci(diameter, turn=90):
    """Give the standard hook of a bar in tension (ACI 318-19, Table 25.3.1).

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm], to #18 (57.3 mm).
    turn : int
        90 or 180 [degrees].

    Returns
    -------
    HookShape
        Bend of 6 db inside to #8, 8 db to #11, 10 db above; past it 12 db straight after a turn
        of 90 degrees, 4 db but at least 2.5 in after 180 degrees.

    Raises
    ------
    ValueError
        If the turn is neither 90 nor 180 degrees.
    """
    if turn not in (90, 180):
        raise ValueError(_("A standard hook turns by 90 or 180 degrees, not {}.").format(turn))
    bend = 6.0 if diameter <= _NUMBER_EIGHT else 8.0 if diameter <= _NUMBER_ELEVEN else 10.0
    straight = 12.0 * diameter if turn == 90 else max(4.0 * diameter, 2.5 * INCH)
    return HookShape(diameter, bend * diameter, straight, math.radians(turn))


def hook_shape_en(diameter, turn=90):
    """Give the standard bend or hook of a bar (EN 1992-1-1:2004, Table 8.1N and Figure 8.1).

    Parameters
    ----------
    diameter : float
        Bar diameter phi [mm].
    turn : int
        90 to 180 [degrees]: a bend below 150, a hook from there on.

    Returns
    -------
    HookShape
        Mandrel of 4 phi to 16 mm, 7 phi above, which spares the bar; whether the concrete inside
        the bend bears it is another question (8.3(3)). Past the bend 5 phi straight.

    Raises
    ------
    ValueError
        If the bar turns by less than 90 or by more than 180 degrees.
    """
    if not 90 <= turn <= 180:
        raise ValueError(_("A hook turns by 90 to 180 degrees, not {}.").format(turn))
    bend = 4.0 if diameter <= 16.0 else 7.0
    return HookShape(diameter, bend * diameter, 5.0 * diameter, math.radians(turn))


def hooked_length_aci(
    diameter,
    yield_strength,
    concrete_strength,
    side_cover=0.0,
    spacing=0.0,
    tie_share=0.0,
    place="elsewhere",
    coating=1.0,
    lightweight=1.0,
):
    """Development length of a bar with a standard hook (ACI 318-19, 25.4.3.1).

    Cover, spacing and ties that are not named count as too little, which gives the longer length.

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm], to #18 (57.3 mm).
    yield_strength : float
        Yield strength fy [MPa].
    concrete_strength : float
        Cylinder strength f'c [MPa]; sqrt(f'c) counts up to 100 psi (25.4.1.4).
    side_cover : float
        Clear cover beside the plane of the hook [mm], 0 or more; inf in a slab or wall.
    spacing : float
        Hooked bars centre to centre [mm], 0 or more; inf for a single bar.
    tie_share : float
        Area of the ties that confine the hooks over the area of the hooked bars, Ath/Ahs [-],
        0 or more (25.4.3.3).
    place : str
        "column_core" for a hook that ends inside the ties of a column, else "elsewhere".
    coating : float
        psi_e [-]: 1.2 for epoxy-coated bars, else 1.
    lightweight : float
        Factor lambda [-], 0.75 in lightweight concrete, else 1.

    Returns
    -------
    float
        Development length ldh to the outside of the bend [mm], at least 8 db and 6 in.

    Raises
    ------
    ValueError
        If the place is unknown.

    Notes
    -----
    ldh = fy psi_e psi_r psi_o psi_c/(55 lambda sqrt(f'c)) db^1.5, printed in inches and psi and
    converted without rounding. Factors from Table 25.4.3.2, from memory.
    """
    psi = coating * tie_factor_aci(diameter, spacing, tie_share)
    psi *= side_factor_aci(diameter, side_cover, place) * strength_factor_aci(concrete_strength)
    pull = yield_strength / (lightweight * bond_root_aci(concrete_strength))
    ldh = pull * psi / 55 * (diameter / INCH) ** 1.5 * INCH
    return max(ldh, 8.0 * diameter, 6.0 * INCH)


def tie_factor_aci(diameter, spacing=0.0, tie_share=0.0):
    """Factor psi_r: 1 for hooks held by ties or far apart, else 1.6 (ACI 318-19, Table 25.4.3.2).

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm]; above #11 always 1.6.
    spacing : float
        Hooked bars centre to centre [mm]; 6 db is far enough.
    tie_share : float
        Ath/Ahs [-]; 0.4 is enough.

    Returns
    -------
    float
        psi_r [-].
    """
    held = spacing >= 6.0 * diameter or tie_share >= 0.4
    return 1.0 if diameter <= _NUMBER_ELEVEN and held else 1.6


def side_factor_aci(diameter, side_cover=0.0, place="elsewhere"):
    """Factor psi_o: 1 for hooks deep inside the member, else 1.25 (ACI 318-19, Table 25.4.3.2).

    Parameters
    ----------
    diameter : float
        Bar diameter db [mm]; above #11 always 1.25.
    side_cover : float
        Clear cover beside the plane of the hook [mm]; 2.5 in is enough in the core of a column,
        6 db elsewhere.
    place : str
        "column_core" or "elsewhere".

    Returns
    -------
    float
        psi_o [-].

    Raises
    ------
    ValueError
        If the place is unknown.
    """
    if place not in ("column_core", "elsewhere"):
        raise ValueError(_("A hook ends in a column_core or elsewhere, not {}.").format(place))
    enough = 2.5 * INCH if place == "column_core" else 6.0 * diameter
    return 1.0 if diameter <= _NUMBER_ELEVEN and side_cover >= enough else 1.25


def strength_factor_aci(concrete_strength):
    """Factor psi_c: f'c/15 000 psi + 0.6 below 6000 psi, then 1 (ACI 318-19, Table 25.4.3.2).

    Parameters
    ----------
    concrete_strength : float
        Cylinder strength f'c [MPa].

    Returns
    -------
    float
        psi_c [-].
    """
    return min(concrete_strength / (15_000 * PSI) + 0.6, 1.0)


def hooked_length_en(
    diameter, stress, concrete_strength, good_bond=1.0, cover=0.0, partial_factor=1.5
):
    """Design anchorage length of a bar that ends in a bend or hook (EN 1992-1-1:2004, 8.4.4).

    Parameters
    ----------
    diameter : float
        Bar diameter phi [mm].
    stress : float
        Stress to be anchored sigma_sd [MPa], usually the design yield strength.
    concrete_strength : float
        Characteristic cylinder strength fck [MPa].
    good_bond : float
        eta1 [-]: 1 where bond is good, 0.7 elsewhere (8.4.2(2)).
    cover : float
        cd of Figure 8.3(b) [mm]: the side cover or half the clear distance to the next bar,
        whichever is less; 0 where it is not known, inf in the middle of a slab.
    partial_factor : float
        gamma_c [-].

    Returns
    -------
    float
        Anchorage length to the outside of the bend lb,eq [mm], alpha1 times the basic length:
        0.7 where cd is above 3 phi, else 1; at least lb,min of (8.6). Cover and ties are given no
        further credit (alpha2 to alpha5 = 1).
    """
    alpha1 = 0.7 if cover > 3.0 * diameter else 1.0
    return development_length_en(
        diameter, stress, concrete_strength, good_bond, alpha1, partial_factor
    )
