"""What can be typed of a simple beam, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, bar_size, bars, point_loads, switch, word
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures import simple_beam as beams
from crackkit.structures.fields import InputError
from crackkit.structures.laid_bars import STIRRUP_SIZES, LaidBars
from crackkit.units import explain
from crackkit.words import _

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
    ),
    amount("top_cover", _("cover above"), "size", "", "", _("As `cover` unless typed.")),
    amount(
        "drop",
        _("bottom bars dropped by"),
        "size",
        "0 in",
        "0 mm",
        _("How far the bars sagged before the concrete set."),
    ),
    amount("top_drop", _("top bars dropped by"), "size", "0 in", "0 mm", _("Trodden down.")),
    amount("left_gap", _("bottom bars start from the left end"), "length", "2 in", "50 mm"),
    amount("right_gap", _("bottom bars stop from the right end"), "length", "2 in", "50 mm"),
    amount("top_left_gap", _("top bars start from the left end"), "length", "2 in", "50 mm"),
    amount("top_right_gap", _("top bars stop from the right end"), "length", "2 in", "50 mm"),
    bar_size("stirrups", _("stirrups"), STIRRUP_SIZES, "#3", "10 mm"),
    amount(
        "concrete",
        _("concrete strength"),
        "strength",
        "4000 psi",
        "30 MPa",
        _("Cylinder strength."),
    ),
    amount("steel", _("steel yields at"), "stress", "60 ksi", "500 MPa"),
    amount(
        "dead",
        _("spread load"),
        "line_load",
        "0 kip/ft",
        "0 kN/m",
        _("All that lies on the whole length, own weight apart; no load factors."),
    ),
    point_loads("point_load", _("point loads"), _("Up to three; places from the left end.")),
    switch("own_weight", _("own weight"), _("Count the weight of the beam itself.")),
    amount("overhang_left", _("left end past its support"), "length", "0 ft", "0 m"),
    amount("overhang_right", _("right end past its support"), "length", "0 ft", "0 m"),
    word("exposure", _("place and use"), beams.EXPOSURES, "dry", "dry"),
    word("duration", _("the load stays"), beams.DURATIONS, "short", "short"),
    word("code", _("rules of"), beams.CODES, "ACI", "EN"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = {
    "length": "span",
    "l": "span",
    "b": "width",
    "h": "depth",
    "height": "depth",
    "rebar": "bars",
    "bottom_bars": "bars",
    "reinforcement": "bars",
    "sag": "drop",
    "load": "dead",
    "live": "dead",
    "uniform_load": "dead",
    "spread_load": "dead",
    "self_weight": "own_weight",
    "loads": "point_load",
    "point_loads": "point_load",
    "stirrup": "stirrups",
    "ties": "stirrups",
    "links": "stirrups",
    "strength": "concrete",
    "fc": "concrete",
    "f_c": "concrete",
    "fy": "steel",
    "f_y": "steel",
    "yield_strength": "steel",
    "units": "system",
    "overhang": "overhang_left",
    "use": "exposure",
}

# Where each input of the structure was typed.
_TYPED_AS = {
    "uniform_load": "dead",
    "self_weight": "own_weight",
    "stirrup": "stirrups",
    "strength": "concrete",
    "yield_strength": "steel",
    "bottom.size": "bars",
    "bottom.number": "bars",
    "bottom.cover": "cover",
    "bottom.drop": "drop",
    "bottom.left_gap": "left_gap",
    "bottom.right_gap": "right_gap",
    "top.size": "top_bars",
    "top.number": "top_bars",
    "top.cover": "top_cover",
    "top.drop": "top_drop",
    "top.left_gap": "top_left_gap",
    "top.right_gap": "top_right_gap",
}
_METRIC_SIZES = {"US": "#4", "SI": "12"}  # of a layer with no bars; it changes nothing


def argument_at(path: str) -> str:
    """Give the argument that sets an input of the structure."""
    if path.startswith("loads"):
        return "point_load"
    return _TYPED_AS.get(path, path)


def structure_from(texts: dict, typed: dict, system: str) -> beams.SimpleBeam:
    """Read all arguments and make the structure.

    Parameters
    ----------
    texts : dict
        What is taken for each argument, typed or assumed.
    typed : dict
        What was really typed, for the messages.
    system : str
        ``"SI"`` or ``"US"``, for the messages.

    Raises
    ------
    WrongInput
        If something cannot be read or is outside its range.
    """
    values = {name: BY_NAME[name].read(text) for name, text in texts.items()}
    try:
        return _structure(values, system)
    except InputError as error:
        raise _in_words(error, texts, typed, system) from None


def _in_words(error: InputError, texts: dict, typed: dict, system: str) -> WrongInput:
    name = argument_at(error.path)
    if name == "top_cover" and name not in typed:
        name = "cover"
    said = f"{name}={texts[name]!r}"
    if name not in typed:
        said += _(" (assumed)")
    return WrongInput(f"{said}: {explain(error, system)}", name, typed.get(name))


def _structure(v: dict, system: str) -> beams.SimpleBeam:
    return beams.SimpleBeam(
        span=v["span"],
        width=v["width"],
        depth=v["depth"],
        uniform_load=v["dead"],
        self_weight=v["own_weight"],
        loads=_loads(v),
        bottom=_layer(v, "bars", "cover", "", "bottom", system),
        top=_layer(v, "top_bars", "top_cover", "top_", "top", system),
        stirrup=v["stirrups"],
        strength=v["concrete"],
        yield_strength=v["steel"],
        overhang_left=v["overhang_left"],
        overhang_right=v["overhang_right"],
        exposure=v["exposure"],
        duration=v["duration"],
        code=v["code"],
    )


def _layer(v: dict, note: str, cover: str, prefix: str, face: str, system: str) -> LaidBars:
    laid = v[note]
    return LaidBars(
        size=laid.size if laid else _METRIC_SIZES[system],
        number=laid.count if laid else 0,
        cover=v[cover],
        drop=v[f"{prefix}drop"],
        left_gap=v[f"{prefix}left_gap"],
        right_gap=v[f"{prefix}right_gap"],
        face=face,
    )


def _loads(v: dict) -> tuple[beams.PointLoad, ...]:
    typed = tuple(beams.PointLoad(load.force, load.position) for load in v["point_load"])
    # the structure always holds a point load: here one of nothing, in mid-span
    return typed or (beams.PointLoad(0.0, v["overhang_left"] + v["span"] / 2),)
