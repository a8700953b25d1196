"""The words of the derivation about a slab that curls, step by step."""

from crackkit.derive.step_words import StepWords
from crackkit.words import _

TITLES = {"lift_off": _("Why the ends lift off, and how high")}

STEPS: dict[str, tuple[StepWords, ...]] = {
    "lift_off": (
        StepWords(
            "kappa_0",
            _(
                "The top wants to shrink by ε_d more than the bottom, evenly over the depth h. A "
                "strip that weighs nothing would bend to an arc:"
            ),
        ),
        StepWords(
            "EI",
            _("How stiff the strip is against bending, for each bit of its width:"),
            "moment",
        ),
        StepWords(
            "M",
            _(
                "Its end stands in the air. The piece from the end to x hangs there, and its "
                "weight w bends it down by:"
            ),
        ),
        StepWords(
            "kappa",
            _("So weight takes some of the bend away, the more the farther from the end:"),
        ),
        StepWords(
            "L_a",
            _(
                "Where the strip lies on its hard base it is flat. The air ends where weight has "
                "taken all of the bend away:"
            ),
            "length",
        ),
        StepWords(
            "y_0",
            _(
                "Each bit of bend lifts the end by itself times its distance from it. All of them "
                "together; the rise grows with the square of what bends it:"
            ),
            "movement",
        ),
        StepWords(
            "y_h",
            _(
                "Now put in what each of them is; the weight w is γ times the depth. The depth "
                "drops out: a thicker slab whose top is as much drier stands as high, on a longer "
                "lifted piece, but it is stronger:"
            ),
        ),
    ),
}
