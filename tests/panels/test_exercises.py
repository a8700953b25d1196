"""Predictions, questions and tasks: nothing is told before the learner has committed."""

import pytest

from crackkit.learning.beam_task import wash_bay
from crackkit.learning.progress import progress
from crackkit.learning.questions import OF_LESSON
from crackkit.learning.simple_beam import canteen_beam, canteen_beam_with_ends
from crackkit.panels.predict import Predict
from crackkit.panels.preferences import Preferences
from crackkit.panels.quiz import Quiz
from crackkit.panels.task import Task

BOTTOM = {"bottom": list(range(24)), "top": []}
LESSON = "02_simple_beam"


def say(exercise, name, **message):
    exercise._on_message(exercise.view, {"kind": "act", "name": name} | message, [])


def predict(ask="stretch", beam=None, **named) -> Predict:
    return Predict(beam or canteen_beam(), ask, LESSON, choices=Preferences(), **named)


def hidden(view) -> bool:
    """Tell whether nothing sent to the page gives the answer away."""
    told = view.headline or view.remarks or any(view.kinds.values())
    return not told and "image" not in view.svg


@pytest.mark.parametrize("ask", ["stretch", "cracks", "bar"])
def test_the_answer_is_not_on_the_page_before_the_call(ask):
    exercise = predict(ask)
    assert hidden(exercise.view)
    exercise.preferences.system = "US"
    exercise.view.room = 600
    assert hidden(exercise.view)


def test_a_call_shows_the_answer_on_the_drawing_with_reasons():
    exercise = predict()
    say(exercise, "call", painted=BOTTOM)
    assert exercise.view.good and exercise.view.headline
    assert "image" in exercise.view.svg  # the map of stress
    assert exercise.view.kinds["bottom"].count("right") >= 20
    assert set(exercise.view.kinds["top"]) == {""}
    assert "smile" in exercise.view.remarks[0][3]


def test_a_wrong_call_is_recorded_and_can_be_tried_again():
    exercise = predict()
    say(exercise, "call", painted={"top": [5, 6, 7], "bottom": []})
    assert not exercise.view.good
    assert set(exercise.view.kinds["top"][5:8]) == {"wrong"}
    assert "missed" in exercise.view.kinds["bottom"]
    say(exercise, "again")
    assert hidden(exercise.view) and exercise.view.painted == {"top": [], "bottom": []}
    say(exercise, "call", painted=BOTTOM)
    tried = progress().attempts(LESSON, "stretch")
    assert [attempt.right for attempt in tried] == [False, True]
    assert tried[0].answer == {"top": [5, 6, 7], "bottom": []}
    assert "2" in exercise.view.tally and "100" in exercise.view.tally


def test_a_second_call_without_a_new_try_counts_once():
    exercise = predict()
    say(exercise, "call", painted={"top": [1]})
    say(exercise, "call", painted=BOTTOM)
    assert len(progress().attempts(LESSON, "stretch")) == 1
    assert exercise.view.painted == {"top": [1], "bottom": []}


def test_cells_that_do_not_exist_are_dropped():
    exercise = predict()
    say(exercise, "call", painted={"bottom": [-1, 3, 24, 99], "side": [1]})
    assert exercise.view.painted == {"top": [], "bottom": [3]}


def test_marks_of_cracks_are_judged_where_they_stand():
    exercise = predict("cracks", canteen_beam_with_ends())
    say(exercise, "call", painted={"top": [4], "bottom": [12]})
    assert exercise.view.kinds["top"][4] == "right" and exercise.view.kinds["bottom"][12] == "wrong"


def test_remarks_follow_the_readers_units():
    exercise = predict("cracks")
    say(exercise, "call", painted={"bottom": [12]})
    assert "\u202fm" in exercise.view.remarks[0][2]
    exercise.preferences.system = "US"
    assert "\u202fft" in exercise.view.remarks[0][2]


def test_the_same_reason_for_two_places_is_said_once():
    exercise = predict()
    say(exercise, "call", painted={"bottom": list(range(4, 20))})
    missed = [remark for remark in exercise.view.remarks if remark[0] == "missed"]
    assert len(missed) == 1 and ";" in missed[0][2]


@pytest.mark.parametrize(("chosen", "right"), [("bottom", True), ("top", False), ("middle", False)])
def test_the_place_of_the_bars_is_judged(chosen, right):
    exercise = predict("bar")
    say(exercise, "call", chosen=chosen)
    assert exercise.view.good is right
    assert progress().attempts(LESSON, "bar")[0].answer == chosen


def test_no_place_chosen_is_no_call():
    exercise = predict("bar")
    say(exercise, "call", chosen="sideways")
    assert hidden(exercise.view) and not progress().attempts(LESSON, "bar")


def test_two_predictions_of_a_lesson_keep_apart():
    predict("stretch")
    exercise = predict("stretch", item="ends")
    say(exercise, "call", painted=BOTTOM)
    assert progress().attempts(LESSON, "ends") and not progress().attempts(LESSON, "stretch")


def test_an_item_may_say_what_is_asked():
    assert Predict(canteen_beam(), lesson=LESSON, item="cracks").view.ask == "cracks"
    with pytest.raises(ValueError, match="stretch, cracks, bar"):
        Predict(canteen_beam(), "colour", LESSON)


def test_the_theme_repaints_a_prediction_live():
    exercise = predict()
    before = exercise.view.svg
    exercise.preferences.theme = "dark"
    assert exercise.view.shown_theme == "dark" and exercise.view.svg != before


