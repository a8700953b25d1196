"""Questions about mats: how much steel, thick or thin, close or far apart, bent or pulled."""

from dataclasses import replace

from crackkit.learning.choices import (
    apart,
    asked,
    clear,
    drawn,
    mat_text,
    right,
    width_text,
    wrong,
)
from crackkit.learning.mats_asked import SIZES, STRIP, mat_of, pull_of, size_of, width_of
from crackkit.learning.telling import shown, told_in
from crackkit.mechanics.bars import bar
from crackkit.structures.placing import least_gap
from crackkit.units.quantities import INCH
from crackkit.words import _

HALVES = {"SI": (("20", "10"), ("16", "8"), ("12", "6")), "US": (("#8", "#4"), ("#6", "#3"))}
STONES = {"SI": (16.0, 20.0, 22.0, 25.0, 32.0), "US": (0.75 * INCH, 1 * INCH, 1.5 * INCH)}
PER = {"SI": _("on each metre"), "US": _("on each foot")}


def area_of_a_mat(random, system):
    """How much steel is there on each metre, or foot?"""
    steel = size_of(random, system)
    spacing = drawn(random, "size", system, 90, 250)
    strip = mat_of(system, steel, spacing)
    area = float(strip.main_bars().area) * STRIP[told_in(system)] / STRIP[system]
    text = _("A mat has {mat}. How much steel is that {per}, counted in that one direction?")
    text = text.format(mat=mat_text(steel, spacing, system), per=PER[told_in(system)])
    square = steel.diameter**2 / steel.area * area
    apart((area, square, 2 * area))
    choices = _area_choices(area, square, steel.area, system)
    return asked("area_of_a_mat", random, text, choices, strip)


def _area_choices(area: float, square: float, each: float, system: str) -> list:
    def much(value):
        return shown(value, "area", system)

    return [
        right(
            much(area),
            _("One bar has {each}, and there are as many as the spacing goes into it.").format(
                each=much(each)
            ),
        ),
        wrong(
            much(square),
            _("a bar has the area of its diameter squared"),
            _("That would be a square bar. A round one has about four fifths of it."),
        ),
        wrong(
            much(2 * area),
            _("the bars of both directions count together"),
            _("The bars across do not hold a crack that runs along them."),
        ),
    ]


def half_the_size(random, system):
    """How close must bars of half the diameter lie for the same steel?"""
    thick, thin = (bar(name) for name in random.choice(HALVES[system]))
    spacing = drawn(random, "size", system, 200, 340)
    needed = spacing * thin.area / thick.area
    strip = mat_of(system, thick, spacing)
    apart((needed / 2, needed, spacing / 2, spacing), 1.2)
    text = _(
        "The drawing has {mat}. You want the same weight of steel with bars of half the diameter, "
        "{thin}. How close must they lie?"
    ).format(mat=mat_text(thick, spacing, system), thin=_name(thin))
    choices = _half_choices(needed, spacing, system)
    return asked("half_the_size", random, text, choices, strip)


def _name(steel) -> str:
    return steel.name if steel.name.startswith("#") else f"{steel.name} mm"


def _half_choices(needed: float, spacing: float, system: str) -> list:
    def every(value):
        return _("one every {spacing}").format(spacing=shown(value, "size", system))

    return [
        right(
            every(needed),
            _("Half the diameter is a quarter of the area: four times as many bars."),
        ),
        wrong(
            every(spacing / 2),
            _("a bar of half the diameter has half the steel"),
            _("The area goes with the square of the diameter: it has a quarter."),
        ),
        wrong(
            every(spacing),
            _("only the spacing on the drawing counts"),
            _("Then only a quarter of the steel would be left: it would be pulled far too hard."),
        ),
        wrong(
            every(needed / 2),
            _("half the diameter is an eighth of the steel"),
            _("An eighth is for balls. A bar keeps its length: a quarter."),
        ),
    ]


def finest_mat(random, system):
    """Which of several mats of one weight has the finest cracks?"""
    k = random.randint(0, len(SIZES[system]) - 3)
    bars = [bar(name) for name in SIZES[system][k : k + 3]]
    first = drawn(random, "size", system, 60, 110)
    usual = {"stress": pull_of(random, system)}
    mats = [mat_of(system, each, first * each.area / bars[0].area, **usual) for each in bars]
    widths = [width_of(each) for each in mats]
    apart(widths, 1.03)
    clear(all(_can_be_laid(each) for each in mats))
    text = _(
        "Three mats of the same weight: {list}. The same load pulls on each. Which has the finest "
        "cracks?"
    )
    names = [mat_text(one.bar, one.spacing, system) for one in mats]
    choices = _finest_choices(names, widths, system)
    return asked("finest_mat", random, text.format(list="; ".join(names)), choices, mats[1])


