"""What a derivation is: steps of one plain sentence and one line of mathematics each."""

from dataclasses import dataclass


@dataclass(frozen=True)
class DerivedStep:
    """One step, as SymPy holds it.

    Attributes
    ----------
    key : str
        Name of the step; the symbol it yields where it yields one, such as ``"x"``.
    sentence : str
        What is done and why, in plain words.
    expression : sympy.Eq
        The line of mathematics.
    quantity : str
        Kind of quantity of what it yields, a key of the units table; ``"plain"`` for a number
        without unit; empty where it yields no number.
    source : str
        Where a rule that is not mechanics stands.
    """

    key: str
    sentence: str
    expression: object
    quantity: str = ""
    source: str = ""


@dataclass(frozen=True)
class Derivation:
    """A chain of steps that ends in a formula the panel uses."""

    key: str
    title: str
    steps: tuple[DerivedStep, ...]


@dataclass(frozen=True)
class WrittenStep:
    """One step written down, for pages that do without SymPy.

    Attributes
    ----------
    key, sentence, quantity, source : str
        As in `DerivedStep`.
    latex : str
        The line of mathematics, typeset.
    plain : str
        The same as plain text.
    formula : str
        Its right side, as Python writes it.
    """

    key: str
    sentence: str
    latex: str
    plain: str
    formula: str
    quantity: str = ""
    source: str = ""


@dataclass(frozen=True)
class WrittenDerivation:
    """A derivation written down."""

    key: str
    title: str
    steps: tuple[WrittenStep, ...]
