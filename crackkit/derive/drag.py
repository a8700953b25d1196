"""Why a long slab is pulled in its middle: the base drags at both halves as they creep inwards."""

from sympy import Eq, integrate, simplify, solve

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import LETTERS, arranged, told

mu, w, gamma, h, x, F, L_f, L_c, f_ct = (
    LETTERS[name] for name in ("mu", "w", "gamma", "h", "x", "F", "L_f", "L_c", "f_ct")
)
sigma = LETTERS["sigma"]


def drag() -> Derivation:
    """Derive the pull in the middle of a slab with free ends, and the length that cracks it.

    The slab slides all along: the base gives all that it can, for each mm of width.
    """
    stress = middle_stress()
    (length,) = solve(Eq(stress.subs(L_f, L_c), f_ct), L_c)
    lines = {
        "F": arranged(Eq(F, base_pull()), "mu*w*x"),
        "sigma": arranged(Eq(sigma, stress), "mu*w*L_f/(2*h)"),
        "sigma_g": arranged(Eq(sigma, simplify(stress.subs(w, gamma * h))), "mu*gamma*L_f/2"),
        "L_c": arranged(Eq(L_c, length), "2*f_ct*h/(mu*w)"),
    }
    return told("drag", lines)


def base_pull():
    """Pull at x from a free end: what the base gives on each bit of the way, added up."""
    return integrate(mu * w, (x, 0, x))


def middle_stress():
    """Stress in the middle of a slab of the length L_f: its pull there over its depth."""
    return simplify(base_pull().subs(x, L_f / 2) / h)
