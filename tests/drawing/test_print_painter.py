"""The painter for paper shows what the live painter shows: all shapes, words within their boxes."""

import inspect
import io
import re
import subprocess
import sys

import numpy as np
import pytest
from matplotlib.backends.backend_agg import FigureCanvasAgg

from crackkit.drawing import fonts, print_painter, shapes, svg
from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.frames import View
from crackkit.drawing.labels import box
from crackkit.drawing.lettering import text_width
from crackkit.drawing.palette import THEMES
from crackkit.drawing.shapes import Picture, Text, every_shape
from crackkit.launch.places import PROJECT
from crackkit.structures.simple_beam import SimpleBeam

NOT_PAINTED = {"Handle", "Group", "Picture"}  # Groups are walked through


@pytest.fixture(scope="module")
def picture():
    beam = SimpleBeam(overhang_left=1500.0, span=5000.0)
    return beam_picture(beam.solve(), View("US", live=False))


def picture_of(*chosen, width=100.0, height=80.0) -> Picture:
    return Picture(width, height, chosen, "Trial", "One shape.")


def pixels(trial: Picture, theme="light") -> np.ndarray:
    """Colours of the painted picture, one drawing unit a pixel."""
    figure = print_painter.figure(trial, theme, width_mm=trial.width / 200 * 25.4)
    buffer = io.BytesIO()
    figure.savefig(buffer, format="rgba", dpi=200)
    tall, wide = round(trial.height), round(trial.width)
    return np.frombuffer(buffer.getvalue(), np.uint8).reshape(tall, wide, 4)


def colour(role: str, part="fill", theme="light") -> tuple[int, ...]:
    code = getattr(THEMES[theme].style(role), part)
    return tuple(int(code[k : k + 2], 16) for k in (1, 3, 5))


def is_near(pixel, wished, slack=3) -> bool:
    return bool((np.abs(pixel[:3].astype(int) - np.array(wished)) <= slack).all())


def test_both_painters_know_every_shape():
    classes = {
        thing
        for name, thing in vars(shapes).items()
        if inspect.isclass(thing) and thing.__module__ == shapes.__name__
    }
    wanted = {thing for thing in classes if thing.__name__ not in NOT_PAINTED}
    assert set(print_painter._PAINTERS) == wanted
    assert set(svg._PAINTERS) == wanted


def test_the_paper_has_the_colour_of_the_theme():
    for theme in THEMES:
        assert is_near(pixels(picture_of(), theme)[40, 50], colour("paper", theme=theme))


def test_a_polygon_is_filled_where_it_lies():
    image = pixels(picture_of(shapes.rectangle(20, 10, 30, 20, "badge")))
    assert is_near(image[20, 35], colour("badge"))
    assert is_near(image[20, 60], colour("paper"))


def test_a_line_and_many_lines_are_drawn():
    one = pixels(picture_of(shapes.line(10, 40, 90, 40, "bar")))
    assert is_near(one[40, 50], colour("bar", "stroke"), 12)
    segments = np.array([[(10, 20), (90, 20)], [(10, 60), (90, 60)]], float)
    two = pixels(picture_of(shapes.Lines(segments, "limit")))
    assert is_near(two[20, 50], colour("limit", "stroke"), 40)
    assert is_near(two[60, 50], colour("limit", "stroke"), 40)
    assert is_near(two[40, 50], colour("paper"))


def test_a_line_may_be_thicker_than_its_role():
    points = np.array([(10.0, 40.0), (90.0, 40.0)])
    thick = pixels(picture_of(shapes.Polyline(points, "bar", 20.0)))
    assert is_near(thick[33, 50], colour("bar", "stroke"))
    assert is_near(thick[28, 50], colour("paper"))


def test_a_dashed_line_has_gaps_of_the_length_that_is_asked_for():
    dashed = pixels(picture_of(shapes.line(0, 40, 400, 40, "second_line"), width=400.0))
    ink = np.abs(dashed[40, :, :3].astype(int) - colour("paper")).sum(axis=1) > 150
    assert 36 <= int(np.abs(np.diff(ink.astype(int))).sum()) // 2 <= 44  # 400 / (7 + 3)


def test_a_circle_is_round_and_filled():
    image = pixels(picture_of(shapes.Circle(50, 40, 20, "badge")))
    for x, y, inside in ((50, 40, True), (50, 22, True), (66, 26, False), (50, 18, False)):
        assert is_near(image[y, x], colour("badge" if inside else "paper"))


def test_an_arrow_points_at_its_end():
    image = pixels(picture_of(shapes.Arrow(50, 10, 50, 60, "load", 20.0)))
    assert is_near(image[45, 54], colour("load"))  # in the head
    assert is_near(image[30, 54], colour("paper"))  # beside the shaft
    assert is_near(image[63, 50], colour("paper"))  # beyond the tip


def test_a_stress_map_has_row_0_on_top():
    values = np.array([[-1.0] * 8] * 4 + [[1.0] * 8] * 4)
    image = pixels(picture_of(shapes.Raster(10, 10, 80, 60, values)))
    top, bottom = image[14, 50].astype(int), image[66, 50].astype(int)
    assert top[2] > top[0]  # petrol
    assert bottom[0] > bottom[2]  # vermilion


def test_nothing_is_painted_where_a_map_has_no_value():
    values = np.array([[1.0, 1.0], [np.nan, np.nan]])
    seen = pixels(picture_of(shapes.Raster(20.0, 20.0, 40.0, 40.0, values)))
    assert is_near(seen[58, 40], colour("paper"))
    assert not is_near(seen[24, 40], colour("paper"), 40)


