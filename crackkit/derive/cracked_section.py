"""The cracked section: from a flat cut that stays flat to the width of the crack."""

from sympy import Eq, Integer, integrate, simplify, solve, sqrt, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

b, d, h, n, k, x, x_1 = symbols("b d h n k x x_1", positive=True)
M, A_s, A_o, d_o = symbols("M A_s A_o d_o", positive=True)
E_s, E_c, I_cr, f_s = symbols("E_s E_c I_cr f_s", positive=True)
w, s, d_c, kappa, beta, y, epsilon_s = symbols("w s d_c kappa beta y epsilon_s", positive=True)


def cracked_section() -> Derivation:
    """Derive depth, inertia, steel stress and crack width with one layer of bars.

    A rectangular part is squeezed; bars and concrete are elastic; cracked concrete pulls
    nothing. Elastic theory of bending; the width is Frosch's (FROSCH1999).
    """
    balance = force_balance(others=Integer(0))
    lines = _bending(balance, others=Integer(0))
    lines["x"] = arranged(lines["x"], "(sqrt((n*A_s)**2 + 2*b*n*A_s*d) - n*A_s)/b")
    lines["balance"] = arranged(balance, "n*A_s*(d - x)")
    lines["I_cr"] = arranged(lines["I_cr"], "b*x**3/3 + n*A_s*(d - x)**2")
    return told("cracked_section", lines)


def cracked_section_two_layers() -> Derivation:
    """Derive the same where another layer of bars, at depth d_o, counts k times its area."""
    alone, both = force_balance(others=Integer(0)), force_balance(others=k * A_o)
    lines = _bending(both, others=k * A_o)
    first = Eq(x_1, neutral_axis(alone))
    lines["balance"] = arranged(alone.subs(x, x_1), "n*A_s*(d - x_1)")
    lines["x_1"] = arranged(first, "(sqrt((n*A_s)**2 + 2*b*n*A_s*d) - n*A_s)/b")
    lines["balance_two"] = arranged(both, "n*A_s*(d - x) + k*A_o*(d_o - x)")
    lines["x"] = arranged(
        lines["x"],
        "(sqrt((n*A_s + k*A_o)**2 + 2*b*(n*A_s*d + k*A_o*d_o)) - n*A_s - k*A_o)/b",
    )
    lines["I_cr"] = arranged(lines["I_cr"], "b*x**3/3 + n*A_s*(d - x)**2 + k*A_o*(d_o - x)**2")
    return told("cracked_section_two_layers", lines)


def force_balance(others) -> Eq:
    """Balance push and pull of a flat cut bent by kappa, both divided by E_c kappa.

    Parameters
    ----------
    others : sympy.Expr
        Times of concrete that the other layer counts, k A_o; 0 without one.
    """
    push = integrate(b * E_c * kappa * y, (y, 0, x))
    pull = A_s * (n * E_c) * kappa * (d - x) + others * E_c * kappa * (d_o - x)
    scale = E_c * kappa
    return Eq(simplify(push / scale), simplify(pull / scale), evaluate=False)


def neutral_axis(balance: Eq):
    """Solve the balance of forces for x; of its two roots only one is above zero."""
    roots = solve(balance, x)  # x is declared positive, but the sign of a root may stay open
    numbers = {b: 300, d: 450, n: 7, A_s: 900, k: 6, A_o: 200, d_o: 50}
    return next(root for root in roots if root.subs(numbers) > 0)


def _bending(balance: Eq, others) -> dict[str, Eq]:
    """Lines from the neutral axis to the width of the crack."""
    inertia = integrate(b * y**2, (y, 0, x)) + n * A_s * (d - x) ** 2 + others * (d_o - x) ** 2
    (bent,) = solve(Eq(M, E_c * kappa * I_cr), kappa)
    stress = Eq(f_s, (n * E_c * kappa * (d - x)).subs(kappa, bent))
    return {
        "epsilon_s": Eq(epsilon_s, kappa * (d - x)),
        "x": Eq(x, neutral_axis(balance)),
        "I_cr": Eq(I_cr, inertia),
        "f_s": arranged(stress, "n*M*(d - x)/I_cr"),
        **crack_width(),
    }


def crack_width() -> dict[str, Eq]:
    """Lines for the stretch at the face and Frosch's width (FROSCH1999, p. 439 and 440)."""
    strain_at_face, strain_at_bars = kappa * (h - x), kappa * (d - x)
    farthest = sqrt(d_c**2 + (s / 2) ** 2)
    width = Eq(w, 2 * farthest * (f_s / E_s) * beta)
    return {
        "beta": arranged(Eq(beta, simplify(strain_at_face / strain_at_bars)), "(h - x)/(d - x)"),
        "w": arranged(width, "2*(f_s/E_s)*beta*sqrt(d_c**2 + (s/2)**2)"),
    }
