"""Why cracks lean: the direction of the largest pull where bending and shear act together."""

from sympy import Eq, cos, diff, limit, oo, pi, simplify, sin, solve, symbols, tan

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

sigma, tau, a, sigma_a = symbols("sigma tau a sigma_a", real=True)


def lean() -> Derivation:
    """Derive the angle of the largest pull, and with it the lean of the crack.

    Balance of a small wedge; a is turned from the beam's axis downward, and a crack is square to
    the largest pull, so it leans by a from the upright. Textbook mechanics.
    """
    pull = sigma * cos(a) ** 2 + 2 * tau * sin(a) * cos(a)
    turned = Eq(tan(2 * a), stationary(pull))
    lines = {
        "sigma_a": arranged(Eq(sigma_a, pull), "sigma*cos(a)**2 + tau*sin(2*a)"),
        "tan_2a": arranged(turned, "2*tau/sigma"),
        "face": Eq(a, solve(turned.subs(tau, 0), a)[0]),
        "axis": Eq(a, _of_shear_alone(turned)),
    }
    return told("lean", lines)


def stationary(pull):
    """Give tan 2a where turning the cut changes the pull no more.

    The slope is a share of cos 2a and a share of sin 2a; they are read off at 0 and at pi/4.

    Raises
    ------
    ValueError
        If the slope has any other part.
    """
    slope = diff(pull, a)
    across, along = slope.subs(a, 0), simplify(slope.subs(a, pi / 4))
    if simplify(slope - across * cos(2 * a) - along * sin(2 * a)) != 0:
        raise ValueError(f"not in cos 2a and sin 2a: {slope}")
    return -across / along


def _of_shear_alone(turned: Eq):
    """Give the lean where the bending stress vanishes: tan 2a grows beyond all bounds."""
    if limit(turned.rhs.subs(tau, 1), sigma, 0, "+") != oo:
        raise ValueError(f"bounded: {turned}")
    return pi / 2 / 2
