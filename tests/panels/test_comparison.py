"""A row of comparisons below a live panel: made from what stands there, and nothing is lost."""

from dataclasses import replace

import pytest

from crackkit.learning import ground
from crackkit.learning.comparison import Comparison as Asked
from crackkit.learning.comparison import Variant
from crackkit.learning.ground_comparisons import comparisons
from crackkit.learning.simple_beam import canteen_beam
from crackkit.panels.comparison import Comparison
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences
from crackkit.structures.slab_history import piece_history


@pytest.fixture
def panel():
    return Panel(ground.walled_slab(), choices=Preferences())


@pytest.fixture
def comparison(panel):
    return Comparison(panel, comparisons)


def send(comparison, name, value=None):
    comparison.view._handle_custom_msg({"name": name, "value": value}, [])


def names(comparison):
    return [row["name"] for row in comparison.view.page["rows"]]


def present(comparison):
    return [row["name"] for row in comparison.view.page["rows"] if row["present"]]


def row(comparison, place):
    return next(one for one in comparison.view.page["rows"] if one["place"] == place)


def test_at_first_only_the_choices_are_shown(comparison):
    assert [label for _key, label in comparison.view.choices] == [
        "Base",
        "Joints",
        "Bars",
        "Curing",
    ]
    assert comparison.view.page == {} and comparison.rows == ()


def test_one_click_shows_all_variants_and_a_second_one_closes_them(comparison):
    send(comparison, "choose", "joints")
    assert len(names(comparison)) == 3 and present(comparison) == ["no joints"]
    send(comparison, "choose", "joints")
    assert comparison.view.page == {} and comparison.view.chosen == ""


def test_the_bars_are_as_long_as_the_widths_and_the_limit_is_on_the_same_scale(comparison):
    send(comparison, "choose", "bars")
    limit = comparison.panel.outcome.verdict.limit.width
    for shown, made in zip(comparison.view.page["rows"], comparison.rows, strict=True):
        width = made.outcome.verdict.width
        assert shown["share"] / shown["limit"] == pytest.approx(width / limit)
        assert f"{width:.2f}" in shown["text"]


def test_numbers_that_differ_have_a_column_and_the_others_are_told_once(comparison):
    send(comparison, "choose", "bars")
    page = comparison.view.page
    assert page["head"]["told"] == ["cracks so far", "bars weigh"]
    made = comparison.rows[1].outcome
    assert row(comparison, 1)["told"][0] == str(len(made.ground.wild))
    assert f"first crack: {made.ground.first:.0f}" in page["foot"][0]
    assert "widest crack" not in page["foot"][0], "the bar shows it"


def test_a_click_on_a_variant_puts_it_into_the_panel(comparison, panel):
    send(comparison, "choose", "bars")
    send(comparison, "take", 1)
    assert (panel.structure.steel, panel.structure.spacing) == ("12", 100.0)
    assert present(comparison) == [row(comparison, 1)["name"]]
    assert row(comparison, 0)["helps"] == "makes it worse"


def test_what_stood_there_can_be_put_back_whatever_was_tried(comparison, panel):
    panel.apply({"curing": 5.0})
    stood = panel.structure
    for key, place in (("curing", 2), ("bars", 1), ("curing", 0), ("joints", 1)):
        if comparison.view.chosen != key:
            send(comparison, "choose", key)
        send(comparison, "take", place)
    assert comparison.view.can_put_back
    send(comparison, "put_back")
    assert panel.structure == stood
    assert not comparison.view.can_put_back


def test_putting_back_leaves_other_changes_alone(comparison, panel):
    send(comparison, "choose", "bars")
    send(comparison, "take", 1)
    panel.apply({"thickness": 200.0})
    send(comparison, "put_back")
    assert panel.structure == replace(ground.walled_slab(), thickness=200.0)


def test_once_the_panel_starts_over_there_is_nothing_to_put_back(comparison, panel):
    send(comparison, "choose", "bars")
    send(comparison, "take", 1)
    panel._on_act("reset", None)
    send(comparison, "again", True)
    assert not comparison.view.can_put_back
    assert present(comparison) == ["no bars"]


def test_a_change_above_is_only_counted_until_the_page_asks(comparison, panel):
    send(comparison, "choose", "curing")
    before, said = comparison.view.page, comparison.view.said
    panel.apply({"thickness": 220.0})
    assert comparison.view.page is before
    assert comparison.view.changed == comparison.view.shown + 1
    send(comparison, "again", True)
    assert comparison.view.changed == comparison.view.shown
    assert comparison.view.page != before
    assert all(made.outcome.structure.thickness == 220.0 for made in comparison.rows)
    assert comparison.view.said == said, "no voice at each step of a slider"


