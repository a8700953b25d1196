"""Colours that can be read: by contrast, without red or green or blue, and on grey paper."""

import itertools

import numpy as np
import pytest

from crackkit.drawing.palette import THEMES, stress_colours

WORDS = [
    role
    for role, style in THEMES["light"].styles.items()
    if style.size and role != "badge_word"  # stands on its own badge
]

# Machado, Oliveira and Fernandes (2009), IEEE Trans. Vis. Comput. Graph. 15(6), severity 1.0,
# for linear RGB; from memory.
VISION = {
    "protan": [
        [0.152286, 1.052583, -0.204868],
        [0.114503, 0.786281, 0.099216],
        [-0.003882, -0.048116, 1.051998],
    ],
    "deutan": [
        [0.367322, 0.860646, -0.227968],
        [0.280085, 0.672501, 0.047413],
        [-0.011820, 0.042940, 0.968881],
    ],
    "tritan": [
        [1.255528, -0.076749, -0.178779],
        [-0.078411, 0.930809, 0.147602],
        [0.004733, 0.691367, 0.303900],
    ],
}
# sRGB to XYZ and the white of D65, IEC 61966-2-1
TO_XYZ = np.array([[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]])
WHITE = TO_XYZ.sum(axis=1)


def linear(colour: str) -> np.ndarray:
    """Linear RGB of #rrggbb (IEC 61966-2-1)."""
    c = np.array([int(colour[k : k + 2], 16) for k in (1, 3, 5)]) / 255
    return np.where(c <= 0.04045, c / 12.92, ((c + 0.055) / 1.055) ** 2.4)


def contrast(one: str, two: str) -> float:
    """Contrast ratio of WCAG 2.1."""
    light, dark = sorted((float(linear(c) @ TO_XYZ[1]) for c in (one, two)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def lab(rgb) -> np.ndarray:
    """CIE 1976 L*a*b*."""
    t = TO_XYZ @ np.clip(rgb, 0.0, 1.0) / WHITE
    f = np.where(t > (6 / 29) ** 3, np.cbrt(t), t / (3 * (6 / 29) ** 2) + 4 / 29)
    return np.array([116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])])


def difference(one: str, two: str, vision: str | None = None) -> float:
    """Distance of two colours as somebody sees them; 2.3 is just noticeable."""
    matrix = np.array(VISION[vision]) if vision else np.eye(3)
    return float(np.linalg.norm(lab(matrix @ linear(one)) - lab(matrix @ linear(two))))


def test_the_yardsticks_are_right():
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)
    assert lab(linear("#ffffff")) == pytest.approx([100.0, 0.0, 0.0], abs=0.02)
    # grey looks grey to everybody
    for matrix in VISION.values():
        assert np.sum(matrix, axis=1) == pytest.approx(np.ones(3), abs=2e-6)


@pytest.mark.parametrize("theme", THEMES)
@pytest.mark.parametrize("role", WORDS)
@pytest.mark.parametrize("ground", ["paper", "card"])
def test_words_stand_out_from_what_they_stand_on(theme, role, ground):
    table = THEMES[theme]
    assert contrast(table.style(role).fill, table.style(ground).fill) >= 4.5


@pytest.mark.parametrize("theme", THEMES)
def test_numbers_on_badges_and_symbols_stand_out(theme):
    table = THEMES[theme]
    assert contrast(table.style("badge_word").fill, table.style("badge").fill) >= 4.5
    for verdict in ("good", "warn", "bad"):
        assert contrast(table.style("symbol").stroke, table.style(verdict).fill) >= 3.0


@pytest.mark.parametrize("theme", ["light", "dark", "projector"])
@pytest.mark.parametrize("vision", [None, *VISION])
def test_stretched_and_squeezed_are_told_apart_by_every_eye(theme, vision):
    table = THEMES[theme]
    words = table.style("stretched_word").fill, table.style("squeezed_word").fill
    assert difference(*words, vision) > 20.0
    assert difference(table.stretched, table.squeezed, vision) > 20.0


@pytest.mark.parametrize("theme", THEMES)
def test_the_ends_of_the_map_and_plain_concrete_are_told_apart(theme):
    table = THEMES[theme]
    shades = (table.stretched, table.middle, table.squeezed)
    for one, two in itertools.combinations(shades, 2):
        assert difference(one, two) > 12.0


def test_on_paper_without_colour_lightness_tells_stretched_from_squeezed():
    table = THEMES["print"]
    lights = [lab(linear(c))[0] for c in (table.stretched, table.squeezed, table.middle)]
    assert lights[0] + 12 < lights[1] and lights[1] + 12 < lights[2]
    greys = [s.fill for s in table.styles.values() if s.fill]
    greys += [s.stroke for s in table.styles.values() if s.stroke]
    assert all(c[1:3] == c[3:5] == c[5:7] for c in greys)


@pytest.mark.parametrize("theme", THEMES)
def test_cracks_and_bars_stand_out_from_the_map_beneath_them(theme):
    table = THEMES[theme]
    for role in ("crack_gap", "bar"):
        colour = table.style(role).fill or table.style(role).stroke
        for shade in stress_colours(theme):
            ground = "#" + "".join(f"{v:02x}" for v in shade)
            assert contrast(colour, ground) >= 2.5, (role, ground)


def test_every_theme_knows_the_same_roles():
    roles = {name: set(theme.styles) for name, theme in THEMES.items()}
    assert all(found == roles["light"] for found in roles.values())


def test_an_unknown_role_is_a_mistake():
    with pytest.raises(KeyError):
        THEMES["light"].style("glitter")


def test_words_are_as_wide_in_every_theme():
    for role in WORDS:
        looks = {(t.style(role).size, t.style(role).bold) for t in THEMES.values()}
        assert len(looks) == 1
