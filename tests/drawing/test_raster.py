"""Places without concrete are clear in the stress map, on the screen and on paper."""

import zlib

import numpy as np

from crackkit.drawing.body import corners, drawn_down
from crackkit.drawing.palette import stress_colours
from crackkit.drawing.raster import NOTHING, colours, png, shades

VALUES = np.array([[-1.0, 0.0, 1.0], [0.5, np.nan, np.nan]])


def test_what_is_not_a_number_has_a_shade_of_its_own():
    assert shades(VALUES)[1].tolist()[1:] == [NOTHING, NOTHING]
    assert (shades(VALUES)[0] < NOTHING).all()


def test_colours_are_clear_where_there_is_nothing():
    found = colours(VALUES, "light")
    assert found[..., 3].tolist() == [[255, 255, 255], [255, 0, 0]]
    assert found[0, 0, :3].tolist() == stress_colours("light")[0].tolist()


def test_the_picture_file_has_a_clear_shade_only_where_it_is_needed():
    assert b"tRNS" in png(VALUES, "dark") and b"tRNS" not in png(VALUES[:1], "dark")
    data = png(VALUES, "dark")
    at = data.index(b"tRNS")
    assert data[at + 4 : at + 4 + NOTHING + 1] == b"\xff" * NOTHING + b"\0"
    start = data.index(b"IDAT")
    size = int.from_bytes(data[start - 4 : start], "big")
    rows = np.frombuffer(zlib.decompress(data[start + 4 : start + 4 + size]), np.uint8)
    assert rows.reshape(2, 4)[1, 2:].tolist() == [NOTHING, NOTHING]


def test_a_map_is_drawn_down_to_the_edge_of_its_last_row():
    assert drawn_down(VALUES).tolist() == [[-1.0, 0.0, 1.0], [0.5, 0.0, 1.0]]


def test_a_bottom_face_keeps_its_corners_only():
    x = np.linspace(0.0, 10.0, 11)
    found, depth = corners(x, np.where(x < 4, 200.0, 200.0 - 10 * (x - 4)))
    assert found.tolist() == [0.0, 4.0, 10.0] and depth.tolist() == [200.0, 200.0, 140.0]
