"""What is said of a mistake in what was typed."""

import pytest

from crackkit.sandbox import WrongInput


def left_unsaid(make, typed: dict, parts: list[str]) -> list[str]:
    """Parts that the message on a mistake ought to have, and has not."""
    with pytest.raises(WrongInput) as caught:
        make(**typed)
    words = str(caught.value).replace("\u202f", " ")
    return [part for part in parts if part not in words]
