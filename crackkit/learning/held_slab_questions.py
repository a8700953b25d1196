"""Questions about slabs on the ground that the mechanics of the panel answers."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, mat_text, right, width_text, wrong
from crackkit.learning.slabs_asked import HELD, SIZES, crack_width, slab_of
from crackkit.learning.telling import shown
from crackkit.mechanics.bars import bar
from crackkit.mechanics.base_friction import BASES
from crackkit.units.quantities import INCH
from crackkit.words import _

SPACINGS = {"SI": (75.0, 100.0, 125.0, 150.0), "US": (5 * INCH, 6 * INCH, 8 * INCH)}
LONGER = 7.0, 14.0, 28.0  # days


def which_base(random, system):
    """Which base holds a slab back the most?"""
    bases = random.sample(BASES, 3)
    floor = slab_of(random, system)
    pulls = [float(replace(floor, base=b.key).solve().ground.stress.max()) for b in bases]
    apart(pulls, 1.1)
    least, middle, most = (bases[k].label for k in sorted(range(3), key=lambda k: pulls[k]))
    text = _(
        "A floor {length} long dries for a year; its ends are free. On which of these is its "
        "concrete pulled the hardest?"
    ).format(length=shown(floor.length, "length", system))
    choices = [
        right(most, _("It locks into the floor the most, so it drags the most.")),
        wrong(
            middle,
            _("all firm ground drags alike"),
            _("It drags, but one of the three drags more."),
        ),
        wrong(
            least,
            _("the easier it slides, the harder it is pulled"),
            _("Here the floor slides the most easily of the three, and is pulled the least."),
        ),
    ]
    return asked("which_base", random, text, choices, floor)


def twice_the_bars(random, system):
    """What do more bars do to the cracks of a slab between walls?"""
    steel, spacing = bar(random.choice(SIZES[system])), 2 * random.choice(SPACINGS[system])
    few = slab_of(random, system, steel=steel.name, spacing=spacing, **HELD)
    many = replace(few, spacing=spacing / 2)
    a, b = few.solve(), many.solve()
    clear(crack_width(b) < 0.8 * crack_width(a) and len(b.cracks) > len(a.cracks) + 1)
    text = _(
        "A floor {length} long between two walls has {mat}. After a year it has {n}, the widest "
        "{width}. What would it have with twice as many of these bars?"
    ).format(
        length=shown(few.length, "length", system),
        mat=mat_text(steel, spacing, system),
        n=_("one crack") if len(a.cracks) == 1 else _("{n} cracks").format(n=len(a.cracks)),
        width=width_text(crack_width(a), system),
    )
    choices = [
        right(
            _("More cracks, and finer ones"),
            _("Every crack is held harder, so the pull comes back and opens the next one."),
        ),
        wrong(
            _("Fewer cracks, and finer ones"),
            _("bars keep concrete from cracking"),
            _("It wants to shrink as before. What single cracks give less, more cracks must give."),
        ),
        wrong(
            _("As many cracks, and finer ones"),
            _("bars only pull cracks together"),
            _("Then the floor would have become longer. More cracks make up for it."),
        ),
        wrong(
            _("More cracks, and wider ones"),
            _("more steel makes a floor crack worse"),
            _("More of them, yes: and each takes a smaller share."),
        ),
    ]
    return asked("twice_the_bars", random, text, choices, few)


def bars_on_the_ground(random, system):
    """How wide is the crack when the bars lie on the ground?"""
    steel, spacing = bar(random.choice(SIZES[system])), random.choice(SPACINGS[system])
    lifted = slab_of(random, system, steel=steel.name, spacing=spacing, **HELD)
    widths = [
        crack_width(each.solve())
        for each in (lifted, replace(lifted, place="ground"), replace(lifted, steel="none"))
    ]
    apart(widths[:2], 1.6)
    fine, lost, bare = (width_text(v, system) for v in widths)
    half = width_text((widths[0] + widths[2]) / 2, system)
    text = _(
        "A floor {length} long between two walls was to have {mat}, near its top: its cracks would "
        "be {fine}. Without bars it would be one crack of {bare}. The bars were laid on the ground "
        "to be pulled up during the pour, and nobody did. How wide do cracks get?"
    ).format(
        length=shown(lifted.length, "length", system),
        mat=mat_text(steel, spacing, system),
        fine=fine,
        bare=bare,
    )
    choices = [
        right(lost, _("Below the concrete they hold nothing: it is as if there were none.")),
        wrong(
            fine,
            _("bars work wherever they lie"),
            _("They work where concrete grips them all around. On the ground it does not."),
        ),
        wrong(
            half,
            _("bars at the bottom do half of the work"),
            _("Concrete cannot grip what lies below it: no half of the work is done."),
        ),
    ]
    return asked("bars_on_the_ground", random, text, choices, replace(lifted, place="ground"))


def water_for_longer(random, system):
    """When does a slab between walls crack if it is kept moist for longer?"""
    floor = slab_of(random, system, curing=random.choice((1.0, 2.0, 3.0)), **HELD)
    longer = replace(floor, curing=random.choice(LONGER))
    first, later = floor.ground.first, longer.ground.first
    clear(first is not None and later is not None and later > 1.25 * first)
    sooner = first * first / later
    days = [shown(v, "time", system) for v in (later, first, sooner)]
    text = _(
        "A floor {length} long between two walls is kept moist for {short} and cracks after "
        "{first}. When does it crack if it is kept moist for {long}?"
    ).format(
        length=shown(floor.length, "length", system),
        short=shown(floor.curing, "time", system),
        first=days[1],
        long=shown(longer.curing, "time", system),
    )
    choices = [
        right(
            _("After {d}").format(d=days[0]),
            _("It dries later, and is stronger by then. It buys time; the walls stay."),
        ),
        wrong(
            _("After {d}, as before").format(d=days[1]),
            _("curing is for the surface only"),
            _("What stays moist does not shrink yet, and it gains strength."),
        ),
        wrong(
            _("After {d}").format(d=days[2]),
            _("the more water, the more it shrinks"),
            _("Water in the mix makes it shrink more. Water on top keeps it from drying."),
        ),
        wrong(
            _("Never"),
            _("curing takes the shrinking away"),
            _("It dries all the same, only later, and between walls it cracks."),
        ),
    ]
    return asked("water_for_longer", random, text, choices, floor)
