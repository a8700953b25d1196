"""A slab that curls, typed in one line."""

from crackkit.sandbox.curled_inputs import FORM
from crackkit.sandbox.typed import Typed


class CurledSlab(Typed):
    """A panel of a floor that dries from its top: how high do its corners stand, does it break?

    Every argument may be left out; what is then assumed is marked in the list of inputs.

    Parameters
    ----------
    length, width, thickness : str
        Of the panel, from joint to joint: ``"4.5 m"``, ``"15 ft"``; ``"150 mm"``, ``"6 in"``.
    load : str
        On a wheel or the leg of a rack: ``"10 kN"``, ``"2 kip"``; two of them ``"10 kN, 8 kN"``;
        or ``"none"``.
    along, across : str
        Where it stands, its middle measured from one corner: ``"0.3 m"``; for two loads one value
        for both, or one for each: ``"0.3 m, 2 m"``.
    foot : str
        Side of the square it stands on: ``"150 mm"``.
    ground : str
        Pressure of the ground for each settlement: ``"50 MN/m3"``, ``"200 pci"``.
    transfer : str or float
        Share of its load that an edge hands to its neighbour: ``0.8``, ``"80 %"``.
    under : str
        What lies below: ``"sheet"``, ``"damp"``, ``"blotter"`` or ``"open"``.
    humidity : str or float
        Of the air: ``0.5``, ``"50 %"``.
    curing : str
        How long it was kept moist: ``"7 days"``.
    shrinks : str
        By how much it would shrink if it dried all through: ``"0.7 ‰"``, ``"700 millionths"``.
    warmer : str
        By how much its top is warmer than its bottom: ``"5 °C"``, by night ``"-9 °F"``.
    bars : str
        Mat near its top, both ways: ``"10 @ 200"``, ``"#4 @ 12 in"`` or ``"none"``.
    cover : str
        Clear concrete above the mat.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
    age : str
        Since it was cast, up to three years: ``"90 d"``, ``"6 months"``.
    exposure : str
        ``"dry"``, ``"moist"``, ``"salt"``, ``"sea"`` or ``"leak_tight"``.
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
        length=None,
        width=None,
        thickness=None,
        load=None,
        along=None,
        across=None,
        foot=None,
        ground=None,
        transfer=None,
        under=None,
        humidity=None,
        curing=None,
        shrinks=None,
        warmer=None,
        bars=None,
        cover=None,
        concrete=None,
        steel=None,
        age=None,
        exposure=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
