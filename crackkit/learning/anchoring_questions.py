"""Questions about the top bars of an arm: their face, their height, and their grip in the wall."""

from dataclasses import replace

from crackkit.learning.choices import (
    apart,
    arm,
    asked,
    clear,
    drawn,
    mat_text,
    right,
    size,
    weight_at,
    width,
    width_text,
    wrong,
)
from crackkit.learning.telling import shown
from crackkit.structures.outcome import UNHELD
from crackkit.words import _


def _ordinary(random, system):
    """Draw a strip of a slab with a top mat that holds its cracks."""
    steel = size(random, system, 0, 3)
    spacing = drawn(random, "size", system, 90, 160)
    reach = drawn(random, "length", system, 1600, 2600)
    strip = 304.8 if system == "US" else 1000.0
    return arm(
        system,
        (steel, spacing),
        overhang=reach,
        wall=drawn(random, "size", system, 350, 450),
        depth=drawn(random, "size", system, 180, 240),
        uniform_load=strip / 1000 * drawn(random, "line_load", "SI", 5, 12),
        loads=weight_at(drawn(random, "force", system, 2e3, 4e3), reach),
    ), steel


def _mat(slab, steel, system) -> str:
    return mat_text(steel, slab.top.spacing, system)


def trodden_down(random, system):
    """What becomes of the crack when the top bars are trodden down?"""
    slab, steel = _ordinary(random, system)
    by = drawn(random, "size", system, 25, 55)
    low = replace(slab, top=replace(slab.top, drop=by))
    before, after = width(slab.solve()), width(low.solve())
    apart((before**2 / after, before, after), 1.15)
    text = _(
        "The top bars of a balcony, {mat}, lie as drawn, and its crack at the wall is {width} "
        "wide. In the strip beside it the crew has trodden them down by {by}. How wide is the "
        "crack there?"
    ).format(
        mat=_mat(slab, steel, system),
        width=width_text(before, system),
        by=shown(by, "size", system),
    )
    return asked("trodden_down", random, text, _trodden_choices(before, after, system), slab)


def _trodden_choices(before: float, after: float, system: str) -> list:
    return [
        right(
            width_text(after, system),
            _(
                "The bars work on a shorter arm, so they are pulled harder; and they hold the "
                "crack farther from the face where it gapes."
            ),
        ),
        wrong(
            width_text(before, system),
            _("it is enough that the steel is in it"),
            _("The same steel, lower down, works on a shorter arm and is pulled harder."),
        ),
        wrong(
            width_text(before**2 / after, system),
            _("more cover makes cracks smaller at the surface"),
            _("More cover keeps rust away, but the crack gapes the wider the deeper the bars lie."),
        ),
    ]


def grip_in_the_wall(random, system):
    """What pull can straight bars build up that reach only so far back?"""
    slab, steel = _ordinary(random, system)
    short = drawn(random, "size", system, 100, 300)
    slab = replace(slab, top=replace(slab.top, hooked=False, behind=short))
    outcome = slab.solve()
    (line,) = outcome.steel
    needed, yields = slab.member.anchorage(slab.member.layers[0]), slab.yield_strength
    pull = yields * short / needed
    clear(0.25 < short / needed < 0.75)
    reached = float(line.capacity[abs(line.x - slab.root).argmin()])
    clear(abs(reached - pull) < 0.02 * yields)
    apart((pull**2 / yields, pull, yields), 1.2)
    text = _(
        "Straight bars, {mat}, reach {short} into a wall. To be pulled to their yield strength of "
        "{yields} they would need {needed}. How hard can they be pulled at the wall before they "
        "slip out?"
    ).format(
        mat=_mat(slab, steel, system),
        short=shown(short, "size", system),
        needed=shown(needed, "size", system),
        yields=shown(yields, "stress", system),
    )
    choices = _grip_choices(pull, yields, system)
    return asked("grip_in_the_wall", random, text, choices, slab)


def _grip_choices(pull: float, yields: float, system: str) -> list:
    def hard(value):
        return shown(value, "stress", system)

    return [
        right(
            hard(pull),
            _("The concrete grips every bit of the bar alike: a part of the length, a part of it."),
        ),
        wrong(
            hard(yields),
            _("a bar is as strong as its steel, however short it is held"),
            _("Steel that slips out of the concrete holds nothing, however strong it is."),
        ),
        wrong(
            hard(pull**2 / yields),
            _("the length counts twice"),
            _("The grip grows in step with the length: half the length, half the pull."),
        ),
        wrong(
            _("not at all: too short is as good as none"),
            _("a bar that is too short holds nothing"),
            _("It holds a part. But a part is not enough when the load needs the whole."),
        ),
    ]


def face_of_the_bars(random, system):
    """Where do the bars of a balcony hold?"""
    slab, steel = _ordinary(random, system)
    best = width(slab.solve())
    low = replace(
        slab,
        top=replace(slab.top, laid=False),
        bottom=replace(slab.top, face="bottom"),
    )
    clear(low.solve().verdict.key == UNHELD)
    text = _("A balcony that grows out of a wall gets bars, {mat}. Where do they hold it?")
    text = text.format(mat=_mat(slab, steel, system))
    choices = _face_choices(width_text(best, system))
    return asked("face_of_the_bars", random, text, choices, slab)


def _face_choices(best: str) -> list:
    choices = [
        right(
            _("near the top, hooked into the wall"),
            _("The top is stretched, most at the wall. There they keep the crack to {best}."),
        ),
        wrong(
            _("near the bottom, under the load"),
            _("the bottom is always the stretched side"),
            _("The bottom of an arm is squeezed. Nothing would cross the crack: it falls."),
        ),
        wrong(
            _("near the top, but only out to where the wall ends"),
            _("bars are needed only where the concrete hangs free"),
            _("The crack opens at the face of the wall: bars that end there do not cross it."),
        ),
        wrong(
            _("on either face: the weight of steel is the same"),
            _("only the weight of steel counts"),
            _("On top the crack is {best} wide; with all of it below nothing holds the crack."),
        ),
    ]
    return [replace(choice, why=choice.why.format(best=best)) for choice in choices]
