"""What can be typed of a simple beam, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, bar_size
from crackkit.sandbox.bar_arguments import bars
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.load_arguments import point_loads
from crackkit.sandbox.shared_inputs import MEANT as SHARED
from crackkit.sandbox.shared_inputs import materials, own_weight, rules
from crackkit.structures import simple_beam as beams
from crackkit.structures.laid_bars import STIRRUP_SIZES, LaidBars
from crackkit.units.bar_notes import BarCount, PointLoad
from crackkit.words import _


def _gap(name: str, label: str, path: str):
    return amount(name, label, "length", "2 in", "50 mm", "", path)


ARGUMENTS = (
    amount("span", _("span"), "length", "20 ft", "6 m", _("From support to support.")),
    amount("width", _("width"), "size", "12 in", "300 mm"),
    amount("depth", _("depth"), "size", "20 in", "500 mm", _("Top face to bottom face.")),
    bars("bars", _("bottom bars"), "3 #6", "3 x 20 mm", _("Number and size.")),
    bars("top_bars", _("top bars"), "none", "none", _("Number and size.")),
    amount(
        "cover",
        _("cover"),
        "size",
        "1.5 in",
        "40 mm",
        _("Clear concrete over the stirrups, over the bars where there are none."),
        "bottom.cover",
    ),
    amount(
        "top_cover",
        _("cover above"),
        "size",
        "",
        "",
        _("As `cover` unless typed."),
        "top.cover",
    ),
    amount(
        "drop",
        _("bottom bars dropped by"),
        "size",
        "0 in",
        "0 mm",
        _("How far the bars sagged before the concrete set."),
        "bottom.drop",
    ),
    amount(
        "top_drop",
        _("top bars dropped by"),
        "size",
        "0 in",
        "0 mm",
        _("Trodden down."),
        "top.drop",
    ),
    _gap("left_gap", _("bottom bars start from the left end"), "bottom.left_gap"),
    _gap("right_gap", _("bottom bars stop from the right end"), "bottom.right_gap"),
    _gap("top_left_gap", _("top bars start from the left end"), "top.left_gap"),
    _gap("top_right_gap", _("top bars stop from the right end"), "top.right_gap"),
    bar_size("stirrups", _("stirrups"), STIRRUP_SIZES, "#3", "10 mm", "", "stirrup"),
    *materials(),
    amount(
        "dead",
        _("spread load"),
        "line_load",
        "0 kip/ft",
        "0 kN/m",
        _("All that lies on the whole length, own weight apart; no load factors."),
        "uniform_load",
    ),
    point_loads("point_load", _("point loads"), _("Up to three; places from the left end.")),
    own_weight(),
    amount("overhang_left", _("left end past its support"), "length", "0 ft", "0 m"),
    amount("overhang_right", _("right end past its support"), "length", "0 ft", "0 m"),
    *rules("dry"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = SHARED | {
    "length": "span",
    "l": "span",
    "rebar": "bars",
    "bottom_bars": "bars",
    "bottom": "bars",
    "top": "top_bars",
    "reinforcement": "bars",
    "sag": "drop",
    "trodden": "top_drop",
    "load": "dead",
    "live": "dead",
    "uniform_load": "dead",
    "spread_load": "dead",
    "loads": "point_load",
    "point_loads": "point_load",
    "overhang": "overhang_left",
}


def _made(v: Reading) -> beams.SimpleBeam:
    plain = v.plain
    below, above = plain.pop("bottom"), plain.pop("top")
    return beams.SimpleBeam(
        **plain,
        loads=_loads(v),
        bottom=LaidBars(**below, **_counted(v, "bars"), face="bottom"),
        top=LaidBars(**above, **_counted(v, "top_bars"), face="top"),
    )


def _counted(v: Reading, name: str) -> dict:
    note = v[name] or BarCount(0, v.unlaid)
    return {"size": note.size, "number": note.count}


def _loads(v: Reading) -> tuple[beams.PointLoad, ...]:
    typed = tuple(beams.PointLoad(load.force, load.position) for load in v["point_load"])
    # the structure always holds a point load: here one of nothing, in mid-span
    return typed or (beams.PointLoad(0.0, v["overhang_left"] + v["span"] / 2),)


def _compound(beam: beams.SimpleBeam) -> dict:
    loads = (PointLoad(load.force, load.at) for load in beam.loads if load.force)
    return {
        "bars": BarCount(beam.bottom.number, beam.bottom.size),
        "top_bars": BarCount(beam.top.number, beam.top.size),
        "point_load": tuple(loads),
    }


def _bare(beam: beams.SimpleBeam) -> tuple[str, ...]:
    return tuple(face for face in ("bottom", "top") if not getattr(beam, face).number)


FORM = Form(
    "SimpleBeam",
    beams.SimpleBeam,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={
        "loads*": "point_load",
        "bottom.size": "bars",
        "bottom.number": "bars",
        "top.size": "top_bars",
        "top.number": "top_bars",
    },
    follows={"top_cover": "cover"},
    bare=_bare,
)
