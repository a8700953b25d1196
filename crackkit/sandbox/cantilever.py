"""A balcony or a canopy, typed in one line."""

from crackkit.sandbox.cantilever_inputs import FORM
from crackkit.sandbox.root_told import anchorage
from crackkit.sandbox.typed import Typed


class Cantilever(Typed):
    """An arm that grows out of a wall, or out of the floor behind it.

    Every argument may be left out; what is then assumed is marked in the list of inputs.
    Bars at a spacing make a strip of a slab, bars that are counted a beam.

    Parameters
    ----------
    overhang : str
        From the root to the tip: ``"1.5 m"``, ``"5 ft"``.
    back : str
        ``"wall"`` or ``"floor"``: what it grows out of.
    wall, back_span : str
        Thickness of the wall; span of the floor behind. Typing a span behind means a floor.
    shape : str
        ``"slab"`` or ``"beam"``.
    width, depth, tip_depth : str
        Width of the beam, or of the strip of slab that is looked at; depth at root and tip.
    load, back_load : str
        Spread load on the arm and on the span behind, own weight apart: ``"4 kN/m"``; of a slab
        also per area, ``"100 psf"``, which is taken for the width of the strip.
    point_load : str or list of str
        ``"5 kN at 1.4 m"``; places from the root outwards.
    own_weight : bool
        Whether the weight of the concrete counts.
    top, bottom : str
        ``"12 @ 150"`` or ``"#4 @ 6 in"`` of a slab, ``"3 #6"`` of a beam; ``"none"``.
    cover, bottom_cover : str
        Clear concrete over the steel.
    trodden, bottom_drop : str
        How far the top bars were trodden down, how far the bottom bars sagged.
    behind, bottom_behind : str
        How far the bars reach back past the root, to the outside of a hook.
    hook, bottom_hook : bool
        Whether they end in a standard hook there.
    tip_gap, bottom_tip_gap : str
        From the tip to the ends of the bars.
    stirrups : str
        Of a beam: ``"#3"``, ``"8 mm"`` or ``"none"``.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
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
    _tells = (anchorage,)

    def __init__(
        self,
        *,
        overhang=None,
        back=None,
        wall=None,
        back_span=None,
        shape=None,
        width=None,
        depth=None,
        tip_depth=None,
        load=None,
        back_load=None,
        point_load=None,
        own_weight=None,
        top=None,
        bottom=None,
        cover=None,
        bottom_cover=None,
        trodden=None,
        bottom_drop=None,
        behind=None,
        bottom_behind=None,
        hook=None,
        bottom_hook=None,
        tip_gap=None,
        bottom_tip_gap=None,
        stirrups=None,
        concrete=None,
        steel=None,
        exposure=None,
        duration=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
