"""The words of the derivation about a pulled member, step by step."""

from crackkit.derive.step_words import StepWords
from crackkit.words import _

TITLES = {"transfer_length": _("Why cracks keep their distance")}

STEPS: dict[str, tuple[StepWords, ...]] = {
    "transfer_length": (
        StepWords(
            "u",
            _(
                "Concrete grips a bar by its skin. Divide the skin of a bar, for each bit of its "
                "length, by its steel: the thinner the bar, the more skin for the same steel."
            ),
        ),
        StepWords(
            "sigma_c",
            _(
                "In a crack the bar has all the pull, the concrete none. Beside it the grip hands "
                "pull over, bit by bit. So at x from the crack the concrete is pulled by:"
            ),
        ),
        StepWords(
            "l_t",
            _(
                "The concrete can crack again where it is stretched as hard as it can bear. From a "
                "crack to there it takes the transfer length, so nearer than this no crack comes:"
            ),
            "size",
        ),
        StepWords(
            "s_r",
            _(
                "Where two cracks are more than twice that length apart, the middle is full of "
                "stress again and cracks. So in the end they are at most this far apart:"
            ),
            "size",
        ),
        StepWords(
            "epsilon_m",
            _(
                "In between, the bar gives pull away and the concrete gains it. On average the bar "
                "stretches more than the concrete by:"
            ),
            "strain",
        ),
        StepWords(
            "w",
            _("A crack gathers that difference from both sides. So it is at most this wide:"),
            "width",
        ),
    ),
}
