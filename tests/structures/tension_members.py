"""Any pulled member at all, and those that every test of them should meet."""

from dataclasses import replace

from hypothesis import strategies as st

from crackkit.structures import fields
from crackkit.structures.tension_member import TensionMember
from tests.structures.drawn import anywhere


@st.composite
def tension_members(draw, **fixed):
    """Draw a pulled member, every input anywhere in its range; `fixed` holds some by name."""
    return anywhere(draw, TensionMember(), fixed)


def greatest_pull(member: TensionMember) -> float:
    """Upper end of the range of its pull [N]."""
    return fields.input_at(member, "pull").high


def first_pull(member: TensionMember) -> float:
    """Pull at which its first crack comes [N]."""
    return member.solve().pulled.first_pull


def just_cracked(member: TensionMember) -> TensionMember:
    """The member at its first crack."""
    return replace(member, pull=min(first_pull(member) * (1 + 1e-9), greatest_pull(member)))


def at_yield(member: TensionMember) -> TensionMember:
    """The member as hard pulled as may be."""
    return replace(member, pull=greatest_pull(member))


PLAIN = TensionMember(number=0)
THIN = TensionMember(number=1, size="10", ends="gripped", width=200.0, depth=200.0)
LONG = TensionMember(length=4000.0, width=100.0, depth=100.0, size="10", cover=20.0)

KNOWN = {
    "no pull": TensionMember(),
    "first crack": just_cracked(TensionMember()),
    "many cracks": TensionMember(pull=110e3),
    "yield": at_yield(TensionMember()),
    "held at less than before": TensionMember(pull=20e3, before=150e3),
    "let go": TensionMember(before=150e3),
    "smooth bars": TensionMember(surface="plain", pull=120e3),
    "shrunk": TensionMember(shrinkage=0.0005, pull=30e3),
    "gripped": TensionMember(ends="gripped", pull=140e3),
    "no bars": replace(PLAIN, pull=0.7 * first_pull(PLAIN)),
    "no bars, parted": just_cracked(PLAIN),
    "one thin bar": replace(THIN, pull=0.9 * first_pull(THIN)),
    "one thin bar, parted": just_cracked(THIN),
    "ten side by side": TensionMember(pull=100e3, beside=True),
    "ten without bars": replace(just_cracked(PLAIN), beside=True),
    "long": replace(LONG, pull=0.95 * greatest_pull(LONG)),
}
