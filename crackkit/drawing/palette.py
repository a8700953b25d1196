"""Roles and their looks: a theme is a table from role to style.

Two signal colours: vermilion for what is stretched, petrol for what is squeezed. They differ in
lightness and stay apart for readers with the common colour-vision deficiencies; a hatch and a
word always go with them.
"""

from dataclasses import dataclass, replace
from functools import cache

import numpy as np

FONT = "Arial, 'Liberation Sans', Helvetica, sans-serif"


@dataclass(frozen=True)
class Style:
    """How a role looks: colours as #rrggbb, lengths in drawing units."""

    fill: str | None = None
    stroke: str | None = None
    width: float = 0.0
    dash: str | None = None
    size: float = 0.0
    bold: bool = False
    opacity: float = 1.0


@dataclass(frozen=True)
class Theme:
    """A table of roles, with the colours of the stress map from squeezed to stretched."""

    name: str
    styles: dict
    squeezed: str
    middle: str
    stretched: str

    def style(self, role: str) -> Style:
        """Look up a role; an unknown role is a mistake of ours and raises KeyError."""
        return self.styles[role]


_LIGHT = {
    "paper": "#fbfaf6",
    "card": "#f1eee6",
    "ink": "#1f2b33",
    "soft": "#59646b",
    "faint": "#b9bdb9",
    "concrete": "#e9e6de",
    "edge": "#1f2b33",
    "bar": "#1b242a",
    "crack": "#120d0a",
    "air": "#120d0a",
    "stretched": "#b8431c",
    "squeezed": "#22647a",
    "good": "#2c6b3f",
    "fine": "#2c6b3f",
    "bad": "#a8261b",
    "warn": "#8a5a00",
    "ground": "#8c857a",
    "share": "#8c857a",
    "grip": "#ffffff",
}
_DARK = {
    "paper": "#12171b",
    "card": "#1d2429",
    "ink": "#efece4",
    "soft": "#a9b2b8",
    "faint": "#4d575e",
    "concrete": "#3b4349",
    "edge": "#d9d5ca",
    "bar": "#f4f1e8",
    "crack": "#fffaf0",
    "air": "#000000",
    "stretched": "#ff9466",
    "squeezed": "#74c3db",
    "good": "#7fd296",
    "fine": "#7fd296",
    "bad": "#ff8a7a",
    "warn": "#f2bd55",
    "ground": "#8f8a80",
    "share": "#8f8a80",
    "grip": "#12171b",
}
_PROJECTOR = _LIGHT | {"paper": "#ffffff", "ink": "#000000", "soft": "#3c464c", "edge": "#000000"}
_PRINT = {
    "paper": "#ffffff",
    "card": "#f3f3f3",
    "ink": "#000000",
    "soft": "#404040",
    "faint": "#a8a8a8",
    "concrete": "#ececec",
    "edge": "#000000",
    "bar": "#000000",
    "crack": "#000000",
    "air": "#303030",
    "stretched": "#000000",
    "squeezed": "#404040",
    "good": "#000000",
    "fine": "#b4b4b4",
    "bad": "#000000",
    "warn": "#000000",
    "ground": "#707070",
    "share": "#c4c4c4",
    "grip": "#ffffff",
}


def _styles(c: dict) -> dict:
    return _filled(c) | _stroked(c) | _lettered(c)


def _filled(c: dict) -> dict:
    return {
        "paper": Style(fill=c["paper"]),
        "card": Style(fill=c["card"]),
        "concrete": Style(fill=c["concrete"], stroke=c["edge"], width=1.4),
        "mesh": Style(fill=c["concrete"], stroke=c["faint"], width=0.7),
        "air": Style(fill=c["air"], stroke=c["ground"], width=1.0),
        "stretched_area": Style(fill=c["stretched"], opacity=0.16),
        "squeezed_area": Style(fill=c["squeezed"], opacity=0.30),
        "concrete_area": Style(fill=c["share"], opacity=0.34),
        "bar_dot": Style(fill=c["bar"], stroke=c["paper"], width=1.0),
        "grip": Style(fill=c["grip"], stroke=c["ink"], width=2.0),
        "support": Style(fill=c["paper"], stroke=c["ink"], width=1.6),
        "badge": Style(fill=c["ink"]),
        "crack_gap": Style(fill=c["crack"]),
        "rule_dot": Style(fill=c["paper"], stroke=c["ink"], width=1.4),
        "rule_dot_chosen": Style(fill=c["ink"], stroke=c["ink"], width=1.4),
        "band": Style(fill=c["stretched"], opacity=0.28),
        "good": Style(fill=c["good"]),
        "bad": Style(fill=c["bad"]),
        "warn": Style(fill=c["warn"]),
        "wall": Style(fill=c["card"], stroke=c["ground"], width=1.2),
        "covered": Style(fill=c["good"], opacity=0.16),
        "uncovered": Style(fill=c["bad"], opacity=0.22),
        "tight_area": Style(fill=c["fine"], opacity=0.34),
        "wide_area": Style(fill=c["warn"], opacity=0.34),
        "gaping_area": Style(fill=c["bad"], opacity=0.42),
        "hit": Style(fill=c["paper"], opacity=0.0),
    }


