"""A pulled member, typed in one line."""

from crackkit.sandbox.tie_inputs import FORM
from crackkit.sandbox.tie_told import crack_by_crack, side_by_side
from crackkit.sandbox.typed import Typed


class TensionMember(Typed):
    """A straight member that is pulled lengthwise: a hanger, a tie, a wall as it cools.

    Every argument may be left out; what is then assumed is marked in the list of inputs.

    Parameters
    ----------
    pull, before : str
        Pull now, and the greatest there was before: ``"60 kN"``, ``"14 kip"``; no load factors.
    bars : str
        ``"4 x 12 mm"``, ``"4 #4"`` or ``"none"``; 1, 2, 4, 6 or 8 of them.
    surface : str
        ``"ribbed"`` or ``"plain"``.
    bond : str
        ``"good"``, or ``"other"`` high in a deep pour.
    ends : str
        What is pulled: ``"bars"``, which stick out, or the whole ends, ``"gripped"``.
    cover : str
        Clear concrete over the bars.
    width, depth, length : str
        Of the concrete: ``"150 mm"``, ``"6 in"``, ``"1.5 m"``.
    shrinkage : str
        Free shortening of the concrete before the pull: ``"0.3 ‰"``, ``"300 millionths"``.
    scatter : str or float
        How uneven its strength is from place to place: ``0.1``, ``"10 %"``.
    seed : int
        Which concrete: another number, another mix from the truck.
    beside : bool
        Whether nine more of other concrete are laid beside it.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
    exposure : str
        ``"dry"``, ``"moist"``, ``"salt"``, ``"sea"`` or ``"leak_tight"``.
    duration : str
        How long the pull stays: ``"short"`` or ``"lasting"``.
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
    _tells = (crack_by_crack, side_by_side)

    def __init__(
        self,
        *,
        pull=None,
        before=None,
        bars=None,
        surface=None,
        bond=None,
        ends=None,
        cover=None,
        width=None,
        depth=None,
        length=None,
        shrinkage=None,
        scatter=None,
        seed=None,
        beside=None,
        concrete=None,
        steel=None,
        exposure=None,
        duration=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
