"""Questions about floors over several spans: which face, and which spans to load."""

from crackkit.learning.choices import apart, asked, clear, drawn, right, wrong
from crackkit.learning.floor import stretched
from crackkit.learning.floors_asked import (
    drawn_loads,
    floor_of,
    frown_reach,
    spans_text,
    with_live,
)
from crackkit.learning.telling import shown
from crackkit.words import _

LETTERS = "ABCDEFG"


def face_over_support(random, system):
    """Which face is stretched over an inner support?"""
    spans = [drawn(random, "length", system, 4000, 6000) for _k in range(3)]
    dead, live = drawn_loads(random, system)
    slab, inner = floor_of(system, spans, dead, live), random.choice((1, 2))
    outcome, at = slab.solve(), slab.places[inner]
    clear(stretched(outcome, "top", at) and not stretched(outcome, "bottom", at))
    a, b, c = (shown(span, "length", system) for span in spans)
    load = shown(dead + live, "line_load", system)
    text = _(
        "A slab runs over three spans of {a}, {b} and {c}. A load of {load} lies on all of them. "
        "Which face is stretched over support {letter}?"
    ).format(a=a, b=b, c=c, load=load, letter=LETTERS[inner])
    return asked("face_over_support", random, text, _face_choices(LETTERS[inner]), slab)


def _face_choices(letter: str) -> list:
    hangs = _("Both spans hang down from support {letter}: the slab bends like a frown there.")
    return [
        right(_("The top"), hangs.format(letter=letter)),
        wrong(
            _("The bottom"),
            _("the bottom is always the stretched side"),
            _("In the spans it is. Over a support the slab bends the other way."),
        ),
        wrong(
            _("Neither: over a support it does not bend"),
            _("where a slab cannot sink it cannot bend"),
            _("It stays at its height, but it is bent there more than anywhere else."),
        ),
        wrong(
            _("Both: load and support push from both sides"),
            _("pushing from both sides stretches both faces"),
            _("One face gets longer and the other shorter: they cannot both be stretched."),
        ),
    ]


def _equal_spans(random, system, counts):
    count, length = random.choice(counts), drawn(random, "length", system, 4000, 6000)
    dead, live = drawn_loads(random, system)
    told = {"count": count, "length": shown(length, "length", system)}
    told["live"] = shown(live, "line_load", system)
    return floor_of(system, [length] * count, dead, live), told


def worst_for_span(random, system):
    """Which spans must be loaded for the largest moment in the middle of a span?"""
    slab, told = _equal_spans(random, system, (4, 5))
    span = random.choice(range(2, told["count"]))
    middle = (slab.places[span - 1] + slab.places[span]) / 2
    worst = slab.solve().range.arrangement("bottom", middle).spans
    text = _(
        "A slab runs over {count} spans of {length}. A live load of {live} comes and goes, span "
        "by span. Which spans must carry it so that the bottom is stretched most in the middle of "
        "span {span}?"
    ).format(span=span, **told)
    choices = _for_span_choices(worst, span, told["count"])
    return asked("worst_for_span", random, text, choices, with_live(slab, ()))


def _for_span_choices(worst, span: int, count: int) -> list:
    lifts = _("The load on its neighbours lifts span {n}. Without it, span {n} sags more.")
    piece = _("They are one piece: load two spans away makes span {n} sag a little more.")
    return [
        right(
            spans_text(worst),
            _("Load beside it would lift it. Load on every second span makes it sag."),
        ),
        wrong(
            spans_text(range(1, count + 1)),
            _("more load is always worse"),
            lifts.format(n=span),
        ),
        wrong(
            spans_text((span,)),
            _("what stands on other spans does not touch this one"),
            piece.format(n=span),
        ),
        wrong(
            spans_text((span - 1, span, span + 1)),
            _("loads near by always add up"),
            lifts.format(n=span),
        ),
    ]


def worst_over_support(random, system):
    """Which spans must be loaded for the largest moment over an inner support?"""
    slab, told = _equal_spans(random, system, (4, 5))
    inner = random.choice(range(1, told["count"]))
    worst = slab.solve().range.arrangement("top", slab.places[inner]).spans
    text = _(
        "A slab runs over {count} spans of {length}. A live load of {live} comes and goes, span "
        "by span. Which spans must carry it so that the top is stretched most over support "
        "{letter}, between spans {left} and {next}?"
    ).format(letter=LETTERS[inner], left=inner, next=inner + 1, **told)
    choices = _over_support_choices(worst, inner, told["count"])
    return asked("worst_over_support", random, text, choices, with_live(slab, ()))


def _over_support_choices(worst, inner: int, count: int) -> list:
    every = range(1, count + 1)
    return [
        right(
            spans_text(worst),
            _("Both spans beside it, and from there outwards every second one."),
        ),
        wrong(
            spans_text(every),
            _("more load is always worse"),
            _("Load on the span after next works against the frown over this support."),
        ),
        wrong(
            spans_text((inner, inner + 1)),
            _("only the loads beside a support count"),
            _("They count most. But load farther off adds a little, on every second span."),
        ),
        wrong(
            spans_text([k for k in every if (k - inner) % 2 == 0]),
            _("every second span is always the worst"),
            _("That is so for a span. A support is bent most when both its neighbours are loaded."),
        ),
    ]


def one_span_loaded(random, system):
    """How far is the top of an empty span stretched beside a loaded one?"""
    length = drawn(random, "length", system, 4000, 6000)
    dead, live = drawn_loads(random, system, 0.5, 1.2)
    slab = floor_of(system, [length] * 3, dead, live)
    one = with_live(slab, (1,))
    full, alone = _reach_into_span_2(slab), _reach_into_span_2(one)
    apart((full, alone, length), 1.15)
    text = _(
        "A slab runs over three spans of {length}. With a live load of {live} on all of them, "
        "besides the dead load of {dead}, the top of span 2 is stretched to {far} from support B. "
        "The live load leaves spans 2 and 3 and stays on span 1. How far is it stretched now?"
    ).format(
        length=shown(length, "length", system),
        live=shown(live, "line_load", system),
        dead=shown(dead, "line_load", system),
        far=shown(full, "length", system),
    )
    choices = _reach_choices(full, alone, system)
    return asked("one_span_loaded", random, text, choices, one)


def _reach_into_span_2(slab) -> float:
    outcome = slab.solve()
    return frown_reach(outcome.x, outcome.moment, *slab.places[1:3])


def _reach_choices(full: float, alone: float, system: str) -> list:
    def far(value):
        return _("to {x} from support B").format(x=shown(value, "length", system))

    return [
        right(
            far(alone),
            _("Span 1 still bends it over support B, and its own load no longer presses it down."),
        ),
        wrong(
            far(full),
            _("what stands on a span does not matter for the top beside it"),
            _("The live load of span 2 pressed it into a smile. It has gone, so the frown grows."),
        ),
        wrong(
            far(full**2 / alone),
            _("less load always means less stretch"),
            _("Less load on span 2 means less smile there: the frown reaches farther."),
        ),
        wrong(
            _("nowhere: an empty span is not bent"),
            _("a span without load is not bent"),
            _("It is one piece with span 1, whose load bends it over the support."),
        ),
    ]
