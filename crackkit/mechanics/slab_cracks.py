"""Which cracks a slab on the ground gets as it dries and cools, one after the other.

Where the pull of base and grips passes the strength the slab tears. Without bars each crack is a
new pair of free ends, and the pieces go on alone. Bars that run across it go on pulling the
pieces together, up to their yield strength. The stress is the mean over the thickness: curling,
which often counts for more, must come off the strength that is given.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bond_slip import BondSlip, slip_in_long_bar, transfer_length
from crackkit.mechanics.friction_chain import Drag
from crackkit.mechanics.friction_zones import chain_state
from crackkit.mechanics.slab_on_friction import STATIONS, Strip
from crackkit.words import _

_BLOCK = 12  # ages looked at in one go
_TIE = 1e-6  # shares of an interval, or of the strength, that count as the same


@dataclass(frozen=True)
class Crossing:
    """What crosses each crack of a slab, for 1 mm of its width.

    Parameters
    ----------
    stiffness : float
        Force for each mm of opening [MPa], 0 or more.
    capacity : float
        Greatest force [N/mm], 0 or more.
    reach : float
        Distance from a crack over which bars hand their force to the concrete [mm]: its stress
        grows evenly from 0 over it.
    """

    stiffness: float = 0.0
    capacity: float = 0.0
    reach: float = 0.0


NOTHING = Crossing()
"""Plain concrete."""


@dataclass(frozen=True)
class SlabLife:
    """What happens to the concrete of a slab, at some ages.

    Parameters
    ----------
    ages : numpy.ndarray
        Ages, growing [days]; two or more.
    shortening : numpy.ndarray
        Free shortening from drying and cooling [-].
    modulus : numpy.ndarray
        Modulus, creep counted [MPa], above 0.
    strength : numpy.ndarray
        Tensile strength [MPa], above 0: one number for each age, or one for each age (rows) and
        each evenly spaced station (columns).

    Raises
    ------
    ValueError
        If the numbers of ages differ, they do not grow, or a strength or modulus is not above 0.
    """

    ages: np.ndarray
    shortening: np.ndarray
    modulus: np.ndarray
    strength: np.ndarray

    def __post_init__(self):
        number = {len(each) for each in (self.ages, self.shortening, self.modulus, self.strength)}
        if len(number) != 1 or len(self.ages) < 2 or np.min(np.diff(self.ages)) <= 0:
            raise ValueError(_("The life of a slab is told at ages that grow."))
        if min(np.min(self.modulus), np.min(self.strength)) <= 0:
            raise ValueError(_("The strength and the modulus must be greater than zero."))

    @property
    def strengths(self):
        """Strength for each age (rows) and station (columns) [MPa]."""
        if np.ndim(self.strength) == 2:
            return self.strength
        return np.broadcast_to(np.asarray(self.strength)[:, None], (len(self.ages), STATIONS))

    def at(self, age):
        """Give shortening, modulus and strengths at an age, along straight lines between ages.

        Parameters
        ----------
        age : float
            Age [days]; before the first and after the last as at these.

        Returns
        -------
        shortening : float
            Free shortening [-].
        modulus : float
            Modulus [MPa].
        strengths : numpy.ndarray
            Strength at each station [MPa].
        """
        place = float(np.interp(age, self.ages, np.arange(len(self.ages))))
        k = min(int(place), len(self.ages) - 2)
        f = place - k

        def between(values):
            return (1 - f) * values[k] + f * values[k + 1]

        return between(self.shortening), between(self.modulus), between(self.strengths)


@dataclass(frozen=True)
class SlabCracks:
    """Cracks of a slab in the order of their birth.

    Parameters
    ----------
    strip : Strip
        Slab, base and grips.
    life : SlabLife
        What happens to its concrete.
    crossing : Crossing
        What crosses the cracks.
    position : numpy.ndarray
        Distance of each crack from the left end [mm].
    age : numpy.ndarray
        Age at which it is born [days].
    width : numpy.ndarray
        Width at the ages of the life (rows) of each crack (columns) [mm], 0 before its birth.
    complete : bool
        Whether no further crack would come; the search ends with the most cracks asked for.
    """

    strip: Strip
    life: SlabLife
    crossing: Crossing
    position: np.ndarray
    age: np.ndarray
    width: np.ndarray
    complete: bool

    def state(self, age, before=False):
        """Forces and movements of the slab with the cracks it has at an age.

        Parameters
        ----------
        age : float
            Age [days].
        before : bool
            Whether a crack born at that very age is left out.

        Returns
        -------
        ChainState
            For this one age: `along` gives slips [mm] and forces [N/mm], `opening` the widths of
            the cracks [mm] from left to right.
        """
        born = self.age < age if before else self.age <= age
        return _state(self.strip, self.crossing, self.position[born], *self._load(age), None)

    @property
    def tension(self):
        """Greatest stress over strength at the ages of the life, cracks counted [-].

        At most 1, where the search is complete: what would pass it tears.
        """
        ages, found, since = self.life.ages, np.zeros(len(self.life.ages)), -np.inf
        x = np.linspace(0.0, self.strip.length, self.life.strengths.shape[1])
        for k, birth in enumerate(np.r_[self.age, np.inf]):
            rows = np.flatnonzero((ages >= since) & (ages < birth))
            since = birth
            if len(rows):
                found[rows] = self._felt(rows, self.position[:k], x).max(axis=1)
        return found

    def _felt(self, rows, positions, x):
        """Stress over strength at some ages (rows) and the stations, with some cracks [-]."""
        load = self.life.shortening[rows], self.life.modulus[rows]
        state = _state(self.strip, self.crossing, positions, *load, None)
        stress = state.along(x)[1] / self.strip.thickness
        share = _that_can_tear(self.strip, x) * _felt(self.crossing, x, positions)
        return share * stress / self.life.strengths[rows]

    def felt_stress(self, age):
        """Mean stress of the concrete over its thickness at an age.

        Parameters
        ----------
        age : float
            Age [days].

        Returns
        -------
        numpy.ndarray
            Stress at the stations [MPa]; 0 in cracks.
        """
        x = np.linspace(0.0, self.strip.length, self.life.strengths.shape[1])
        born = self.position[self.age <= age]
        stress = self.state(age).along(x)[1][0] / self.strip.thickness
        return _felt(self.crossing, x, born) * stress

    def _load(self, age):
        shortening, modulus, _strengths = self.life.at(age)
        return np.array([shortening]), np.array([modulus])


def bars_across(area, diameter, thickness, yield_strength, bond, modulus, steel_modulus=200000.0):
    """What bars do at a crack: a spring up to their yield strength.

    The spring is the secant of the bond law of a long bar (Balazs 1993, from memory) at yield:
    opening twice the slip s = ((1 + a) e^2 s1^a/(2 kappa tau_max))^(1/(1 + a)), e = fy/Es. Below
    yield bond is stiffer, so that the width comes out too large rather than too small.

    Parameters
    ----------
    area : float
        Area of the bars across the crack for 1 mm of width of the slab [mm], above 0.
    diameter : float
        Diameter of the bars [mm], above 0.
    thickness : float
        Thickness of the slab [mm], above 0.
    yield_strength : float
        Yield strength fy [MPa], above 0.
    bond : BondLaw
        Bond stress over slip.
    modulus : float
        Modulus of the concrete [MPa], above 0.
    steel_modulus : float
        Modulus of the bars Es [MPa], above 0.

    Returns
    -------
    Crossing
        Stiffness [MPa], greatest force As fy [N/mm] and reach [mm].
    """
    kappa = 4 * area / diameter * (1 / (area * steel_modulus) + 1 / (thickness * modulus))
    equation, e = BondSlip(bond, kappa), yield_strength / steel_modulus
    opening = 2 * float(slip_in_long_bar(equation, e))
    force = area * yield_strength
    return Crossing(force / opening, force, float(transfer_length(equation, e)))


def slab_cracks(strip, life, crossing=NOTHING, most=20):
    """Cracks of a slab, each where and when its strength is first passed.

    Between the ages that are given, stress and strength run straight. Where several places tear
    together the middle one does. The slip is taken as growing, as in `strip_state`.

    Parameters
    ----------
    strip : Strip
        Slab, base and grips.
    life : SlabLife
        Shortening, modulus and strength at some ages.
    crossing : Crossing
        What crosses the cracks.
    most : int
        Number of cracks at which to stop [-], 0 or more.

    Returns
    -------
    SlabCracks
        Positions [mm], ages [days] and widths [mm].
    """
    search = _Search(strip, life, crossing, np.linspace(0, strip.length, life.strengths.shape[1]))
    positions, births = [], []
    widths = np.zeros((len(life.ages), most))
    age = float(life.ages[0])
    while found := search.next_crack(np.array(positions), age, widths):
        if len(positions) == most:
            search.without_end(np.array(positions), age, widths)
            break
        place, age = found
        positions.append(place)
        births.append(age)
    answer = np.array(positions), np.array(births), widths[:, : len(births)]
    return SlabCracks(strip, life, crossing, *answer, found is None)


@dataclass(frozen=True)
class _Search:
    strip: Strip
    life: SlabLife
    crossing: Crossing
    stations: np.ndarray

    def next_crack(self, positions, age, widths):
        """Place and age of the next crack, or None; notes the widths up to then."""
        for t, strength, state in self._blocks(positions, age):
            row, station, birth = _first_over(t, self._margin(state, positions, strength))
            self._note(widths, positions, state, t, np.inf if row is None else birth)
            if row is not None:
                return self.stations[station], birth
        return None

    def without_end(self, positions, age, widths):
        """Note the widths for good, as if no further crack came."""
        for t, _strength, state in self._blocks(positions, age):
            self._note(widths, positions, state, t, np.inf)

    def _blocks(self, positions, age):
        """Ages from one on, with strengths and states, block after block."""
        ages, guess = self.life.ages, None
        now = self.life.at(age)
        k = int(np.searchsorted(ages, age, side="right"))
        while True:
            block = slice(k, k + _BLOCK)
            eps = np.r_[now[0], self.life.shortening[block]]
            E = np.r_[now[1], self.life.modulus[block]]
            strength = np.vstack([now[2], self.life.strengths[block]])
            guess = _state(self.strip, self.crossing, positions, eps, E, guess)
            t = np.r_[age, ages[block]]
            yield t, strength, guess
            k, age, now = k + _BLOCK, t[-1], (eps[-1], E[-1], strength[-1])
            if k >= len(ages):
                return

    def _margin(self, state, positions, strength):
        """Stress over strength at the stations, less 1; those that cannot tear far below 0."""
        stress = state.along(self.stations)[1] / self.strip.thickness
        share = _felt(self.crossing, self.stations, positions)
        return _that_can_tear(self.strip, self.stations) * share * stress / strength - 1.0

    def _note(self, widths, positions, state, ages, until):
        """Note the widths at those ages that the life knows, before the next crack."""
        here = np.searchsorted(self.life.ages, ages)
        known = (self.life.ages[here] == ages) & (ages < until)
        widths[np.ix_(here[known], np.argsort(positions))] = state.opening[known]


def _felt(crossing, stations, positions):
    """Share of the pull that the concrete feels at the stations: none in cracks."""
    if not len(positions):
        return np.ones(len(stations))
    away = np.abs(stations[:, None] - positions).min(axis=1)
    return np.minimum(away / max(crossing.reach, 1e-9), 1.0)


def _that_can_tear(strip, stations):
    """1 at stations where it can crack, 0 at the ends and at grips."""
    free = np.ones(len(stations))
    free[[0, -1]] = 0.0
    for place, _stiffness in strip.inner:
        free[np.isclose(stations, place)] = 0.0
    return free


def _state(strip, crossing, positions, shortening, modulus, guess):
    """State of a strip that is cracked at some positions."""
    chain = strip.chain
    if len(positions):
        chain = chain.with_places(positions, 0.0, crossing.stiffness, crossing.capacity)
    drag = Drag(modulus * strip.thickness, np.maximum(shortening, 0.0), strip.shear, strip.slip)
    return chain_state(chain, drag, guess)


def _first_over(ages, margin):
    """Row, station and age at which a margin first passes 0; no row where none does."""
    over = margin > 0
    rows = np.flatnonzero(over.any(axis=1))
    if not len(rows):
        return None, None, None
    row = int(rows[0])
    if row == 0:
        return 0, _middle(margin[0] >= margin[0].max() - _TIE), float(ages[0])
    low, high = margin[row - 1], margin[row]
    rise = np.where(over[row], high - low, 1.0)
    share = np.where(over[row], -low / rise, np.inf)
    least = share.min()
    birth = ages[row - 1] + least * (ages[row] - ages[row - 1])
    return row, _middle(share <= least + _TIE), float(birth)


def _middle(mask):
    places = np.flatnonzero(mask)
    return int(places[len(places) // 2])
