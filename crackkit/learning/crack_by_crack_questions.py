"""Questions about cracks that come one by one: how many, how wide, and what stays."""

from dataclasses import replace

from crackkit.learning.choices import apart, asked, clear, drawn, right, width_text, wrong
from crackkit.learning.pulled import widest
from crackkit.learning.telling import shown
from crackkit.learning.ties_asked import bars_told, pull_of, tie_of
from crackkit.structures.tension_member import TensionMember
from crackkit.words import _

THINNER = {"20": "10", "#6": "#3"}  # four of these weigh what one of those weighs


def how_far_apart(random, system):
    """Between which distances do cracks end up, if bond needs a certain length?"""
    reach = drawn(random, "size", system, 100.0, 300.0)
    tie = tie_of(random, system)
    text = _(
        "From a crack on it takes {reach}, however hard it is pulled, until the bar has handed "
        "enough back to crack the concrete again. The member is pulled until no new crack comes. "
        "How far apart do its cracks lie then?"
    ).format(reach=shown(reach, "size", system))
    return asked("how_far_apart", random, text, _apart_choices(reach, system), tie)


def _apart_choices(reach: float, system: str) -> list:
    half, one, two, four = (shown(k * reach, "size", system) for k in (0.5, 1, 2, 4))
    return [
        right(
            _("Between {a} and {b}").format(a=one, b=two),
            _(
                "Closer than that length no crack can come. In a piece of more than twice that "
                "length the middle is full of stress again, so it does crack."
            ),
        ),
        wrong(
            _("Exactly {a}").format(a=one),
            _("cracks come at one even distance"),
            _("They come where the concrete is weak, so the pieces are not alike."),
        ),
        wrong(
            _("Between {a} and {b}").format(a=half, b=one),
            _("cracks crowd as long as the pull grows"),
            _("In so short a piece the bar cannot hand back enough pull to crack it."),
        ),
        wrong(
            _("Between {a} and {b}").format(a=two, b=four),
            _("one crack eases the concrete far around it"),
            _("In so long a piece the middle is full of stress again: it cracks once more."),
        ),
    ]


def share_of_the_concrete(random, system):
    """How much of the pull does the concrete carry midway between two cracks?"""
    tie = tie_of(random, system)
    tie = replace(tie, pull=pull_of(random, tie, system))
    outcome = tie.solve()
    clear(len(outcome.cracks) >= 2)
    alone, between = outcome.pulled.steel_at_crack, _least_between_cracks(outcome)
    bars = tie.pull * between / alone
    values = bars, tie.pull - bars, tie.pull
    apart(values, 1.12)
    text = _(
        "{pull} pull at a cracked member. In the cracks its bars are pulled by {alone}, between "
        "two of its cracks only by {between}. How much of the pull does the concrete carry there?"
    ).format(
        pull=shown(tie.pull, "force", system),
        alone=shown(alone, "stress", system),
        between=shown(between, "stress", system),
    )
    return asked("share_of_the_concrete", random, text, _share_choices(values, system), tie)


def _least_between_cracks(outcome) -> float:
    """Least stress of the bars between the outermost cracks [MPa]."""
    state = outcome.pulled.now
    inside = (state.x > state.cracks[0]) & (state.x < state.cracks[-1])
    return float(state.steel_stress[inside].min())


def _share_choices(values, system: str) -> list:
    bars, concrete, whole = (shown(v, "force", system) for v in values)
    return [
        right(
            concrete,
            _("The pull is the same everywhere: what the bars do not carry, the concrete does."),
        ),
        wrong(
            bars,
            _("the stress that is told goes with the concrete"),
            _("That is the share of the bars. The rest is that of the concrete."),
        ),
        wrong(
            whole,
            _("between cracks all is as before, and the bars rest"),
            _("Beside the concrete the bars stretch as well, so they carry their share."),
        ),
        wrong(
            _("It carries nothing there"),
            _("once it is cracked the concrete does nothing"),
            _("In the cracks it does nothing. Between them it grips the bars and takes a share."),
        ),
    ]


def one_thick_or_four_thin(random, system):
    """How wide are the cracks of the same steel in bars of half the size?"""
    thick = {"SI": "20", "US": "#6"}[system]
    side = drawn(random, "size", system, 110.0, 160.0)
    tie = tie_of(random, system, side, number=1, size=thick)
    tie = replace(tie, pull=pull_of(random, tie, system))
    fine = replace(tie, number=4, size=THINNER[thick])
    a, b = tie.solve(), fine.solve()
    clear(len(a.cracks) >= 2 and len(b.cracks) >= 3)
    before, after = widest(a), widest(b)
    apart((before / 4, after, before), 1.12)
    apart((before, 2 * before), 1.12)
    text = _(
        "A member with {thick} has cracks up to {width} wide. It is built again with {thin}, which "
        "weigh as much, and pulled as hard. How wide do its cracks get?"
    ).format(thick=bars_told(tie), thin=bars_told(fine), width=width_text(before, system))
    values = before / 4, after, before, 2 * before
    return asked("one_thick_or_four_thin", random, text, _thin_choices(values, system), tie)


