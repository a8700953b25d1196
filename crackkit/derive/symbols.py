"""Letters of the derivations, how a solved line is arranged, and words joined to equations."""

from sympy import Eq, simplify, symbols, sympify

from crackkit.derive.derivation import Derivation, DerivedStep
from crackkit.derive.sentences import STEPS, TITLES

_positive = (
    "b d h n k x x_1 M A_s A_o d_o E_s E_c I_cr f_s f_t w s d_c kappa beta y epsilon_s I M_cr "
    "q g_0 g_1 L P a_P M_q z t F f_y "
    "q_1 q_2 L_1 L_2 P_t a_t L_t EI p g M_P "
    "phi rho tau_b f_ct c l_b s_r sigma_s sigma_sr b_t epsilon_m u r K T T_c T_2 T_h "
    "sigma_c l_t mu gamma L_f L_c epsilon_d kappa_0 L_a y_0 "
    "lamda C K_c G_F sigma_m sigma_h"
)
LETTERS = {one.name: one for one in symbols(_positive, positive=True)}
LETTERS |= {one.name: one for one in symbols("sigma tau a sigma_a M_A M_B M_C theta_P", real=True)}


def arranged(solved: Eq, text: str) -> Eq:
    """Give a solved line in the order the trade writes it.

    Parameters
    ----------
    solved : sympy.Eq
        What SymPy found.
    text : str
        Its right side as it is to be printed.

    Raises
    ------
    ValueError
        If the text is not the same as what was found.
    """
    shape = sympify(text, locals=LETTERS, evaluate=False)
    if simplify(shape.doit() - solved.rhs) != 0:
        raise ValueError(f"{text} is not {solved.rhs}")
    return Eq(solved.lhs, shape, evaluate=False)


def told(key: str, lines: dict[str, Eq]) -> Derivation:
    """Join the sentences of a derivation with its lines of mathematics, step by step."""
    steps = tuple(
        DerivedStep(words.key, words.sentence, lines[words.key], words.quantity, words.source)
        for words in STEPS[key]
    )
    return Derivation(key, TITLES[key], steps)
