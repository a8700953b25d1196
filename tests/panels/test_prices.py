"""A price that is put right is felt at once by the bill, by the budget, and by the next kernel."""

import pytest

from crackkit.learning.beam_task import wash_bay
from crackkit.learning.ground_task import store_floor
from crackkit.learning.prices import UNIT_PRICES, USUAL, kept_prices
from crackkit.learning.progress import Progress, progress
from crackkit.panels.preferences import Preferences
from crackkit.panels.price_book import PriceBook
from crackkit.panels.prices import Prices
from crackkit.panels.task import Task

LESSON = "06_ground_slab"
FREE = {"left": 0.0, "right": 0.0, "steel": "none", "jointed": True, "joint_every": 5000.0}


@pytest.fixture
def task():
    return Task(store_floor, LESSON, choices=Preferences(), book=PriceBook())


@pytest.fixture
def prices(task):
    return Prices(task, choices=task.preferences)


def say(prices, name, **message):
    prices._on_message(prices.view, {"kind": "act", "name": name} | message, [])


def row(prices, key):
    return next(each for each in prices.view.rows if each["key"] == key)


def typed(prices, key, text):
    say(prices, "price", key=key, text=text)


def test_every_price_has_a_line_and_the_bill_adds_up(prices, task):
    assert [each["key"] for each in prices.view.rows] == [each.key for each in UNIT_PRICES]
    sums = [each["sum"] for each in prices.view.rows if each["sum"]]
    assert abs(sum(map(float, sums)) - float(prices.view.total)) <= len(sums) / 2
    assert prices.view.total in task.view.budget["text"]


def test_a_new_price_is_felt_at_once_by_bill_and_task(prices, task):
    before = task.view.budget["text"]
    typed(prices, "concrete", "280")
    assert row(prices, "concrete")["own"] and row(prices, "concrete")["price"] == "280"
    assert task.view.budget["text"] != before and prices.view.total in task.view.budget["text"]
    assert any(task.job.budget.shown(task.job.budget.most()) in goal for goal in task.view.goals)


def test_a_check_that_stands_there_follows_the_prices(prices, task):
    task.panel.apply(FREE)
    assert task.check()
    typed(prices, "strip", "5000")
    told = next(text for _ok, name, *_more, text in task.view.checks if name == "Costs")
    assert not task.view.good and "too dear" in told
    say(prices, "reset")
    assert task.view.good


def test_the_bill_follows_the_floor(prices, task):
    assert row(prices, "strip")["sum"] == "" and row(prices, "bars")["sum"]
    task.panel.apply(FREE)
    assert row(prices, "strip")["amount"] == "12.0" and row(prices, "bars")["sum"] == ""


def test_prices_and_amounts_follow_the_units_the_money_does_not(prices):
    total = prices.view.total
    assert row(prices, "bars")["unit"] == "kg"
    prices.preferences.system = "US"
    assert row(prices, "bars")["unit"] == "lb" and row(prices, "bars")["price"] == "0.998"
    assert prices.view.total == total


@pytest.mark.parametrize("text", ["dear", "", "-2", "1e12"])
def test_a_price_that_cannot_be_is_explained_in_place_and_changes_nothing(prices, text):
    before = prices.view.rows
    typed(prices, "bars", text)
    assert prices.view.error.startswith("Bars, placed on chairs") and prices.view.refused == 1
    assert prices.view.rows == before and prices.book.prices == USUAL
    typed(prices, "bars", "2.5")
    assert not prices.view.error and row(prices, "bars")["price"] == "2.50"


def test_prices_are_remembered_and_the_usual_ones_come_back(prices):
    typed(prices, "bars", "3")
    assert PriceBook().prices.of("bars") == 3.0
    say(prices, "reset")
    assert PriceBook().prices == USUAL and not row(prices, "bars")["own"]


def test_prices_changed_on_another_page_are_taken_when_this_one_comes_back(prices, task):
    Progress(progress().path).set_setting("prices", {"bars": 4.0})
    assert row(prices, "bars")["price"] == "2.20"
    prices.view.looks += 1
    assert row(prices, "bars")["price"] == "4.00"
    assert prices.view.total in task.view.budget["text"]


def test_what_is_taken_from_the_record_is_not_written_back(prices, monkeypatch):
    Progress(progress().path).set_setting("prices", {"bars": 4.0})
    monkeypatch.setattr(Progress, "set_setting", lambda *_: pytest.fail("the record was written"))
    prices.book.look_again()
    assert prices.book.prices.of("bars") == 4.0


def test_a_damaged_record_gives_the_usual_prices():
    progress().path.parent.mkdir(exist_ok=True)
    progress().path.write_text("{ half a rec")
    book = PriceBook()
    assert book.prices == USUAL
    book.prices = USUAL.changed("saw", 5.0)
    assert kept_prices(Progress(progress().path)).of("saw") == 5.0
    assert list(progress().path.parent.glob("progress-unreadable-*.json"))


def test_the_cheapest_good_answer_is_kept(task):
    task.panel.apply(FREE)
    assert task.check()
    cheap = progress().best(LESSON, "store_floor").answer["money"]
    assert task.job.budget.shown(cheap) in task.view.tally
    task.panel.apply({"base": "two_sheets"})
    assert task.check()
    assert progress().best(LESSON, "store_floor").answer["money"] == cheap
    assert task.job.budget.shown(cheap) in task.view.tally


def test_an_answer_from_when_bars_were_weighed_is_still_told(task):
    progress().record(LESSON, "store_floor", {"steel_mass": 120.0}, True, 1.9)
    task.show()
    assert task.view.tally == "Best so far: everything reached."


def test_the_buttons_speak_of_a_floor_and_not_of_bars(task):
    assert task.view.words["check"] == "Check my floor"
    assert (
        Task(wash_bay, "02_simple_beam", choices=Preferences()).view.words["check"].endswith("bars")
    )


def test_without_a_paid_task_there_is_a_list_but_no_bill():
    beam = Task(wash_bay, "02_simple_beam", choices=Preferences())
    for alone in (Prices(beam, beam.preferences, PriceBook()), Prices(book=PriceBook())):
        assert alone.view.total == "" and not any(each["sum"] for each in alone.view.rows)


def test_without_a_kernel_the_prices_can_still_be_read(prices):
    assert "<details>" in prices.view.still() and "for each kg" in prices.view.in_words()
    assert "Indicative, common practice" in prices.view.still()
