"""Texts for the tiles, from the numbers that sum up an Outcome."""

from crackkit.units import shown


def told_text(told, system: str) -> str:
    """Write one number in the reader's units; where there is no number, its word."""
    return told.value if isinstance(told.value, str) else shown(told.value, told.quantity, system)


def told_texts(numbers, system: str) -> list[tuple[str, str]]:
    """Words and number of each tile.

    Parameters
    ----------
    numbers : tuple of Told
    system : str
        ``"SI"`` or ``"US"``.
    """
    return [(told.label, told_text(told, system)) for told in numbers]