def _can_be_laid(mat) -> bool:
    """Whether the stones pass, and the bars act together: beyond that EN 1992 has another rule."""
    found = mat.control
    return found.main.bars.gap >= found.least_gap and mat.spacing <= found.widest


def _finest_choices(names: list[str], widths: list[float], system: str) -> list:
    told = [width_text(each, system) for each in widths]
    beliefs = (
        _("thin bars are weak"),
        _("the middle of the road is best"),
        _("thick bars hold best"),
    )
    finest = widths.index(min(widths))
    why = _("{width} here. More bars have more skin: the thinnest leave {least}.")
    choices = [
        wrong(names[k], beliefs[k], why.format(width=told[k], least=told[finest]))
        for k in range(3)
        if k != finest
    ]
    text = _("{least}, against {most} with the thickest. More bars have more skin to be gripped.")
    said = text.format(least=told[finest], most=told[widths.index(max(widths))])
    return [
        right(names[finest], said),
        *choices,
        wrong(
            _("none: they have the same steel"),
            _("only the weight of steel counts"),
            _("The pull in the steel is the same, the skin that grips the concrete is not."),
        ),
    ]


def room_for_stones(random, system):
    """How close may bars lie so that the stones pass?"""
    steel = size_of(random, system, 1, 5)
    stones = random.choice(STONES[system])
    strip = mat_of(system, steel, 150.0, stones=stones)
    gap = least_gap(strip.code, steel.diameter, stones)
    every, tight = gap + steel.diameter, stones + steel.diameter
    apart((gap, tight, every, every + steel.diameter), 1.04)
    text = _(
        "The stones of the concrete are up to {stones} large, the bars are {bar}. How close may "
        "they lie, centre to centre, by {rule}?"
    ).format(stones=shown(stones, "size", system), bar=_name(steel), rule=_rule(strip.code))
    choices = _room_choices(gap, tight, steel.diameter, system)
    return asked("room_for_stones", random, text, choices, strip)


def _rule(code: str) -> str:
    return "ACI 318-19 25.2.1" if code == "ACI" else "EN 1992-1-1 8.2"


def _room_choices(gap: float, tight: float, diameter: float, system: str) -> list:
    def far(value):
        return shown(value, "size", system)

    return [
        right(
            far(gap + diameter),
            _("Clear between them {gap}, and the bar itself.").format(gap=far(gap)),
        ),
        wrong(
            far(gap),
            _("the clear distance is measured centre to centre"),
            _("The bar takes its own room: clear between them less than a stone would be left."),
        ),
        wrong(
            far(tight),
            _("stones pass through a gap as wide as they are"),
            _("They jam: two stones meet in the gap. It must be clearly wider than a stone."),
        ),
        wrong(
            far(gap + 2 * diameter),
            _("both bars beside a gap count with all their width"),
            _("Half of each counts, from its centre: one diameter in all."),
        ),
    ]


def bent_or_pulled(random, system):
    """What becomes of the cracks when the same bars are pulled straight?"""
    steel, spacing = size_of(random, system, 1, 4), drawn(random, "size", system, 100, 180)
    bent = mat_of(system, steel, spacing, stress=pull_of(random, system))
    pulled = replace(bent, action="pulled")
    a, b = (each.solve() for each in (bent, pulled))
    first, second = a.control.main.spacing, b.control.main.spacing
    apart((first**2 / second, first, second), 1.15)
    clear(b.cracks[0].path[-1][1] == 0.0 < a.cracks[0].path[-1][1])
    text = _(
        "A slab with {mat} near its bottom is bent, and cracks about every {far}. A floor has the "
        "same mat in both faces; it is pulled straight until its bars are pulled as hard. How "
        "does it crack?"
    ).format(mat=mat_text(steel, spacing, system), far=shown(first, "size", system))
    choices = _pulled_choices(first, second, system)
    return asked("bent_or_pulled", random, text, choices, bent)


def _pulled_choices(bent: float, pulled: float, system: str) -> list:
    def every(value, text):
        return text.format(far=shown(value, "size", system))

    through, half = (
        _("right through, about every {far}"),
        _("from below to the middle, about every {far}"),
    )
    return [
        right(
            every(pulled, through),
            _(
                "Nothing is squeezed, so nothing stops a crack. More concrete hangs on each bar, "
                "so it takes a longer way to crack again."
            ),
        ),
        wrong(
            every(bent, half),
            _("cracks always start below and stop half way"),
            _("They stop where the concrete is squeezed. Here all of it is pulled."),
        ),
        wrong(
            every(bent, through),
            _("the same bars and the same pull give the same cracks"),
            _("The cracks do go through. But now more concrete hangs on each bar."),
        ),
        wrong(
            every(bent**2 / pulled, through),
            _("bars in both faces bring twice the cracks"),
            _("Each bar has its own concrete to crack, and it is more than under bending."),
        ),
    ]
