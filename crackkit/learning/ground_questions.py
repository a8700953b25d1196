"""Questions about slabs on the ground that are answered by a short sum."""

from crackkit.learning.choices import apart, asked, drawn, right, wrong
from crackkit.learning.slabs_asked import STRIP, base_of, slab_of
from crackkit.learning.telling import shown, told_in
from crackkit.mechanics.base_friction import slab_weight
from crackkit.mechanics.drag import (
    drag_joint_spacing,
    drag_steel,
    joint_opening,
    saw_cut_depth,
)
from crackkit.words import _

PER = {"SI": _("on each metre of width"), "US": _("on each foot of width")}


def how_much_shorter(random, system):
    """By how much does a slab get shorter that nothing holds?"""
    floor = slab_of(random, system)
    strain = drawn(random, "strain", system, 0.0003, 0.0007)
    less = strain * floor.length
    text = _(
        "Concrete of a floor {length} long shrinks by {strain} while it dries. Nothing holds it. "
        "By how much does it get shorter from end to end?"
    ).format(length=shown(floor.length, "length", system), strain=shown(strain, "strain", system))
    values = less, less / 2, 10 * less, less / 10
    apart(values, 1.3)
    return asked("how_much_shorter", random, text, _shorter_choices(values, system), floor)


def _shorter_choices(values, system: str) -> list:
    less, half, ten, tenth = (shown(v, "movement", system) for v in values)
    return [
        right(less, _("Strain times length. Half of it at each end, if both are free.")),
        wrong(
            half,
            _("what counts is how far one end moves"),
            _("So far each end creeps in. From end to end it is twice that."),
        ),
        wrong(
            ten,
            _("a strain of a few per mille is some per cent"),
            _("That is ten times too much: look at the decimal point."),
        ),
        wrong(
            tenth,
            _("hardened concrete hardly shrinks"),
            _("Strain is small, but a floor is long: multiply them."),
        ),
    ]


def drag_bars(random, system):
    """How many bars does the drag formula ask for?"""
    floor, under = slab_of(random, system), base_of(random)
    weight = slab_weight(floor.thickness)
    fs = drawn(random, "stress", system, 200.0, 330.0)
    area = STRIP[told_in(system)] * float(drag_steel(under.coefficient, floor.length, weight, fs))
    text = _(
        "A floor is {length} long between free ends and weighs {weight} on its base. Its "
        "coefficient of drag is {mu}, the bars may have {stress}. How much steel does the drag "
        "formula ask for {per}?"
    ).format(
        length=shown(floor.length, "length", system),
        weight=shown(weight, "pressure", system),
        mu=under.coefficient,
        stress=shown(fs, "stress", system),
        per=PER[told_in(system)],
    )
    values = area, 2 * area, area / under.coefficient, area / 2
    apart(values, 1.15)
    return asked("drag_bars", random, text, _drag_choices(values, system), floor)


def _drag_choices(values, system: str) -> list:
    area, whole, weight, quarter = (shown(v, "area", system) for v in values)
    return [
        right(
            area,
            _(
                "Coefficient times weight times half the length, over the stress. It holds one "
                "crack shut in a floor whose ends are free, no more."
            ),
        ),
        wrong(
            whole,
            _("the bars drag the whole floor"),
            _("At a crack in the middle they drag one half: the other drags itself."),
        ),
        wrong(
            weight,
            _("the bars carry the weight of the floor"),
            _("The ground carries it. The bars only drag it over the ground: times the drag."),
        ),
        wrong(
            quarter,
            _("both halves help, so a quarter is enough"),
            _("Both pull at the same bars: the force in them is that of one half."),
        ),
    ]


def longest_by_drag(random, system):
    """How long may a free slab be before the base alone cracks it?"""
    floor, under = slab_of(random, system), base_of(random)
    allowed = drawn(random, "strength", system, 0.4, 1.2) if system == "SI" else _psi(random)
    gamma = float(slab_weight(1.0))
    length = float(drag_joint_spacing(allowed, under.coefficient, gamma))
    weight = slab_weight(floor.thickness)
    text = _(
        "A floor {thick} thick weighs {weight} on its base; the coefficient of drag is {mu}. Its "
        "ends are free. How long may it be, if drag may pull its concrete by {stress} at most?"
    ).format(
        thick=shown(floor.thickness, "size", system),
        weight=shown(weight, "pressure", system),
        mu=under.coefficient,
        stress=shown(allowed, "strength", system),
    )
    values = length, length / 2, length * under.coefficient, 2 * length
    apart(values, 1.15)
    return asked("longest_by_drag", random, text, _length_choices(values, system), floor)


