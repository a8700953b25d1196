"""The floor that benchmarks are run on: six spans with many cracks and a load that travels."""

from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_bars import FloorBars
from crackkit.structures.floor_parts import Span, Support, Traveller


def six_spans() -> ContinuousBeam:
    """Six spans of 5 m with bars over each support and in each span."""
    return ContinuousBeam(
        spans=tuple(Span(5000.0) for _k in range(6)),
        supports=tuple(
            Support(left_reach=1300.0 * (k > 0), right_reach=1300.0 * (k < 6)) for k in range(7)
        ),
        loads=(Traveller(10e3, 2500.0),),
        depth=160.0,
        dead_load=2.0,
        live_load=20.0,
        bottom=FloorBars(size="16", spacing=100.0, cover=25.0),
        top=FloorBars(size="16", spacing=100.0, cover=25.0, face="top"),
    )