def test_while_a_slider_moves_a_round_that_takes_long_is_given_up(comparison, panel, monkeypatch):
    send(comparison, "choose", "curing")
    panel.apply({"thickness": 220.0})
    before = comparison.view.page
    monkeypatch.setattr("crackkit.panels.comparison.HURRY", 0.0)
    send(comparison, "again", False)
    assert comparison.view.late == 1 and comparison.view.page is before
    assert comparison.view.changed != comparison.view.shown, "it is still to be done"
    send(comparison, "again", True)
    assert comparison.view.late == 1 and comparison.view.changed == comparison.view.shown


def test_while_only_the_age_moves_no_history_is_worked_out_anew(comparison, panel, monkeypatch):
    monkeypatch.setattr("crackkit.panels.comparison.HURRY", 60.0)  # however slow the machine
    send(comparison, "choose", "curing")
    panel.apply({"age": 800.0})
    kept = piece_history.cache_info().misses
    send(comparison, "again", False)
    assert comparison.view.changed == comparison.view.shown
    assert piece_history.cache_info().misses == kept


def test_while_nothing_is_compared_a_change_above_costs_nothing(comparison, panel):
    panel.apply({"thickness": 220.0})
    assert comparison.view.changed == 0


def test_what_cannot_be_built_is_told_in_place(comparison, panel):
    panel.apply({"length": 4000.0})
    send(comparison, "choose", "joints")
    assert "4.5" in row(comparison, 1)["error"] and "4.0" in row(comparison, 1)["error"]
    assert panel.view.error == "" and present(comparison) == ["no joints"]


def test_a_variant_that_is_refused_leaves_the_panel_as_it_is(comparison, panel):
    panel.apply({"length": 4000.0})
    stood = panel.structure
    send(comparison, "choose", "joints")
    send(comparison, "take", 1)
    assert panel.structure == stood and panel.view.error
    assert not comparison.view.can_put_back


def test_in_other_units_the_variants_are_round_in_them(comparison, panel):
    send(comparison, "choose", "joints")
    panel.preferences.system = "US"
    assert any("15.0" in name and "ft" in name for name in names(comparison))
    assert "in" in comparison.view.page["head"]["bar"]
    assert comparison.view.units == "US"


def test_what_is_no_variant_is_shown_first(comparison, panel):
    panel.apply({"curing": 12.0})
    send(comparison, "choose", "curing")
    assert names(comparison)[0] == "what you have now" == present(comparison)[0]
    assert comparison.view.page["rows"][0]["place"] == -1


def test_where_nothing_has_cracked_the_pull_is_shown(panel):
    panel.apply({"left": 0.0, "right": 0.0})
    comparison = Comparison(panel, comparisons)
    send(comparison, "choose", "base")
    assert "pull" in comparison.view.page["head"]["bar"]
    assert all(one["text"].endswith("%") for one in comparison.view.page["rows"])


def test_a_bent_member_can_be_compared_too():
    asked = Asked(
        "bars",
        "Bars",
        tuple(Variant(f"{n} bars", {"bottom.number": n}) for n in (0, 2, 5)),
    )
    panel = Panel(canteen_beam(), choices=Preferences())
    panel.apply({"loads.0.force": 90e3})
    comparison = Comparison(panel, (asked,))
    send(comparison, "choose", "bars")
    none, few, many = (row(comparison, place) for place in range(3))
    assert (none["share"], none["text"], none["kind"]) == (1.0, "", "bad")
    assert many["share"] < few["share"]
    assert comparison.view.page["head"]["told"] == ["cracks", "bars weigh"]


def test_all_is_said_in_words_for_those_who_cannot_see_it(comparison):
    send(comparison, "choose", "bars")
    said, width = comparison.view.said, comparison.panel.outcome.verdict.width
    assert f"no bars, as it stands: {width:.2f}" in said and "too wide" in said
    assert all(name in said for name in names(comparison))
    assert said in comparison.view.in_words()
    assert "Bars" in comparison.view.still()


def test_an_error_is_shown_in_place_and_raised(comparison):
    with pytest.raises(KeyError):
        comparison.choose("nothing like it")
    assert "nothing like it" in comparison.view.error
