"""Where the cubics of a plate meet: close together under loads and along edges, wide elsewhere."""

import numpy as np

_SPANS_UNDER_A_PATCH = 3
# Found by refining: sizes in multiples of the radius of relative stiffness, see plate_knots.
_AT_THE_EDGE, _INSIDE = 0.35, 0.75
_GROWTH_FROM_EDGE, _GROWTH_FROM_PATCH = 0.5, 0.4
_FEWEST, _MOST = 12, 24
_WITHOUT_GROUND = 0.1  # of the length, in place of the radius


def plate_knots(length, reach, patches):
    """Knots along one side of a plate.

    Three cubics lie under each load, which is what its moment needs to come out right; away from
    it they grow. Ends of a load are knots unless they almost touch another one.

    Parameters
    ----------
    length : float
        Length of the side [mm].
    reach : float
        Radius of relative stiffness [mm]; infinite without ground.
    patches : tuple of (float, float)
        Where each load begins and ends along this side [mm].

    Returns
    -------
    tuple of float
        Knots from 0 to the length [mm].
    """
    stops = _stops(length, patches)
    x = np.union1d(np.linspace(0.0, length, 121), stops)
    size = _sizes(x, length, reach, patches)
    mean = 0.5 * (1.0 / size[1:] + 1.0 / size[:-1])
    count = np.concatenate(([0.0], np.cumsum(mean * np.diff(x))))
    at = np.interp(stops, x, count)
    pieces = np.maximum(1, np.ceil(np.diff(at) - 1e-6)).astype(int)
    inner = [np.linspace(a, b, n + 1)[:-1] for a, b, n in zip(at, at[1:], pieces, strict=False)]
    knots = np.interp(np.concatenate(inner), count, x)
    return (*knots.tolist(), float(length))


def _stops(length, patches):
    """Ends of the side and of the loads, those left out that almost touch another."""
    stops = [0.0, length]
    for start, end in patches:
        near = 0.4 * (end - start) / _SPANS_UNDER_A_PATCH
        stops += [x for x in (start, end) if min(abs(x - other) for other in stops) > near]
    return np.sort(stops)


def _sizes(x, length, reach, patches):
    """Wanted distance of the knots at each place."""
    reach = reach if np.isfinite(reach) else _WITHOUT_GROUND * length
    most = min(length / _FEWEST, max(_INSIDE * reach, length / _MOST))
    least = min(most, _AT_THE_EDGE * reach)
    edge = np.minimum(x, length - x)
    size = np.minimum(most, least + _GROWTH_FROM_EDGE * edge)
    for start, end in patches:
        away = np.maximum(0.0, np.maximum(start - x, x - end))
        own = (end - start) / _SPANS_UNDER_A_PATCH
        size = np.minimum(size, own + _GROWTH_FROM_PATCH * away)
    return size
