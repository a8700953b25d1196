"""Rules for the lessons as files: text and one-line calls, nothing hidden in them."""

import ast
import re

import nbformat
import pytest

from crackkit.launch.places import LESSONS

LONGEST_CELL = 12
_markdown_image = re.compile(r"!\[(?P<alt>[^\]]*)\]\(")
_html_image = re.compile(r"<img\b[^>]*>", re.IGNORECASE)
_html_alt = re.compile(r"\balt\s*=\s*(\"[^\"]+\"|'[^']+')", re.IGNORECASE)

lessons = sorted(f for f in LESSONS.rglob("*.ipynb") if ".ipynb_checkpoints" not in f.parts)
each_lesson = pytest.mark.parametrize("file", lessons, ids=lambda file: file.stem)


def code_cells(file):
    return [cell for cell in nbformat.read(file, 4).cells if cell.cell_type == "code"]


def is_for_typing(cell) -> bool:
    """Tell whether a reader is to type in this cell, so that it must not be folded away."""
    return "type-here" in cell.metadata.get("tags", [])


def images_without_words(text: str) -> list[str]:
    plain = [found.group() for found in _markdown_image.finditer(text) if not found["alt"].strip()]
    return plain + [found for found in _html_image.findall(text) if not _html_alt.search(found)]


def definitions_in(source: str) -> list[str]:
    kinds = (ast.FunctionDef, ast.AsyncFunctionDef, ast.ClassDef, ast.Lambda)
    return [type(n).__name__ for n in ast.walk(ast.parse(source)) if isinstance(n, kinds)]


@each_lesson
def test_a_lesson_is_stored_as_the_page_would_store_it(file):
    lesson = nbformat.read(file, 4)
    nbformat.validate(lesson)
    assert file.read_text("utf-8") == nbformat.writes(lesson).rstrip("\n") + "\n"


@each_lesson
def test_a_lesson_names_the_plain_kernel_and_starts_by_itself(file):
    metadata = nbformat.read(file, 4).metadata
    assert metadata.kernelspec.name == "python3"
    assert metadata.language_info == {"name": "python"}
    assert metadata.crackkit.autostart is True


@each_lesson
def test_a_lesson_stores_no_results(file):
    assert "widgets" not in nbformat.read(file, 4).metadata
    assert [(cell.outputs, cell.execution_count) for cell in code_cells(file)] == [
        ([], None) for _ in code_cells(file)
    ]


@each_lesson
def test_code_in_a_lesson_is_short_and_folded_away(file):
    for cell in code_cells(file):
        assert len(cell.source.splitlines()) <= LONGEST_CELL, cell.source
        is_hidden = cell.metadata.get("jupyter", {}).get("source_hidden", False)
        assert is_hidden != is_for_typing(cell), cell.source


@each_lesson
def test_code_in_a_lesson_is_plain_python_that_defines_nothing(file):
    for cell in code_cells(file):
        assert definitions_in(cell.source) == [], cell.source  # magics do not parse at all


@each_lesson
def test_every_image_in_a_lesson_is_said_in_words(file):
    cells = nbformat.read(file, 4).cells
    assert [found for cell in cells for found in images_without_words(cell.source)] == []


@each_lesson
def test_links_to_other_files_lead_somewhere(file):
    link = re.compile(r"\]\((?!https?:|#|mailto:|attachment:)(?P<to>[^)#\s]+)")
    for cell in nbformat.read(file, 4).cells:
        if cell.cell_type == "markdown":
            for found in link.finditer(cell.source):
                assert (file.parent / found["to"]).exists(), found["to"]


@pytest.mark.parametrize("text", ["![](a.png)", "<img src='a.png'>", '<img alt="" src="a">'])
def test_an_image_without_words_would_be_noticed(text):
    assert images_without_words(text) != []


@pytest.mark.parametrize("source", ["def f(): pass", "g = lambda: 1", "class A: pass"])
def test_a_definition_would_be_noticed(source):
    assert definitions_in(source) != []


@pytest.mark.parametrize("source", ["%matplotlib inline", "%pip install x", "!ls"])
def test_a_magic_would_be_noticed(source):
    with pytest.raises(SyntaxError):
        definitions_in(source)
