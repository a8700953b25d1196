"""Which module tells an outcome in words and numbers: each kind of structure has its own.

Such a module has the four answers ``moves``, ``stretched``, ``cracked`` and ``held``, the
``widths`` of the crack that decides, the ``numbers`` for comparisons, and in ``SWEPT`` the keys of
those that stand beside a value in a sweep.
"""

from crackkit.sandbox import (
    bent_told,
    control_told,
    corner_told,
    curled_told,
    ground_told,
    pulled_told,
)


def kind_of(outcome):
    """Give the module that tells an outcome."""
    if outcome.control is not None:
        return control_told
    if outcome.curled is not None:
        return curled_told
    if outcome.cornered is not None:
        return corner_told
    if outcome.ground is not None:
        return ground_told
    return bent_told if outcome.pulled is None else pulled_told
