"""A beam on two supports, with or without ends that reach past them."""

from dataclasses import dataclass
from typing import ClassVar

from crackkit.mechanics import beam as beams
from crackkit.structures import fields, line_member
from crackkit.structures.counts import Count, load_counts
from crackkit.structures.laid_bars import STIRRUP_SIZES, LaidBars, layer
from crackkit.structures.materials import (
    UNIT_WEIGHT,
    code_family,
    concrete_strength,
    load_duration,
    own_weight,
    place_and_use,
    steel_strength,
)
from crackkit.structures.member import Member
from crackkit.structures.on_drawing import PIN, Footing, Grip, HungLoad, SpreadLoad
from crackkit.structures.outcome import Outcome
from crackkit.words import _


def _beam_length(beam, _load) -> float:
    return beam.length


def _longest_overhang(beam, _owner) -> float:
    return min(3000.0, beam.span / 2)


@dataclass(frozen=True)
class PointLoad:
    """A load on one place; the place is measured from the left end of the beam."""

    force: float = fields.number(_("Load"), "force", 0.0, 300e3, 40e3, _("Pushes down."))
    at: float = fields.number(
        _("Place"), "length", 0.0, _beam_length, 3000.0, _("From the left end of the beam.")
    )


@dataclass(frozen=True)
class SimpleBeam:
    """A rectangular beam on two supports: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    span: float = fields.number(
        _("Span"), "length", 1000.0, 12000.0, 6000.0, _("From support to support.")
    )
    width: float = fields.number(_("Width"), "size", 150.0, 800.0, 300.0, _("Of the beam."))
    depth: float = fields.number(
        _("Depth"), "size", 150.0, 1200.0, 500.0, _("Top face to bottom face.")
    )
    uniform_load: float = fields.number(
        _("Spread load"), "line_load", 0.0, 80.0, 10.0, _("On the whole length, own weight apart.")
    )
    self_weight: bool = own_weight()
    loads: tuple[PointLoad, ...] = fields.parts(_("Point load"), 1, 3, (PointLoad(),))
    bottom: LaidBars = fields.part(_("Bottom bars"), LaidBars(size="20"))
    top: LaidBars = fields.part(_("Top bars"), LaidBars(size="10", number=2, face="top"))
    stirrup: str = fields.choice(
        _("Stirrups"), STIRRUP_SIZES, "10", _("They go round the bars and move them inwards.")
    )
    strength: float = concrete_strength()
    yield_strength: float = steel_strength(420.0)
    overhang_left: float = fields.number(
        _("Left end past its support"), "length", 0.0, _longest_overhang, 0.0
    )
    overhang_right: float = fields.number(
        _("Right end past its support"), "length", 0.0, _longest_overhang, 0.0
    )
    exposure: str = place_and_use("dry")
    duration: str = load_duration()
    code: str = code_family("ACI")

    title: ClassVar[str] = _("A beam on two supports")
    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = _("from the left end")
    # how controls are grouped: heading, and the inputs under it
    topics: ClassVar[tuple] = (
        (_("Loads"), ("loads", "uniform_load", "self_weight", "duration")),
        (_("Bottom bars"), ("bottom", "stirrup")),
        (_("Top bars"), ("top",)),
        (_("Beam"), ("span", "width", "depth", "overhang_left", "overhang_right")),
        (_("Use and rules"), ("exposure", "code", "strength", "yield_strength")),
    )

    def __post_init__(self):
        object.__setattr__(self, "loads", tuple(self.loads))
        fields.check(self)

    @property
    def length(self) -> float:
        """From end to end [mm]."""
        return self.overhang_left + self.span + self.overhang_right

    @property
    def supports(self) -> tuple[float, float]:
        """Places of the two supports [mm] from the left end."""
        return self.overhang_left, self.overhang_left + self.span

    @property
    def held_by(self) -> tuple[beams.Support, ...]:
        """The two supports, as mechanics wants them."""
        return tuple(beams.Support(at) for at in self.supports)

    @property
    def line_load(self) -> float:
        """Spread load with own weight, if that counts [N/mm]."""
        own = UNIT_WEIGHT[self.code] * self.width * self.depth if self.self_weight else 0.0
        return self.uniform_load + own

    @property
    def cage(self) -> tuple[float, float, float]:
        """Clear concrete above, below and beside the stirrups as laid [mm]."""
        side = self.bottom.cover
        return self.top.cover + self.top.drop, self.bottom.cover - self.bottom.drop, side

    @property
    def footings(self) -> tuple[Footing, ...]:
        """The two supports; each slides along a beam that keeps its length."""
        left, right = self.supports
        low, high = _reach(right, self.overhang_right)
        at_left = Grip("support.left", left, low, high)
        low, high = _reach(self.length - left, self.overhang_left)
        at_right = Grip("support.right", right, self.length - high, self.length - low)
        return (
            Footing(left, PIN, _("left support"), grip=at_left),
            Footing(right, PIN, _("right support"), grip=at_right),
        )

    @property
    def hung(self) -> tuple[HungLoad, ...]:
        """The point loads."""
        return tuple(
            HungLoad(
                load.force,
                load.at,
                _("point load {n}").format(n=k + 1),
                Grip(f"loads.{k}.at", load.at, 0.0, self.length),
            )
            for k, load in enumerate(self.loads)
        )

    @property
    def spread(self) -> tuple[SpreadLoad, ...]:
        """The spread load, with the own weight if that counts."""
        if not self.line_load:
            return ()
        own = self.line_load - self.uniform_load
        return (SpreadLoad(0.0, self.length, self.uniform_load, own),)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the reader can have more or fewer of: point loads."""
        place = self.length * (0.35, 0.65, 0.5)[len(self.loads) - 1]
        return load_counts(self.loads, 3, PointLoad(self.loads[0].force, place))

    def bar_grips(self, key: str) -> tuple[Grip | None, Grip | None, Grip | None]:
        """What of a layer of bars can be dragged: its drop, its left end, its right end."""
        item = fields.part_input(self, getattr(self, key), f"{key}.drop")
        return Grip(item.path, item.value, item.low, item.high), None, None

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs.

        Dragging a support slides it along a beam that keeps its length.
        """
        left, right = self.supports
        if path == "support.left":
            return {"overhang_left": value, "span": right - value}
        if path == "support.right":
            return {"overhang_right": self.length - value, "span": value - left}
        return {path: value}

    @property
    def member(self) -> Member:
        """The same as a member with bars: what the cracking of the concrete depends on."""
        return member(self)

    def solve(self) -> Outcome:
        """Answer the four questions."""
        return line_member.outcome(self, member(self), bent(self))


def _reach(free: float, other: float) -> tuple[float, float]:
    """Least and largest overhang [mm] of a support that slides while the beam keeps its length.

    `free` lies between the beam's end and the far support, `other` is the other overhang. The
    span keeps to 1 to 12 m, and each overhang to 3 m and to half the span.
    """
    span = max(1000.0, 2.0 * other)
    return max(0.0, free - 12000.0), max(0.0, min(3000.0, free / 3, free - span))


def member(beam: SimpleBeam) -> Member:
    """Give the beam as a member with bars: what the cracking of the concrete depends on."""
    layers = (
        layer("bottom", _("bottom bars"), beam.bottom, beam),
        layer("top", _("top bars"), beam.top, beam),
    )
    return Member.of(
        length=beam.length,
        width=beam.width,
        depth=beam.depth,
        layers=tuple(item for item in layers if item.number),
        strength=beam.strength,
        yield_strength=beam.yield_strength,
        code=beam.code,
        duration=beam.duration,
        exposure=beam.exposure,
    )


def bent(beam: SimpleBeam):
    """Solve the beam as it bends: moments, shears, reactions.

    On two supports they do not depend on the stiffness, so cracks do not change them.
    """
    loads = [beams.PointLoad(p.force, min(p.at, beam.length)) for p in beam.loads if p.force]
    if beam.line_load:
        w = beam.line_load
        loads.append(beams.LineLoad(0.0, beam.length, w, w))
    return beams.solve(beam.length, beam.held_by, loads)
