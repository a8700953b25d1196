"""The task of the lesson on the cantilever: the rain roof over a bus stop."""

from crackkit.learning import goals
from crackkit.learning.beam_task import CODES, YIELD_STRENGTH
from crackkit.learning.task import HoldTask
from crackkit.structures.anchored_bars import AnchoredBars
from crackkit.structures.cantilever import ArmLoad, Cantilever
from crackkit.units.quantities import FOOT, INCH, KIP
from crackkit.words import _

FREE = (
    "top.laid",
    "top.size",
    "top.spacing",
    "top.cover",
    "top.behind",
    "top.hooked",
    "bottom.laid",
    "bottom.size",
    "bottom.spacing",
)
BUDGET = {"SI": 20.5, "US": 7.26}  # kg on a strip of 1 m, and of 1 ft (16 lb)
_IN_METRES = {
    "overhang": 2400.0,
    "wall": 400.0,
    "width": 1000.0,
    "depth": 200.0,
    "tip_depth": 150.0,
    "uniform_load": 3.0,
    "loads": (ArmLoad(5e3, 2300.0),),
    "top": AnchoredBars(size="16", spacing=300.0, cover=35.0, behind=200.0, tip_gap=40.0),
    "bottom": AnchoredBars(
        size="10",
        laid=False,
        spacing=200.0,
        cover=35.0,
        behind=150.0,
        tip_gap=40.0,
        face="bottom",
    ),
    "strength": 30.0,
}
# The same for those who build in feet: a strip of 1 ft, 8 ft out of a wall of 16 in.
_IN_FEET = {
    "overhang": 8 * FOOT,
    "wall": 16 * INCH,
    "width": 12 * INCH,
    "depth": 8 * INCH,
    "tip_depth": 6 * INCH,
    "uniform_load": 0.05 * KIP / FOOT,
    "loads": (ArmLoad(0.3 * KIP, 7.5 * FOOT),),
    "top": AnchoredBars(
        size="#5", spacing=12 * INCH, cover=1.5 * INCH, behind=8 * INCH, tip_gap=1.5 * INCH
    ),
    "bottom": AnchoredBars(
        size="#3",
        laid=False,
        spacing=8 * INCH,
        cover=1.5 * INCH,
        behind=6 * INCH,
        tip_gap=1.5 * INCH,
        face="bottom",
    ),
    "strength": 27.579029,
}


def rain_roof(system: str = "SI", code: str | None = None) -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the roof has round numbers and sizes of bars in it.
    code : str, optional
        Family of rules, ``"ACI"`` or ``"EN"``; what goes with the units if left out.
    """
    code = code or CODES[system]
    round_numbers = _IN_FEET if system == "US" else _IN_METRES
    arm = Cantilever(
        **round_numbers, yield_strength=YIELD_STRENGTH[code], exposure="moist", code=code
    )
    return HoldTask(
        key="rain_roof",
        title=_("The rain roof over the bus stop"),
        story=_(
            "A thin concrete roof keeps the rain off people who wait for the bus. It grows out of "
            "the wall of the depot, carries snow, and a lit sign hangs from its edge. A few thick "
            "bars lie in it now, straight, and they reach a little way into the wall. Choose bars "
            "that hold it. The numbers are those of one strip."
        ),
        structure=arm,
        free=FREE,
        most_steel=BUDGET[system],
        asks=goals.ARM,
    )
