"""A crack that finds its own way: a lattice of bonds that shrinks, and gives way bond by bond.

It shows how a crack starts at an inside corner, runs, branches and comes to rest. It is an
illustration: see `LIMITS`. How wide a crack gapes and what bars do to it is worked out along one
given line instead, see `crack_growth`.

Two numbers are fitted, once for all bodies. What a bond bears is 1.4 times the strength, because
the pull is spread unevenly over bonds of all directions; a strip of short bonds then bears the
strength of the concrete. The work that tears a bond is a quarter of that which tears as much
concrete: a crack in a lattice wanders, breaks bonds beside its way, and leaps from bond to bond;
so a crack runs when the shrinking body gives up the work of a straight crack, or a little later.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.lattice_body import lattice_body
from crackkit.mechanics.lattice_break import lattice_steps
from crackkit.mechanics.lattice_points import lattice_points
from crackkit.mechanics.lattice_teeth import GONE, saw_teeth
from crackkit.words import _

LIMITS = (
    _("It is an illustration: how wide a crack gapes is worked out in another way."),
    _("Chance strews the points: another concrete moves the crack."),
    _("Stretched it narrows by a third of its stretch or a little more; concrete by a fifth."),
    _("What it bears depends on the direction: pulled both ways at once it bears half again more."),
    _("Its bonds are long, and weaker for it: far from the corner they give way too early."),
    _("A crack that closes again carries nothing."),
    _("No bars and no base are in it."),
)
"""What the lattice cannot do, in plain sentences."""

_STRENGTH = 1.4
_WORK = 0.25
_SCATTER = 0.1  # of the strength from bond to bond, standard deviation over the mean
_FARTHEST = 2.5  # from the mean, in standard deviations


@dataclass(frozen=True)
class LatticeConcrete:
    """What the lattice is made of.

    Parameters
    ----------
    modulus : float
        Modulus E, creep counted in [MPa], above 0.
    strength : float
        Strength under a straight pull [MPa], above 0.
    energy : float
        Fracture energy G_F [N/mm], above 0.
    thickness : float
        Thickness [mm], above 0.
    """

    modulus: float
    strength: float
    energy: float
    thickness: float


@dataclass(frozen=True, eq=False)
class LatticeFrame:
    """The lattice at one moment.

    Parameters
    ----------
    strain : float
        Shrinkage so far [-].
    steps : int
        How many steps have been taken [-].
    softness : numpy.ndarray
        What is left of the stiffness of each bond [-], shape (b,): 1 sound, 0 broken.
    movement : numpy.ndarray
        How far each point has moved along x and y [mm], shape (n, 2).
    """

    strain: float
    steps: int
    softness: np.ndarray
    movement: np.ndarray


@dataclass(frozen=True, eq=False)
class LatticeRun:
    """A lattice that shrinks and breaks; made by `lattice_run`.

    Parameters
    ----------
    points : numpy.ndarray
        x and y [mm], shape (n, 2).
    bonds : numpy.ndarray of int
        Two points each [-], shape (b, 2).
    facets : numpy.ndarray
        Ends of the line along which each bond tears [mm], shape (b, 2, 2).
    loops : tuple of numpy.ndarray
        Numbers of the points round the body, and round each hole [-].
    order : numpy.ndarray of int
        Bond that gives way at each step [-], shape (s,); the same bond several times.
    left : numpy.ndarray
        What is left of its stiffness then [-], shape (s,); 0 where it is broken.
    loads : numpy.ndarray
        Shrinkage at which the step would come by itself [-], shape (s,): less than before where
        the crack runs on.
    strain : numpy.ndarray
        Shrinkage at each step [-], shape (s,), never less than before.
    torn, freed : numpy.ndarray
        Work that each step takes up, and that the body gives up [N mm], shape (s,).
    frames : numpy.ndarray of int
        How many steps are taken in each frame [-], shape (k,), beginning with none.
    movements : numpy.ndarray
        True movement of the points in each frame [mm], shape (k, n, 2).
    largest : float
        Shrinkage that was to come [-].
    ended : str
        "shrinkage" if all of it came, "slack" if before that nine tenths of what holds the body
        were lost, "steps" if the run was broken off.
    """

    points: np.ndarray
    bonds: np.ndarray
    facets: np.ndarray
    loops: tuple
    order: np.ndarray
    left: np.ndarray
    loads: np.ndarray
    strain: np.ndarray
    torn: np.ndarray
    freed: np.ndarray
    frames: np.ndarray
    movements: np.ndarray
    largest: float
    ended: str

    def softness(self, steps):
        """What is left of each bond after a number of steps.

        Parameters
        ----------
        steps : int
            Number of steps [-].

        Returns
        -------
        numpy.ndarray
            Share of its stiffness [-], shape (b,): 1 sound, 0 broken.
        """
        found = np.ones(len(self.bonds))
        # A bond that takes several steps is written to several times; the last one stays.
        found[self.order[:steps]] = self.left[:steps]
        return found

    def frame(self, number):
        """One frame.

        Parameters
        ----------
        number : int
            Which one [-], from 0; -1 is the last.

        Returns
        -------
        LatticeFrame
            Bonds and movements [mm] then.
        """
        steps = int(self.frames[number])
        strain = float(_shown(self.strain, self.frames, self.largest, self.ended)[number])
        return LatticeFrame(strain, steps, self.softness(steps), self.movements[number])


def lattice_run(outline, holds, concrete, largest, seed=0, count=1500):
    """Let a slab shrink until it cracks, bond by bond.

    Parameters
    ----------
    outline : PlaneOutline
        The slab [mm].
    holds : sequence of Hold
        What holds which of its sides [mm, MPa].
    concrete : LatticeConcrete
        What it is made of [MPa, N/mm, mm].
    largest : float
        Shrinkage that is to come [-], above 0.
    seed : int
        Which chance [-], 0 or more; the same seed gives the same run.
    count : int
        About how many points [-], 100 or more.

    Returns
    -------
    LatticeRun
        Step by step [mm].

    Raises
    ------
    ValueError
        If a number lies outside of its range, a side is unknown, or the slab is not held.
    """
    lattice = lattice_points(outline, count, seed)
    body = lattice_body(lattice, holds, concrete.modulus, concrete.thickness)
    return run_of(body, concrete, largest, seed)


def run_of(body, concrete, largest, seed=0, most=400, frames=60):
    """Let a lattice shrink until it breaks.

    Parameters
    ----------
    body : LatticeBody
        The lattice with its holds [mm].
    concrete : LatticeConcrete
        What it is made of [MPa, N/mm, mm].
    largest : float
        Shrinkage that is to come [-], above 0.
    seed : int
        Which chance makes bonds stronger and weaker [-], 0 or more.
    most : int
        How many steps at most [-].
    frames : int
        How many frames at most [-], 2 or more.

    Returns
    -------
    LatticeRun
        Step by step [mm].

    Raises
    ------
    ValueError
        If a number lies outside of its range, or the lattice is not held.
    """
    if not largest > 0:
        raise ValueError(_("Nothing cracks unless the concrete shrinks."))
    lattice = body.lattice
    steps = lattice_steps(body, lattice_teeth(lattice, concrete, seed), largest, most)
    strain = np.maximum.accumulate(steps.loads)
    shown = np.unique(np.round(np.linspace(0, len(steps.bonds), frames)).astype(int))
    each = _shown(strain, shown, largest, steps.ended)
    left = np.where(steps.left > GONE, steps.left, 0.0)
    moved = each[:, None, None] * steps.movement(shown)
    return LatticeRun(
        lattice.points, lattice.bonds, lattice.facets, lattice.loops, steps.bonds, left,
        steps.loads, strain, steps.torn, steps.freed, shown, moved, largest, steps.ended,
    )  # fmt: skip


def lattice_teeth(lattice, concrete, seed):
    """Steps by which the bonds of a lattice give way.

    Parameters
    ----------
    lattice : LatticePoints
        Points and bonds [mm].
    concrete : LatticeConcrete
        What it is made of [MPa, N/mm].
    seed : int
        Which chance makes bonds stronger and weaker [-], 0 or more.

    Returns
    -------
    SawTeeth
        Elongations [mm] and strengths [MPa].
    """
    chance = np.random.default_rng([seed, 1])
    stray = np.clip(chance.standard_normal(len(lattice.bonds)), -_FARTHEST, _FARTHEST)
    strengths = _STRENGTH * concrete.strength * (1.0 + _SCATTER * stray)
    return saw_teeth(lattice.lengths, concrete.modulus, strengths, _WORK * concrete.energy)


def _shown(strain, steps, largest, ended):
    """Shrinkage after given numbers of steps; before the first, that at which it comes."""
    if not len(strain):
        return np.full(len(steps), largest)
    shown = strain[np.maximum(steps, 1) - 1]
    if ended == "shrinkage":
        shown[-1] = largest
    return shown
