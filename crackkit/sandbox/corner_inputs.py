"""What can be typed of a slab or wall with an inside corner, and how it becomes the structure."""

from crackkit.sandbox.arguments import amount, switch, whole, word
from crackkit.sandbox.bar_arguments import mat_or_bars
from crackkit.sandbox.corner_arguments import PlacedBars, off_corner, place, sides
from crackkit.sandbox.forms import Form, Reading
from crackkit.sandbox.shared_inputs import materials, rules, shared_words
from crackkit.structures import corner_ranges as ranges
from crackkit.structures import corner_slab as slabs
from crackkit.structures.corner_shapes import SHAPES, TURNS, usual_sizes
from crackkit.structures.fields import InputError
from crackkit.units.bar_notes import BarCount, BarSpacing
from crackkit.words import _

PIECES = {
    "cut": "corner",
    "hole": "opening",
    "column": "column",
    "door": "door",
    "tee": "depot",
}
"""Arguments that say what is missing, and the shape that each of them makes."""
MEASURED = {"f_R1", "f_R3"}
USUAL_OFF = {"US": 50.8, "SI": 50.0}
"""How far bars lie off a corner or a side where nobody says it [mm]."""


def _length(name, label, us, si, help="", path=""):
    return amount(name, label, "length", us, si, help, path)


def _size(name, label, us, si, help="", path=""):
    return amount(name, label, "size", us, si, help, path)


def _share(name, label, assumed, help="", path=""):
    return amount(name, label, "ratio", assumed, assumed, help, path)


def _measured(name, us, si, path):
    label, help = _("{name} of the fibres").format(name=name), _("As measured by EN 14651.")
    return amount(name, label, "strength", us, si, help, path)


def _rules():
    """A slab that dries carries no load here: there is none whose duration could matter."""
    return (argument for argument in rules("moist") if argument.name != "duration")


_SHAPE = (
    word("shape", _("it is"), SHAPES, "corner", "corner", _("As what is missing says.")),
    _length("length", _("length"), "20 ft", "6 m", _("From end to end, the missing piece too.")),
    _length("width", _("width"), "20 ft", "6 m", _("From side to side; of a wall its height.")),
    _size("thickness", _("thickness"), "6 in", "150 mm"),
    sides("cut", _("missing quarter"), "10 ft", "3 m", _("Of an L: along x across.")),
    sides("hole", _("hole"), "4 ft", "1.2 m", _("Along x across.")),
    sides("column", _("box-out round a column"), "2 ft", "600 mm", _("Its side."), square=True),
    sides("door", _("door"), "3 ft x 7 ft", "1 m x 2.1 m", _("Width x height.")),
    sides("tee", _("missing twice"), "6 ft x 6.5 ft", "1.8 m x 2 m", _("Beside the stem of a T.")),
    _length("box", _("box-out in the T"), "20 in", "500 mm", _("Its side.")),
    place("place", _("its middle"), _("From the left end and the near side."), "cut_x*"),
    _size("rounding", _("radius of its corners"), "0 in", "0 mm", _("0 is sharp.")),
    word("turn", _("the box-out is"), TURNS, "square", "square"),
    whole("look", _("look at corner"), 0, _("By its number; 0: where it is pulled hardest.")),
)
_HELD = (
    word("held", _("held by"), slabs.HELD, "edges", "edges"),
    _share("holds", _("held fast"), "0.12", _("0 gives way, 1 cannot move.")),
    word("base", _("lies on"), slabs.BASE_CHOICES, "gravel", "gravel", "", "drag"),
)
_BARS = (
    off_corner("diagonals", _("diagonal bars"), _("At each inside corner, across the crack.")),
    _size("apart", _("one of them every"), "4 in", "100 mm", "", "diagonal_apart"),
    _length("long", _("length of each"), "4 ft", "1.2 m", "", "diagonal_length"),
    off_corner("edges", _("bars along the sides"), _("Beside both sides of each corner.")),
    _length("past", _("past the corner by"), "2 ft", "600 mm", "", "edge_past"),
    mat_or_bars("bars", _("mat"), "none", "none", _("Both ways, everywhere: a spacing, or none.")),
    _size("cover", _("cover"), "1.5 in", "40 mm", _("Clear concrete above all bars.")),
    word("fibres", _("fibres"), ranges.DOSES, "none", "none", _("Doses are indicative.")),
    _measured("f_R1", "350 psi", "2.4 MPa", "residual_1"),
    _measured("f_R3", "335 psi", "2.3 MPa", "residual_3"),
)
_JOINT = (
    word("joint", _("from the corner runs"), slabs.JOINTS, "none", "none"),
    _share("saw_depth", _("cut to this share of the depth"), "0.25", "", "cut_depth"),
    _length("saw_length", _("length of the cut"), "6 ft", "2 m", _("From the corner.")),
)
_DRYING = (
    _share("humidity", _("humidity of the air"), "0.5", _("0.5 is a heated building.")),
    amount("curing", _("kept moist for"), "time", "7 d", "7 d", _("After the pour.")),
    switch("both_sides", _("dries from both faces"), False, _("A wall does.")),
    amount("cooling", _("cools by"), "temperature", "0 °F", "0 °C", _("Since it was cast.")),
    amount("age", _("age"), "age", "365 d", "365 d", _("Since it was cast.")),
    word("model", _("shrinkage by"), slabs.MODELS, "ACI", "EN", _("As the rules, if not typed.")),
)
ARGUMENTS = (*_SHAPE, *_HELD, *_BARS, *_JOINT, *_DRYING, *materials(), *_rules())
BY_NAME = {argument.name: argument for argument in ARGUMENTS}

