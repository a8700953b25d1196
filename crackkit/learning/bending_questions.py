"""Questions about bending: where it is stretched most, and what span, depth and place do."""

from crackkit.learning.choices import (
    apart,
    asked,
    beam,
    clear,
    drawn,
    load_at,
    right,
    size,
    size_text,
    wrong,
)
from crackkit.learning.telling import shown
from crackkit.words import _


def first_crack(random, system):
    """Where does the first crack open under a load off the middle?"""
    span = drawn(random, "length", system, 4000, 8000)
    at = drawn(random, "length", system, 0.25 * span, 0.75 * span)
    force = drawn(random, "force", system, 50e3, 120e3)
    clear(abs(at - span / 2) > 0.08 * span)
    member = beam(system, (3, size(random, system, 3)), span=span, loads=load_at(force, at))
    zone = max(member.solve().tension, key=lambda zone: zone.peak)
    clear(abs(zone.at - at) < 0.01 * span and zone.peak > 1.1)
    place, middle = shown(at, "length", system), shown(span / 2, "length", system)
    text = _(
        "A beam of {span} carries {force} at {place} from its left end. Where does the first "
        "crack open?"
    ).format(span=shown(span, "length", system), force=shown(force, "force", system), place=place)
    return asked("first_crack", random, text, _first_choices(place, middle), member)


def _first_choices(place: str, middle: str) -> list:
    return [
        right(
            _("At the bottom, under the load ({place})").format(place=place),
            _("Under the load the beam bends most. Its bottom gets longest there, so it cracks."),
        ),
        wrong(
            _("On top, right where the load presses ({place})").format(place=place),
            _("cracks open where the load touches"),
            _("The load squeezes the top. The far side is stretched, and that is where it cracks."),
        ),
        wrong(
            _("At the bottom, half way between the supports ({middle})").format(middle=middle),
            _("the first crack is always in the middle"),
            _("Only a load in the middle, or one spread evenly, bends the middle most."),
        ),
        wrong(
            _("At the bottom, beside a support"),
            _("supports crack the bottom of a beam"),
            _("A simple support lets the end turn: next to it the beam hardly bends at all."),
        ),
    ]


def over_the_support(random, system):
    """Where is a beam stretched that hangs past its support?"""
    span = drawn(random, "length", system, 4000, 7000)
    past = drawn(random, "length", system, 1500, min(3000, span / 2))
    force = drawn(random, "force", system, 60e3, 120e3)
    member = beam(
        system,
        (3, size(random, system, 3)),
        span=span,
        overhang_right=past,
        loads=load_at(force, span + past),
    )
    zone = max(member.solve().tension, key=lambda zone: zone.peak)
    clear(zone.face == "top" and abs(zone.at - span) < 0.02 * span and zone.peak > 1.1)
    text = _(
        "This beam reaches {past} past its right support. {force} stands on the very end. "
        "Where does the first crack open?"
    ).format(past=shown(past, "length", system), force=shown(force, "force", system))
    return asked("over_the_support", random, text, _over_choices(), member)


def _over_choices() -> list:
    return [
        right(
            _("On top, over the right support"),
            _(
                "The end hangs down and bends the beam like a frown: over the support the top gets "
                "longest."
            ),
        ),
        wrong(
            _("At the bottom, under the load"),
            _("the bottom is always the stretched side"),
            _(
                "At the very end nothing bends the beam any more, and past a support the bottom is "
                "squeezed."
            ),
        ),
        wrong(
            _("On top, right where the load presses"),
            _("cracks open where the load touches"),
            _("At the free end, under the load, nothing bends the beam: no face is stretched."),
        ),
        wrong(
            _("At the bottom, over the right support"),
            _("a support always pushes a crack into the bottom"),
            _("The support pushes up while both sides pull down: the bottom there gets shorter."),
        ),
    ]


def twice_as_deep(random, system):
    """How much less does a deeper plank move?"""
    span = drawn(random, "length", system, 5500, 8000)
    thin = drawn(random, "size", system, 150, 250)
    force = drawn(random, "force", system, 4e3, 24e3)
    shape = {"span": span, "width": 800.0 if system == "SI" else 30 * 25.4, "self_weight": False}
    first = beam(system, None, 20.0, depth=thin, loads=load_at(force, span / 2), **shape)
    second = beam(system, None, 20.0, depth=2 * thin, loads=load_at(force, span / 2), **shape)
    before, after = first.solve(), second.solve()
    clear(not before.cracks and not after.cracks)
    moved, less = before.movement.largest, after.movement.largest
    clear(less > 0.28)  # mm: enough that rounding hides nothing
    apart((less, moved / 4, moved / 2, moved))
    text = _(
        "An uncracked plank of {size} and {span} span moves {moved} under a load. Cast it twice "
        "as deep, load it the same: how far does it move? (Leave its own weight out.)"
    ).format(
        size=size_text(first, system),
        span=shown(span, "length", system),
        moved=shown(moved, "movement", system),
    )
    return asked("twice_as_deep", random, text, _deep_choices(moved, less, system), first)


