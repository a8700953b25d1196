"""What still holds the two faces of a crack together while it opens: stress over opening.

Concrete does not let go at once. Behind the tip of a crack, grains and rough faces carry on, less
and less the wider it opens; the work of pulling a square millimetre apart is the fracture energy
(Hillerborg, Modeer and Petersson 1976, Cement and Concrete Research 6, from memory). Fibres add
a stress that stays.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np

from crackkit.mechanics.fibres import service_residual
from crackkit.words import _

_TESTED = 2.5  # mm, the widest opening at which fibres are tested
_SHAPES = ("exponential", "linear", "bilinear")


@dataclass(frozen=True)
class CohesiveLaw:
    """Stress across a crack over its opening, while the crack opens.

    Parameters
    ----------
    tensile : float
        Tensile strength f_t of the concrete [MPa], above 0.
    energy : float
        Fracture energy G_F of the concrete without fibres [N/mm], above 0.
    shape : str
        "exponential", f_t exp(-f_t w/G_F); "linear", down to nothing at 2 G_F/f_t; or
        "bilinear", f_t (1 - 0.8 w/w1) to w1 = G_F/f_t, then f_t (0.25 - 0.05 w/w1) to 5 w1 (fib
        Model Code 2010, 5.1.8.2, from memory).
    fibres : tuple of float
        Stress that fibres carry across a crack not yet open, and one open by 2.5 mm [MPa]; the
        first 0 to f_t. Between and beyond them lies a line, which ends at 0 and rises no more
        beyond 2.5 mm, the widest crack that is tested.

    Raises
    ------
    ValueError
        If a number lies outside of its range, or the shape is none of the three.
    """

    tensile: float
    energy: float
    shape: str = "exponential"
    fibres: tuple = (0.0, 0.0)

    def __post_init__(self):
        if not min(self.tensile, self.energy) > 0:
            raise ValueError(_("Concrete needs a strength and a fracture energy above zero."))
        if self.shape not in _SHAPES:
            raise ValueError(_("A cohesive law is exponential, linear or bilinear."))
        if not 0 <= self.fibres[0] <= self.tensile:
            raise ValueError(_("Fibres carry no more than the concrete that they bridge."))

    @property
    def scale(self):
        """Opening G_F/f_t to which the law is scaled [mm]."""
        return self.energy / self.tensile

    def stress(self, opening):
        """Stress across a crack that has never been wider.

        Parameters
        ----------
        opening : float or array_like
            Opening w of the crack [mm], 0 or more.

        Returns
        -------
        stress, slope : numpy.ndarray
            Stress [MPa] and its slope [MPa/mm]: what the concrete carries or what the fibres do,
            whichever is more.
        """
        w = np.asarray(opening, dtype=float)
        x = w / self.scale
        share, fall = _shape(self.shape, x)
        sigma, slope = self.tensile * share, self.tensile / self.scale * fall
        if not any(self.fibres):
            return sigma, slope
        line, lean = self._line(w)
        bridged = line > sigma
        return np.where(bridged, line, sigma), np.where(bridged, lean, slope)

    def work(self, opening):
        """Work done on a square millimetre while it is pulled apart.

        Parameters
        ----------
        opening : float or array_like
            Opening reached, starting from none [mm], 0 or more.

        Returns
        -------
        numpy.ndarray
            Integral of the stress over the opening [N/mm].
        """
        w = np.asarray(opening, dtype=float)
        first, last = self._bridged
        concrete = self._concrete_work(w)
        if first == np.inf:
            return concrete
        by_fibres = self._line_work(np.clip(w, first, last)) - self._line_work(first)
        between = self._concrete_work(np.clip(w, first, last)) - self._concrete_work(first)
        return concrete + by_fibres - between

    def _concrete_work(self, w):
        return self.energy * _shape_work(self.shape, w / self.scale)

    @cached_property
    def _bridged(self):
        """Openings between which the fibres carry more than the concrete [mm]."""
        most = self._most_bridged
        if most is None or self._spare(most) >= 0.0:
            return np.inf, np.inf
        start, end = self.fibres
        first = self._meeting(most, 0.0)
        return first, self._meeting(most, self._gone) if end < start else np.inf

    @property
    def _gone(self):
        """Opening at which fibres that carry less and less carry nothing any more [mm]."""
        start, end = self.fibres
        return _TESTED * start / (start - end)

    @property
    def _most_bridged(self):
        """Opening at which fibres carry most beyond what the concrete does [mm]; or None."""
        start, end = self.fibres
        if not any(self.fibres):
            return None
        if end < start:  # what the concrete has to spare sags once between two places
            low, high = 0.0, self._gone
            for _round in range(100):
                third = (high - low) / 3.0
                nearer = self._spare(low + third) < self._spare(high - third)
                low, high = (low, high - third) if nearer else (low + third, high)
            return 0.5 * (low + high)
        far = 6.0 * self.scale
        while self._spare(far) > 0.0 and far < 1e6 * self.scale:
            far *= 2.0
        return far

    def _meeting(self, bridged, whole):
        """Opening between two at which concrete and fibres carry alike [mm]."""
        for _halving in range(60):
            middle = 0.5 * (bridged + whole)
            bridged, whole = (bridged, middle) if self._spare(middle) > 0.0 else (middle, whole)
        return bridged

    def _spare(self, w):
        return self.tensile * float(_shape(self.shape, w / self.scale)[0]) - float(self._line(w)[0])

    def _line(self, w):
        start, end = self.fibres
        lean = (end - start) / _TESTED
        last = _TESTED if end > start else np.inf
        line = start + lean * np.minimum(w, last)
        return np.maximum(line, 0.0), np.where((line > 0) & (w < last), lean, 0.0)

    def _line_work(self, w):
        start, end = self.fibres
        lean = (end - start) / _TESTED
        gone = -start / lean if end < start else np.inf
        last = _TESTED if end > start else gone
        x = np.minimum(w, last)
        beyond = np.maximum(w - _TESTED, 0.0) * end if end > start else 0.0
        return start * x + 0.5 * lean * x * x + beyond


def bridged_by_fibres(residual_1, residual_3):
    """Give what `CohesiveLaw` asks about fibres, from what beams are tested for.

    Parameters
    ----------
    residual_1 : float
        Residual flexural strength f_R1 by EN 14651, 0 or more [MPa].
    residual_3 : float
        Residual flexural strength f_R3 by EN 14651, 0 or more [MPa].

    Returns
    -------
    tuple of float
        Stress at an opening of 0 and of 2.5 mm [MPa] (fib Model Code 2010, 5.6.4, from memory).
        A line that ends at 0 earlier has a negative second number.
    """
    return float(service_residual(residual_1)), 0.5 * residual_3 - 0.2 * residual_1


def _shape(shape, x):
    """Share of the strength that is left at x = w f_t/G_F, and its slope."""
    if shape == "exponential":
        left = np.exp(-x)
        return left, -left
    if shape == "linear":
        return np.maximum(1.0 - 0.5 * x, 0.0), np.where(x < 2.0, -0.5, 0.0)
    steep = x < 1.0
    tail = np.maximum(0.25 - 0.05 * x, 0.0)
    slope = np.where(steep, -0.8, np.where(x < 5.0, -0.05, 0.0))
    return np.where(steep, 1.0 - 0.8 * x, tail), slope


def _shape_work(shape, x):
    """Share of the fracture energy that is spent at x = w f_t/G_F."""
    if shape == "exponential":
        return -np.expm1(-x)
    if shape == "linear":
        y = np.minimum(x, 2.0)
        return y - 0.25 * y * y
    y = np.minimum(x, 1.0)
    z = np.clip(x, 1.0, 5.0)
    return y - 0.4 * y * y + 0.25 * (z - 1.0) - 0.025 * (z * z - 1.0)
