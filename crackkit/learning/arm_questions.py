"""Questions about an arm: where it cracks, how its moment grows, what the floor behind does."""

from dataclasses import replace

from crackkit.learning.choices import (
    apart,
    arm,
    asked,
    clear,
    drawn,
    right,
    size,
    weight_at,
    wrong,
)
from crackkit.learning.telling import shown
from crackkit.words import _


def where_an_arm_cracks(random, system):
    """Where does the first crack of an arm open?"""
    reach = drawn(random, "length", system, 1500, 2800)
    at = drawn(random, "length", system, 0.55 * reach, 0.85 * reach)
    force = drawn(random, "force", system, 20e3, 40e3)
    slab = arm(system, (size(random, system, 1, 3), 100.0), overhang=reach, width=1000.0)
    slab = replace(slab, loads=weight_at(force, at))
    zone = max(slab.solve().tension, key=lambda zone: zone.peak)
    clear(zone.face == "top" and abs(zone.at - slab.root) < 1.0 and zone.peak > 1.1)
    place = shown(at, "length", system)
    text = _(
        "A slab reaches {reach} out of a wall. {force} stands on it, {place} from the wall. Where "
        "does the first crack open?"
    ).format(reach=shown(reach, "length", system), force=shown(force, "force", system), place=place)
    return asked("where_an_arm_cracks", random, text, _where_choices(place), slab)


def _where_choices(place: str) -> list:
    return [
        right(
            _("On top, at the wall"),
            _(
                "Everything on the arm pulls on the longest lever at the wall, and the arm bends "
                "like a frown: the top there gets longest."
            ),
        ),
        wrong(
            _("On top, under the load ({place})").format(place=place),
            _("cracks open where the load touches"),
            _("Under the load the arm bends less than at the wall, where the lever is longest."),
        ),
        wrong(
            _("At the bottom, under the load ({place})").format(place=place),
            _("the bottom is always the stretched side"),
            _("That is so between two supports. An arm hangs down: its bottom is squeezed."),
        ),
        wrong(
            _("At the bottom, at the wall"),
            _("the wall pushes a crack into the bottom"),
            _("The bottom is pressed against the wall; the top is pulled away from it."),
        ),
    ]


def moment_of_an_arm(random, system):
    """How large is the moment at the root under a spread load?"""
    reach = drawn(random, "length", system, 1200, 3000)
    load = drawn(random, "line_load", system, 3.0, 12.0)
    slab = arm(
        system,
        None,
        overhang=reach,
        uniform_load=load,
        self_weight=False,
        loads=weight_at(0.0, reach),
    )
    moment, each = slab.solve().worst.moment, load * reach
    apart((moment / 4, moment, 2 * moment))
    text = _(
        "A load of {load} is spread over a slab that reaches {reach} out of a wall. How large is "
        "the bending moment at the wall? (Leave the own weight out.)"
    ).format(load=shown(load, "line_load", system), reach=shown(reach, "length", system))
    return asked("moment_of_an_arm", random, text, _moment_choices(moment, each, system), slab)


def _moment_choices(moment: float, total: float, system: str) -> list:
    def much(value):
        return shown(value, "moment", system)

    return [
        right(
            much(moment),
            _(
                "The whole load, {total}, works on a lever of half the reach: load × reach² / 2."
            ).format(total=shown(total, "force", system)),
        ),
        wrong(
            much(moment / 4),
            _("an arm bends no more than a beam of the same length on two supports"),
            _("Load × span² / 8 is for two supports. An arm has one: four times as much."),
        ),
        wrong(
            much(2 * moment),
            _("all of a spread load works at the tip"),
            _("Only its last bit works at the tip. On the average the lever is half the reach."),
        ),
    ]


