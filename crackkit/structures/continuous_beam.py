"""A floor or beam over several spans, with loads that come and go."""

from dataclasses import dataclass, replace
from functools import cached_property
from itertools import accumulate
from typing import ClassVar

from crackkit.mechanics import beam as beams
from crackkit.structures import continuous_member, fields, floor_grips
from crackkit.structures.anchored_bars import is_beam, is_slab, wrap_of
from crackkit.structures.counts import Count, load_counts
from crackkit.structures.floor_bars import Extent, FloorBars, floor_layer
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.structures.laid_bars import STIRRUP_SIZES
from crackkit.structures.materials import (
    UNIT_WEIGHT,
    code_family,
    concrete_strength,
    load_duration,
    looked_at_width,
    own_weight,
    place_and_use,
    steel_strength,
)
from crackkit.structures.member import Member
from crackkit.structures.on_drawing import FIXED, PIN, Footing, Grip, HungLoad, SpreadLoad
from crackkit.structures.outcome import Outcome
from crackkit.words import _

SHAPES = (
    ("slab", _("a strip of a slab")),
    ("beam", _("a beam")),
    ("tee", _("a beam with its slab")),
)
ENDS = (("pinned", _("free to turn")), ("fixed", _("held fast")))
MOST_SPANS = 6


def _is_tee(floor, _owner) -> bool:
    return floor.shape == "tee"


def _web(floor, _owner) -> float:
    return floor.width


def _half_depth(floor, _owner) -> float:
    return 0.5 * floor.depth


