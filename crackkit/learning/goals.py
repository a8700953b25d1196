"""What a task can ask for. A task lists the goals it wants; each says itself and checks itself."""

from collections.abc import Callable
from dataclasses import dataclass

from crackkit.learning import choice_checks as choosing
from crackkit.learning import corner_checks as nooks
from crackkit.learning import curled_checks as curled
from crackkit.learning import ground_bare_checks as bare
from crackkit.learning import ground_checks as grounded
from crackkit.learning import holding_checks as holding
from crackkit.learning import laying_checks as laying
from crackkit.learning import money_checks as paying
from crackkit.learning import pulled_checks as pulling
from crackkit.learning.check import Check
from crackkit.learning.telling import shown, told_in
from crackkit.words import _


@dataclass(frozen=True)
class Goal:
    """One thing a task asks for.

    Attributes
    ----------
    said : callable
        From (task, system) to the line that a reader sees among the goals.
    check : callable
        From (task, structure, outcome, system) to a Check.
    """

    said: Callable[..., str]
    check: Callable[..., Check]


def _hold(task, _system: str) -> str:
    return _("The bars hold: {n} times this load before they give way.").format(n=task.reserve)


def _width(task, system: str) -> str:
    return shown(task.structure.solve().verdict.limit.width, "width", system)


def _hold_always(task, _system: str) -> str:
    text = _("The bars hold {n} times the load, wherever the loads that come and go stand.")
    return text.format(n=task.reserve)


def _fine(task, system: str) -> str:
    return _("No crack is wider than {width}.").format(width=_width(task, system))


def _fine_always(task, system: str) -> str:
    text = _("No crack is wider than {width}, wherever the loads that come and go stand.")
    return text.format(width=_width(task, system))


def _steel(task, system: str) -> str:
    steel = shown(task.most_steel, "mass", system)
    return _("The bars weigh at most {steel}.").format(steel=steel)


def _hold_alone(task, _system: str) -> str:
    text = _("The bars alone, fibres not counted, hold {n} times this pull before they give way.")
    return text.format(n=task.reserve)


def _fine_both(task, system: str) -> str:
    text = _("No crack is wider than {width}, whichever way it runs.")
    return text.format(width=_width(task, system))


def _dose(_task, _system: str) -> str:
    text = _("Fibres, if any: at most {dose}, for the plant cannot mix more.")
    return text.format(dose=choosing.dosage_text(choosing.MOST_FIBRES))


# a reader who changes units keeps the square that the structure is a piece of
_SQUARES = {
    ("SI", "SI"): _("square metre"),
    ("US", "US"): _("square foot"),
    ("SI", "US"): _("square metre, which is 10.8 square feet"),
    ("US", "SI"): _("square foot, which is 0.093 square metres"),
}


def _square(task, system: str) -> str:
    square = _SQUARES[system, told_in(system)]
    alone, beside = (task.most_steel, choosing.WITH_FIBRES * task.most_steel)
    text = _(
        "The bars weigh at most {alone} on a {square}; with fibres, which cost as well, at most "
        "{beside}."
    )
    masses = {"alone": shown(alone, "mass", system), "beside": shown(beside, "mass", system)}
    return text.format(square=square, **masses)


def _hold_pull(task, _system: str) -> str:
    return _("The bars hold: {n} times this pull before they yield.").format(n=task.reserve)


def _fine_own(task, system: str) -> str:
    text = _("None of its own cracks, as bond along its bars makes them, is wider than {width}.")
    return text.format(width=_width(task, system))


def _fine_by_rule(task, system: str) -> str:
    text = _("The rule of its code, which reckons with any concrete of this kind, agrees: {width}.")
    return text.format(width=_width(task, system))


def _fine_beside_joints(task, system: str) -> str:
    text = _("After two years no crack beside the joints is wider than {width}.")
    return text.format(width=_width(task, system))


