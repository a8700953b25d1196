"""A floor or beam over several spans, typed in one line."""

from crackkit.sandbox.floor_inputs import FORM
from crackkit.sandbox.floor_told import arrangements, shifts, uncovered
from crackkit.sandbox.typed import Typed
from crackkit.units.bar_notes import PointLoad


class ContinuousBeam(Typed):
    """Two to six spans in one piece, judged for every arrangement of loads that come and go.

    Every argument may be left out; what is then assumed is marked in the list of inputs.
    Bars at a spacing make a strip of a slab, bars that are counted a beam, a flange a beam with
    its slab. What has a value for each span or support takes one for all, or as many as there are.

    Parameters
    ----------
    spans : str or list of str
        ``"5 m, 6 m, 5 m"``, ``"5, 6, 5 m"`` or ``"3 x 5 m"``; two to six.
    ends : str
        ``"pinned"`` or ``"fixed"``; for the left and the right end ``"fixed, pinned"``.
    shape : str
        ``"slab"``, ``"beam"`` or ``"tee"``.
    width, depth : str
        Width of the beam, or of the strip of slab that is looked at; top face to bottom face.
    flange_width, flange_depth : str
        Of a tee: the slab that helps the beam, ``"1 m"`` and ``"100 mm"``.
    dead, live : str
        Load that is always there, own weight apart, and load that comes and goes span by span:
        ``"5 kN/m"``; of a slab also per area, ``"100 psf"``, taken for the width of the strip.
    travelling : str or list of str
        ``"20 kN"``, or ``"20 kN at 3 m"`` for where it stands now, from the left end; two at most.
    live_on : str
        Spans that carry live load in the picture: ``"1, 3"``, ``"all"``, ``"none"``. The verdict
        counts every arrangement.
    own_weight : bool
        Whether the weight of the concrete counts.
    shifted : bool
        Whether the picture shows the moments as cracks shift them.
    settled : str
        Supports that have sunk: ``"B 10 mm, C 5 mm"``; A is the first.
    bottom, top : str or list of str
        ``"12 @ 200"`` or ``"#4 @ 8 in"`` of a slab, ``"3 #6"`` of a beam; ``"3 #6, 4 #6, 3 #6"``
        for each span (bottom) or support (top); ``"none"``.
    cover, top_cover : str
        Clear concrete over the steel.
    drop, top_drop : str
        How far the bars sagged or were trodden down before the concrete set.
    top_reach, top_left_reach, top_right_reach : str
        How far the top bars reach from the supports, to both sides or to one.
    left_gap, right_gap : str
        Where the bottom bars start and stop, from the supports of their span; below zero past
        them.
    through : bool
        Whether the same bars run from end to end in both faces.
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
    _tells = (arrangements, uncovered, shifts)

    def __init__(
        self,
        *,
        spans=None,
        ends=None,
        shape=None,
        width=None,
        depth=None,
        flange_width=None,
        flange_depth=None,
        dead=None,
        live=None,
        travelling=None,
        live_on=None,
        own_weight=None,
        shifted=None,
        settled=None,
        bottom=None,
        top=None,
        cover=None,
        top_cover=None,
        drop=None,
        top_drop=None,
        top_reach=None,
        top_left_reach=None,
        top_right_reach=None,
        left_gap=None,
        right_gap=None,
        through=None,
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

    @property
    def worst(self) -> "ContinuousBeam":
        """The same floor with the loads standing where they open its widest crack."""
        found = self.outcome.range
        if found.widest is None:
            return self
        loads = found.arrangement(found.widest.face, found.widest.at)
        return self.but(live_on=list(loads.spans), travelling=self._standing(loads.at))

    def _standing(self, places) -> str:
        forces = [load.force for load in self.structure.loads if load.force]
        # over the end support a load does nothing: there it is out of the way
        pairs = zip(forces, places, strict=True)
        loads = tuple(PointLoad(force, 0.0 if at is None else at) for force, at in pairs)
        return FORM.by_name["travelling"].written(loads, self.system)