def test_a_fault_is_told_in_place_and_goes_on():
    exercise = predict()
    with pytest.raises(TypeError):
        say(exercise, "call", painted={"bottom": [None]})
    assert "Something went wrong" in exercise.view.error
    say(exercise, "again")
    assert not exercise.view.error


def quiz(**named) -> Quiz:
    return Quiz(LESSON, choices=Preferences(), seed=3, **named)


def number_of(exercise, right: bool) -> int:
    return next(k for k, c in enumerate(exercise.question.choices) if c.right is right)


def test_a_question_does_not_tell_which_choice_is_right():
    exercise = quiz()
    assert len(exercise.view.options) >= 3 and not exercise.view.told
    assert exercise.view.chosen == -1 and not exercise.view.headline


def test_a_wrong_answer_names_the_belief_and_tells_why_and_what_is_right():
    exercise = quiz()
    number = number_of(exercise, right=False)
    say(exercise, "answer", choice=number)
    chosen = exercise.question.choices[number]
    assert chosen.misconception in exercise.view.headline and not exercise.view.good
    assert exercise.view.told[number] == [False, chosen.why]
    assert [True, exercise.question.right.why] in exercise.view.told
    (attempt,) = progress().attempts(LESSON)
    assert attempt.item == f"quiz/{exercise.question.key}" and not attempt.right
    assert attempt.answer["misconception"] == chosen.misconception


def test_only_the_first_answer_to_a_question_counts():
    exercise = quiz()
    say(exercise, "answer", choice=number_of(exercise, right=False))
    say(exercise, "answer", choice=number_of(exercise, right=True))
    assert (exercise.right, exercise.asked) == (0, 1)


def test_every_question_comes_once_before_any_comes_again():
    exercise, keys = quiz(), []
    for _question in OF_LESSON[LESSON]:
        keys.append(exercise.question.key)
        say(exercise, "answer", choice=number_of(exercise, right=True))
        say(exercise, "another")
    assert sorted(keys) == sorted(OF_LESSON[LESSON])
    assert exercise.view.tally.startswith(f"{len(keys)} of {len(keys)}")


def test_another_one_must_be_earned_by_an_answer():
    exercise = quiz()
    before = exercise.view.task
    say(exercise, "another")
    assert exercise.view.task == before


def test_a_question_follows_the_units_and_an_answered_one_keeps_its_answer():
    exercise = quiz(keys=("load_moved",))
    exercise.preferences.system = "US"
    assert "kip" in exercise.view.task and exercise.question.key == "load_moved"
    say(exercise, "answer", choice=number_of(exercise, right=True))
    asked, told, chosen = exercise.view.task, exercise.view.told, exercise.view.chosen
    exercise.preferences.system = "SI"
    assert "kN" in exercise.view.task and "kip" not in exercise.view.task + exercise.view.svg
    assert (exercise.view.chosen, exercise.view.good) == (chosen, True)
    assert [right for right, _why in exercise.view.told] == [right for right, _why in told]
    exercise.preferences.system = "US"
    assert exercise.view.task == asked


def test_a_quiz_of_unknown_questions_is_refused():
    with pytest.raises(ValueError, match="first_crack"):
        Quiz(LESSON, keys=("tea",))


def test_without_a_kernel_the_question_can_still_be_read():
    exercise = quiz()
    data = exercise.view.still()
    assert exercise.question.text.split()[0] in data and "<img" in data


def task() -> Task:
    return Task(wash_bay, LESSON, choices=Preferences())


def test_the_beam_as_found_does_not_pass_and_is_told_why():
    exercise = task()
    assert not exercise.view.checks
    assert exercise.check() is False
    assert [row[1] for row in exercise.view.checks if not row[0]] == ["Crack width"]
    assert "One thing" in exercise.view.headline


def test_a_good_beam_passes_and_is_kept_as_the_best():
    exercise = task()
    exercise.panel.apply({"bottom.size": "16", "bottom.number": 6})
    assert exercise.check() is True and exercise.view.good
    assert all(row[0] for row in exercise.view.checks)
    assert "73.9" in exercise.view.tally
    best = progress().best(LESSON, "wash_bay")
    assert best.right and best.answer["bottom.number"] == 6
    exercise.panel.apply({"bottom.size": "20", "bottom.number": 5})
    assert exercise.check() is False
    assert "73.9" in exercise.view.tally


def test_the_budget_follows_the_beam_and_an_old_check_is_marked():
    exercise = task()
    exercise.check()
    exercise.panel.apply({"bottom.size": "32", "bottom.number": 5})
    assert exercise.view.budget["over"] and exercise.view.budget["share"] == 1.0
    assert exercise.view.stale
    exercise.check()
    assert not exercise.view.stale


def test_only_what_is_free_can_be_changed():
    exercise = task()
    rows = [row["path"] for topic in exercise.panel.view.topics for row in topic["rows"]]
    assert sorted(rows) == sorted(exercise.job.free)
    assert "ck-handle" not in exercise.panel.view.svg


def test_a_task_starts_in_the_readers_units():
    choices = Preferences()
    choices.system = "US"
    exercise = Task(wash_bay, LESSON, choices=choices)
    assert exercise.panel.structure.bottom.size == "#8"
    assert any("lb" in goal for goal in exercise.view.goals)


def test_task_and_panel_are_shown_together():
    exercise = task()
    assert exercise.box.children == (exercise.view, exercise.panel.view)
    assert "application/vnd.jupyter.widget-view+json" in str(exercise._repr_mimebundle_())
