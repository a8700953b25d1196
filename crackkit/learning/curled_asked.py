"""Slabs that curl, and strips of them, that questions are asked about."""

from dataclasses import replace

from crackkit.learning.choices import CODES, SLAB_STEEL
from crackkit.mechanics.concrete import concrete
from crackkit.structures.curled_slab import CurledSlab, WheelLoad
from crackkit.structures.materials import UNIT_WEIGHT
from crackkit.units.quantities import FOOT, INCH, PSI

# Few sizes, so that what is worked out once for each of them can be kept.
SIDES = {"SI": (4000.0, 5000.0, 6000.0), "US": (14 * FOOT, 16 * FOOT, 20 * FOOT)}
DEPTHS = {"SI": (125.0, 150.0), "US": (5 * INCH, 6 * INCH)}
STRENGTH = {"SI": 30.0, "US": 4000 * PSI}
DRIES = 0.5, 6e-4  # humidity of a heated building, shrinkage of an ordinary mix
FOOT_SIDE = {"SI": 100.0, "US": 4 * INCH}
MATS = {
    "SI": (("10", 100.0), ("10", 150.0), ("12", 150.0)),
    "US": (("#4", 6 * INCH), ("#4", 8 * INCH), ("#3", 4 * INCH)),
}
NEAR_TOP = {"SI": 30.0, "US": 1.25 * INCH}


def panel_of(random, system: str, **inputs) -> CurledSlab:
    """Draw a square panel of a heated floor without bars, on a sheet, with no wheel on it.

    Parameters
    ----------
    random : random.Random
    system : str
        Units; rules go with them.
    **inputs
        Other inputs of the slab.
    """
    side = random.choice(SIDES[system])
    usual = {
        "length": side,
        "width": side,
        "thickness": random.choice(DEPTHS[system]),
        "humidity": DRIES[0],
        "shrinks": DRIES[1],
        "curing": 3.0,
        "age": 45.0,
        "loads": (WheelLoad(0.0, side / 2, side / 2, FOOT_SIDE[system]),),
        "strength": STRENGTH[system],
        "code": CODES[system][0],
        "yield_strength": SLAB_STEEL[system],
        "exposure": "dry",
    }
    return CurledSlab(**(usual | inputs))


def with_wheel(slab: CurledSlab, force: float, across: float, along: float) -> CurledSlab:
    """Put a wheel [N] on a panel, at shares of its width and length [-]."""
    x, y = along * slab.length, across * slab.width
    return replace(slab, loads=(replace(slab.loads[0], force=force, x=x, y=y),))


def strip_of(slab: CurledSlab, gradient: float) -> tuple[float, float, float]:
    """Give stiffness, free curvature and weight of a strip 1 mm wide [N mm, 1/mm, N/mm2].

    Parameters
    ----------
    slab : CurledSlab
    gradient : float
        How much more its top wants to shrink than its bottom [-].
    """
    modulus = concrete(slab.strength, slab.thickness, slab.code).modulus
    rigidity = modulus * slab.thickness**3 / 12.0
    return rigidity, gradient / slab.thickness, UNIT_WEIGHT[slab.code] * slab.thickness


def dry_and_bare(slab: CurledSlab) -> CurledSlab:
    """Give the slab on the day on which its corners stand highest."""
    state = slab.curled
    return replace(slab, age=float(state.days[state.rises.argmax()]))