def _thin_choices(values, system: str) -> list:
    quarter, after, before, twice = (width_text(v, system) for v in values)
    return [
        right(after, _("Twice the skin: the pull is handed back sooner, more and finer cracks.")),
        wrong(
            before,
            _("only the weight of steel counts"),
            _("The pull in the steel is the same, but thin bars are gripped better."),
        ),
        wrong(
            quarter,
            _("four bars, so a quarter of the width"),
            _("Their skin is twice as large, not four times."),
        ),
        wrong(
            twice,
            _("thin bars stretch more than thick ones"),
            _("Together they have as much steel, and stretch as much."),
        ),
    ]


def what_stays(random, system):
    """What becomes of a crack when the pull lets go?"""
    tie = tie_of(random, system)
    top = pull_of(random, tie, system)
    pulled = replace(tie, pull=top).solve()
    clear(len(pulled.cracks) >= 2)
    free = replace(tie, pull=0.0, before=top).solve()
    before, after = widest(pulled), _same_crack(pulled, free)
    clear(after > 0.08 * before and width_text(after, system) != width_text(0.0, system))
    apart((after, before), 1.2)
    text = _(
        "A member with {bars} was pulled by {pull}; its widest crack was {width}. Now nothing "
        "pulls any more. How wide is that crack?"
    ).format(
        bars=bars_told(tie),
        pull=shown(top, "force", system),
        width=width_text(before, system),
    )
    values = after, before
    return asked("what_stays", random, text, _stay_choices(values, system), tie)


def _same_crack(pulled, free) -> float:
    """Width [mm] once the pull lets go of what was the widest crack."""
    index = int(pulled.pulled.now.widths.argmax())
    return float(free.pulled.now.widths[index])


def _stay_choices(values, system: str) -> list:
    after, before = (width_text(v, system) for v in values)
    return [
        right(
            after,
            _("The bar springs back, but the concrete slipped along it, and holds it open a bit."),
        ),
        wrong(
            _("It has shut"),
            _("without load a crack closes"),
            _("It gets narrower. The slip along the bar does not come back wholly."),
        ),
        wrong(
            before,
            _("a crack stays as wide as it ever was"),
            _("The bar was stretched and springs back: the crack gets narrower."),
        ),
    ]


def smooth_bars(random, system):
    """What becomes of the cracks if the bars are smooth?"""
    tie = tie_of(random, system)
    tie = replace(tie, pull=pull_of(random, tie, system))
    ribbed, smooth = tie.solve(), replace(tie, surface="plain").solve()
    clear(len(ribbed.cracks) >= 4 and 1 <= len(smooth.cracks) < 0.7 * len(ribbed.cracks))
    clear(widest(smooth) > 1.3 * widest(ribbed))
    text = _(
        "A member with {bars} has {n} cracks under {pull}. It is built again with smooth bars "
        "instead of ribbed ones. What becomes of the cracks under the same pull?"
    ).format(bars=bars_told(tie), n=len(ribbed.cracks), pull=shown(tie.pull, "force", system))
    return asked("smooth_bars", random, text, _smooth_choices(), tie)


def _smooth_choices() -> list:
    return [
        right(
            _("Fewer, and wider"),
            _(
                "The concrete hardly grips a smooth bar: it takes far to get its share back, so "
                "few cracks take up all the stretch."
            ),
        ),
        wrong(
            _("More, and finer"),
            _("ribs tear the concrete open"),
            _("Ribs grip the concrete. That is what makes cracks come close together."),
        ),
        wrong(
            _("As many, and as wide: the steel is the same"),
            _("only the weight of steel counts"),
            _("How well the concrete grips the steel counts as much."),
        ),
        wrong(
            _("There are no cracks: without ribs nothing tears at the concrete"),
            _("concrete cracks at the ribs"),
            _("It cracks because it is stretched. Smooth bars only hand the pull back slower."),
        ),
    ]


def never_without_bars(random, system):
    """How many cracks does a long member without bars get?"""
    length = drawn(random, "length", system, 2000.0, 4000.0)
    side = drawn(random, "size", system, 120.0, 250.0)
    tie = TensionMember(number=0, length=length, width=side, depth=side)
    found = len(tie.solve().pulled.history.sequence.position)
    text = _(
        "A member of plain concrete, {length} long and {side} by {side}, is pulled harder and "
        "harder. How many cracks can it get?"
    ).format(length=shown(length, "length", system), side=shown(side, "size", system))
    clear(found == 1)
    return asked("never_without_bars", random, text, _without_choices(), tie)


def _without_choices() -> list:
    return [
        right(_("One"), _("At the first crack it parts, and nothing can be pulled any more.")),
        wrong(
            _("It cannot be pulled at all"),
            _("concrete without bars cannot be pulled at all"),
            _("It can, a little. Then it cracks."),
        ),
        wrong(
            _("One for each length of its width"),
            _("cracks come at a distance that goes by the width"),
            _("For a second crack the pull would have to get past the first one."),
        ),
        wrong(
            _("The longer it is, the more"),
            _("long members always crack many times"),
            _("Only bars could carry the pull past the first crack."),
        ),
    ]
