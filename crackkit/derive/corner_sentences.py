"""The words of the derivation about an inside corner, step by step."""

from crackkit.derive.step_words import StepWords
from crackkit.words import _

TITLES = {"inside_corner": _("Why a sharp corner cracks, and how far from it one has to look")}

STEPS: dict[str, tuple[StepWords, ...]] = {
    "inside_corner": (
        StepWords(
            "free",
            _(
                "Look so close that nothing is seen but the corner: concrete that fills three "
                "quarters of a turn, 3π/2, with two free sides. Stress there goes with a power of "
                "the distance r, λ − 1. Free sides bear no stress. That allows only a λ with:"
            ),
            "",
            "Williams 1952",
        ),
        StepWords(
            "lamda",
            _("The least that is above 0 counts most near the corner (found by halving):"),
            "plain",
        ),
        StepWords(
            "sigma",
            _(
                "It is below 1. So the stress grows without end towards the corner, however "
                "gently the slab is pulled. The factor C tells how hard that is:"
            ),
        ),
        StepWords(
            "nearer",
            _("Half as far from the corner it is always so many times as great:"),
            "plain",
        ),
        StepWords(
            "sigma_m",
            _(
                "So the greatest stress tells nothing. But its mean from the corner to a distance "
                "d is a number, for the peak is high and thin:"
            ),
        ),
        StepWords(
            "crack",
            _(
                "Over which d? Ask the sharpest corner of all, a crack, of which the work is "
                "known. Concrete fills a whole turn round its tip, 2π; the same condition gives:"
            ),
        ),
        StepWords(
            "sigma_c",
            _("There the stress is K_c/√(2πr), and its mean over d:"),
        ),
        StepWords(
            "K_c",
            _(
                "A crack runs when the stress that it lets go gives the work that tearing takes, "
                "G_F for each bit of its face. That is so at:"
            ),
            "",
            "Irwin 1957, from memory",
        ),
        StepWords(
            "d",
            _(
                "Choose d so that the mean is then just the strength f_ct. This is the material "
                "length of the panel: a corner cracks when its mean over d reaches the strength. "
                "The stronger the concrete, the shorter it is, and the more a sharp corner hurts:"
            ),
            "size",
        ),
    ),
}
