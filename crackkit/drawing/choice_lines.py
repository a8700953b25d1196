"""Lines over the field: the limit, cracks of one width, bars of one weight."""

import numpy as np

from crackkit.drawing.choice_chips import chip, chip_box
from crackkit.drawing.choice_field import ChoiceField
from crackkit.drawing.choice_kinds import CLOSE, FAR, TIGHT, WIDE
from crackkit.drawing.frames import View
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Lines, Polyline
from crackkit.structures.control_ranges import is_slab
from crackkit.units import shown
from crackkit.units.quantities import INCH

LEVELS = {"SI": (0.1, 0.2, 0.3, 0.4), "US": tuple(n * INCH for n in (0.004, 0.008, 0.012, 0.016))}
CLEAR = 0.15  # share of the limit within which no other width has a line
WEIGHTS = (0.5, 1.0, 2.0)  # times the steel of the chosen bars
ASIDE = 4.0  # words from their line


def crossings(field: ChoiceField, level: float) -> dict[int, float]:
    """Where cracks first pass a width [mm], by lane, on the drawing; only where bars can lie."""
    kinds = field.kinds
    over = kinds.widths > level
    found = {}
    for k, row in enumerate(over):
        first = int(row.argmax())
        if first and kinds.said[k, first - 1] not in (CLOSE, FAR):
            found[k] = float(field.x((kinds.spacings[first] + kinds.spacings[first - 1]) / 2))
    return found


def limit_line(field: ChoiceField) -> list:
    """Mark the limit in each lane."""
    edges = [
        ((right, field.lane(k)[0]), (right, field.lane(k)[1]))
        for (kind, k, _left, right), (after, *_rest) in _neighbours(field)
        if kind == TIGHT and after >= WIDE and after not in (CLOSE, FAR)
    ]
    return [Lines(np.array(edges), "limit")] if edges else []


def _neighbours(field: ChoiceField):
    runs = field.runs
    return [(a, b) for a, b in zip(runs, runs[1:], strict=False) if a[1] == b[1]]


def width_lines(field: ChoiceField, taken: list, view: View) -> tuple[list, list]:
    """Draw lines of equal crack width; give lines, and words where there is room."""
    limit, shapes, words = field.outcome.verdict.limit.width, [], []
    for level in LEVELS[view.system]:
        if abs(level / limit - 1.0) < CLEAR:
            continue
        places = crossings(field, level)
        shapes += _threads(field, places, "leader")
        words += _named(field, places, shown(level, "width", view.system), taken, "tick")
    return shapes, words


def steel_places(field: ChoiceField, times: float) -> dict[int, float]:
    """Where bars weigh so many times the chosen ones, by lane, on the drawing."""
    spacings = field.chart.areas * field.spacing / field.outcome.structure.bar.area / times
    x = field.x(spacings)
    inside = (x >= field.left) & (x <= field.right)
    return {k: float(x[k]) for k in np.flatnonzero(inside).tolist()}


def steel_lines(field: ChoiceField, taken: list, view: View) -> tuple[list, list]:
    """Draw lines of equal steel; give lines, and of a slab the weights."""
    shapes, words = [], []
    for times in sorted(WEIGHTS, key=lambda n: n != 1.0):
        places = steel_places(field, times)
        shapes += _threads(field, places, "steel_now" if times == 1.0 else "ghost")
        if is_slab(field.outcome.structure):
            told = shown(times * main_mass(field.outcome), "mass_per_area", view.system)
            role = "label_bold" if times == 1.0 else "tick"
            words += _named(field, places, told, taken, role)
    return shapes, words


def main_mass(outcome) -> float:
    """Main bars on a square metre of a slab, all faces [kg/m2]."""
    structure = outcome.structure
    faces = 2.0 if structure.faces == 2.0 else 1.0
    return 1000.0 * faces * structure.bar.mass / structure.spacing


def _threads(field: ChoiceField, places: dict, role: str) -> list:
    """Lines through the middles of neighbouring lanes."""
    found, run = [], []
    for k in range(len(field.chart.sizes) + 1):
        if k in places:
            run.append((places[k], field.middle(k)))
            continue
        if len(run) > 1:
            found.append(Polyline(np.array(run), role))
        run = []
    return found


def _named(field: ChoiceField, places: dict, words: str, taken: list, role: str) -> list:
    """Write words beside a line, in the first lane from above that has room."""
    half = width_of(words, role) / 2 + ASIDE
    for k in sorted(places, reverse=True):
        y = field.middle(k) + 4.0
        for centre in (places[k] + half, places[k] - half):
            room = chip_box(centre, y, words, role)
            inside = room.left >= field.left and room.right <= field.right
            if inside and not any(room.meets(other) for other in taken):
                taken.append(room)
                return chip(centre, y, words, role)
    return []
