"""Slabs with inside corners that tests look at: what is rare, what is extreme, and any at all."""

from dataclasses import replace

from hypothesis import strategies as st

from crackkit.drawing.corner_frames import corner_layout
from crackkit.drawing.corner_plan import plan_in
from crackkit.drawing.corner_share import shown_corners
from crackkit.drawing.corner_stretch import ASIDE
from crackkit.drawing.frames import View
from crackkit.structures.corner_shapes import SHAPES
from crackkit.structures.corner_slab import CornerSlab
from tests.drawing.corner_outcomes import outcome
from tests.drawing.looked_at import views
from tests.structures.drawn import anywhere

VIEWS = views(560.0, 640.0, 800.0, 919.0, 920.0, 1000.0, 1200.0)
WIDE = View(width=1200.0)
SLAB = CornerSlab()
DIAGONALS = CornerSlab(diagonals="12")
OPENING = CornerSlab(shape="opening", diagonals="16", edges="12", edge_count=3)
KNOWN = {
    "corner": (SLAB, 1.8),
    "not yet": (SLAB, 0.6),
    "diagonals": (DIAGONALS, 1.8),
    "every bar": (replace(DIAGONALS, diagonal_count=4, edges="#4", edge_count=3, mat="8"), 2.5),
    "far bars": (replace(DIAGONALS, diagonal_off=1000.0, diagonal_length=3000.0), 1.8),
    "opening": (OPENING, 2.5),
    "circle": (CornerSlab(shape="opening", rounding=600.0), 1.2),
    "opening aside": (CornerSlab(shape="opening", cut_x=900.0, cut_y=5100.0, held="ends"), 1.4),
    "slit": (CornerSlab(shape="opening", cut_length=5000.0, cut_width=200.0), 3.0),
    "column": (CornerSlab(shape="column", held="base", drag="sand"), 1.1),
    "turned": (CornerSlab(shape="column", turn="turned", diagonals="#5"), 1.3),
    "round": (CornerSlab(shape="column", turn="round"), 0.9),
    "door": (CornerSlab(shape="door", held="foot", mat="10", spacing=75.0), 2.0),
    "depot": (CornerSlab(shape="depot", turn="turned", diagonals="12", edges="12"), 1.6),
    "second corner": (CornerSlab(shape="depot", length=9000.0, look=2, mat="6"), 1.9),
    "saw cut": (CornerSlab(joint="saw", saw_length=3000.0, thickness=400.0), 1.5),
    "joint": (CornerSlab(joint="joint", rounding=1500.0), 4.0),
    "fibres": (CornerSlab(shape="door", length=12000.0, fibres="tested", diagonals="12"), 1.6),
    "strip": (CornerSlab(length=12000.0, width=2000.0, cut_length=600.0, cut_width=600.0), 1.6),
    "upright": (CornerSlab(length=2000.0, width=12000.0, cut_length=600.0, cut_width=600.0), 7.0),
}
OUTCOMES = {name: outcome(*known) for name, known in KNOWN.items()}
FORMS = [key for key, _label in SHAPES]
PULLS = st.floats(0.05, 8.0)


@st.composite
def slabs(draw):
    """Any slab of any form; what follows the form is drawn with the form known."""
    chosen = draw(st.sampled_from(FORMS))
    return anywhere(draw, CornerSlab(shape=chosen), {"shape": chosen})


def layout_of(found, view: View):
    state = found.cornered
    return corner_layout(view, len(found.numbers), shown_corners(state))


def plan_of(found, view: View = WIDE):
    return plan_in(found.structure, layout_of(found, view).plan, ASIDE)
