"""A slab or wall with an inside corner, typed in one line."""

from crackkit.sandbox.corner_inputs import FORM, USUAL_OFF
from crackkit.sandbox.corner_told import as_it_dries
from crackkit.sandbox.typed import Typed
from crackkit.units import shown
from crackkit.words import _


class CornerSlab(Typed):
    """A slab or wall with an inside corner that dries: does a crack run from it, what holds it?

    Every argument may be left out; what is then assumed is marked in the list of inputs. Of
    `cut`, `hole`, `column`, `door` and `tee` one is typed: it says what is missing, and so what
    shape it is.

    Parameters
    ----------
    shape : str
        ``"corner"`` (an L), ``"opening"``, ``"column"``, ``"door"`` or ``"depot"`` (a T with a
        box-out round a column); as the missing piece says.
    length, width : str
        Of the whole: ``"6 m"``, ``"20 ft"``; of a wall its length and height.
    thickness : str
        ``"150 mm"``, ``"6 in"``.
    cut : str
        The quarter that an L misses, along and across: ``"3 m x 2 m"``; one side if square.
    hole : str
        An opening, along and across: ``"1.2 m x 0.8 m"``, ``"4 ft"``.
    column : str
        Side of a box-out round a column: ``"600 mm"``, ``"2 ft"``.
    door : str
        Width and height of the door in a wall: ``"1 m x 2.1 m"``.
    tee : str
        What a T misses on either side of its stem, along and across: ``"1.5 m x 1.8 m"``.
    box : str
        Side of the box-out in a T: ``"500 mm"``, ``"20 in"``.
    place : str
        Middle of hole or box-out, from the left end and the near side: ``"2 m, 1.5 m"``; of a
        door along the wall: ``"2 m"``; or ``"middle"``.
    rounding : str
        Radius of the corners of a quarter or a hole: ``"100 mm"``, ``"0 in"``.
    turn : str
        The box-out is ``"square"``, ``"turned"`` by 45 degrees or ``"round"``.
    look : int
        Number of the corner that is worked out; ``0`` is the one that is pulled hardest.
    held : str
        By its ``"base"`` alone, its ``"ends"``, its ``"edges"`` all round or its ``"foot"``.
    holds : str or float
        How fast what is tied is held: from ``0``, gives way, to ``1``, cannot move; ``"80 %"``.
    base : str
        What it lies on: ``"two_sheets"``, ``"one_sheet"``, ``"subgrade"``, ``"sand"``,
        ``"sandstone"``, ``"gravel"``, ``"crushed_stone"``, ``"stabilised"`` or
        ``"surface_treatment"``; typed alone, the base holds it and nothing else.
    diagonals : str
        Bars across the crack at each corner, and how far the first one lies off the corner:
        ``"2 x 12 mm at 50 mm"``, ``"2 #4 at 2 in"`` or ``"none"``.
    apart, long : str
        One diagonal bar every ``"100 mm"``, each ``"1.2 m"`` long.
    edges : str
        Bars along the sides of each corner, and how far they lie off: ``"1 x 12 mm at 50 mm"``.
    past : str
        How far those run past the corner: ``"600 mm"``, ``"2 ft"``.
    bars : str
        A mat everywhere, both ways: ``"10 @ 200"``, ``"#4 @ 12 in"`` or ``"none"``.
    cover : str
        Clear concrete above all bars.
    fibres : str
        ``"none"``, an indicative dose such as ``"steel_30"``, or ``"tested"``.
    f_R1, f_R3 : str
        Residual strengths of tested fibres by EN 14651: ``"2.4 MPa"``.
    joint : str
        From the corner runs ``"none"``, a ``"saw"`` cut or a ``"joint"`` to the edge.
    saw_depth, saw_length : str
        Share of the thickness that is sawn, and how far: ``"25 %"``, ``"2 m"``.
    humidity : str or float
        Of the air: ``0.5``, ``"50 %"``.
    curing : str
        How long it was kept moist: ``"7 days"``.
    both_sides : bool
        Whether it dries from both faces, as a wall does.
    cooling : str
        By how much it cools from the day it was cast: ``"15 °C"``, ``"27 °F"``.
    age : str
        Since it was cast, up to ten years: ``"90 d"``, ``"18 months"``.
    model : str
        Whose shrinkage: ``"ACI"``, ``"EN"`` or ``"MC2010"``; by default that of the rules.
    concrete, steel : str
        Cylinder strength and yield strength: ``"4000 psi"``, ``"60 ksi"``, ``"500 MPa"``.
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
    _tells = (as_it_dries,)

    def __init__(
        self,
        *,
        shape=None,
        length=None,
        width=None,
        thickness=None,
        cut=None,
        hole=None,
        column=None,
        door=None,
        tee=None,
        box=None,
        place=None,
        rounding=None,
        turn=None,
        look=None,
        held=None,
        holds=None,
        base=None,
        diagonals=None,
        apart=None,
        long=None,
        edges=None,
        past=None,
        bars=None,
        cover=None,
        fibres=None,
        f_R1=None,
        f_R3=None,
        joint=None,
        saw_depth=None,
        saw_length=None,
        humidity=None,
        curing=None,
        both_sides=None,
        cooling=None,
        age=None,
        model=None,
        concrete=None,
        steel=None,
        exposure=None,
        code=None,
        system=None,
        **unknown,
    ):
        super().__init__(locals())

    @property
    def notes(self) -> list[str]:
        """What was done with some of what was typed."""
        return [*super().notes, *self._assumed_places()]

    def _assumed_places(self) -> list[str]:
        """Say how far bars lie off where a note of them does not."""
        text = _("{name}={typed!r}: {off} off is assumed; type it, such as {typed} at {off}.")
        off = shown(USUAL_OFF[self.system], "size", self.system)
        found = ((name, self.typed[name]) for name in ("diagonals", "edges") if name in self.typed)
        read = ((name, typed, self.form.by_name[name].read(typed)) for name, typed in found)
        return [
            text.format(name=name, typed=typed, off=off)
            for name, typed, laid in read
            if laid is not None and laid.off is None
        ]