def _deep_choices(moved: float, less: float, system: str) -> list:
    def far(value):
        return shown(value, "movement", system)

    return [
        right(
            far(less),
            _("Depth counts three times over: twice as deep is 2 × 2 × 2 = 8 times as stiff."),
        ),
        wrong(
            far(moved / 2),
            _("twice the depth is twice as stiff"),
            _("Twice the width would be twice as stiff. Depth counts three times over."),
        ),
        wrong(
            far(moved / 4),
            _("stiffness grows as strength does"),
            _("The stress drops to a quarter; the movement drops even more, to an eighth."),
        ),
        wrong(
            far(moved),
            _("the movement depends only on the load"),
            _("The same load moves a deeper member far less: its inside resists on a longer arm."),
        ),
    ]


def load_moved(random, system):
    """How much less is the bottom stretched when the load is moved from the middle?"""
    span = drawn(random, "length", system, 4000, 8000)
    force = drawn(random, "force", system, 20e3, 100e3)
    at = drawn(random, "length", system, 0.18 * span, 0.32 * span)
    common = {"span": span, "self_weight": False}
    middle = beam(system, None, loads=load_at(force, span / 2), **common).solve().worst.moment
    moved = beam(system, None, loads=load_at(force, at), **common)
    after = moved.solve().worst.moment
    by_distance = middle * at / (span / 2)
    apart((by_distance, after, middle, middle * span / (2 * at)))
    text = _(
        "{force} stands in the middle of a {span} span: the bending moment is {moment}. The load "
        "moves to {at} from the left support. How large is the largest moment now? "
        "(Leave the own weight out.)"
    ).format(
        force=shown(force, "force", system),
        span=shown(span, "length", system),
        moment=shown(middle, "moment", system),
        at=shown(at, "length", system),
    )
    choices = _moved_choices(middle, after, by_distance, middle * span / (2 * at), system)
    return asked("load_moved", random, text, choices, moved)


def _moved_choices(middle, after, by_distance, grown, system: str) -> list:
    def much(value):
        return shown(value, "moment", system)

    return [
        right(
            much(after),
            _(
                "Near one support the short side carries more, on a shorter arm: load × a × b / "
                "span. It drops, but slowly."
            ),
        ),
        wrong(
            much(middle),
            _("the stretch depends only on the load"),
            _("The same load bends a beam less the nearer it stands to a support."),
        ),
        wrong(
            much(by_distance),
            _("the moment drops in step with the distance"),
            _("The arm gets shorter, but the near support carries more of the load: both count."),
        ),
        wrong(
            much(grown),
            _("a load near the end bends the beam more"),
            _("Near a support more of the load goes straight into it. The beam bends less."),
        ),
    ]


def longer_span(random, system):
    """What does a longer span do to the moment of a spread load?"""
    span = drawn(random, "length", system, 3500, 5500)
    longer = drawn(random, "length", system, 1.4 * span, 2.0 * span)
    load = drawn(random, "line_load", system, 5.0, 25.0)
    common = {"uniform_load": load, "self_weight": False}
    first = beam(system, None, span=span, loads=load_at(0.0, span / 2), **common)
    second = beam(system, None, span=longer, loads=load_at(0.0, longer / 2), **common)
    small, large = first.solve().worst.moment, second.solve().worst.moment
    times = longer / span
    apart((small, small * times, large, small * times**3))
    text = _(
        "A load of {load} spread over a {span} span gives a bending moment of {moment}. The same "
        "load per length lies on a {longer} span. How large is the moment there?"
    ).format(
        load=shown(load, "line_load", system),
        span=shown(span, "length", system),
        longer=shown(longer, "length", system),
        moment=shown(small, "moment", system),
    )
    return asked("longer_span", random, text, _span_choices(small, large, times, system), second)


def _span_choices(small: float, large: float, times: float, system: str) -> list:
    def much(value):
        return shown(value, "moment", system)

    return [
        right(
            much(large),
            _("Span counts twice: there is more load on it, and it works on a longer arm."),
        ),
        wrong(
            much(small * times),
            _("the moment grows in step with the span"),
            _(
                "The longer span carries more load, and each part of it on a longer arm: count the "
                "span twice."
            ),
        ),
        wrong(
            much(small),
            _("the stretch depends only on the load on each length"),
            _("A plank over a wide ditch bends more under the same people than over a narrow one."),
        ),
        wrong(
            much(small * times**3),
            _("the moment grows as the movement does"),
            _("The movement grows even faster than that; for the moment the span counts twice."),
        ),
    ]
