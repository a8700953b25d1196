"""Questions about cover, rust and fibres."""

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
from crackkit.learning.mats_asked import mat_of, pull_of, size_of, width_of
from crackkit.learning.telling import shown
from crackkit.mechanics.cover import least_cover
from crackkit.structures.durability import AIR_CHOICES
from crackkit.words import _

PLACES = {
    "moist": _("outside, in moist air"),
    "salt": _("where de-icing salt drips on it"),
    "sea": _("by the sea, in the spray"),
    "leak_tight": _("as the bottom of a water tank"),
}


def cover_and_width(random, system):
    """What becomes of the crack at the face under more cover?"""
    steel, spacing = size_of(random, system, 1, 4), drawn(random, "size", system, 90, 150)
    usual = drawn(random, "size", system, 20, 35)
    more = usual + drawn(random, "size", system, 10, 25)
    strip = mat_of(system, steel, spacing, cover=usual, stress=pull_of(random, system))
    deep = mat_of(system, steel, spacing, cover=more, stress=strip.stress)
    before, after = width_of(strip), width_of(deep)
    clear(after > before)
    apart((before**2 / after, before, after), 1.08)
    text = _(
        "A slab has {mat} under {usual} of cover, and cracks of {width} at its face. In the next "
        "pour the same bars, pulled as hard, lie under {more}. How wide are the cracks there?"
    ).format(
        mat=mat_text(steel, spacing, system),
        usual=shown(usual, "size", system),
        more=shown(more, "size", system),
        width=width_text(before, system),
    )
    choices = _width_choices(before, after, system)
    return asked("cover_and_width", random, text, choices, strip)


def _width_choices(before: float, after: float, system: str) -> list:
    return [
        right(
            width_text(after, system),
            _("A crack gapes from the bars towards the face: the farther away, the wider."),
        ),
        wrong(
            width_text(before, system),
            _("the pull in the bars alone decides"),
            _("It decides how wide the crack is at the bars. The face is farther away now."),
        ),
        wrong(
            width_text(before**2 / after, system),
            _("more cover makes cracks smaller at the surface"),
            _("More cover keeps rust away, but at the face the crack is wider."),
        ),
    ]


def cover_asked(random, system):
    """How much cover does a place ask for?"""
    # the American table tells only of weather and ground; beside salt it asks for more, unsaid
    places = tuple(PLACES) if system == "SI" else ("moist",)
    steel, place = size_of(random, system, 0, 5), random.choice(places)
    strip = mat_of(system, steel, 150.0, exposure=place)
    asks = strip.solve().control.asked
    inside = least_cover(strip.code, "dry", steel.diameter, "slab").cover
    apart((steel.diameter, inside, asks.cover, 2 * asks.cover), 1.15)
    text = _(
        "A slab with bars of {bar} lies {place}. How much cover do the rules ask for at least "
        "({clause})?"
    ).format(bar=_name(steel), place=PLACES[place], clause=asks.clause)
    choices = _asked_choices(asks.cover, inside, steel.diameter, system)
    return asked("cover_asked", random, text, choices, strip)


def _name(steel) -> str:
    return steel.name if steel.name.startswith("#") else f"{steel.name} mm"


def _asked_choices(asks: float, inside: float, diameter: float, system: str) -> list:
    def deep(value):
        return shown(value, "size", system)

    return [
        right(deep(asks), _("What is in the air, the water or the ground decides the cover.")),
        wrong(
            deep(inside),
            _("one cover does for every place"),
            _("That is enough inside, where it is dry. Here the steel would rust early."),
        ),
        wrong(
            deep(diameter),
            _("a bar needs only as much cover as it is thick"),
            _("So much it needs for its grip. Against rust it needs more."),
        ),
        wrong(
            deep(2 * asks),
            _("the more cover the better"),
            _("It widens the cracks at the face, and bars so deep work on a shorter arm."),
        ),
    ]


