"""The words of the derivations about choosing bars, step by step."""

from crackkit.derive.step_words import StepWords
from crackkit.words import _

TITLES = {
    "bar_spacing": _("Why thin bars close together win"),
    "rust_time": _("Why twice the cover gives four times the years"),
}

_MODEL_CODE = "Model Code 2010, 7.6.4.4"

STEPS: dict[str, tuple[StepWords, ...]] = {
    "bar_spacing": (
        StepWords(
            "u",
            _(
                "Concrete grips a bar by its skin. Divide the skin of a bar, for each bit of its "
                "length, by its steel: the thinner the bar, the more skin for the same steel."
            ),
        ),
        StepWords(
            "balance",
            _(
                "Beside a crack the concrete carries nothing. The grip hands the pull over to it, "
                "bit by bit along l_b, until the concrete is stretched as hard as it can bear and "
                "may crack again. There is A_s/ρ of concrete around the steel A_s:"
            ),
        ),
        StepWords(
            "l_b",
            _("The steel A_s drops out. What is left is the diameter over the share of steel:"),
            "size",
        ),
        StepWords(
            "s_r",
            _(
                "Cracks stand at most twice that length apart. The cover adds to it: so far from a "
                "crack the grip has not yet reached the face."
            ),
            "size",
            _MODEL_CODE,
        ),
        StepWords(
            "epsilon_m",
            _("On this length the steel stretches more than the concrete, which still helps it:"),
            "strain",
            _MODEL_CODE,
        ),
        StepWords(
            "w",
            _(
                "The crack gathers that difference. At the face it is β times as wide as at the "
                "bars, for a bent slab is stretched more there."
            ),
            "width",
            _MODEL_CODE,
        ),
        StepWords(
            "r",
            _(
                "Now the same steel as bars of half the diameter: l_b is halved, the cover stays, "
                "and so does nearly everything else. The crack shrinks to this share of its width:"
            ),
            "plain",
        ),
    ),
    "rust_time": (
        StepWords(
            "v",
            _(
                "Air has to creep through the concrete that it has turned already. The deeper it "
                "is, at depth x, the slower it gets on (K tells how deep it is after one year):"
            ),
        ),
        StepWords(
            "T",
            _("Add up the time for each bit of the way, from the face to depth x:"),
        ),
        StepWords("x", _("Turned around, depth grows with the square root of time:")),
        StepWords(
            "T_c",
            _(
                "The bars are reached when x is the cover: after so many years (half of the places "
                "are reached sooner):"
            ),
            "plain",
        ),
        StepWords("T_2", _("With twice the cover it takes four times as long:"), "plain"),
        StepWords("T_h", _("With half the cover, only a quarter is left:"), "plain"),
    ),
}
