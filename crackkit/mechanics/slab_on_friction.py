"""A strip of slab that wants to grow shorter, on a base that drags and between things that hold it.

The middle of a free slab stays where it is and the ends creep towards it; the base pulls the ends
back, and all that pull adds up in the middle. Where a wall, a pit or a frozen joint holds an end,
the middle is pulled harder still, never harder than full restraint E eps.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.friction_chain import Chain, ChainState, Drag
from crackkit.mechanics.friction_zones import chain_state
from crackkit.words import _

STATIONS = 201
"""Evenly spaced places at which a strip is looked at, both ends counted."""

_LEAST_SLIP = 0.01


@dataclass(frozen=True)
class Strip:
    """A strip of slab 1 mm wide, its base and its grips.

    Parameters
    ----------
    length : float
        Length L between its ends [mm], above 0.
    thickness : float
        Thickness h [mm], above 0.
    shear : float
        Greatest shear between slab and base, mu gamma h [MPa], 0 or more.
    slip : float
        Slip s0 from which the slab slides [mm], 0.01 or more.
    left, right : float
        Stiffness of what holds the ends [MPa], force for each mm of width and of movement: 0 for
        a free end, infinite for one that cannot move; see `grip_stiffness`.
    inner : tuple of (float, float)
        Place [mm] and stiffness [MPa] of what holds the slab between its ends, such as columns.

    Raises
    ------
    ValueError
        If a number lies outside of its range.
    """

    length: float
    thickness: float
    shear: float
    slip: float
    left: float = 0.0
    right: float = 0.0
    inner: tuple = ()

    def __post_init__(self):
        held = [stiffness for _place, stiffness in self.inner]
        least = min(self.shear, self.left, self.right, *held)
        inside = all(0 < place < self.length for place, _stiffness in self.inner)
        if not (min(self.length, self.thickness) > 0 and least >= 0 and inside):
            raise ValueError(_("A strip needs a size, and grips inside of it."))
        if not self.slip >= _LEAST_SLIP:
            raise ValueError(_("A slab slides after 0.01 mm of slip or more."))

    @property
    def chain(self):
        """The strip as pieces between its grips, whole as yet."""
        whole = np.full(2, np.inf)
        ends = np.array([self.left, self.right], dtype=float)
        chain = Chain(np.array([0.0, self.length]), ends, whole, whole)
        return chain.with_places(*np.array(self.inner).T) if self.inner else chain

    def drag(self, modulus, shortening):
        """Give what moves the strip at some ages.

        Parameters
        ----------
        modulus : array_like
            Modulus of the concrete, creep counted in [MPa].
        shortening : array_like
            Free shortening [-]; a slab that grows longer counts as one that does not move.

        Returns
        -------
        Drag
            One row for each age.
        """
        E, eps = np.broadcast_arrays(*np.atleast_1d(modulus, shortening))
        return Drag(E * self.thickness, np.maximum(eps, 0.0), self.shear, self.slip)


@dataclass(frozen=True)
class StripState:
    """Forces and movements of a strip; arrays have a row for each age where ages were given.

    Parameters
    ----------
    stations : numpy.ndarray
        Distances from the left end [mm].
    slip : numpy.ndarray
        Movement to the right at the stations [mm].
    force : numpy.ndarray
        Pull in the strip [N/mm].
    stress : numpy.ndarray
        Mean stress over the thickness [MPa].
    end_slip : numpy.ndarray
        Movement to the right of the left and of the right end [mm].
    end_force : numpy.ndarray
        Pull of the grips at both ends [N/mm].
    chain : ChainState
        The same piece by piece.
    """

    stations: np.ndarray
    slip: np.ndarray
    force: np.ndarray
    stress: np.ndarray
    end_slip: np.ndarray
    end_force: np.ndarray
    chain: ChainState


def strip_state(strip, modulus, shortening, stations=STATIONS):
    """Forces and movements of a strip that wants to grow shorter.

    The answer is closed for each zone that slides or sticks. Slip is taken as growing all the
    time: a slab that warms up again holds more than it says.

    Parameters
    ----------
    strip : Strip
        Slab, base and grips.
    modulus : float or array_like
        Modulus of the concrete, creep counted in [MPa], above 0; at one age or many.
    shortening : float or array_like
        Free shortening from drying and cooling [-]; below 0 nothing is pulled.
    stations : int
        Number of evenly spaced places [-], 2 or more.

    Returns
    -------
    StripState
        Slips [mm], forces [N/mm] and stresses [MPa].
    """
    x = np.linspace(0.0, strip.length, stations)
    chain = chain_state(strip.chain, strip.drag(modulus, shortening))
    slip, force = chain.along(x)
    ends = np.c_[chain.start_slip[:, 0], chain.end_slip[:, -1]]
    arrays = slip, force, force / strip.thickness, ends, force[:, [0, -1]]
    if np.ndim(modulus) == np.ndim(shortening) == 0:
        arrays = [each[0] for each in arrays]
    return StripState(x, *arrays, chain)


def grip_stiffness(degree, modulus, thickness, length):
    """Stiffness of what holds an end, from the share of full restraint that it gives.

    A slab without friction, held so at both ends, is stressed to the share of E eps. The share
    is k/(k + 2 E h/L), as the degree of restraint of mass concrete is defined (ACI 207.2R, from
    memory).

    Parameters
    ----------
    degree : float
        Share [-]: 0 for a free end, 1 for one that cannot move.
    modulus : float
        Modulus of the concrete for which the share is meant [MPa], above 0.
    thickness : float
        Thickness h [mm], above 0.
    length : float
        Length L [mm], above 0.

    Returns
    -------
    float
        Stiffness k [MPa]; infinite for 1.

    Raises
    ------
    ValueError
        If the share is not 0 to 1.
    """
    if not 0 <= degree <= 1:
        raise ValueError(_("A grip holds from none, 0, to all, 1, of the movement."))
    if degree == 1:
        return np.inf
    return degree / (1 - degree) * 2 * modulus * thickness / length


def sliding_stress(distance, thickness, shear):
    """Stress of a slab that slides, counted from its free end.

    Parameters
    ----------
    distance : float or array_like
        Distance x from the free end [mm].
    thickness : float
        Thickness h [mm], above 0.
    shear : float
        Greatest shear mu gamma h [MPa].

    Returns
    -------
    float or numpy.ndarray
        mu gamma x [MPa]: the base pulls with all it has on every millimetre.
    """
    return shear * distance / thickness


def stuck_stress(length, thickness, modulus, shortening, shear, slip):
    """Stress in the middle of a free slab that nowhere slides yet.

    Parameters
    ----------
    length : float
        Length L [mm], above 0.
    thickness : float
        Thickness h [mm], above 0.
    modulus : float
        Modulus of the concrete, creep counted in [MPa], above 0.
    shortening : float
        Free shortening eps [-].
    shear : float
        Greatest shear between slab and base q0 [MPa], above 0.
    slip : float
        Slip s0 from which the slab would slide [mm], above 0.

    Returns
    -------
    float
        E eps (1 - 1/cosh(a L/2)) [MPa] with a = sqrt(q0/(E h s0)).
    """
    rate = np.sqrt(shear / (slip * modulus * thickness))
    return modulus * shortening * (1 - 1 / np.cosh(0.5 * rate * length))
