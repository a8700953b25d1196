"""What stands beside the plan of a slab on the ground: days of cracks, scale, what lines are."""

from crackkit.drawing.age_words import day_words
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.ground_cracks import by_birth, dated_in_row, day_role, undated, widest_crack
from crackkit.drawing.ground_plan import BESIDE, GroundPlan
from crackkit.drawing.labels import spread, width_of
from crackkit.drawing.shapes import Text, line
from crackkit.drawing.words_on import paragraph, wrapped
from crackkit.units import shown
from crackkit.words import _

LINE = 15.0  # from day to day beside the plan
SAME = 0.03  # share by which two scales may differ and be called one
LIFT = 15.0  # of the days over the plan
MOST = 2  # lines of the caption


def days_across(plan: GroundPlan, state, section: float) -> list:
    """Days of the cracks from side to side, in a row over the plan, with leaders both ways.

    Parameters
    ----------
    plan : GroundPlan
    state : Ground
        How it fares along.
    section : float
        Lower edge of the section over the plan [drawing units].
    """
    along, y = plan.along, plan.top - LIFT
    cracks = dated_in_row(state, along.right - along.left)
    wide = [width_of(day_words(crack.birth), day_role(crack)) for crack in cracks]
    wished = [float(along(crack.at)) for crack in cracks]
    placed = spread(wished, wide, along.left - 30.0, along.right + 30.0)
    shapes = []
    for crack, at, x, room in zip(cracks, wished, placed, wide, strict=True):
        foot = min(max(at, x - room / 2), x + room / 2)
        shapes += [
            Text(x, y, day_words(crack.birth), day_role(crack), "middle"),
            line(at, section + 1.0, foot, y - 11.0, "leader"),
            line(foot, y + 4.0, at, plan.top, "leader"),
        ]
    return shapes


def dated_beside(plan: GroundPlan, other) -> list:
    """Cracks along that have their day beside the plan: all, or the first there is room for."""
    most = int((plan.bottom - plan.top + LINE) / LINE)
    return sorted(by_birth(other)[:most], key=lambda one: one.at)


def days_along(plan: GroundPlan, other) -> list:
    """Days of the cracks from end to end, below each other at the right side of the plan."""
    cracks = dated_beside(plan, other)
    wished = [float(plan.across(crack.at)) for crack in cracks]
    low, high = plan.top - LINE / 2, plan.bottom + LINE / 2
    placed = spread(wished, [LINE] * len(cracks), low, high, 0.0)
    edge = plan.along.right + (BESIDE if plan.structure.right > 0 else 0.0)
    shapes = []
    for crack, at, y in zip(cracks, wished, placed, strict=True):
        shapes += [
            line(edge + 1.0, at, edge + 8.0, y, "leader"),
            Text(edge + 10.0, y + 4.5, day_words(crack.birth), "note"),
        ]
    return shapes


def plan_caption(plan: GroundPlan, other, frame: Frame, view: View) -> list:
    """Say below the plan what it shows and how it is drawn: as much as there is room for."""
    room, told = frame.width - 24.0, ""
    for sentence in _sentences(plan, other, view):
        longer = f"{told} {sentence}".strip()
        if len(wrapped(longer, "note", room)) <= MOST:
            told = longer
    return paragraph(frame.left + 20.0, plan.bottom + 24.0, told, "note", room, MOST)


def _sentences(plan: GroundPlan, other, view: View) -> list[str]:
    """What is to be said, the most important first."""
    s = plan.structure
    size = _("From above, {length} by {width}: {scale}.").format(
        length=shown(s.length, "length", view.system),
        width=shown(s.width, "length", view.system),
        scale=scale_words(plan),
    )
    sentences = [size, cracks_along(other, view), _undated(plan, other)]
    if s.sides > 0:
        sentences.append(_("Sides held {n}\u00a0%.").format(n=round(100 * s.sides)))
    if s.joint_places or s.joint_places_across:
        sentences.append(_("Straight lines: joints, bold where open."))
    return [*(one for one in sentences if one), *_bars(plan)]


def scale_words(plan: GroundPlan) -> str:
    """Say how the width is drawn."""
    if abs(plan.larger - 1.0) < SAME:
        return _("to scale")
    if plan.larger > 1.0:
        return _("width drawn {n} times larger").format(n=f"{plan.larger:.2g}")
    return _("width drawn {n} times smaller").format(n=f"{1.0 / plan.larger:.2g}")


def cracks_along(other, view: View) -> str:
    """Say how many cracks run along the slab, and how wide the widest is; empty without."""
    widest = widest_crack(other)
    if widest is None:
        return ""
    width = shown(widest.width, "width", view.system)
    if len(other.wild) == 1:
        return _("1 crack runs along it: {width}.").format(width=width)
    text = _("{n} cracks run along it, the widest {width}.")
    return text.format(n=len(other.wild), width=width)


def _undated(plan: GroundPlan, other) -> str:
    if not other.complete:
        return _("More run along it than are drawn.")
    missing = undated(other, dated_beside(plan, other))
    return _("{n} of them not dated.").format(n=missing) if missing else ""


def _bars(plan: GroundPlan) -> list[str]:
    if plan.structure.bar is None:
        return []
    if plan.every == 1:
        return [_("Faint lines: bars.")]
    return [_("Faint lines: one for {n} bars.").format(n=plan.every)]
