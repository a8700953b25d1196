"""The working of a slab with inside corners: shrinkage, concrete, the corner, the crack, bars."""

from collections.abc import Iterator

from crackkit.structures.cornered import Cornered
from crackkit.structures.materials import DIRECT_TENSION
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def working(it, state: Cornered) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    return (*_concrete(it, state), *_corner(state), *_crack(it, state), *_bars(state))


def _concrete(it, state: Cornered) -> Iterator[WorkingStep]:
    topic = _("Its concrete at this age")
    where = {"ACI": "ACI 209R-92", "EN": "EN 1992-1-1 3.1.4"}.get(it.model, "MC 2010 5.1.9.4")
    text = _("what it would shrink by if nothing held it, cooling counted")
    yield WorkingStep("eps", text, "", state.free, "strain", where, topic)
    text = _("modulus with creep E/(1 + chi × phi), drying since the end of curing")
    where = "ACI 209R-92" if it.code == "ACI" else "EN 1992-1-1 Annex B"
    yield WorkingStep("E", text, "", state.modulus, "strength", where, topic)
    text = _("strength in direct tension")
    where = DIRECT_TENSION[it.code]
    yield WorkingStep("f_t", text, "", state.strength, "strength", where, topic)
    text = _("work to tear a square millimetre: 73 × f_cm^0.18 N/m")
    where = _("Model Code 2010 5.1.5.2, from memory")
    told = f"{1000 * state.toughness:.0f} N/m"
    yield WorkingStep("G_F", text, "", told, "ratio", where, topic)


def _corner(state: Cornered) -> Iterator[WorkingStep]:
    topic = _("The corner before it cracks")
    text = _("length over which its tension is averaged: (2/pi) × E × G_F/f_t²")
    where = _("Hillerborg and others 1976, from memory")
    yield WorkingStep("d", text, "", state.material_length, "size", where, topic)
    text = _("mean tension across the coming crack over that length")
    where = _("plane stress, Williams 1952 at the corner")
    yield WorkingStep("sigma", text, "", state.corner.mean, "strength", where, topic)
    text = _("over the strength: from about 1 on a crack runs")
    yield WorkingStep("sigma/f_t", text, "", state.share, "ratio", "", topic)


def _crack(it, state: Cornered) -> Iterator[WorkingStep]:
    topic = _("The crack")
    where = _("cohesive crack, Model Code 2010 5.1.8.2, from memory")
    text = _("length over which it gapes by more than a hair")
    yield WorkingStep("a", text, "", state.crack.length, "length", where, topic)
    text = _("greatest opening without bars, fibres and joint")
    yield WorkingStep("w_0", text, "", float(state.crack.bare.max()), "width", where, topic)
    text = _("greatest opening as laid")
    yield WorkingStep("w", text, "", state.crack.widest, "width", where, topic)


def _bars(state: Cornered) -> Iterator[WorkingStep]:
    topic = _("Bars across it")
    where = _("bond law of Model Code 2010 6.1.1, long bar after Balazs 1993, from memory")
    names = {"diagonal": _("diagonal"), "edge": _("along the side"), "mat": _("mat")}
    hardest = sorted((b for b in state.bars if b.crosses), key=lambda b: -b.stress)[:4]
    for bar in hardest:
        text = _("stress in a bar, {kind}, diameter {size:.0f} mm").format(
            kind=names[bar.kind], size=bar.diameter
        )
        yield WorkingStep("sigma_s", text, "", bar.stress, "stress", where, topic)
