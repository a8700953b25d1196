"""Questions about when concrete cracks: what steel and strength change in that, and what not."""

from crackkit.learning.choices import (
    apart,
    asked,
    bars_text,
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


def _cracking_load(member) -> float:
    """Load in the middle of the span at which the first crack opens [N], own weight left out."""
    return 4 * member.solve().worst.cracking_moment / member.span


def steel_and_first_crack(random, system):
    """From which load does it crack when there is twice the steel?"""
    span = drawn(random, "length", system, 4000, 7000)
    steel, number = size(random, system, 2, 5), random.choice((2, 3))
    deep = drawn(random, "size", system, 400, 600)
    common = {"span": span, "depth": deep, "self_weight": False}
    loads = load_at(60e3, span / 2)
    first = beam(system, (number, steel), loads=loads, **common)
    second = beam(system, (2 * number, steel), loads=loads, **common)
    before, after = _cracking_load(first), _cracking_load(second)
    clear(1.0 <= after / before < 1.2)
    apart((after, 1.41 * before, 2 * before), 1.1)
    text = _(
        "A beam of {size} and {span} span with {bars} shows its first crack under {load} in the "
        "middle. With {more} in it, at about which load does it crack?"
    ).format(
        size=size_text(first, system),
        span=shown(span, "length", system),
        bars=bars_text(number, steel),
        more=bars_text(2 * number, steel),
        load=shown(before, "force", system),
    )
    return asked(
        "steel_and_first_crack", random, text, _steel_choices(before, after, system), first
    )


def _steel_choices(before: float, after: float, system: str) -> list:
    def load(value):
        return _("at about {load}").format(load=shown(value, "force", system))

    return [
        right(
            load(after),
            _(
                "Steel hardly delays the first crack: concrete must stretch before bars are "
                "pulled. Steel keeps the crack small once it is there."
            ),
        ),
        wrong(
            load(2 * before),
            _("twice the steel, twice the load before it cracks"),
            _("The first crack is a matter of the concrete. The steel counts after it."),
        ),
        wrong(
            load(1.41 * before),
            _("more steel makes the concrete itself stronger"),
            _("The concrete is the same as before, and it cracks at nearly the same stretch."),
        ),
        wrong(
            _("it does not crack any more"),
            _("steel prevents cracking"),
            _("Steel does not prevent cracks. It crosses them and keeps them small."),
        ),
    ]


def stronger_concrete(random, system):
    """From which load does it crack when the concrete is stronger?"""
    span = drawn(random, "length", system, 4000, 7000)
    weak = drawn(random, "strength", system, 17.0, 30.0)
    common = {"span": span, "self_weight": False, "loads": load_at(60e3, span / 2)}
    first = beam(system, None, strength=weak, **common)
    second = beam(system, None, strength=2 * weak, **common)
    before, after = _cracking_load(first), _cracking_load(second)
    apart((before, after, 2 * before), 1.1)
    text = _(
        "A beam of plain {weak} concrete cracks under {load} in the middle. Cast it with "
        "concrete of twice the strength, {strong}: at which load does it crack?"
    ).format(
        weak=shown(weak, "strength", system),
        strong=shown(2 * weak, "strength", system),
        load=shown(before, "force", system),
    )
    return asked("stronger_concrete", random, text, _strong_choices(before, after, system), second)


def _strong_choices(before: float, after: float, system: str) -> list:
    def load(value):
        return _("at {load}").format(load=shown(value, "force", system))

    return [
        right(
            load(after),
            _("What concrete bears in stretch grows more slowly than what it bears in squeeze."),
        ),
        wrong(
            load(2 * before),
            _("stretch strength grows as squeeze strength does"),
            _("The strength on the delivery note is for squeezing. In stretch it gains far less."),
        ),
        wrong(
            load(before),
            _("all concrete cracks at the same stretch"),
            _("Stronger concrete does bear somewhat more stretch, only not in step."),
        ),
        wrong(
            _("it does not crack under any load"),
            _("stronger concrete has no cracks"),
            _("Any concrete cracks: in stretch it bears about a tenth of what it bears squeezed."),
        ),
    ]
