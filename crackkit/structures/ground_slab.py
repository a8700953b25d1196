"""A slab on the ground that dries: what holds it back, where it cracks, what keeps cracks small."""

from dataclasses import dataclass, replace
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.bars import Bar, bar
from crackkit.mechanics.base_friction import BASES, Base, base
from crackkit.mechanics.concrete import Concrete, concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.structures import fields, ground_cautions, ground_judging, ground_working
from crackkit.structures.counts import Count
from crackkit.structures.ground import Ground
from crackkit.structures.ground_rules import held_rules
from crackkit.structures.ground_ways import across, along
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    code_family,
    concrete_strength,
    place_and_use,
    steel_strength,
)
from crackkit.structures.outcome import Crack, Lengthening, Outcome, TensionZone, WidthBand
from crackkit.structures.slab_history import LAST_DAY
from crackkit.words import _

BASE_CHOICES = tuple((each.key, each.label) for each in BASES)
STEEL_SIZES = (("none", _("none")), *BAR_SIZES)
PLACES = (
    ("top", _("near the top, on chairs")),
    ("middle", _("in the middle")),
    ("ground", _("on the ground: nobody pulled it up")),
)
THROUGH = (("cut", _("cut at the joints")), ("through", _("running through")))
DOWELS = (
    ("none", _("none")),
    ("sliding", _("smooth, straight and greased: they slide")),
    ("bound", _("askew or not greased: they bind")),
)
MODELS = (("ACI", "ACI 209R-92"), ("EN", "EN 1992-1-1"), ("MC2010", _("Model Code 2010")))


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
        _("Age"), "age", 1.0, LAST_DAY, 365.0, _("Days since the concrete was cast.")
    )
    length: float = fields.number(
        _("Length"), "length", 3000.0, 60000.0, 24000.0, _("From end to end.")
    )
    width: float = fields.number(
        _("Width"), "length", 2000.0, 60000.0, 6000.0, _("From side to side.")
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
    sides: float = fields.number(
        _("Sides held"), "ratio", 0.0, 1.0, 0.0, _("Both long sides, as the ends.")
    )
    jointed: bool = fields.switch(
        _("Joints are cut"), False, _("Saw cuts across the slab, and along a wide one.")
    )
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
    dowels: str = fields.choice(
        _("Dowels at joints"),
        DOWELS,
        "none",
        _("They carry wheels over a joint. They must slide, or the joint cannot open."),
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
    both_ways: bool = fields.switch(
        _("The same bars across"), False, _("Bars in both directions."), when=_has_steel
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
        (_("Held by"), ("base", "left", "middle", "right", "sides")),
        (_("Joints"), ("jointed", "joint_every", "cut", "cut_age", "dowels")),
        (_("Bars"), ("steel", "spacing", "both_ways", "place", "cover", "through")),
        (_("Concrete"), ("curing", "humidity", "both_sides", "cooling", "spent")),
        (_("Slab"), ("length", "width", "thickness", "scatter", "seed")),
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
    def hardened(self) -> Concrete:
        """Its concrete at 28 days."""
        return concrete(self.strength, self.thickness, self.code)

    @property
    def clear_cover(self) -> float:
        """Concrete over the bars, from the nearer face [mm]."""
        return self.cover if self.place == "top" else (self.thickness - self.bar.diameter) / 2

    @property
    def under(self) -> Base:
        """What it lies on."""
        return base(self.base)

    @property
    def panels(self) -> int:
        """Panels between joints along the slab."""
        return along(self).panels

    @property
    def joint_places(self) -> tuple[float, ...]:
        """Where joints are cut along the slab [mm from the left end]."""
        return along(self).joint_places

    @property
    def joint_places_across(self) -> tuple[float, ...]:
        """Where joints are cut across the slab [mm from its near side]."""
        return across(self).joint_places

    @property
    def parted(self) -> bool:
        """Whether joints part it: bars hold the panels together, none cross the joints."""
        return along(self).parted

    @property
    def ground(self) -> Ground:
        """State of the slab along, at its age."""
        return along(self).state

    @property
    def ground_across(self) -> Ground:
        """State of the slab across, at its age."""
        return across(self).state

    @property
    def mass(self) -> float:
        """Bars on a square metre [kg/m2], wherever they lie, both ways if they lie so."""
        if self.bar is None:
            return 0.0
        ways = 2.0 if self.both_ways else 1.0
        return ways * 1000.0 * self.bar.mass / self.spacing

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the buttons at the age do: to the day of the next crack."""
        births = self.ground.births + self.ground_across.births
        later = min((birth for birth in births if birth > self.age * (1 + 1e-9)), default=None)
        onward = {} if later is None else {"age": min(later * (1 + 1e-6), LAST_DAY)}
        return (Count("next_crack", _("To the next crack"), "age", onward),)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs; ages are dragged in decades."""
        if path == "decades":
            return {"age": min(max(10.0**value, 1.0), LAST_DAY)}
        return {path: value}

    def solve(self) -> Outcome:
        """Answer the four questions."""
        state, other = self.ground, self.ground_across
        state = replace(state, rules=held_rules(self, state.free))
        return Outcome(
            structure=self,
            movement=Lengthening(float(state.slip[-1] - state.slip[0])),
            tension=_stretched(self, state),
            cracks=(*_cracks(self, state), *_cracks_along(self, other)),
            steel=(),
            verdict=ground_judging.verdict(self, (state, other)),
            cautions=ground_cautions.cautions(self, (state, other)),
            steel_mass=self.mass * self.length / 1000.0,
            work=partial(ground_working.working, self, state),
            x=state.x,
            ground=state,
            across=other,
            numbers=ground_judging.numbers(self, (state, other)),
        )


def _stretched(it: GroundSlab, state: Ground) -> tuple[TensionZone, ...]:
    share = state.felt / state.strength
    most = int(np.argmax(share))
    if share[most] <= 0:
        return ()
    cracked = tuple((crack.at, crack.at) for crack in state.cracks)
    return (TensionZone("both", 0.0, it.length, float(share[most]), float(state.x[most]), cracked),)


def _cracks(it: GroundSlab, state: Ground) -> tuple[Crack, ...]:
    keys = ("along",) if state.steel else ()
    lines = [np.array([(crack.at, 0.0), (crack.at, it.thickness)]) for crack in state.wild]
    return tuple(
        Crack("both", crack.at, line, _width(crack), 0.0, keys, 1.0 if keys else 0.0)
        for crack, line in zip(state.wild, lines, strict=True)
    )


def _cracks_along(it: GroundSlab, other: Ground) -> tuple[Crack, ...]:
    """Cracks that run along the slab, as a section along it would meet them."""
    keys = ("across",) if other.steel else ()
    line = np.array([(0.0, it.thickness / 2), (it.length, it.thickness / 2)])
    return tuple(
        Crack("both", it.length / 2, line, _width(crack), 0.0, keys, 1.0 if keys else 0.0)
        for crack in other.wild
    )


def _width(crack) -> WidthBand:
    return WidthBand(*(crack.width,) * 4, "movement", _("movement of the pieces"), ())
