"""What a notebook shows of an answer: picture with words, four answers, cautions, working."""

import base64
import re
from html.parser import HTMLParser
from xml.etree import ElementTree

import pytest

from crackkit.drawing.labels import faults
from crackkit.sandbox import Cantilever, ContinuousBeam, SimpleBeam, compare, report, sweep
from crackkit.sandbox.working import Row, table

GATE = {
    "span": "18 ft",
    "overhang_left": "6 ft",
    "bars": "3 #6",
    "top_bars": "4 #6",
    "dead": "0.8 kip/ft",
    "point_load": "9 kip at 0.5 ft, 12 kip at 16 ft",
}
VOID = {"img", "meta", "br", "hr"}


@pytest.fixture(scope="module")
def beam():
    return SimpleBeam(**GATE)


class Nesting(HTMLParser):
    """Follows the tags of a page; `wrong` holds those that do not close in order."""

    def __init__(self):
        super().__init__()
        self.open, self.wrong, self.images, self.seen = [], [], [], []

    def handle_starttag(self, tag, attrs):
        self.seen.append(tag)
        if tag == "img":
            self.images.append(dict(attrs))
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag):
        if not self.open or self.open.pop() != tag:
            self.wrong.append(tag)


def parsed(html: str) -> Nesting:
    page = Nesting()
    page.feed(html)
    page.close()
    return page


def shown_things(beam):
    return {
        "beam": beam.html(),
        "comparison": compare(beam, beam.but(top_drop="3 in")).html(),
        "sweep": sweep(beam, "cover", "1 in", "2 in", steps=3).html(),
        "report": report(beam, "Gate").html(),
        "working": beam.working._repr_html_(),
    }


@pytest.mark.parametrize("thing", ["beam", "comparison", "sweep", "report", "working"])
def test_tags_close_in_order(beam, thing):
    page = parsed(shown_things(beam)[thing])
    assert (page.wrong, page.open) == ([], [])


@pytest.mark.parametrize("thing", ["beam", "sweep", "report"])
def test_every_image_is_said_in_words(beam, thing):
    images = parsed(shown_things(beam)[thing]).images
    assert images
    for image in images:
        assert len(image["alt"]) > 40


@pytest.mark.parametrize("thing", ["beam", "comparison", "sweep", "report"])
def test_the_caution_stands_with_each_result(beam, thing):
    assert "a licensed engineer decide" in shown_things(beam)[thing]


@pytest.mark.parametrize("thing", ["beam", "report"])
def test_care_on_site_stands_with_each_result(beam, thing):
    html = shown_things(beam)[thing]
    for word in ("bar ends", "Props stay", "silica dust", "Wet cement"):
        assert word in html


@pytest.mark.parametrize("make", ["beam", "comparison", "sweep"])
def test_plain_text_carries_the_caution_too(beam, make):
    made = {
        "beam": beam,
        "comparison": compare(beam, beam.but(cover="2 in")),
        "sweep": sweep(beam, "cover", "1 in", "2 in", steps=3),
    }[make]
    assert "a licensed engineer decide" in made._repr_mimebundle_()["text/plain"]


def test_the_picture_inside_the_page_is_a_sound_svg_of_its_own(beam):
    source = parsed(beam.html()).images[0]["src"]
    svg = base64.b64decode(source.removeprefix("data:image/svg+xml;base64,"))
    root = ElementTree.fromstring(svg)
    assert root.get("role") == "img"
    assert float(root.get("width")) > 0
    assert b'role="slider"' not in svg


def test_the_four_questions_are_answered_in_order(beam):
    html = beam.html()
    places = [html.index(question) for question, _answer in beam.answers]
    assert len(places) == 4
    assert places == sorted(places)


def test_the_working_and_the_inputs_are_folded(beam):
    html = beam.html()
    assert parsed(html).seen.count("details") == 3
    assert "<details open" not in html


