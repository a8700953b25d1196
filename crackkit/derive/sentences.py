"""The words of the derivations: a title, and one sentence for each step, in order."""

from crackkit.derive import (
    choice_sentences,
    corner_sentences,
    curled_sentences,
    ground_sentences,
    pull_sentences,
)
from crackkit.derive.step_words import StepWords
from crackkit.words import _

_FLAT = StepWords(
    "epsilon_s",
    _(
        "A flat cut through the beam stays flat while it bends (κ tells how sharply). So stretch "
        "grows evenly with the distance from the line that keeps its length, the neutral axis."
    ),
)
_BALANCE = StepWords(
    "balance",
    _(
        "The squeezed concrete must push as hard as the bars pull. Steel is n times as stiff as "
        "concrete, so a bar counts as n times its area. Cracked concrete pulls nothing."
    ),
)
_STRESS = StepWords(
    "f_s",
    _(
        "The moment bends the section by κ = M/(E_c I_cr), so at the bars the stretch is "
        "κ (d − x). There steel takes n times the stress that concrete would."
    ),
    "stress",
)
_BETA = StepWords(
    "beta",
    _("The face lies farther out than the bars, so it is stretched more, and the crack is wider."),
    "plain",
    "Frosch 1999, p. 439",
)
_WIDTH = StepWords(
    "w",
    _(
        "Bars near by make cracks come closer together: at most twice the distance from a bar to "
        "the farthest point of the face. Each crack gathers the stretch of that length."
    ),
    "width",
    "Frosch 1999, p. 440",
)
_INERTIA = StepWords(
    "I_cr",
    _("What is left to resist bending: the squeezed concrete, and the bars far out."),
    "inertia",
)

TITLES = {
    "cracked_section": _("Why more bars mean finer cracks"),
    "cracked_section_two_layers": _("Why more bars mean finer cracks"),
    "cracking_moment": _("Why it cracks at this moment"),
    "lean": _("Why cracks lean"),
    "arm_moment": _("Why the root is bent most"),
    "lever_arm": _("Why the height of the bars counts"),
    "over_support": _("Why the top is stretched over a support, and how far"),
    **choice_sentences.TITLES,
    **pull_sentences.TITLES,
    **ground_sentences.TITLES,
    **curled_sentences.TITLES,
    **corner_sentences.TITLES,
}