@dataclass(frozen=True)
class ContinuousBeam:
    """Two to six spans in one piece: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    spans: tuple[Span, ...] = fields.parts(_("Span"), 2, MOST_SPANS, (Span(), Span(), Span()))
    supports: tuple[Support, ...] = fields.parts(
        _("Support"), 3, MOST_SPANS + 1, (Support(), Support(), Support(), Support())
    )
    left_end: str = fields.choice(_("Left end"), ENDS, "pinned")
    right_end: str = fields.choice(_("Right end"), ENDS, "pinned")
    shape: str = fields.choice(_("Is"), SHAPES, "slab", _("A slab is looked at strip by strip."))
    width: float = looked_at_width()
    depth: float = fields.number(
        _("Depth"), "size", 100.0, 1200.0, 200.0, _("Top face to bottom face.")
    )
    flange_width: float = fields.number(
        _("Width of slab that helps"), "size", _web, 3000.0, 1000.0, when=_is_tee
    )
    flange_depth: float = fields.number(
        _("Depth of that slab"), "size", 50.0, _half_depth, 100.0, when=_is_tee
    )
    dead_load: float = fields.number(
        _("Dead load"), "line_load", 0.0, 80.0, 1.5, _("Always there, own weight apart.")
    )
    live_load: float = fields.number(
        _("Live load"), "line_load", 0.0, 80.0, 5.0, _("On every span where it stands.")
    )
    self_weight: bool = own_weight()
    loads: tuple[Traveller, ...] = fields.parts(_("Travelling load"), 1, 2, (Traveller(),))
    shifted: bool = fields.switch(
        _("Let cracks shift the moments"),
        False,
        _("A cracked place is softer, so it hands some of its moment to others."),
    )
    bottom: FloorBars = fields.part(_("Bottom bars"), FloorBars())
    top: FloorBars = fields.part(_("Top bars"), FloorBars(face="top"))
    through: bool = fields.switch(
        _("The same bars everywhere"),
        False,
        _("Top and bottom bars run from end to end, everywhere as many as in the fullest place."),
    )
    stirrup: str = fields.choice(_("Stirrups"), STIRRUP_SIZES, "8", when=is_beam)
    strength: float = concrete_strength()
    yield_strength: float = steel_strength(500.0)
    exposure: str = place_and_use("dry")
    duration: str = load_duration()
    code: str = code_family("EN")

    title: ClassVar[str] = _("A floor over several spans")
    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = _("from the left end")
    # how controls are grouped: heading, and the inputs under it
    topics: ClassVar[tuple] = (
        (_("Loads"), ("dead_load", "live_load", "loads", "self_weight", "duration", "shifted")),
        (_("Spans and bottom bars"), ("spans", "bottom")),
        (_("Supports and top bars"), ("supports", "top", "left_end", "right_end")),
        (_("All bars"), ("through", "stirrup")),
        (_("Section"), ("shape", "width", "depth", "flange_width", "flange_depth")),
        (_("Use and rules"), ("exposure", "code", "strength", "yield_strength")),
    )

    def __post_init__(self):
        # each part its own object: a part is told from its twins by being itself
        for name in ("spans", "supports", "loads"):
            object.__setattr__(self, name, tuple(replace(item) for item in getattr(self, name)))
        fields.check(self)
        if len(self.supports) != len(self.spans) + 1:
            wanted = len(self.spans) + 1
            label = _("Number of supports")
            raise fields.InputError("supports", label, len(self.supports), wanted, wanted, "count")

    @cached_property
    def places(self) -> tuple[float, ...]:
        """Places of the supports [mm] from the left end."""
        return tuple(accumulate((span.length for span in self.spans), initial=0.0))

    @cached_property
    def length(self) -> float:
        """From end to end [mm]."""
        return self.places[-1]

    @cached_property
    def own_weight(self) -> float:
        """Weight of the floor [N/mm]; 0 where it does not count."""
        area = self.width * self.depth
        if self.shape == "tee":
            area += (self.flange_width - self.width) * self.flange_depth
        return UNIT_WEIGHT[self.code] * area if self.self_weight else 0.0

    @cached_property
    def held_by(self) -> tuple[beams.Support, ...]:
        """The supports, as mechanics wants them."""
        kinds = ["pin"] * len(self.supports)
        kinds[0], kinds[-1] = (
            "fixed" if end == "fixed" else "pin" for end in (self.left_end, self.right_end)
        )
        rows = zip(self.places, kinds, self.supports, strict=True)
        return tuple(beams.Support(at, kind, support.sunk) for at, kind, support in rows)

    @property
    def cage(self) -> tuple[float, float, float] | None:
        """Clear concrete above, below and beside the stirrups [mm]; None where there are none."""
        if not wrap_of(self):
            return None
        above = self.top.cover + self.top.drop
        return above, self.bottom.cover - self.bottom.drop, self.bottom.cover

    @cached_property
    def footings(self) -> tuple[Footing, ...]:
        """The supports; the inner ones slide between their neighbours."""
        return tuple(self._footing(k, support) for k, support in enumerate(self.held_by))

    def _footing(self, index: int, support: beams.Support) -> Footing:
        letter = chr(ord("A") + index)
        name = _("support {letter}").format(letter=letter)
        kind = FIXED if support.kind == "fixed" else PIN
        grip = floor_grips.support_grip(self, index) if 0 < index < len(self.spans) else None
        return Footing(support.at, kind, name, letter, support.settlement, grip=grip)

    @cached_property
    def hung(self) -> tuple[HungLoad, ...]:
        """The travelling loads where they stand now."""
        return tuple(
            HungLoad(
                load.force,
                load.at,
                _("travelling load {n}").format(n=k + 1),
                Grip(f"loads.{k}.at", load.at, 0.0, self.length),
            )
            for k, load in enumerate(self.loads)
            if load.force
        )

    @cached_property
    def spread(self) -> tuple[SpreadLoad, ...]:
        """Dead load on the whole length, and the live load of each span."""
        found = []
        if self.dead_load + self.own_weight:
            found.append(SpreadLoad(0.0, self.length, self.dead_load, self.own_weight))
        if self.live_load:
            rows = zip(self.spans, self.places, self.places[1:], strict=False)
            found += [
                SpreadLoad(a, b, self.live_load, 0.0, "live", span.live, f"spans.{k}.live")
                for k, (span, a, b) in enumerate(rows)
            ]
        return tuple(found)

    @cached_property
    def bottom_bars(self) -> tuple[Extent, ...]:
        """How many bottom bars lie where: span by span, or one row from end to end."""
        if self.through:
            return (Extent(self._most(self.spans, self.bottom), 0.0, self.length),)
        rows = zip(self.spans, self.places, self.places[1:], strict=False)
        return tuple(
            Extent(self._count(span, self.bottom), a + span.left_gap, b - span.right_gap)
            for span, a, b in rows
        )

    @cached_property
    def top_bars(self) -> tuple[Extent, ...]:
        """How many top bars lie where: support by support, or one row from end to end."""
        if self.through:
            return (Extent(self._most(self.supports, self.top), 0.0, self.length),)
        rows = zip(self.supports, self.places, strict=True)
        found = [
            Extent(self._count(one, self.top), at - one.left_reach, at + one.right_reach)
            for one, at in rows
        ]
        return tuple(
            Extent(one.number, max(one.start, 0.0), min(one.end, self.length)) for one in found
        )

    def _count(self, place, bars: FloorBars) -> float:
        if not is_slab(self):
            return place.number
        return self.width / bars.spacing if place.laid else 0.0

    def _most(self, places, bars: FloorBars) -> float:
        if is_slab(self):
            return self.width / bars.spacing
        return max(place.number for place in places)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the reader can have more or fewer of: spans, with a support each, and loads."""
        spans, supports = self.spans, self.supports
        more, less = {}, {}
        if len(spans) < MOST_SPANS:
            # copies: what may be set of a span or support is looked up by which one it is
            more = {
                "spans": (*spans, replace(spans[-1])),
                "supports": (*supports[:-1], replace(supports[-2]), supports[-1]),
            }
        if len(spans) > 2:
            less = {"spans": spans[:-1], "supports": (*supports[:-2], supports[-1])}
        return (
            Count("add_span", _("One more span"), "spans", more),
            Count("drop_span", _("One span less"), "spans", less),
            *load_counts(self.loads, 2, replace(self.loads[0], at=self.length / 2)),
        )

    def bar_grips(self, key: str) -> tuple[Grip | None, Grip | None, Grip | None]:
        """What of a layer of bars can be dragged: its drop, its left end, its right end."""
        return floor_grips.bar_grips(self, key)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return floor_grips.handle_changes(self, path, value)

    @property
    def member(self) -> Member:
        """The same as a member with bars: what the cracking of the concrete depends on."""
        return member(self)

    def solve(self) -> Outcome:
        """Answer the four questions."""
        return continuous_member.outcome(self, member(self))


def member(floor: ContinuousBeam) -> Member:
    """Give the floor as a member with bars: what the cracking of the concrete depends on."""
    bottom = (
        floor_layer(floor, f"bottom.{k}", _("bottom bars"), floor.bottom, where)
        for k, where in enumerate(floor.bottom_bars)
    )
    top = (
        floor_layer(floor, f"top.{k}", _("top bars"), floor.top, where)
        for k, where in enumerate(floor.top_bars)
    )
    flange = {}
    if floor.shape == "tee":
        flange = {"flange_width": floor.flange_width, "flange_depth": floor.flange_depth}
    return Member.of(
        length=floor.length,
        width=floor.width,
        depth=floor.depth,
        layers=tuple(item for item in (*bottom, *top) if item.number and item.end > item.start),
        strength=floor.strength,
        yield_strength=floor.yield_strength,
        code=floor.code,
        duration=floor.duration,
        exposure=floor.exposure,
        **flange,
    )
