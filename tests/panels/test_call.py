"""A call with choices: commit first, then the picture answers."""

import re

from crackkit.learning.choices import Question, right, wrong
from crackkit.learning.progress import progress
from crackkit.learning.telling import shown
from crackkit.panels.call import Call
from crackkit.panels.preferences import Preferences
from crackkit.structures.simple_beam import SimpleBeam


def asked(system: str) -> Question:
    choices = (
        right("bottom", "It sags."),
        wrong("top", "loads press cracks open", "The top is squeezed."),
    )
    far = {"SI": 6000.0, "US": 20 * 304.8}[system]
    text = f"Which face cracks? It spans {shown(far, 'length', system)}."
    return Question("sag", text, choices, SimpleBeam(), SimpleBeam())


def call():
    return Call(asked, "01_pull", "sag", choices=Preferences())


def answer(one: Call, number: int):
    one._on_message(one.view, {"kind": "act", "name": "answer", "choice": number}, [])


def test_nothing_is_shown_before_the_choice():
    one = call()
    assert one.view.told == [] and one.view.chosen == -1
    assert "kN·m" not in one.view.svg


def test_the_picture_answers_and_every_attempt_is_kept():
    one = call()
    before = one.view.svg
    answer(one, 1)
    assert one.view.svg != before and "kN·m" in one.view.svg
    assert not one.view.good and "loads press cracks open" in one.view.headline
    assert one.view.told == [[True, "It sags."], [False, "The top is squeezed."]]
    (attempt,) = progress().attempts("01_pull", "sag")
    assert (attempt.answer, attempt.right) == ("top", False)


def test_a_choice_is_final_until_one_calls_again():
    one = call()
    answer(one, 1)
    answer(one, 0)
    assert one.view.chosen == 1
    one._on_message(one.view, {"kind": "act", "name": "another"}, [])
    assert one.view.chosen == -1
    answer(one, 0)
    assert one.view.good
    assert "2" in one.view.tally


def test_units_follow_the_reader_and_after_the_choice_the_member_stays():
    one = call()
    one.preferences.system = "US"
    assert one.view.task.endswith("20.0\u202fft.")
    answer(one, 0)
    one.preferences.system = "SI"
    assert one.view.task.endswith("6.10\u202fm.")  # not the beam of 6 m that was never asked about
    assert one.view.chosen == 0 and "kip" not in one.view.svg + one.view.alt


def test_on_the_projector_the_words_of_the_picture_are_larger():
    preferred = Preferences()
    one = Call(asked, "01_pull", "sag", choices=preferred)
    one.view.room = 1080
    paper = paper_width(one)
    preferred.theme = "projector"
    assert paper_width(one) < 0.8 * paper


def paper_width(one: Call) -> float:
    """Width of the drawing's paper: shown as wide as before, a narrower one has larger words."""
    return float(re.search(r'viewBox="0 0 ([\d.]+)', one.view.svg)[1])
