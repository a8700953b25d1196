"""Why the ends lift off: the numbers are those of the slab above."""

from dataclasses import replace
from functools import partial

import pytest

from crackkit.structures.curled_slab import CurledSlab
from tests.panels import derivation

SLAB = CurledSlab(age=90.0)
unfolded = partial(derivation.unfolded, key="lift_off")


@pytest.mark.parametrize("system", ["SI", "US"])
def test_the_rise_stands_beside_that_of_the_corner_above(system):
    steps = {row["plain"].split(" = ")[0]: row for row in unfolded(SLAB, system).view.steps[:6]}
    assert steps["y_0"]["numbers"] and steps["y_0"]["shown"].startswith("shown above: ")
    assert steps["L_a"]["result"] and not steps["L_a"]["shown"]


def test_the_difference_is_that_of_the_working():
    rows = {letter: value for letter, _meaning, value in unfolded(SLAB).view.letters}
    worked = next(s.value for s in SLAB.solve().working if s.symbol == "d_eps")
    assert rows["ε_d"] == f"{1000 * worked:.2f}\u202f‰"
    assert rows["h"] == "150\u202fmm" and rows["w"] == "3.8\u202fkPa"  # 25 kN/m3, EN 1991-1-1


def test_every_letter_has_its_meaning():
    letters = unfolded(SLAB).view.letters
    assert {name for name, *_rest in letters} == {"h", "ε_d", "E_c", "w", "γ", "κ_0", "x"}
    assert all(meaning for _name, meaning, _value in letters)


def test_a_slab_that_has_not_begun_to_dry_says_so():
    why = unfolded(replace(SLAB, age=3.0))
    assert "nothing lifts" in why.view.note
    assert not any(row["result"] for row in why.view.steps)


def test_the_sun_is_said_to_be_left_out():
    assert "the sun" in unfolded(replace(SLAB, warmer=8.0)).view.note
    assert "the sun" not in unfolded(SLAB).view.note


def test_the_rise_derived_is_near_to_that_of_a_long_slab_on_hard_ground():
    """One edge of it, far from the corners, is such a strip; creep and both ways come on top."""
    slab = replace(SLAB, length=8000.0, width=8000.0, ground=0.2)
    row = next(r for r in unfolded(slab).view.steps if r["plain"].startswith("y_0"))
    strip = float(row["result"].split("\u202f")[0])
    edge = float(slab.curled.lift[24, 0])
    assert 0.4 * strip < edge < 1.3 * strip