def test_a_hint_leaves_no_trace_on_paper():
    assert (
        pixels(picture_of(shapes.Hint(5.0, 5.0, 60.0, 60.0, "words"))) == pixels(picture_of())
    ).all()


def test_a_group_is_painted_with_all_that_is_in_it():
    inner = shapes.Group((shapes.rectangle(20, 10, 30, 20, "badge"),))
    image = pixels(picture_of(shapes.Group((inner,))))
    assert is_near(image[20, 35], colour("badge"))


def test_the_last_shape_lies_on_top_whatever_its_kind():
    below = shapes.Polyline(np.array([(0.0, 40.0), (100.0, 40.0)]), "bar", 30.0)
    image = pixels(picture_of(below, shapes.rectangle(20, 20, 60, 40, "good")))
    assert is_near(image[40, 50], colour("good"))


def test_nothing_is_painted_beyond_the_paper():
    beyond = shapes.rectangle(-500, -500, 5000, 5000, "badge")
    figure = print_painter.figure(picture_of(beyond, Text(90, 40, "far too long", "label")))
    figure.draw_without_rendering()
    for artist in [*figure.axes[0].patches, *figure.axes[0].texts]:
        assert artist.get_clip_on()
    extent = figure.axes[0].get_window_extent().bounds
    assert extent == pytest.approx(figure.bbox.bounds)


def test_every_text_stays_within_the_box_it_was_given(picture):
    figure = print_painter.figure(picture)
    renderer = FigureCanvasAgg(figure).get_renderer()
    figure.draw(renderer)
    scale = picture.width / figure.bbox.width
    wanted = [s for s in every_shape(picture.shapes) if isinstance(s, Text)]
    for shape, painted in zip(wanted, figure.axes[0].texts, strict=True):
        extent = painted.get_window_extent(renderer)
        place = box(shape)
        assert painted.get_text() == shape.text
        assert extent.x0 * scale >= place.left - 1.0, shape.text
        assert extent.x1 * scale <= place.right + 1.0, shape.text
        # nor much narrower: the letters would look lost, and another font would be at work
        assert extent.width * scale >= 0.93 * (place.right - place.left) - 3.0, shape.text


def test_words_are_set_smaller_where_only_a_wide_font_is_installed(monkeypatch):
    for cached in (fonts.families, fonts.typeface, fonts.printed_size):
        cached.cache_clear()
    monkeypatch.setattr(fonts, "WISHED", ())
    try:
        words = "Where is it stretched?"
        assert fonts.families() == (fonts.FALLBACK,)
        size = fonts.printed_size(words, 13.0, True)
        assert size < 13.0
        assert fonts.printed_width(words, size, True) <= text_width(words, 13.0, True) * 1.01
    finally:
        for cached in (fonts.families, fonts.typeface, fonts.printed_size):
            cached.cache_clear()


def test_signs_are_not_read_as_formulas():
    print_painter.figure(
        picture_of(Text(5, 40, "$x_1^2$ & 100 %", "label"))
    ).draw_without_rendering()


@pytest.mark.parametrize(
    ("format", "start"), [("pdf", b"%PDF"), ("png", b"\x89PNG"), ("svg", b"<svg")]
)
def test_each_format_is_written_to_a_buffer_and_to_a_file(picture, tmp_path, format, start):
    buffer = io.BytesIO()
    print_painter.save(picture, buffer, format)
    assert buffer.getvalue().startswith(start)
    file = tmp_path / f"picture.{format}"
    print_painter.save(picture, file)
    assert file.read_bytes().startswith(start)
    assert file.read_bytes() == buffer.getvalue()


def test_words_in_a_pdf_can_be_searched_and_it_has_a_title(picture):
    buffer = io.BytesIO()
    print_painter.save(picture_of(Text(5, 40, "tight", "label")), buffer, "pdf")
    content = buffer.getvalue()
    assert b"/Title (Trial)" in content
    assert b"/Type /Font" in content
    assert b"CreationDate" not in content


def test_a_png_has_200_dots_to_the_inch_and_says_what_it_shows(picture):
    buffer = io.BytesIO()
    print_painter.save(picture, buffer, "png")
    wide = int.from_bytes(buffer.getvalue()[16:20], "big")
    assert wide == pytest.approx(180 / 25.4 * 200, abs=1)
    assert picture.title.encode() in buffer.getvalue()


def test_pages_are_written_to_one_file(picture):
    buffer = io.BytesIO()
    print_painter.save_pages([picture, picture], buffer)
    assert len(re.findall(rb"/Type /Page\b", buffer.getvalue())) == 2


def test_another_format_is_refused(picture):
    with pytest.raises(ValueError, match="gif"):
        print_painter.save(picture, io.BytesIO(), "gif")


def test_a_figure_shows_itself_in_a_notebook(picture):
    assert print_painter.figure(picture)._repr_png_().startswith(b"\x89PNG")


def test_no_plotting_state_is_touched():
    program = (
        "import io, sys\n"
        "from crackkit.drawing import print_painter, shapes\n"
        "assert 'matplotlib' not in sys.modules\n"
        "p = shapes.Picture(10.0, 10.0, (), 't')\n"
        "print_painter.save(p, io.BytesIO(), 'pdf')\n"
        "assert 'matplotlib.pyplot' not in sys.modules\n"
    )
    ended = subprocess.run(
        [sys.executable, "-c", program], cwd=PROJECT, capture_output=True, text=True
    )
    assert ended.returncode == 0, ended.stderr
