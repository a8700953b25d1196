"""Smooth shapes of a curled slab, made up so that each part of its picture has something to show.

They are no mechanics: a bowl that is pushed down where a load presses. They serve to look at
drawings of states that are rare or hard to reach.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bars import bar
from crackkit.mechanics.crack_limits import limit
from crackkit.structures import fields
from crackkit.structures.curled import BreakLine, Curled, Dryness, FaceStress, Patch
from crackkit.structures.laid_bars import BAR_SIZES
from crackkit.structures.outcome import (
    TIGHT,
    UNCRACKED,
    UNHELD,
    Crack,
    Lengthening,
    Outcome,
    Told,
    Verdict,
    WidthBand,
)

UNDER = (("sheet", ""), ("damp", ""), ("blotter", ""), ("open", ""))
STRENGTH = 3.2  # MPa
RULES = (("frosch", 0.24), ("en1992", 0.31), ("gergely_lutz", 0.28))
BAND = WidthBand(0.24, 0.28, 0.31, 0.31, "en1992", "EN 1992-1-1", RULES)


@dataclass(frozen=True)
class Load:
    force: float = fields.number("Load", "force", 0.0, 60e3, 10e3)
    x: float = fields.number("Along", "length", 0.0, lambda slab, _l: slab.length, 300.0)
    y: float = fields.number("Across", "length", 0.0, lambda slab, _l: slab.width, 300.0)
    side: float = fields.number("Side", "size", 50.0, 300.0, 150.0)


@dataclass(frozen=True)
class Slab:
    age: float = fields.number("Age", "age", 1.0, 1095.0, 180.0)
    loads: tuple = fields.parts("Wheel", 1, 2, (Load(),))
    length: float = fields.number("Length", "length", 2000.0, 8000.0, 4500.0)
    width: float = fields.number("Width", "length", 2000.0, 8000.0, 4500.0)
    thickness: float = fields.number("Thickness", "size", 75.0, 300.0, 150.0)
    transfer: float = fields.number("Transfer", "ratio", 0.0, 1.0, 0.0)
    under: str = fields.choice("Under", UNDER, "sheet")
    humidity: float = fields.number("Humidity", "ratio", 0.3, 0.95, 0.5)
    curing: float = fields.number("Curing", "time", 1.0, 28.0, 7.0)
    steel: str = fields.choice("Mat", (("none", "none"), *BAR_SIZES), "none")
    spacing: float = fields.number("Spacing", "size", 75.0, 450.0, 200.0)
    cover: float = fields.number("Cover", "size", 20.0, lambda slab, _o: slab.thickness / 2, 40.0)
    yield_strength: float = 500.0
    title: str = "A slab that curls"
    # of the free corners [mm]; below 0 it humps, as in the sun
    rise: float = fields.number("Rise", "movement", -4.0, 16.0, 5.0)

    @property
    def bar(self):
        return bar(self.steel) if self.steel != "none" else None


def shape(slab) -> Curled:
    x, y = np.linspace(0.0, slab.length, 41), np.linspace(0.0, slab.width, 37)
    X, Y = np.meshgrid(x, y)
    u, v = 2 * X / slab.length - 1, 2 * Y / slab.width - 1
    lift = slab.rise * ((u**2 + v**2) / 2 - 0.2)
    stress = 0.5 * STRENGTH * np.cbrt(slab.rise / 5.0) * (1 - 0.6 * (u**2 + v**2))
    angle = np.arctan2(v, u) + np.pi / 2
    under = 0.05 + 0.0 * X
    for load in slab.loads:
        far = np.hypot(X - load.x, Y - load.y)
        hard = load.force / 10e3
        lift = lift - 0.9 * hard * np.exp(-((far / 900.0) ** 2))
        off = np.hypot(load.x - slab.length / 2, load.y - slab.width / 2) / (slab.length / 2)
        ring = np.exp(-(((far - 950.0) / 420.0) ** 2))
        stress = stress + 2.1 * hard * min(off, 1.0) * ring * (slab.rise > 0)
        under = under + 3.0 * hard * np.exp(-((far / 300.0) ** 2)) * (1.2 - min(off, 1.0))
    rise = max(lift[0, 0], lift[0, -1], lift[-1, 0], lift[-1, -1])
    top, bottom = _face(stress, angle, x, y), _face(under, angle, x, y)
    days = np.geomspace(1.0, 1095.0, 40)
    grow = np.log10(np.maximum(days / slab.curing, 1.0))
    rises = slab.rise * 0.8 * grow * np.exp(-grow / 2.0) / 0.73
    return Curled(
        x=x,
        y=y,
        lift=lift,
        open=lift > 0,
        open_share=float((lift > 0).mean()),
        corner_rise=float(rise),
        top=top,
        bottom=bottom,
        strength=STRENGTH,
        patches=tuple(
            Patch(one.x, one.y, one.side, one.force, f"loads.{k}")
            for k, one in enumerate(slab.loads)
        ),
        line=_line(slab, top, bottom),
        dryness=_dryness(slab),
        told_rises=lambda: (days, rises),
    )


def _face(stress, angle, x, y) -> FaceStress:
    row, column = np.unravel_index(stress.argmax(), stress.shape)
    at = float(x[column]), float(y[row])
    return FaceStress(stress, angle, float(stress.max()), at)


def _line(slab, top, bottom):
    face = top if top.peak >= bottom.peak else bottom
    if face.peak < STRENGTH:
        return None
    load = slab.loads[0]
    reach = 1250.0
    turn = np.linspace(0.0, np.pi / 2, 15)
    left, near = load.x < slab.length / 2, load.y < slab.width / 2
    bend = reach * np.column_stack([np.cos(turn), np.sin(turn)]) ** 1.3
    points = np.column_stack(
        [
            bend[:, 0] if left else slab.length - bend[:, 0],
            bend[:, 1] if near else slab.width - bend[:, 1],
        ]
    )
    held = slab.bar is not None
    name = "top" if face is top else "bottom"
    return BreakLine(name, points, True, BAND if held else None, 210.0 if held else 0.0)


def _dryness(slab) -> Dryness:
    depth = np.linspace(0.0, slab.thickness, 41)
    deep = depth / slab.thickness
    humidity = 0.97 - (0.97 - slab.humidity) * np.exp(-3.5 * deep)
    shrinkage = 7e-4 * (1 - humidity**3)
    slope, mean = np.polyfit(deep - 0.5, shrinkage, 1)
    own = 20e3 * (shrinkage - mean - slope * (deep - 0.5))
    stress = np.minimum(own, 2.4)
    return Dryness(
        depth, humidity, shrinkage, stress, bool((own > 2.4).any()), float(mean), float(-slope)
    )


def outcome(slab) -> Outcome:
    state = shape(slab)
    line = state.line
    cracks, key, why = (), UNCRACKED, "It bears what pulls at it: no crack comes."
    if line is not None:
        path = np.array([(line.points[0, 0], 0.0), (line.points[0, 0], 60.0)])
        bars = ("mat",) if line.width else ()
        cracks = (Crack(line.face, float(line.points[0, 0]), path, line.width, 210.0, bars, 1.0),)
        key = TIGHT if line.width else UNHELD
        why = "The corner stands free and the wheel breaks it off: nothing holds the piece."
    bound = limit("EN", "dry")
    return Outcome(
        structure=slab,
        movement=Lengthening(state.corner_rise),
        tension=(),
        cracks=cracks,
        steel=(),
        verdict=Verdict(key, line.width.governing if line and line.width else None, bound, why),
        cautions=(),
        steel_mass=0.0,
        work=tuple,
        x=state.x,
        curled=state,
        numbers=(
            Told("gradient", "top shrinks more by", state.dryness.gradient, "strain"),
            Told("rise", "corner stands up", state.corner_rise, "movement"),
            Told("open", "share lifted", state.open_share, "ratio"),
            Told("share", "most stretched", state.share, "ratio"),
            Told("width", "crack", "none" if line is None else "breaks off", "width"),
            Told("mass", "bars weigh", 0.0, "mass_per_area"),
        ),
    )
