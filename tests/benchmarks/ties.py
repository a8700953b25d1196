"""A pulled member that cracks some fifteen times before its bars yield."""

from crackkit.structures.tension_member import TensionMember


def long_tie() -> TensionMember:
    """Give a member of 3 m under a pull that has brought most of its cracks."""
    return TensionMember(length=3000.0, pull=150e3)
