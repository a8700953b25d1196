"""What the words of one step of a derivation are."""

from dataclasses import dataclass


@dataclass(frozen=True)
class StepWords:
    """Words and facts of one step; see `crackkit.derive.derivation.DerivedStep`."""

    key: str
    sentence: str
    quantity: str = ""
    source: str = ""
