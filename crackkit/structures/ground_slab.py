"""A slab on the ground that dries: what holds it back, where it cracks, what keeps cracks small."""

from dataclasses import dataclass, replace
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.bars import Bar, bar
from crackkit.mechanics.base_friction import BASES
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.structures import fields, ground_judging, ground_working
from crackkit.structures.counts import Count
from crackkit.structures.ground import Ground, ground
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    code_family,
    concrete_strength,
    place_and_use,
    steel_strength,
)
from crackkit.structures.outcome import Crack, Lengthening, Outcome, TensionZone, WidthBand
from crackkit.structures.slab_history import Piece, panels, piece_history
from crackkit.words import _

BASE_CHOICES = tuple((each.key, each.label) for each in BASES)
STEEL_SIZES = (("none", _("none")), *BAR_SIZES)
PLACES = (
    ("top", _("near the top, on chairs")),
    ("middle", _("in the middle")),
    ("ground", _("on the ground: nobody pulled it up")),
)
THROUGH = (("cut", _("cut at the joints")), ("through", _("running through")))
MODELS = (("ACI", "ACI 209R-92"), ("EN", "EN 1992-1-1"), ("MC2010", _("Model Code 2010")))
LAST_DAY = 3650.0
BESIDE = 1.0  # mm: how far a saw cut keeps clear of the middle that is held


def _has_joints(it, _owner=None) -> bool:
    return it.jointed


def _has_steel(it, _owner=None) -> bool:
    return it.steel != "none"


def _has_cover(it, _owner) -> bool:
    return _has_steel(it) and it.place == "top"


def _asks_through(it, _owner) -> bool:
    return _has_steel(it) and it.jointed


def _longest_panel(it, _owner) -> float:
    return it.length


def _most_cover(it, _owner) -> float:
    return max(it.thickness / 2 - 10.0, 20.0)


