"""Questions about how hard an inside corner is pulled: place, concrete, depth, and a box-out."""

from dataclasses import replace

import numpy as np

from crackkit.learning.choices import apart, asked, clear, drawn, right, wrong
from crackkit.learning.corner_asked import DEPTHS, corner_pull, floor_of, floor_text, torn
from crackkit.learning.telling import shown
from crackkit.structures.corner_slab import CornerSlab
from crackkit.units.quantities import FOOT, INCH, PSI
from crackkit.words import _

STRONGER = {
    "SI": ((20.0, 35.0), (25.0, 40.0), (25.0, 45.0), (30.0, 50.0)),
    "US": tuple((a * PSI, b * PSI) for a, b in ((3000, 5000), (3500, 6000), (4000, 7000))),
}
DEEPER = {
    "SI": ((100.0, 150.0), (100.0, 200.0), (125.0, 200.0), (150.0, 250.0)),
    "US": tuple((a * INCH, b * INCH) for a, b in ((4, 6), (4, 8), (5, 8), (6, 10))),
}
BOX = {"SI": (6000.0, 600.0), "US": (20 * FOOT, 2 * FOOT)}  # floor, box-out
TURNED_WORSE = 1.4  # about what turning does where the floor is pulled one way
YEARS = 365.0, 540.0, 730.0


def where_it_starts(random, system):
    """Where does a floor with an inside corner crack first?"""
    slab = floor_of(random, system, age=random.choice(YEARS))
    state = torn(slab)
    side, outer = _beside(state.field)
    clear(state.share > 1.5 * max(side, outer))
    text = _(
        "{floor} is tied to the walls all round. It is {age} old, and shrinks. Where would it "
        "crack first?"
    ).format(floor=floor_text(slab, system), age=shown(slab.age, "age", system))
    told = {"corner": shown(state.share, "ratio", system), "side": shown(side, "ratio", system)}
    return asked("where_it_starts", random, text, _start_choices(told), slab)


def _beside(field) -> tuple[float, float]:
    """Pull in the middle of the near side, and at the near left corner, over strength [-]."""
    middle = len(field.x) // 2
    side = np.nanmax(field.share[:2, middle - 1 : middle + 2])
    return float(side), float(np.nanmax(field.share[:2, :2]))


def _start_choices(told: dict) -> list:
    return [
        right(
            _("At the inside corner"),
            _(
                "The pull crowds round it: its mean there is {corner} of what the concrete bears. "
                "In the middle of the longest side it is {side}."
            ).format(**told),
        ),
        wrong(
            _("In the middle of its longest side"),
            _("what is longest cracks in its middle"),
            _(
                "So it is with a straight strip. Here a corner makes the pull crowd: it has "
                "{corner} of what the concrete bears, the middle of that side {side}."
            ).format(**told),
        ),
        wrong(
            _("At one of its outer corners"),
            _("any corner is a weak place"),
            _("An outer corner has nobody to pull beyond it. It is the inside one that tears."),
        ),
    ]


def stronger_at_the_corner(random, system):
    """How hard is the corner pulled if the concrete is stronger?"""
    weak, strong = random.choice(STRONGER[system])
    age = drawn(random, "age", system, 200.0, 700.0)
    slab = floor_of(random, system, age=age, strength=weak)
    before, after = (corner_pull(each) for each in (slab, replace(slab, strength=strong)))
    text = _(
        "{floor} is tied to the walls all round. After {age} its inside corner is pulled with "
        "{pull} of what its concrete of {weak} bears. And with concrete of {strong}, held to the "
        "same degree: with how much of what that bears?"
    ).format(
        floor=floor_text(slab, system),
        age=shown(age, "age", system),
        pull=shown(before, "ratio", system),
        weak=shown(weak, "strength", system),
        strong=shown(strong, "strength", system),
    )
    values = after, before, before * weak / strong
    clear(after > before)
    apart(values, 1.04)
    return asked("stronger_at_the_corner", random, text, _strong_choices(values, system), slab)


def _strong_choices(values, system: str) -> list:
    after, before, less = (shown(v, "ratio", system) for v in values)
    return [
        right(
            after,
            _(
                "More: it is stiffer, gives way less, and is more brittle, so the sharp corner "
                "counts for more. All that outdoes its strength."
            ),
        ),
        wrong(
            less,
            _("stronger concrete does not crack"),
            _("It bears more. But what shrinks and is stiff pulls harder as well."),
        ),
        wrong(
            before,
            _("how strong it is does not matter, for only the form counts"),
            _("The form makes the corner; how hard it pulls the concrete decides."),
        ),
    ]


