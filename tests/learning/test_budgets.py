"""What must hold for every task that is paid for in money."""

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.learning import curling_task, ground_task
from crackkit.learning.prices import UNIT_PRICES, USUAL

TASKS = {
    "boat store": (ground_task.store_floor, ground_task.offer),
    "canteen": (curling_task.canteen_floor, curling_task.offer),
}
PRICES = st.dictionaries(st.sampled_from([each.key for each in UNIT_PRICES]), st.floats(0.0, 100.0))
EVERY = pytest.mark.parametrize(
    ("name", "system"), [(name, system) for name in TASKS for system in ("SI", "US")]
)


@cache
def asked(name: str, system: str):
    """The task, and the floor that somebody else offers."""
    job, offer = TASKS[name]
    return job(system), offer(system)


@EVERY
def test_the_offer_reaches_everything_and_so_there_is_an_answer(name, system):
    job, floor = asked(name, system)
    assert all(check.ok for check in job.assess(floor, floor.solve(), system))


@EVERY
@given(PRICES)
@settings(max_examples=30)
def test_whatever_the_prices_are_the_offer_is_within_the_budget(name, system, own):
    job, floor = asked(name, system)
    prices = USUAL
    for key, value in own.items():
        prices = prices.changed(key, value)
    budget = job.at_prices(prices).budget
    spent, most = budget.spent(floor), budget.most()
    assert spent <= most <= 1.1 * spent + 1.0
