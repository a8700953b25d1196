"""The moment over a support of a beam that runs on, and how far the top is stretched beside it."""

from sympy import Eq, expand, factor, integrate, simplify, solve, symbols

from crackkit.derive.derivation import Derivation
from crackkit.derive.symbols import arranged, told

L, EI, q, q_1, q_2, L_1, L_2 = symbols("L EI q q_1 q_2 L_1 L_2", positive=True)
P_t, a_t, L_t, p, g, x, M_q, M_P = symbols("P_t a_t L_t p g x M_q M_P", positive=True)
M_A, M_B, M_C, theta_q, theta_P, theta_M = symbols("M_A M_B M_C theta_q theta_P theta_M", real=True)
M_2, x_0, x_1 = symbols("M_2 x_0 x_1", real=True)


def over_support() -> Derivation:
    """Derive the moment over support B from the one slope that both spans have there."""
    balance = slope_balance()
    (over,) = solve(balance, M_B)
    spread = -over.subs({theta_P: 0, M_A: 0, M_C: 0})
    force = slope_of_force(P_t, a_t, L_t)
    moving = (-over.subs({q_1: 0, q_2: 0, M_A: 0, M_C: 0})).subs(theta_P, force)
    equal = -spread.subs({q_1: q, q_2: q, L_1: L, L_2: L})
    beside = -spread.subs({q_1: g + p, q_2: g, L_1: L, L_2: L})
    whole = -M_q - M_P + over.subs({q_1: 0, q_2: 0, theta_P: 0})
    lines = {
        "theta_q": arranged(Eq(theta_q, slope_of_spread(q, L)), "q*L**3/(24*EI)"),
        "theta_P": arranged(Eq(theta_P, force), "P_t*a_t*(L_t - a_t)*(2*L_t - a_t)/(6*EI*L_t)"),
        "theta_M": arranged(Eq(theta_M, slope_of_ends(M_B, M_A, L)), "(2*M_B + M_A)*L/(6*EI)"),
        "balance": balance,
        "M_q": arranged(Eq(M_q, spread), "(q_1*L_1**3 + q_2*L_2**3)/(8*(L_1 + L_2))"),
        "M_P": arranged(Eq(M_P, moving), "P_t*a_t*(L_t - a_t)*(2*L_t - a_t)/(2*L_t*(L_1 + L_2))"),
        "M_B": arranged(Eq(M_B, whole), "-M_q - M_P - (M_A*L_1 + M_C*L_2)/(2*(L_1 + L_2))"),
        "M_2": arranged(Eq(M_2, equal), "-q*L**2/8"),
        "x_0": arranged(Eq(x_0, turning_place(equal, q)), "L/4"),
        "x_1": arranged(Eq(x_1, turning_place(beside, g)), "L/4*(1 + p/(2*g))"),
    }
    return told("over_support", lines)


def slope_of_spread(load, span):
    """Slope at the end of a span under a spread load.

    Every bit of bending turns that end by its share: by its distance x from the far end, over
    the span.
    """
    return integrate(load * x * (span - x) / 2 * x / span, (x, 0, span)) / EI


def slope_of_force(force, at, span):
    """Slope at the near end of a span under a force at a distance from that end."""
    far = span - at  # from the far end, where x starts
    left, right = force * at * x / span, force * far * (span - x) / span
    first, rest = (left * x / span, (x, 0, far)), (right * x / span, (x, far, span))
    return factor((integrate(*first) + integrate(*rest)) / EI)


def slope_of_ends(near, far, span):
    """Slope at the near end of a span that is bent by moments at both its ends."""
    moment = far + (near - far) * x / span
    return simplify(integrate(moment * x / span, (x, 0, span)) / EI)


def slope_balance() -> Eq:
    """The two spans at B turn together: what the loads turn, the moments turn back."""
    turned = slope_of_spread(q_1, L_1) + slope_of_spread(q_2, L_2) + theta_P
    back = slope_of_ends(M_B, M_A, L_1) + slope_of_ends(M_B, M_C, L_2)
    text = "-8*M_B*(L_1 + L_2) - 4*M_A*L_1 - 4*M_C*L_2"
    return arranged(Eq(expand(24 * EI * turned), expand(-24 * EI * back)), text)


def turning_place(over, load):
    """Distance from a support, with this moment over it, where a span ceases to frown.

    The far end of the span is free to turn.
    """
    along = over * (1 - x / L) + load * x * (L - x) / 2
    places = [root for root in solve(along, x) if simplify(root - L) != 0]
    return simplify(places[0])
