"""Questions about inside corners and holes that a short sum answers."""

import math

from crackkit.learning.choices import CODES, apart, asked, right, wrong
from crackkit.learning.corner_asked import floor_of
from crackkit.learning.telling import shown
from crackkit.mechanics.hole_stress import round_hole_factor
from crackkit.mechanics.williams import opening_exponent
from crackkit.structures.corner_slab import CornerSlab
from crackkit.units.quantities import FOOT, INCH, PSI
from crackkit.words import _

TIMES = 2, 4, 8  # as near
PULLS = {
    "SI": (0.5, 0.6, 0.7, 0.8, 0.9, 1.0, 1.1, 1.2),
    "US": tuple(p * PSI for p in (70.0, 80.0, 90.0, 100.0, 120.0, 140.0, 160.0)),
}
OFF = {"SI": (160.0, 200.0, 240.0, 320.0), "US": (6 * INCH, 8 * INCH, 10 * INCH, 12 * INCH)}
ROUND = {"SI": (600.0, 800.0, 1000.0), "US": (2 * FOOT, 2.5 * FOOT, 3 * FOOT)}
ROOM = {"SI": 8000.0, "US": 26 * FOOT}
ONE_WAY, BOTH_WAYS = 0.0, 1.0  # the pull across over the pull along


def nearer_the_corner(random, system):
    """How hard is the concrete pulled so many times as near to the corner?"""
    slab, pull = floor_of(random, system), random.choice(PULLS[system])
    far, times = random.choice(OFF[system]), random.choice(TIMES)
    text = _(
        "The walls pull at an L-shaped floor from all sides, and nothing has cracked. {far} from "
        "its sharp inside corner the concrete is pulled by {pull}. And {near} from it, {times} "
        "times as near?"
    ).format(
        far=shown(far, "size", system),
        near=shown(far / times, "size", system),
        pull=shown(pull, "strength", system),
        times=times,
    )
    grows = times ** (1.0 - opening_exponent(1.5 * math.pi))
    values = pull * grows, pull * times, pull, 3.0 * pull
    apart(values, 1.1)
    return asked("nearer_the_corner", random, text, _near_choices(values, system), slab)


def _near_choices(values, system: str) -> list:
    grown, even, same, triple = (shown(v, "strength", system) for v in values)
    return [
        right(
            grown,
            _(
                "Half as far is 1.37 times the pull, and so on without end: at a sharp corner no "
                "greatest pull exists. So one takes its mean over a length."
            ),
        ),
        wrong(
            even,
            _("twice as near, twice the pull"),
            _("It grows without end, but slower than that. Even at a crack it goes with the root."),
        ),
        wrong(
            same,
            _("a corner is pulled alike all over"),
            _("The pull has to go round the corner, and crowds there the more the nearer."),
        ),
        wrong(
            triple,
            _("a notch triples the pull, no more and no less"),
            _("Three times is the rim of a round hole pulled one way. This corner is sharp."),
        ),
    ]


def rim_of_a_round_hole(random, system):
    """How hard is the rim of a round hole pulled?"""
    across, pull = random.choice((ONE_WAY, BOTH_WAYS)), random.choice(PULLS[system])
    slab = _with_round_hole(random, system, across)
    ways = {
        ONE_WAY: _("one way only, for just two of its ends are tied"),
        BOTH_WAYS: _("alike in all directions, for it is tied all round"),
    }
    text = _(
        "A large floor has a round hole, {wide} wide. Far from it the floor is pulled by {pull}, "
        "{way}. How hard is the rim of the hole pulled where it is pulled most?"
    ).format(
        wide=shown(slab.cut_length, "length", system),
        pull=shown(pull, "strength", system),
        way=ways[across],
    )
    values = [round_hole_factor(a) * pull for a in (across, 1.0 - across)]
    choices = _rim_choices(*(shown(v, "strength", system) for v in (*values, pull, 0.0)))
    return asked("rim_of_a_round_hole", random, text, choices, slab)


def _with_round_hole(random, system: str, across: float) -> CornerSlab:
    wide, room = random.choice(ROUND[system]), ROOM[system]
    return CornerSlab(
        shape="opening",
        length=room,
        width=room,
        cut_length=wide,
        cut_width=wide,
        rounding=wide / 2,
        held="edges" if across else "ends",
        code=CODES[system][0],
        exposure="dry",
    )


def _rim_choices(most: str, other: str, far: str, nothing: str) -> list:
    return [
        right(
            most,
            _(
                "Round it the pull has to crowd: three times if pulled one way, twice if pulled "
                "both ways, for each way squeezes where the other pulls most."
            ),
        ),
        wrong(
            other,
            _("a hole does the same whichever way the floor is pulled"),
            _("It is three times for a pull one way, and twice for the same pull both ways."),
        ),
        wrong(
            far,
            _("a circle has no corner, so it takes no harm"),
            _("It has no corner, which is worth a lot. But what it does not carry goes round it."),
        ),
        wrong(
            nothing,
            _("a free rim bears no stress"),
            _("Square to the rim it bears none. Along the rim it bears the most of all."),
        ),
    ]
