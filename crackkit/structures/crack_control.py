"""A strip of a slab or beam whose bars are to be chosen: thick or thin, far apart or close."""

import math
from dataclasses import dataclass
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.bars import Bar, bar
from crackkit.mechanics.concrete import tensile_strength_en
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.fibres import INDICATIVE, service_residual
from crackkit.structures import control_drawn, control_judging, control_working, fields, placing
from crackkit.structures import control_ranges as ranges
from crackkit.structures.choice_chart import choice_chart, sizes_like
from crackkit.structures.control import Control
from crackkit.structures.counts import Count
from crackkit.structures.durability import AIR_CHOICES, carbonated_depth, years_until_rust
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    LEAST_COVER,
    code_family,
    concrete_strength,
    load_duration,
    place_and_use,
    steel_strength,
)
from crackkit.structures.outcome import Outcome
from crackkit.structures.strip_bars import StripBars
from crackkit.structures.strip_stress import BENT, Strip, load_of
from crackkit.structures.strip_width import strip_cracks
from crackkit.words import _

LIFE = 50.0  # years for which the depth of carbonation is told


@dataclass(frozen=True)
class CrackControl:
    """A strip of concrete with its bars, both ways, and perhaps fibres: every input, its range.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    size: str = fields.choice(_("Bar size"), BAR_SIZES, "12", _("Nominal size of each bar."))
    spacing: float = fields.number(
        _("One bar every"),
        "size",
        *ranges.SPACING_RANGE,
        150.0,
        _("Centre to centre."),
        when=ranges.is_slab,
    )
    number: int = fields.number(
        _("Number of bars"), "count", 1, 12, 4, _("Side by side."), when=ranges.is_beam
    )
    rows: str = fields.choice(_("Layers"), ranges.ROWS, "both", when=ranges.is_pulled)
    cross_size: str = fields.choice(
        _("Bars across: size"),
        ranges.CROSS_SIZES,
        "12",
        _("The bars of the mat that run the other way."),
        when=ranges.is_slab,
    )
    cross_spacing: float = fields.number(
        _("Bars across: one every"),
        "size",
        *ranges.SPACING_RANGE,
        150.0,
        _("Centre to centre."),
        when=ranges.has_across,
    )
    outer: str = fields.choice(
        _("Nearest to the face lie"), ranges.OUTER, "main", _("Of the mat."), when=ranges.has_across
    )
    both_ways: bool = fields.switch(
        _("Loaded the same both ways"),
        False,
        _("The bars across must then hold cracks too."),
        when=ranges.has_across,
    )
    cover: float = fields.number(
        _("Cover"),
        "size",
        LEAST_COVER,
        ranges.most_cover,
        40.0,
        _("Clear concrete over the outermost bars."),
    )
    slack: float = fields.number(
        _("They may lie off by"),
        "size",
        0.0,
        ranges.most_slack,
        0.0,
        _("Depth tolerance, up or down: deeper widens cracks, higher brings rust sooner."),
    )
    fibres: str = fields.choice(
        _("Fibres in the concrete"),
        ranges.DOSES,
        "none",
        _("Indicative: tests of the job's mix count."),
    )
    residual_1: float = fields.number(
        _("f_R1 by EN 14651"),
        "strength",
        0.0,
        10.0,
        2.4,
        _("Residual strength at a notch opening of 0.5 mm (0.02 in)."),
        when=ranges.is_tested,
    )
    residual_3: float = fields.number(
        _("f_R3 by EN 14651"),
        "strength",
        0.0,
        10.0,
        2.3,
        _("Residual strength at a notch opening of 2.5 mm (0.1 in)."),
        when=ranges.is_tested,
    )
    action: str = fields.choice(_("What stretches it"), ranges.ACTIONS, BENT)
    given: str = fields.choice(_("Load given as"), ranges.GIVEN, "stress")
    stress: float = fields.number(
        _("Pull in the bars"),
        "stress",
        50.0,
        ranges.most_stress,
        200.0,
        _("Stress of the main bars in a crack; fibres left out."),
        when=ranges.by_stress,
    )
    moment: float = fields.number(
        _("Moment"),
        "moment",
        0.0,
        ranges.most_moment,
        30e6,
        _("On this strip."),
        when=ranges.by_moment,
    )
    pull: float = fields.number(
        _("Pull"), "force", 0.0, ranges.most_pull, 300e3, _("On this strip."), when=ranges.by_pull
    )
    shape: str = fields.choice(_("It is"), ranges.SHAPES, "slab")
    width: float = fields.number(
        _("Width"), "size", 150.0, 2000.0, 1000.0, _("Of the strip that is looked at; of a beam.")
    )
    depth: float = fields.number(
        _("Depth"), "size", ranges.least_depth, 800.0, 200.0, _("Face to face.")
    )
    stones: float = fields.number(
        _("Largest stones"), "size", 8.0, 40.0, 20.0, _("They must pass between the bars.")
    )
    strength: float = concrete_strength(30.0)
    air: str = fields.choice(
        _("Air at the face"), AIR_CHOICES, "roofed", _("For rust: how fast the air works in.")
    )
    curing: float = fields.number(_("Kept moist for"), "time", 1.0, 28.0, 7.0, _("After the pour."))
    exposure: str = place_and_use("moist")
    duration: str = load_duration()
    code: str = code_family("EN")
    yield_strength: float = steel_strength(500.0)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "choice_picture"
    title: ClassVar[str] = _("Choosing bars")
    topics: ClassVar[tuple] = (
        (_("Bars"), ("size", "spacing", "number", "rows")),
        (_("Bars across"), ("cross_size", "cross_spacing", "outer", "both_ways")),
        (_("Where they lie"), ("cover", "slack")),
        (_("Fibres"), ("fibres", "residual_1", "residual_3")),
        (_("Load"), ("action", "given", "stress", "moment", "pull", "duration")),
        (_("Concrete"), ("shape", "width", "depth", "stones", "strength", "air", "curing")),
        (_("Use and rules"), ("exposure", "code", "yield_strength")),
    )

    def __post_init__(self):
        fields.check(self)

    @property
    def length(self) -> float:
        """How much of the strip is drawn [mm]."""
        return ranges.SHOWN["US" if self.code == "ACI" else "SI"]

    @property
    def bar(self) -> Bar:
        """Size of the main bars."""
        return bar(self.size)

    @property
    def residual(self) -> float:
        """What the fibres carry across a fine crack, f_Fts [MPa]; 0 without fibres."""
        return float(service_residual(self.tested[0]))

    @property
    def tested(self) -> tuple[float, float]:
        """Residual strengths f_R1 and f_R3 [MPa]."""
        if self.fibres == "tested":
            return self.residual_1, self.residual_3
        dose = next(each for each in INDICATIVE if each.key == self.fibres)
        return dose.residual_1, dose.residual_3

    @property
    def strip(self) -> Strip:
        """The concrete and how it is loaded."""
        return Strip(
            self.width,
            self.depth,
            self.strength,
            self.code,
            self.duration,
            self.action,
            self.residual,
        )

    @property
    def faces(self) -> float:
        """Faces that have bars [-]; 0.5 for one layer at mid-depth."""
        if self.action == BENT:
            return 1.0
        return 2.0 if self.rows == "both" else 0.5

    def main_bars(self, slack: float = 0.0) -> StripBars:
        """Give the main bars, laid deeper by `slack` [mm]."""
        outside = bar(self.cross_size).diameter if self._across_outside else 0.0
        steel, cover = self.bar, self.cover + outside + slack
        if ranges.is_slab(self):
            number, spacing, side = self.width / self.spacing, self.spacing, math.inf
        else:
            number, side = float(self.number), self.cover
            inside = self.width - 2 * side - steel.diameter
            spacing = inside / (number - 1) if number > 1 else self.width
        return StripBars(steel.diameter, steel.area, number, spacing, cover, side, self.faces)

    @property
    def _across_outside(self) -> bool:
        return ranges.has_across(self) and self.outer == "across"

    def cross_bars(self, slack: float = 0.0) -> StripBars | None:
        """Give the bars across in a strip as wide, laid deeper by `slack` [mm]; None without."""
        if not ranges.has_across(self):
            return None
        steel = bar(self.cross_size)
        inside = 0.0 if self._across_outside else self.bar.diameter
        return StripBars(
            steel.diameter,
            steel.area,
            self.width / self.cross_spacing,
            self.cross_spacing,
            self.cover + inside + slack,
            math.inf,
            self.faces,
        )

    @property
    def load(self) -> float:
        """Moment [N mm] or pull [N] on the strip."""
        if self.given == "stress":
            return float(load_of(self.strip, self.main_bars(self.slack), self.stress))
        return self.moment if self.action == BENT else self.pull

    @property
    def outer_diameter(self) -> float:
        """Diameter of the bars nearest to the face [mm]."""
        return bar(self.cross_size).diameter if self._across_outside else self.bar.diameter

    @property
    def control(self) -> Control:
        """What mechanics and rules say of the bars."""
        strip, main, across = self.strip, self.main_bars(self.slack), self.cross_bars(self.slack)
        load = self.load
        cracks = strip_cracks(strip, main, load)
        fct = float(tensile_strength_en(self.strength))
        loaded = across if self.both_ways else None
        return Control(
            strip=strip,
            load=load,
            main=cracks,
            across=strip_cracks(strip, loaded, load) if loaded else None,
            spread=across,
            mass=self.mass,
            least_gap=placing.least_gap(self.code, self.bar.diameter, self.stones),
            widest=placing.widest_spacing(
                self.shape, strip, self.yield_strength, main.cover, main.diameter
            ),
            cover=self.cover,
            asked=least_cover(self.code, self.exposure, self.outer_diameter, self.shape),
            least_steel=placing.least_strip_steel(
                strip, self.shape, float(cracks.held.d), self.yield_strength, fct
            ),
            years=self._years(self.cover),
            fewest_years=self._years(self.cover - self.slack),
            carbonated=carbonated_depth(LIFE, self.strength, self.air, self.curing),
            draw_chart=partial(
                choice_chart,
                strip,
                main,
                load,
                sizes=sizes_like(self.size),
                stones=self.stones,
                shape=self.shape,
                yield_strength=self.yield_strength,
            ),
        )

    def _years(self, cover: float) -> float:
        return years_until_rust(cover, self.strength, self.air, self.curing)

    @property
    def mass(self) -> float:
        """Steel on a square metre, both ways [kg/m2]; of a beam on a metre of its length [kg]."""
        main, faces = self.main_bars(), 2.0 if self.faces == 2.0 else 1.0
        if ranges.is_beam(self):
            return main.number * self.bar.mass * faces
        ways = [self.bar.mass / self.spacing]
        if ranges.has_across(self):
            ways.append(bar(self.cross_size).mass / self.cross_spacing)
        return 1000.0 * faces * sum(ways)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the buttons do: the same steel as thinner bars closer by, or as thicker ones."""
        if ranges.is_beam(self):
            return ()
        thinner, thicker = (self._as_much_steel(step) for step in (-1, 1))
        return (
            Count("thinner", _("Same steel, thinner bars"), "size", thinner),
            Count("thicker", _("Same steel, thicker bars"), "size", thicker),
        )

    def _as_much_steel(self, step: int) -> dict:
        """Changes to the next size that keep the steel, in its own direction."""
        sizes = sizes_like(self.size)
        k = sizes.index(self.size) + step if self.size in sizes else -1
        if not 0 <= k < len(sizes):
            return {}
        spacing = self.spacing * bar(sizes[k]).area / self.bar.area
        fits = ranges.SPACING_RANGE[0] <= spacing <= ranges.SPACING_RANGE[1]
        return {"size": sizes[k], "spacing": spacing} if fits else {}

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return {path: value}

    def solve(self) -> Outcome:
        """Answer the four questions."""
        found = self.control
        cracks = control_drawn.cracks(self, found)
        # a square as wide as the strip; of a beam a metre of it
        square = (self.width / 1000.0) ** 2 if ranges.is_slab(self) else 1.0
        return Outcome(
            structure=self,
            movement=None,
            tension=(control_drawn.stretched(self, found),) if found.load else (),
            cracks=cracks,
            steel=(control_drawn.steel(self, found),),
            verdict=control_judging.verdict(self, found),
            cautions=control_judging.cautions(self, found),
            steel_mass=self.mass * square,
            work=partial(control_working.working, self, found),
            x=np.array([0.0, self.length]),
            control=found,
            numbers=control_judging.numbers(self, found),
        )
