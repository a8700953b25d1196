"""Ranges of the inputs of a slab with inside corners that follow other inputs, and when they act.

Each takes the whole slab and the part an input belongs to.
"""

from crackkit.mechanics.bars import bar
from crackkit.mechanics.fibres import INDICATIVE
from crackkit.structures.corner_shapes import LEFT
from crackkit.words import _

WALL = 6000.0  # mm, the highest wall
SLAB = 12000.0
LEAST_BOX = 200.0
CORNERS = {"corner": 1, "opening": 4, "column": 4, "door": 2, "depot": 6}
DOSES = tuple((dose.key, dose.label) for dose in INDICATIVE) + (
    ("tested", _("tested: give f_R1 and f_R3")),
)


def most_width(it, _owner) -> float:
    """Widest slab, highest wall [mm]."""
    return WALL if it.shape == "door" else SLAB


def most_cut_length(it, _owner) -> float:
    """Longest piece that may be missing [mm]."""
    if it.shape == "corner":
        return it.length - LEFT
    if it.shape == "column":
        room = min(it.length, it.width) - 2 * LEFT
        return room / 2**0.5 if it.turn == "turned" else room
    if is_tee(it):
        return it.length / 2 - LEFT
    return it.length - 2 * LEFT


def most_cut_width(it, _owner) -> float:
    """Widest piece that may be missing, highest door [mm]; a T keeps room for the box-out."""
    if is_tee(it):
        return it.width - 2 * LEFT - 2**0.5 * LEAST_BOX
    return it.width - (2 * LEFT if it.shape == "opening" else LEFT)


def most_box(it, _owner) -> float:
    """Widest box-out in the wide part of a T [mm]."""
    room = min(it.width - it.cut_width, it.length) - 2 * LEFT
    return room / 2**0.5 if it.turn == "turned" else room


def most_look(it, _owner) -> int:
    """How many corners there are to look at."""
    return CORNERS.get(it.shape, 1)


def _half(it, size: float) -> float:
    if is_column(it):
        return it.box_out / 2 * (2**0.5 if it.turn == "turned" else 1.0)
    return size / 2


def least_x(it, _owner) -> float:
    """Middle of what is missing as far left as it may be [mm]."""
    return _half(it, it.cut_length) + LEFT


def most_x(it, _owner) -> float:
    """As far right [mm]."""
    return it.length - _half(it, it.cut_length) - LEFT


def least_y(it, _owner) -> float:
    """As near [mm]."""
    return _half(it, it.cut_width) + LEFT


def most_y(it, _owner) -> float:
    """As far [mm]; in a T, only its stem reaches to the far side."""
    reach = _half(it, it.cut_width) + LEFT
    in_stem = it.cut_length + reach <= it.cut_x <= it.length - it.cut_length - reach
    return it.width - reach - (0.0 if in_stem or not is_tee(it) else it.cut_width)


def most_rounding(it, _owner) -> float:
    """Half of the smaller side: a square opening is then a circle [mm]."""
    return min(it.cut_length, it.cut_width) / 2


def most_cover(it, _owner) -> float:
    """Half of the thickness [mm]."""
    return it.thickness / 2


def has_place(it, _owner=None) -> bool:
    """Tell whether the missing piece has a middle that can be moved along."""
    return it.shape != "corner"


def is_hole(it, _owner=None) -> bool:
    """Tell whether it can be moved both ways."""
    return it.shape in ("opening", "column", "depot")


def is_column(it, _owner=None) -> bool:
    """Tell whether there is a box-out round a column."""
    return it.shape in ("column", "depot")


def is_tee(it, _owner=None) -> bool:
    """Tell whether it is a T with a box-out."""
    return it.shape == "depot"


def has_some_corners(it, _owner=None) -> bool:
    """Tell whether there is more than one inside corner."""
    return it.shape != "corner"


def has_two_sides(it, _owner=None) -> bool:
    """Tell whether length and width of the missing piece differ."""
    return it.shape != "column"


def can_be_round(it, _owner=None) -> bool:
    """Tell whether its corners may be rounded."""
    return it.shape in ("corner", "opening")


def on_base(it, _owner=None) -> bool:
    """Tell whether the base alone holds it."""
    return it.held == "base"


def is_tied(it, _owner=None) -> bool:
    """Tell whether sides are tied."""
    return it.held != "base"


def has_diagonals(it, _owner=None) -> bool:
    """Tell whether diagonal bars lie at the corners."""
    return it.diagonals != "none"


def has_many_diagonals(it, _owner=None) -> bool:
    """Tell whether several lie side by side."""
    return has_diagonals(it) and it.diagonal_count > 1


def has_edges(it, _owner=None) -> bool:
    """Tell whether bars lie along the sides of the corners."""
    return it.edges != "none"


def has_mat(it, _owner=None) -> bool:
    """Tell whether a mat lies everywhere."""
    return it.mat != "none"


def has_bars(it, _owner=None) -> bool:
    """Tell whether there are any bars."""
    return has_diagonals(it) or has_edges(it) or has_mat(it)


def is_tested(it, _owner=None) -> bool:
    """Tell whether the strengths of the fibres are typed."""
    return it.fibres == "tested"


def is_sawn(it, _owner=None) -> bool:
    """Tell whether a saw cut starts at the corner."""
    return it.joint == "saw"


def diameter(size: str) -> float:
    """Diameter of a bar [mm]; 0 for ``"none"``."""
    return 0.0 if size == "none" else bar(size).diameter
