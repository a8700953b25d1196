"""A slab or a wall with inside corners: where it cracks first, and what holds that crack."""

from dataclasses import dataclass, replace
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.concrete import Concrete, concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.structures import (
    corner_cautions,
    corner_judging,
    corner_ranges,
    corner_working,
    fields,
)
from crackkit.structures.corner_bars import steel_mass
from crackkit.structures.corner_shapes import BOX, SHAPES, TURNS, usual_sizes
from crackkit.structures.cornered import Cornered
from crackkit.structures.cornering import cornered
from crackkit.structures.counts import Count
from crackkit.structures.ground_slab import BASE_CHOICES, MODELS
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    code_family,
    concrete_strength,
    place_and_use,
    steel_strength,
)
from crackkit.structures.outcome import Lengthening, Outcome
from crackkit.structures.slab_history import LAST_DAY
from crackkit.words import _

SIZES = (("none", _("none")), *BAR_SIZES)
HELD = (
    ("base", _("its base alone, by friction")),
    ("ends", _("its two ends, tied to something stiff")),
    ("edges", _("its outer edges all round: they may slide along")),
    ("foot", _("its foot, tied to a footing")),
)
JOINTS = (
    ("none", _("no joint")),
    ("saw", _("a saw cut from the corner")),
    ("joint", _("a full joint from the corner to the edge")),
)


