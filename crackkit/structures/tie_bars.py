"""How the bars of a pulled member lie in its cross-section, and the zone that width rules read."""

from crackkit.mechanics.bars import Bar
from crackkit.mechanics.concrete import modulus_en, tensile_strength_en
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.structures.member import STEEL_MODULUS
from crackkit.words import _

ARRANGEMENTS = (
    (0, _("none")),
    (1, _("one, in the middle")),
    (2, _("two, side by side")),
    (4, _("four, one in each corner")),
    (6, _("six, three in each face")),
    (8, _("eight, four in each face")),
)


def in_row(number: int) -> int:
    """How many bars lie side by side in a row."""
    return number if number <= 2 else number // 2


def rows(number: int) -> int:
    """How many rows of bars there are."""
    return min(number, 1) if number <= 2 else 2


def places(number: int, bar: Bar, width: float, depth: float, cover: float):
    """Give the centres of the bars in the cross-section, pairs (y, z) [mm].

    Parameters
    ----------
    number : int
        One of the `ARRANGEMENTS`.
    bar : Bar
        Size of each.
    width, depth, cover : float
        Of the cross-section, and clear concrete over the bars [mm].
    """
    if number < 2:
        return ((width / 2, depth / 2),) * number
    edge = cover + bar.diameter / 2
    step = (width - 2 * edge) / (in_row(number) - 1)
    heights = (depth / 2,) if rows(number) == 1 else (edge, depth - edge)
    return tuple((edge + step * k, z) for z in heights for k in range(in_row(number)))


def zone(tie, bar: Bar, steel_stress: float) -> CrackZone:
    """Describe the half of a member next to its bottom face, as the width rules read it.

    Parameters
    ----------
    tie : TensionMember
        The member, with one bar or more.
    bar : Bar
        Size of its bars.
    steel_stress : float
        Stress in the bars at the cracks [MPa].
    """
    across = places(tie.number, bar, tie.width, tie.depth, tie.cover)
    lowest = max(z for _y, z in across)
    row = sorted(y for y, z in across if z == lowest)
    return CrackZone(
        steel_stress=steel_stress,
        diameter=bar.diameter,
        clear_cover=tie.depth - lowest - bar.diameter / 2,
        spacing=row[1] - row[0] if len(row) > 1 else tie.width,
        steel_area=tie.number * bar.area / 2,
        width=tie.width,
        depth=tie.depth,
        effective_depth=lowest,
        neutral_axis=0.0,
        side_cover=row[0] - bar.diameter / 2,
        number=tie.number / 2,
        tensile_strength=tensile_strength_en(tie.strength),
        modular_ratio=STEEL_MODULUS / modulus_en(tie.strength),
        duration=tie.duration,
        action="tension",
        bond="good" if tie.bond == "good" else "poor",
    )
