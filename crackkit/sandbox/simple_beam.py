"""A beam on two supports, typed in one line."""

from crackkit.sandbox.beam_inputs import FORM
from crackkit.sandbox.typed import Typed


class SimpleBeam(Typed):
    """A rectangular beam on two supports, with or without ends that reach past them.

    Every argument may be left out; what is then assumed is marked in the list of inputs.
    Without `dead` and `point_load` the beam carries its own weight alone.

    Parameters
    ----------
    span, width, depth : str
        Such as ``"20 ft"``, ``"12 in"``, ``"500 mm"``; the depth from top face to bottom face.
    bars, top_bars : str
        Number and size, such as ``"3 #6"`` or ``"4 x 16 mm"``; ``"none"``.
    cover, top_cover : str
        Clear concrete over the stirrups (over the bars where there are none).
    drop, top_drop : str
        How far the bars sagged or were trodden down before the concrete set.
    left_gap, right_gap, top_left_gap, top_right_gap : str
        From the ends of the beam to the ends of the bars.
    stirrups : str
        ``"#3"``, ``"10 mm"`` or ``"none"``.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
    dead : str
        Load on the whole length, own weight apart: ``"0.9 kip/ft"``; no load factors.
    point_load : str or list of str
        ``"10 kip at 8 ft, 5 kip at 14 ft"``; places from the left end of the beam.
    own_weight : bool
        Whether the weight of the beam counts.
    overhang_left, overhang_right : str
        How far the beam reaches past its supports.
    exposure : str
        ``"dry"``, ``"moist"``, ``"salt"``, ``"sea"`` or ``"leak_tight"``.
    duration : str
        How long the load stays: ``"short"`` or ``"lasting"``.
    code : str
        ``"ACI"`` or ``"EN"``; by default ACI with US units and EN with metric ones.
    system : str
        ``"US"`` or ``"SI"``: the units of the answers; by default those that were typed.

    Raises
    ------
    WrongInput
        If something cannot be read or used; names the argument, what was typed and what may be.
    """

    form = FORM

    def __init__(
        self,
        *,
        span=None,
        width=None,
        depth=None,
        bars=None,
        top_bars=None,
        cover=None,
        top_cover=None,
        drop=None,
        top_drop=None,
        left_gap=None,
        right_gap=None,
        top_left_gap=None,
        top_right_gap=None,
        stirrups=None,
        concrete=None,
        steel=None,
        dead=None,
        point_load=None,
        own_weight=None,
        overhang_left=None,
        overhang_right=None,
        exposure=None,
        duration=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
