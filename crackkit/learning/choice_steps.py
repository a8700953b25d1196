"""The steps of the walk through a choice of bars: what to try, and what happened."""

from crackkit.learning.choices import mat_text, width_text
from crackkit.learning.telling import shown
from crackkit.learning.walk import WalkStep
from crackkit.structures.crack_control import CrackControl
from crackkit.structures.fields import fitted
from crackkit.words import _

DOSE = "steel_20"
WIDER = 1.05  # from here on a crack counts as wider [-]


def _width(structure: CrackControl, system: str) -> str:
    return width_text(structure.solve().control.worse.band.governing, system)


def _mat(structure: CrackControl, system: str) -> str:
    return mat_text(structure.bar, structure.spacing, system)


def thinner_step(first: CrackControl, second: CrackControl, system: str) -> WalkStep:
    """From thick bars to the next size down."""
    return WalkStep(
        _(
            "The deck has {mat}: few thick bars, and a crack of {width}, too wide. Take the same "
            "steel as thinner bars: one size down, closer together. (The button 'Same steel, "
            "thinner bars' under Bars does it too.)"
        ).format(mat=_mat(first, system), width=_width(first, system)),
        {"size": second.size, "spacing": second.spacing},
        _(
            "The steel is pulled as hard as before, and it weighs the same but for a little. Yet "
            "the crack is finer: {width}. More bars have more skin for the concrete to grip, so "
            "cracks come closer together, and each is smaller."
        ).format(width=_width(second, system)),
    )


def thinner_still_step(second: CrackControl, fine: CrackControl, system: str) -> WalkStep:
    """One more size down."""
    return WalkStep(
        _("Again: the same steel, one size thinner still."),
        {"size": fine.size, "spacing": fine.spacing},
        _(
            "Now {mat} hold the crack to {width}. It could go on, but look at the clear distance "
            "between the bars: the stones must pass, and somebody must tie all these bars."
        ).format(mat=_mat(fine, system), width=_width(fine, system)),
    )


def deep_step(fine: CrackControl, start: dict, cover: float, system: str) -> WalkStep:
    """More cover."""
    deep = fitted(fine, {"cover": cover})[0]
    return WalkStep(
        _("More is safer? Lay the bars deeper: a cover of {cover}.").format(
            cover=shown(cover, "size", system)
        ),
        start | {"cover": cover},
        _(
            "At the face the crack is wider now: {width}. Bars hold a crack where they are; "
            "towards the face it gapes, and it gapes the more the farther away they lie. (The "
            "pull in the bars is kept the same here. Under the same load it would even grow.) In "
            "return the steel is safe from rust for longer: the numbers are under the picture."
        ).format(width=_width(deep, system)),
        from_start=True,
    )


def shallow_step(fine: CrackControl, start: dict, cover: float, system: str) -> WalkStep:
    """Half the cover."""
    near = fitted(fine, {"cover": cover})[0].solve()
    return WalkStep(
        _(
            "Then closer to the face: half the cover, {cover}, as if the spacers had been left out."
        ).format(cover=shown(cover, "size", system)),
        start | {"cover": cover},
        _(
            "A fine crack, {width}, and a bad choice: read the caution. Air works its way into "
            "the concrete and takes away what keeps steel from rusting. Half the cover is reached "
            "in a quarter of the time: after about {n} years here, and half of the places sooner. "
            "Cover is set by the place, not by the crack."
        ).format(
            width=width_text(near.control.worse.band.governing, system),
            n=f"{near.control.years:.0f}",
        ),
        from_start=True,
    )


def off_step(fine: CrackControl, start: dict, off: float, system: str) -> WalkStep:
    """A depth tolerance."""
    rough = fitted(fine, {"slack": off})[0].solve()
    return WalkStep(
        _(
            "Back to the cover that was asked for. But nobody checks it, and the bars may lie off "
            "by {off}, up or down (They may lie off by)."
        ).format(off=shown(off, "size", system)),
        start | {"slack": off},
        _(
            "It costs on both sides. Where they lie too deep the crack opens to {width}; where "
            "they lie too high rust comes after about {n} years. Spacers and chairs are the "
            "cheapest crack control there is."
        ).format(
            width=width_text(rough.control.worse.band.governing, system),
            n=f"{rough.control.fewest_years:.0f}",
        ),
        from_start=True,
    )


def fibre_step(fine: CrackControl, start: dict, system: str) -> WalkStep:
    """Steel fibres."""
    before, mixed = (each.solve().control.main for each in (fine, fitted(fine, _fibres())[0]))
    return WalkStep(
        _("Now mix fibres into the concrete: choose 20 kg/m³ (34 lb/yd³) under Fibres."),
        start | _fibres(),
        _(
            "Fibres bridge every crack and carry a part of the load: the pull left for the bars "
            "falls from {a} to {b}. Cracks come closer and stay finer. Only one rule knows "
            "fibres, so the band of rules is gone. And the dose is indicative: what it gives is "
            "known only from tests of the very mix."
        ).format(
            a=shown(float(before.held.stress), "stress", system),
            b=shown(float(mixed.held.stress), "stress", system),
        ),
        from_start=True,
    )


def _fibres() -> dict:
    return {"fibres": DOSE}


def pulled_step(fine: CrackControl, start: dict, system: str) -> WalkStep:
    """A straight pull instead of bending."""
    pulled = fitted(fine, {"action": "pulled"})[0]
    return WalkStep(
        _(
            "Last: no bending, but a straight pull, as when a floor wants to shrink and its walls "
            "hold it fast (What stretches it, under Load). The pull in the bars is the same, and "
            "both faces have bars now."
        ),
        start | {"action": "pulled"},
        _through(fine, pulled, system),
        from_start=True,
    )


def _through(fine: CrackControl, pulled: CrackControl, system: str) -> str:
    a, b = (each.solve().control.worse.band for each in (fine, pulled))
    text = _(
        "Nothing is squeezed any more: each crack goes right through, from face to face, and water "
        "finds its way. The cracks stand farther apart. {width} Where concrete must hold water, "
        "this is the case that counts."
    )
    wider = b.governing > WIDER * a.governing
    said = _("They are wider: {b} instead of {a}.")
    if not wider:
        said = _(
            "The rule that judges here finds them as wide as before, but the band of rules reaches "
            "farther up, to {high}."
        )
    widths = {name: width_text(one.governing, system) for name, one in (("a", a), ("b", b))}
    return text.format(width=said.format(**widths, high=width_text(b.high, system)))
