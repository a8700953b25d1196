"""What is asked of every case that is shown on a page and printed."""

from crackkit.drawing.labels import faults
from crackkit.sandbox import report
from tests.sandbox.test_shown import parsed


def assert_shown_and_printed(case) -> None:
    """Every answer stands on a sound page with a picture, and on sheets without a fault."""
    page = parsed(case.html())
    assert (page.wrong, page.open) == ([], [])
    assert page.images
    for question, answer in case.answers:
        assert question in case.html()
        assert answer.split(",")[0] in case.html()
    made = report(case)
    assert made.title == case.structure.title
    assert "a licensed engineer decide" in made.html()
    assert [faults(sheet) for sheet in made.sheets()] == [[] for _sheet in made.sheets()]
