"""How hard each face of a slab is stretched, as a share of what its concrete can bear."""

from crackkit.drawing.frames import Frame
from crackkit.drawing.share_rows import RowSize, ShareRow, share_rows
from crackkit.words import _

SIZE = RowSize(name=56.0, value=40.0, tall=18.0, apart=28.0, foot=14.0, under=22.0)


def curled_share(outcome, frame: Frame) -> list:
    """Draw a bar for each face, with the line at which it tears."""
    state = outcome.curled
    faces = ((_("top"), state.top), (_("bottom"), state.bottom))
    shares = [max(face.peak, 0.0) / state.strength for _name, face in faces]
    rows = [
        ShareRow(name, share, share == max(shares))
        for (name, _face), share in zip(faces, shares, strict=True)
    ]
    title, note = _("Stress over strength"), _("where each face is stretched most")
    return share_rows(title, note, rows, frame, SIZE)
