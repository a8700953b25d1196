"""Which way a crack has to move, against what is left over once it has moved a little."""

import numpy as np
import pytest

from crackkit.mechanics.cohesive_law import CohesiveLaw
from crackkit.mechanics.crack_equation import left_over
from crackkit.mechanics.crack_growth import at_load
from tests.mechanics.test_bars_across_crack import diagonal, floor

LAW, LOAD = CohesiveLaw(2.9, 0.12, "bilinear"), 120e-6


@pytest.fixture(scope="module")
def crack():
    return floor().crack(LAW, [diagonal(60.0), diagonal(160.0)])


def places(crack):
    """Some places off balance [mm]: on the way to a rest, pushed aside, and wide open."""
    rest = at_load(crack, LOAD)
    aside = 1e-3 * np.random.default_rng(3).random(len(rest.q))
    return [0.7 * rest.q, rest.q + aside, rest.q + 0.05], np.zeros(crack.count)


def test_the_stiffness_is_the_compliance_inverted(crack):
    assert crack.stiffness @ crack.compliance == pytest.approx(np.eye(len(crack.compliance)))


def test_a_little_of_a_move_takes_as_little_off_what_is_left_over(crack):
    starts, greatest = places(crack)
    for q in starts:
        left, answer = left_over(crack, q, LOAD, greatest)
        move = answer.move(-left)
        share = 1e-5
        after, _answer = left_over(crack, q + share * move, LOAD, greatest)
        size = abs(left).max()
        assert (after - left) / share == pytest.approx(-left, rel=2e-3, abs=2e-3 * size)


def test_moves_for_several_loads_are_those_for_each(crack):
    left, answer = left_over(crack, places(crack)[0][0], LOAD, np.zeros(crack.count))
    both = answer.move(np.stack([-left, crack.responses[1]], axis=1))
    assert both[:, 0] == pytest.approx(answer.move(-left), rel=1e-12, abs=1e-18)
    assert both[:, 1] == pytest.approx(answer.move(crack.responses[1]), rel=1e-12, abs=1e-18)


def test_who_answers_more_stiffly_moves_less_far_open(crack):
    left, answer = left_over(crack, places(crack)[0][0], LOAD, np.zeros(crack.count))
    assert answer.stiffer(1.0).move(-left) == pytest.approx(answer.move(-left), rel=1e-9)
    opened = [crack.mean_row @ answer.stiffer(share).move(-left) for share in (0.0, 0.5, 0.9)]
    assert 0.0 < opened[0] < opened[1] < opened[2]


def test_moves_by_secants_go_downhill(crack):
    starts, greatest = places(crack)
    for q in starts:
        left, answer = left_over(crack, q, LOAD, greatest)
        assert (crack.stiffness @ left) @ answer.stiffer(0.0).move(-left) < 0.0
