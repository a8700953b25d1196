"""A lesson kept as a page: the last pictures stay, with their words."""

import re

import nbformat
import pytest
from nbclient import NotebookClient
from nbconvert import HTMLExporter

from crackkit.launch.places import LESSONS

pytestmark = pytest.mark.lesson


def test_an_exported_lesson_keeps_its_pictures_in_words_and_lines(tmp_path, monkeypatch):
    monkeypatch.setenv("CRACKKIT_HOME", str(tmp_path))
    lesson = nbformat.read(LESSONS / "02_simple_beam.ipynb", 4)
    client = NotebookClient(
        lesson,
        resources={"metadata": {"path": str(LESSONS)}},
        store_widget_state=False,
    )
    client.execute()
    page, _resources = HTMLExporter().from_notebook_node(lesson)
    pictures = re.findall(r'<img\b[^>]*alt="([^"]+)"[^>]*src="?data:image/svg\+xml', page)
    assert len(pictures) >= 5
    assert any("The bottom is stretched" in alt for alt in pictures)