def test_head_cells_say_what_they_head(beam):
    for thing in shown_things(beam).values():
        assert re.search(r"<th(?! scope=\"(?:col|row)\")[ >]", thing) is None


NASTY = "<script>alert('x')</script> & \"gate\""


def test_what_is_typed_cannot_break_the_page(beam):
    html = report(beam, NASTY).html() + compare(**{NASTY: beam, "b": beam.but(cover="2 in")}).html()
    assert "<script" not in html
    assert "&lt;script&gt;" in html
    assert (parsed(html).wrong, parsed(html).open) == ([], [])


def test_a_grave_caution_is_marked_and_comes_first():
    beam = SimpleBeam(**(GATE | {"top_bars": "none"}))
    assert beam.cautions[0].startswith("⚠")


def test_working_rows_hold_value_unit_and_clause(beam):
    row = next(row for row in beam.working if row.symbol == "E_c")
    assert "psi" in row.value
    assert row.clause == "ACI 318-19 19.2.2.1"


def test_the_value_of_a_step_follows_from_the_numbers_put_in(beam):
    row = next(row for row in beam.working if row.topic.startswith("Crack width: Frosch"))
    rows = [r for r in beam.working if r.topic == row.topic and r.symbol == "w"]
    numbers, value = rows[0].numbers, rows[0].value
    by_hand = eval(numbers.replace("×", "*"))
    assert by_hand == pytest.approx(float(value.split("\u202f")[0]), rel=3e-3)


def test_the_working_can_be_read_without_a_page(beam):
    assert "f_s" in repr(beam.working)


@pytest.fixture(scope="module")
def others():
    arm = Cantilever(overhang="1.5 m", load="14 kN/m", top="12 @ 150", trodden="40 mm")
    floor = ContinuousBeam(spans="3 x 16 ft", dead="20 psf", live="120 psf", top_reach="3 ft")
    return {"arm": arm, "floor": floor}


@pytest.mark.parametrize("name", ["arm", "floor"])
def test_every_structure_shows_picture_answers_cautions_inputs_and_working(others, name):
    case = others[name]
    page = parsed(case.html())
    assert (page.wrong, page.open) == ([], [])
    assert page.images
    for text in (*(q for q, _a in case.answers), *(told.title for told in case.told)):
        assert text in case.html()
    assert "a licensed engineer decide" in case.html()
    assert page.seen.count("details") == 3
    assert "f_t" in repr(case.working)


@pytest.mark.parametrize("name", ["arm", "floor"])
def test_every_structure_can_be_compared_and_printed(others, name):
    case = others[name]
    other = case.but(cover="1.25 in")
    table = compare(case, other)
    assert table.rows[0][0] == "cover"
    made = report(case)
    assert made.title == case.structure.title
    page = parsed(made.html())
    assert (page.wrong, page.open) == ([], [])
    for told in case.told:
        assert told.title in made.html()
    assert [faults(sheet) for sheet in made.sheets()] == [[] for _sheet in made.sheets()]


def test_what_was_done_with_a_load_per_area_is_shown(others):
    assert "on a strip" in others["floor"].html()
    assert "on a strip" in report(others["floor"]).html()


def test_codes_are_called_by_their_names(beam):
    assert re.search(r"Limit: .*(ACI 224R-01|EN 1992-1-1:2004), Table", repr(beam))


def test_no_value_of_the_working_has_more_than_five_digits(beam):
    numbers = re.findall(r"[\d.\u202f]*\d", " ".join(row.value for row in beam.working))
    digits = [re.sub(r"[.\u202f]", "", number).strip("0") for number in numbers]
    assert max(map(len, digits)) == 5


def test_a_column_in_which_nothing_stands_is_left_out():
    full = Row("topic", "a", "b + c", "1 + 2", "3", "")
    assert "numbers put in" in table([full]) and "clause" not in table([full])
    assert "numbers put in" not in table([full._replace(numbers="")])
