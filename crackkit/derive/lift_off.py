"""Why corners lift off, and how high: a slab that wants to bend, and its weight that will not."""

from sympy import Eq, integrate, simplify, solve

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import LETTERS, arranged, told

h, w, gamma, x, y, M, EI, E_c, kappa = (
    LETTERS[name] for name in ("h", "w", "gamma", "x", "y", "M", "EI", "E_c", "kappa")
)
epsilon_d, kappa_0, L_a, y_0 = (LETTERS[name] for name in ("epsilon_d", "kappa_0", "L_a", "y_0"))


def lift_off() -> Derivation:
    """Derive the length that lifts off a rigid base, and the rise of its end.

    A long strip, for each mm of its width; its top wants to shrink by epsilon_d more.
    """
    lifted, rise = lifted_length(), tip_rise()
    known = {EI: E_c * h**3 / 12, kappa_0: epsilon_d / h, w: gamma * h}
    lines = {
        "kappa_0": Eq(kappa_0, epsilon_d / h),
        "EI": Eq(EI, E_c * h**3 / 12),
        "M": arranged(Eq(M, weight_moment()), "w*x**2/2"),
        "kappa": arranged(Eq(kappa, bend()), "kappa_0 - w*x**2/(2*EI)"),
        "L_a": arranged(Eq(L_a, lifted), "sqrt(2*EI*kappa_0/w)"),
        "y_0": arranged(Eq(y_0, rise), "EI*kappa_0**2/(2*w)"),
        "y_h": arranged(Eq(y_0, simplify(rise.subs(known))), "E_c*epsilon_d**2/(24*gamma)"),
    }
    return told("lift_off", lines)


def weight_moment():
    """Moment of the weight of the piece from the end to x: each bit on its lever."""
    return integrate(w * (x - y), (y, 0, x))


def bend():
    """Bend that is left at x from the end: the free one, less what weight bends back."""
    return kappa_0 - weight_moment() / EI


def lifted_length():
    """Distance from the end at which weight has undone the free bend: there it lies flat."""
    (length,) = solve(Eq(bend(), 0), x)
    return length


def tip_rise():
    """Rise of the end: each bit of bend lifts it by itself times its distance from the end."""
    return simplify(integrate(bend() * x, (x, 0, lifted_length())))
