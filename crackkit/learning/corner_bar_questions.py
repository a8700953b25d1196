"""Questions about what holds the crack from an inside corner: bars, near and far, and a saw cut."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, drawn, right, width_text, wrong
from crackkit.learning.corner_asked import (
    CLOSE,
    corner_pull,
    diagonals_of,
    diagonals_text,
    floor_of,
    floor_text,
    torn,
)
from crackkit.learning.telling import shown
from crackkit.units.quantities import INCH
from crackkit.words import _

THICK_BARS = {"SI": (("16", 2), ("16", 3)), "US": (("#5", 2), ("#5", 3))}
FEW_BARS = {"SI": (("12", 2), ("12", 3)), "US": (("#4", 2), ("#4", 3))}
LONG = {"SI": (1000.0, 1200.0, 1500.0), "US": (36 * INCH, 48 * INCH, 60 * INCH)}
AWAY = {"SI": (500.0, 700.0), "US": (20 * INCH, 28 * INCH)}
ALONG_WALLS = {"SI": (800.0, 900.0, 1000.0), "US": (30 * INCH, 33 * INCH, 36 * INCH)}
FIRST_YEAR = 300.0, 330.0, 365.0
YEARS = 3, 5, 10
BELOW, ABOVE = 0.75, 1.1  # of the strength: pulls that leave no doubt


def bars_that_hold(random, system):
    """Where do the bars lie that hold the crack?"""
    slab = _with_bars(random, system, THICK_BARS, age=365.0)
    slab = replace(slab, diagonal_length=random.choice(LONG[system]))
    clear(_opens(slab) < 0.3 * torn(slab).crack.bare.max())
    text = _(
        "{floor} is tied to the walls all round. You have a few bars, {bars}, each {long} long. "
        "Where do they help most against the crack from the inside corner?"
    ).format(
        floor=floor_text(slab, system),
        bars=diagonals_text(slab),
        long=shown(slab.diagonal_length, "length", system),
    )
    places = slab.diagonal_off, random.choice(ALONG_WALLS[system])
    choices = _place_choices(*(shown(v, "size", system) for v in places))
    return asked("bars_that_hold", random, text, choices, replace(slab, diagonals="none"))


def _with_bars(random, system: str, bars: dict, **inputs):
    name, count = random.choice(bars[system])
    return floor_of(random, system, **diagonals_of(system, name, count, CLOSE[system]), **inputs)


def _opens(slab) -> float:
    """Greatest opening of its crack [mm]."""
    return torn(slab).crack.widest


def _place_choices(close: str, far: str) -> list:
    return [
        right(
            _("{close} off the corner, slanting, across the line of the crack").format(close=close),
            _("A crack pulls its sides apart: what crosses it where it starts holds it at once."),
        ),
        wrong(
            _("Right beside the line of the crack, along it, from the corner on"),
            _("bars along a crack hold it"),
            _("They lie in one side of it and do not pull at the other. A bar has to cross it."),
        ),
        wrong(
            _("Along the two walls, {far} off the corner").format(far=far),
            _("any distance from the corner will do"),
            _("The crack does not come there, or comes there wide. It starts at the corner."),
        ),
        wrong(
            _("Slanting across the line of the crack, on the ground under the slab"),
            _("bars belong at the bottom"),
            _("On the ground no concrete grips them, and they rust. Set them on chairs."),
        ),
    ]


def near_or_far(random, system):
    """What do the same bars do farther from the corner?"""
    slab = _with_bars(random, system, THICK_BARS, age=random.choice(FIRST_YEAR))
    away = random.choice(AWAY[system])
    near, far = _opens(slab), _opens(replace(slab, diagonal_off=away))
    clear(torn(slab).crack.runs)
    apart((near, far), 1.4)
    text = _(
        "{floor} is tied to the walls all round. {bars} lie {close} off its inside corner, across "
        "the crack: after {age} it is {width} wide. And if they lay {away} off the corner?"
    ).format(
        floor=floor_text(slab, system),
        bars=diagonals_text(slab),
        close=shown(slab.diagonal_off, "size", system),
        age=shown(slab.age, "age", system),
        width=width_text(near, system),
        away=shown(away, "size", system),
    )
    clear(far > near)
    values = far, near, near**2 / far
    return asked("near_or_far", random, text, _far_choices(values, system), slab)


def _far_choices(values, system: str) -> list:
    wide, same, finer = (width_text(v, system) for v in values)
    return [
        right(
            wide,
            _("When the crack reaches them it is long already, and pulls at them with all of it."),
        ),
        wrong(
            same,
            _("any distance from the corner will do"),
            _("The same steel crosses the same crack, but only once it has run so far."),
        ),
        wrong(
            finer,
            _("bars hold a crack best in its middle"),
            _("It never comes to that middle if bars hold it where it starts."),
        ),
    ]


def what_bars_can_do(random, system):
    """What do a few bars do for a floor that is held fast?"""
    years = random.choice(YEARS)
    slab = _with_bars(random, system, FEW_BARS, age=365.0 * years)
    held, bare = _opens(slab), float(torn(slab).crack.bare.max())
    clear(torn(slab).crack.runs and 0.6 * bare < held < 0.93 * bare)
    text = _(
        "{floor} is tied to the walls all round. After {years} years a crack {width} wide stands "
        "at its inside corner, and no bar crosses it. And if {bars} had been laid across it in "
        "time, {close} off the corner?"
    ).format(
        floor=floor_text(slab, system),
        years=years,
        width=width_text(bare, system),
        bars=diagonals_text(slab),
        close=shown(slab.diagonal_off, "size", system),
    )
    choices = _held_choices(*(width_text(v, system) for v in (held, bare)))
    return asked("what_bars_can_do", random, text, choices, replace(slab, diagonals="none"))


def _held_choices(held: str, bare: str) -> list:
    return [
        right(
            _("It would be {width} wide").format(width=held),
            _(
                "Bars delay the crack and trim it. They do not make a slab longer: what it lacks "
                "between walls that hold it fast has to open somewhere."
            ),
        ),
        wrong(
            _("There would be none: bars keep it shut"),
            _("bars close the crack"),
            _("A bar pulls only once it is stretched, so once the crack is open."),
        ),
        wrong(
            _("It would be {width} wide, as before").format(width=bare),
            _("bars do nothing in a slab that is held fast"),
            _("They pull back all the while. So the crack comes later, and less wide."),
        ),
    ]


def sawn_in_time(random, system):
    """What does a saw cut from the corner do on that day?"""
    early, late = (drawn(random, "age", system, *days) for days in ((20.0, 60.0), (330.0, 700.0)))
    slab = floor_of(random, system, age=late)
    before, after = (corner_pull(replace(slab, age=day)) for day in (early, late))
    clear(before < BELOW and after > ABOVE)
    in_time = random.random() < 0.5
    day = early - random.randint(2, 10) if in_time else late + random.randint(5, 40)
    text = _(
        "{floor} is tied to the walls all round. Drying pulls its inside corner with {before} of "
        "what the concrete bears after {early}, and with {after} after {late}. A saw cut is made "
        "from the corner to the far side on day {day}. What comes of it?"
    ).format(
        floor=floor_text(slab, system),
        before=shown(before, "ratio", system),
        early=shown(early, "age", system),
        after=shown(after, "ratio", system),
        late=shown(late, "age", system),
        day=round(day),
    )
    return asked("sawn_in_time", random, text, _saw_choices(in_time), replace(slab, age=day))


def _saw_choices(in_time: bool) -> list:
    under = _("The crack comes under the cut, straight, where it can be sealed")
    nothing = _("Nothing: the corner has cracked before")
    never = wrong(
        _("No crack comes any more: the cut has let the pull go"),
        _("a cut takes the pull away"),
        _("It goes through a part of the depth. The rest tears when its day comes: under the cut."),
    )
    if in_time:
        return [
            right(
                under,
                _(
                    "It has not cracked yet, and the cut leaves less to tear. On site do not wait: "
                    "a cold night can do it. Within a day is common practice."
                ),
            ),
            wrong(
                nothing,
                _("a corner cracks as soon as the slab begins to dry"),
                _("It cracks when the pull reaches what it bears: here much later."),
            ),
            never,
        ]
    return [
        right(
            nothing,
            _("From about 1 on it cracks. A cut made later is one more line beside the crack."),
        ),
        wrong(
            under,
            _("a cut draws the crack to it whenever it is made"),
            _("It does while nothing has cracked. By that day the crack was there."),
        ),
        never,
    ]
