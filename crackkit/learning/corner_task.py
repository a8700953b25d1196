"""The task of the lesson on inside corners: the floor of a bus depot, a T with a box-out."""

import math
from dataclasses import dataclass
from typing import ClassVar

import numpy as np

from crackkit.learning import goals
from crackkit.learning.budgets import SteelBudget
from crackkit.learning.task import HoldTask
from crackkit.structures.corner_field import pulled_corners
from crackkit.structures.corner_line import crack_line_of
from crackkit.structures.corner_restraint import restraint
from crackkit.structures.corner_shapes import form
from crackkit.structures.corner_slab import CornerSlab
from crackkit.units.quantities import FOOT, INCH, POUND, PSI
from crackkit.words import _

FREE = (
    "age",
    "look",
    "turn",
    "diagonals",
    "diagonal_count",
    "diagonal_off",
    "diagonal_apart",
    "diagonal_length",
    "edges",
    "edge_count",
    "edge_off",
    "edge_past",
    "mat",
    "spacing",
    "cover",
    "joint",
    "saw_length",
    "cut_depth",
    "curing",
)
BUDGET = {"SI": 900.0, "US": 2000 * POUND}  # kg
DENSITY = 7850e-9  # kg/mm3 of steel
# An unheated hall with wet buses; edges tied to footings on soil that gives.
_COMMON = {
    "shape": "depot",
    "humidity": 0.6,
    "curing": 7.0,
    "held": "edges",
    "holds": 0.225,
    "exposure": "moist",
}
_IN_METRES = {
    "length": 8000.0,
    "width": 6000.0,
    "thickness": 180.0,
    "cut_length": 1000.0,
    "cut_width": 1600.0,
    "box": 1700.0,
    "cut_y": 1700.0,
    "strength": 30.0,
    "cover": 40.0,
    "diagonal_apart": 75.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 26 ft by 20 ft, 7 in thick, a box-out of 5 ft 6 in.
_IN_FEET = {
    "length": 26 * FOOT,
    "width": 20 * FOOT,
    "thickness": 7 * INCH,
    "cut_length": 3 * FOOT,
    "cut_width": 5 * FOOT,
    "box": 5.5 * FOOT,
    "cut_y": 5.5 * FOOT,
    "strength": 4000 * PSI,
    "cover": 2 * INCH,
    "diagonal_off": 2 * INCH,
    "diagonal_apart": 3 * INCH,
    "diagonal_length": 4 * FOOT,
    "edge_off": 2 * INCH,
    "edge_past": 2 * FOOT,
    "spacing": 8 * INCH,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}


@dataclass(frozen=True)
class Dowel:
    """A smooth bar across a joint.

    Attributes
    ----------
    diameter, length, every : float
        Its size, and how far apart they lie along the joint [mm].
    """

    diameter: float
    length: float
    every: float

    @property
    def mass(self) -> float:
        """Of one [kg]."""
        return DENSITY * math.pi / 4 * self.diameter**2 * self.length


DOWELS = {  # common practice for floors of this thickness
    "SI": Dowel(25.0, 450.0, 300.0),
    "US": Dowel(INCH, 18 * INCH, 12 * INCH),
}


@dataclass(frozen=True)
class DowelBudget(SteelBudget):
    """A budget of bars, and of the dowels that full joints are given."""

    dowel: Dowel

    words: ClassVar[dict[str, str]] = {
        "yours": _("Your bars and dowels: {spent} of {most}"),
        "best": _("Best so far: everything reached with {spent} of steel."),
        "check": _("Check my floor"),
        "reached": _("It holds. Your floor does all that is wanted."),
    }

    def spent(self, structure, outcome) -> float:
        """Mass of bars and dowels of a solution [kg]."""
        return outcome.steel_mass + self.dowels_mass(structure)

    def dowels(self, structure) -> int:
        """How many dowels the joints of all corners take."""
        if structure.joint != "joint":
            return 0
        return sum(max(round(each / self.dowel.every), 1) for each in joint_lengths(structure))

    def dowels_mass(self, structure) -> float:
        """What they weigh [kg]."""
        return self.dowels(structure) * self.dowel.mass


@dataclass(frozen=True)
class DepotTask(HoldTask):
    """A task that weighs the dowels of joints with the bars.

    Attributes
    ----------
    dowel : Dowel
        What lies across a full joint.
    """

    dowel: Dowel = DOWELS["SI"]

    @property
    def budget(self) -> DowelBudget:
        """What may be spent of steel."""
        return DowelBudget(self.most_steel, self.share, self.dowel)


def joint_lengths(structure) -> tuple[float, ...]:
    """Lengths of joints along the coming cracks of all corners of a CornerSlab [mm]."""
    of, by = form(structure), restraint(structure)
    lines = (crack_line_of(of, by, k) for k in range(len(pulled_corners(of, by))))
    return tuple(float(np.hypot(*np.diff(line, axis=0).T).sum()) for line in lines)


def bus_depot(system: str = "SI") -> HoldTask:
    """Give the task, in round numbers of the reader's own system.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``: the floor has round numbers and sizes of bars in it, and goes by the
        rules that are usual there.
    """
    return DepotTask(
        key="bus_depot",
        title=_("The floor of the bus depot"),
        story=_(
            "The hall where buses are looked after gets a new floor, in the form of a T: between "
            "two store rooms it narrows. A column of the roof stands in its wide part, on a foot "
            "that comes up through the floor, so a wide box-out is left around it. The outer "
            "edges are tied to the footings of the walls. That makes two inside corners where it "
            "narrows, and whatever the box-out has. Choose bars, joints, or another box-out. What "
            "you choose is done at every corner, and every corner is looked at, one year after "
            "the pour; age and corner on the drawing are only for you to look around. Full joints "
            "get dowels, and they are weighed with the bars. Use as little steel as you can."
        ),
        structure=as_found(system),
        free=FREE,
        most_steel=BUDGET[system],
        asks=goals.CORNER,
        dowel=DOWELS[system],
    )


def as_found(system: str = "SI") -> CornerSlab:
    """Give the floor as it is first drawn: a square box-out, no bars, no joints."""
    return CornerSlab(**(_IN_FEET if system == "US" else _IN_METRES), **_COMMON)
