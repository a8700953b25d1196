"""Questions about how bars hold cracks: cover, thickness, number and place of the bars."""

from dataclasses import replace

from crackkit.learning.choices import (
    SIZES,
    apart,
    asked,
    bars_text,
    beam,
    clear,
    drawn,
    load_at,
    right,
    size,
    width,
    width_text,
    wrong,
)
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.structures.judging import least_gap
from crackkit.structures.laid_bars import stirrup_diameter
from crackkit.structures.outcome import UNHELD, YIELDS
from crackkit.structures.simple_beam import member
from crackkit.words import _


def _ordinary(random, system, bottom, cover=None) -> object:
    span = drawn(random, "length", system, 5000, 7500)
    deep = drawn(random, "size", system, 450, 650)
    force = drawn(random, "force", system, 30e3, 90e3)
    over = drawn(random, "size", system, 30, 45) if cover is None else cover
    wide = drawn(random, "size", system, 300, 400)
    return beam(
        system,
        bottom,
        over,
        span=span,
        depth=deep,
        width=wide,
        uniform_load=8.0,
        loads=load_at(force, span / 2),
    )


def _fits(structure) -> None:
    whole = member(structure)
    clear(all(whole.clear_gap(item) >= least_gap(whole, item) for item in whole.layers))


def more_cover(random, system):
    """What does more cover do to the crack at the surface?"""
    steel, number = size(random, system, 3), random.choice((3, 4))
    thin = _ordinary(random, system, (number, steel))
    more = drawn(random, "size", system, 15, 35)
    over = thin.bottom.cover + more
    clear(over <= min(thin.width, thin.depth) / 5)
    thick = replace(thin, bottom=replace(thin.bottom, cover=over))
    before, after = width(thin.solve()), width(thick.solve())
    apart((before, after, before**2 / after), 1.1)
    text = _(
        "A beam with {bars} and {cover} of cover has cracks of {width} at its surface. The same "
        "beam is cast with {thick} of cover. What becomes of the cracks at the surface?"
    ).format(
        bars=bars_text(number, steel),
        cover=shown(thin.bottom.cover, "size", system),
        thick=shown(thick.bottom.cover, "size", system),
        width=width_text(before, system),
    )
    choices = _cover_choices(before, after, system)
    return asked("more_cover", random, text, choices, thin)


def _cover_choices(before: float, after: float, system: str) -> list:
    return [
        right(
            _("They are wider: {w}").format(w=width_text(after, system)),
            _(
                "A crack is held at the bar and gapes from there to the surface. The farther the "
                "surface is from the bar, the wider it is. Cover guards the steel from rust: it is "
                "needed all the same."
            ),
        ),
        wrong(
            _("They are finer: {w}").format(w=width_text(before**2 / after, system)),
            _("more cover makes cracks smaller at the surface"),
            _("More cover keeps water from the steel, but at the surface the crack gapes wider."),
        ),
        wrong(
            _("They stay as they are: {w}").format(w=width_text(before, system)),
            _("the width depends only on the load"),
            _("The load is the same, but the surface now lies farther from the bars."),
        ),
        wrong(
            _("They are gone: thick cover does not crack"),
            _("more concrete outside the bars stops cracks"),
            _("The cover is stretched even more than the steel inside, and it cracks first."),
        ),
    ]


def _pairs(system: str) -> list:
    """Few thick and many thin bars of nearly the same area."""
    sizes = [bar(name) for name in SIZES[system]]
    few = [(n, b) for n in (2, 3) for b in sizes[3:]]
    many = [(n, b) for n in (4, 5, 6) for b in sizes[1:5]]
    return [
        (a, b)
        for a in few
        for b in many
        if a[1].diameter > 1.2 * b[1].diameter
        and abs(a[0] * a[1].area / (b[0] * b[1].area) - 1) < 0.07
    ]


def thick_or_thin(random, system):
    """Which bars of the same weight keep the cracks finer?"""
    few, many = random.choice(_pairs(system))
    coarse = _ordinary(random, system, few)
    fine = replace(coarse, bottom=replace(coarse.bottom, size=many[1].name, number=many[0]))
    _fits(fine)
    wide, small = width(coarse.solve()), width(fine.solve())
    apart((wide, small), 1.08)
    a, b = bars_text(*few), bars_text(*many)
    text = _(
        "Two ways to lay nearly the same weight of steel in a beam: {a} or {b}. Which keeps the "
        "cracks finer under the same load?"
    ).format(a=a, b=b)
    numbers = {"a": a, "b": b, "wide": width_text(wide, system), "fine": width_text(small, system)}
    clear(numbers["wide"] != numbers["fine"])
    return asked("thick_or_thin", random, text, _thick_choices(numbers), coarse)


