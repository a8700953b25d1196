"""Words on a slab with inside corners: its shape, what holds it, its bars, its joint."""

import numpy as np

from crackkit.drawing.frames import View
from crackkit.drawing.ground_base import base_name
from crackkit.structures.corner_restraint import restraint
from crackkit.structures.fields import input_at
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.units import shown
from crackkit.words import _

BESIDE = 0.25  # share of their reach within which corners stand in the middle


def chosen(structure, path: str) -> str:
    """Words of what is chosen for an input, as its control has them."""
    found = input_at(structure, path)
    return dict(found.declared.choices)[found.value]


def shape_words(structure, view: View) -> str:
    """Say what is missing from the slab."""
    s, system = structure, view.system
    wide = shown(s.cut_length, "length", system)
    tall = shown(s.cut_width, "length", system)
    boxed = _box_out(s, system) if s.box_out > 0 else ""
    if s.shape == "column":
        return boxed
    kinds = {
        "corner": _("an L: {wide} by {tall} is missing"),
        "depot": _("a T: twice {wide} by {tall} is missing; {boxed}"),
        "opening": _("an opening {wide} by {tall}"),
        "door": _("a wall with a door {wide} by {tall}"),
    }
    text = kinds[s.shape].format(wide=wide, tall=tall, boxed=boxed)
    if s.rounding <= 0:
        return text
    radius = shown(s.rounding, "size", system)
    return _("{shape}, corners rounded to {radius}").format(shape=text, radius=radius)


def _box_out(s, system: str) -> str:
    how = {
        "square": _("square to the slab"),
        "turned": _("turned by 45 degrees"),
        "round": _("round"),
    }
    text = _("a box-out {size} wide round a column, {how}")
    return text.format(size=shown(s.box_out, "length", system), how=how[s.turn])


def held_words(structure) -> str:
    """Say what holds it."""
    n = round(100 * structure.holds)
    kinds = {
        "base": _("held by its base alone: {base}"),
        "ends": _("both ends tied, held to {n}\u00a0%"),
        "edges": _("all outer edges tied, held to {n}\u00a0%, free to slide along"),
        "foot": _("its foot tied, held to {n}\u00a0%"),
    }
    # a wall does not lie on a base, whatever was chosen before it became one
    held = restraint(structure).held
    return kinds[held].format(n=n, base=base_name(structure.drag)[-1])


def bars_words(structure, view: View) -> list[str]:
    """Say which bars there are, kind by kind; one sentence where there are none."""
    found = [*_diagonals(structure, view), *_edges(structure, view), *_mat(structure, view)]
    if found:
        cover = shown(structure.cover, "size", view.system)
        found.append(_("{cover} of concrete over the bars").format(cover=cover))
    return [*(found or [_("no bars")]), *_fibres(structure)]


def _diagonals(s, view: View):
    if s.diagonals != "none":
        yield _("{n} × {size} across each corner, {length} long, {off} from it").format(
            n=s.diagonal_count,
            size=dict(BAR_SIZES)[s.diagonals],
            length=shown(s.diagonal_length, "size", view.system),
            off=shown(s.diagonal_off, "size", view.system),
        )


def _edges(s, view: View):
    if s.edges != "none":
        yield _("{n} × {size} along each side, {past} past the corner").format(
            n=s.edge_count,
            size=dict(BAR_SIZES)[s.edges],
            past=shown(s.edge_past, "size", view.system),
        )


def _mat(s, view: View):
    if s.mat != "none":
        yield _("a mat of {size} every {spacing}").format(
            size=dict(BAR_SIZES)[s.mat], spacing=shown(s.spacing, "size", view.system)
        )


def _fibres(s):
    if s.fibres != "none":
        yield _("fibres: {dose}").format(dose=chosen(s, "fibres"))


def joint_words(structure, view: View) -> str:
    """Say what joint starts at the corner; empty without one."""
    if structure.joint == "saw":
        length = shown(structure.saw_length, "length", view.system)
        return _("a saw cut {length} long from the corner").format(length=length)
    return _("a joint from the corner to the edge") if structure.joint == "joint" else ""


def corner_names(corners, wall: bool) -> list[str]:
    """Name inside corners by number and place: ``2 far left``; the only one by what it is.

    Parameters
    ----------
    corners : sequence of InsideCorner
    wall : bool
        Whether across is upwards.
    """
    if len(corners) == 1:
        return [_("inside corner")]
    places = np.array([corner.at for corner in corners])
    off = places - (places.min(axis=0) + places.max(axis=0)) / 2
    wide, tall = np.maximum(BESIDE * np.abs(off).max(axis=0), 1.0).tolist()
    near, far = (_("lower"), _("upper")) if wall else (_("near"), _("far"))
    names = []
    for k, (x, y) in enumerate(off.tolist()):
        along = _("left") if x < -wide else _("right") if x > wide else ""
        across = near if y < -tall else far if y > tall else ""
        names.append(" ".join(part for part in (str(k + 1), across, along) if part))
    return names
