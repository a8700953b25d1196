"""A straight member that is pulled lengthwise, with bars, or with none."""

import math
from dataclasses import dataclass, replace
from functools import partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.bars import Bar, bar
from crackkit.mechanics.concrete import (
    direct_tension_aci,
    effective_modulus,
    modulus_aci,
    modulus_en,
    tensile_strength_en,
)
from crackkit.mechanics.crack_width import all_widths
from crackkit.structures import fields, pull_judging, pull_working, tie_bars
from crackkit.structures.counts import Count
from crackkit.structures.cracking import width_bands
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    LEAST_COVER,
    code_family,
    concrete_strength,
    load_duration,
    place_and_use,
    steel_strength,
)
from crackkit.structures.member import CREEP, STEEL_MODULUS
from crackkit.structures.outcome import Lengthening, Outcome, SteelLine, TensionZone
from crackkit.structures.pull_history import Sample, history
from crackkit.structures.pulled import PARTED, Pulled, next_pull, pulled, pulled_cracks
from crackkit.words import _

SURFACES = (("ribbed", _("ribbed")), ("plain", _("plain, smooth")))
BONDS = (
    ("good", _("good: low in the pour")),
    ("other", _("other: high in a deep pour")),
)
ENDS = (
    ("bars", _("the bars, which stick out")),
    ("gripped", _("the whole ends, as walls do")),
)
SIBLINGS = 9  # laid beside the member itself: ten in all
JUST_PAST = 1 + 1e-9  # of the pull at which a crack comes, where the button goes


def _has_bars(tie, _owner) -> bool:
    return tie.number > 0


def _has_cover(tie, _owner) -> bool:
    return tie.number > 1


def _least_width(tie, _owner) -> float:
    """So wide that the bars of a row lie a bar apart and have a little cover [mm]."""
    return max(80.0, 2 * LEAST_COVER + _taken(tie, tie_bars.in_row(tie.number)))


def _least_depth(tie, _owner) -> float:
    return max(80.0, 2 * LEAST_COVER + _taken(tie, tie_bars.rows(tie.number)))


def _taken(tie, side_by_side: int) -> float:
    """Room that bars and as wide gaps between them take [mm]."""
    return max(2 * side_by_side - 1, 0) * bar(tie.size).diameter


def _most_cover(tie, _owner) -> float:
    across = tie.width - _taken(tie, tie_bars.in_row(tie.number))
    down = tie.depth - _taken(tie, tie_bars.rows(tie.number))
    return max(min(100.0, across / 2, down / 2), LEAST_COVER)


def _most_pull(tie, _owner) -> float:
    """Pull at which the bars yield; or enough to crack what has none, or too few."""
    whole = 1.3 * tie.tensile * (tie.concrete_area + tie.bars_area * STEEL_MODULUS / tie.modulus)
    if tie.number and tie.ends == "bars":
        return tie.bars_area * tie.yield_strength
    return max(whole, tie.bars_area * tie.yield_strength)


