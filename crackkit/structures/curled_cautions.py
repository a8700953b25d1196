"""What a user of a slab that curls must be told."""

from crackkit.mechanics.cover import least_cover
from crackkit.structures.curled import Curled
from crackkit.structures.outcome import Caution
from crackkit.words import _

DEEP = 1 / 3  # of the thickness: a mat deeper than this does little for the top


def cautions(it, state: Curled) -> tuple[Caution, ...]:
    """List what a user must be told about this case, the grave ones first.

    Parameters
    ----------
    it : CurledSlab
    state : Curled
    """
    text = _(
        "A teaching estimate, not a design: local codes and a licensed engineer decide. A thin "
        "plate on springs; wheels stand still; drying of two mixes alike on paper differs by a "
        "third. What shortening adds (lesson on slabs on the ground) is not in these numbers."
    )
    return (*_state(state), *_mat(it), *_below(it), Caution("estimate", text))


def _state(state: Curled):
    if state.line is not None and state.line.width is None and state.line.corner:
        text = _("A corner that breaks off rocks under every wheel, and its edges crumble.")
        yield Caution("corner", text)
    if state.dryness.capped:
        text = _("The surface crazes: its top layers want to shrink more than they can bear.")
        yield Caution("crazing", text)
    if state.line is not None and state.line.width is not None:
        text = _(
            "The width is reckoned from the moment before it cracked: curling eases once it "
            "does, so this is rather too wide than too narrow."
        )
        yield Caution("eased", text)


def _below(it):
    if it.under == "blotter":
        text = _("How much a dry layer takes up is assumed here, not known: it hangs on the layer.")
        yield Caution("assumed", text)


def _mat(it):
    if not it.area:
        return
    if it.cover + it.bar.diameter > DEEP * it.thickness:
        text = _("A mat so deep crosses the crack late: the top opens over it.")
        yield Caution("deep", text)
    least = least_cover(it.code, it.exposure, it.bar.diameter, "slab")
    if it.cover < least.cover:
        text = _("The cover is less than {least} asks for this place and use: bars rust.")
        yield Caution("cover", text.format(least=least.clause))
