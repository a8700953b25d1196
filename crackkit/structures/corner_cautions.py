"""What a user of a slab with inside corners must be told."""

from crackkit.mechanics.cover import least_cover
from crackkit.structures.corner_ranges import diameter, has_bars, has_diagonals
from crackkit.structures.cornered import Cornered
from crackkit.structures.outcome import Caution
from crackkit.words import _

HAND = 100.0  # mm off the corner beyond which bars do little; common practice


def cautions(it, state: Cornered) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. One crack "
        "alone, even through the depth; shrinkage of two mixes alike on paper differs by a third, "
        "and real cracks scatter by half again."
    )
    found = [
        *_engineer(it),
        *_bars(it, state),
        *_joints(it),
        *_other(it, state),
        *_model(it, state),
    ]
    found.append(Caution("estimate", text))
    return tuple(sorted(found, key=lambda caution: not caution.grave))


def _engineer(it):
    if it.shape == "door":
        text = _("A door cuts through what carries a wall: an engineer decides on the bars.")
        yield Caution("engineer", text, grave=True)
    elif it.shape in ("opening", "column"):
        text = _("An opening in a slab that carries loads needs an engineer, not only these bars.")
        yield Caution("engineer", text)


def _bars(it, state: Cornered):
    laid = [bar for bar in state.bars if bar.kind == "diagonal"]
    if laid and not any(bar.crosses for bar in laid):
        text = _("The diagonal bars lie where the crack does not come: they do nothing.")
        yield Caution("wrong_place", text, grave=True)
    elif has_diagonals(it) and it.diagonal_off > HAND:
        text = _("Bars farther than a hand from the corner do little: it has cracked before.")
        yield Caution("far", text)
    if any(bar.fault == "slips" for bar in state.bars):
        text = _("A bar ends too soon beyond the crack and slips: make it longer.")
        yield Caution("slips", text)
    if state.crack.runs and state.steel_stress > 0 and it.held != "base":
        text = _("Bars delay the crack and trim it. A slab that is held fast opens all the same.")
        yield Caution("trims", text)
    if has_bars(it):
        yield from _cover(it)


def _cover(it):
    thick = max(diameter(size) for size in (it.diagonals, it.edges, it.mat))
    least = least_cover(it.code, it.exposure, thick, "slab")
    if it.cover < least.cover:
        text = _("The cover is less than {least} asks for this place and use: bars rust.")
        yield Caution("cover", text.format(least=least.clause))


def _joints(it):
    if it.joint == "joint" and has_bars(it):
        text = _("Bars that cross a joint hold it shut: cut them there, or use smooth dowels.")
        yield Caution("through_joint", text)
    if it.joint == "joint" and it.exposure == "leak_tight":
        text = _("Open joints leak unless they are sealed; a sealed joint wants upkeep.")
        yield Caution("leaking_joint", text)


def _other(it, state: Cornered):
    others = [c for k, c in enumerate(state.corners) if k != state.worst and c.share >= 1.0]
    if others:
        text = _("Other corners crack as well; only the worst is worked out. Lay bars at each.")
        yield Caution("others", text)


def _model(it, state: Cornered):
    if not state.settled:
        text = _("The crack could not be followed to its rest here: do not rely on its width.")
        yield Caution("unsettled", text, grave=True)
    if it.held == "base" and it.shape != "door":
        text = _(
            "While the crack opens, the base is taken to drag on as before: widths come out a "
            "little too large."
        )
        yield Caution("drag", text)
    elif it.held == "base":
        text = _("A wall stands on its foot: say how its foot is tied.")
        yield Caution("stands", text, grave=True)
