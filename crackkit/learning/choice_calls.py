"""Calls of the lesson on choosing bars. Which answer is right is worked out, never written down."""

from dataclasses import dataclass

from crackkit.learning.bar_choice import COVER, fine_slab, slab, stress, width
from crackkit.learning.choice_steps import DOSE
from crackkit.learning.choices import Choice, Question, mat_text, right, width_text, wrong
from crackkit.learning.telling import shown
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import fitted
from crackkit.words import _


@dataclass(frozen=True)
class Answer:
    """An answer, and for which outcome it is right.

    Attributes
    ----------
    text, belief, why : str
        What it says, what leads to it where it is wrong, and what is said to who chose it.
    low, high : float
        It is right where what was worked out lies from here up to there [-].
    """

    text: str
    belief: str
    why: str
    low: float
    high: float


def called(key: str, text: str, value: float, answers, before, after) -> Question:
    """Put a call together; the outcome decides which answer is right.

    Parameters
    ----------
    key, text : str
        Name of the call, and what is asked.
    value : float
        What mechanics found: after over before [-].
    answers : sequence of Answer
        In the order in which they are offered; together they cover every outcome once.
    before, after : CrackControl
        What is drawn before and after the call.
    """
    return Question(key, text, tuple(_choice(one, value) for one in answers), before, after)


def _choice(one: Answer, value: float) -> Choice:
    if one.low <= value < one.high:
        return right(one.text, one.why)
    return wrong(one.text, one.belief, one.why)


def _changed(system: str, changes: dict) -> CrackControl:
    return fitted(fine_slab(system), changes)[0]


def thinner(system: str) -> Question:
    """What becomes of the crack when the same steel is laid as thinner bars?"""
    thick, thin = slab(system), fine_slab(system)
    a, b = width(thick.solve()), width(thin.solve())
    text = _(
        "The deck has {thick} at its bottom, and cracks of {width}. The supplier offers the same "
        "weight of steel as {thin}. The load stays. What becomes of the cracks?"
    ).format(
        thick=mat_text(thick.bar, thick.spacing, system),
        thin=mat_text(thin.bar, thin.spacing, system),
        width=width_text(a, system),
    )
    return called("thinner", text, b / a, _thinner_answers(width_text(b, system)), thick, thin)


def _thinner_answers(after: str) -> tuple[Answer, ...]:
    return (
        Answer(
            _("They stay as they are: steel is steel"),
            _("only the weight of steel counts"),
            _("The pull in the steel stays, but more bars have more skin that grips the concrete."),
            0.95,
            1.05,
        ),
        Answer(
            _("They get wider: thin bars give way more easily"),
            _("a thick bar is stiffer, so it holds a crack better"),
            _("All bars together have the same steel, so they stretch alike."),
            1.05,
            99.0,
        ),
        Answer(
            _("They get finer, but more than half as wide as they were"),
            _("bars help the more the more there are"),
            _(
                "{after} now. More skin grips the concrete, so cracks come closer together. The "
                "part that the cover has in it stays as it was: so not by half."
            ).format(after=after),
            0.55,
            0.95,
        ),
        Answer(
            _("They get half as wide or less, as the bars lie about twice as close"),
            _("crack width goes in step with the spacing of the bars"),
            _("A part of the width comes from the cover, and that part stays."),
            0.0,
            0.55,
        ),
    )


def cover(system: str) -> Question:
    """What becomes of the crack at the face when the bars lie deeper?"""
    fine, deep = fine_slab(system), _changed(system, {"cover": COVER[system][2]})
    a, b = width(fine.solve()), width(deep.solve())
    text = _(
        "The thin bars lie in it now, under {usual} of cover. Somebody wants to be safe and lays "
        "them deeper, under {more}. The bars are pulled as hard as before. What becomes of the "
        "cracks, as you see them at the face?"
    ).format(
        usual=shown(fine.cover, "size", system),
        more=shown(deep.cover, "size", system),
    )
    answers = _cover_answers(*(width_text(one, system) for one in (a, b)))
    return called("cover", text, b / a, answers, fine, deep)


