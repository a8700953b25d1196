"""Springs that grip a body harder or less than when it was factorised: no new factor is needed.

The difference is laid on the body as forces where the springs act. These forces hang on how the
body moves there; with its compliance at these places they follow from one small full equation
(Woodbury's formula for a change of low rank).
"""

from dataclasses import dataclass

import numpy as np


@dataclass(frozen=True, eq=False)
class Grip:
    """What springs do to a factorised body.

    Parameters
    ----------
    at : numpy.ndarray of int
        Numbers of the unknowns on which springs act [-], shape (m,).
    stiffness : numpy.ndarray
        Stiffness of the springs as factorised [N/mm], shape (m, m), symmetric.
    compliance : numpy.ndarray
        Move of these unknowns for a force of 1 N on each, the springs as factorised [mm/N], shape
        (m, m), symmetric.
    """

    at: np.ndarray
    stiffness: np.ndarray
    compliance: np.ndarray

    def lacking(self, times):
        """What springs of another stiffness add.

        Parameters
        ----------
        times : float
            How many times as stiff as factorised they are [-], above 0.

        Returns
        -------
        numpy.ndarray
            Forces by which they hold the body more, for each millimetre that it moves while they
            are as factorised [N/mm], shape (m, m), symmetric.
        """
        more = (times - 1.0) * self.stiffness
        return np.linalg.solve(np.eye(len(more)) + more @ self.compliance, more)


@dataclass(frozen=True, eq=False)
class OtherGrip:
    """Factor of a body whose springs are stiffer or softer than when it was factorised.

    Parameters
    ----------
    factor : object
        Factor with the springs as they were; has ``solve``.
    at : numpy.ndarray of int
        Numbers of the unknowns on which springs act [-], shape (m,).
    lacking : numpy.ndarray
        As `Grip.lacking` gives it [N/mm].
    """

    factor: object
    at: np.ndarray
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
        there = self.lacking @ self.factor.solve(loads)[self.at]
        left = np.array(loads)
        left[self.at] -= there
        return self.factor.solve(left)