def _joints(_task, system: str) -> str:
    text = _("Joints, if any, are open by {width} at most: small hard wheels roll over them.")
    return text.format(width=shown(grounded.JOINT[system], "width", system))


def _bare(task, system: str) -> str:
    text = _(
        "Where too few bars run to hold a crack, joints are {far} apart at most, and the pull "
        "stays below {share} of the strength: friction and shrinkage are never sure."
    )
    far = shown(bare.longest_panel(task.structure.thickness), "length", system)
    return text.format(far=far, share=f"{bare.MOST_PULL:.1f}")


def _money(task, _system: str) -> str:
    text = _("It costs at most {most}: for that somebody else offers it.")
    return text.format(most=task.budget.shown(task.budget.most(task.structure)))


def _moist(_task, system: str) -> str:
    text = _("It is kept moist for {days} at most: then the boats come.")
    return text.format(days=shown(grounded.MOST_CURING, "time", system))


def _corners(task, system: str) -> str:
    text = _(
        "For three years, with a trolley on it once it is {day} old, the pull stays below {share} "
        "of the strength; or a mat holds the crack to {width}, and the corner stays on."
    )
    told = {"day": curled.first_wheel(system), "share": f"{curled.MOST_PULL:.1f}"}
    return text.format(width=_width(task, system), **told)


def _transfer(_task, _system: str) -> str:
    text = _("Dowels, if any, are counted on for {share} of the load at most.")
    return text.format(share=f"{curled.MOST_TRANSFER:.1f}")


def _cured(_task, system: str) -> str:
    least, most = (shown(days, "time", system) for days in curled.CURED)
    return _("It is kept moist for {a} to {b}.").format(a=least, b=most)


def _fine_corners(task, system: str) -> str:
    text = _("At one year no crack from any inside corner is wider than {width}.")
    return text.format(width=_width(task, system))


def _steel_and_dowels(task, system: str) -> str:
    text = _("Bars weigh at most {steel}, with the dowels of full joints: {size}, one every {far}.")
    size, far = (shown(each, "size", system) for each in (task.dowel.diameter, task.dowel.every))
    return text.format(steel=shown(task.most_steel, "mass", system), size=size, far=far)


def _stones(task, system: str) -> str:
    text = _("The stones of the concrete, up to {size}, pass between the bars.")
    return text.format(size=shown(nooks.STONES[task.structure.code], "size", system))


def _joints_filled(_task, system: str) -> str:
    text = _("Full joints, if any, are open by {width} at most, and no bars run through them.")
    return text.format(width=shown(nooks.JOINT[system], "width", system))


def _cured_corners(_task, system: str) -> str:
    least, most = (shown(days, "time", system) for days in nooks.CURED)
    return _("It is kept moist for {a} to {b}.").format(a=least, b=most)


def _plain(text: str) -> Callable[..., str]:
    def said(_task, _system: str) -> str:
        return text

    return said


