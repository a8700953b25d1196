"""What a drawing shows of a choice of bars: its stretched face, its cracks, its bars."""

import numpy as np

from crackkit.structures.control import Control
from crackkit.structures.control_judging import is_cracked
from crackkit.structures.control_ranges import is_slab
from crackkit.structures.outcome import Crack, SteelLine, TensionZone
from crackkit.structures.strip_stress import BENT
from crackkit.words import _


def stretched(it, found: Control) -> TensionZone:
    """Which face the load stretches, and how hard."""
    face = "bottom" if it.action == BENT else "both"
    peak = found.load / found.strip.cracks_at
    cracked = ((0.0, it.length),) if is_cracked(it, found) else ()
    return TensionZone(face, 0.0, it.length, peak, it.length / 2, cracked)


def cracks(it, found: Control) -> tuple[Crack, ...]:
    """Cracks of the drawn piece, at their mean distance, one in the middle."""
    if not is_cracked(it, found):
        return ()
    main = found.main
    half = int(it.length / 2 // main.spacing)
    places = it.length / 2 + main.spacing * np.arange(-half, half + 1)
    places = places[(places > 0.0) & (places < it.length)]
    face = "bottom" if it.action == BENT else "both"
    tip = float(main.held.axis) if it.action == BENT else 0.0
    stress = float(main.held.stress)
    return tuple(
        Crack(face, at, np.array([(at, it.depth), (at, tip)]), main.band, stress, ("main",), 1.0)
        for at in places.tolist()
    )


def steel(it, found: Control) -> SteelLine:
    """The main bars as a drawing wants them."""
    d, stress = float(found.main.held.d), float(found.main.held.stress)
    x, bars = np.array([0.0, it.length]), found.main.bars
    return SteelLine(
        key="main",
        label=_("main bars"),
        x=x,
        stress=np.full(2, stress),
        capacity=np.full(2, it.yield_strength),
        depth=d,
        start=0.0,
        end=it.length,
        number=float(bars.number),
        diameter=it.bar.diameter,
        size=it.size,
        side_cover=bars.side_cover,
        face="bottom",
        path=np.array([(0.0, d), (it.length, d)]),
        spacing=it.spacing if is_slab(it) else None,
    )