def thicker_at_the_corner(random, system):
    """How hard is the corner of a thicker floor pulled in the end?"""
    thin, thick = random.choice(DEEPER[system])
    age = random.choice((1825.0, 2555.0, 3650.0))
    slab = floor_of(random, system, age=age, thickness=thin)
    before, after = (corner_pull(each) for each in (slab, replace(slab, thickness=thick)))
    text = _(
        "{floor} is tied to the walls all round. After {years} years its inside corner is pulled "
        "with {pull} of what the concrete bears. And if it were {thick} thick, held to the same "
        "degree?"
    ).format(
        floor=floor_text(slab, system),
        years=round(age / 365.0),
        pull=shown(before, "ratio", system),
        thick=shown(thick, "size", system),
    )
    values = after, before, before * thin / thick
    clear(after < before)
    apart(values, 1.04)
    return asked("thicker_at_the_corner", random, text, _thick_choices(values, system), slab)


def _thick_choices(values, system: str) -> list:
    after, before, less = (shown(v, "ratio", system) for v in values)
    return [
        right(
            after,
            _(
                "A little less: in the same years less water leaves it, so it shrinks less. But "
                "more depth does not share the pull: as much more concrete pulls."
            ),
        ),
        wrong(
            less,
            _("thicker is always better: more concrete shares the pull"),
            _("The pull comes from the concrete itself: more of it pulls as much more."),
        ),
        wrong(
            before,
            _("depth does nothing at all"),
            _("It does not share the pull. But water needs longer to find its way out."),
        ),
    ]


def box_out_turned(random, system):
    """What does turning a square box-out by 45 degrees do?"""
    held = random.choice(("ends", "edges"))
    age = drawn(random, "age", system, 200.0, 700.0)
    slab = _with_box_out(random, system, held, age)
    along, turned = (corner_pull(replace(slab, turn=turn)) for turn in ("square", "turned"))
    ratio = turned / along
    clear(ratio > 1.2 if held == "ends" else abs(ratio - 1.0) < 0.03)
    ways = {
        "ends": _("tied at two opposite ends, so pulled one way"),
        "edges": _("tied to the walls all round, so pulled alike both ways"),
    }
    text = _(
        "A floor {side} by {side} with a column in its middle is {way}. After {age} the worst "
        "corner of the square box-out round the column is pulled with {pull} of what the concrete "
        "bears. And if the box-out had been turned by 45 degrees?"
    ).format(
        side=shown(slab.length, "length", system),
        way=ways[held],
        age=shown(age, "age", system),
        pull=shown(along, "ratio", system),
    )
    choices = _box_choices(along, turned, held == "ends", system)
    return asked("box_out_turned", random, text, choices, slab)


def _with_box_out(random, system: str, held: str, age: float) -> CornerSlab:
    room, wide = BOX[system]
    sizes = {"length": room, "width": room, "cut_length": wide, "cut_width": wide}
    sizes |= {"cut_x": room / 2, "cut_y": room / 2, "thickness": random.choice(DEPTHS[system])}
    return floor_of(random, system, shape="column", held=held, holds=0.3, age=age, **sizes)


def _box_choices(along: float, turned: float, one_way: bool, system: str) -> list:
    same, most, least = (
        shown(v, "ratio", system)
        for v in (along, turned if one_way else TURNED_WORSE * along, along / TURNED_WORSE)
    )
    better = wrong(
        least,
        _("a turned box-out is always better"),
        _(
            "Pulled so, it is no milder turned. It is done so that joints start at its points "
            "(common practice): then the crack has its line."
        ),
    )
    if one_way:
        return [
            right(
                most,
                _("Harder: two of its points now lie square to the pull, as a notch does."),
            ),
            wrong(
                same,
                _("it is the same hole, however it lies"),
                _("What counts is how a corner lies to the pull: now it is straight across."),
            ),
            better,
        ]
    return [
        right(
            same,
            _("Alike: a floor pulled both ways pulls at a corner alike, however it is turned."),
        ),
        wrong(
            most,
            _("a point is always worse than a side"),
            _("It is when pulled one way. Pulled both ways, no way of lying is special."),
        ),
        better,
    ]
