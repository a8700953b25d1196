"""What can be typed of a strip whose bars are to be chosen, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, switch, word
from crackkit.sandbox.bar_arguments import laid, mat_or_bars
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.shapes import fitting, shape_of
from crackkit.sandbox.shared_inputs import materials, rules, shared_words
from crackkit.structures import control_ranges as ranges
from crackkit.structures import crack_control as controls
from crackkit.structures.durability import AIR_CHOICES
from crackkit.structures.strip_stress import BENT, PULLED
from crackkit.units.bar_notes import BarCount, BarSpacing
from crackkit.words import _

LOADS = ("steel_stress", "moment", "pull")
MEASURED = {"f_R1", "f_R3"}
_ALONE = _("In a crack, fibres left out; the load follows from it and from the bars.")
_ON_STRIP = _("On the strip; no load factors.")
_TESTED = _("As measured by EN 14651; typed, it counts instead of an indicative dose.")


def _size(name, label, us, si, help=""):
    return amount(name, label, "size", us, si, help)


def _measured(name, us, si, path):
    return amount(
        name, _("{name} of the fibres").format(name=name), "strength", us, si, _TESTED, path
    )


ARGUMENTS = (
    mat_or_bars("bars", _("bars"), "#4 @ 6 in", "12 @ 150 mm", _("Spacing, or number.")),
    word("rows", _("layers"), ranges.ROWS, "both", "both", _("Of what is pulled straight.")),
    mat_or_bars(
        "across",
        _("bars across"),
        "#4 @ 8 in",
        "10 @ 200 mm",
        _("The other bars of the mat: a spacing, or none."),
        "cross_size",  # tells when it means anything; the note sets size and spacing
    ),
    word("outer", _("nearest to the face lie"), ranges.OUTER, "main", "main"),
    switch("both_ways", _("loaded the same both ways"), False),
    _size("cover", _("cover"), "1.5 in", "40 mm", _("Clear concrete over the outermost bars.")),
    _size("slack", _("they may lie off by"), "0 in", "0 mm", _("Deeper, or nearer to the face.")),
    word("fibres", _("fibres"), ranges.DOSES, "none", "none", _("Doses are indicative.")),
    _measured("f_R1", "350 psi", "2.4 MPa", "residual_1"),
    _measured("f_R3", "335 psi", "2.3 MPa", "residual_3"),
    amount(
        "steel_stress", _("pull in the main bars"), "stress", "30 ksi", "200 MPa", _ALONE, "stress"
    ),
    amount("moment", _("moment"), "moment", "8 kip·ft", "30 kN·m", _ON_STRIP),
    amount("pull", _("pull"), "force", "20 kip", "300 kN", _ON_STRIP),
    word("action", _("what stretches it"), ranges.ACTIONS, BENT, BENT),
    word(
        "shape",
        _("looked at as"),
        ranges.SHAPES,
        "slab",
        "slab",
        _("As the bars say, if not typed."),
    ),
    _size("width", _("width"), "12 in", "1000 mm", _("Of the beam, or of the strip of slab.")),
    _size("depth", _("depth"), "8 in", "200 mm", _("Face to face.")),
    _size("stones", _("largest stones"), "3/4 in", "20 mm", _("They must pass the bars.")),
    *materials(),
    word("air", _("air at the face"), AIR_CHOICES, "roofed", "roofed"),
    amount("curing", _("kept moist for"), "time", "7 d", "7 d", _("After the pour.")),
    *rules("moist"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = shared_words(ARGUMENTS) | {
    "rebar": "bars",
    "reinforcement": "bars",
    "mat": "bars",
    "mesh": "bars",
    "spacing": "bars",
    "size": "bars",
    "number": "bars",
    "layers": "rows",
    "cross": "across",
    "cross_bars": "across",
    "distribution": "across",
    "tolerance": "slack",
    "deviation": "slack",
    "fibers": "fibres",
    "fiber": "fibres",
    "fibre": "fibres",
    "dose": "fibres",
    "fr1": "f_R1",
    "f_r1": "f_R1",
    "fr3": "f_R3",
    "f_r3": "f_R3",
    "stress": "steel_stress",
    "fs": "steel_stress",
    "f_s": "steel_stress",
    "sigma_s": "steel_stress",
    "load": "moment",
    "bending": "moment",
    "force": "pull",
    "tension": "pull",
    "axial": "pull",
    "aggregate": "stones",
    "cured": "curing",
    "cure": "curing",
}
# Of a beam instead of a slab.
_BEAM = {
    "US": {"width": "12 in", "depth": "18 in", "bars": "4 #5", "moment": "60 kip·ft"},
    "SI": {"width": "300 mm", "depth": "450 mm", "bars": "4 x 16 mm", "moment": "80 kN·m"},
}
# Of what is pulled instead of bent: more bars, since all of the concrete lets go at once.
_PULLED = {"US": {}, "SI": {"bars": "12 @ 100 mm"}}


def _suited(typed: dict, system: str) -> dict:
    """Counted bars make a beam, a pull one that is pulled, measured strengths tested fibres."""
    shape = shape_of(typed, BY_NAME, ("bars",))
    pulled = "pull" in typed or typed.get("action") == PULLED
    found = {"shape": shape, "action": PULLED if pulled else BENT}
    if pulled:
        found |= _PULLED[system]
    if shape == "beam":
        found |= _BEAM[system]
    if typed.keys() & MEASURED:
        found["fibres"] = "tested"
    return found


def _made(v: Reading) -> controls.CrackControl:
    if v["bars"] is None:
        raise v.wrong("bars", _("bars are to be chosen here, so there must be some"))
    across = laid(fitting(v, "across", v["across"]) if v["shape"] == "slab" else None, "none")
    spacing = {"cross_spacing": across["spacing"]} if "spacing" in across else {}
    return controls.CrackControl(
        **v.plain
        | laid(fitting(v, "bars", v["bars"]), v.unlaid)
        | {"cross_size": across["size"], "given": _given(v)}
        | spacing
    )


def _given(v: Reading) -> str:
    """Tell what is given: a moment or a pull that was typed counts instead of the stress."""
    bent = v["action"] == BENT
    if bent and "pull" in v.typed:
        raise v.wrong("pull", _("bending is given by a moment; or type action='pulled'"))
    if not bent and "moment" in v.typed:
        raise v.wrong("moment", _("a straight pull has none: type pull, or action='bent'"))
    return "load" if v.typed.keys() & {"moment", "pull"} else "stress"


def _compound(it: controls.CrackControl) -> dict:
    across = BarSpacing(it.cross_size, it.cross_spacing)
    return {
        "bars": BarSpacing(it.size, it.spacing)
        if ranges.is_slab(it)
        else BarCount(it.number, it.size),
        "across": across if ranges.has_across(it) else BarCount(0, it.cross_size),
    }


FORM = Form(
    "CrackControl",
    controls.CrackControl,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={"size": "bars", "number": "bars", "spacing": "bars", "cross_*": "across"},
    suited=_suited,
    rivals=LOADS,
)
