"""A slab on the ground that dries from the top: its corners lift, and a wheel stands on them."""

from dataclasses import dataclass, replace
from functools import partial
from typing import ClassVar

from crackkit.mechanics.bars import Bar, bar
from crackkit.mechanics.concrete import Concrete, concrete
from crackkit.mechanics.moisture_diffusion import THREE_YEARS as LAST_DAY
from crackkit.structures import curled_cautions, curled_judging, curled_working, fields
from crackkit.structures.counts import Count
from crackkit.structures.curled import Curled
from crackkit.structures.curling import curled
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import (
    UNIT_WEIGHT,
    code_family,
    concrete_strength,
    place_and_use,
    steel_strength,
)
from crackkit.structures.outcome import Lengthening, Outcome
from crackkit.words import _

MAT_SIZES = (("none", _("none")), *BAR_SIZES)
UNDER = (
    ("sheet", _("a sheet right below it")),
    ("damp", _("damp ground")),
    ("blotter", _("a dry layer over the sheet")),
    ("open", _("open: it dries from below as well")),
)


def _along(slab, _load) -> float:
    return slab.length


def _across(slab, _load) -> float:
    return slab.width


def _has_mat(slab, _owner=None) -> bool:
    return slab.steel != "none"


def _most_cover(slab, _owner) -> float:
    return slab.thickness / 2


@dataclass(frozen=True)
class WheelLoad:
    """A wheel or the leg of a rack: a load on a square, its middle measured from one corner."""

    force: float = fields.number(_("Load"), "force", 0.0, 60e3, 10e3, _("Pushes down."))
    x: float = fields.number(
        _("Along"), "length", 0.0, _along, 300.0, _("Its middle, from the left end.")
    )
    y: float = fields.number(
        _("Across"), "length", 0.0, _across, 300.0, _("Its middle, from the near side.")
    )
    side: float = fields.number(
        _("Side of its foot"), "size", 50.0, 300.0, 150.0, _("The foot is a square.")
    )


@dataclass(frozen=True)
class CurledSlab:
    """One panel between joints: every input, with its range in N, mm, MPa.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    age: float = fields.number(
        _("Age"), "age", 1.0, LAST_DAY, 180.0, _("Days since the concrete was cast.")
    )
    loads: tuple[WheelLoad, ...] = fields.parts(_("Wheel"), 1, 2, (WheelLoad(),))
    length: float = fields.number(
        _("Length"), "length", 2000.0, 8000.0, 4500.0, _("From joint to joint.")
    )
    width: float = fields.number(
        _("Width"), "length", 2000.0, 8000.0, 4500.0, _("From joint to joint.")
    )
    thickness: float = fields.number(_("Thickness"), "size", 75.0, 300.0, 150.0)
    ground: float = fields.number(
        _("Stiffness of the ground"),
        "bed",
        0.01,
        0.2,
        0.05,
        _(
            "Pressure for each settlement: soft clay 15 MN/m³ (55 lb/in³), "
            "good gravel 80 MN/m³ (295 lb/in³)."
        ),
    )
    transfer: float = fields.number(
        _("Joints pass on"),
        "ratio",
        0.0,
        1.0,
        0.0,
        _("Share of their load that edges hand to the neighbour: dowels 0.7 to 0.9."),
    )
    under: str = fields.choice(
        _("Below it is"), UNDER, "sheet", _("What the water in it can leave through.")
    )
    humidity: float = fields.number(
        _("Humidity of the air"), "ratio", 0.3, 0.95, 0.5, _("0.5 is a heated building.")
    )
    curing: float = fields.number(_("Kept moist for"), "time", 1.0, 28.0, 7.0)
    shrinks: float = fields.number(
        _("It could shrink by"),
        "strain",
        3e-4,
        12e-4,
        7e-4,
        _("Dried all through: stiff mixes 0.5 ‰, wet ones 1 ‰."),
    )
    warmer: float = fields.number(
        _("Top warmer by"), "temperature", -15.0, 15.0, 0.0, _("By day above 0, by night below.")
    )
    strength: float = concrete_strength(30.0)
    steel: str = fields.choice(
        _("Mat, both ways"), MAT_SIZES, "none", _("Size of each bar, near the top.")
    )
    spacing: float = fields.number(
        _("One bar every"), "size", 75.0, 450.0, 200.0, _("Centre to centre."), when=_has_mat
    )
    cover: float = fields.number(
        _("Cover"), "size", 20.0, _most_cover, 40.0, _("Clear above the mat."), when=_has_mat
    )
    exposure: str = place_and_use("dry")
    code: str = code_family("EN")
    yield_strength: float = steel_strength(500.0)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "curled_picture"
    title: ClassVar[str] = _("A slab that curls")
    topics: ClassVar[tuple] = (
        (_("Age"), ("age",)),
        (_("Wheels"), ("loads",)),
        (_("Panel"), ("length", "width", "thickness", "transfer")),
        (_("Ground"), ("under", "ground")),
        (_("Drying"), ("curing", "humidity", "shrinks", "warmer")),
        (_("Mat"), ("steel", "spacing", "cover")),
        (_("Use and rules"), ("exposure", "code", "strength", "yield_strength")),
    )

    def __post_init__(self):
        object.__setattr__(self, "loads", tuple(self.loads))
        fields.check(self)

    @property
    def bar(self) -> Bar | None:
        """Size of the bars of the mat; None without."""
        return bar(self.steel) if _has_mat(self) else None

    @property
    def area(self) -> float:
        """Bars of one direction for each mm of width [mm2/mm]; 0 without."""
        return self.bar.area / self.spacing if self.bar else 0.0

    @property
    def mass(self) -> float:
        """Mat on a square metre, both ways [kg/m2]."""
        return 2000.0 * self.bar.mass / self.spacing if self.bar else 0.0

    @property
    def hardened(self) -> Concrete:
        """Its concrete at 28 days."""
        return concrete(self.strength, self.thickness, self.code)

    @property
    def weight(self) -> float:
        """Own weight [MPa]."""
        return UNIT_WEIGHT[self.code] * self.thickness

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the button at the first load does: to the corner."""
        reach = self.loads[0].side / 2
        here = abs(self.loads[0].x - reach) < 1 and abs(self.loads[0].y - reach) < 1
        onward = {} if here else {"loads.0.x": reach, "loads.0.y": reach}
        return (Count("corner", _("To the corner"), "loads.0.force", onward),)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs; ages are dragged in decades."""
        if path == "decades":
            return {"age": min(max(10.0**value, 1.0), LAST_DAY)}
        return {path: value}

    @property
    def unloaded(self) -> "CurledSlab":
        """The same slab without wheels, sun and mat, at its last day."""
        still = (WheelLoad(force=0.0),)
        return replace(self, loads=still, age=LAST_DAY, warmer=0.0, steel="none")

    @property
    def last_day(self) -> float:
        """Age at which its story ends [days]."""
        return LAST_DAY

    @property
    def curled(self) -> Curled:
        """State of the slab at its age."""
        return curled(self)

    def solve(self) -> Outcome:
        """Answer the four questions."""
        state = self.curled
        return Outcome(
            structure=self,
            movement=Lengthening(state.corner_rise),
            tension=curled_judging.stretched(self, state),
            cracks=curled_judging.cracks(self, state),
            steel=(),
            verdict=curled_judging.verdict(self, state),
            cautions=curled_cautions.cautions(self, state),
            steel_mass=self.mass,
            work=partial(curled_working.working, self, state),
            x=state.x,
            curled=state,
            numbers=curled_judging.numbers(self, state),
        )