STEPS: dict[str, tuple[StepWords, ...]] = {
    "cracked_section": (
        _FLAT,
        _BALANCE,
        StepWords(
            "x",
            _(
                "Only one depth x of the squeezed part makes that true; "
                "the other root is below zero."
            ),
            "size",
        ),
        _INERTIA,
        _STRESS,
        _BETA,
        _WIDTH,
    ),
    "cracked_section_two_layers": (
        _FLAT,
        _BALANCE,
        StepWords(
            "x_1",
            _("Only one depth makes that true. With the outermost bars alone it would be:"),
            "size",
        ),
        StepWords(
            "balance_two",
            _(
                "This beam has bars near its other face too. They count k times: n − 1 where they "
                "are squeezed, for they stand in the place of concrete, n where they are stretched."
            ),
        ),
        StepWords("x", _("With both layers the neutral axis moves a little:"), "size"),
        StepWords(
            "I_cr",
            _("What is left to resist bending: the squeezed concrete, and the bars far from x."),
            "inertia",
        ),
        _STRESS,
        _BETA,
        _WIDTH,
    ),
    "cracking_moment": (
        StepWords(
            "sigma",
            _(
                "Before it cracks, stress grows evenly from the middle to the face. The face "
                "reaches f_t, the stress that concrete can just bear, first."
            ),
        ),
        StepWords(
            "I",
            _(
                "Every strip helps by its area times its distance from the middle, twice over: "
                "depth counts three times, width once."
            ),
            "inertia",
        ),
        StepWords(
            "M_cr",
            _("All strips together resist this moment when the face is about to crack."),
            "moment",
        ),
    ),
    "lean": (
        StepWords(
            "sigma_a",
            _("Turn a cut by the angle a. Bending (σ) and shear (τ) share in the pull across it."),
        ),
        StepWords(
            "tan_2a",
            _("The pull is largest where turning a little more changes nothing. That gives:"),
        ),
        StepWords(
            "face",
            _("At the face there is no shear: the crack starts square to the face."),
        ),
        StepWords(
            "axis",
            _(
                "At the neutral axis there is only shear: the crack would lean by half a right "
                "angle. In between it turns from one to the other."
            ),
        ),
    ),
    "arm_moment": (
        StepWords(
            "g",
            _(
                "An arm that gets thinner towards its tip weighs less there. At x from the root "
                "its weight per length is:"
            ),
        ),
        StepWords(
            "M_q",
            _(
                "Each bit of load pulls on a lever as long as its distance x from the root. All "
                "bits of the spread load and the weight together:"
            ),
            "moment",
        ),
        StepWords(
            "M",
            _(
                "A load on one place adds its force times its distance (several count together). "
                "Nothing helps from the far end, for there is no support: the root bears it all."
            ),
            "moment",
        ),
    ),
    "over_support": (
        StepWords(
            "theta_q",
            _(
                "Cut the floor over support B: each span is free to turn there. Every bit of "
                "bending turns its end by a share that grows with the distance from the far end. "
                "Under a spread load q a span L turns by this slope (EI tells how stiff it is):"
            ),
        ),
        StepWords(
            "theta_P",
            _("A load P_t on one place, a_t from support B in a span L_t, turns it by:"),
        ),
        StepWords(
            "theta_M",
            _(
                "A moment M_B at this end and one at the far end (M_A or M_C) turn it too, the "
                "far one half as much:"
            ),
        ),
        StepWords(
            "balance",
            _(
                "But the floor is not cut: left and right of B it has one slope. So the moments "
                "must turn the two ends back by as much as the loads turn them apart (times "
                "24 EI; EI drops out as long as it is the same everywhere):"
            ),
        ),
        StepWords(
            "M_q",
            _("So the spread loads on both sides ask for this moment over B:"),
            "moment",
        ),
        StepWords("M_P", _("The travelling load asks for this one:"), "moment"),
        StepWords(
            "M_B",
            _(
                "The moment over B is below zero: a frown. The moments over the next supports "
                "take a part of it away, or add to it."
            ),
            "moment",
        ),
        StepWords(
            "M_2",
            _(
                "Two equal spans with the same load on both: as much as a beam on two supports "
                "has in its middle, but on top."
            ),
        ),
        StepWords(
            "x_0",
            _(
                "Then the frown ends at a quarter of the span from B. That is the sketch which "
                "everybody knows."
            ),
        ),
        StepWords(
            "x_1",
            _(
                "Now take the live load p off this span and leave it on the other; the dead load "
                "g stays on both. The frown reaches farther, the more p there is. With p six "
                "times g it fills the empty span. So top bars go by the load that comes and goes:"
            ),
        ),
    ),
    "lever_arm": (
        _BALANCE,
        StepWords("x", _("Only one depth x of the squeezed part makes that true."), "size"),
        StepWords(
            "z",
            _(
                "The push grows evenly from the neutral axis to the face, so it works at a third "
                "of x from the face. From there to the bars is the lever arm z."
            ),
            "size",
        ),
        StepWords(
            "F",
            _("Push and pull are equally large, and on the lever arm z they balance the moment."),
            "force",
        ),
        StepWords("f_s", _("The bars share that pull:"), "stress"),
        StepWords(
            "M_y",
            _("So the moment at which the bars start to yield grows with their lever arm:"),
            "moment",
        ),
        StepWords(
            "delta",
            _(
                "Bars that were trodden down by t lie at d instead of d + t. The squeezed part "
                "shrinks with d, nearly in step, so this share of lever arm and strength is gone:"
            ),
            "plain",
        ),
    ),
    **choice_sentences.STEPS,
    **pull_sentences.STEPS,
    **ground_sentences.STEPS,
    **curled_sentences.STEPS,
    **corner_sentences.STEPS,
}
