"""The words of the derivation about a slab on the ground, step by step."""

from crackkit.derive.step_words import StepWords
from crackkit.words import _

TITLES = {"drag": _("Why a long slab is pulled in its middle")}

STEPS: dict[str, tuple[StepWords, ...]] = {
    "drag": (
        StepWords(
            "F",
            _(
                "As the slab gets shorter its ends slide inwards, and the base drags at it: on "
                "each bit of the way by its weight w times the coefficient μ. From a free end to "
                "x, for each bit of width, that adds up to:"
            ),
        ),
        StepWords(
            "sigma",
            _(
                "Both halves slide towards the middle, so it is pulled most there, at half the "
                "length. The whole depth h bears that pull:"
            ),
            "strength",
        ),
        StepWords(
            "sigma_g",
            _(
                "The weight w is that of the concrete, γ, times its depth: a slab twice as thick "
                "is dragged twice as hard, and twice as strong. The depth drops out:"
            ),
        ),
        StepWords(
            "L_c",
            _(
                "The base alone cracks a slab when that pull reaches what the concrete can bear. "
                "So shorter than this no slab cracks, as long as nothing but the base holds it:"
            ),
            "length",
        ),
    ),
}