@dataclass(frozen=True)
class TensionMember:
    """A straight member under pull: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    pull: float = fields.number(
        _("Pull"), "force", 0.0, _most_pull, 0.0, _("At both ends, along the member.")
    )
    before: float = fields.number(
        _("Pulled before, up to"),
        "force",
        0.0,
        _most_pull,
        0.0,
        _("Greatest pull so far: its cracks stay when the pull lets go."),
    )
    number: int = fields.choice(_("Bars"), tie_bars.ARRANGEMENTS, 4, _("Along the member."))
    size: str = fields.choice(
        _("Bar size"), BAR_SIZES, "12", _("Nominal size of each bar."), when=_has_bars
    )
    surface: str = fields.choice(_("Surface of the bars"), SURFACES, "ribbed", when=_has_bars)
    bond: str = fields.choice(
        _("Bond"),
        BONDS,
        "good",
        _("Fresh concrete settles away from bars high in a deep pour."),
        when=_has_bars,
    )
    length: float = fields.number(
        _("Length"), "length", 400.0, 4000.0, 1500.0, _("Of the concrete.")
    )
    width: float = fields.number(
        _("Width"), "size", _least_width, 600.0, 150.0, _("Of the cross-section.")
    )
    depth: float = fields.number(
        _("Depth"), "size", _least_depth, 600.0, 150.0, _("Of the cross-section.")
    )
    cover: float = fields.number(
        _("Cover"),
        "size",
        LEAST_COVER,
        _most_cover,
        25.0,
        _("Clear over the bars."),
        when=_has_cover,
    )
    ends: str = fields.choice(
        _("Pulled by"), ENDS, "bars", _("What is taken hold of at the two ends."), when=_has_bars
    )
    strength: float = concrete_strength(30.0)
    shrinkage: float = fields.number(
        _("Shrinks before the pull by"),
        "strain",
        0.0,
        0.0006,
        0.0,
        _("Free shortening of the concrete as it dries; the bars hold it back."),
        when=_has_bars,
    )
    scatter: float = fields.number(
        _("Scatter of its strength"),
        "ratio",
        0.0,
        0.2,
        0.1,
        _("How uneven the concrete is from place to place; 0.05 to 0.15 is usual."),
    )
    seed: int = fields.number(
        _("Which concrete"), "count", 1, 99, 1, _("Another number, another mix from the truck.")
    )
    beside: bool = fields.switch(
        _("Ten of them side by side"), False, _("The same member, each of other concrete.")
    )
    exposure: str = place_and_use("moist")
    duration: str = load_duration()
    code: str = code_family("EN")
    yield_strength: float = steel_strength(500.0)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "pulled_picture"
    title: ClassVar[str] = _("Pulled member")
    topics: ClassVar[tuple] = (
        (_("Pull"), ("pull", "before")),
        (_("Bars"), ("number", "size", "surface", "bond", "cover")),
        (_("Concrete"), ("scatter", "seed", "beside", "shrinkage")),
        (_("Member"), ("length", "width", "depth", "ends")),
        (_("Use and rules"), ("exposure", "code", "strength", "yield_strength", "duration")),
    )

    def __post_init__(self):
        fields.check(self)

    @property
    def bar(self) -> Bar:
        """Size of each bar."""
        return bar(self.size)

    @property
    def bars_area(self) -> float:
        """Area of all bars [mm2]."""
        return self.number * self.bar.area

    @property
    def concrete_area(self) -> float:
        """Area of the concrete without the bars [mm2]."""
        return self.width * self.depth - self.bars_area

    @property
    def tensile(self) -> float:
        """Mean strength of the concrete under direct pull [MPa]."""
        own = {"ACI": direct_tension_aci, "EN": tensile_strength_en}
        return float(own[self.code](self.strength))

    @property
    def modulus(self) -> float:
        """Modulus of the concrete, the effective one for lasting pull [MPa]."""
        short = float({"ACI": modulus_aci, "EN": modulus_en}[self.code](self.strength))
        return short if self.duration == "short" else float(effective_modulus(short, CREEP))

    @property
    def sample(self) -> Sample:
        """The member in numbers, without the pull."""
        return Sample(
            length=self.length,
            concrete_area=self.concrete_area,
            bars_area=self.bars_area,
            perimeter=self.number * math.pi * self.bar.diameter,
            diameter=self.bar.diameter,
            strength=self.strength,
            tensile=self.tensile,
            modulus=self.modulus,
            yield_strength=self.yield_strength,
            shrinkage=self.shrinkage if self.number else 0.0,
            scatter=self.scatter,
            seed=int(self.seed),
            surface=self.surface,
            bond=self.bond,
            ends=self.ends,
        )

    @property
    def state(self) -> Pulled:
        """State and history at this pull."""
        beside = SIBLINGS if self.beside else 0
        return pulled(self.sample, self.pull, self.before, self._band, beside)

    def _band(self, stress: float):
        # the published rules are for ribbed bars that are pulled
        if self.surface == "plain" or not self.number or stress <= 0.0:
            return None
        answers = all_widths(tie_bars.zone(self, self.bar, stress))
        return width_bands(answers, self.code, 1)[0]

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the buttons at the pull do: to the next crack, let go, a fresh member."""
        greatest = max(self.pull, self.before)
        following = next_pull(history(self.sample), greatest)
        top = fields.input_at(self, "pull").high
        onward = {} if following is None else {"pull": min(following * JUST_PAST, top)}
        let_go = {"pull": 0.0, "before": greatest} if self.pull else {}
        fresh = {"pull": 0.0, "before": 0.0} if greatest else {}
        return (
            Count("next_crack", _("Next crack"), "pull", onward),
            Count("let_go", _("Let go"), "pull", let_go),
            Count("fresh", _("A fresh one"), "pull", fresh),
        )

    def after(self, previous: "TensionMember", changes: dict) -> "TensionMember":
        """Give the member as it is after a change: a pull that lets go leaves its cracks behind.

        Parameters
        ----------
        previous : TensionMember
            The member before the change.
        changes : dict
            Path to value of what was changed.
        """
        if set(changes) != {"pull"} or self.pull >= previous.pull:
            return self
        return replace(self, before=max(self.before, previous.pull))

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return {path: value}

    def solve(self) -> Outcome:
        """Answer the four questions."""
        state = self.state
        keys = ("bars",) if self.number else ()
        cracks = pulled_cracks(state, keys, self.depth)
        return Outcome(
            structure=self,
            movement=_lengthening(self, state),
            tension=_stretched(self, state),
            cracks=cracks,
            steel=_steel(self, state),
            verdict=pull_judging.verdict(self, state, cracks),
            cautions=pull_judging.cautions(self, state),
            steel_mass=self.number * self.bar.mass * self.length / 1000.0,
            work=partial(pull_working.working, self, state),
            x=state.now.x,
            pulled=state,
            numbers=pull_judging.numbers(self, state, cracks),
        )


