"""Why cracks keep their distance: how far bond needs to hand the pull back to the concrete."""

from sympy import Eq, integrate, simplify, solve, symbols

from crackkit.derive.bar_spacing import rho, s_r, skin_over_steel, u, w
from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

tau_b, f_ct, x, sigma_c, l_t = symbols("tau_b f_ct x sigma_c l_t", positive=True)
sigma_s, E_s, E_c, epsilon_m = symbols("sigma_s E_s E_c epsilon_m", positive=True)


def transfer_length() -> Derivation:
    """Derive the transfer length, the distance of cracks, and how wide they get at most.

    Round bars, a grip that is even along them, and concrete of even strength; `rho` is the steel
    over the concrete that hangs on it.
    """
    pull = concrete_pull().subs(u, skin_over_steel())
    (length,) = solve(Eq(pull.subs(x, l_t), f_ct), l_t)
    strain = mean_strain_difference(length)
    lines = {
        "u": arranged(Eq(u, skin_over_steel()), "4/phi"),
        "sigma_c": arranged(Eq(sigma_c, pull), "4*tau_b*rho*x/phi"),
        "l_t": arranged(Eq(l_t, length), "f_ct*phi/(4*tau_b*rho)"),
        "s_r": arranged(Eq(s_r, 2 * l_t), "2*l_t"),
        "epsilon_m": arranged(
            Eq(epsilon_m, strain), "sigma_s/E_s - f_ct/(2*rho*E_s) - f_ct/(2*E_c)"
        ),
        "w": arranged(Eq(w, s_r * epsilon_m), "s_r*epsilon_m"),
    }
    return told("transfer_length", lines)


def concrete_pull():
    """Stress of the concrete at x from a crack: what the skin has handed over, on its area."""
    steel = symbols("steel", positive=True)
    return simplify(tau_b * u * steel * x / (steel / rho))


def mean_strain_difference(length):
    """Mean stretch of the bars beyond that of the concrete, from a crack to the end of l_t.

    Parameters
    ----------
    length : Expr
        Transfer length.
    """
    pull = concrete_pull().subs(u, skin_over_steel())
    difference = (sigma_s - pull / rho) / E_s - pull / E_c
    return simplify(integrate(difference, (x, 0, l_t)) / l_t).subs(l_t, length)
