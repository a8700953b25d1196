"""Writes the derivations down, so that pages need no SymPy: ``python -m crackkit.derive.writing``.

A test fails when what is kept is no longer what SymPy finds.
"""

import json
from pathlib import Path

from sympy import latex, sstr

from crackkit.derive.arm_moment import arm_moment
from crackkit.derive.bar_spacing import bar_spacing
from crackkit.derive.cracked_section import cracked_section, cracked_section_two_layers
from crackkit.derive.cracking_moment import cracking_moment
from crackkit.derive.derivation import Derivation, DerivedStep
from crackkit.derive.drag import drag
from crackkit.derive.inside_corner import inside_corner
from crackkit.derive.lean import lean
from crackkit.derive.lever_arm import lever_arm
from crackkit.derive.lift_off import lift_off
from crackkit.derive.over_support import over_support
from crackkit.derive.rust_time import rust_time
from crackkit.derive.transfer_length import transfer_length
from crackkit.derive.written import FILE

DERIVATIONS = (
    cracked_section,
    cracked_section_two_layers,
    cracking_moment,
    lean,
    arm_moment,
    lever_arm,
    over_support,
    bar_spacing,
    rust_time,
    transfer_length,
    drag,
    lift_off,
    inside_corner,
)


def lines(step: DerivedStep) -> list[str]:
    """Give a step as LaTeX, and its two sides as Python writes them."""
    equation = step.expression
    sides = (sstr(side, order="none") for side in (equation.lhs, equation.rhs))
    return [latex(equation, order="none"), *(_once_bracketed(side) for side in sides)]


def _once_bracketed(text: str) -> str:
    """Leave out brackets that stand directly inside others: ((a*b)) is (a*b)."""
    ends, opened = {}, []
    for k, sign in enumerate(text):
        if sign == "(":
            opened.append(k)
        elif sign == ")":
            ends[opened.pop()] = k
    spare = [k for k, end in ends.items() if ends.get(k + 1) == end - 1]
    drop = {place for k in spare for place in (k, ends[k])}
    return "".join(sign for k, sign in enumerate(text) if k not in drop)


def kept(derivation: Derivation) -> dict[str, list[str]]:
    """Give what is kept of a derivation, step by step."""
    return {step.key: lines(step) for step in derivation.steps}


def everything() -> str:
    """Give the whole file."""
    made = [derive() for derive in DERIVATIONS]
    return json.dumps({d.key: kept(d) for d in made}, indent=1, ensure_ascii=False) + "\n"


if __name__ == "__main__":
    Path(__file__).with_name(FILE).write_text(everything(), encoding="utf-8")