def _psi(random) -> float:
    """Stress in round numbers of psi [MPa]."""
    return random.randrange(60, 180, 20) * 0.00689475729


def _length_choices(values, system: str) -> list:
    length, half, weight, twice = (shown(v, "length", system) for v in values)
    return [
        right(
            length,
            _("Stress times thickness is what half the length drags up: weight times coefficient."),
        ),
        wrong(
            half,
            _("the whole length drags at the middle"),
            _("Each half drags at the middle from its own side, so only half the length counts."),
        ),
        wrong(
            weight,
            _("the weight drags, whatever lies below"),
            _("The coefficient tells how much of the weight drags."),
        ),
        wrong(
            twice,
            _("both ends share in the drag, so it is half as much"),
            _("That is counted already: each half drags only its own side."),
        ),
    ]


def opening_of_a_joint(random, system):
    """How far does a joint open when all of them do?"""
    panel = drawn(random, "length", system, 3500.0, 6000.0)
    strain = drawn(random, "strain", system, 0.0003, 0.0007)
    floor = slab_of(random, system, jointed=True, joint_every=panel, length=5 * panel)
    opened = float(joint_opening(panel, 0.0, strain))
    text = _(
        "A floor {length} long has joints every {panel}, and all of them open alike. Its concrete "
        "shrinks by {strain}; the base, gravel, lets four fifths of that happen. How far does "
        "each joint open?"
    ).format(
        length=shown(floor.length, "length", system),
        panel=shown(panel, "length", system),
        strain=shown(strain, "strain", system),
    )
    values = opened, opened / 2, opened * 5, opened / 0.8
    apart(values, 1.15)
    return asked("opening_of_a_joint", random, text, _opening_choices(values, system), floor)


def _opening_choices(values, system: str) -> list:
    opened, half, whole, free = (shown(v, "width", system) for v in values)
    return [
        right(opened, _("Four fifths of strain times panel: half of it comes from either side.")),
        wrong(
            half,
            _("only the panel on one side moves"),
            _("Both neighbours shrink away from it, each by half of its own movement."),
        ),
        wrong(
            whole,
            _("a joint takes the movement of the whole floor"),
            _("It would, if it were the only one that opens. Here all share it."),
        ),
        wrong(
            free,
            _("the base does not hold it back at all"),
            _("Gravel holds back about a fifth."),
        ),
    ]


def depth_of_a_cut(random, system):
    """How deep is a saw cut?"""
    thick = drawn(random, "size", system, 100.0, 300.0)
    floor = slab_of(random, system, thickness=thick, jointed=True)
    depth = float(saw_cut_depth(thick))
    text = _(
        "A floor {thick} thick gets its joints with an ordinary wet saw on the day after the pour. "
        "How deep should they be cut, at the least?"
    ).format(thick=shown(thick, "size", system))
    values = depth, depth / 3, 2 * depth, 4 * depth
    return asked("depth_of_a_cut", random, text, _cut_choices(values, system), floor)


def _cut_choices(values, system: str) -> list:
    depth, scratch, half, whole = (shown(v, "size", system) for v in values)
    return [
        right(depth, _("A quarter of the thickness: weak enough for the crack to come there.")),
        wrong(
            scratch,
            _("a scratch on top leads the crack"),
            _("A twelfth weakens it less than its strength scatters: it may crack elsewhere."),
        ),
        wrong(
            half,
            _("the deeper, the better"),
            _("Half is slow to cut, cuts the bars, and leaves little that carries a wheel across."),
        ),
        wrong(
            whole,
            _("a joint goes right through"),
            _("The crack does the rest. Cut through, no wheel is carried from panel to panel."),
        ),
    ]
