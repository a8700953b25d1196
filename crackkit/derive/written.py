"""Derivations as they were written down, and numbers put into them: no SymPy needed here."""

import json
import math
import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache
from importlib import resources

from crackkit.derive.derivation import WrittenDerivation, WrittenStep
from crackkit.derive.sentences import STEPS, TITLES, StepWords

FILE = "written.json"
_symbol = re.compile(r"[A-Za-z]\w*")
_greek = {"kappa": "κ", "beta": "β", "sigma": "σ", "tau": "τ", "pi": "π", "delta": "δ"}
_greek |= {"epsilon_s": "ε_s", "sigma_a": "σ_a"}
_greek |= {"phi": "φ", "rho": "ρ", "tau_b": "τ_b", "epsilon_m": "ε_m"}
_greek |= {"mu": "μ", "gamma": "γ", "kappa_0": "κ_0", "epsilon_d": "ε_d"}
_greek |= {"sigma_s": "σ_s", "sigma_sr": "σ_sr", "sigma_c": "σ_c"}
_greek |= {"lamda": "λ", "sigma_m": "σ_m", "sigma_h": "σ_h"}
_greek |= {"theta_q": "θ_q", "theta_P": "θ_P", "theta_M": "θ_M"}


@dataclass(frozen=True)
class NumberedStep:
    """A step with the numbers of one beam in it.

    Attributes
    ----------
    step : WrittenStep
        The step.
    numbers : str
        Its right side with the numbers put in, in N, mm, MPa; empty where it yields none.
    value : float or None
        What it yields [N, mm, MPa]; None where a number it needs is not given.
    """

    step: WrittenStep
    numbers: str = ""
    value: float | None = None


def written(key: str) -> WrittenDerivation:
    """Give a derivation as it was written down.

    Parameters
    ----------
    key : str
        The name of a derivation, such as ``"cracked_section"``: a key of `TITLES`.

    Raises
    ------
    KeyError
        If there is no such derivation.
    """
    kept = _kept()[key]
    steps = tuple(_step(words, *kept[words.key]) for words in STEPS[key])
    return WrittenDerivation(key, TITLES[key], steps)


def _step(words: StepWords, latex: str, left: str, formula: str) -> WrittenStep:
    plain = f"{readable(left)} = {readable(formula)}"
    return WrittenStep(
        words.key, words.sentence, latex, plain, formula, words.quantity, words.source
    )


def readable(text: str) -> str:
    """Write a formula, or a letter, as people read it."""
    text = _symbol.sub(lambda m: _greek.get(m.group(), m.group()), text)
    for sign, printed in (
        ("**2", "²"),
        ("**3", "³"),
        ("**", "^"),
        ("*", " × "),
        ("sqrt(", "√("),
        ("-", "−"),
    ):
        text = text.replace(sign, printed)
    return text


@cache
def _kept() -> dict:
    file = resources.files("crackkit.derive") / FILE
    return json.loads(file.read_text(encoding="utf-8"))


def with_numbers(
    derivation: WrittenDerivation, values: Mapping[str, float]
) -> tuple[NumberedStep, ...]:
    """Put the numbers of a beam into a derivation, step by step.

    Parameters
    ----------
    derivation : WrittenDerivation
        What was derived.
    values : mapping of str to float
        The given numbers by symbol [N, mm, MPa]. What a step yields is put into those after it.
    """
    known, steps = dict(values), []
    for step in derivation.steps:
        steps.append(_numbered(step, known))
        if steps[-1].value is not None:
            known[step.key] = steps[-1].value
    return tuple(steps)


def _numbered(step: WrittenStep, known: Mapping[str, float]) -> NumberedStep:
    needed = set(_symbol.findall(step.formula)) - {"sqrt"}
    if not step.quantity or not needed <= known.keys():
        return NumberedStep(step)
    # the formula is our own package data, checked by a test against SymPy
    value = eval(step.formula, {"__builtins__": {}, "sqrt": math.sqrt}, dict(known))
    return NumberedStep(step, readable(_put_in(step.formula, known)), value)


def _put_in(formula: str, known: Mapping[str, float]) -> str:
    return _symbol.sub(
        lambda m: _short(known[m.group()]) if m.group() in known else m.group(), formula
    )


def _short(value: float) -> str:
    """Write a number with four digits, such as 104.6 or (1.046 × 10⁸)."""
    mantissa, e, exponent = f"{value:.4g}".partition("e")
    if not e:
        return mantissa
    raised = str(int(exponent)).translate(str.maketrans("-0123456789", "⁻⁰¹²³⁴⁵⁶⁷⁸⁹"))
    return f"({mantissa} × 10{raised})"