def _thick_choices(numbers: dict) -> list:
    fine = _(
        "{b} leave {fine}, {a} leave {wide}: many thin bars have more surface that grips the "
        "concrete, and the cracks come closer together and finer."
    ).format(**numbers)
    return [
        right(numbers["b"], fine),
        wrong(
            numbers["a"],
            _("thick bars hold better than thin ones of the same weight"),
            _(
                "A thick bar is as strong, but it grips with less surface, and far from it the "
                "crack gapes: {wide} against {fine}."
            ).format(**numbers),
        ),
        wrong(
            _("both the same, for the weight is the same"),
            _("only the weight of steel counts"),
            _(
                "Weight sets the pull in the bars; their number and surface set how fine the "
                "cracks are: {wide} against {fine}."
            ).format(**numbers),
        ),
        wrong(
            _("both: neither beam cracks at all"),
            _("steel prevents cracking"),
            _("Both crack: steel holds cracks only once they are there."),
        ),
    ]


def one_more_bar(random, system):
    """What do more bars of the same size do to the crack?"""
    steel, number = size(random, system, 3), random.choice((2, 3))
    first = _ordinary(random, system, (number, steel))
    more = number + random.choice((1, 2))
    second = replace(first, bottom=replace(first.bottom, number=more))
    _fits(second)
    before, after = width(first.solve()), width(second.solve())
    gain = before / after
    apart((after, before, before * gain), 1.1)
    text = _(
        "A beam with {few} has cracks of {width}. What becomes of them with {many}, under the "
        "same load?"
    ).format(
        few=bars_text(number, steel), many=bars_text(more, steel), width=width_text(before, system)
    )
    return asked("one_more_bar", random, text, _more_choices(before, after, system), first)


def _more_choices(before: float, after: float, system: str) -> list:
    def wide(value):
        return _("cracks of about {w}").format(w=width_text(value, system))

    return [
        right(
            wide(after),
            _(
                "More bars share the pull, so each stretches less, and the cracks come closer "
                "together. Both make them finer."
            ),
        ),
        wrong(
            wide(before),
            _("the width depends only on the load"),
            _("The pull is the same, but more bars share it: each stretches less."),
        ),
        wrong(
            wide(before**2 / after),
            _("more bars weaken the concrete, so it gapes"),
            _("Bars that lie apart enough for the stones do not weaken it. They share the pull."),
        ),
        wrong(
            _("no cracks any more"),
            _("steel prevents cracking"),
            _("The cracks are still there, only finer. Concrete stretches before steel can hold."),
        ),
    ]


def where_the_bars_lie(random, system):
    """Where do the bars hold best in a beam that bends like a smile?"""
    steel, number = size(random, system, 3), random.choice((3, 4))
    low = _ordinary(random, system, (number, steel))
    best = width(low.solve())
    _fits(low)
    middle, high = (_raised(low, share) for share in (0.5, 0.0))
    clear(high.solve().verdict.key == UNHELD)
    clear(middle.solve().verdict.key in (UNHELD, YIELDS))
    text = _("This beam gets {bars}, all at one height. Where do they keep the cracks finest?")
    text = text.format(bars=bars_text(number, steel))
    choices = _where_choices(width_text(best, system))
    return asked("where_the_bars_lie", random, text, choices, low)


def _raised(low, share: float):
    """Give the beam with its bottom bars at a share of the depth [-] instead; 0 is the top."""
    bars = low.bottom
    inset = bars.cover + stirrup_diameter(low.stirrup) + bar(bars.size).diameter / 2
    upper = replace(bars, face="top", drop=max(share * low.depth - inset, 0.0))
    return replace(low, bottom=replace(bars, number=0), top=upper)


def _where_choices(best: str) -> list:
    choices = [
        right(
            _("near the bottom, with the cover the place asks for"),
            _("There the stretch is largest and the bars have the longest arm: {best}."),
        ),
        wrong(
            _("half way down, well wrapped in concrete"),
            _("bars in the middle are the safest"),
            _(
                "Half way down hardly anything is stretched: the crack has run past before the "
                "bars feel it, and on so short an arm they give way. Near the bottom: {best}."
            ),
        ),
        wrong(
            _("near the top, under the load"),
            _("bars belong where the load presses"),
            _(
                "The top is squeezed, and concrete is good at that. No bar would cross the crack "
                "at the bottom."
            ),
        ),
        wrong(
            _("it does not matter, as long as the steel is in it"),
            _("only the weight of steel counts"),
            _(
                "The same bars hold the cracks to {best} near the bottom, and nothing at all on "
                "top."
            ),
        ),
    ]
    return [replace(choice, why=choice.why.format(best=best)) for choice in choices]