def _lengthening(tie: TensionMember, state: Pulled) -> Lengthening:
    if state.ended == PARTED:
        at = float(state.history.sequence.position[0])
        return Lengthening(state.now.mean_strain * tie.length, at)
    return Lengthening(state.now.mean_strain * tie.length)


def _stretched(tie: TensionMember, state: Pulled) -> tuple[TensionZone, ...]:
    """The whole member from end to end, as far as its concrete is pulled at all."""
    stress, x = state.now.concrete_stress, state.now.x
    if stress.max(initial=0.0) <= 0.0:
        return ()
    strengths = np.interp(x, state.history.tie.stations, state.history.tie.strengths)
    most = int(np.argmax(stress / strengths))
    pulls = x[stress > 0.0]
    cracked = tuple((c, c) for c in state.now.cracks.tolist())
    peak = float(stress[most] / strengths[most])
    ends = float(pulls[0]), float(pulls[-1])
    return (TensionZone("both", *ends, peak, float(x[most]), cracked),)


def _steel(tie: TensionMember, state: Pulled) -> tuple[SteelLine, ...]:
    if not tie.number:
        return ()
    x = state.now.x
    across = tie_bars.places(tie.number, tie.bar, tie.width, tie.depth, tie.cover)
    depth = max(z for _y, z in across)
    return (
        SteelLine(
            key="bars",
            label=_("bars"),
            x=x,
            stress=state.now.steel_stress,
            capacity=np.full_like(x, tie.yield_strength),
            depth=depth,
            start=0.0,
            end=tie.length,
            number=tie.number,
            diameter=tie.bar.diameter,
            size=tie.bar.name,
            side_cover=min(y for y, _z in across) - tie.bar.diameter / 2,
            face="both",
            path=np.array([(0.0, depth), (tie.length, depth)]),
        ),
    )
