"""Bars of a continuous floor: below in every span, above over every support, each with its ends."""

from dataclasses import dataclass

from crackkit.structures import fields
from crackkit.structures.anchored_bars import cover_high, drop_high, is_slab, placed
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.member import Layer
from crackkit.words import _

ALONE = 1.0  # mm from the end of the floor within which bars count as running into the end


@dataclass(frozen=True)
class FloorBars:
    """What all bars of one face have in common.

    ``face`` is the face the drawing asked for. The cover is clear concrete over the stirrups, or
    over the bars where there are none.
    """

    size: str = fields.choice(_("Bar size"), BAR_SIZES, "12", _("Nominal size of each bar."))
    spacing: float = fields.number(
        _("One bar every"), "size", 60.0, 400.0, 200.0, _("Centre to centre."), when=is_slab
    )
    cover: float = fields.number(
        _("Cover"), "size", 10.0, cover_high, 30.0, _("Clear concrete over the steel.")
    )
    drop: float = fields.number(
        _("Dropped by"),
        "size",
        0.0,
        drop_high,
        0.0,
        _("How far the bars sagged or were trodden down before the concrete set."),
    )
    face: str = "bottom"


@dataclass(frozen=True)
class Extent:
    """Where bars of one face lie: how many, and from where to where [mm from the left end]."""

    number: float
    start: float
    end: float


def floor_layer(floor, key: str, label: str, bars: FloorBars, where: Extent) -> Layer:
    """Give one layer of a floor; bars that run into a fixed end are anchored beyond it."""
    at_left = where.start < ALONE and floor.left_end == "fixed"
    at_right = where.end > floor.length - ALONE and floor.right_end == "fixed"
    return Layer(
        key=key,
        label=label,
        number=where.number,
        start=where.start,
        end=where.end,
        anchored=(at_left, at_right),
        **placed(floor, bars),
    )
