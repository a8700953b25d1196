"""Which cracks a slab on the ground gets as it dries and cools, one after the other.

Where the pull of base and grips passes the strength the slab tears. Without bars each crack is a
new pair of free ends, and the pieces go on alone. Bars that run across it go on pulling the
pieces together, up to their yield strength. The stress is the mean over the thickness: curling,
which often counts for more, must come off the strength that is given.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bond_slip import BondSlip, slip_in_long_bar, transfer_length
from crackkit.mechanics.friction_chain import Chain, Drag
from crackkit.mechanics.friction_zones import chain_state
from crackkit.mechanics.slab_on_friction import STATIONS, Strip
from crackkit.words import _

_FEW, _MANY = 2, 24  # ages looked at in one go, at least and at most
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
    tension : numpy.ndarray
        Greatest stress over strength at the ages of the life, cracks counted [-]. At most 1,
        where the search is complete: what would pass it tears.
    complete : bool
        Whether no further crack would come; the search ends with the most cracks asked for.
    """

    strip: Strip
    life: SlabLife
    crossing: Crossing
    position: np.ndarray
    age: np.ndarray
    width: np.ndarray
    tension: np.ndarray
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
        bars, chain = self.crossing, self.strip.chain
        if born.any():
            chain = chain.with_places(self.position[born], 0.0, bars.stiffness, bars.capacity)
        return _state(self.strip, chain, *self._load(age))

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
    search = _Search.of(strip, life, most)
    slab, births, age, state = _whole(strip, search.stations), [], float(life.ages[0]), None
    while found := search.next_crack(slab, age, state):
        if len(births) == most:
            search.to_the_end(slab, age, state)
            break
        place, age, state = found
        slab = slab.torn(place, crossing, search.stations)
        births.append(age)
    answer = np.array(slab.positions), np.array(births), search.widths[:, : len(births)]
    return SlabCracks(strip, life, crossing, *answer, search.tension, found is None)


@dataclass(frozen=True)
class _Slab:
    """A slab with the cracks it has so far, and what of the pull its concrete feels at stations."""

    chain: Chain
    share: np.ndarray
    positions: tuple = ()

    def torn(self, place, crossing, stations):
        """Give the same with one crack more."""
        chain = self.chain.with_places([place], 0.0, crossing.stiffness, crossing.capacity)
        share = np.minimum(self.share, _felt(crossing, stations, np.array([place])))
        return _Slab(chain, share, (*self.positions, place))


def _whole(strip, stations):
    """Slab without cracks, which can tear anywhere but at its ends and its grips."""
    share = np.ones(len(stations))
    share[[0, -1]] = 0.0
    for place, _stiffness in strip.inner:
        share[np.isclose(stations, place)] = 0.0
    return _Slab(strip.chain, share)


@dataclass(frozen=True)
class _Search:
    """Search for cracks; notes widths and tension at the ages of the life on its way."""

    strip: Strip
    life: SlabLife
    strengths: np.ndarray
    stations: np.ndarray
    widths: np.ndarray
    tension: np.ndarray

    @classmethod
    def of(cls, strip, life, most):
        strengths, number = life.strengths, len(life.ages)
        stations = np.linspace(0.0, strip.length, strengths.shape[1])
        return cls(strip, life, strengths, stations, np.zeros((number, most)), np.zeros(number))

    def next_crack(self, slab, age, guess):
        """Place and age of the next crack and the state up to it, or None."""
        for k, t, state, felt in self._blocks(slab, age, guess):
            row, station, birth = _first_over(t, felt)
            self._note(slab, k, t, state, felt, birth)
            if row is not None:
                return float(self.stations[station]), birth, state.until(row)
        return None

    def to_the_end(self, slab, age, guess):
        """Note what follows as if no further crack came."""
        for block in self._blocks(slab, age, guess):
            self._note(slab, *block, np.inf)

    def _blocks(self, slab, age, guess):
        """Look at the ages from one on, block after block: number of the next age of the life,
        ages, state, and stress over strength at the stations.
        """
        life, now = self.life, self.life.at(age)
        k = int(np.searchsorted(life.ages, age, side="right"))
        # the next crack comes about as soon as the last one did
        number = max(_FEW, len(guess.drag.shortening)) if guess else _MANY // 2
        while True:
            block = slice(k, k + number)
            t = np.append(age, life.ages[block])
            eps, E = (
                np.append(now[0], life.shortening[block]),
                np.append(now[1], life.modulus[block]),
            )
            strength = np.concatenate([now[2][None], self.strengths[block]])
            guess = _state(self.strip, slab.chain, eps, E, guess)
            felt = slab.share * guess.force(self.stations) / (self.strip.thickness * strength)
            yield k, t, guess, felt
            k, age, now, number = k + number, t[-1], (eps[-1], E[-1], strength[-1]), 2 * number
            number = min(number, _MANY)
            if k >= len(life.ages):
                return

    def _note(self, slab, k, t, state, felt, until):
        """Note widths and tension at those ages that the life knows, before the next crack."""
        own = int(self.life.ages[k - 1] != t[0])  # 1 where the first age is one in between
        number = int(np.searchsorted(t, until))
        rows = slice(k - 1 + own, k - 1 + number)
        self.widths[rows, np.argsort(slab.positions)] = state.opening[own:number]
        self.tension[rows] = felt[own:number].max(axis=1)


def _felt(crossing, stations, positions):
    """Share of the pull that the concrete feels at the stations: none in cracks."""
    if not len(positions):
        return np.ones(len(stations))
    away = np.abs(stations[:, None] - positions).min(axis=1)
    return np.minimum(away / max(crossing.reach, 1e-9), 1.0)


def _state(strip, chain, shortening, modulus, guess=None):
    """State of a strip whose pieces are known."""
    drag = Drag(modulus * strip.thickness, np.maximum(shortening, 0.0), strip.shear, strip.slip)
    return chain_state(chain, drag, guess)


def _first_over(ages, felt):
    """Row, station and age at which stress over strength first passes 1; None, and never."""
    over = felt.max(axis=1) > 1.0
    row = int(over.argmax())
    if not over[row]:
        return None, None, np.inf
    high = felt[row] - 1.0
    if row == 0:
        return 0, _middle(high >= high.max() - _TIE), float(ages[0])
    low = felt[row - 1] - 1.0
    share = np.where(high > 0, -low / np.where(high > 0, high - low, 1.0), np.inf)
    least = share.min()
    birth = ages[row - 1] + least * (ages[row] - ages[row - 1])
    return row, _middle(share <= least + _TIE), float(birth)


def _middle(mask):
    places = np.flatnonzero(mask)
    return int(places[len(places) // 2])
