"""The live painter: sound XML, words escaped, no ids, numbers with one decimal."""

import base64
import re
import zlib
from dataclasses import replace
from xml.etree import ElementTree

import numpy as np
import pytest

from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.palette import THEMES
from crackkit.drawing.raster import png
from crackkit.drawing.shapes import (
    Arrow,
    Circle,
    Group,
    Handle,
    Hint,
    Lines,
    Picture,
    Polygon,
    Polyline,
    Raster,
    Text,
    handles,
)
from crackkit.drawing.svg import arrow_head, svg
from crackkit.structures import fields
from crackkit.structures.simple_beam import SimpleBeam

NAMESPACE = "{http://www.w3.org/2000/svg}"
BEAM = SimpleBeam()
OUTCOME = BEAM.solve()


def root(picture, theme="light"):
    return ElementTree.fromstring(svg(picture, theme))


def one(shape, theme="light"):
    """The last element of a picture with one shape."""
    return list(root(Picture(100, 50, (shape,), "t"), theme))[-1]


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("view", [View(), View("US", "narrow"), View(live=False)])
def test_a_picture_is_sound_xml_in_every_theme(theme, view):
    found = root(beam_picture(OUTCOME, view), theme)
    assert found.tag == f"{NAMESPACE}svg"
    width, height = (float(v) for v in found.get("viewBox").split()[2:])
    assert width > 500 and height > 600


def test_title_and_description_come_first_and_say_what_is_seen():
    picture = beam_picture(OUTCOME, View())
    title, about = list(root(picture))[:2]
    assert title.tag == f"{NAMESPACE}title" and title.text == picture.title
    assert about.tag == f"{NAMESPACE}desc" and about.text == picture.description
    assert "stretched from" in about.text and "cracks" in about.text


def test_there_are_no_ids_and_no_scripts():
    text = svg(beam_picture(OUTCOME, View()))
    assert " id=" not in text and "<script" not in text and "url(" not in text


def test_words_are_escaped_everywhere():
    rude = '<b>&"bars"</b>'
    handle = Handle("a&b", rude, rude, "x", 1.0, 2.0, 0.0, 3.0, 1.0)
    shapes = (Text(1.0, 2.0, rude, "label"), Group((Circle(1, 1, 1, "grip"),), handle))
    found = root(Picture(100, 50, shapes, rude, rude))
    assert [e.text for e in list(found)[:2]] == [rude, rude]
    assert found.find(f"{NAMESPACE}text").text == rude
    group = found.find(f"{NAMESPACE}g")
    assert (group.get("aria-label"), group.get("data-path")) == (rude, "a&b")


def test_coordinates_have_one_decimal():
    text = svg(beam_picture(OUTCOME, View(live=False)))
    numbers = re.findall(r'(?:points|d)="([^"]*)"', text)
    numbers += re.findall(r' (?:x|y|x1|y1|cx|cy|r)="([^"]*)"', text)
    digits = [n for group in numbers for n in re.findall(r"-?\d+(?:\.\d+)?(?:e[-+]?\d+)?", group)]
    assert len(digits) > 1000
    assert {len(n.partition(".")[2]) for n in digits} <= {0, 1}
    assert not any("nan" in group or "inf" in group for group in numbers)


def test_each_shape_becomes_its_element():
    square = np.array([(0.0, 0.0), (10.04, 0.0), (10.0, 9.96)])
    assert one(Polygon(square, "card")).get("points") == "0.0,0.0 10.0,0.0 10.0,10.0"
    assert one(Polyline(square, "bar", 2.5)).get("stroke-width") == "2.5"
    pair = np.array([[(0.0, 1.0), (2.0, 3.0)], [(4.0, 5.0), (6.0, 7.0)]])
    assert one(Lines(pair, "hatch")).get("d") == "M0.0 1.0L2.0 3.0M4.0 5.0L6.0 7.0"
    assert one(Circle(1.0, 2.0, 3.0, "grip")).get("r") == "3.0"
    assert one(Text(1.0, 2.0, "crack", "label", "end")).get("text-anchor") == "end"
    assert one(Arrow(0.0, 0.0, 0.0, 20.0, "load")).get("points").startswith("0.0,20.0 ")


def painted(*shapes):
    """Elements of a picture with these shapes, after title, description and paper."""
    return list(root(Picture(100, 50, shapes, "t")))[3:]


def test_neighbours_that_look_alike_are_one_element():
    rows = [np.array([(0.0, y), (10.0, y)]) for y in (1.0, 2.0, 3.0)]
    (lines,) = painted(*(Polyline(row, "bar") for row in rows))
    assert lines.get("d") == "M0.0 1.0 10.0 1.0M0.0 2.0 10.0 2.0M0.0 3.0 10.0 3.0"
    shafts, heads = painted(*(Arrow(x, 0.0, x, 20.0, "load") for x in (1.0, 2.0, 3.0)))
    assert shafts.get("d").count("M") == heads.get("d").count("z") == 3
    (words,) = painted(*(Text(1.0, y, f"at {y:g}", "note", "end") for y in (1.0, 2.0, 3.0)))
    assert words.get("text-anchor") == "end" and [e.text for e in words] == ["at 1", "at 2", "at 3"]
    (hints,) = painted(*(Hint(x, 2.0, 3.0, 4.0, "sags") for x in (1.0, 2.0, 3.0)))
    assert hints.get("pointer-events") == "all" and len(hints) == 3


