"""Stress maps as small PNG pictures with a palette."""

import base64
import struct
import zlib
from functools import cache

import numpy as np

from crackkit.drawing.palette import stress_colours

_SIGNATURE = b"\x89PNG\r\n\x1a\n"
STEPS = 63  # shades from squeezed to stretched, the middle one is plain concrete
NOTHING = STEPS  # the shade of places where there is no concrete: clear


def shades(values: np.ndarray) -> np.ndarray:
    """Turn values from -1 to +1 into shade numbers 0 to 62 (uint8); beyond that they stay.

    What is not a number becomes `NOTHING`.
    """
    middle = (STEPS - 1) / 2
    found = np.clip(np.rint(values * middle + middle), 0, STEPS - 1)
    return np.where(np.isnan(found), NOTHING, found).astype(np.uint8)


def colours(values: np.ndarray, theme: str) -> np.ndarray:
    """Colour of each value: red, green, blue and opacity, uint8."""
    clear = np.append(stress_colours(theme), [[0, 0, 0]], axis=0)
    solid = np.where(np.isnan(values), 0, 255).astype(np.uint8)
    return np.dstack([clear[shades(values)].astype(np.uint8), solid])


def png(values: np.ndarray, theme: str) -> bytes:
    """Encode a map of values from -1 to +1 as a palette PNG.

    Parameters
    ----------
    values : ndarray, shape (rows, columns)
        Row 0 is the top row.
    theme : str
        Name of the theme that colours it.
    """
    rows, columns = values.shape
    lines = np.zeros((rows, columns + 1), dtype=np.uint8)  # filter byte 0 before each row
    lines[:, 1:] = shades(values)
    return (
        _SIGNATURE
        + _chunk(b"IHDR", struct.pack(">IIBBBBB", columns, rows, 8, 3, 0, 0, 0))
        + (_clear_palette_chunks if np.isnan(values).any() else _palette_chunk)(theme)
        + _chunk(b"IDAT", zlib.compress(lines.tobytes(), 1))
        + _chunk(b"IEND", b"")
    )


def data_address(values: np.ndarray, theme: str) -> str:
    """Give the PNG as an address that an SVG image element can carry inside itself."""
    return "data:image/png;base64," + base64.b64encode(png(values, theme)).decode("ascii")


@cache
def _palette_chunk(theme: str) -> bytes:
    return _chunk(b"PLTE", stress_colours(theme).tobytes())


@cache
def _clear_palette_chunks(theme: str) -> bytes:
    """The palette with one clear shade at its end."""
    shades_and_nothing = stress_colours(theme).tobytes() + b"\0\0\0"
    return _chunk(b"PLTE", shades_and_nothing) + _chunk(b"tRNS", b"\xff" * STEPS + b"\0")


def _chunk(kind: bytes, data: bytes) -> bytes:
    body = kind + data
    return struct.pack(">I", len(data)) + body + struct.pack(">I", zlib.crc32(body))
