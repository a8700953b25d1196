"""A balcony or a canopy: an arm that grows out of a wall, or out of the floor behind it."""

from dataclasses import dataclass
from typing import ClassVar

from crackkit.mechanics import beam as beams
from crackkit.structures import fields, line_member
from crackkit.structures.anchored_bars import (
    AnchoredBars,
    anchored_layer,
    is_beam,
    wrap_of,
)
from crackkit.structures.counts import Count, load_counts
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
from crackkit.structures.on_drawing import PIN, WALL, Footing, Grip, HungLoad, SpreadLoad
from crackkit.structures.outcome import Outcome
from crackkit.words import _

BACKS = (("wall", _("a wall")), ("floor", _("the floor behind it")))
SHAPES = (("slab", _("a strip of a slab")), ("beam", _("a beam")))
LONGEST, SHORTEST = 5000.0, 300.0  # overhang, mm
LONGEST_BACK, SHORTEST_BACK = 8000.0, 500.0  # span behind, mm


def _has_wall(arm, _owner) -> bool:
    return arm.back == "wall"


def _has_floor(arm, _owner) -> bool:
    return arm.back == "floor"


def _overhang(arm, _load) -> float:
    return arm.overhang


def _root_depth(arm, _owner) -> float:
    return arm.depth


@dataclass(frozen=True)
class ArmLoad:
    """A load on one place of the arm; the place is measured from the root."""

    force: float = fields.number(_("Load"), "force", 0.0, 100e3, 5e3, _("Pushes down."))
    from_root: float = fields.number(
        _("Place"), "length", 0.0, _overhang, 1400.0, _("From the root outwards.")
    )


