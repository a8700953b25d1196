"""The choices of a strip whose bars are chosen, how far its inputs go, and when they count."""

from crackkit.mechanics.bars import bar
from crackkit.mechanics.fibres import INDICATIVE
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.materials import LEAST_COVER
from crackkit.structures.strip_stress import BENT, PULLED
from crackkit.words import _

SHAPES = (("slab", _("a strip of a slab")), ("beam", _("a beam")))
ACTIONS = ((BENT, _("bending")), (PULLED, _("a straight pull")))
GIVEN = (("stress", _("pull in the bars")), ("load", _("moment or pull")))
ROWS = (("both", _("in both faces")), ("middle", _("one, at mid-depth")))
OUTER = (("main", _("the main bars")), ("across", _("the bars across")))
CROSS_SIZES = (("none", _("none")), *BAR_SIZES)
DOSES = (
    *((dose.key, dose.label) for dose in INDICATIVE),
    ("tested", _("tested: strengths as measured")),
)
OUTER_PART = 0.45  # of the depth, from the face: where bars of that face may lie
SPACING_RANGE = (50.0, 350.0)
SHOWN = {"SI": 1200.0, "US": 1219.2}  # length of strip that is drawn [mm]


def is_slab(it, _owner=None) -> bool:
    """Tell whether a strip of a slab is looked at, with a mat."""
    return it.shape == "slab"


def is_beam(it, _owner=None) -> bool:
    """Tell whether a beam is looked at, with bars that are counted."""
    return it.shape != "slab"


def by_stress(it, _owner) -> bool:
    """Tell whether the pull in the bars is given."""
    return it.given == "stress"


def by_moment(it, _owner) -> bool:
    """Tell whether a moment is given."""
    return it.given == "load" and it.action == BENT


def by_pull(it, _owner) -> bool:
    """Tell whether a pull on the strip is given."""
    return it.given == "load" and it.action == PULLED


def is_pulled(it, _owner) -> bool:
    """Tell whether it is pulled straight."""
    return it.action == PULLED


def is_tested(it, _owner) -> bool:
    """Tell whether the strengths of the fibres are typed."""
    return it.fibres == "tested"


def has_across(it, _owner=None) -> bool:
    """Tell whether there are bars the other way."""
    return it.shape == "slab" and it.cross_size != "none"


def least_depth(it, _owner) -> float:
    """So deep that the mat lies in its outer part [mm]."""
    return max(80.0, (LEAST_COVER + _mat(it)) / OUTER_PART)


def most_cover(it, _owner) -> float:
    """Largest cover that leaves the mat in the outer part [mm]."""
    return max(min(100.0, it.depth / 4, OUTER_PART * it.depth - _mat(it)), LEAST_COVER)


def most_slack(it, _owner) -> float:
    """Largest depth tolerance that leaves it there [mm]."""
    return max(min(30.0, it.depth / 8, OUTER_PART * it.depth - _mat(it) - it.cover), 0.0)


def _mat(it) -> float:
    """Thickness of the bars of both directions, one above the other [mm]."""
    across = bar(it.cross_size).diameter if has_across(it) else 0.0
    return bar(it.size).diameter + across


def most_stress(it, _owner) -> float:
    """Largest pull in the bars [MPa]."""
    return it.yield_strength


def most_moment(it, _owner) -> float:
    """Moment at which bars of 3 % of the section would yield [N mm]."""
    return 0.03 * it.width * it.depth * it.yield_strength * 0.75 * it.depth


def most_pull(it, _owner) -> float:
    """Pull at which bars of 4 % of the section would yield [N]."""
    return 0.04 * it.width * it.depth * it.yield_strength
