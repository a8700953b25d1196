"""Questions about a pulled member: its first crack, its bars, and what they share."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, drawn, right, wrong
from crackkit.learning.telling import shown
from crackkit.learning.ties_asked import bars_told, pull_of, tie_of
from crackkit.structures.member import STEEL_MODULUS
from crackkit.structures.tension_member import TensionMember
from crackkit.units.quantities import PSI
from crackkit.words import _


def pull_that_cracks(random, system):
    """At about which pull does a member without bars crack?"""
    side = drawn(random, "size", system, 120.0, 250.0)
    tensile = drawn(random, "strength", system, 2.0, 3.5) if system == "SI" else _psi(random)
    tie = TensionMember(number=0, width=side, depth=side)
    pull = tensile * side**2
    text = _(
        "A member of plain concrete, {side} by {side}, is pulled. Its concrete bears {strength} of "
        "pull. At about which pull does it crack?"
    ).format(side=shown(side, "size", system), strength=shown(tensile, "strength", system))
    values = pull / 2, pull, 4 * pull, 10 * pull
    apart(values)
    return asked("pull_that_cracks", random, text, _cracking_choices(values, system), tie)


def _psi(random) -> float:
    """Strength under pull in round numbers of psi [MPa]."""
    return random.randrange(300, 500, 20) * PSI


def _cracking_choices(values, system: str) -> list:
    half, pull, perimeter, strong = (shown(v, "force", system) for v in values)
    return [
        right(pull, _("Strength times the whole cross-section.")),
        wrong(
            half,
            _("each end takes half of the pull"),
            _("Both ends pull at the same concrete: the force in it is the whole pull."),
        ),
        wrong(
            perimeter,
            _("all four sides carry, each as much as the section"),
            _("Only the area of the cross-section counts, once."),
        ),
        wrong(
            strong,
            _("concrete bears as much pull as squeeze"),
            _("Squeezed it would bear about ten times as much. Pulled it does not."),
        ),
    ]


def steel_at_the_crack(random, system):
    """How hard are the bars pulled where a crack leaves them alone?"""
    tie = tie_of(random, system)
    pull = pull_of(random, tie, system)
    tie = replace(tie, pull=pull)
    outcome = tie.solve()
    clear(len(outcome.cracks) >= 2)
    stress = pull / tie.bars_area
    ratio = STEEL_MODULUS / tie.modulus
    shared = pull / (tie.bars_area + tie.concrete_area / ratio)
    apart((shared, stress / 2, stress, 2 * stress), 1.15)
    text = _(
        "A member with {bars} is cracked. {pull} pull at it. How hard are the bars pulled in a "
        "crack? (Together they have {area}.)"
    ).format(
        bars=bars_told(tie),
        pull=shown(pull, "force", system),
        area=shown(tie.bars_area, "area", system),
    )
    values = shared, stress / 2, stress, 2 * stress
    return asked("steel_at_the_crack", random, text, _stress_choices(values, system), tie)


def _stress_choices(values, system: str) -> list:
    shared, half, stress, twice = (shown(v, "stress", system) for v in values)
    return [
        right(stress, _("In the crack there is no concrete to help: pull over steel.")),
        wrong(
            shared,
            _("the concrete still takes its share in a crack"),
            _("That is so before it cracks. A crack carries nothing across."),
        ),
        wrong(
            half,
            _("each end takes half of the pull"),
            _("Both ends pull at the same bars: the force in them is the whole pull."),
        ),
        wrong(
            twice,
            _("both ends pull, so the pull counts twice"),
            _("The pull at one end is what holds against the pull at the other."),
        ),
    ]


def stretch_of_a_cracked_member(random, system):
    """Does cracked concrete still help the bars?"""
    tie = tie_of(random, system)
    tie = replace(tie, pull=pull_of(random, tie, system))
    outcome = tie.solve()
    clear(len(outcome.cracks) >= 3)
    bars = outcome.pulled.bare_strain * tie.length
    got = outcome.movement.largest
    whole = tie.pull / (tie.bars_area * STEEL_MODULUS + tie.concrete_area * tie.modulus)
    apart((whole * tie.length, got, bars), 1.12)
    clear(got < bars)
    text = _(
        "A member of {length} with {bars} has {n} cracks under {pull}. The bars alone, without "
        "any concrete, would get {bare} longer. How much longer is the member?"
    ).format(
        length=shown(tie.length, "length", system),
        bars=bars_told(tie),
        n=len(outcome.cracks),
        pull=shown(tie.pull, "force", system),
        bare=shown(bars, "movement", system),
    )
    values = whole * tie.length, got, bars, bars + (bars - got)
    return asked("stretch_of_a_cracked_member", random, text, _stretch_choices(values, system), tie)


def _stretch_choices(values, system: str) -> list:
    whole, got, bars, more = (shown(v, "movement", system) for v in values)
    return [
        right(got, _("Between the cracks the concrete still takes a part of the pull.")),
        wrong(
            bars,
            _("once it is cracked the concrete does nothing"),
            _("In the cracks it does nothing. Between them it still holds the bars back."),
        ),
        wrong(
            whole,
            _("cracked concrete is as stiff as sound concrete"),
            _("So little it would stretch without a crack."),
        ),
        wrong(
            more,
            _("the cracks come on top of the stretch of the bars"),
            _("The cracks are what the bars have slipped: they are in that stretch already."),
        ),
    ]


def what_bars_delay(random, system):
    """By how much do bars delay the first crack?"""
    tie = replace(tie_of(random, system), scatter=0.0)
    plain = replace(tie, number=0).solve().pulled.first_pull
    first = tie.solve().pulled.first_pull
    clear(first is not None and first < 1.35 * plain)
    yields = tie.bars_area * tie.yield_strength
    apart((plain, first, yields, plain + yields), 1.06)
    text = _(
        "A member of plain concrete cracks at {pull}. With {bars} in it, which yield at {yields}, "
        "when does the first crack come?"
    ).format(
        pull=shown(plain, "force", system),
        bars=bars_told(tie),
        yields=shown(yields, "force", system),
    )
    values = plain + yields, first, yields
    return asked("what_bars_delay", random, text, _delay_choices(values, system), tie)


def _delay_choices(values, system: str) -> list:
    both, first, yields = (_("At {n}").format(n=shown(v, "force", system)) for v in values)
    return [
        right(
            first,
            _("Bars take a small share only as long as the concrete is sound: they hold cracks."),
        ),
        wrong(
            both,
            _("bars and concrete add up their strengths"),
            _("When the concrete cracks the bars have hardly stretched: they have not done much."),
        ),
        wrong(
            yields,
            _("as long as the bars hold, nothing cracks"),
            _("Concrete cracks long before steel yields: it bears hardly any stretch."),
        ),
    ]


def least_bars(random, system):
    """Which bar is the thinnest that holds the first crack of a member held at its whole ends?"""
    side = drawn(random, "size", system, 100.0, 180.0)
    sizes = {"SI": ("8", "10", "12", "16", "20", "25"), "US": ("#3", "#4", "#5", "#6", "#7", "#8")}
    ties = [
        replace(tie_of(random, system, side), number=1, size=name, ends="gripped", scatter=0.0)
        for name in sizes[system]
    ]
    holds = [_bears_first_crack(tie) for tie in ties]
    clear(True in holds and 1 <= holds.index(True) <= len(ties) - 2)
    k = holds.index(True)
    first = ties[0].tensile * side**2
    text = _(
        "A member of {side} by {side} is held at its whole ends, as walls hold a floor. It cracks "
        "at about {pull}; steel yields at {stress}. Which is the thinnest single bar that holds "
        "the first crack?"
    ).format(
        side=shown(side, "size", system),
        pull=shown(first, "force", system),
        stress=shown(ties[0].yield_strength, "stress", system),
    )
    return asked("least_bars", random, text, _least_choices(ties, k), ties[k])


def _bears_first_crack(tie: TensionMember) -> bool:
    """Tell whether its bars bear what its concrete lets go: As fy over f_ct (Ac + n As)."""
    whole = tie.concrete_area + tie.bars_area * STEEL_MODULUS / tie.modulus
    return tie.bars_area * tie.yield_strength >= tie.tensile * whole


def _least_choices(ties, k: int) -> list:
    names = [bars_told(tie) for tie in ties]
    return [
        right(names[k], _("Its yield strength times its area is just above that pull.")),
        wrong(
            names[k - 1],
            _("a little less steel does nearly as well"),
            _("It yields in the first crack, which then keeps opening: the first is the last."),
        ),
        wrong(
            names[k + 1],
            _("the thicker, the safer, and thinner ones never hold"),
            _("It holds too, but a thinner one does."),
        ),
        wrong(
            _("No single bar: a crack needs several"),
            _("one bar cannot hold a crack"),
            _("One is enough if it can bear what the concrete lets go."),
        ),
    ]
