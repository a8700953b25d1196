"""Outcomes that several tests of a lesson ask for: worked out once, and kept."""

from functools import cache


@cache
def outcome(structure):
    """What becomes of a structure."""
    return structure.solve()