@dataclass(frozen=True)
class CornerSlab:
    """A slab or a wall with inside corners: every input, with its range in N, mm, MPa.

    Sizes that are left out are the usual ones of the shape. A wall stands on its near side: its
    width is its height.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    age: float = fields.number(
        _("Age"), "age", 1.0, LAST_DAY, 365.0, _("Days since the concrete was cast.")
    )
    shape: str = fields.choice(_("It is"), SHAPES, "corner")
    length: float = fields.number(_("Length"), "length", 2000.0, 12000.0, 6000.0)
    width: float = fields.number(
        _("Width"), "length", 2000.0, corner_ranges.most_width, None, _("Of a wall: its height.")
    )
    thickness: float = fields.number(_("Thickness"), "size", 100.0, 400.0, 150.0)
    cut_length: float = fields.number(
        _("Missing along"), "length", 200.0, corner_ranges.most_cut_length, None,
        _("Of the missing quarter, the opening, the box-out or the door."),
    )  # fmt: skip
    cut_width: float = fields.number(
        _("Missing across"), "length", 200.0, corner_ranges.most_cut_width, None,
        _("Of a door: its height."), when=corner_ranges.has_two_sides,
    )  # fmt: skip
    cut_x: float = fields.number(
        _("Its middle along"), "length", corner_ranges.least_x, corner_ranges.most_x, None,
        _("From the left end."), when=corner_ranges.has_place,
    )  # fmt: skip
    cut_y: float = fields.number(
        _("Its middle across"), "length", corner_ranges.least_y, corner_ranges.most_y, None,
        _("From the near side."), when=corner_ranges.is_hole,
    )  # fmt: skip
    box: float = fields.number(
        _("Side of the box-out"), "length", corner_ranges.LEAST_BOX, corner_ranges.most_box, BOX,
        when=corner_ranges.is_tee,
    )  # fmt: skip
    rounding: float = fields.number(
        _("Radius of the corners"), "size", 0.0, corner_ranges.most_rounding, 0.0,
        _("0 is sharp; half of the side makes a square opening a circle."),
        when=corner_ranges.can_be_round,
    )  # fmt: skip
    turn: str = fields.choice(_("The box-out is"), TURNS, "square", when=corner_ranges.is_column)
    look: int = fields.number(
        _("Look at corner"), "count", 0, corner_ranges.most_look, 0,
        _("By its number; 0, or a number that none has: the one that is pulled hardest."),
        when=corner_ranges.has_some_corners,
    )  # fmt: skip
    held: str = fields.choice(_("Held by"), HELD, "edges")
    holds: float = fields.number(
        _("Held fast"), "ratio", 0.0, 1.0, 0.12, _("0 gives way, 1 cannot move."),
        when=corner_ranges.is_tied,
    )  # fmt: skip
    drag: str = fields.choice(_("It lies on"), BASE_CHOICES, "gravel", when=corner_ranges.on_base)
    diagonals: str = fields.choice(
        _("Diagonal bars"), SIZES, "none", _("At each inside corner, across the coming crack.")
    )
    diagonal_count: int = fields.number(
        _("How many"), "count", 1, 4, 2, when=corner_ranges.has_diagonals
    )
    diagonal_off: float = fields.number(
        _("First one off the corner"), "size", 25.0, 1000.0, 50.0,
        _("Clear distance from the corner."), when=corner_ranges.has_diagonals,
    )  # fmt: skip
    diagonal_apart: float = fields.number(
        _("One every"), "size", 40.0, 200.0, 100.0, _("Centre to centre."),
        when=corner_ranges.has_many_diagonals,
    )  # fmt: skip
    diagonal_length: float = fields.number(
        _("Length of each"), "length", 400.0, 3000.0, 1200.0, when=corner_ranges.has_diagonals
    )
    edges: str = fields.choice(
        _("Bars along the sides"), SIZES, "none", _("Along both sides of each corner, past it.")
    )
    edge_count: int = fields.number(
        _("How many beside each side"), "count", 1, 3, 1, when=corner_ranges.has_edges
    )
    edge_off: float = fields.number(
        _("First one off the side"), "size", 25.0, 1000.0, 50.0, _("Clear distance."),
        when=corner_ranges.has_edges,
    )  # fmt: skip
    edge_past: float = fields.number(
        _("Past the corner by"), "length", 200.0, 2000.0, 600.0, when=corner_ranges.has_edges
    )
    mat: str = fields.choice(_("Mat, both ways"), SIZES, "none", _("Everywhere."))
    spacing: float = fields.number(
        _("One bar every"), "size", 75.0, 450.0, 200.0, _("Centre to centre."),
        when=corner_ranges.has_mat,
    )  # fmt: skip
    cover: float = fields.number(
        _("Cover"), "size", 20.0, corner_ranges.most_cover, 40.0, _("Clear above all bars."),
        when=corner_ranges.has_bars,
    )  # fmt: skip
    fibres: str = fields.choice(
        _("Fibres in the concrete"), corner_ranges.DOSES, "none",
        _("Indicative: tests of the job's mix count."),
    )  # fmt: skip
    residual_1: float = fields.number(
        _("f_R1 by EN 14651"), "strength", 0.0, 10.0, 2.4,
        _("Residual strength at a notch opening of 0.5 mm (0.02 in)."),
        when=corner_ranges.is_tested,
    )  # fmt: skip
    residual_3: float = fields.number(
        _("f_R3 by EN 14651"), "strength", 0.0, 10.0, 2.3,
        _("Residual strength at a notch opening of 2.5 mm (0.1 in)."),
        when=corner_ranges.is_tested,
    )  # fmt: skip
    joint: str = fields.choice(
        _("From the corner runs"), JOINTS, "none", _("Along the line of the coming crack.")
    )
    cut_depth: float = fields.number(
        _("Cut to this share of the depth"), "ratio", 0.1, 0.5, 0.25,
        _("A quarter is common practice."), when=corner_ranges.is_sawn,
    )  # fmt: skip
    saw_length: float = fields.number(
        _("Length of the cut"), "length", 200.0, 12000.0, 2000.0, when=corner_ranges.is_sawn
    )
    strength: float = concrete_strength(30.0)
    humidity: float = fields.number(
        _("Humidity of the air"), "ratio", 0.3, 0.95, 0.5, _("0.5 is a heated building.")
    )
    curing: float = fields.number(_("Kept moist for"), "time", 1.0, 28.0, 7.0)
    both_sides: bool = fields.switch(
        _("Dries from both faces"), False, _("A wall does; a slab dries from its top.")
    )
    cooling: float = fields.number(
        _("Cools by"), "temperature", 0.0, 30.0, 0.0, _("From the day it was cast.")
    )
    model: str = fields.choice(_("Shrinkage by"), MODELS, "EN")
    exposure: str = place_and_use("moist")
    code: str = code_family("EN")
    yield_strength: float = steel_strength(500.0)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "corner_picture"
    title: ClassVar[str] = _("A slab with an inside corner")
    topics: ClassVar[tuple] = (
        (_("Age"), ("age",)),
        (_("Shape"), ("shape", "length", "width", "thickness")),
        (_("What is missing"), ("cut_length", "cut_width", "cut_x", "cut_y", "box", "turn",
                                  "rounding", "look")),
        (_("Held by"), ("held", "holds", "drag")),
        (
            _("Diagonal bars"),
            ("diagonals", "diagonal_count", "diagonal_off", "diagonal_apart", "diagonal_length"),
        ),
        (_("Other bars"), ("edges", "edge_count", "edge_off", "edge_past", "mat", "spacing",
                           "cover")),
        (_("Joint and fibres"), ("joint", "cut_depth", "saw_length", "fibres", "residual_1",
                                 "residual_3")),
        (_("Drying"), ("curing", "humidity", "both_sides", "cooling")),
        (_("Use and rules"), ("exposure", "code", "model", "strength", "yield_strength")),
    )  # fmt: skip

    def __post_init__(self):
        for name, value in self._usual().items():
            if getattr(self, name) is None:
                object.__setattr__(self, name, value)
        fields.check(self)

    def _usual(self) -> dict:
        return usual_sizes(self.shape, self.length, self.width)

    def after(self, before: "CornerSlab", changes: dict) -> "CornerSlab":
        """Take the usual sizes and holds of a shape when another shape has been chosen."""
        if self.shape == before.shape:
            return self
        held = "foot" if self.shape == "door" else "edges" if self.held == "foot" else self.held
        chosen = {
            "held": held,
            "both_sides": self.shape == "door",
            "rounding": 0.0,
            "box": BOX,
            "look": 0,
            **usual_sizes(self.shape, self.length, None),
        }
        asked = {path: value for path, value in changes.items() if path in chosen}
        return replace(self, **{**chosen, **asked})

    def takes_long_after(self, before: "CornerSlab") -> bool:
        """Whether other ages have to be worked out anew, which only the curve over them tells."""
        return replace(self, age=before.age) != before

    @property
    def slab(self) -> DryingSlab:
        """The slab as it dries."""
        faces = 2 if self.both_sides else 1
        return DryingSlab(self.strength, 100.0 * self.humidity, self.thickness, faces, self.curing)

    @property
    def box_out(self) -> float:
        """Side of the box-out round a column [mm]; 0 without."""
        return {"column": self.cut_length, "depot": self.box}.get(self.shape, 0.0)

    @property
    def hardened(self) -> Concrete:
        """Its concrete at 28 days."""
        return concrete(self.strength, self.thickness, self.code)

    @property
    def mass(self) -> float:
        """All bars as laid [kg]."""
        return steel_mass(self)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the button at the diagonal bars does: as near to the corner as can be coated."""
        here = abs(self.diagonal_off - 25.0) < 0.5
        onward = {} if here or self.diagonals == "none" else {"diagonal_off": 25.0}
        return (Count("nearer", _("Close to the corner"), "diagonal_off", onward),)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs; ages are dragged in decades."""
        if path == "decades":
            return {"age": min(max(10.0**value, 1.0), LAST_DAY)}
        return {path: value}

    @property
    def last_day(self) -> float:
        """Age at which its story ends [days]."""
        return LAST_DAY

    @property
    def cornered(self) -> Cornered:
        """State of the slab at its age."""
        return cornered(self)

    def solve(self) -> Outcome:
        """Answer the four questions."""
        state = self.cornered
        return Outcome(
            structure=self,
            movement=Lengthening(-float(np.abs(np.concatenate(state.moved)).max())),
            tension=corner_judging.stretched(self, state),
            cracks=corner_judging.cracks(self, state),
            steel=(),
            verdict=corner_judging.verdict(self, state),
            cautions=corner_cautions.cautions(self, state),
            steel_mass=self.mass,
            work=partial(corner_working.working, self, state),
            x=np.array([0.0, self.length]),
            cornered=state,
            numbers=corner_judging.numbers(self, state),
        )
