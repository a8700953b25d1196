"""Bars that come out of what holds a cantilever: how far they reach back, hooked or straight."""

from dataclasses import dataclass

from crackkit.mechanics.bars import bar
from crackkit.structures import fields
from crackkit.structures.laid_bars import BAR_SIZES, stirrup_diameter
from crackkit.structures.member import LEAST_COAT, Layer
from crackkit.words import _

BACK_COVER = 20.0  # mm of concrete behind the end of a bar


def is_slab(structure, _owner=None) -> bool:
    """Tell whether a strip of a slab is looked at, with mats instead of counted bars."""
    return structure.shape == "slab"


def is_beam(structure, _owner=None) -> bool:
    """Tell whether a beam is looked at, with bars that are counted and stirrups round them."""
    return structure.shape != "slab"


def wrap_of(structure) -> float:
    """Diameter of the stirrups around the bars [mm]; a slab has none."""
    return stirrup_diameter(structure.stirrup) if is_beam(structure) else 0.0


def cover_high(structure, _bars) -> float:
    """Largest cover that leaves room for bars [mm]."""
    return min(100.0, structure.depth / 4)


def drop_high(structure, bars) -> float:
    """How far bars can be trodden down: to a hair above the bottom face [mm]."""
    if bars.face == "bottom":
        return max(bars.cover - LEAST_COAT, 0.0)
    taken = bars.cover + 2 * wrap_of(structure) + bar(bars.size).diameter
    return max(structure.depth - taken - LEAST_COAT, 0.0)


def _back_high(structure, _bars) -> float:
    return structure.behind - BACK_COVER


def _gap_high(structure, _bars) -> float:
    return 0.9 * structure.overhang


@dataclass(frozen=True)
class AnchoredBars:
    """One layer of bars along a cantilever, wherever the crew left it.

    ``face`` is the face the drawing asked for. The cover is clear concrete over the stirrups, or
    over the bars where there are none.
    """

    size: str = fields.choice(_("Bar size"), BAR_SIZES, "12", _("Nominal size of each bar."))
    number: int = fields.number(
        _("Number of bars"), "count", 0, 12, 3, _("Bars side by side."), when=is_beam
    )
    laid: bool = fields.switch(_("Bars are there"), True, when=is_slab)
    spacing: float = fields.number(
        _("One bar every"), "size", 60.0, 400.0, 150.0, _("Centre to centre."), when=is_slab
    )
    cover: float = fields.number(
        _("Cover"), "size", 10.0, cover_high, 30.0, _("Clear concrete over the steel.")
    )
    drop: float = fields.number(
        _("Trodden down by"),
        "size",
        0.0,
        drop_high,
        0.0,
        _("How far the bars were pushed down while the concrete was placed."),
    )
    behind: float = fields.number(
        _("Reach back past the root"),
        "length",
        0.0,
        _back_high,
        600.0,
        _("From the root to the end of the bars, or to the outside of the hook."),
    )
    hooked: bool = fields.switch(
        _("Hooked back there"), False, _("A standard hook at the end behind the root.")
    )
    tip_gap: float = fields.number(
        _("Stop this far from the tip"),
        "length",
        0.0,
        _gap_high,
        40.0,
        _("From the tip to the end of the bars."),
    )
    face: str = "top"

    def __post_init__(self):
        if self.face not in ("bottom", "top"):
            choices = ("bottom", "top")
            raise fields.InputError(
                "face", _("Face"), self.face, quantity="choice", choices=choices
            )


def bar_count(structure, bars) -> float:
    """Bars in the width that is looked at [-]; 0 where none are laid."""
    if is_beam(structure):
        return bars.number
    return structure.width / bars.spacing if bars.laid else 0.0


def placed(structure, bars) -> dict:
    """Depth and covers of a layer of bars, as `Layer` wants them."""
    steel, wrap = bar(bars.size), wrap_of(structure)
    inset = bars.cover + wrap + steel.diameter / 2
    ordered = inset if bars.face == "top" else structure.depth - inset
    mat = is_slab(structure)
    side = max((bars.spacing - steel.diameter) / 2, 0.0) if mat else bars.cover + wrap
    return {
        "bar": steel,
        "depth": ordered + bars.drop,
        "side_cover": side,
        "wrap": wrap,
        "face": bars.face,
        "spacing": bars.spacing if mat else None,
    }


def anchored_layer(key: str, label: str, bars: AnchoredBars, structure) -> Layer:
    """Work out where a layer of bars of a cantilever really lies."""
    return Layer(
        key=key,
        label=label,
        start=structure.root - bars.behind,
        end=structure.length - bars.tip_gap,
        hooks=(bars.hooked, False),
        number=bar_count(structure, bars),
        **placed(structure, bars),
    )