def _stroked(c: dict) -> dict:
    return {
        "outline": Style(stroke=c["edge"], width=1.6),
        "ghost": Style(stroke=c["soft"], width=1.0, dash="4 4"),
        "axis": Style(stroke=c["soft"], width=1.0),
        "grid": Style(stroke=c["faint"], width=0.7),
        "load": Style(stroke=c["ink"], fill=c["ink"], width=2.6),
        "spread_load": Style(stroke=c["soft"], fill=c["soft"], width=1.0),
        "bar": Style(stroke=c["bar"], width=3.4),
        "bar_slack": Style(stroke=c["bar"], width=3.4, dash="2 3"),
        "stirrup": Style(stroke=c["soft"], width=1.4),
        "crack": Style(stroke=c["crack"], width=1.6),
        "hatch": Style(stroke=c["stretched"], width=1.0),
        "hatch_faint": Style(stroke=c["stretched"], width=0.7, opacity=0.55),
        "hatch_dense": Style(stroke=c["stretched"], width=1.6),
        "leader": Style(stroke=c["soft"], width=0.9),
        "stretched_line": Style(stroke=c["stretched"], width=2.4),
        "squeezed_line": Style(stroke=c["squeezed"], width=2.4),
        "outdated": Style(stroke=c["faint"], width=1.8),
        "second_line": Style(stroke=c["soft"], width=1.8, dash="7 3"),
        "limit": Style(stroke=c["ink"], width=2.2),
        "capacity": Style(stroke=c["bad"], width=1.2, dash="5 3"),
        "neutral": Style(stroke=c["ink"], width=1.2, dash="6 3"),
        "symbol": Style(stroke=c["paper"], width=3.2),
        "ground": Style(stroke=c["ground"], width=1.4),
        "live_load": Style(stroke=c["ink"], fill=c["ink"], width=1.5),
        "live_off": Style(stroke=c["soft"], width=1.0, dash="3 3"),
        "now_line": Style(stroke=c["ink"], width=2.2),
        "bears": Style(stroke=c["bar"], width=1.0),
        "threshold": Style(stroke=c["ink"], width=1.2, dash="1.5 3"),
        "calm_hatch": Style(stroke=c["good"], width=0.9),
        "bad_line": Style(stroke=c["bad"], width=1.6),
        "wide_hatch": Style(stroke=c["warn"], width=0.8, opacity=0.7),
        "gaping_hatch": Style(stroke=c["bad"], width=0.8, opacity=0.7),
        "steel_now": Style(stroke=c["ink"], width=1.8, dash="6 4"),
        "air_line": Style(stroke="#ffffff", width=2.0),  # air is dark in every theme
        "bang": Style(stroke=c["paper"], width=2.0),
    }


def _lettered(c: dict) -> dict:
    words = {
        "heading": ("ink", 15, True),
        "label": ("ink", 13, False),
        "label_bold": ("ink", 13, True),
        "note": ("soft", 12, False),
        "tick": ("soft", 12, False),
        "stretched_word": ("stretched", 13, True),
        "squeezed_word": ("squeezed", 13, True),
        "load_word": ("ink", 14, True),
        "badge_word": ("paper", 12, True),
        "tile_word": ("soft", 12, False),
        "tile_number": ("ink", 19, True),
        "tile_number_small": ("ink", 15, True),
        "verdict_good": ("good", 25, True),
        "verdict_bad": ("bad", 25, True),
        "verdict_warn": ("warn", 25, True),
        "bad_word": ("bad", 13, True),
    }
    return {role: Style(fill=c[key], size=size, bold=b) for role, (key, size, b) in words.items()}


def _theme(name: str, c: dict, *map_ends: str) -> Theme:
    squeezed, stretched = map_ends or (c["squeezed"], c["stretched"])
    return Theme(name, _styles(c), squeezed, c["concrete"], stretched)


def _bolder(theme: Theme, factor: float) -> Theme:
    styles = {r: replace(s, width=s.width * factor) for r, s in theme.styles.items()}
    return replace(theme, styles=styles)


THEMES = {
    "light": _theme("light", _LIGHT),
    # the map is toned down where cracks and bars would drown in the full colour
    "dark": _theme("dark", _DARK, "#2d7d98", "#b4532d"),
    "projector": _bolder(_theme("projector", _PROJECTOR), 1.35),
    "print": _theme("print", _PRINT, "#c4c4c4", "#969696"),
}


@cache
def stress_colours(theme: str) -> np.ndarray:
    """Give 63 colours from squeezed over plain concrete to stretched, uint8 of shape (63, 3)."""
    chosen = THEMES[theme]
    ends = [_rgb(chosen.squeezed), _rgb(chosen.middle), _rgb(chosen.stretched)]
    at = np.linspace(-1.0, 1.0, 63)
    # a gentle start: small stresses stay close to the colour of concrete
    bent = np.sign(at) * np.abs(at) ** 1.25 * 0.92
    rows = [np.interp(bent, [-1, 0, 1], [e[k] for e in ends]) for k in range(3)]
    return np.stack(rows, axis=1).round().astype(np.uint8)


def _rgb(colour: str) -> tuple[int, int, int]:
    return tuple(int(colour[k : k + 2], 16) for k in (1, 3, 5))
