"""A slab on the ground, typed in one line."""

from crackkit.sandbox.base_told import by_the_base_alone
from crackkit.sandbox.ground_inputs import FORM
from crackkit.sandbox.typed import Typed


class GroundSlab(Typed):
    """A slab on the ground that dries: what holds it back, and where does it crack?

    Every argument may be left out; what is then assumed is marked in the list of inputs.

    Parameters
    ----------
    length, width, thickness : str
        Of the slab: ``"24 m"``, ``"80 ft"``; ``"6 m"``; ``"150 mm"``, ``"6 in"``.
    base : str
        What it lies on: ``"two_sheets"``, ``"one_sheet"``, ``"subgrade"``, ``"sand"``,
        ``"sandstone"``, ``"gravel"``, ``"crushed_stone"``, ``"stabilised"`` or
        ``"surface_treatment"``.
    left, middle, right : str or float
        How far each is held: from ``0``, free, to ``1``, cannot move; ``"80 %"``.
    sides : str or float
        The same of its two long sides.
    joints : str
        How far apart, at most: ``"4.5 m"``, ``"15 ft"``; or ``"none"``.
    cut, cut_age : str
        Share of the thickness that is sawn, and when: ``"0.25"``, ``"25 %"``; ``"1 day"``.
    dowels : str
        At joints: ``"none"``, ``"sliding"``, or ``"bound"``: they keep a joint from opening.
    bars : str
        Along the slab: ``"12 @ 200"``, ``"#4 @ 12 in"`` or ``"none"``.
    both_ways : bool
        Whether the same bars lie across it too.
    place : str
        Where they lie: ``"top"``, ``"middle"`` or, where nobody pulled them up, ``"ground"``.
    cover : str
        Clear concrete above bars near the top.
    through : str
        At joints the bars are ``"cut"``, or run ``"through"``.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
    humidity : str or float
        Of the air: ``0.5``, ``"50 %"``.
    curing : str
        How long it was kept moist: ``"7 days"``.
    both_sides : bool
        Whether it dries from below too.
    cooling : str
        By how much it cools from the day it was cast: ``"15 °C"``, ``"27 °F"``.
    spent : str or float
        Share of its strength that curling uses up.
    age : str
        Since it was cast, up to ten years: ``"90 d"``, ``"18 months"``.
    scatter : str or float
        How uneven its strength is from place to place: ``0.1``, ``"10 %"``.
    seed : int
        Which concrete: another number, another mix from the truck.
    model : str
        Whose shrinkage: ``"ACI"``, ``"EN"`` or ``"MC2010"``; by default that of the rules.
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
    _tells = (by_the_base_alone,)

    def __init__(
        self,
        *,
        length=None,
        width=None,
        thickness=None,
        base=None,
        left=None,
        middle=None,
        right=None,
        sides=None,
        joints=None,
        cut=None,
        cut_age=None,
        dowels=None,
        bars=None,
        both_ways=None,
        place=None,
        cover=None,
        through=None,
        concrete=None,
        steel=None,
        humidity=None,
        curing=None,
        both_sides=None,
        cooling=None,
        spent=None,
        age=None,
        scatter=None,
        seed=None,
        model=None,
        exposure=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())
