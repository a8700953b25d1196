"""The air over a fresh slab: wind as arrows, moisture as drops, water that leaves as waves."""

import numpy as np

from crackkit.drawing.shapes import Arrow, Lines, Polygons, Polyline

ROWS = (0.0, 16.0, 32.0)  # heights of the rows of wind
FULL_WIND = 60.0  # km/h: the longest arrows
SHORT, LONG = 12.0, 96.0  # arrows in the lightest and in the strongest wind
APART = 26.0  # from an arrow to the next
DROPS = 12.0  # from drop to drop in fog
FULL, LEAST = 46.0, 8.0  # height of the waves where most leaves, and where any is drawn
MOST = 2.0  # times the limit from which no more is drawn
WAVES = 34.0  # from wave to wave


def wind_arrows(left: float, right: float, top: float, wind: float) -> list:
    """Draw rows of arrows, longer and closer to each other's ends in a stronger wind [km/h]."""
    if wind < 0.5:
        return []
    long = SHORT + (LONG - SHORT) * min(wind / FULL_WIND, 1.0)
    shapes = []
    for k, down in enumerate(ROWS):
        starts = np.arange(left + (k % 2) * (long + APART) / 2, right - long, long + APART)
        shapes += [
            Arrow(x, top + down, x + long, top + down, "live_load", 7.0) for x in starts.tolist()
        ]
    return shapes


def drops(left: float, right: float, top: float, humidity: float) -> list:
    """Draw the moisture in the air between the rows of wind: the moister, the more drops."""
    x = np.arange(left + 4.0, right - 4.0, DROPS)
    k = np.arange(3 * x.size)
    wild = np.modf(np.abs(np.sin(12.9898 * k + 7.7) * 43758.5453))[0]
    shown = wild <= humidity
    places = np.column_stack([np.tile(x, 3), top + 16.0 * (k // x.size) + 2.0])[shown]
    if not len(places):
        return []
    return [Polygons(places[:, None, :] + _drop(), "squeezed_area")]


def _drop() -> np.ndarray:
    turn = np.linspace(0.0, 2 * np.pi, 9)[1:-1] - np.pi / 2
    round_part = 2.2 * np.column_stack([np.cos(turn), np.sin(turn)])
    return np.concatenate([[(0.0, -4.6)], round_part])


def vapour(left: float, right: float, face: float, times: float, wind: float) -> list:
    """Draw the water that leaves as waves with a head, leaning with the wind [km/h].

    Parameters
    ----------
    left, right, face : float
        The face of the slab on the drawing.
    times : float
        Rate as a multiple of the limit [-].
    wind : float
        Wind [km/h].
    """
    if times <= 0.02:
        return []
    tall = LEAST + (FULL - LEAST) * min(times / MOST, 1.0)
    lean = 0.5 * tall * min(wind / FULL_WIND, 1.0)
    share = np.linspace(0.0, 1.0, 13)
    x = lean * share**1.5 + 2.6 * np.sin(2 * np.pi * share * max(tall / 22.0, 0.5))
    wave = np.column_stack([x, -tall * share])
    starts = np.arange(left + 20.0, right - 20.0 - lean, WAVES)
    foot = face - 9.0
    shapes = [Polyline(wave + (start, foot), "squeezed_line", 1.6) for start in starts.tolist()]
    heads = (wave[-1] + _head())[None] + np.column_stack([starts, np.full(starts.size, foot)])[
        :, None, None, :
    ]
    return [*shapes, Lines(heads.reshape(-1, 2, 2), "squeezed_line")]


def _head() -> np.ndarray:
    return np.array([[(-4.0, 4.5), (0.0, -1.0)], [(4.0, 4.5), (0.0, -1.0)]])
