"""What is built in round numbers of one system can be told in the units of the other."""

from crackkit import units
from crackkit.units.display import digits, joined
from crackkit.units.quantities import scale


class Retold(str):
    """The system of units that something is built in, which is told in the units of another.

    It stands wherever a system stands. Sizes of bars and round numbers are looked up by it as by
    the system they belong to, so that nothing changes but what is said; `shown` and its like
    of this file write in the other one. So a reader who changes units in the middle of a lesson
    keeps the member that he has before him.

    Parameters
    ----------
    built : str
        ``"SI"`` or ``"US"``: its numbers are round in these units.
    told : str
        ``"SI"`` or ``"US"``: it is written in these.
    finer : int
        Digits more than usual [-], where two numbers would read alike.

    Examples
    --------
    >>> shown(1500.0, "length", Retold("SI", told="US"))
    '4.9\u202fft'
    """

    def __new__(cls, built: str, told: str, finer: int = 0) -> "Retold":
        """Make it."""
        made = super().__new__(cls, built)
        made.told, made.finer = told, finer
        return made


def told_in(system: str) -> str:
    """Give the units that are written: those of a plain system are its own."""
    return getattr(system, "told", system)


def shown(value: float, quantity: str, system: str) -> str:
    """Write a value with its unit, such as ``6.10 m`` or ``20.0 ft``.

    Parameters
    ----------
    value : float
        Value in the inner unit of the quantity [N, mm, MPa].
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"``, ``"US"``, or one that is told in the other.
    """
    told, finer = told_in(system), getattr(system, "finer", 0)
    if not finer:
        return units.shown(value, quantity, told)
    way = scale(quantity, told)
    number = digits(units.number(value, quantity, told), way.decimals + finer)
    return joined(number, way.label)


def briefly(value: float, quantity: str, system: str) -> str:
    """Write a value without zeros that say nothing: ``5 ft`` where `shown` writes ``5.0 ft``.

    Parameters
    ----------
    value : float
        Value in the inner unit of the quantity [N, mm, MPa].
    quantity : str
        Key of the table of quantities.
    system : str
        ``"SI"``, ``"US"``, or one that is told in the other.
    """
    number, space, label = shown(value, quantity, system).partition("\u202f")
    if "." in number:
        number = number.rstrip("0").rstrip(".")
    return f"{number}{space}{label}"


def unit(quantity: str, system: str) -> str:
    """Give the label of the unit that is written, empty for counts and ratios."""
    return units.unit(quantity, told_in(system))
