"""A strip whose bars are to be chosen, typed in one line."""

from crackkit.sandbox.control_inputs import FORM
from crackkit.sandbox.laid_told import laid_and_asked
from crackkit.sandbox.typed import Typed


class CrackControl(Typed):
    """A strip of a slab or a beam, bent or pulled: which bars keep its cracks small?

    Every argument may be left out; what is then assumed is marked in the list of inputs.

    Parameters
    ----------
    bars : str
        ``"12 @ 150"``, ``"#4 @ 6 in"``: a strip of a slab; ``"4 #6"``, ``"4 x 16 mm"``: a beam.
    rows : str
        Of what is pulled: bars in ``"both"`` faces, or one layer in the ``"middle"``.
    across : str
        The other bars of the mat: ``"10 @ 200"``, ``"#4 @ 8 in"`` or ``"none"``.
    outer : str
        Which of the two lie nearest to the face: ``"main"`` or ``"across"``.
    both_ways : bool
        Whether the bars across are loaded the same.
    cover : str
        Clear concrete over the outermost bars.
    slack : str
        How far the bars may lie off: deeper widens the cracks, higher brings rust sooner.
    fibres : str
        Indicative doses ``"steel_20"``, ``"steel_30"``, ``"steel_40"`` (kg/m³), ``"plastic_5"``;
        ``"none"``, or ``"tested"``.
    f_R1, f_R3 : str
        Residual strengths by EN 14651 as tests gave them: ``"2.4 MPa"``; they make ``"tested"``.
    steel_stress, moment, pull : str
        One of them: the stress in the main bars in a crack (the load then follows from the bars),
        or what acts on the strip: ``"200 MPa"``, ``"30 kNm"``, ``"300 kN"``; no load factors.
    action : str
        ``"bent"`` or ``"pulled"``; a pull says it by itself.
    shape : str
        ``"slab"`` or ``"beam"``; as the bars are typed.
    width, depth : str
        Of the strip or beam: ``"1 m"``, ``"8 in"``. Moment and pull act on this width.
    stones : str
        The largest stones; they must pass between the bars.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
    air : str
        At the face: ``"inside"``, ``"roofed"`` or ``"rained"`` upon.
    curing : str
        How long the face was kept moist: ``"7 days"``.
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
    _tells = (laid_and_asked,)

    def __init__(
        self,
        *,
        bars=None,
        rows=None,
        across=None,
        outer=None,
        both_ways=None,
        cover=None,
        slack=None,
        fibres=None,
        f_R1=None,
        f_R3=None,
        steel_stress=None,
        moment=None,
        pull=None,
        action=None,
        shape=None,
        width=None,
        depth=None,
        stones=None,
        concrete=None,
        steel=None,
        air=None,
        curing=None,
        exposure=None,
        duration=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
