"""What can be typed of a pulled member, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, switch, whole, word
from crackkit.sandbox.bar_arguments import arranged
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.shared_inputs import materials, rules, shared_words
from crackkit.structures import tension_member as ties
from crackkit.structures.tie_bars import ARRANGEMENTS
from crackkit.units.bar_notes import BarCount
from crackkit.words import _


def _size(name, label, us, si, help=""):
    return amount(name, label, "size", us, si, help)


ARGUMENTS = (
    amount("pull", _("pull"), "force", "14 kip", "60 kN", _("At both ends, along the member.")),
    amount(
        "before",
        _("pulled before, up to"),
        "force",
        "0 kip",
        "0 kN",
        _("Greatest pull so far: its cracks stay when the pull lets go."),
    ),
    arranged(
        "bars",
        _("bars"),
        "4 #4",
        "4 x 12 mm",
        [count for count, _label in ARRANGEMENTS],
        _("Number and size."),
    ),
    word("surface", _("surface of the bars"), ties.SURFACES, "ribbed", "ribbed"),
    word("bond", _("bond"), ties.BONDS, "good", "good", _("Where they lay in the pour.")),
    word("ends", _("pulled by"), ties.ENDS, "bars", "bars", _("What is taken hold of.")),
    _size("cover", _("cover"), "1.5 in", "25 mm", _("Clear concrete over the bars.")),
    _size("width", _("width"), "6 in", "150 mm", _("Of the cross-section.")),
    _size("depth", _("depth"), "6 in", "150 mm", _("Of the cross-section.")),
    amount("length", _("length"), "length", "5 ft", "1.5 m", _("Of the concrete.")),
    amount(
        "shrinkage",
        _("shrinks before the pull by"),
        "strain",
        "0 millionths",
        "0 ‰",
        _("Free shortening of the concrete; the bars hold it back."),
    ),
    amount("scatter", _("scatter of its strength"), "ratio", "0.1", "0.1", _("0.05 to 0.15.")),
    whole("seed", _("which concrete"), 1, _("Another number, another mix from the truck.")),
    switch("beside", _("ten of them side by side"), False, _("Each of other concrete.")),
    *materials(),
    *rules("dry"),
)
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = shared_words(ARGUMENTS) | {
    "force": "pull",
    "load": "pull",
    "tension": "pull",
    "axial": "pull",
    "greatest": "before",
    "rebar": "bars",
    "reinforcement": "bars",
    "number": "bars",
    "size": "bars",
    "grip": "ends",
    "pulled_by": "ends",
    "span": "length",
    "l": "length",
    "shrink": "shrinkage",
    "mix": "seed",
    "siblings": "beside",
}


def _made(v: Reading) -> ties.TensionMember:
    note = v["bars"] or BarCount(0, v.unlaid)
    return ties.TensionMember(**v.plain, number=note.count, size=note.size)


def _compound(tie: ties.TensionMember) -> dict:
    return {"bars": BarCount(tie.number, tie.size)}


FORM = Form(
    "TensionMember",
    ties.TensionMember,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={"number": "bars", "size": "bars"},
)
