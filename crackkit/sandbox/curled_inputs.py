"""What can be typed of a slab that curls, and how it becomes the structure."""

from dataclasses import dataclass

from crackkit.sandbox.arguments import amount, is_nothing, word
from crackkit.sandbox.bar_arguments import mat_or_bars
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.lists import Amounts
from crackkit.sandbox.shared_inputs import materials, rules, shared_words
from crackkit.structures import curled_slab as slabs
from crackkit.structures.curled_slab import WheelLoad
from crackkit.units.bar_notes import BarCount, BarSpacing
from crackkit.words import _

WHEELS = {"load": "force", "along": "x", "across": "y", "foot": "side"}
"""Arguments that tell of the wheels, and the input of a wheel that each of them sets."""


@dataclass(frozen=True)
class Forces(Amounts):
    """The load on each wheel; none at all is one wheel of nothing."""

    def read(self, typed) -> tuple[float, ...]:
        """Give the loads in N."""
        return (0.0,) if is_nothing(typed) else super().read(typed)


def _of_wheels(kind, name, label, each, quantity, us, si, help=""):
    assumed = {"US": us, "SI": si}
    return kind(name, label, assumed, help, f"loads.*.{WHEELS[name]}", quantity, each)


def _size(name, label, us, si, help=""):
    return amount(name, label, "size", us, si, help)


def _share(name, label, assumed, help=""):
    return amount(name, label, "ratio", assumed, assumed, help)


def _rules():
    """Drying pulls for months, wheels for a moment: no duration is asked for."""
    return (argument for argument in rules("dry") if argument.name != "duration")


ARGUMENTS = (
    amount("length", _("length"), "length", "15 ft", "4.5 m", _("From joint to joint.")),
    amount("width", _("width"), "length", "15 ft", "4.5 m", _("From joint to joint.")),
    _size("thickness", _("thickness"), "6 in", "150 mm"),
    _of_wheels(
        Forces,
        "load",
        _("load"),
        _("load {n}"),
        "force",
        "2 kip",
        "10 kN",
        _("On one wheel, or the leg of a rack; two at most; or none."),
    ),
    _of_wheels(
        Amounts,
        "along",
        _("it stands along"),
        _("load {n} stands along"),
        "length",
        "1 ft",
        "0.3 m",
        _("From the left end; one for each load."),
    ),
    _of_wheels(
        Amounts,
        "across",
        _("it stands across"),
        _("load {n} stands across"),
        "length",
        "1 ft",
        "0.3 m",
        _("From the near side; one for each load."),
    ),
    _of_wheels(
        Amounts,
        "foot",
        _("side of its foot"),
        _("side of foot {n}"),
        "size",
        "6 in",
        "150 mm",
        _("A square."),
    ),
    amount(
        "ground",
        _("stiffness of the ground"),
        "bed",
        "200 pci",
        "50 MN/m3",
        _("Soft clay 15, good gravel 80 MN/m³."),
    ),
    _share("transfer", _("joints pass on"), "0", _("Of the load of an edge; dowels 0.7 to 0.9.")),
    word("under", _("below it is"), slabs.UNDER, "sheet", "sheet"),
    _share("humidity", _("humidity of the air"), "0.5", _("0.5 is a heated building.")),
    amount("curing", _("kept moist for"), "time", "7 d", "7 d", _("After the pour.")),
    amount(
        "shrinks",
        _("it could shrink by"),
        "strain",
        "700 millionths",
        "0.7 ‰",
        _("Dried all through."),
    ),
    amount(
        "warmer",
        _("top warmer by"),
        "temperature",
        "0 °F",
        "0 °C",
        _("By day above 0, by night below."),
    ),
    mat_or_bars("bars", _("mat"), "none", "none", _("Both ways: a spacing, or none.")),
    _size("cover", _("cover"), "1.5 in", "40 mm", _("Clear concrete above the mat.")),
    *materials(),
    amount("age", _("age"), "age", "180 d", "180 d", _("Since it was cast.")),
    *_rules(),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = shared_words(ARGUMENTS) | {
    "span": "length",
    "l": "length",
    "joints": "length",
    "joint_every": "length",
    "panel": "length",
    "breadth": "width",
    "depth": "thickness",
    "h": "thickness",
    "height": "thickness",
    "wheel": "load",
    "loads": "load",
    "force": "load",
    "point_load": "load",
    "x": "along",
    "y": "across",
    "at": "along",
    "patch": "foot",
    "side": "foot",
    "subgrade": "ground",
    "k": "ground",
    "base": "under",
    "dowels": "transfer",
    "dowel": "transfer",
    "rh": "humidity",
    "cured": "curing",
    "cure": "curing",
    "shrinkage": "shrinks",
    "temperature": "warmer",
    "mat": "bars",
    "mesh": "bars",
    "rebar": "bars",
    "reinforcement": "bars",
    "spacing": "bars",
    "time": "age",
    "day": "age",
    "days": "age",
}


def _made(v: Reading) -> slabs.CurledSlab:
    plain = {name: value for name, value in v.plain.items() if name != "loads"}
    return slabs.CurledSlab(loads=_wheels(v), **plain | _bars(v))


def _wheels(v: Reading) -> tuple[WheelLoad, ...]:
    number = max(len(v[name]) for name in WHEELS)
    columns = {field: v.at_each(name, number) for name, field in WHEELS.items()}
    rows = zip(*columns.values(), strict=True)
    return tuple(WheelLoad(**dict(zip(columns, row, strict=True))) for row in rows)


def _bars(v: Reading) -> dict:
    note = v["bars"]
    if note is None:
        return {"steel": "none"}
    if isinstance(note, BarCount):
        raise v.wrong("bars", _("a slab takes bars at a spacing, such as 10 @ 200 or #4 @ 12 in"))
    return {"steel": note.size, "spacing": note.spacing}


def _compound(it: slabs.CurledSlab) -> dict:
    bare = it.steel == "none"
    bars = BarCount(0, it.steel) if bare else BarSpacing(it.steel, it.spacing)
    wheels = {name: tuple(getattr(w, field) for w in it.loads) for name, field in WHEELS.items()}
    return wheels | {"bars": bars}


FORM = Form(
    "CurledSlab",
    slabs.CurledSlab,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={"loads": "load", "steel": "bars", "spacing": "bars"},
)
