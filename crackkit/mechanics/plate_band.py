"""Equations whose unknowns are tied to near ones only: factorised, solved, multiplied.

Bands are kept as rows: row j holds what ties unknown j to itself and to those after it.
"""

from functools import cache

from crackkit.words import _


@cache
def _lapack():
    """Routines for bands, loaded by need: loading SciPy takes half a second."""
    from scipy.linalg.blas import dsbmv
    from scipy.linalg.lapack import dpbtrf, dpbtrs

    return dpbtrf, dpbtrs, dsbmv


def factorised(band):
    """Cholesky factor of a lower band.

    Parameters
    ----------
    band : numpy.ndarray
        Each row the lower band of one spline [any]; it is overwritten.

    Returns
    -------
    numpy.ndarray
        The factor, to be handed to `solution` [any].

    Raises
    ------
    ArithmeticError
        If nothing holds the plate where it is.
    """
    factor, fault = _lapack()[0](band.T, lower=1, overwrite_ab=1)
    if fault:
        raise ArithmeticError(_("Nothing holds the slab where it is."))
    return factor


def solution(factor, load):
    """Unknowns of factorised equations.

    Parameters
    ----------
    factor : numpy.ndarray
        From `factorised` [any].
    load : numpy.ndarray
        Right-hand sides [any].

    Returns
    -------
    numpy.ndarray
        The unknowns [any].
    """
    return _lapack()[1](factor, load, lower=1)[0]


def times_band(band, vector):
    """Product of a symmetric matrix, kept as its lower band, with a vector.

    Parameters
    ----------
    band : numpy.ndarray
        Each row the lower band of one spline [any].
    vector : numpy.ndarray
        One number for each spline [any].

    Returns
    -------
    numpy.ndarray
        The product [any].
    """
    return _lapack()[2](band.shape[1] - 1, 1.0, band.T, vector, lower=1)
