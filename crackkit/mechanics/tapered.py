"""Sections of a member whose depth changes along it, whole and cracked, all stations at once.

Each station is taken as a rectangle of its own: plane sections stay plane, and the slope of the
faces is not looked at.
"""

import numpy as np

from crackkit.words import _

_NOTHING = 1e-300  # keeps 0/0 at 0 where there is no bar


def states_along(width, depth, bar_depth, bar_area, ratio):
    """Neutral axis and inertia at every station, whole and cracked from either face.

    Parameters
    ----------
    width : float or array_like
        Width of the rectangle [mm], above 0; one for all stations or one each.
    depth : array_like
        Whole depth at the n stations [mm], above 0.
    bar_depth : array_like
        Depth of each layer of bars below the top face [mm], shape (layers, n), 0 to the depth
        where the layer is present, any finite number where it is absent.
    bar_area : array_like
        Steel area of each layer [mm2], shape (layers, n), 0 where the layer is absent.
    ratio : float
        Modular ratio n = Es/Ec [-], above 1; a squeezed bar counts n - 1.

    Returns
    -------
    axis : ndarray
        Depth of the neutral axis below the top face [mm], shape (3, n): row 0 the gross section
        without bars, row 1 cracked at the bottom, row 2 cracked at the top.
    inertia : ndarray
        Second moment about it [mm4], same rows; 0 in rows 1 and 2 where no bar lies on the
        stretched side of the gross axis, so that nothing holds the crack.

    Raises
    ------
    ValueError
        If the arrays do not fit together.

    Notes
    -----
    Station by station what `section.cracked` gives, without walking: a layer is squeezed just
    where the balance of forces, taken with the axis at that layer, still pulls the axis further
    in. That settles the layers, and the balance is a parabola.
    """
    b, h, z, areas = _fitting(width, depth, bar_depth, bar_area)
    t = np.stack((z, h - z))  # from the squeezed face: top squeezed, then bottom squeezed
    squeezed = areas * (_balance(t, b, areas, ratio) < 0.0)
    counted = ratio * areas - squeezed
    x = _squeezed_depth(b, counted.sum(axis=1), (counted * t).sum(axis=1))
    inertia = b * x**3 / 3.0 + (counted * (x[:, None] - t) ** 2).sum(axis=1)
    held = ((t > 0.5 * h) & (areas > 0.0)).any(axis=1)
    axis = np.stack((0.5 * h, x[0], h - x[1]))
    return axis, np.concatenate(((b * h**3 / 12.0)[None], inertia * held))


def _fitting(width, depth, bar_depth, bar_area):
    """Arrays of the right shapes: width and depth (n,), bars (layers, n)."""
    z, areas = np.asarray(bar_depth, dtype=float), np.asarray(bar_area, dtype=float)
    h, b = np.asarray(depth, dtype=float), np.asarray(width, dtype=float)
    if h.ndim != 1 or b.shape not in ((), h.shape):
        raise ValueError(_("A tapered member needs one depth at each station."))
    if z.ndim != 2 or z.shape != areas.shape or z.shape[1:] != h.shape:
        raise ValueError(_("Every layer needs one depth and one area at each station."))
    return b, h, z, areas


def _balance(t, b, areas, ratio):
    """Force [over stress per depth] with the axis at each layer; below 0 the axis lies deeper."""
    beyond = np.maximum(t[:, :, None] - t[:, None], 0.0)
    pull = ratio * (areas.sum(axis=0) * t - (areas * t).sum(axis=1, keepdims=True))
    return 0.5 * b * t**2 + pull - (areas * beyond).sum(axis=2)


def _squeezed_depth(b, area, moment):
    """Root of b x^2/2 + area x = moment, exact also where there are few bars or none."""
    return 2.0 * moment / (area + np.sqrt(area**2 + 2.0 * b * moment) + _NOTHING)
