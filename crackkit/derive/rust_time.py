"""How the time until rust grows with the cover: depth goes with the square root of time."""

from sympy import Eq, integrate, solve, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

c, x, K, T, v, y = symbols("c x K T v y", positive=True)
T_c, T_2, T_h = symbols("T_c T_2 T_h", positive=True)


def rust_time() -> Derivation:
    """Derive the years until the air has turned the cover.

    Diffusion through the part that is turned already, in one direction; a face out of the rain.
    """
    pace = K**2 / (2 * x)
    time = integrate(1 / pace.subs(x, y), (y, 0, x))
    (depth,) = solve(Eq(T, time), x)
    until = time.subs(x, c)
    twice, half = (until.subs(c, other) / until * T_c for other in (2 * c, c / 2))
    lines = {
        "v": Eq(v, pace),
        "T": arranged(Eq(T, time), "(x/K)**2"),
        "x": arranged(Eq(x, depth), "K*sqrt(T)"),
        "T_c": arranged(Eq(T_c, until), "(c/K)**2"),
        "T_2": arranged(Eq(T_2, twice), "4*T_c"),
        "T_h": arranged(Eq(T_h, half), "T_c/4"),
    }
    return told("rust_time", lines)
