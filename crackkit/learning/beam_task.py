"""The task of the lesson on the simple beam: a roof beam over the wash bay of a bus depot."""

from crackkit.learning import goals
from crackkit.learning.task import HoldTask
from crackkit.structures.laid_bars import LaidBars
from crackkit.structures.simple_beam import PointLoad, SimpleBeam
from crackkit.units.quantities import FOOT, INCH, KIP
from crackkit.words import _

FREE = (
    "bottom.size",
    "bottom.number",
    "bottom.cover",
    "top.size",
    "top.number",
    "top.cover",
    "stirrup",
)
YIELD_STRENGTH = {"ACI": 420.0, "EN": 500.0}  # MPa: usual bars under each family of codes
CODES = {"US": "ACI", "SI": "EN"}
BUDGET = 93.0  # kg, which is 205 lb
_IN_METRES = {
    "span": 7000.0,
    "width": 350.0,
    "depth": 600.0,
    "uniform_load": 13.0,
    "loads": (PointLoad(25e3, 3500.0),),
    "bottom": LaidBars(size="25", number=2, cover=40.0),
    "top": LaidBars(size="10", number=2, cover=40.0, face="top"),
    "stirrup": "10",
}
# The same beam for those who build in feet: 23 ft, 14 x 24 in, 0.9 kip/ft, 5.5 kip, 1.5 in.
_IN_FEET = {
    "span": 23 * FOOT,
    "width": 14 * INCH,
    "depth": 24 * INCH,
    "uniform_load": 0.9 * KIP / FOOT,
    "loads": (PointLoad(5.5 * KIP, 11.5 * FOOT),),
    "bottom": LaidBars(size="#8", number=2, cover=1.5 * INCH),
    "top": LaidBars(size="#3", number=2, cover=1.5 * INCH, face="top"),
    "stirrup": "#3",
}


def wash_bay(system: str = "SI", code: str | None = None) -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the beam has round numbers and sizes of bars in it.
    code : str, optional
        Family of rules, ``"ACI"`` or ``"EN"``; what goes with the units if left out.
    """
    code = code or CODES[system]
    round_numbers = _IN_FEET if system == "US" else _IN_METRES
    beam = SimpleBeam(
        **round_numbers, yield_strength=YIELD_STRENGTH[code], exposure="moist", code=code
    )
    return HoldTask(
        key="wash_bay",
        title=_("The beam over the wash bay"),
        story=_(
            "Buses are washed under this beam all day, so the air is never dry. It carries the "
            "roof, and in the middle the rail of the brush. Two thick bars lie in it now, and "
            "the cracks are too wide. Choose bars that keep them small."
        ),
        structure=beam,
        free=FREE,
        most_steel=BUDGET,
        asks=goals.BEAM,
    )