def _cover_answers(before: str, after: str) -> tuple[Answer, ...]:
    return (
        Answer(
            _("They get wider"),
            _("deep bars hold less"),
            _(
                "{after} instead of {before}. A crack is narrow at the bars and gapes towards the "
                "face. The farther the face is from the bars, the wider it gapes there."
            ).format(before=before, after=after),
            1.05,
            99.0,
        ),
        Answer(
            _("They stay as they are: the pull in the bars is the same"),
            _("only the pull in the bars counts"),
            _("The pull decides how wide it is at the bars. You see it at the face."),
            0.95,
            1.05,
        ),
        Answer(
            _("They get finer: more concrete covers the bars"),
            _("more cover makes cracks smaller at the surface"),
            _("More cover keeps rust away. The crack at the face gets wider for it."),
            0.0,
            0.95,
        ),
    )


def rust(system: str) -> Question:
    """Which deck rusts first, and how much earlier?"""
    fine, near = fine_slab(system), _changed(system, {"cover": COVER[system][0]})
    first, second = fine.solve(), near.solve()
    text = _(
        "Two decks of the same concrete: in deck A the bars lie under {usual} of cover and the "
        "cracks are {a} wide; in deck B the spacers were left out, the bars lie under {less}, and "
        "the cracks are {b} wide. When does rust begin?"
    ).format(
        usual=shown(fine.cover, "size", system),
        less=shown(near.cover, "size", system),
        a=width_text(width(first), system),
        b=width_text(width(second), system),
    )
    share = second.control.years / first.control.years
    return called("rust", text, share, _rust_answers(second.control.years), fine, near)


def _rust_answers(years: float) -> tuple[Answer, ...]:
    return (
        Answer(
            _("In A first: its cracks are wider"),
            _("rust comes through the cracks only"),
            _(
                "Cracks as fine as these make little difference. Through the cover the air reaches "
                "the whole bar."
            ),
            1.4,
            999.0,
        ),
        Answer(
            _("In both at the same time: it is the same concrete"),
            _("good concrete alone keeps rust away"),
            _("The same concrete, but the air has half the way to go."),
            0.7,
            1.4,
        ),
        Answer(
            _("In B first, after about half the time"),
            _("the air goes through concrete at a steady pace"),
            _("It gets slower the deeper it is: each bit of the way takes longer than the last."),
            0.35,
            0.7,
        ),
        Answer(
            _("In B first, after about a quarter of the time"),
            _("thin covers are no cover at all"),
            _(
                "Half the cover, a quarter of the time: the depth grows with the square root of "
                "the years. In B that is about {n} years, and half of the places sooner."
            ).format(n=f"{years:.0f}"),
            0.0,
            0.35,
        ),
    )


def fibres(system: str) -> Question:
    """Do fibres replace the bars?"""
    fine, mixed = fine_slab(system), _changed(system, {"fibres": DOSE})
    a, b = stress(fine.solve()), stress(mixed.solve())
    text = _(
        "Under this load the bars are pulled to {pull} where it cracks. Now steel fibres are mixed "
        "in, 20 kg/m³ (34 lb/yd³). What is left to do for the bars?"
    ).format(pull=shown(a, "stress", system))
    answers = _fibre_answers(shown(b, "stress", system))
    return called("fibres", text, b / a, answers, fine, mixed)


def _fibre_answers(left: str) -> tuple[Answer, ...]:
    return (
        Answer(
            _("Nothing: such concrete needs no bars"),
            _("fibres replace the bars"),
            _(
                "At this dose they carry a part of the load only. Without bars this deck would "
                "come down."
            ),
            -1.0,
            0.02,
        ),
        Answer(
            _("A part of the pull is taken off them; they are still needed"),
            _("every bit of steel takes its share"),
            _(
                "They are still pulled to {left}. The fibres carry the rest across the crack, and "
                "make cracks come closer. How much they carry only tests of the mix can tell."
            ).format(left=left),
            0.02,
            0.95,
        ),
        Answer(
            _("As much as before: fibres are too short to hold a crack"),
            _("only long bars hold a crack"),
            _("There are very many of them, and each crack is crossed by hundreds."),
            0.95,
            1.02,
        ),
        Answer(
            _("More than before: fibres get between bars and concrete"),
            _("fibres spoil the grip of the bars"),
            _("The concrete grips the bars as before, and the fibres help to carry."),
            1.02,
            99.0,
        ),
    )
