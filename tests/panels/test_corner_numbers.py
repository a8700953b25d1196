"""Why a sharp corner cracks: the numbers are those of the slab above."""

from dataclasses import replace
from functools import partial

import pytest

from crackkit.structures.corner_slab import CornerSlab
from crackkit.units import shown
from tests.panels import derivation

SLAB = CornerSlab(age=90.0)
unfolded = partial(derivation.unfolded, key="inside_corner")


@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("rounding", [0.0, 200.0])
def test_the_length_is_that_of_the_panel(system, rounding):
    rows = unfolded(replace(SLAB, rounding=rounding), system).view.steps
    row = next(r for r in rows if r["plain"].startswith("d = "))
    assert row["shown"] == "✓ as shown above" and row["numbers"]


def test_every_letter_has_its_meaning_and_the_known_ones_their_value():
    letters = unfolded(SLAB).view.letters
    assert {name for name, *_rest in letters} == {"E_c", "G_F", "f_ct", "r", "λ", "C", "K_c"}
    assert all(meaning for _name, meaning, _value in letters)
    assert {name for name, _meaning, value in letters if value} == {"E_c", "G_F", "f_ct"}


def test_the_working_names_the_same_numbers():
    given = {s.symbol: s.value for s in SLAB.solve().working if s.symbol in ("E", "f_t")}
    rows = {letter: value for letter, _meaning, value in unfolded(SLAB).view.letters}
    assert rows["E_c"] == shown(given["E"], "stress", "SI")
    assert rows["f_ct"] == shown(given["f_t"], "strength", "SI")


def test_powers_are_written_as_people_read_them():
    plain = " ".join(row["plain"] for row in unfolded(SLAB).view.steps)
    assert "^" in plain and "**" not in plain and "lamda" not in plain and "pi" not in plain