HOLD = Goal(_hold, holding.hold)
HOLD_ALWAYS = Goal(_hold_always, holding.hold_always)
FINE = Goal(_fine, holding.fine)
FINE_ALWAYS = Goal(_fine_always, holding.fine_always)
COVERED = Goal(
    _plain(_("Bars cross every place that can crack, wherever the loads stand.")), holding.covered
)
ANCHORED = Goal(
    _plain(_("The bars are anchored: they can be pulled to their full strength.")), holding.anchored
)
STEEL = Goal(_steel, holding.steel)
ROOM = Goal(_plain(_("The stones of the concrete pass between the bars.")), laying.room)
MAT = Goal(_plain(_("The bars of a mat lie no farther apart than the rules allow.")), laying.mat)
COVER = Goal(_plain(_("The cover is at least what this place asks for.")), laying.cover)
HOLD_ALONE = Goal(_hold_alone, choosing.hold)
FINE_BOTH = Goal(_fine_both, choosing.fine)
DOSE = Goal(_dose, choosing.dose)
SQUARE = Goal(_square, choosing.steel)
ENOUGH = Goal(
    _plain(_("Both ways there are bars enough for the pull at the first crack.")), choosing.enough
)
ROOM_BOTH = Goal(_plain(_("The stones of the concrete pass between the bars.")), choosing.room)
CLOSE = Goal(_plain(_("The bars lie no farther apart than the rules allow.")), choosing.close)
OVER = Goal(_plain(_("The cover is at least what this place asks for.")), choosing.cover)
WHOLE = Goal(_plain(_("It stays in one piece: its first crack is not its last.")), pulling.whole)
HOLD_PULL = Goal(_hold_pull, pulling.hold)
FINE_OWN = Goal(_fine_own, pulling.fine)
FINE_BY_RULE = Goal(_fine_by_rule, pulling.by_rule)
STEEL_PULLED = Goal(_steel, pulling.steel)
ROOM_INSIDE = Goal(_plain(_("The stones of the concrete pass between the bars.")), pulling.room)
COVER_AROUND = Goal(_plain(_("The cover is at least what this place asks for.")), pulling.cover)
FINE_BESIDE_JOINTS = Goal(_fine_beside_joints, grounded.fine)
JOINTS = Goal(_joints, grounded.joints)
BARE = Goal(_bare, bare.bare)
MONEY = Goal(_money, paying.money)
LIES = Goal(_plain(_("Whatever bars there are lie in the concrete.")), grounded.lies)
SAW = Goal(_plain(_("Joints, if any, are cut before the floor cracks.")), grounded.saw)
MOIST = Goal(_moist, grounded.curing)

CORNERS = Goal(_corners, curled.corners)
MAT_LIES = Goal(_plain(_("A mat, if any, is covered, and its bars are close.")), curled.lies)
DRY = Goal(_plain(_("A sheet keeps damp out of the floor.")), curled.dry)
DOWELS = Goal(_transfer, curled.dowels)
CURED = Goal(_cured, curled.curing)
MONEY_CURLED = Goal(_money, curled.money)

FINE_CORNERS = Goal(_fine_corners, nooks.width)
ELASTIC = Goal(_plain(_("No bar yields where it crosses a crack.")), nooks.elastic)
STEEL_AND_DOWELS = Goal(_steel_and_dowels, nooks.steel)
COVER_CORNERS = Goal(
    _plain(_("Bars, if any, have the cover that this place asks for.")), nooks.cover
)
ROOM_CORNERS = Goal(_stones, nooks.room)
JOINTS_FILLED = Goal(_joints_filled, nooks.joints)
CURED_CORNERS = Goal(_cured_corners, nooks.curing)

BEAM = (HOLD, FINE, STEEL, ROOM, COVER)
ARM = (HOLD, FINE, ANCHORED, STEEL, ROOM, MAT, COVER)
FLOOR = (COVERED, HOLD_ALWAYS, FINE_ALWAYS, STEEL, ROOM, COVER)
CHOICE = (HOLD_ALONE, FINE_BOTH, SQUARE, DOSE, ENOUGH, ROOM_BOTH, CLOSE, OVER)
PULLED = (
    WHOLE,
    HOLD_PULL,
    FINE_OWN,
    FINE_BY_RULE,
    STEEL_PULLED,
    ROOM_INSIDE,
    COVER_AROUND,
)
GROUND = (FINE_BESIDE_JOINTS, JOINTS, BARE, MONEY, LIES, SAW, MOIST)
CURLED = (CORNERS, MONEY_CURLED, MAT_LIES, DRY, DOWELS, CURED)
CORNER = (
    FINE_CORNERS,
    ELASTIC,
    STEEL_AND_DOWELS,
    COVER_CORNERS,
    ROOM_CORNERS,
    JOINTS_FILLED,
    CURED_CORNERS,
)
