"""Every word a reader sees passes through here, so that a second language is one catalogue."""

import gettext
from functools import cache
from importlib import resources

_catalogue = gettext.translation(
    "crackkit", localedir=str(resources.files("crackkit") / "locale"), fallback=True
)


@cache  # the same few texts are asked for hundreds of times in each picture
def _(text: str) -> str:
    """Give the text in the reader's language; the English text itself where none is found."""
    return _catalogue.gettext(text)