# Other words people use; the message then names the right one.
MEANT = shared_words(ARGUMENTS) | {
    "form": "shape",
    "span": "length",
    "l": "length",
    "breadth": "width",
    "height": "width",
    "depth": "thickness",
    "h": "thickness",
    "missing": "cut",
    "corner": "cut",
    "quarter": "cut",
    "notch": "cut",
    "opening": "hole",
    "window": "hole",
    "box_out": "column",
    "boxout": "column",
    "post": "column",
    "at": "place",
    "radius": "rounding",
    "round": "rounding",
    "stem": "tee",
    "t": "tee",
    "box_size": "box",
    "which": "look",
    "turned": "turn",
    "restraint": "held",
    "tied": "held",
    "degree": "holds",
    "drag": "base",
    "friction": "base",
    "subbase": "base",
    "ground": "base",
    "diagonal": "diagonals",
    "trimmers": "diagonals",
    "off": "diagonals",
    "diagonal_length": "long",
    "edge": "edges",
    "edge_past": "past",
    "mat": "bars",
    "mesh": "bars",
    "rebar": "bars",
    "reinforcement": "bars",
    "spacing": "bars",
    "fibers": "fibres",
    "fiber": "fibres",
    "fibre": "fibres",
    "dose": "fibres",
    "fr1": "f_R1",
    "f_r1": "f_R1",
    "fr3": "f_R3",
    "f_r3": "f_R3",
    "saw": "joint",
    "sawn": "joint",
    "saw_cut": "joint",
    "joints": "joint",
    "cut_depth": "saw_depth",
    "rh": "humidity",
    "cured": "curing",
    "cure": "curing",
    "temperature": "cooling",
    "time": "age",
    "day": "age",
    "days": "age",
    "shrinkage": "model",
}
_WALL = {"US": "10 ft", "SI": "3 m"}  # how high a wall is where nobody says it


def _suited(typed: dict, system: str) -> dict:
    """What is missing makes the shape; a base makes a slab that lies free; a wall its own habits.

    A saw cut whose depth or length is typed is there, and fibres whose strengths are typed too.
    """
    shape = _shape(typed)
    wall = shape == "door"
    held = "foot" if wall else "base" if "base" in typed and "holds" not in typed else "edges"
    found = {"shape": shape, "held": held, "both_sides": wall}
    if wall:
        found["width"] = _WALL[system]
    if typed.keys() & {"saw_depth", "saw_length"}:
        found["joint"] = "saw"
    if typed.keys() & MEASURED:
        found["fibres"] = "tested"
    return found | _fitting(shape, found | typed, system)


def _shape(typed: dict) -> str:
    if "shape" in typed:
        return BY_NAME["shape"].read(typed["shape"])
    return next((PIECES[name] for name in PIECES if name in typed), "corner")


def _piece(shape: str) -> str:
    """The argument that says what is missing from a shape."""
    return next(name for name, made in PIECES.items() if made == shape)


