"""Why a slab is pulled in its middle: the numbers are those of the slab above."""

from dataclasses import replace
from functools import partial

import pytest

from crackkit.learning.ground import barred_slab, slab, walled_slab
from tests.panels import derivation

unfolded = partial(derivation.unfolded, key="drag")


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("make", [slab, walled_slab, barred_slab])
def test_stress_and_length_are_those_of_the_working(make, system):
    for base in ("gravel", "two_sheets"):
        steps = unfolded(replace(make(system), base=base), system).view.steps
        told = [row["shown"] for row in steps]
        assert told == ["", "✓ as shown above", "", "✓ as shown above"]


def test_every_letter_has_its_meaning_and_its_number():
    rows = {letter: (meaning, value) for letter, meaning, value in unfolded(slab()).view.letters}
    assert rows["μ"][1] == "1.5" and rows["L_f"][1] == "24.00\u202fm"
    assert rows["w"][1] == "3.5\u202fkPa" and not rows["γ"][1]
    assert all(meaning for meaning, _value in rows.values())


def test_it_says_when_something_else_holds_the_slab():
    assert "holds the slab as well" in unfolded(walled_slab()).view.note
    assert "holds the slab as well" not in unfolded(slab()).view.note
    assert "curling" in unfolded(slab()).view.note
