"""What can be typed of a floor over several spans, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, bar_size, exact, switch, word
from crackkit.sandbox.bar_arguments import bar_row
from crackkit.sandbox.floor_making import compound, made
from crackkit.sandbox.forms import Form
from crackkit.sandbox.lists import Amounts, Lettered, Numbered, TwoWords
from crackkit.sandbox.load_arguments import Travelling, spread
from crackkit.sandbox.shapes import shape_of
from crackkit.sandbox.shared_inputs import MEANT as SHARED
from crackkit.sandbox.shared_inputs import materials, own_weight, rules
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures import continuous_beam as floors
from crackkit.structures.laid_bars import STIRRUP_SIZES
from crackkit.words import _


def _size(name, label, us, si, path="", help=""):
    return amount(name, label, "size", us, si, help, path)


def _lengths(name, label, each, us, si, path="", help="", shares=True):
    return Amounts(name, label, {"US": us, "SI": si}, help, path, "length", each, shares)


def _both(value):
    return {"US": value, "SI": value}


_REACH = _("From the support into the span; one for all supports, or one for each.")
_GAP = _("From the support into the span, below zero past it; one for all spans, or one for each.")

ARGUMENTS = (
    _lengths(
        "spans",
        _("spans"),
        _("span {n}"),
        "3 x 16 ft",
        "3 x 5 m",
        "spans.*.length",
        _("From support to support, two to six."),
        shares=False,
    ),
    TwoWords("ends", _("ends"), _both("pinned"), _("Left and right."), "", floors.ENDS),
    word(
        "shape",
        _("looked at as"),
        floors.SHAPES,
        "slab",
        "slab",
        _("As the bars say, unless typed."),
    ),
    _size("width", _("width"), "12 in", "1000 mm", "", _("Of the beam, or of the strip of slab.")),
    _size("depth", _("depth"), "8 in", "200 mm", "", _("Top face to bottom face.")),
    _size("flange_width", _("width of slab that helps"), "3 ft", "1000 mm"),
    _size("flange_depth", _("depth of that slab"), "4 in", "100 mm"),
    spread("dead", _("dead load"), help=_("Always there, own weight apart."), path="dead_load"),
    spread("live", _("live load"), help=_("On every span where it stands."), path="live_load"),
    Travelling("travelling", _("travelling load"), _both("none"), _("Judged at every place.")),
    Numbered("live_on", _("live load shown on spans"), _both("all"), _("All count in any case.")),
    own_weight(),
    switch("shifted", _("cracks shift the moments"), False),
    Lettered("settled", _("supports have sunk"), _both("none"), _("B 10 mm; A is the first.")),
    bar_row("bottom", _("bottom bars"), "#4 @ 8 in", "12 @ 200 mm", _("For all spans, or each.")),
    bar_row("top", _("top bars"), "#4 @ 8 in", "12 @ 200 mm", _("For all supports, or each.")),
    _size("cover", _("cover"), "0.75 in", "30 mm", "bottom.cover", _("Clear concrete over steel.")),
    _size("top_cover", _("cover above"), "", "", "top.cover", _("As `cover` unless typed.")),
    _size("drop", _("bottom bars dropped by"), "0 in", "0 mm", "bottom.drop"),
    _size("top_drop", _("top bars dropped by"), "0 in", "0 mm", "top.drop", _("Trodden down.")),
    _lengths("top_reach", _("top bars reach"), _("reach at support {letter}"), "", "", help=_REACH),
    _lengths(
        "top_left_reach",
        _("top bars reach left"),
        _("left reach at support {letter}"),
        "",
        "",
        "supports.*.left_reach",
        _("As `top_reach` unless typed."),
    ),
    _lengths(
        "top_right_reach",
        _("top bars reach right"),
        _("right reach at support {letter}"),
        "",
        "",
        "supports.*.right_reach",
        _("As `top_reach` unless typed."),
    ),
    _lengths(
        "left_gap",
        _("bottom bars start from the left support"),
        _("left gap of span {n}"),
        "0 ft",
        "0 m",
        "spans.*.left_gap",
        _GAP,
    ),
    _lengths(
        "right_gap",
        _("bottom bars stop from the right support"),
        _("right gap of span {n}"),
        "0 ft",
        "0 m",
        "spans.*.right_gap",
        _GAP,
    ),
    switch("through", _("the same bars everywhere"), False),
    bar_size("stirrups", _("stirrups"), STIRRUP_SIZES, "#3", "8 mm", "", "stirrup"),
    *materials(),
    *rules("dry"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = SHARED | {
    "span": "spans",
    "length": "spans",
    "lengths": "spans",
    "load": "live",
    "dead_load": "dead",
    "live_load": "live",
    "uniform_load": "dead",
    "spread_load": "dead",
    "point_load": "travelling",
    "point_loads": "travelling",
    "loads": "travelling",
    "moving_load": "travelling",
    "bars": "bottom",
    "rebar": "bottom",
    "reinforcement": "bottom",
    "bottom_bars": "bottom",
    "top_bars": "top",
    "reach": "top_reach",
    "left_reach": "top_left_reach",
    "right_reach": "top_right_reach",
    "trodden": "top_drop",
    "sag": "drop",
    "settlement": "settled",
    "sunk": "settled",
    "left_end": "ends",
    "right_end": "ends",
    "pattern": "live_on",
    "redistribution": "shifted",
    "flange": "flange_width",
    "web": "width",
}
# Of a beam instead of a slab.
_BEAM = {
    "US": {"width": "12 in", "depth": "20 in", "bottom": "3 #6", "top": "3 #6", "cover": "1.5 in"},
    "SI": {
        "width": "300 mm",
        "depth": "500 mm",
        "bottom": "3 x 20 mm",
        "top": "3 x 20 mm",
        "cover": "40 mm",
    },
}


def _suited(typed: dict, system: str) -> dict:
    shape = shape_of(typed, BY_NAME)
    found = {} if shape == "slab" else dict(_BEAM[system])
    return found | {"shape": shape, "top_reach": _reach(typed, system)}


def _reach(typed: dict, system: str) -> str:
    """Three tenths of the longest span, common practice; no further than the shortest."""
    try:
        spans = BY_NAME["spans"].read(typed.get("spans", BY_NAME["spans"].assumed[system]))
    except WrongInput:
        return exact(0.0, "length", system)  # the message about it comes when it is read in turn
    step = {"US": 76.2, "SI": 50.0}[system]
    return exact(min(0.3 * max(spans), min(spans)) // step * step, "length", system)


def _bare(floor: floors.ContinuousBeam) -> tuple[str, ...]:
    layers = {"bottom": floor.bottom_bars, "top": floor.top_bars}
    return tuple(face for face, rows in layers.items() if not any(row.number for row in rows))


FORM = Form(
    "ContinuousBeam",
    floors.ContinuousBeam,
    ARGUMENTS,
    MEANT,
    made,
    compound,
    typed_as={
        "spans": "spans",
        "spans.*.number": "bottom",
        "spans.*.laid": "bottom",
        "supports.*.number": "top",
        "supports.*.laid": "top",
        "supports.*.sunk": "settled",
        "loads*": "travelling",
        "left_end": "ends",
        "right_end": "ends",
    }
    | {f"{face}.{one}": face for face in ("top", "bottom") for one in ("size", "spacing")},
    follows={
        "top_cover": "cover",
        "top_left_reach": "top_reach",
        "top_right_reach": "top_reach",
    },
    suited=_suited,
    bare=_bare,
)
