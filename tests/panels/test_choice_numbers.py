"""The derivations about choosing bars have the numbers of the panel above them."""

import pytest

from crackkit.learning.bar_choice import fine_slab
from crackkit.panels.why import Why
from crackkit.structures.fields import fitted
from tests.panels import derivation

SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"])


def unfolded(key: str, system: str = "SI", **changes) -> Why:
    return derivation.unfolded(fitted(fine_slab(system), changes)[0], system, key=key)


def steps(why: Why) -> dict[str, dict]:
    return {row["plain"].split(" = ")[0]: row for row in why.view.steps}


@SYSTEMS
@pytest.mark.parametrize("action", ["bent", "pulled"])
def test_spacing_and_width_are_those_of_the_working(system, action):
    found = steps(unfolded("bar_spacing", system, action=action, stress=248.0))
    assert found["s_r"]["shown"] == found["w"]["shown"] == "✓ as shown above"
    assert found["l_b"]["result"] and found["r"]["result"].startswith("0.")


def test_every_letter_has_its_number_and_reads_as_people_write_it():
    letters = unfolded("bar_spacing").view.letters
    assert all(value for _letter, _meaning, value in letters)
    assert {"φ", "ρ", "τ_b", "σ_s", "β"} <= {letter for letter, _meaning, _value in letters}


def test_with_fibres_the_derivation_stays_without_numbers():
    why = unfolded("bar_spacing", fibres="steel_20")
    assert "fibres" in why.view.note and not any(row["result"] for row in why.view.steps)


def test_a_load_that_does_not_crack_gives_no_numbers():
    why = unfolded("bar_spacing", given="load", moment=1e6)
    assert "Nothing cracks" in why.view.note


def test_a_pull_below_that_of_the_first_crack_gives_no_numbers():
    why = unfolded("bar_spacing", action="pulled", rows="middle", stress=60.0)
    assert "hardly opens" in why.view.note


def test_the_years_are_those_of_the_panel_as_long_as_it_tells_them():
    found = steps(unfolded("rust_time", cover=15.0))
    assert found["T_c"]["shown"] == "✓ as shown above"
    long = unfolded("rust_time")
    assert not steps(long)["T_c"]["shown"] and "very long" in long.view.note


def test_rain_is_left_out_of_the_derivation():
    why = unfolded("rust_time", air="rained")
    assert "rain" in why.view.note and not why.view.letters[0][2]
    off = unfolded("rust_time", cover=20.0, slack=10.0)
    assert "as they should" in off.view.note
