"""Why thin bars close together win: the skin of the bars, the spacing of cracks, their width."""

from sympy import Eq, pi, simplify, solve, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

phi, rho, tau_b, f_ct, c, l_b, s_r, A_s = symbols("phi rho tau_b f_ct c l_b s_r A_s", positive=True)
sigma_s, sigma_sr, b_t, E_s, epsilon_m = symbols(
    "sigma_s sigma_sr b_t E_s epsilon_m", positive=True
)
beta, u, w, r = symbols("beta u w r", positive=True)


def bar_spacing() -> Derivation:
    """Derive the crack width from the grip on the skin of the bars, as Model Code 2010 has it.

    Round bars; the grip is even along them; `tau_b` and `b_t` are those of MC2010 Table 7.6-2.
    """
    skin = skin_over_steel()
    balance = Eq(tau_b * u * A_s * l_b, f_ct * A_s / rho)
    (reach,) = solve(balance.subs(u, skin), l_b)
    spacing = 2 * (c + l_b)
    strain = (sigma_s - b_t * sigma_sr) / E_s
    lines = {
        "u": arranged(Eq(u, skin), "4/phi"),
        "balance": balance,
        "l_b": arranged(Eq(l_b, reach), "f_ct*phi/(4*tau_b*rho)"),
        "s_r": arranged(Eq(s_r, spacing), "2*(c + l_b)"),
        "epsilon_m": arranged(Eq(epsilon_m, strain), "(sigma_s - b_t*sigma_sr)/E_s"),
        "w": arranged(Eq(w, s_r * epsilon_m * beta), "s_r*epsilon_m*beta"),
        "r": arranged(Eq(r, share_of_half_size(reach, spacing)), "(c + l_b/2)/(c + l_b)"),
    }
    return told("bar_spacing", lines)


def skin_over_steel():
    """Skin of a round bar, for each bit of its length, over its area."""
    return simplify(pi * phi / (pi * phi**2 / 4))


def share_of_half_size(reach, spacing):
    """Spacing of cracks, and so their width, with bars of half the diameter, over that before.

    Parameters
    ----------
    reach : Expr
        Length over which the grip hands the pull over, in terms of the diameter.
    spacing : Expr
        Of cracks, in terms of that length.
    """
    shorter = simplify(reach.subs(phi, phi / 2) / reach) * l_b
    return simplify(spacing.subs(l_b, shorter) / spacing)
