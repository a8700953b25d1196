"""Floors with an inside corner that questions are asked about."""

from functools import lru_cache

from crackkit.learning.choices import CODES, SLAB_STEEL, bars_text
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.structures.corner_ages import at_age
from crackkit.structures.corner_field import pulled_corners
from crackkit.structures.corner_restraint import restraint, uncracked
from crackkit.structures.corner_shapes import form
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.cornered import Cornered
from crackkit.units.quantities import FOOT, INCH, PSI
from crackkit.words import _

# Few sizes, so that what is worked out once for each of them can be kept: sides, missing sides.
SIDES = {
    "SI": ((5000.0, 2500.0), (6000.0, 3000.0)),
    "US": ((16 * FOOT, 8 * FOOT), (20 * FOOT, 10 * FOOT)),
}
DEPTHS = {"SI": (125.0, 150.0), "US": (5 * INCH, 6 * INCH)}
STRENGTH = {"SI": 30.0, "US": 4000 * PSI}
COVER = {"SI": 40.0, "US": 1.5 * INCH}
HOLDS = 0.12  # walls on soil that gives: what the panel begins with
CLOSE = {"SI": 50.0, "US": 2 * INCH}  # clear of the corner


def floor_of(random, system: str, **inputs) -> CornerSlab:
    """Draw an L-shaped floor in a heated building, tied to the walls all round, without bars.

    Parameters
    ----------
    random : random.Random
    system : str
        Units; rules go with them.
    **inputs
        Other inputs of the slab.
    """
    side, missing = random.choice(SIDES[system])
    usual = {
        "length": side,
        "width": side,
        "cut_length": missing,
        "cut_width": missing,
        "thickness": random.choice(DEPTHS[system]),
        "held": "edges",
        "holds": HOLDS,
        "strength": STRENGTH[system],
        "cover": COVER[system],
        "code": CODES[system][0],
        "yield_strength": SLAB_STEEL[system],
        "exposure": "dry",
    }
    return CornerSlab(**(usual | inputs))


def floor_text(slab: CornerSlab, system: str) -> str:
    """Say what the floor is: an L of so many metres, so thick, a quarter of it missing."""
    text = _("An L-shaped floor, {side} by {side} with {cut} by {cut} missing, {thick} thick,")
    return text.format(
        side=shown(slab.length, "length", system),
        cut=shown(slab.cut_length, "length", system),
        thick=shown(slab.thickness, "size", system),
    )


def diagonals_of(system: str, name: str, count: int, off: float) -> dict:
    """Give the inputs that lay diagonal bars, clear of the corner by `off` [mm]."""
    return {
        "diagonals": name,
        "diagonal_count": count,
        "diagonal_off": off,
        "diagonal_apart": 100.0 if system == "SI" else 4 * INCH,
        "diagonal_length": 1200.0 if system == "SI" else 4 * FOOT,
    }


def diagonals_text(slab: CornerSlab) -> str:
    """Write its diagonal bars as the trade does: 3 × #5, or 3 × 16 mm."""
    return bars_text(slab.diagonal_count, bar(slab.diagonals))


def corner_pull(slab: CornerSlab) -> float:
    """Mean tension at the hardest pulled corner over the strength [-], as the panel shows it.

    Without the crack, which takes longer to work out.
    """
    of, by, now = form(slab), restraint(slab), at_age(slab, slab.age)
    state, length = uncracked(of, by, now.modulus, now.free), now.material_length
    corners = pulled_corners(of, by)
    return max(c.mean(state, min(length, c.longest)) for c in corners) / now.strength


@lru_cache(maxsize=128)
def torn(slab: CornerSlab) -> Cornered:
    """Give the state of a floor with its crack; kept, for it takes longer."""
    return slab.cornered
