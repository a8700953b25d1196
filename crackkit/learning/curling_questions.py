"""Questions about slabs that curl which a short sum answers: strips, free and heavy."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, drawn, right, wrong
from crackkit.learning.curled_asked import panel_of, strip_of
from crackkit.learning.telling import shown
from crackkit.mechanics.plate_curl import free_curl_rise, lifted_rise
from crackkit.words import _

DRIER = 1.25, 1.5, 2.0  # times as uneven
THICKER = 1.2, 1.5, 1.6  # times as thick


def curl_without_weight(random, system):
    """How high would the ends of a strip rise if it weighed nothing?"""
    slab = panel_of(random, system, length=drawn(random, "length", system, 3000.0, 6000.0))
    strain = drawn(random, "strain", system, 0.0002, 0.0005)
    rise = float(free_curl_rise(strain, slab.length, slab.thickness))
    text = _(
        "The top of a slab {thick} thick wants to shrink by {strain} more than its bottom. If it "
        "weighed nothing, how high would the ends of a strip {length} long rise over its middle?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        strain=shown(strain, "strain", system),
        length=shown(slab.length, "length", system),
    )
    values = rise, 4 * rise, rise / 2, strain * slab.length
    apart(values, 1.2)
    return asked("curl_without_weight", random, text, _free_choices(values, system), slab)


def _free_choices(values, system: str) -> list:
    rise, whole, half, short = (shown(v, "movement", system) for v in values)
    return [
        right(
            rise,
            _(
                "It bends to an arc: the difference times the length squared, over eight times "
                "the thickness. Weight will hold most of it down."
            ),
        ),
        wrong(
            whole,
            _("it stands on one end, and the other end rises"),
            _("It rests on its middle, so each end is only half the length away from there."),
        ),
        wrong(
            half,
            _("the two ends share the rise"),
            _("Each of them rises so far: one does not take it from the other."),
        ),
        wrong(
            short,
            _("it rises by as much as it gets shorter"),
            _("So much shorter is its top than its bottom. Over a thin slab that bends it far."),
        ),
    ]


def drier_on_top(random, system):
    """How high does the end of a heavy slab rise if its top is drier still?"""
    slab, times = panel_of(random, system), random.choice(DRIER)
    strain = drawn(random, "strain", system, 0.0002, 0.0004)
    first, more = (float(lifted_rise(*strip_of(slab, d))) for d in (strain, times * strain))
    text = _(
        "A long slab {thick} thick lies on a hard base. Its top wants to shrink by {strain} more "
        "than its bottom, and its end stands up by {rise}; from there on its own weight holds it "
        "down. How high does it stand when that difference has grown to {worse}?"
    ).format(
        thick=shown(slab.thickness, "size", system),
        strain=shown(strain, "strain", system),
        worse=shown(times * strain, "strain", system),
        rise=shown(first, "movement", system),
    )
    values = more, times * first, first, times**3 * first
    apart(values, 1.1)
    return asked("drier_on_top", random, text, _drier_choices(values, system), slab)


def _drier_choices(values, system: str) -> list:
    more, even, same, steep = (shown(v, "movement", system) for v in values)
    return [
        right(
            more,
            _(
                "It bends more, and a longer piece of it lifts off: the rise goes with the square "
                "of the difference."
            ),
        ),
        wrong(
            even,
            _("twice as dry, twice as high"),
            _("That would be so if the same piece lifted off. But more of it does."),
        ),
        wrong(
            same,
            _("its weight holds it down once and for all"),
            _("Weight decides how much of it lifts off, and a stronger bend lifts more."),
        ),
        wrong(
            steep,
            _("the piece that lifts off grows as fast as the bend"),
            _("It grows with the root of it only: weight pulls on a longer lever as well."),
        ),
    ]


def thicker_and_as_dry(random, system):
    """How high does the end of a thicker slab rise whose top is as much drier?"""
    slab, times = panel_of(random, system), random.choice(THICKER)
    thick = replace(slab, thickness=times * slab.thickness)
    strain = drawn(random, "strain", system, 0.0002, 0.0004)
    a, b = (float(lifted_rise(*strip_of(it, strain))) for it in (slab, thick))
    text = _(
        "A long slab {thin} thick lies on a hard base. Its top wants to shrink by {strain} more "
        "than its bottom, and its end stands up by {rise}. How high would it stand if it were "
        "{thick} thick and its top wanted the same {strain} more?"
    ).format(
        thin=shown(slab.thickness, "size", system),
        thick=shown(thick.thickness, "size", system),
        strain=shown(strain, "strain", system),
        rise=shown(a, "movement", system),
    )
    values = b, a / times, a / times**2, a * times
    apart(values, 1.05)
    return asked("thicker_and_as_dry", random, text, _thicker_choices(values, system), slab)


def _thicker_choices(values, system: str) -> list:
    same, heavy, stiff, lever = (shown(v, "movement", system) for v in values)
    return [
        right(
            same,
            _(
                "As high: it wants to bend less, but it is much stiffer, so its weight holds down "
                "less of it. What thickness buys is strength, not flatness."
            ),
        ),
        wrong(
            heavy,
            _("what is heavier stays down"),
            _("It is heavier, and much stiffer as well: a longer piece of it stands in the air."),
        ),
        wrong(
            stiff,
            _("what is stiffer cannot curl"),
            _("Nothing bends it but its own shrinking, and that does not ask how stiff it is."),
        ),
        wrong(
            lever,
            _("a thicker slab curls more, for its faces are farther apart"),
            _("The farther apart they are, the less the same difference bends it."),
        ),
    ]
