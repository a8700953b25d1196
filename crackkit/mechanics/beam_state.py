"""The answer of a beam: moment, shear, slope and deflection as exact piecewise polynomials."""

from dataclasses import dataclass

import numpy as np

from crackkit.words import _


@dataclass(frozen=True, eq=False)
class BeamState:
    """A solved beam: between two neighbouring nodes the load is straight, all else polynomial.

    Parameters
    ----------
    nodes : ndarray
        Ends of the beam, supports, point loads and ends of line loads, increasing [mm].
    intensity : ndarray
        Line load at the left end of each piece, downward positive [N/mm].
    intensity_slope : ndarray
        Change of the line load along each piece [N/mm2].
    stiffness : ndarray
        EI of each piece [N mm2].
    start_shear : ndarray
        Shear just right of the left end of each piece [N].
    start_moment : ndarray
        Moment just right of the left end of each piece, sagging positive [N mm].
    start_slope : ndarray
        Slope at the left end of each piece, positive where the beam runs downward [-].
    start_deflection : ndarray
        Deflection at the left end of each piece, downward positive [mm].
    supports_at : ndarray
        Places of the supports, in the order in which they were given [mm].
    reactions : ndarray
        Force of each support on the beam, upward positive [N].
    fixing_moments : ndarray
        Moment that each support puts into the beam: the rise of the (sagging positive) moment
        from just left to just right of it; zero at pins [N mm].
    """

    nodes: np.ndarray
    intensity: np.ndarray
    intensity_slope: np.ndarray
    stiffness: np.ndarray
    start_shear: np.ndarray
    start_moment: np.ndarray
    start_slope: np.ndarray
    start_deflection: np.ndarray
    supports_at: np.ndarray
    reactions: np.ndarray
    fixing_moments: np.ndarray

    @property
    def length(self) -> float:
        """Length of the beam [mm]."""
        return float(self.nodes[-1])

    def moment(self, x, side: str = "right") -> np.ndarray:
        """Bending moment, sagging positive [N mm].

        Parameters
        ----------
        x : array_like
            Places on the beam [mm], 0 to its length.
        side : str
            "right" or "left": which value counts where it jumps, at an inner fixed support.
            At the two ends of the beam it is always the value inside.

        Returns
        -------
        ndarray
            The moment at each place [N mm].
        """
        i, s = self._piece(x, side)
        M, V, q, k = self._statics(i)
        return M + s * (V - s * (q / 2 + s * k / 6))

    def shear(self, x, side: str = "right") -> np.ndarray:
        """Shear force, the rate at which the moment grows with x [N].

        Parameters
        ----------
        x : array_like
            Places on the beam [mm], 0 to its length.
        side : str
            "right" or "left": which value counts at point loads and supports, where it jumps.
            At the two ends of the beam it is always the value inside.

        Returns
        -------
        ndarray
            The shear at each place [N].
        """
        i, s = self._piece(x, side)
        return self.start_shear[i] - s * (self.intensity[i] + s * self.intensity_slope[i] / 2)

    def load(self, x, side: str = "right") -> np.ndarray:
        """Intensity of the line loads, downward positive [N/mm].

        Parameters
        ----------
        x : array_like
            Places on the beam [mm], 0 to its length.
        side : str
            "right" or "left": which value counts at the ends of a line load.

        Returns
        -------
        ndarray
            The intensity at each place [N/mm].
        """
        i, s = self._piece(x, side)
        return self.intensity[i] + s * self.intensity_slope[i]

    def slope(self, x) -> np.ndarray:
        """Slope, positive where the beam runs downward from left to right [-].

        Parameters
        ----------
        x : array_like
            Places on the beam [mm], 0 to its length.

        Returns
        -------
        ndarray
            The slope at each place [-].
        """
        i, s = self._piece(x, "right")
        M, V, q, k = self._statics(i)
        turn = s * (M + s * (V / 2 - s * (q / 6 + s * k / 24)))
        return self.start_slope[i] - turn / self.stiffness[i]

    def deflection(self, x) -> np.ndarray:
        """Deflection, downward positive [mm].

        Parameters
        ----------
        x : array_like
            Places on the beam [mm], 0 to its length.

        Returns
        -------
        ndarray
            The deflection at each place [mm].
        """
        i, s = self._piece(x, "right")
        M, V, q, k = self._statics(i)
        sag = s * s * (M / 2 + s * (V / 6 - s * (q / 24 + s * k / 120)))
        return self.start_deflection[i] + s * self.start_slope[i] - sag / self.stiffness[i]

    def stations(self, count: int = 0) -> np.ndarray:
        """Places that no diagram may miss: ends, supports, loads, and moments at a standstill.

        Parameters
        ----------
        count : int
            Number of evenly spaced places to mix in, for a smooth drawing [-].

        Returns
        -------
        ndarray
            The places, increasing, each once [mm]. The largest and the smallest moment of the
            whole beam are among them.
        """
        even = np.linspace(0.0, self.length, count)
        return np.unique(np.concatenate([self.nodes, self._zero_shear(), even]))

    def diagrams(self, count: int = 0):
        """Moment, shear and load ready to be drawn or interpolated, jumps included.

        Parameters
        ----------
        count : int
            Number of evenly spaced places to mix in, for a smooth drawing [-].

        Returns
        -------
        x : ndarray
            The `stations`, with each inner node twice: first as seen from the left [mm].
        moment : ndarray
            Moment there, sagging positive [N mm].
        shear : ndarray
            Shear there [N].
        load : ndarray
            Line load there, downward positive [N/mm].
        """
        x = np.sort(np.concatenate([self.stations(count), self.nodes[1:-1]]))
        first = np.flatnonzero(x[1:] == x[:-1])
        answers = []
        for diagram in (self.moment, self.shear, self.load):
            values = diagram(x, "right")
            values[first] = diagram(x[first], "left")
            answers.append(values)
        return x, *answers

    def _statics(self, i):
        return self.start_moment[i], self.start_shear[i], self.intensity[i], self.intensity_slope[i]

    def _piece(self, x, side):
        """Number of the piece that each place lies in, and the distance from its left end."""
        x = np.asarray(x, dtype=float)
        slack = 1e-9 * self.length
        if x.size and not (x.min() >= -slack and x.max() <= self.length + slack):
            raise ValueError(_("A place lies outside the beam."))
        i = self.nodes.searchsorted(x, side=side) - 1
        i = np.minimum(np.maximum(i, 0), self.nodes.size - 2)
        return i, x - self.nodes[i]

    def _zero_shear(self):
        """Places inside the pieces where V - q s - k s2 / 2 vanishes."""
        V, q, k = self.start_shear, self.intensity, self.intensity_slope
        root = np.sqrt(np.maximum(q * q + 2.0 * k * V, 0.0))
        # The root written without a difference of near-equal numbers, so that k = 0 is harmless.
        far = q + np.where(q < 0.0, -root, root)
        with np.errstate(divide="ignore", invalid="ignore", over="ignore"):
            s = np.concatenate([2.0 * V / far, -far / k])
        h = np.tile(np.diff(self.nodes), 2)
        real = np.tile(q * q + 2.0 * k * V >= 0.0, 2)
        inside = real & (s > 0.0) & (s < h)
        return (np.tile(self.nodes[:-1], 2) + s)[inside]