def _fitting(shape: str, taken: dict, system: str) -> dict:
    """A missing piece that nobody typed is made so small that it fits into what was typed."""
    piece = BY_NAME[_piece(shape)]
    usual = piece.read(piece.assumed[system])
    room = usual_sizes(shape, *(_read(name, taken, system) for name in ("length", "width")))
    least = tuple(map(min, usual, (room["cut_length"], room["cut_width"])))
    if piece.square:
        least = (min(least),) * 2
    # room is reckoned in metres: a usual size in feet may be a little more, and fits all the same
    fits = all(a > 0.95 * b for a, b in zip(least, usual, strict=True))
    return {} if fits else {piece.name: piece.written(least, system)}


def _read(name: str, taken: dict, system: str) -> float:
    argument = BY_NAME[name]
    return argument.read(taken.get(name, argument.assumed[system]))


def _made(v: Reading) -> slabs.CornerSlab:
    piece = _piece(v["shape"])
    _refuse_other_pieces(v, piece)
    parts = _missing(v, piece) | _placed(v) | _beside(v) | _mat(v)
    try:
        return slabs.CornerSlab(**v.plain | parts)
    except InputError as error:
        # a side of the piece is called by the argument that was typed for it
        error.path = piece if error.path in ("cut_length", "cut_width") else error.path
        raise


def _refuse_other_pieces(v: Reading, piece: str) -> None:
    for name in PIECES:
        if name in v.typed and name != piece:
            text = _("with shape={shape!r} the missing piece is typed as {piece}")
            raise v.wrong(name, text.format(shape=v["shape"], piece=piece))


def _missing(v: Reading, piece: str) -> dict:
    along, across = v[piece]
    return {"cut_length": along} | ({} if piece == "column" else {"cut_width": across})


def _placed(v: Reading) -> dict:
    names = {"corner": (), "door": ("cut_x",)}.get(v["shape"], ("cut_x", "cut_y"))
    found = v["place"] if names else ()
    if found and len(found) != len(names):
        one = _("a door stands on the floor: give its place along the wall alone")
        two = _("give two places, along and across: 2 m, 1.5 m")
        raise v.wrong("place", one if len(names) == 1 else two)
    return dict(zip(names, found, strict=False))


def _beside(v: Reading) -> dict:
    """Bars off the corner, and off its sides."""
    found = {}
    for name, one in (("diagonals", "diagonal"), ("edges", "edge")):
        laid = v[name]
        found[name] = "none" if laid is None else laid.bars.size
        if laid is not None:
            off = USUAL_OFF[v.system] if laid.off is None else laid.off
            found |= {f"{one}_count": laid.bars.count, f"{one}_off": off}
    return found


def _mat(v: Reading) -> dict:
    note = v["bars"]
    if note is None:
        return {"mat": "none"}
    if isinstance(note, BarCount):
        raise v.wrong("bars", _("a mat takes bars at a spacing, such as 10 @ 200 or #4 @ 12 in"))
    return {"mat": note.size, "spacing": note.spacing}


def _compound(it: slabs.CornerSlab) -> dict:
    """What several inputs make together; what is missing has the name of its shape alone."""
    across = it.cut_length if it.shape == "column" else it.cut_width
    piece, where = _piece(it.shape), (it.cut_x, it.cut_y)
    bare = it.mat == "none"
    return dict.fromkeys(PIECES) | {
        piece: (it.cut_length, across),
        "place": where[:1] if it.shape == "door" else where,
        "diagonals": _off(it.diagonals, it.diagonal_count, it.diagonal_off),
        "edges": _off(it.edges, it.edge_count, it.edge_off),
        "bars": BarCount(0, it.mat) if bare else BarSpacing(it.mat, it.spacing),
    }


def _off(size: str, count: float, off: float) -> PlacedBars:
    return PlacedBars(BarCount(0 if size == "none" else round(count), size), off)


def _absent(it: slabs.CornerSlab) -> set[str]:
    """The pieces that other shapes miss."""
    return set(PIECES) - {_piece(it.shape)}


FORM = Form(
    "CornerSlab",
    slabs.CornerSlab,
    ARGUMENTS,
    MEANT,
    _made,
    _compound,
    typed_as={
        "cut_y": "place",
        "diagonal_count": "diagonals",
        "diagonal_off": "diagonals",
        "edge_count": "edges",
        "edge_off": "edges",
        "mat": "bars",
        "spacing": "bars",
    },
    # each family of rules has its own shrinkage, under the same name
    follows={"model": "code"},
    suited=_suited,
    rivals=tuple(PIECES),
    absent=_absent,
)