def years_of_cover(random, system):
    """After how many years is a doubled cover used up?"""
    steel, cover = size_of(random, system, 0, 2), drawn(random, "size", system, 8, 22)
    strength = drawn(random, "strength", system, 18, 26)
    air, said = random.choice(AIR_CHOICES[:2])
    usual = {"strength": strength, "air": air, "curing": float(random.randint(1, 4))}
    strip = mat_of(system, steel, 150.0, cover=cover, **usual)
    deep = mat_of(system, steel, 150.0, cover=2 * cover, **usual)
    first, second = (each.solve().control.years for each in (strip, deep))
    clear(first >= 5.0 and second <= 100.0)
    apart((first, 2 * first, second, 8 * first), 1.3)
    text = _(
        "The bars of a slab lie under {cover} of cover ({air}). It has been worked out that the "
        "air turns that much concrete in about {n} years; then rust may begin. How long does it "
        "take with twice the cover?"
    ).format(cover=shown(cover, "size", system), air=said, n=f"{first:.0f}")
    return asked("years_of_cover", random, text, _years_choices(first, second), strip)


def _years_choices(first: float, second: float) -> list:
    def about(years):
        return _("about {n} years").format(n=f"{years:.0f}")

    return [
        right(
            about(second),
            _("Depth grows with the square root of time: twice the depth, four times the years."),
        ),
        wrong(
            about(2 * first),
            _("the air works in at a steady pace"),
            _("It gets slower: each bit has farther to go, through concrete already turned."),
        ),
        wrong(
            about(first),
            _("the quality of the concrete alone decides"),
            _("It decides how fast the air works in; the cover, how far it has to go."),
        ),
        wrong(
            about(8 * first),
            _("time grows with the volume of concrete"),
            _("Air comes straight in from the face; what counts is the depth, squared."),
        ),
    ]


def pull_left_by_fibres(random, system):
    """How hard are bars pulled when fibres share a straight pull?"""
    steel, spacing = size_of(random, system, 1, 4), drawn(random, "size", system, 90, 150)
    f_R1 = drawn(random, "strength", system, 1.4, 2.8)
    strip = mat_of(system, steel, spacing, action="pulled", depth=200.0)
    strip = replace(strip, stress=pull_of(random, system))
    mixed = replace(strip, fibres="tested", residual_1=f_R1, residual_3=f_R1)
    before, after = (float(each.solve().control.main.held.stress) for each in (strip, mixed))
    clear(after > 0.15 * before)
    less = before - mixed.residual
    apart((after, before, less), 1.002)
    clear(len({round(one, -1) for one in (before, after)}) == 2)
    text = _(
        "A floor is pulled straight; where it cracks, its bars are pulled to {before}. In the next "
        "pour there are fibres that carry {f} across every crack. Steel is {share} % of the "
        "section. How hard are the bars pulled there?"
    ).format(
        before=shown(before, "stress", system),
        f=shown(mixed.residual, "strength", system),
        share=f"{100 * _share(strip):.2f}",
    )
    choices = _fibre_choices(before, after, less, system)
    return asked("pull_left_by_fibres", random, text, choices, strip)


def _share(strip) -> float:
    """Steel over the whole section [-]."""
    return float(strip.main_bars().total) / (strip.width * strip.depth)


def _fibre_choices(before: float, after: float, less: float, system: str) -> list:
    def pulled(value):
        return shown(value, "stress", system)

    return [
        right(
            pulled(after),
            _(
                "A small stress, but over the whole section: what the fibres carry is taken off "
                "the bars, which are a small share of it."
            ),
        ),
        wrong(
            pulled(before),
            _("fibres are too short to carry anything"),
            _("Each crack is crossed by very many of them: together they carry a part."),
        ),
        wrong(
            pulled(less),
            _("the stress of the fibres is simply taken off that of the bars"),
            _("Forces are shared, not stresses: the fibres work on a far larger area."),
        ),
        wrong(
            pulled(0.0),
            _("fibres replace the bars"),
            _("They carry a part. What is left goes into the bars."),
        ),
    ]
