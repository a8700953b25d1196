"""What can be typed of a slab on the ground, and how it becomes the structure."""

from dataclasses import dataclass
from typing import ClassVar

from crackkit.sandbox.arguments import Amount, Knob, amount, is_nothing, switch, whole, word
from crackkit.sandbox.bar_arguments import mat_or_bars
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.shared_inputs import materials, rules, shared_words
from crackkit.structures import ground_slab as slabs
from crackkit.units.bar_notes import BarCount, BarSpacing
from crackkit.words import _

NO_JOINTS = 0.0


@dataclass(frozen=True)
class Joints(Amount):
    """How far joints lie apart; 0 stands for none."""

    unlike: ClassVar[str] = _("does not run from nothing")

    def read(self, typed) -> float:
        """Give the distance in mm."""
        return NO_JOINTS if is_nothing(typed) else super().read(typed)

    def written(self, value, system: str) -> str:
        """Write the distance, or that there are none."""
        return super().written(value, system) if value else "none"

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the distance, where there are joints."""
        return super().knobs(value) if value else ()


def _size(name, label, us, si, help=""):
    return amount(name, label, "size", us, si, help)


def _share(name, label, assumed, help=""):
    return amount(name, label, "ratio", assumed, assumed, help)


def _rules():
    """A slab carries no load here: there is none whose duration could matter."""
    return (argument for argument in rules("moist") if argument.name != "duration")


ARGUMENTS = (
    amount("length", _("length"), "length", "80 ft", "24 m", _("From end to end.")),
    amount("width", _("width"), "length", "20 ft", "6 m", _("From side to side.")),
    _size("thickness", _("thickness"), "6 in", "150 mm"),
    word("base", _("lies on"), slabs.BASE_CHOICES, "gravel", "gravel"),
    _share("left", _("left end held"), "0", _("0 is free, 1 cannot move.")),
    _share("middle", _("middle held"), "0", _("By a column or a pit.")),
    _share("right", _("right end held"), "0", _("As on the left.")),
    _share("sides", _("sides held"), "0", _("Both long sides, as the ends.")),
    Joints(
        "joints",
        _("a joint every"),
        {"US": "none", "SI": "none"},
        _("At most so far apart, in equal panels; or none."),
    ),
    _share("cut", _("cut to this share of the depth"), "0.25", _("A quarter is common practice.")),
    amount("cut_age", _("cut after"), "time", "1 d", "1 d", _("The first day is early enough.")),
    word("dowels", _("dowels at joints"), slabs.DOWELS, "none", "none"),
    mat_or_bars("bars", _("bars"), "none", "none", _("Along the slab: a spacing, or none.")),
    switch("both_ways", _("the same bars across"), False, _("Bars in both directions.")),
    word("place", _("they lie"), slabs.PLACES, "top", "top"),
    _size("cover", _("cover"), "1.5 in", "40 mm", _("Clear concrete above the bars.")),
    word("through", _("at joints they are"), slabs.THROUGH, "cut", "cut"),
    *materials(),
    _share("humidity", _("humidity of the air"), "0.5", _("0.5 is a heated building.")),
    amount("curing", _("kept moist for"), "time", "7 d", "7 d", _("After the pour.")),
    switch("both_sides", _("dries from below too"), False, _("On a dry, open base.")),
    amount(
        "cooling",
        _("cools by"),
        "temperature",
        "0 °F",
        "0 °C",
        _("From the day it was cast."),
    ),
    _share("spent", _("strength that curling uses up"), "0.3", _("A share of it.")),
    amount("age", _("age"), "age", "365 d", "365 d", _("Since it was cast.")),
    _share("scatter", _("scatter of its strength"), "0.1", _("0.05 to 0.15.")),
    whole("seed", _("which concrete"), 1, _("Another number, another mix from the truck.")),
    word("model", _("shrinkage by"), slabs.MODELS, "ACI", "EN", _("As the rules, if not typed.")),
    *_rules(),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = shared_words(ARGUMENTS) | {
    "span": "length",
    "l": "length",
    "depth": "thickness",
    "h": "thickness",
    "height": "thickness",
    "subbase": "base",
    "subgrade": "base",
    "ground": "base",
    "friction": "base",
    "held": "left",
    "restraint": "left",
    "side": "sides",
    "breadth": "width",
    "dowel": "dowels",
    "across": "both_ways",
    "joint": "joints",
    "joint_every": "joints",
    "panel": "joints",
    "panels": "joints",
    "saw_cut": "cut",
    "sawn": "cut_age",
    "rebar": "bars",
    "reinforcement": "bars",
    "mesh": "bars",
    "mat": "bars",
    "spacing": "bars",
    "size": "bars",
    "rh": "humidity",
    "cured": "curing",
    "cure": "curing",
    "curling": "spent",
    "temperature": "cooling",
    "time": "age",
    "day": "age",
    "days": "age",
    "mix": "seed",
    "shrinkage": "model",
}


def _made(v: Reading) -> slabs.GroundSlab:
    return slabs.GroundSlab(**v.plain | _joints(v["joints"]) | _bars(v))


def _joints(every: float) -> dict:
    return {"jointed": True, "joint_every": every} if every else {"jointed": False}


def _bars(v: Reading) -> dict:
    note = v["bars"]
    if note is None:
        return {"steel": "none"}
    if isinstance(note, BarCount):
        raise v.wrong("bars", _("a slab takes bars at a spacing, such as 12 @ 200 or #4 @ 12 in"))
    return {"steel": note.size, "spacing": note.spacing}


def _compound(it: slabs.GroundSlab) -> dict:
    bare = it.steel == "none"
    return {
        "joints": it.joint_every if it.jointed else NO_JOINTS,
        "bars": BarCount(0, it.steel) if bare else BarSpacing(it.steel, it.spacing),
    }


FORM = Form(
    "GroundSlab",
    slabs.GroundSlab,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={"jointed": "joints", "joint_every": "joints", "steel": "bars", "spacing": "bars"},
    # each family of rules has its own shrinkage, under the same name
    follows={"model": "code"},
)
