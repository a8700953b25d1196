"""Parts that a reader can have more or fewer of: one more load, one span less."""

from dataclasses import dataclass

from crackkit.words import _


@dataclass(frozen=True)
class Count:
    """One way to have one part more or less.

    Attributes
    ----------
    act, label : str
        Name of the button inside, and for the reader.
    prefix : str
        Under whose controls the button stands.
    changes : dict
        What it changes, path to value; empty where there can be no more or no fewer.
    """

    act: str
    label: str
    prefix: str
    changes: dict


def load_counts(loads: tuple, most: int, another) -> tuple[Count, Count]:
    """Offer one load more and one less.

    Parameters
    ----------
    loads : tuple
        The loads there are; one always stays.
    most : int
        Most loads there can be [-].
    another : object
        The load that would be added.
    """
    more = {"loads": (*loads, another)} if len(loads) < most else {}
    less = {"loads": loads[:-1]} if len(loads) > 1 else {}
    return (
        Count("add_load", _("One more load"), "loads", more),
        Count("drop_load", _("One load less"), "loads", less),
    )
