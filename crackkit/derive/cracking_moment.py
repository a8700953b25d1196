"""The moment at which plain concrete cracks: f_t b h²/6 for a rectangle."""

from sympy import Eq, integrate, solve, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

b, h, f_t, y, inertia, M_cr = symbols("b h f_t y I M_cr", positive=True)
sigma = symbols("sigma", real=True)


def cracking_moment() -> Derivation:
    """Derive the cracking moment of a rectangle from a stress that grows evenly to the face."""
    stress = f_t * y / (h / 2)
    moment = integrate(b * stress * y, (y, -h / 2, h / 2))
    second = integrate(b * y**2, (y, -h / 2, h / 2))
    (strength,) = solve(Eq(M_cr, f_t * second / (h / 2)), M_cr)
    if moment != strength:
        raise ValueError(f"{moment} is not {strength}")
    lines = {
        "sigma": arranged(Eq(sigma, stress), "2*f_t*y/h"),
        "I": arranged(Eq(inertia, second), "b*h**3/12"),
        "M_cr": arranged(Eq(M_cr, moment), "f_t*b*h**2/6"),
    }
    return told("cracking_moment", lines)
