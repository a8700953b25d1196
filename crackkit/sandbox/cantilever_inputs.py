"""What can be typed of a cantilever, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, bar_size, exact, switch, word
from crackkit.sandbox.bar_arguments import laid, mat_or_bars
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.load_arguments import Load, point_loads, spread
from crackkit.sandbox.shapes import fitting, shape_of, taken_load
from crackkit.sandbox.shared_inputs import MEANT as SHARED
from crackkit.sandbox.shared_inputs import materials, own_weight, rules
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures import cantilever as arms
from crackkit.structures.anchored_bars import AnchoredBars, bar_count, is_slab
from crackkit.structures.laid_bars import STIRRUP_SIZES
from crackkit.units.bar_notes import BarCount, BarSpacing, PointLoad
from crackkit.words import _

_BACK = _("From the root back to the end of the bars, or to the outside of the hook.")


def _size(name, label, us, si, path="", help=""):
    return amount(name, label, "size", us, si, help, path)


ARGUMENTS = (
    amount("overhang", _("overhang"), "length", "5 ft", "1.5 m", _("From the root to the tip.")),
    word("back", _("grows out of"), arms.BACKS, "wall", "wall", _("What holds the root.")),
    _size("wall", _("wall thickness"), "12 in", "300 mm"),
    amount("back_span", _("span behind"), "length", "13 ft", "4 m"),
    word(
        "shape", _("looked at as"), arms.SHAPES, "slab", "slab", _("As the bars say, unless typed.")
    ),
    _size("width", _("width"), "12 in", "1000 mm", "", _("Of the beam, or of the strip of slab.")),
    _size("depth", _("depth at the root"), "8 in", "200 mm"),
    _size("tip_depth", _("depth at the tip"), "", "", "", _("As `depth` unless typed.")),
    spread("load", _("spread load"), help=_("On the arm, own weight apart."), path="uniform_load"),
    spread("back_load", _("spread load behind"), path="back_load"),
    point_loads("point_load", _("point loads"), _("Up to two; places from the root outwards.")),
    own_weight(),
    mat_or_bars("top", _("top bars"), "#4 @ 6 in", "12 @ 150 mm", _("Spacing, or number.")),
    mat_or_bars("bottom", _("bottom bars"), "none", "none", _("Spacing, or number.")),
    _size("cover", _("cover"), "1.5 in", "30 mm", "top.cover", _("Clear concrete over steel.")),
    _size("bottom_cover", _("cover below"), "", "", "bottom.cover", _("As `cover`.")),
    _size("trodden", _("top bars trodden down by"), "0 in", "0 mm", "top.drop"),
    _size("bottom_drop", _("bottom bars sagged by"), "0 in", "0 mm", "bottom.drop"),
    _size("behind", _("top bars reach back past the root"), "", "", "top.behind", _BACK),
    _size("bottom_behind", _("bottom bars reach back"), "", "", "bottom.behind", _BACK),
    switch("hook", _("top bars hooked back there"), True, "", "top.hooked"),
    switch("bottom_hook", _("bottom bars hooked back there"), False, "", "bottom.hooked"),
    _size("tip_gap", _("top bars stop from the tip"), "1.5 in", "40 mm", "top.tip_gap"),
    _size("bottom_tip_gap", _("bottom bars stop from the tip"), "", "", "bottom.tip_gap"),
    bar_size("stirrups", _("stirrups"), STIRRUP_SIZES, "#3", "8 mm", "", "stirrup"),
    *materials(),
    *rules("moist"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = SHARED | {
    "span": "overhang",
    "length": "overhang",
    "arm": "overhang",
    "dead": "load",
    "live": "load",
    "uniform_load": "load",
    "spread_load": "load",
    "loads": "point_load",
    "point_loads": "point_load",
    "bars": "top",
    "top_bars": "top",
    "rebar": "top",
    "reinforcement": "top",
    "bottom_bars": "bottom",
    "top_cover": "cover",
    "top_drop": "trodden",
    "drop": "trodden",
    "anchorage": "behind",
    "embedment": "behind",
    "hooked": "hook",
    "wall_thickness": "wall",
    "back_dead": "back_load",
    "taper": "tip_depth",
}
# Of a beam instead of a slab.
_BEAM = {
    "US": {"width": "12 in", "depth": "18 in", "top": "3 #6", "cover": "1.5 in"},
    "SI": {"width": "300 mm", "depth": "450 mm", "top": "3 x 20 mm", "cover": "40 mm"},
}
_SPARE = {"US": 1.5 * 25.4, "SI": 40.0}  # mm of concrete behind the bars


def _suited(typed: dict, system: str) -> dict:
    shape = shape_of(typed, BY_NAME)
    found = {} if shape == "slab" else dict(_BEAM[system])
    floor = typed.get("back", "floor" if "back_span" in typed else "wall") != "wall"
    found |= {"shape": shape, "back": "floor" if floor else "wall", "hook": not floor}
    return found | {"behind": _behind(typed, system, floor)}


def _behind(typed: dict, system: str, floor: bool) -> str:
    """As far back as the wall allows; into a floor half as far again as the arm is long."""
    texts = {n: typed.get(n, BY_NAME[n].assumed[system]) for n in ("overhang", "wall", "back_span")}
    try:
        overhang, wall, span = (BY_NAME[name].read(text) for name, text in texts.items())
    except WrongInput:
        return exact(0.0, "size", system)  # the message about it comes when it is read in turn
    back = min(1.5 * overhang, span - _SPARE[system]) if floor else wall - _SPARE[system]
    step = {"US": 6.35, "SI": 10.0}[system]
    return exact(max(back, 0.0) // step * step, "size", system)


def _made(v: Reading) -> arms.Cantilever:
    plain = v.plain
    above, below = plain.pop("top"), plain.pop("bottom")
    plain |= {"uniform_load": taken_load(v, "load"), "back_load": taken_load(v, "back_load")}
    return arms.Cantilever(
        **plain,
        loads=_loads(v),
        top=AnchoredBars(**above, **laid(fitting(v, "top", v["top"]), v.unlaid), face="top"),
        bottom=AnchoredBars(
            **below, **laid(fitting(v, "bottom", v["bottom"]), v.unlaid), face="bottom"
        ),
    )


def _loads(v: Reading) -> tuple[arms.ArmLoad, ...]:
    typed = tuple(arms.ArmLoad(load.force, load.position) for load in v["point_load"])
    # the structure always holds a point load: here one of nothing, at the tip
    return typed or (arms.ArmLoad(0.0, v["overhang"]),)


def _compound(arm: arms.Cantilever) -> dict:
    loads = (PointLoad(load.force, load.from_root) for load in arm.loads if load.force)
    return {
        "top": _note(arm, arm.top),
        "bottom": _note(arm, arm.bottom),
        "load": Load(arm.uniform_load),
        "back_load": Load(arm.back_load),
        "point_load": tuple(loads),
    }


def _note(arm: arms.Cantilever, bars: AnchoredBars):
    if not is_slab(arm):
        return BarCount(bars.number, bars.size)
    return BarSpacing(bars.size, bars.spacing) if bars.laid else BarCount(0, bars.size)


def _bare(arm: arms.Cantilever) -> tuple[str, ...]:
    return tuple(face for face in ("top", "bottom") if not bar_count(arm, getattr(arm, face)))


FORM = Form(
    "Cantilever",
    arms.Cantilever,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={"loads*": "point_load"}
    | {
        f"{face}.{one}": face for face in ("top", "bottom") for one in ("size", "number", "spacing")
    },
    follows={
        "tip_depth": "depth",
        "bottom_cover": "cover",
        "bottom_behind": "behind",
        "bottom_tip_gap": "tip_gap",
    },
    suited=_suited,
    bare=_bare,
)
