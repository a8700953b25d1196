"""Stress that a slab has in itself while it dries: its skin is pulled, its core is pressed.

The skin crazes when it has more to bear than concrete can: a net of fine, shallow cracks.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.concrete import Concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.humidity_shrinkage import ShrinkageHistory, lever_weights
from crackkit.mechanics.moisture_diffusion import depth_weights
from crackkit.mechanics.restraint_stress import AGEING, restraint_stress
from crackkit.mechanics.strength_in_time import concrete_in_time
from crackkit.words import _

POISSON = 0.2
"""Poisson's ratio of uncracked concrete [-] (EN 1992-1-1:2004, 3.1.3(4), from memory)."""

_ROUNDS, _EVEN = 30, 1e-14  # of Newton's method, usually 3 to 6; what is left over, as a share


@dataclass(frozen=True, eq=False)
class SurfaceStress:
    """Stress in the depth of a slab that is free to shorten and to curl.

    Parameters
    ----------
    depths : numpy.ndarray
        Nodes, from the top face to the bottom face [mm].
    days : numpy.ndarray
        Days since the end of curing [days].
    tensile : numpy.ndarray
        Tensile strength on these days [MPa].
    uncracked : numpy.ndarray
        Stress as if concrete could bear any tension, one row for each day, one column for each
        depth, tension positive [MPa].
    stress : numpy.ndarray
        Stress that nowhere exceeds the tensile strength, in balance all the same [MPa].
    """

    depths: np.ndarray
    days: np.ndarray
    tensile: np.ndarray
    uncracked: np.ndarray
    stress: np.ndarray

    @property
    def capped(self) -> np.ndarray:
        """Where the stress shown is the strength, and no longer what drying asks for."""
        return self.stress >= self.tensile[:, None]

    @property
    def crazes(self) -> np.ndarray:
        """On which days some of the depth is at its strength."""
        return self.capped.any(axis=1)

    @property
    def crazed_depth(self) -> np.ndarray:
        """Depth from the top down that is at its strength, on each day [mm]."""
        sound = np.concatenate([~self.capped, np.ones((self.days.size, 1), dtype=bool)], axis=1)
        ends = np.concatenate([[0.0], np.cumsum(depth_weights(self.depths))])
        return ends[sound.argmax(axis=1)]

    @property
    def note(self) -> str:
        """What a reader must know of the stress shown; empty if it is nowhere capped."""
        if not self.crazes.any():
            return ""
        return _(
            "Drying asks for {asked:.1f} times the tensile strength at most. The skin crazes "
            "there, and the stress shown stops at the strength."
        ).format(asked=float(np.max(self.uncracked / self.tensile[:, None])))


def surface_stress(shrinkage: ShrinkageHistory, slab: DryingSlab, concrete: Concrete, code):
    """Stress in a slab that dries, with the creep, stiffness and strength of one code.

    Parameters
    ----------
    shrinkage : ShrinkageHistory
        What each layer would shorten by, from the end of curing on.
    slab : DryingSlab
        The slab, its air and its curing.
    concrete : Concrete
        Its concrete at 28 days.
    code : str
        "ACI" (ACI 209R-92) or "EN" (EN 1992-1-1:2004), from memory.

    Returns
    -------
    SurfaceStress
        Both without and with the bound of the tensile strength.

    Raises
    ------
    ValueError
        If the code is not known.
    """
    ages = slab.curing_days + shrinkage.days
    aged = concrete_in_time(ages, concrete, code, slab.cement_class)
    creep = creep_at_loading(slab, concrete, code)
    uncracked = self_balanced_stress(shrinkage, slab.curing_days, aged.modulus, creep)
    stress = kept_below(uncracked, aged.tensile, shrinkage.depths)
    return SurfaceStress(shrinkage.depths, shrinkage.days, aged.tensile, uncracked, stress)


def self_balanced_stress(
    shrinkage: ShrinkageHistory, curing_days, modulus, creep, poisson=POISSON, ageing=AGEING
):
    """Stress that neither pulls nor bends the slab as a whole, relaxed by creep.

    Both directions of the plane shorten alike, hence E/(1 - nu). Increments of stress are
    superposed, each with its own age and the age-adjusted modulus in its own step.

    Parameters
    ----------
    shrinkage : ShrinkageHistory
        What each layer would shorten by.
    curing_days : float
        Age at the end of curing, above 0 [days].
    modulus : float or array_like
        Modulus of elasticity, at all days or at each [MPa].
    creep : callable
        Creep coefficient as a function of (ages, age at loading), which goes with the modulus at
        loading.
    poisson : float
        Poisson's ratio nu, 0 to 0.5 [-]; creep is taken to have the same.
    ageing : float
        Ageing coefficient chi, 0 to 1 [-]; with fine steps it hardly matters.

    Returns
    -------
    numpy.ndarray
        Stress as if it did not crack, one row for each day, tension positive [MPa] (BAZANT1972,
        theorem).

    Raises
    ------
    ValueError
        If curing does not take some time.
    """
    ages = curing_days + shrinkage.days
    one_way = restraint_stress(ages, shrinkage.uneven, 1.0, modulus, creep, ageing)
    return one_way / (1.0 - poisson)


def kept_below(stress, limits, depths):
    """Stress bounded from above, with mean and slope shifted until it is in balance again.

    What the skin cannot bear is left out, and the rest of the slab moves, plane as before, until
    it no longer pulls nor bends. It does so afresh on each day: cracks of the days before are
    forgotten, so that what the skin bears later is an upper bound.

    Parameters
    ----------
    stress : array_like
        Self-balanced stress, one row for each day, one column for each depth [MPa].
    limits : array_like
        Tensile strength on each day, above 0 [MPa].
    depths : numpy.ndarray
        Nodes from the top face to the bottom face [mm].

    Returns
    -------
    numpy.ndarray
        Bounded stress [MPa]; the given one where it nowhere exceeds its limit.
    """
    asked, limit = np.asarray(stress, dtype=float), np.asarray(limits, dtype=float)[:, None]
    L = depths[-1]
    shapes = np.stack([np.ones_like(depths), 0.5 - depths / L])
    weights = np.stack([depth_weights(depths) / L, lever_weights(depths) / L**2])
    shift = np.zeros((asked.shape[0], 2))
    for _round in range(_ROUNDS):
        raised = asked + shift @ shapes
        excess = np.minimum(raised, limit) @ weights.T
        if np.abs(excess).max() <= _EVEN * np.abs(asked).max():
            break
        # Newton's method: what is at the limit does not answer to a shift.
        slopes = np.einsum("az,dz,bz->dab", weights, raised < limit, shapes, optimize=True)
        shift -= np.linalg.solve(slopes, excess[:, :, None])[:, :, 0]
    return np.minimum(asked + shift @ shapes, limit)
