"""Questions about slabs that curl which the mechanics of the panel answers."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, drawn, mat_text, right, width_text, wrong
from crackkit.learning.curled_asked import (
    MATS,
    NEAR_TOP,
    dry_and_bare,
    panel_of,
    with_wheel,
)
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.structures.curled_mat import mat_cracks
from crackkit.words import _

CORNER, MIDDLE = (0.0, 0.0), (0.5, 0.5)  # shares of width and length
LOW = 0.02  # mm, below which nobody sees a corner stand up
CLEARLY = 1.2  # times as much pull on one face as on the other
DEEP = 0.5  # of the thickness
BELOW = (
    ("sheet", _("a sheet of plastic right below it")),
    ("damp", _("damp ground")),
    ("blotter", _("a sheet with a dry layer on it")),
    ("open", _("a dry base that lets its water out")),
)


def face_under_the_wheel(random, system):
    """Which face is pulled more: on a young slab in its middle, or at a curled corner?"""
    curled, force = random.random() < 0.5, drawn(random, "force", system, 15e3, 40e3)
    slab = panel_of(random, system, age=random.choice((30.0, 45.0, 60.0)) if curled else 3.0)
    slab = with_wheel(slab, force, *(CORNER if curled else MIDDLE))
    state = slab.curled
    pulls = {"top": state.top.peak, "bottom": state.bottom.peak}
    most = max(pulls, key=pulls.get)
    clear(pulls[most] > CLEARLY * min(pulls.values()))
    where = _("on a corner") if curled else _("in the middle")
    text = _(
        "A panel {thick} thick is {age} old; it was kept moist for {cured}, and has dried from "
        "its top since then. A wheel of {force} stands {where}. Where is the panel pulled hardest?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        age=shown(slab.age, "age", system),
        cured=shown(slab.curing, "time", system),
        force=shown(force, "force", system),
        where=where,
    )
    return asked("face_under_the_wheel", random, text, _face_choices(most), slab)


def _face_choices(most: str) -> list:
    below = _("In its bottom face")
    above = _("In its top face")
    alike = wrong(
        _("In both alike"),
        _("a plate is pulled the same above and below"),
        _("Where one face is pulled, the other is squeezed."),
    )
    if most == "top":
        return [
            right(
                above,
                _("The corner stands in the air and bends like a balcony: it tears on top."),
            ),
            wrong(
                below,
                _("under a wheel the bottom always tears"),
                _("It does where ground pushes back. Below a lifted corner there is none."),
            ),
            alike,
        ]
    return [
        right(below, _("Ground pushes back on all sides: the slab sags under the wheel.")),
        wrong(
            above,
            _("a slab on the ground always tears on top"),
            _("At a corner it does. Here it has ground below it, and sags like a beam."),
        ),
        alike,
    ]


def sides_halved(random, system):
    """What do joints twice as close do to the pull in the top of a panel?"""
    slab = dry_and_bare(panel_of(random, system))
    slab = replace(slab, age=float(round(slab.age) + random.randint(0, 12)))
    short = replace(slab, length=slab.length / 2, width=slab.width / 2, loads=_middle(slab))
    shares = [each.curled.share for each in (slab, short)]
    clear(shares[0] > 1.15 * shares[1])
    text = _(
        "A panel {side} by {side}, {thick} thick, has dried for weeks. Its own weight alone pulls "
        "its top with {pull} of what it can bear after {age}. How would it be with panels of half "
        "the side?"
    ).format(
        side=shown(slab.length, "length", system),
        thick=shown(slab.thickness, "size", system),
        pull=shown(shares[0], "ratio", system),
        age=shown(slab.age, "age", system),
    )
    less, same = (shown(v, "ratio", system) for v in (shares[1], shares[0]))
    more = shown(1.5 * shares[0], "ratio", system)
    choices = [
        right(
            less,
            _("What stands in the air is shorter, so its weight bends it less. It costs saw cuts."),
        ),
        wrong(
            same,
            _("how dry it is decides, not how long"),
            _("It wants to bend as before. What breaks it is weight, on a lever that is shorter."),
        ),
        wrong(
            more,
            _("more joints, more corners, more cracks"),
            _("There are more corners, and each of them is pulled less."),
        ),
    ]
    return asked("sides_halved", random, text, choices, slab)


def _middle(slab):
    load = slab.loads[0]
    return (replace(load, x=slab.length / 4, y=slab.width / 4),)


def what_lies_below(random, system):
    """Over what does a slab curl most?"""
    age = drawn(random, "age", system, 60.0, 300.0)
    slab = panel_of(random, system, age=age)
    kinds = random.sample(BELOW, 3)
    rises = [max(replace(slab, under=key).curled.corner_rise, LOW) for key, _label in kinds]
    apart(rises, 1.15)
    least, middle, most = (kinds[k][1] for k in sorted(range(3), key=lambda k: rises[k]))
    text = _(
        "Three panels alike, {side} by {side}, {thick} thick, are {age} old, in a heated building. "
        "One lies on {a}, one on {b}, one on {c}. Whose corners stand highest?"
    ).format(
        side=shown(slab.length, "length", system),
        thick=shown(slab.thickness, "size", system),
        age=shown(age, "age", system),
        **dict(zip("abc", (label for _key, label in kinds), strict=True)),
    )
    choices = [
        right(
            _below(most),
            _("There its bottom stays wettest, so top and bottom differ the most."),
        ),
        wrong(
            _below(middle),
            _("any bottom that cannot dry upwards is alike"),
            _("It curls, but below one of the others more water stays in."),
        ),
        wrong(
            _below(least),
            _("the more water leaves it, the more it curls"),
            _("Here water leaves below too, or stays least: top and bottom differ least."),
        ),
    ]
    return asked("what_lies_below", random, text, choices, slab)


def _below(label: str) -> str:
    return _("Those of the one on {label}").format(label=label)


def when_it_stands_highest(random, system):
    """At which age do corners stand highest?"""
    slab = panel_of(random, system, curing=random.choice((1.0, 3.0, 7.0)))
    state = slab.curled
    highest = float(state.days[state.rises.argmax()])
    clear(state.rises[-1] < 0.8 * state.rises.max() and highest < 0.3 * slab.last_day)
    clear(highest > 2 * slab.curing)
    year = replace(slab, age=365.0)
    text = _(
        "A panel {thick} thick, {side} by {side}, is kept moist for {cured} and lies on a sheet in "
        "a heated building. At which age does its corner stand highest, of these?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        side=shown(slab.length, "length", system),
        cured=shown(slab.curing, "time", system),
    )
    choices = [
        right(
            _("After {d}").format(d=shown(round(highest), "age", system)),
            _(
                "By then the top is dry and the bottom still wet. Later the bottom dries as well, "
                "and concrete under strain gives way slowly: the corner sinks back."
            ),
        ),
        wrong(
            _("After {d}, when curing ends").format(d=shown(slab.curing, "age", system)),
            _("it curls at once, when the water goes off the top"),
            _("Drying has only begun: a thin skin is dry, too thin to bend the slab."),
        ),
        wrong(
            _("After {d}: it goes on drying").format(d=shown(slab.last_day, "age", system)),
            _("the drier, the more it curls"),
            _("It gets drier, but its bottom as well. What counts is the difference."),
        ),
    ]
    return asked("when_it_stands_highest", random, text, choices, year)


def mat_in_the_middle(random, system):
    """How wide is the crack if the mat lies at mid-depth?"""
    name, spacing = random.choice(MATS[system])
    slab = panel_of(random, system, shrinks=9e-4)
    high = replace(slab, steel=name, spacing=spacing, cover=NEAR_TOP[system])
    deep = replace(high, cover=DEEP * slab.thickness - bar(name).diameter)
    force = drawn(random, "force", system, 5e3, 20e3)
    state = with_wheel(slab, force, *CORNER).curled
    clear(state.top.peak > state.strength)
    # bars do not change the pull before it cracks
    widths = [_width(each, state.top.peak) for each in (high, deep)]
    apart(widths, 1.3)
    text = _(
        "A panel {thick} thick has {mat}, {cover} below its top. A corner has cracked under a "
        "wheel of {force}: the mat holds the crack at {width}. And if the same mat lay in the "
        "middle of the slab?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        mat=mat_text(bar(name), spacing, system),
        cover=shown(high.cover, "size", system),
        force=shown(force, "force", system),
        width=width_text(widths[0], system),
    )
    choices = _mat_choices(*(width_text(v, system) for v in _guesses(*widths)))
    return asked("mat_in_the_middle", random, text, choices, high)


def _guesses(high: float, deep: float) -> tuple[float, float, float]:
    return deep, high, high**2 / deep


def _width(slab, pull: float) -> float:
    """Width of the crack at a pull of the top [mm], if the mat holds it."""
    found = mat_cracks(slab, pull)
    clear(float(found.held.stress) < slab.yield_strength)
    return found.band.governing


def _mat_choices(deep: str, same: str, finer: str) -> list:
    return [
        right(
            deep,
            _("The corner tears on top. The deeper the bars, the shorter their lever."),
        ),
        wrong(
            same,
            _("what counts is how much steel there is"),
            _("And where it lies: bars hold the face that they are near to."),
        ),
        wrong(
            finer,
            _("in the middle a mat serves both faces"),
            _("It serves neither: bending leaves the middle alone."),
        ),
    ]


def wheel_at_night(random, system):
    """On an outdoor slab: at which hour does a wheel on the corner pull the top hardest?"""
    swing = drawn(random, "temperature", system, 5.0, 12.0)
    force = drawn(random, "force", system, 10e3, 25e3)
    slab = with_wheel(panel_of(random, system, age=90.0, humidity=0.7), force, *CORNER)
    night, even, day = (
        replace(slab, warmer=warmer).curled.top.peak for warmer in (-swing, 0.0, swing)
    )
    clear(night > 1.05 * even > 1.05 * 1.02 * day)
    text = _(
        "A slab in the open, {thick} thick and three months old, has dried from its top. By day "
        "the sun makes its top {swing} warmer than its bottom, on clear nights it is as much "
        "colder. When does a wheel of {force} on its corner pull the top hardest?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        swing=shown(swing, "temperature", system),
        force=shown(force, "force", system),
    )
    choices = [
        right(
            _("At the end of a clear night"),
            _("A cold top is short, as a dry one is: both lift the corner."),
        ),
        wrong(
            _("At noon in the sun"),
            _("heat makes a slab arch its corners up"),
            _("A warm top is long: it presses the corners down, and helps for some hours."),
        ),
        wrong(
            _("In the evening, when top and bottom are equally warm"),
            _("what changes in hours does not count beside drying"),
            _("Concrete has no time to give way within hours: it counts in full."),
        ),
    ]
    return asked("wheel_at_night", random, text, choices, slab)


def dowels_at_the_corner(random, system):
    """What do dowels do for a corner under a wheel?"""
    share = random.choice((0.7, 0.8, 0.9))
    force = drawn(random, "force", system, 20e3, 40e3)
    slab = with_wheel(panel_of(random, system, age=90.0, shrinks=4e-4), force, *CORNER)
    bare, helped = (replace(slab, transfer=t).curled.share for t in (0.0, share))
    clear(bare > 1.1 * helped and helped > 1.1 * (1 - share) * bare)
    text = _(
        "On the corner of a panel {thick} thick stands a wheel of {force}. Nothing crosses the "
        "joints, and the panel is pulled with {pull} of what it can bear. And if dowels handed "
        "on {share} of their load to the neighbours?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        force=shown(force, "force", system),
        pull=shown(bare, "ratio", system),
        share=_("{n:.0f} %").format(n=100 * share),
    )
    values = helped, bare, (1 - share) * bare
    less, same, little = (shown(v, "ratio", system) for v in values)
    choices = [
        right(
            less,
            _("Less: the neighbours carry some of the wheel. What curling pulls stays."),
        ),
        wrong(
            same,
            _("dowels only keep a joint level"),
            _("By keeping it level they hand on load: the wheel stands on several panels."),
        ),
        wrong(
            little,
            _("what dowels hand on is gone from the panel"),
            _("They hand on a share of the wheel, not of what drying and weight do."),
        ),
    ]
    return asked("dowels_at_the_corner", random, text, choices, slab)
