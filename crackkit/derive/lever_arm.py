"""Why the height of the bars counts: push and pull, and the lever arm between them."""

from sympy import Eq, Integer, integrate, simplify, solve, symbols

from crackkit.derive.cracked_section import A_s, M, b, d, f_s, force_balance, neutral_axis, x
from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

y, z, t, F, f_y, M_y, delta = symbols("y z t F f_y M_y delta", positive=True)


def lever_arm() -> Derivation:
    """Derive the lever arm, the pull in the bars, and what trodden bars lose.

    A rectangular part is squeezed; bars and concrete are elastic; cracked concrete pulls nothing.
    """
    balance = force_balance(others=Integer(0))
    centre = integrate(b * y * y, (y, 0, x)) / integrate(b * y, (y, 0, x))
    arm = simplify((d - x) + centre)
    (pull,) = solve(Eq(M, F * z), F)
    strength = (F * z).subs(F, A_s * f_y)
    lines = {
        "balance": arranged(balance, "n*A_s*(d - x)"),
        "x": arranged(Eq(x, neutral_axis(balance)), "(sqrt((n*A_s)**2 + 2*b*n*A_s*d) - n*A_s)/b"),
        "z": arranged(Eq(z, arm), "d - x/3"),
        "F": arranged(Eq(F, pull), "M/z"),
        "f_s": arranged(Eq(f_s, F / A_s), "F/A_s"),
        "M_y": arranged(Eq(M_y, strength), "A_s*f_y*z"),
        "delta": arranged(Eq(delta, share_lost()), "t/(d + t)"),
    }
    return told("lever_arm", lines)


def share_lost():
    """Share of the lever arm that is gone when bars drawn at d + t lie at d, for the same x/d."""
    axis = symbols("axis", positive=True)  # x/d
    here, drawn = (depth * (1 - axis / 3) for depth in (d, d + t))
    return simplify(1 - here / drawn)
