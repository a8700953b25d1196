"""Floors that questions are asked about, and the words for their spans and supports."""

from dataclasses import replace

import numpy as np

from crackkit.learning.choices import CODES, SIZES, SLAB_STEEL, drawn
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.structures.floor_bars import FloorBars
from crackkit.structures.floor_parts import Span, Support, Traveller
from crackkit.structures.floor_range import listed
from crackkit.units.quantities import INCH
from crackkit.words import _

DEPTH = {"SI": 180.0, "US": 7 * INCH}
STRIP = {"SI": 1000.0, "US": 12 * INCH}
EVERY = {"SI": 120.0, "US": 5 * INCH}


def floor_of(system: str, lengths, dead: float, live: float, **inputs) -> ContinuousBeam:
    """Make a strip of a slab over spans of these lengths [mm], its bars run through.

    Parameters
    ----------
    system : str
        Units; sizes of bars and rules go with them.
    lengths : sequence of float
        Lengths of the spans [mm].
    dead, live : float
        Loads that are always there, own weight counted in, and that come and go [N/mm].
    **inputs
        Other inputs of the floor.
    """
    mat = FloorBars(size=SIZES[system][1], spacing=EVERY[system], cover=25.0)
    usual = {
        "spans": tuple(Span(length) for length in lengths),
        "supports": (Support(),) * (len(lengths) + 1),
        "width": STRIP[system],
        "depth": DEPTH[system],
        "dead_load": dead,
        "live_load": live,
        "self_weight": False,
        "loads": (Traveller(0.0, 0.0),),
        "bottom": mat,
        "top": replace(mat, face="top"),
        "through": True,
        "yield_strength": SLAB_STEEL[system],
        "code": CODES[system][0],
    }
    return ContinuousBeam(**(usual | inputs))


def drawn_loads(random, system: str, low: float = 1.2, high: float = 3.0) -> tuple[float, float]:
    """Draw dead and live load of a strip [N/mm]; live is `low` to `high` times dead."""
    metres = STRIP[system] / 1000
    dead = drawn(random, "line_load", system, 4.5 * metres, 7.0 * metres)
    return dead, drawn(random, "line_load", system, low * dead, high * dead)


def with_live(floor: ContinuousBeam, spans) -> ContinuousBeam:
    """The same floor with live load on some spans only, counted from 1."""
    live = (replace(span, live=k + 1 in spans) for k, span in enumerate(floor.spans))
    return replace(floor, spans=tuple(live))


def moment_over(floor: ContinuousBeam, support: int) -> float:
    """Frown over a support, counted from 0, under the loads as they stand [N mm]."""
    outcome = floor.solve()
    return -float(np.interp(floor.places[support], outcome.x, outcome.moment))


def frown_reach(x: np.ndarray, moment: np.ndarray, support: float, end: float) -> float:
    """How far from a support towards an end moments frown without a break [mm].

    Parameters
    ----------
    x, moment : ndarray
        Stations [mm] and moments [N mm].
    support, end : float
        Places [mm].
    """
    there = np.linspace(support, end, 801)
    sags = np.interp(there, x, moment) > 0.0
    stop = there[int(np.argmax(sags))] if sags.any() else end
    return abs(float(stop) - support)


def spans_text(spans) -> str:
    """Name spans, counted from 1: span 2, or spans 1, 2 and 4."""
    one, many = _("span {n}"), _("spans {n}")
    names = listed([str(n) for n in spans])
    return (one if len(spans) == 1 else many).format(n=names)
