"""What the lesson on slabs that curl tells its readers, held against the mechanics."""

from dataclasses import replace

from crackkit.learning.curling import at_corner, at_edge, panel, pull, walk, wet_panel
from crackkit.mechanics.plate_curl import lifted_length, lifted_rise
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, UNCRACKED, UNHELD


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _walk_promises(system) | _other_promises(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found


def _walk_promises(system: str) -> dict[str, bool]:
    wet, dry, edge, corner, short, dowels, mat, cured, opened = (
        fitted(panel(system), step.changes)[0].solve() for step in walk(system)
    )
    broken = corner.curled.line
    return {
        "wet it lies flat": wet.curled.open_share == 0.0 and wet.curled.corner_rise < 0.01,
        "its bottom is stretched, to some 0.7": wet.curled.bottom.peak > wet.curled.top.peak
        and 0.6 < wet.curled.share < 0.8,
        "dry its corners stand up": dry.curled.corner_rise > 4.0,
        "most of it has air below": dry.curled.open_share > 0.6,
        "and its top is stretched": dry.curled.top.peak > 10 * max(dry.curled.bottom.peak, 0.01),
        "an edge holds yet": edge.verdict.key == UNCRACKED and 0.9 < edge.curled.share < 1.0,
        "the corner breaks from above": corner.verdict.key == UNHELD and broken.face == "top",
        "half the panel helps a lot": short.curled.share < 0.75 * corner.curled.share,
        "dowels let the corner hold": dowels.verdict.key == UNCRACKED,
        "and it still stands up": dowels.curled.corner_rise > 0.9 * corner.curled.corner_rise,
        "a mat changes nothing about curling": abs(mat.curled.share / corner.curled.share - 1)
        < 1e-9,
        "but keeps the crack fine": mat.verdict.key == TIGHT,
        "curing for longer helps not at all": cured.curled.share > corner.curled.share,
        "drying both ways it stays flat": abs(opened.curled.dryness.gradient) < 1e-6,
    }


def _other_promises(system: str) -> dict[str, bool]:
    slab, corner = panel(system), at_corner(panel(system), system)
    thick = replace(corner, thickness=1.5 * corner.thickness)
    stiff = replace(corner, shrinks=5e-4)
    ages = {day: pull(replace(corner, age=day)) for day in (30.0, 45.0, 90.0, 365.0, 1095.0)}
    flat = wet_panel(system)
    return {
        "half as thick again helps a little at most": 0.8 < pull(thick) / pull(corner) < 1.0,
        "a mix that shrinks less helps": pull(stiff) < 0.75 * pull(corner),
        "the first two months are the worst": max(ages, key=ages.get) in (30.0, 45.0),
        "and later it lies down again": ages[1095.0] < 0.8 * ages[90.0],
        "middle, edge, corner: harder each time": pull(slab)
        < pull(at_edge(slab, system))
        < pull(corner),
        "wet, the corner pulls from below": flat.solve().curled.top.peak
        < 0.2 * flat.curled.strength,
        "the strip that weight holds down": _strip_is_told(),
    }


def _strip_is_told() -> bool:
    """The lesson's example: 150 mm, 25 GPa, 0.3 ‰ more on top (A rigid base, closed form)."""
    rigidity, curvature, weight = 25e3 * 150.0**3 / 12, 3e-4 / 150.0, 24e-6 * 150.0
    length = float(lifted_length(rigidity, curvature, weight))
    rise = float(lifted_rise(rigidity, curvature, weight))
    return 2700.0 < length < 2900.0 and 3.8 < rise < 4.0