@dataclass(frozen=True)
class Cantilever:
    """An arm fixed at its root: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    overhang: float = fields.number(
        _("Overhang"), "length", SHORTEST, LONGEST, 1500.0, _("From the root to the tip.")
    )
    back: str = fields.choice(_("Grows out of"), BACKS, "wall", _("What holds the root."))
    wall: float = fields.number(_("Wall thickness"), "size", 150.0, 800.0, 300.0, when=_has_wall)
    back_span: float = fields.number(
        _("Span behind"),
        "length",
        SHORTEST_BACK,
        LONGEST_BACK,
        4000.0,
        _("From the support at the root to the next one behind it."),
        when=_has_floor,
    )
    shape: str = fields.choice(_("Is"), SHAPES, "slab", _("A slab is looked at strip by strip."))
    width: float = looked_at_width()
    depth: float = fields.number(
        _("Depth at the root"), "size", 100.0, 1000.0, 200.0, _("Top face to bottom face.")
    )
    tip_depth: float = fields.number(
        _("Depth at the tip"), "size", 80.0, _root_depth, 160.0, _("The bottom face rises to it.")
    )
    uniform_load: float = fields.number(
        _("Spread load"), "line_load", 0.0, 60.0, 4.0, _("On the arm, own weight apart.")
    )
    back_load: float = fields.number(
        _("Spread load behind"),
        "line_load",
        0.0,
        60.0,
        4.0,
        _("On the span behind, own weight apart."),
        when=_has_floor,
    )
    self_weight: bool = own_weight()
    loads: tuple[ArmLoad, ...] = fields.parts(_("Point load"), 1, 2, (ArmLoad(),))
    top: AnchoredBars = fields.part(_("Top bars"), AnchoredBars(behind=260.0, hooked=True))
    bottom: AnchoredBars = fields.part(
        _("Bottom bars"), AnchoredBars(size="8", laid=False, behind=260.0, face="bottom")
    )
    stirrup: str = fields.choice(_("Stirrups"), STIRRUP_SIZES, "8", when=is_beam)
    strength: float = concrete_strength()
    yield_strength: float = steel_strength(500.0)
    exposure: str = place_and_use("moist")
    duration: str = load_duration()
    code: str = code_family("EN")

    title: ClassVar[str] = _("A cantilever")
    origin_name: ClassVar[str] = _("from the root")
    # how controls are grouped: heading, and the inputs under it
    topics: ClassVar[tuple] = (
        (_("Loads"), ("loads", "uniform_load", "back_load", "self_weight", "duration")),
        (_("Top bars"), ("top",)),
        (_("Bottom bars"), ("bottom", "stirrup")),
        (
            _("Arm and root"),
            ("overhang", "back", "wall", "back_span", "shape", "width", "depth", "tip_depth"),
        ),
        (_("Use and rules"), ("exposure", "code", "strength", "yield_strength")),
    )

    def __post_init__(self):
        object.__setattr__(self, "loads", tuple(self.loads))
        fields.check(self)

    @property
    def behind(self) -> float:
        """How much concrete lies behind the root [mm]: the wall, or the span behind."""
        return self.wall if self.back == "wall" else self.back_span

    @property
    def root(self) -> float:
        """Place of the root [mm from the left end]."""
        return self.behind

    @property
    def origin(self) -> float:
        """Place that readers count from: the root [mm from the left end]."""
        return self.root

    @property
    def length(self) -> float:
        """From the back of the wall, or the support behind, to the tip [mm]."""
        return self.behind + self.overhang

    @property
    def held_by(self) -> tuple[beams.Support, ...]:
        """What carries it: a wall that holds the root fast, or two supports."""
        if self.back == "wall":
            return (beams.Support(self.root, "fixed"),)
        return beams.Support(0.0), beams.Support(self.root)

    @property
    def own_weight(self) -> tuple[float, float]:
        """Weight at the root and at the tip [N/mm]; 0 where it does not count."""
        weight = UNIT_WEIGHT[self.code] * self.width if self.self_weight else 0.0
        return weight * self.depth, weight * self.tip_depth

    @property
    def cage(self) -> tuple[float, float, float] | None:
        """Clear concrete above, below and beside the stirrups [mm]; None where there are none."""
        if not wrap_of(self):
            return None
        above = self.top.cover + self.top.drop
        return above, self.bottom.cover - self.bottom.drop, self.top.cover

    @property
    def footings(self) -> tuple[Footing, ...]:
        """The wall, or the two supports."""
        if self.back == "wall":
            return (Footing(self.root, WALL, _("wall"), start=0.0, end=self.root),)
        low = max(SHORTEST_BACK, self.length - LONGEST)
        high = min(LONGEST_BACK, self.length - SHORTEST)
        grip = Grip("root", self.root, low, high)
        return (
            Footing(0.0, PIN, _("support behind"), "A"),
            Footing(self.root, PIN, _("support at the root"), "B", grip=grip),
        )

    @property
    def hung(self) -> tuple[HungLoad, ...]:
        """The point loads."""
        return tuple(
            HungLoad(
                load.force,
                self.root + load.from_root,
                _("point load {n}").format(n=k + 1),
                Grip(f"loads.{k}.at", self.root + load.from_root, self.root, self.length),
            )
            for k, load in enumerate(self.loads)
        )

    @property
    def spread(self) -> tuple[SpreadLoad, ...]:
        """The spread loads, with the own weight if that counts; of a tapered arm its mean."""
        own = sum(self.own_weight) / 2
        found = [SpreadLoad(self.root, self.length, self.uniform_load, own)]
        if self.back == "floor":
            found.insert(0, SpreadLoad(0.0, self.root, self.back_load, self.own_weight[0]))
        return tuple(load for load in found if load.total)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the reader can have more or fewer of: point loads."""
        return load_counts(self.loads, 2, ArmLoad(self.loads[0].force, self.overhang / 2))

    def bar_grips(self, key: str) -> tuple[Grip | None, Grip | None, Grip | None]:
        """What of a layer of bars can be dragged: its drop, its left end, its right end."""
        drop, behind, gap = (
            fields.part_input(self, getattr(self, key), f"{key}.{name}")
            for name in ("drop", "behind", "tip_gap")
        )
        start, end = self.root - behind.value, self.length - gap.value
        return (
            Grip(drop.path, drop.value, drop.low, drop.high),
            Grip(f"{key}.start", start, self.root - behind.high, self.root - behind.low),
            Grip(f"{key}.end", end, self.length - gap.high, self.length - gap.low),
        )

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs.

        Dragging the support at the root slides it along a slab that keeps its length.
        """
        head, _dot, last = path.rpartition(".")
        if path == "root":
            return {"back_span": value, "overhang": self.length - value}
        if last == "at":
            return {f"{head}.from_root": value - self.root}
        if last == "start":
            return {f"{head}.behind": self.root - value}
        if last == "end":
            return {f"{head}.tip_gap": self.length - value}
        return {path: value}

    @property
    def member(self) -> Member:
        """The same as a member with bars: what the cracking of the concrete depends on."""
        return member(self)

    def solve(self) -> Outcome:
        """Answer the four questions."""
        return line_member.outcome(self, member(self), bent(self))


def member(arm: Cantilever) -> Member:
    """Give the arm as a member with bars: what the cracking of the concrete depends on."""
    layers = (
        anchored_layer("top", _("top bars"), arm.top, arm),
        anchored_layer("bottom", _("bottom bars"), arm.bottom, arm),
    )
    tapered = abs(arm.depth - arm.tip_depth) > 1e-6
    depths = ((0.0, arm.depth), (arm.root, arm.depth), (arm.length, arm.tip_depth))
    return Member.of(
        length=arm.length,
        width=arm.width,
        depth=arm.depth,
        layers=tuple(item for item in layers if item.number),
        strength=arm.strength,
        yield_strength=arm.yield_strength,
        code=arm.code,
        duration=arm.duration,
        exposure=arm.exposure,
        depths=depths if tapered else (),
    )


def bent(arm: Cantilever):
    """Solve the arm as it bends: moments, shears, reactions.

    They do not depend on the stiffness, so cracks do not change them.
    """
    loads = [
        beams.PointLoad(p.force, min(arm.root + p.from_root, arm.length))
        for p in arm.loads
        if p.force
    ]
    at_root, at_tip = arm.own_weight
    on_arm = arm.uniform_load + at_root, arm.uniform_load + at_tip
    if max(on_arm):
        loads.append(beams.LineLoad(arm.root, arm.length, *on_arm))
    behind = arm.back_load + at_root
    if arm.back == "floor" and behind:
        loads.append(beams.LineLoad(0.0, arm.root, behind, behind))
    return beams.solve(arm.length, arm.held_by, loads)
