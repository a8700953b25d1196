"""Crack width over bar size and spacing: what else could be laid, under the same load."""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import Bar, bar
from crackkit.structures.placing import least_gap, widest_spacing
from crackkit.structures.strip_bars import StripBars
from crackkit.structures.strip_stress import Strip, strip_stress
from crackkit.structures.strip_width import governing_width

SIZES = {
    "SI": ("6", "8", "10", "12", "14", "16", "20", "25"),
    "US": ("#3", "#4", "#5", "#6", "#7", "#8"),
}


def sizes_like(size: str) -> tuple[str, ...]:
    """Give the sizes of the chart that are named in the manner of a size."""
    return SIZES["US" if size.startswith("#") else "SI"]


SPACINGS = np.linspace(50.0, 350.0, 61)


@dataclass(frozen=True)
class Chart:
    """Widths on a grid of sizes and spacings.

    Attributes
    ----------
    sizes : tuple of str
        Bar sizes, thin to thick.
    diameters, areas : ndarray
        Of each [mm], [mm2].
    spacings : ndarray
        Centre to centre [mm].
    widths : ndarray, shape (sizes, spacings)
        By the rule that governs [mm].
    yields : ndarray of bool, same shape
        Where the bars would yield.
    idle : ndarray of bool, same shape
        Where fibres would carry the load alone: no bar holds the crack, and no rule is made for it.
    least_spacings : ndarray
        Centre to centre at which the stones just pass, of each size [mm].
    buildable : ndarray of bool, same shape
        Where the stones pass, and the bars lie no farther apart than a slab's may.
    """

    sizes: tuple[str, ...]
    diameters: np.ndarray
    areas: np.ndarray
    spacings: np.ndarray
    widths: np.ndarray
    yields: np.ndarray
    idle: np.ndarray
    least_spacings: np.ndarray
    buildable: np.ndarray


def choice_chart(
    strip: Strip,
    laid: StripBars,
    load: float,
    *,
    sizes: tuple[str, ...],
    stones: float,
    shape: str,
    yield_strength: float,
) -> Chart:
    """Work out the widths of all sizes and spacings.

    Parameters
    ----------
    strip : Strip
    laid : StripBars
        The bars as chosen; faces, cover and sides stay as they are.
    load : float
        Moment [N mm] or pull [N].
    sizes : tuple of str
        Bar sizes, thin to thick; those too thick for the depth are left out.
    stones : float
        Largest stones [mm].
    shape : str
        ``"slab"`` or ``"beam"``.
    yield_strength : float
        Of the bars [MPa].
    """
    bars = [one for one in map(bar, sizes) if _fits(strip, laid, one)]
    phi, A = (np.array([getattr(one, name) for one in bars]) for name in ("diameter", "area"))
    s = SPACINGS[None, :]
    cases = StripBars(
        phi[:, None],
        A[:, None],
        strip.width / s,
        s,
        laid.cover,
        laid.side_cover,
        laid.faces,
    )
    stress = strip_stress(strip, cases, load).stress
    gaps = np.array([least_gap(strip.code, one.diameter, stones) for one in bars])
    widest = np.array([_widest(strip, laid, one, shape, yield_strength) for one in bars])
    buildable = (cases.gap >= gaps[:, None]) & (s <= widest[:, None] + 1e-9)
    widths = governing_width(strip, cases, load)
    names = tuple(one.name for one in bars)
    idle = (stress <= 0.0) & (strip.residual > 0.0)
    yields = stress > yield_strength
    return Chart(names, phi, A, SPACINGS, widths, yields, idle, phi + gaps, buildable)


def _fits(strip: Strip, laid: StripBars, one: Bar) -> bool:
    """Tell whether a bar of this size would still lie in the outer half of the depth."""
    return laid.faces == 0.5 or laid.cover + one.diameter <= strip.depth / 2


def _widest(strip: Strip, laid: StripBars, one: Bar, shape: str, yield_strength: float) -> float:
    return widest_spacing(shape, strip, yield_strength, float(laid.cover), one.diameter)