@dataclass(frozen=True)
class GroundSlab:
    """A slab on the ground: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    age: float = fields.number(
        _("Age"), "age", 1.0, 3650.0, 365.0, _("Days since the concrete was cast.")
    )
    length: float = fields.number(
        _("Length"), "length", 3000.0, 60000.0, 24000.0, _("From end to end.")
    )
    thickness: float = fields.number(_("Thickness"), "size", 75.0, 300.0, 150.0)
    base: str = fields.choice(_("It lies on"), BASE_CHOICES, "gravel")
    left: float = fields.number(
        _("Left end held"),
        "ratio",
        0.0,
        1.0,
        0.0,
        _("By a wall, a pit, a neighbour, dowels that bind: 0 is free, 1 cannot move."),
    )
    middle: float = fields.number(
        _("Middle held"), "ratio", 0.0, 1.0, 0.0, _("By a column or a pit in the middle.")
    )
    right: float = fields.number(_("Right end held"), "ratio", 0.0, 1.0, 0.0, _("As on the left."))
    jointed: bool = fields.switch(_("Joints are cut"), False, _("Saw cuts across the slab."))
    joint_every: float = fields.number(
        _("A joint every"),
        "length",
        2000.0,
        _longest_panel,
        4500.0,
        _("At most; panels are made equal."),
        when=_has_joints,
    )
    cut: float = fields.number(
        _("Cut to this share of the depth"),
        "ratio",
        0.1,
        0.5,
        0.25,
        _("A quarter is common practice."),
        when=_has_joints,
    )
    cut_age: float = fields.number(
        _("Cut after"),
        "time",
        0.5,
        14.0,
        1.0,
        _("Days; early enough is the first day."),
        when=_has_joints,
    )
    steel: str = fields.choice(_("Bars along"), STEEL_SIZES, "none", _("Size of each bar."))
    spacing: float = fields.number(
        _("One bar every"), "size", 75.0, 450.0, 200.0, _("Centre to centre."), when=_has_steel
    )
    place: str = fields.choice(_("They lie"), PLACES, "top", when=_has_steel)
    cover: float = fields.number(
        _("Cover"), "size", 20.0, _most_cover, 40.0, _("Clear above the bars."), when=_has_cover
    )
    through: str = fields.choice(_("At joints they are"), THROUGH, "cut", when=_asks_through)
    strength: float = concrete_strength(30.0)
    humidity: float = fields.number(
        _("Humidity of the air"), "ratio", 0.3, 0.95, 0.5, _("0.5 is a heated building.")
    )
    curing: float = fields.number(_("Kept moist for"), "time", 1.0, 28.0, 7.0)
    both_sides: bool = fields.switch(
        _("Dries from below too"), False, _("On a dry, open base; usually the top alone dries.")
    )
    cooling: float = fields.number(
        _("Cools by"), "temperature", 0.0, 30.0, 0.0, _("From the day it was cast.")
    )
    spent: float = fields.number(
        _("Strength that curling uses up"),
        "ratio",
        0.0,
        0.7,
        0.3,
        _("Drying on top only bends the slab too: that pull comes on top."),
    )
    scatter: float = fields.number(_("Scatter of its strength"), "ratio", 0.0, 0.2, 0.1)
    seed: int = fields.number(_("Which concrete"), "count", 1, 99, 1)
    model: str = fields.choice(_("Shrinkage by"), MODELS, "EN")
    exposure: str = place_and_use("moist")
    code: str = code_family("EN")
    yield_strength: float = steel_strength(500.0)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "ground_picture"
    title: ClassVar[str] = _("A slab on the ground")
    topics: ClassVar[tuple] = (
        (_("Age"), ("age",)),
        (_("Held by"), ("base", "left", "middle", "right")),
        (_("Joints"), ("jointed", "joint_every", "cut", "cut_age")),
        (_("Bars"), ("steel", "spacing", "place", "cover", "through")),
        (_("Concrete"), ("curing", "humidity", "both_sides", "cooling", "spent")),
        (_("Slab"), ("length", "thickness", "scatter", "seed")),
        (_("Use and rules"), ("exposure", "code", "model", "strength", "yield_strength")),
    )

    def __post_init__(self):
        fields.check(self)

    @property
    def bar(self) -> Bar | None:
        """Size of the bars along the slab; None without."""
        return bar(self.steel) if _has_steel(self) else None

    @property
    def area(self) -> float:
        """Bars for each mm of width [mm2/mm]; 0 without, and on the ground they do not count."""
        if self.bar is None or self.place == "ground":
            return 0.0
        return self.bar.area / self.spacing

    @property
    def concrete(self) -> DryingSlab:
        """The slab as it dries."""
        return DryingSlab(
            self.strength,
            100.0 * self.humidity,
            self.thickness,
            2 if self.both_sides else 1,
            self.curing,
        )

    @property
    def panels(self) -> int:
        """Panels between joints."""
        return panels(self.length, self.joint_every) if self.jointed else 1

    @property
    def joint_places(self) -> tuple[float, ...]:
        """Where joints are cut [mm from the left end]."""
        step = self.length / self.panels
        return tuple(step * k for k in range(1, self.panels))

    @property
    def parted(self) -> bool:
        """Whether joints part it: bars hold the panels together, none cross the joints."""
        return self.jointed and self.area > 0 and self.through == "cut" and self.panels > 1

    @property
    def ground(self) -> Ground:
        """State of the slab at its age."""
        whole = self._piece(0.0, self.length)
        if not self.parted:
            return ground([(0.0, piece_history(whole))], self.age, ())
        cuts = self._working_joints
        marks = (0.0, *cuts, self.length)
        pieces = [
            (start, piece_history(self._piece(start, end)))
            for start, end in zip(marks, marks[1:], strict=False)
        ]
        return ground(pieces, self.age, cuts)

    @property
    def _working_joints(self) -> tuple[float, ...]:
        """Joints that crack in ten years where no bars cross them [mm].

        The first ones ease the slab so much that others may stay shut. They count as open from
        the first day.
        """
        bare = piece_history(replace(self._piece(0.0, self.length), steel=None))
        ended = ground([(0.0, bare)], LAST_DAY, ())
        places = np.array(self.joint_places)
        found = {
            float(places[np.abs(places - crack.at).argmin()])
            for crack in ended.cracks
            if crack.at_joint
        }
        return tuple(sorted(found))

    def _piece(self, start: float, end: float) -> Piece:
        """The stretch between two places, with the joints inside of it."""
        length, middle = end - start, self.length / 2 - start
        inside = self.middle > 0 and BESIDE < middle < length - BESIDE
        ends = (
            self.left if start == 0.0 else 0.0,
            self.right if end == self.length else 0.0,
        )
        joints = tuple(at - start for at in self.joint_places if start + 1.0 < at < end - 1.0)
        return Piece(
            length=length,
            thickness=self.thickness,
            ends=ends,
            held=((middle, self.middle),) if inside else (),
            joints=joints,
            cut=self.cut,
            cut_age=self.cut_age,
            base=self.base,
            steel=(self.area, self.bar.diameter) if self.area else None,
            slab=self.concrete,
            code=self.code,
            model=self.model,
            cooling=self.cooling,
            spent=self.spent,
            scatter=self.scatter,
            seed=int(self.seed) + round(start / 1000.0),  # other concrete in each stretch
            yield_strength=self.yield_strength,
        )

    @property
    def mass(self) -> float:
        """Bars along the slab on a square metre [kg/m2], wherever they lie."""
        return 0.0 if self.bar is None else 1000.0 * self.bar.mass / self.spacing

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the buttons at the age do: to the day of the next crack."""
        births = sorted(
            float(birth) for _start, past in self.ground.pieces for birth in past.cracks.age
        )
        later = [birth for birth in births if birth > self.age * (1 + 1e-9)]
        onward = {"age": min(later[0] * (1 + 1e-6), 3650.0)} if later else {}
        return (Count("next_crack", _("To the next crack"), "age", onward),)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return {path: value}

    def solve(self) -> Outcome:
        """Answer the four questions."""
        state = self.ground
        return Outcome(
            structure=self,
            movement=Lengthening(float(state.slip[-1] - state.slip[0])),
            tension=_stretched(self, state),
            cracks=_cracks(self, state),
            steel=(),
            verdict=ground_judging.verdict(self, state),
            cautions=ground_judging.cautions(self, state),
            steel_mass=self.mass * self.length / 1000.0,
            work=partial(ground_working.working, self, state),
            x=state.x,
            ground=state,
            numbers=ground_judging.numbers(self, state),
        )


def _stretched(it: GroundSlab, state: Ground) -> tuple[TensionZone, ...]:
    share = state.felt / state.strength
    most = int(np.argmax(share))
    if share[most] <= 0:
        return ()
    cracked = tuple((crack.at, crack.at) for crack in state.cracks)
    return (TensionZone("both", 0.0, it.length, float(share[most]), float(state.x[most]), cracked),)


def _cracks(it: GroundSlab, state: Ground) -> tuple[Crack, ...]:
    keys = ("along",) if it.area else ()
    found = []
    for crack in state.wild:
        width = WidthBand(*(crack.width,) * 4, "movement", _("movement of the pieces"), ())
        path = np.array([(crack.at, 0.0), (crack.at, it.thickness)])
        found.append(Crack("both", crack.at, path, width, 0.0, keys, 1.0 if keys else 0.0))
    return tuple(found)