def test_neighbours_that_look_different_keep_their_order():
    line = np.array([(0.0, 1.0), (10.0, 1.0)])
    roles = ["bar", "ghost", "bar", "ghost"]
    assert len(painted(*(Polyline(line, role) for role in roles))) == 4
    assert len(painted(*(Polyline(line, "bar", width) for width in (1.0, 2.0, 3.0)))) == 3


def test_a_group_that_cannot_be_dragged_leaves_no_trace():
    (circle,) = painted(Group((Group((Circle(1.0, 1.0, 1.0, "card"),)),)))
    assert circle.tag == f"{NAMESPACE}circle"


def test_empty_lines_paint_nothing():
    assert one(Lines(np.empty((0, 2, 2)), "hatch")).get("d") == ""


def test_an_arrow_ends_in_its_point():
    head = arrow_head(Arrow(0.0, 0.0, 30.0, 40.0, "load", 10.0))
    assert head[0].tolist() == [30.0, 40.0]
    base = head[1:].mean(axis=0)
    assert base == pytest.approx([24.0, 32.0])  # 10 back along (0.6, 0.8)
    assert np.hypot(*(head[1] - head[2])) == pytest.approx(9.0)


def test_every_handle_can_be_reached_and_says_what_it_is():
    picture = beam_picture(OUTCOME, View())
    groups = [g for g in root(picture).iter(f"{NAMESPACE}g") if g.get("role") == "slider"]
    assert len(groups) == len(list(handles(picture.shapes))) == 5
    for group in groups:
        assert group.get("tabindex") == "0" and group.get("aria-label")
        low, now, high = (float(group.get(f"aria-value{k}")) for k in ("min", "now", "max"))
        assert low <= now <= high


def test_a_grip_that_goes_all_over_a_plan_says_what_it_does_up_and_down():
    upright = Handle("wheel.y", "wheel", "2 m", "y", 10.0, 2000.0, 0.0, 4500.0, 50.0)
    handle = Handle("wheel.x", "wheel", "1 m", "x", 10.0, 1000.0, 0.0, 6000.0, 50.0, upright)
    shapes = (Group((Circle(1, 1, 1, "grip"),), handle),)
    text = svg(Picture(10, 10, shapes, "plan"))
    group = next(e for e in ElementTree.fromstring(text).iter() if e.get("class") == "ck-handle")
    assert group.get("data-up-path") == "wheel.y" and group.get("data-up-value") == "2000"
    assert (group.get("data-up-low"), group.get("data-up-high")) == ("0", "4500")
    assert [one.path for one in handles(shapes)] == ["wheel.x", "wheel.y"]


def test_a_step_of_a_handle_is_a_change_the_beam_allows():
    for handle in handles(beam_picture(OUTCOME, View()).shapes):
        for value in (handle.low, handle.high):
            fields.fitted(BEAM, BEAM.handle_changes(handle.path, value))


def test_a_switch_is_pressed_and_says_whether_it_is_on():
    for value, said in ((1.0, "true"), (0.0, "false")):
        handle = Handle("spans.0.live", "live load", "on", "toggle", 0.0, value, 0.0, 1.0, 1.0)
        group = one(Group((Circle(1.0, 1.0, 1.0, "card"),), handle))
        assert (group.get("role"), group.get("aria-checked")) == ("switch", said)
        assert (group.get("data-axis"), group.get("data-path")) == ("toggle", "spans.0.live")


def test_a_hint_has_words_and_no_paint():
    hint = one(Hint(1.0, 2.0, 3.0, 4.0, "2 m: a < b"))
    assert (hint.get("data-hint"), hint.get("fill")) == ("2 m: a < b", "none")
    assert hint.get("pointer-events") == "all"


def test_a_still_picture_has_nothing_to_drag():
    assert "data-path" not in svg(beam_picture(OUTCOME, View(live=False)))


def test_the_stress_map_is_a_png_of_its_values():
    values = np.linspace(-1.0, 1.0, 12).reshape(3, 4)
    image = one(Raster(0.0, 0.0, 10.0, 10.0, values))
    data = base64.b64decode(image.get("href").removeprefix("data:image/png;base64,"))
    assert data == png(values, "light")
    start = data.index(b"IDAT")
    size = int.from_bytes(data[start - 4 : start], "big")
    rows = np.frombuffer(zlib.decompress(data[start + 4 : start + 4 + size]), np.uint8)
    shades = rows.reshape(3, 5)[:, 1:]
    assert (shades[0, 0], shades[-1, -1]) == (0, 62)
    assert np.all(np.diff(shades.ravel().astype(int)) >= 0)


def test_the_same_beam_gives_the_same_picture():
    again = replace(BEAM).solve()
    assert svg(beam_picture(again, View())) == svg(beam_picture(OUTCOME, View()))
