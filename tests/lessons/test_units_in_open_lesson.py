"""Everything in an open lesson follows when the reader changes units, wherever he is in it."""

from dataclasses import replace
from random import Random

import pytest

from crackkit.launch.places import LESSONS
from crackkit.learning import simple_beam
from crackkit.learning.progress import progress
from crackkit.learning.walk import Walk
from crackkit.panels import preferences as shared
from crackkit.panels import quiz
from crackkit.panels.asking import Asking
from crackkit.panels.panel import Panel
from crackkit.panels.preferences import Preferences
from crackkit.panels.published_table import PublishedTable
from tests.lessons.foreign_units import THIN, left
from tests.lessons.open_lesson import opened, texts, uses

lessons = sorted(LESSONS.glob("0[1-8]*.ipynb"))
# Words of the structures that stand as they are: they speak of no slab in particular.
FIXED = {"BeamView.topics.rows.help": ["0.5 ‰", "1 ‰"]}


@pytest.fixture
def choices(tmp_path, monkeypatch) -> Preferences:
    """Units of a reader who has chosen nothing yet, shared as in a kernel."""
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    monkeypatch.setattr(shared, "_shared", [])
    monkeypatch.setattr(quiz, "Random", lambda _seed: Random(11))  # the same questions each time
    return shared.preferences()


def stays(thing, choices: Preferences) -> list[tuple[str, str, list[str]]]:
    """Use a thing; list what stays in SI units, after which step, though US ones are chosen."""
    found = []
    for done in uses(thing):
        choices.system = "US"
        quantities = [(where, _counted(where, left(text, "US"))) for where, text in texts(thing)]
        found += [(done, where, those) for where, those in quantities if those]
        choices.system = "SI"
    return found


def _counted(where: str, quantities: list[str]) -> list[str]:
    if where == "BeamView.more":  # a working puts numbers in as N, mm, MPa, and its words name them
        return [one for one in quantities if THIN in one]
    return [one for one in quantities if one not in FIXED.get(where, ())]


@pytest.mark.lesson
@pytest.mark.parametrize("lesson", lessons, ids=lambda lesson: lesson.stem)
def test_every_text_of_an_open_lesson_follows_the_units(lesson, choices):
    things = opened(lesson)
    still = [thing for thing in things if not hasattr(thing, "view")]
    # printed values stand in the units of their sources; nothing else may be unable to follow
    assert all(isinstance(thing, PublishedTable) for thing in still)
    moving = [thing for thing in things if hasattr(thing, "view")]
    assert len(moving) >= 8
    assert [one for thing in moving for one in stays(thing, choices)] == []


def test_a_walk_that_stays_in_the_old_units_is_found(choices):
    def stubborn(_system):
        first, *rest = simple_beam.walk("SI")
        return (replace(first, text=f"Bend it down by 12{THIN}mm."), *rest)

    panel = Panel(simple_beam.canteen_beam("SI"), walk=Walk(stubborn, "SI"))
    found = stays(panel, choices)
    assert found and all(those == [f"12{THIN}mm"] for _done, _where, those in found)


def test_no_answer_is_lost_or_marked_anew_by_a_change_of_units(choices):
    for asking in [one for one in opened(lessons[0]) if isinstance(one, Asking)]:
        asking.act("answer", {"choice": 1})
        before = (asking.view.chosen, asking.view.good, asking.view.headline, asking.view.tally)
        kept = progress().attempts(asking.lesson, asking.item)
        choices.system = "US"
        after = (asking.view.chosen, asking.view.good, asking.view.headline, asking.view.tally)
        assert after == before and progress().attempts(asking.lesson, asking.item) == kept
        choices.system = "SI"
