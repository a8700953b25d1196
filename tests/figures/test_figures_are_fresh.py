"""The stored pictures show what the mechanics says now; mended by `python -m crackkit figures`."""

import base64
import re
import zlib

import numpy as np
import pytest

from crackkit import figures, handouts
from crackkit.drawing.labels import faults
from crackkit.drawing.sheet import PAPERS

SOME = ("simple_beam", "ground_slab_us", "curling")  # letters take a second each in print
_MAP = re.compile(r"data:image/png;base64,([A-Za-z0-9+/=]+)")


def split(text: str) -> tuple[str, list[np.ndarray]]:
    """Give the text without its stress maps, and the maps: they are packed by each zlib its way."""
    maps = [shades(base64.b64decode(packed)) for packed in _MAP.findall(text)]
    return _MAP.sub("map", text), maps


def shades(png: bytes) -> np.ndarray:
    wide, tall = (int.from_bytes(png[k : k + 4], "big") for k in (16, 20))
    start = png.index(b"IDAT") + 4
    size = int.from_bytes(png[start - 8 : start - 4], "big")
    rows = np.frombuffer(zlib.decompress(png[start : start + size]), np.uint8)
    return rows.reshape(tall, wide + 1)[:, 1:]


@pytest.fixture(scope="module")
def painted():
    return figures.painted()


def test_the_folder_holds_the_pictures_and_nothing_else(painted):
    assert {file.name for file in figures.FIGURES.iterdir()} == set(painted)


@pytest.mark.parametrize("name", sorted(figures.pictures()))
def test_a_stored_picture_is_fresh(painted, name):
    stored = (figures.FIGURES / f"{name}.svg").read_text(encoding="utf-8")
    words, maps = split(stored)
    words_now, maps_now = split(painted[f"{name}.svg"])
    assert words == words_now, "stale: run python -m crackkit figures"
    assert maps or "data:image" not in stored  # only bent members have a stress map
    for was, now in zip(maps, maps_now, strict=True):
        assert np.abs(was.astype(int) - now).max() <= 1


def test_a_stale_picture_would_be_noticed(painted):
    text = painted["simple_beam.svg"]
    assert split(text.replace("MPa", "MPb"))[0] != split(text)[0]
    _words, (stress_map, *_rest) = split(text)
    assert np.ptp(stress_map.astype(int)) > 20


def test_pictures_are_painted_the_same_each_time(painted):
    assert figures.painted() == painted


def test_only_changed_pictures_are_written(tmp_path):
    assert len(figures.write(tmp_path)) == len(figures.pictures())
    assert figures.write(tmp_path) == []
    (tmp_path / "readme.svg").write_text("old", encoding="utf-8")
    assert figures.write(tmp_path) == [tmp_path / "readme.svg"]


def test_pictures_for_print_are_written_on_demand(tmp_path, monkeypatch):
    some = {name: figures.pictures()[name] for name in SOME}
    monkeypatch.setattr(figures, "pictures", lambda: some)
    files = figures.write_for_print(["pdf"], tmp_path)
    assert {file.name for file in files} == {f"{name}.pdf" for name in SOME}
    assert all(file.stat().st_size > 10_000 for file in files)


@pytest.mark.parametrize("name", sorted(figures.pictures()))
def test_every_picture_is_said_in_words_and_no_words_touch(name):
    picture = figures.pictures()[name]
    assert len(picture.description) > 60
    assert faults(picture) == []


@pytest.mark.parametrize("worksheet", handouts.WORKSHEETS, ids=lambda w: w.name)
@pytest.mark.parametrize("system", ["SI", "US"])
@pytest.mark.parametrize("paper", PAPERS)
def test_a_worksheet_has_two_pages_on_which_no_words_touch(worksheet, system, paper):
    pages = handouts.pages(worksheet, system, paper)
    assert len(pages) == 2
    assert [faults(page) for page in pages] == [[], []]


def test_worksheets_are_written(tmp_path, monkeypatch):
    some = (handouts.WORKSHEETS[0], handouts.WORKSHEETS[-1])
    monkeypatch.setattr(handouts, "WORKSHEETS", some)
    files = handouts.write("US", "letter", tmp_path)
    assert len(files) == len(some)
    assert all(len(re.findall(rb"/Type /Page\b", f.read_bytes())) == 2 for f in files)
