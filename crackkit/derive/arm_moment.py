"""The moment at the root of an arm, tapered or not."""

from sympy import Eq, integrate, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

q, g_0, g_1, L, P, a_P, x = symbols("q g_0 g_1 L P a_P x", positive=True)
g, M, M_q = symbols("g M M_q", positive=True)


def arm_moment() -> Derivation:
    """Derive the moment at the root: each load times its distance from the root."""
    weight = g_0 + (g_1 - g_0) * x / L
    spread = integrate((q + weight) * x, (x, 0, L))
    lines = {
        "g": Eq(g, weight),
        "M_q": arranged(Eq(M_q, spread), "q*L**2/2 + (g_0 + 2*g_1)*L**2/6"),
        "M": arranged(Eq(M, M_q + P * a_P), "M_q + P*a_P"),
    }
    return told("arm_moment", lines)
