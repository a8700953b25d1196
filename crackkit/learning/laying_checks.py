"""Checks of how the bars lie: room for the stones, cover, how far apart the bars of a mat are."""

from crackkit.learning.check import HAIR, Check
from crackkit.learning.telling import shown
from crackkit.mechanics.cover import least_cover
from crackkit.mechanics.mat_spacing import widest_mat_spacing
from crackkit.structures.judging import least_gap
from crackkit.structures.laid_bars import stirrup_diameter
from crackkit.words import _


def room(_task, structure, _outcome, system: str) -> Check:
    """Check that the bars lie far enough apart for the concrete to get between them."""
    name, whole = _("Room between the bars"), structure.member
    pairs = [(whole.clear_gap(item), least_gap(whole, item)) for item in whole.layers]
    if not pairs:
        return Check("room", name, True, _("no bars"), _("any"), _("No bars, nothing in the way."))
    gap, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok = gap >= least - HAIR
    wanted = _("{g} or more").format(g=shown(least, "size", system))
    measured = _("they do not fit") if gap < 0 else shown(gap, "size", system)
    if gap == float("inf"):
        measured = _("one bar")
    return Check("room", name, ok, measured, wanted, _room_text(ok, gap, least, system))


def _room_text(ok: bool, gap: float, least: float, system: str) -> str:
    if ok:
        return _("The stones pass.")
    off = shown(least - gap, "size", system)
    text = _("{off} short: the stones jam above the bars. Take fewer bars, a size thicker.")
    return text.format(off=off)


def cover(_task, structure, _outcome, system: str) -> Check:
    """Check the concrete over bars and stirrups against what keeps them from rusting."""
    pairs = [pair for _key, pair in covers_of_layers(structure)] + _cover_of_stirrups(structure)
    name = _("Cover")
    if not pairs:
        return Check("cover", name, True, _("no bars"), _("any"), _("No bars, nothing to cover."))
    have, least = min(pairs, key=lambda pair: pair[0] - pair[1])
    ok = have >= least - HAIR
    wanted = _("{c} or more").format(c=shown(least, "size", system))
    off = shown(max(least - have, 0.0), "size", system)
    bad = _("{off} short: water reaches the steel, and it rusts. Give it more cover.")
    text = _("Enough to keep the steel from rusting.") if ok else bad.format(off=off)
    return Check("cover", name, ok, shown(have, "size", system), wanted, text)


def covers_of_layers(structure) -> list[tuple[str, tuple[float, float]]]:
    """Give for each layer of bars its key, and its cover as laid and its least cover [mm].

    Counted to the nearer face, at the shallower of its two ends where a member tapers.
    """
    return [(item.key, _cover_of(structure, item)) for item in structure.member.layers]


def _cover_of(structure, item) -> tuple[float, float]:
    whole, ends = structure.member, (item.start, item.end)
    above = min(float(whole.layer_depth(item, x)) for x in ends)
    below = min(float(whole.depth_at(x) - whole.layer_depth(item, x)) for x in ends)
    have = min(above, below) - item.bar.diameter / 2
    kind = "slab" if item.spacing else "beam"
    return have, least_cover(structure.code, structure.exposure, item.bar.diameter, kind).cover


def _cover_of_stirrups(structure) -> list[tuple[float, float]]:
    cage, size = structure.cage, getattr(structure, "stirrup", "none")
    if cage is None or size == "none":
        return []
    thin = least_cover(structure.code, structure.exposure, stirrup_diameter(size))
    return [(min(cage), thin.cover)]


def mat(_task, structure, _outcome, system: str) -> Check:
    """Check that the bars of a mat do not lie too far apart."""
    name, whole = _("Bars close enough"), structure.member
    mats = [item for item in whole.layers if item.spacing]
    if not mats:
        return Check("mat", name, True, _("no mat"), _("any"), _("There is no mat."))
    far = max(mats, key=lambda item: item.spacing)
    have = min(cover for _key, (cover, _least) in covers_of_layers(structure))
    most = widest_mat_spacing(structure.code, structure.depth, structure.yield_strength, have)
    ok = far.spacing <= most + HAIR
    wanted = _("{s} or less").format(s=shown(most, "size", system))
    text = _("No crack finds a wide way between them.")
    if not ok:
        text = _("Between bars so far apart a crack opens wide. Take thinner bars, closer by.")
    return Check("mat", name, ok, shown(far.spacing, "size", system), wanted, text)
