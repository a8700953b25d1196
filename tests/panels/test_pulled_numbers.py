"""Why cracks keep their distance: the numbers are those of the pulled member above."""

from dataclasses import replace
from functools import partial

import pytest

from crackkit.learning.pulled import DRIED, FULL, bare_hanger, hanger, thin_hanger
from crackkit.panels.pulled_numbers import transfer_numbers
from tests.panels import derivation

unfolded = partial(derivation.unfolded, key="transfer_length")


def members():
    for system in ("SI", "US"):
        thick, thin = replace(hanger(system), pull=FULL[system]), thin_hanger(system)
        yield f"{system}-thick", thick, system
        yield f"{system}-thin", thin, system
        yield f"{system}-plain", replace(thin, surface="plain"), system
        yield f"{system}-high-in-the-pour", replace(thin, bond="other"), system
        yield f"{system}-lasting", replace(thin, duration="lasting"), system


EACH = pytest.mark.parametrize(
    ("tie", "system"), [pytest.param(tie, system, id=name) for name, tie, system in members()]
)


@EACH
def test_the_transfer_length_is_the_one_of_the_working(tie, system):
    """From the slip along the bar to its grip, from the grip to the length it came from."""
    outcome = tie.solve()
    shown = next(step.value for step in outcome.working if step.symbol == "l_t")
    assert transfer_numbers(outcome)[1]["l_t"] == pytest.approx(shown)
    rows = {row["plain"].split(" = ")[0]: row["shown"] for row in unfolded(tie, system).view.steps}
    assert rows["l_t"] == "✓ as shown above"


@EACH
def test_no_crack_of_the_panel_is_wider_than_what_is_derived(tie, system):
    row = unfolded(tie, system).view.steps[-1]
    derived, shown = (float(text.split()[-2]) for text in (row["result"], row["shown"]))
    assert 0 < shown < derived


def test_without_a_crack_or_a_bar_or_a_growing_pull_there_are_no_numbers():
    thin = thin_hanger()
    for tie, word in (
        (hanger(), "pull harder"),
        (bare_hanger(), "no bar"),
        (replace(bare_hanger(), pull=80e3), "no bar"),
        (replace(thin, pull=0.0, before=thin.pull), "let go"),
    ):
        why = unfolded(tie)
        assert word in why.view.note
        assert not any(step["result"] for step in why.view.steps)


def test_it_says_in_what_the_panel_goes_further():
    assert "grows" in unfolded(thin_hanger()).view.note
    assert "shrinkage" in unfolded(replace(thin_hanger(), shrinkage=DRIED)).view.note
