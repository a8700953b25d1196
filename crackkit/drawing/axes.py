"""Axes: round numbers for ticks, in the reader's units."""

import math

import numpy as np

from crackkit.drawing.shapes import Lines, Text


def round_step(span: float, most: int) -> float:
    """Step of 1, 2, 2.5 or 5 times a power of ten that gives at most `most` steps in `span`."""
    rough = span / max(most, 1)
    power = 10.0 ** math.floor(math.log10(rough))
    return next(power * f for f in (1.0, 2.0, 2.5, 5.0, 10.0) if power * f >= rough * 0.999999)


def ticks(low: float, high: float, most: int) -> np.ndarray:
    """Round numbers from low to high."""
    step = round_step(high - low, most)
    first, last = math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9)
    return step * np.arange(first, last + 1)


def tick_text(value: float) -> str:
    """Write a tick without needless zeros."""
    return f"{value + 0.0:g}".replace("-", "\u2212")


def bottom_axis(values, places, y: float, unit: str, end: float) -> list:
    """Ticks and numbers below a band; the unit stands with the last number."""
    places = np.asarray(places)
    below = np.stack([places, np.full_like(places, y + 5)], axis=-1)
    on = np.stack([places, np.full_like(places, y)], axis=-1)
    shapes = [Lines(np.stack([on, below], axis=1), "axis")]
    texts = [tick_text(v) for v in values]
    texts[-1] = f"{texts[-1]}\u202f{unit}" if unit else texts[-1]
    shapes += [
        Text(float(x), y + 18, words, "tick", "middle")
        for x, words in zip(places, texts, strict=True)
    ]
    return shapes
