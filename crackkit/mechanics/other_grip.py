"""Springs that grip a body harder or less than when it was factorised: no new factor is needed.

The difference is laid on the body as forces where the springs act. These forces hang on how the
body moves there; with its compliance at these places they follow from one small full equation
(Woodbury's formula for a change of low rank).
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

_FEW = 8  # loads that are quicker solved for twice


@dataclass(frozen=True, eq=False)
class Grip:
    """What springs do to a factorised body.

    Parameters
    ----------
    factor : object
        Factor of the body with these springs; has ``shape`` and ``solve``.
    at : numpy.ndarray of int
        Numbers of the unknowns on which springs act [-], shape (m,).
    stiffness : numpy.ndarray
        Stiffness of the springs as factorised [N/mm], shape (m, m), symmetric.
    compliance : numpy.ndarray
        Move of these unknowns for a force of 1 N on each, the springs as factorised [mm/N], shape
        (m, m), symmetric.
    """

    factor: object
    at: np.ndarray
    stiffness: np.ndarray
    compliance: np.ndarray

    def held(self, times):
        """Factor of the body with springs of another stiffness.

        Parameters
        ----------
        times : float
            How many times as stiff as factorised they are [-], above 0.

        Returns
        -------
        OtherGrip
            Which solves for loads [N].
        """
        more = (times - 1.0) * self.stiffness
        lacking = np.linalg.solve(np.eye(len(more)) + more @ self.compliance, more)
        return OtherGrip(self, lacking)

    @cached_property
    def answers(self):
        """Moves for a force of 1 N on each of these unknowns [mm/N], shape (n, m)."""
        return moves_for_units(self.factor, self.factor.shape[0], self.at)


@dataclass(frozen=True, eq=False)
class OtherGrip:
    """Factor of a body whose springs are stiffer or softer than when it was factorised.

    Parameters
    ----------
    grip : Grip
        The springs as they were.
    lacking : numpy.ndarray
        Forces by which they hold the body more now, for each millimetre that it would move while
        they were as factorised [N/mm], shape (m, m), symmetric.
    """

    grip: Grip
    lacking: np.ndarray

    def solve(self, loads):
        """Moves under loads.

        Parameters
        ----------
        loads : numpy.ndarray
            Forces on the unknowns [N], shape (n,) or (n, k).

        Returns
        -------
        numpy.ndarray
            Moves [mm], of the same shape.
        """
        at, factor = self.grip.at, self.grip.factor
        moved = factor.solve(loads)
        back = self.lacking @ moved[at]
        if loads.ndim == 2 and loads.shape[1] > _FEW:
            return moved - self.grip.answers @ back
        left = np.array(loads)
        left[at] -= back
        return factor.solve(left)


def moves_for_units(factor, size, at):
    """Moves for a force of 1 N on some unknowns.

    Parameters
    ----------
    factor : object
        Factor of a body; has ``solve``.
    size : int
        Unknowns of the body [-].
    at : numpy.ndarray of int
        Numbers of those that are pushed [-], shape (m,).

    Returns
    -------
    numpy.ndarray
        Moves [mm/N], shape (size, m).
    """
    unit = np.zeros((size, len(at)))
    unit[at, np.arange(len(at))] = 1.0
    return factor.solve(unit)
