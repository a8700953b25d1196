"""Why the stress at an inside corner has no end, and over which length it is looked at instead."""

from functools import cache

from sympy import (
    Eq,
    Float,
    Matrix,
    Rational,
    cos,
    diff,
    integrate,
    nsolve,
    pi,
    simplify,
    sin,
    solve,
    sqrt,
    symbols,
)

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import LETTERS, arranged, told

r, d, C, lamda, K_c, E_c, G_F, f_ct = (
    LETTERS[name] for name in ("r", "d", "C", "lamda", "K_c", "E_c", "G_F", "f_ct")
)
sigma, sigma_m, sigma_h, sigma_c = (
    LETTERS[name] for name in ("sigma", "sigma_m", "sigma_h", "sigma_c")
)
a, b, theta, w = symbols("a b theta w", real=True)

CORNER = 3 * pi / 2  # what the concrete fills at the inside corner of an L [rad]
CRACK = 2 * pi  # and at the tip of a crack
DIGITS = 4


def inside_corner() -> Derivation:
    """Derive how stress grows towards an inside corner, and the length over which it is averaged.

    An elastic plate with free sides at the corner (Williams 1952), pulled open evenly.
    """
    near = corner_stress()
    (sharpest,) = solve(free_sides(CRACK), lamda)
    (length,) = solve(Eq(crack_mean().subs(K_c, sqrt(E_c * G_F)), f_ct), d)
    lines = {
        "free": arranged(
            Eq(sin(CORNER * lamda), sin(CORNER * lamda) - free_sides(CORNER)), "lamda"
        ),
        "lamda": Eq(lamda, Float(corner_exponent(), DIGITS)),
        "sigma": arranged(Eq(sigma, near), "C/r**(1 - lamda)"),
        "nearer": arranged(
            Eq(sigma_h / sigma, simplify(near.subs(r, r / 2) / near)), "2**(1 - lamda)"
        ),
        "sigma_m": arranged(Eq(sigma_m, mean_over(near)), "C/(lamda*d**(1 - lamda))"),
        "crack": Eq(lamda, sharpest),
        "sigma_c": arranged(Eq(sigma_c, crack_mean()), "K_c*sqrt(2/(pi*d))"),
        "K_c": arranged(Eq(K_c, sqrt(E_c * G_F)), "sqrt(E_c*G_F)"),
        "d": arranged(Eq(d, length), "2*E_c*G_F/(pi*f_ct**2)"),
    }
    return told("inside_corner", lines)


def airy():
    """Airy's function of a corner that is pulled open evenly: its second slopes are stresses."""
    return r ** (lamda + 1) * (a * cos((lamda + 1) * theta) + b * cos((lamda - 1) * theta))


def across(function):
    """Stress across r."""
    return diff(function, r, 2)


def shear(function):
    """Shear stress along r."""
    return -diff(diff(function, theta) / r, r)


def free_sides(angle):
    """What is 0 where both sides of a corner of that solid angle can be free at once.

    Stress across and shear on the side are both 0 for some a and b that are not 0 themselves: so
    the determinant of the two conditions is 0.

    Parameters
    ----------
    angle : Expr
        Solid angle of the body [rad].
    """
    return _condition().subs(w, angle)


@cache
def _condition():
    rows = [simplify(stress(airy()) / r ** (lamda - 1)).expand() for stress in (across, shear)]
    found = Matrix([[row.coeff(one).subs(theta, w / 2) for one in (a, b)] for row in rows])
    common = -(lamda**2) * (lamda + 1)  # never 0
    return simplify(found.det() / common)


def corner_exponent():
    """The least power of r above 0 that leaves both sides of the inside corner of an L free."""
    return nsolve(free_sides(CORNER), lamda, Rational(11, 20))


def corner_stress():
    """Stress across the line that halves the corner, at r from it; C tells how hard."""
    return C * r ** (lamda - 1)


def mean_over(stress):
    """Mean of a stress from the corner to the distance d."""
    return simplify(integrate(stress, (r, 0, d)) / d)


def crack_mean():
    """Mean of the stress ahead of a crack whose stress intensity is K_c."""
    return mean_over(K_c / sqrt(2 * pi * r))
