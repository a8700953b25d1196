"""Calls of the first lesson. Which answer is right is worked out, never written down."""

from dataclasses import replace

import numpy as np

from crackkit.learning.called import Answer, called
from crackkit.learning.choices import Question
from crackkit.learning.pulled import FULL, THIN, bare_hanger, first_pull, hanger, widest
from crackkit.learning.telling import shown
from crackkit.structures.outcome import UNHELD
from crackkit.structures.pull_history import history
from crackkit.structures.tension_member import TensionMember
from crackkit.words import _

SEEDS = range(1, 11)
MIDDLE = 0.05  # share of the length that still counts as exactly in the middle, or at an end

CLOSE = 0.5  # of its width: what counts as close to a crack


def first(system: str) -> Question:
    """Where does the first crack open?"""
    tie = hanger(system)
    places = [_first_place(replace(tie, seed=seed)) for seed in SEEDS]
    after = replace(tie, pull=first_pull(tie), beside=True)
    text = _(
        "The canopy hangs on this hanger, and snow falls on it: the pull grows. Where does the "
        "first crack open?"
    )
    return called("first", text, _where(places), _FIRST, tie, after)


def _first_place(tie: TensionMember) -> float:
    """Place of the first crack as a share of the length [-]; not a number where none comes."""
    found = history(tie.sample).sequence
    return float(found.position[0]) / tie.length if found.position.size else float("nan")


def _where(places) -> str:
    at = np.array(places)
    if np.isnan(at).all():
        return "nowhere"
    if (np.abs(at - 0.5) < MIDDLE).all():
        return "middle"
    return "end" if (np.minimum(at, 1 - at) < MIDDLE).all() else "weakest"


_FIRST = (
    Answer(
        "middle",
        _("In the middle"),
        _("everything breaks in the middle"),
        _(
            "A beam is bent most in the middle. This hanger is pulled alike from end to end: its "
            "middle is nothing special."
        ),
    ),
    Answer(
        "end",
        _("At an end, where the bar goes in"),
        _("things break where they are held"),
        _("At its very ends the bar has all the pull, and the concrete none of it yet."),
    ),
    Answer(
        "weakest",
        _("Somewhere between, where the concrete happens to be weakest"),
        _("a crack can come anywhere"),
        _(
            "Away from its ends the concrete is pulled alike everywhere, so its weakest place "
            "decides. The picture shows ten hangers from ten trucks: each cracks somewhere else."
        ),
    ),
    Answer(
        "nowhere",
        _("Nowhere: the bar prevents it"),
        _("bars keep concrete from cracking"),
        _("Bars hold a crack together once it is there. They hardly delay it."),
    ),
)


def bare(system: str) -> Question:
    """What becomes of a hanger without a bar when it is pulled on after its first crack?"""
    tie = bare_hanger(system)
    after = replace(tie, pull=first_pull(tie))
    outcome = after.solve()
    found = "parts" if outcome.verdict.key == UNHELD else "more"
    text = _(
        "On another hanger the bar was forgotten: it is plain concrete. At {pull} it gets its "
        "first crack. What happens then?"
    ).format(pull=shown(after.pull, "force", system))
    return called("bare", text, found, _BARE, tie, after)


_BARE = (
    Answer(
        "fine",
        _("The crack stays fine as long as the pull stays what it is"),
        _("a crack only opens when the load grows"),
        _("Nothing crosses the crack, so nothing holds its two faces together."),
    ),
    Answer(
        "more",
        _("More cracks come, one after the other"),
        _("concrete cracks bit by bit and warns"),
        _("For a second crack the pull would have to get past the first one. It cannot."),
    ),
    Answer(
        "parts",
        _("It parts in two, at once and without warning"),
        _("concrete alone bears no pull at all"),
        _("One crack, and it is over. It did bear a pull, up to that moment."),
    ),
)


