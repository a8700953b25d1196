"""Which units a text is written in: the answers are shown in those of the question."""

import re

from crackkit.units import SI, US
from crackkit.units.reading import plain

_US_UNITS = "ft|feet|foot|inches|inch|in|yards|yd|kips?|k|klf|plf|psi|pci|ksi|psf|ksf|lbf|lbs?|°f"
_SI_UNITS = "mm|cm|m|met(?:re|er)s?|[km]?nm?|pa|kpa|mpa|gpa|kg|°c"
_US = re.compile(rf"['\"#]|\bno\.? ?\d|(?<![a-z])(?:{_US_UNITS})(?![a-z])", re.IGNORECASE)
_SI = re.compile(rf"(?<![a-z])(?:{_SI_UNITS})(?![a-z])", re.IGNORECASE)


def system_of(texts) -> str | None:
    """Give the system most texts are written in; None where no unit is found at all.

    Parameters
    ----------
    texts : sequence
        What was typed; other things than texts have no system.

    Returns
    -------
    str or None
        ``"US"``, or ``"SI"`` also when both are found equally often.
    """
    written = [plain(text) for text in texts if isinstance(text, str)]
    us = sum(bool(_US.search(text)) for text in written)
    si = sum(bool(_SI.search(text)) for text in written)
    if not us and not si:
        return None
    return US if us > si else SI
