"""Bars as the crew left them: size, number, cover, how far they dropped, and where they end."""

from dataclasses import dataclass

from crackkit.mechanics.bars import ASTM, METRIC, bar
from crackkit.structures import fields
from crackkit.structures.member import LEAST_COAT, Layer
from crackkit.words import _

BAR_SIZES = tuple((name, name) for name in ASTM) + tuple((n, f"{n} mm") for n in METRIC)
STIRRUP_SIZES = (("none", _("no stirrups")), *((n, n) for n in ("#3", "#4", "#5"))) + tuple(
    (n, f"{n} mm") for n in ("6", "8", "10", "12")
)


def stirrup_diameter(name: str) -> float:
    """Diameter of the stirrups [mm]; 0 for ``"none"``."""
    return 0.0 if name == "none" else bar(name).diameter


def _cover_high(beam, _bars) -> float:
    return min(100.0, beam.width / 5, beam.depth / 5)


def _drop_high(beam, bars) -> float:
    if bars.face == "bottom":
        return max(bars.cover - LEAST_COAT, 0.0)
    taken = bars.cover + 2 * stirrup_diameter(beam.stirrup) + bar(bars.size).diameter
    return max(beam.depth - taken - LEAST_COAT, 0.0)


def _gap_high(beam, _bars) -> float:
    return 0.45 * beam.length


@dataclass(frozen=True)
class LaidBars:
    """One layer of bars along a beam, wherever the crew left it.

    ``face`` is the face the drawing asked for, ``"bottom"`` or ``"top"``. The cover is clear
    concrete over the stirrups (over the bars where there are no stirrups), the same on the sides.
    """

    size: str = fields.choice(_("Bar size"), BAR_SIZES, "16", _("Nominal size of each bar."))
    number: int = fields.number(_("Number of bars"), "count", 0, 12, 3, _("Bars side by side."))
    cover: float = fields.number(
        _("Cover"),
        "size",
        10.0,
        _cover_high,
        40.0,
        _("Clear concrete over the stirrups, or over the bars where there are no stirrups."),
    )
    drop: float = fields.number(
        _("Dropped by"),
        "size",
        0.0,
        _drop_high,
        0.0,
        _("How far the bars sagged or were trodden down before the concrete set."),
    )
    left_gap: float = fields.number(
        _("Start this far from the left end"),
        "length",
        0.0,
        _gap_high,
        50.0,
        _("Distance from the left end of the beam to the end of the bars."),
    )
    right_gap: float = fields.number(
        _("Stop this far from the right end"),
        "length",
        0.0,
        _gap_high,
        50.0,
        _("Distance from the right end of the beam to the end of the bars."),
    )
    face: str = "bottom"

    def __post_init__(self):
        if self.face not in ("bottom", "top"):
            choices = ("bottom", "top")
            raise fields.InputError(
                "face", _("Face"), self.face, quantity="choice", choices=choices
            )


def side_cover(bars: LaidBars, beam) -> float:
    """Clear concrete beside the outer bars [mm].

    One cage of stirrups has one width: its sides keep the cover of the bottom bars.
    """
    if beam.stirrup == "none":
        return bars.cover
    return beam.bottom.cover + stirrup_diameter(beam.stirrup)


def layer(key: str, label: str, bars: LaidBars, beam) -> Layer:
    """Work out where a layer of bars really lies in the beam."""
    steel = bar(bars.size)
    wrap = stirrup_diameter(beam.stirrup)
    inset = bars.cover + wrap + steel.diameter / 2
    ordered = inset if bars.face == "top" else beam.depth - inset
    return Layer(
        key=key,
        label=label,
        bar=steel,
        number=int(bars.number),
        depth=ordered + bars.drop,
        start=bars.left_gap,
        end=beam.length - bars.right_gap,
        side_cover=side_cover(bars, beam),
        wrap=wrap,
        face=bars.face,
    )
