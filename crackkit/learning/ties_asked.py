"""Pulled members that questions are asked about."""

from crackkit.learning.choices import CODES, SLAB_STEEL, Unclear, drawn
from crackkit.mechanics.bars import bar
from crackkit.structures.fields import InputError
from crackkit.structures.tension_member import TensionMember
from crackkit.units.quantities import INCH
from crackkit.words import _

SIZES = {"SI": ("10", "12", "14", "16", "20"), "US": ("#3", "#4", "#5", "#6")}
SHARES = 0.012, 0.03  # steel over concrete [-], so that the bars hold well


def size_of(random, system: str) -> str:
    """Draw a size of bar."""
    return random.choice(SIZES[system])


def tie_of(random, system: str, side: float | None = None, **inputs) -> TensionMember:
    """Draw a member with one bar or four.

    Parameters
    ----------
    random : random.Random
    system : str
        Units; rules and steel go with them.
    side : float, optional
        Side of its square cross-section [mm]; such that its bars hold well if left out.
    **inputs
        Other inputs of the member.

    Raises
    ------
    Unclear
        If such a member cannot be made.
    """
    number, size = random.choice((1, 4)), size_of(random, system)
    area = number * bar(size).area
    if side is None:
        low, high = ((area / share) ** 0.5 for share in reversed(SHARES))
        side = drawn(random, "size", system, max(low, 90.0), min(max(high, 95.0), 300.0))
    usual = {
        "number": number,
        "size": size,
        "width": side,
        "depth": side,
        "length": drawn(random, "length", system, 1000.0, 2500.0),
        "cover": 1 * INCH if system == "US" else 25.0,
        "seed": random.randint(1, 40),
        "code": CODES[system][0],
        "yield_strength": SLAB_STEEL[system],
    }
    try:
        return TensionMember(**(usual | inputs))
    except InputError as error:
        raise Unclear(str(error)) from error


def pull_of(random, tie: TensionMember, system: str) -> float:
    """Draw a pull at which its bars are at work [N]: half to three quarters of their yield."""
    most = tie.bars_area * tie.yield_strength
    return drawn(random, "force", system, 0.5 * most, 0.75 * most)


def bars_told(tie: TensionMember) -> str:
    """Write its bars: one #5 bar, or 4 bars of 12 mm."""
    name = tie.size if tie.size.startswith("#") else _("{n} mm").format(n=tie.size)
    if tie.number == 1:
        return _("one {size} bar").format(size=name)
    return _("{n} bars of {size}").format(n=tie.number, size=name)
