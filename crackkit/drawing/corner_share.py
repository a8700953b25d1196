"""How near to tearing each inside corner is: its mean pull as a share of the strength."""

from crackkit.drawing.corner_words import corner_names
from crackkit.drawing.frames import Frame, View
from crackkit.drawing.share_rows import RowSize, ShareRow, share_rows
from crackkit.units import shown
from crackkit.words import _

SIZE = RowSize(name=88.0, value=42.0, tall=15.0, apart=22.0, foot=12.0, under=21.0)
MOST = 6  # corners that are shown


def shown_corners(state) -> int:
    """Count the corners that have a bar."""
    return min(len(state.corners), MOST)


def corner_share(outcome, frame: Frame, view: View) -> list:
    """Draw a bar for each corner, the one looked at first, with the line at which it tears."""
    state = outcome.cornered
    names = corner_names(state.corners, outcome.structure.shape == "door")
    order = sorted(
        range(len(names)), key=lambda k: (k != state.worst, -state.corners[k].share)
    )  # fmt: skip
    rows = [ShareRow(names[k], state.corners[k].share, k == state.worst) for k in order[:MOST]]
    note = _("mean over {length} from each corner").format(
        length=shown(state.material_length, "size", view.system)
    )
    return share_rows(_("Pull over strength"), note, rows, frame, SIZE)