def following(system: str) -> Question:
    """Just after the first crack: where can the next one not open?"""
    tie = hanger(system)
    cracked = replace(tie, pull=first_pull(tie))
    text = _(
        "This is the hanger with its bar. Now it has one crack, and the pull grows on. Where can "
        "the next crack not open?"
    )
    after = replace(tie, pull=FULL[system])
    return called("next", text, _barred(tie), _NEXT, cracked, after)


def _barred(tie: TensionMember) -> str:
    """Where no crack comes up to the yield of the bars, in ten kinds of concrete."""
    gaps = []
    for seed in SEEDS:
        at = np.sort(history(replace(tie, seed=seed).sample).sequence.position)
        gaps.append(float(np.diff(at).min()) if at.size > 1 else np.inf)
    if np.isinf(gaps).all():
        return "everywhere"
    return "close" if min(gaps) > CLOSE * tie.width else "anywhere"


_NEXT = (
    Answer(
        "close",
        _("Close to the first crack"),
        _("next to a crack the concrete is sound"),
        _(
            "At the crack the bar has all the pull. It takes a certain length until the concrete "
            "has got enough of it back to crack again. Look at the curves in band 2: beside each "
            "crack they start from zero."
        ),
    ),
    Answer(
        "far",
        _("Far away from the first crack"),
        _("a crack weakens the concrete around it, so the next one opens beside it"),
        _("Far away nothing has changed: there the concrete is pulled as before, and cracks next."),
    ),
    Answer(
        "anywhere",
        _("There is no such place, it can open anywhere"),
        _("cracks come wherever they like"),
        _("Beside a crack the concrete is hardly pulled at all: it has let go there."),
    ),
    Answer(
        "everywhere",
        _("Anywhere: after the first crack no other can come"),
        _("one crack takes up all the movement"),
        _("That is so without a bar. The bar takes the pull past the crack and hands it on."),
    ),
)


def thin(system: str) -> Question:
    """The same steel as one thick bar or as four thin ones: which has the finer cracks?"""
    thick = replace(hanger(system), pull=FULL[system])
    fine = replace(thick, number=4, size=THIN[system])
    a, b = thick.solve(), fine.solve()
    text = _(
        "Under {pull} the hanger with its one bar of size {thick} has {n} cracks, the widest "
        "{width}. The same weight of steel could be four bars of size {thin}. What would become "
        "of the cracks?"
    ).format(
        pull=shown(thick.pull, "force", system),
        thick=_named(thick.size),
        thin=_named(fine.size),
        n=len(a.cracks),
        width=shown(widest(a), "width", system),
    )
    return called("thin", text, _compared(a, b), _THIN, thick, fine)


def _named(size: str) -> str:
    return size if size.startswith("#") else _("{n} mm").format(n=size)


def _compared(a, b) -> str:
    """How the cracks of the second differ from those of the first."""
    if widest(b) > 1.1 * widest(a):
        return "wider"
    if widest(b) > 0.9 * widest(a):
        return "same"
    return "finer" if len(b.cracks) > len(a.cracks) else "fewer"


_THIN = (
    Answer(
        "wider",
        _("Fewer, but wider: thin bars are weak"),
        _("a thick bar holds better than thin ones"),
        _("Together the four have as much steel, and stretch as much under this pull."),
    ),
    Answer(
        "same",
        _("Nothing: it is the same steel under the same pull"),
        _("only the weight of steel counts"),
        _("The pull in the steel is the same. But cracks depend on how well it is gripped."),
    ),
    Answer(
        "finer",
        _("More of them, and finer"),
        _("many bars make many cracks"),
        _(
            "Four thin bars have twice the skin. The concrete takes its share of the pull back "
            "over a shorter way, so cracks come closer together, and the stretch is shared by "
            "more of them."
        ),
    ),
    Answer(
        "fewer",
        _("Fewer of them, and finer"),
        _("less crack width means fewer cracks"),
        _("The hanger gets longer all the same. If cracks are finer, there must be more of them."),
    ),
)