def load_moved_in(random, system):
    """What becomes of the moment when a load moves towards the root?"""
    reach = drawn(random, "length", system, 1500, 3000)
    near = drawn(random, "length", system, 0.25 * reach, 0.7 * reach)
    force = drawn(random, "force", system, 5e3, 20e3)
    common = {"overhang": reach, "self_weight": False}
    far = arm(system, None, loads=weight_at(force, reach), **common).solve().worst.moment
    slab = arm(system, None, loads=weight_at(force, near), **common)
    moment, share = slab.solve().worst.moment, near / reach
    apart((far * share**2, moment, far, far / share))
    text = _(
        "{force} stands on the tip of a slab that reaches {reach} out of a wall: the bending "
        "moment at the wall is {moment}. The load moves to {near} from the wall. How large is it "
        "now? (Leave the own weight out.)"
    ).format(
        force=shown(force, "force", system),
        reach=shown(reach, "length", system),
        near=shown(near, "length", system),
        moment=shown(far, "moment", system),
    )
    return asked("load_moved_in", random, text, _moved_choices(moment, far, share, system), slab)


def _moved_choices(moment: float, far: float, share: float, system: str) -> list:
    def much(value):
        return shown(value, "moment", system)

    return [
        right(much(moment), _("Load × its distance from the wall: half the distance, half of it.")),
        wrong(
            much(far),
            _("the stretch depends only on the load"),
            _("The same load pulls on a shorter lever now. What counts is load × distance."),
        ),
        wrong(
            much(far * share**2),
            _("the distance counts twice for any load"),
            _("It counts twice for a spread load, of which there is more on a longer arm."),
        ),
        wrong(
            much(far / share),
            _("a load near the wall bends the arm more there"),
            _("Near the wall the load goes straight into it, on a short lever."),
        ),
    ]


def floor_behind(random, system):
    """How far back is the top stretched when nobody stands on the floor behind?"""
    reach = drawn(random, "length", system, 1500, 2200)
    back = drawn(random, "length", system, 3500, 5500)
    load = drawn(random, "line_load", system, 6.0, 12.0)
    slab = arm(
        system,
        (size(random, system, 0, 2), 120.0),
        overhang=reach,
        uniform_load=load,
        back="floor",
        back_span=back,
        back_load=load,
        width=1000.0,
        loads=weight_at(0.0, reach),
    )
    with_load, without = _stretched_back(slab), _stretched_back(replace(slab, back_load=0.0))
    apart((with_load**2 / without, with_load, without), 1.2)
    text = _(
        "A balcony of {reach} is the end of a floor of {back}. With {load} on both, the top is "
        "stretched from the tip to {far} behind the support. The people on the floor go home, "
        "those on the balcony stay. How far back is the top stretched now?"
    ).format(
        reach=shown(reach, "length", system),
        back=shown(back, "length", system),
        load=shown(load, "line_load", system),
        far=shown(with_load, "length", system),
    )
    choices = _floor_choices(with_load, without, system)
    return asked("floor_behind", random, text, choices, slab)


def _stretched_back(slab) -> float:
    """How far behind the root the top is stretched [mm]."""
    starts = [zone.start for zone in slab.solve().tension if zone.face == "top"]
    clear(bool(starts))
    return slab.root - min(starts)


def _floor_choices(with_load: float, without: float, system: str) -> list:
    def far(value):
        return _("to {x} behind the support").format(x=shown(value, "length", system))

    return [
        right(
            far(without),
            _(
                "The load on the floor pressed it down and helped against the balcony. Without "
                "it the frown reaches farther back, and so must the top bars."
            ),
        ),
        wrong(
            far(with_load),
            _("what stands on the floor does not touch the balcony"),
            _("They are one slab: what bends one end bends the other."),
        ),
        wrong(
            far(with_load**2 / without),
            _("less load always means less stretch"),
            _("Load on the floor works against the balcony. Without it the top is stretched more."),
        ),
        wrong(
            _("only to the support: behind it the top is squeezed"),
            _("a support cuts the bending off"),
            _("A slab that runs over a support bends like a frown on both sides of it."),
        ),
    ]
