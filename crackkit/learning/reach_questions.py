"""Questions about top bars of floors: how far they reach, and what changes the moment over them."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, drawn, right, wrong
from crackkit.learning.floors_asked import (
    drawn_loads,
    floor_of,
    frown_reach,
    moment_over,
    with_live,
)
from crackkit.learning.telling import shown
from crackkit.words import _


def _three_spans(random, system, low: float = 1.2, high: float = 3.0):
    length = drawn(random, "length", system, 4000, 6000)
    dead, live = drawn_loads(random, system, low, high)
    told = {
        "length": shown(length, "length", system),
        "dead": shown(dead, "line_load", system),
        "live": shown(live, "line_load", system),
    }
    return floor_of(system, [length] * 3, dead, live), told


def reach_of_top_bars(random, system):
    """How far must top bars reach from support B into the end span?"""
    slab, told = _three_spans(random, system, 0.5, 3.0)
    outcome, (end, over) = slab.solve(), slab.places[:2]
    full = frown_reach(outcome.x, outcome.moment, over, end) / over
    needed = frown_reach(outcome.x, outcome.range.hogging, over, end) / over
    apart((0.1, full, needed, 1.0), 1.2)
    text = _(
        "A slab runs over three spans of {length}, with a dead load of {dead}. A live load of "
        "{live} comes and goes, span by span. How far from support B is the top of span 1 "
        "stretched at some time, as a share of the span?"
    ).format(**told)
    choices = _share_choices(full, needed)
    return asked("reach_of_top_bars", random, text, choices, with_live(slab, (2,)))


def _share_choices(full: float, needed: float) -> list:
    def much(share):
        return _("to {n} of the span").format(n=f"{share:.2f}")

    return [
        right(
            much(needed),
            _("With span 1 empty and span 2 full the frown reaches that far: bars must cross it."),
        ),
        wrong(
            much(full),
            _("one sketch with load everywhere shows the worst"),
            _("That is the sketch with all spans full. Load on span 1 keeps the frown short."),
        ),
        wrong(
            much(full**2 / needed),
            _("less load always means less stretch"),
            _("An empty span is lifted farther: the frown grows when its own load goes."),
        ),
        wrong(
            _("only right above the support"),
            _("top bars are needed only above the support"),
            _("The top is stretched on both sides of the support, well into the spans."),
        ),
    ]


def sunk_support(random, system):
    """What does a support that sinks do to the moment over it?"""
    slab, told = _three_spans(random, system)
    by = drawn(random, "movement", system, 3, 15)
    sunk = [replace(each, sunk=by if k == 1 else 0.0) for k, each in enumerate(slab.supports)]
    before, after = moment_over(slab, 1), moment_over(replace(slab, supports=tuple(sunk)), 1)
    clear(after > 0.2 * before)
    apart((after, before, 2 * before - after), 1.1)
    text = _(
        "A slab runs over three spans of {length} with a dead load of {dead} and a live "
        "load of {live} on all of them. Over support B it is bent by {moment}, like a frown. Then "
        "support B sinks by {by}. How much is it bent over B now?"
    ).format(
        moment=shown(before, "moment", system),
        by=shown(by, "movement", system),
        **told,
    )
    choices = _sunk_choices(before, after, system)
    return asked("sunk_support", random, text, choices, slab)


def _sunk_choices(before: float, after: float, system: str) -> list:
    def much(moment):
        return shown(moment, "moment", system)

    return [
        right(
            much(after),
            _(
                "A support that sinks bears less, so the slab is bent less over it. The spans "
                "beside it, and the next support, must bear what it lets go."
            ),
        ),
        wrong(
            much(before),
            _("only loads bend a floor"),
            _("A floor is bent by whatever forces it out of line: sunk supports do so, too."),
        ),
        wrong(
            much(2 * before - after),
            _("a support that gives way is bent harder"),
            _("It is the other way about. The next support gets more."),
        ),
        wrong(
            _("not at all: it hangs free now"),
            _("a support that sinks bears nothing any more"),
            _("It still bears a part, as long as the slab lies on it."),
        ),
    ]


def ease_the_support(random, system):
    """Which change lowers the moment over support B?"""
    slab, told = _three_spans(random, system)
    full = moment_over(slab, 1)
    beside, beyond = (moment_over(with_live(slab, spans), 1) for spans in ((1, 3), (1, 2)))
    clear(1.05 * beside < full < beyond / 1.05)
    text = _(
        "A slab runs over three spans of {length} with a dead load of {dead} and a live "
        "load of {live} on all of them; over support B it is bent by {moment}. Which change lowers "
        "that moment?"
    ).format(moment=shown(full, "moment", system), **told)
    less, more = (shown(moment, "moment", system) for moment in (beside, beyond))
    return asked("ease_the_support", random, text, _ease_choices(less, more), slab)


def _ease_choices(less: str, more: str) -> list:
    return [
        right(
            _("Take the live load off span 2"),
            _("Span 2 no longer pulls down beside B: the moment falls to {m}.").format(m=less),
        ),
        wrong(
            _("Take the live load off span 3"),
            _("less load anywhere is less moment everywhere"),
            _("It rises to {m}: the load on span 3 worked against the frown over B.").format(
                m=more
            ),
        ),
        wrong(
            _("Lay twice as many top bars over B"),
            _("steel takes the moment away"),
            _(
                "Bars bear the moment, they do not lower it. Cracked and stiffer with more steel, "
                "the place even draws a little more to itself."
            ),
        ),
        wrong(
            _("Choose a stronger concrete"),
            _("stronger means less bent"),
            _("The moment comes from loads and spans. All the concrete is stronger alike."),
        ),
    ]
