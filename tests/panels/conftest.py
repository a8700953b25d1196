"""What all tests of panels share: a record that nobody has written in."""

import pytest


@pytest.fixture(autouse=True)
def own_home(tmp_path, monkeypatch):
    """A home of its own for each test: units, colours and answers are remembered there."""
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path / "home"))
