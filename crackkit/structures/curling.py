"""How a slab fares that dries from its top: from moisture to the shape, the stress and the break.

Drying does not depend on wheels, nor on the age that is looked at, so it is worked out once and
kept; so is the rise of the corners day by day.
"""

from functools import lru_cache, partial

import numpy as np

from crackkit.mechanics.concrete import concrete
from crackkit.mechanics.drying_slab import DryingSlab
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.humidity_shrinkage import ShrinkageHistory, shrinkage_history
from crackkit.mechanics.moisture_diffusion import (
    SEALED,
    THREE_YEARS,
    Face,
    drying_history,
    on_ground,
)
from crackkit.mechanics.moisture_diffusivity import diffusivity_mc1990
from crackkit.mechanics.monotone_curve import monotone_curve
from crackkit.mechanics.plate_crack_line import crack_line
from crackkit.mechanics.plate_faces import bottom_stress, most_stretched, top_stress
from crackkit.mechanics.plate_slab import LoadPatch, PlateEdge, PlateSlab, even_curvature
from crackkit.mechanics.plate_state import Stage, crept_plate_state, lifted_share
from crackkit.mechanics.restraint_stress import age_adjusted_modulus
from crackkit.mechanics.strength_in_time import concrete_in_time
from crackkit.mechanics.surface_stress import SurfaceStress, surface_stress
from crackkit.structures.curled import BreakLine, Curled, Dryness, FaceStress, Patch
from crackkit.structures.curled_mat import mat_cracks
from crackkit.structures.materials import EXPANSION
from crackkit.structures.member import bent_strength

RIM = 0.5  # thicknesses along the edges where the peak is not sought, see `most_stretched`
STEPS = 49  # lines of the grid each way
POINTS = 60  # of the curve of the rise
CORNER = 0.45  # share of both sides: a line that ends on two edges within it cuts a corner off
# A dry layer takes up some water from below: its air, and a film of this much mm/day. Assumed.
BLOTTER = Face(0.80, 0.26)
TOLD = np.array([2.0, 6.0, 14.0, 28.0, 50.0, 85.0, 140.0, 230.0, 380.0, 640.0, THREE_YEARS])
"""Days after curing at which the rise of the corners is worked out."""


def curled(it) -> Curled:
    """Work out the state of a CurledSlab at its age."""
    dryness = dryness_at(it, it.age)
    state = _plate(it, it.age, dryness.gradient, patches(it), it.warmer)
    x, y = np.linspace(0.0, it.length, STEPS), np.linspace(0.0, it.width, STEPS)
    down, moments = state.shape.deflection(x, y), state.shape.moments(x, y)
    faces = {"top": top_stress, "bottom": bottom_stress}
    rim = RIM * it.thickness
    fine = {name: most_stretched(getattr(state, name), state.x, state.y, rim) for name in faces}
    found = {
        name: _face(stress(moments, it.thickness), fine[name]) for name, stress in faces.items()
    }
    strength = bent_strength_at(it, it.age)
    return Curled(
        x=x,
        y=y,
        lift=-down.T,
        open=down.T < 0.0,
        open_share=float(lifted_share(x, y, down)),
        corner_rise=float(np.max(state.corner_rise)),
        top=found["top"],
        bottom=found["bottom"],
        strength=strength,
        patches=wheels(it),
        line=_line(it, x, y, found, strength),
        dryness=dryness,
        told_rises=partial(_rises, _shape_key(it)),
    )


def _face(stress, peak) -> FaceStress:
    return FaceStress(stress.s1.T, stress.angle.T, peak.stress, (peak.x, peak.y))


def _line(it, x, y, faces: dict, strength: float) -> BreakLine | None:
    # a break from above is what a curled slab is ruined by; below it a wheel leaves a short crack
    name = next((each for each in ("top", "bottom") if faces[each].peak > strength), None)
    if name is None:
        return None
    face = faces[name]
    points = crack_line(x, y, face.direction, face.at, it.thickness)
    held = mat_cracks(it, face.peak) if name == "top" else None
    stress = float(held.held.stress) if held else 0.0
    return BreakLine(name, points, _cuts_corner(it, points), held.band if held else None, stress)


def _cuts_corner(it, points: np.ndarray) -> bool:
    """Whether both ends lie close to the same corner, on its two edges."""
    size = np.array([it.length, it.width])
    near, far = points[0] / size, points[-1] / size
    sides = np.rint(near), np.rint(far)
    close = np.abs(np.array([near, far]) - np.rint([near, far])).max() < CORNER
    return bool(close and (sides[0] == sides[1]).all())


def wheels(it) -> tuple[Patch, ...]:
    """Loads as they stand; a foot never hangs over an edge."""
    return tuple(
        Patch(
            _inside(load.x, load.side, it.length),
            _inside(load.y, load.side, it.width),
            load.side,
            load.force,
            f"loads.{k}",
        )
        for k, load in enumerate(it.loads)
    )


def _inside(at: float, side: float, length: float) -> float:
    return min(max(at, side / 2), length - side / 2)


def patches(it) -> tuple[LoadPatch, ...]:
    """Wheels in the words of mechanics."""
    return tuple(LoadPatch(w.x, w.y, w.side, w.side, w.force) for w in wheels(it) if w.force > 0)


def bent_strength_at(it, age: float) -> float:
    """Stress at which a face cracks at an age [MPa]; drying pulls for months: `bent_strength`."""
    own = it.hardened
    grown = float(concrete_in_time(age, own, it.code).tensile) / own.tensile
    return bent_strength(own, it.code, "lasting") * grown


def _plate(it, age: float, gradient: float, loads=(), warmer: float = 0.0):
    """Drying meets concrete that creeps; wheels and the sun meet it stiff."""
    quick = float(concrete_in_time(age, it.hardened, it.code).modulus)
    slow = Stage(_slow_modulus(it, age), (), even_curvature(gradient, it.thickness))
    warm = even_curvature(-EXPANSION * warmer, it.thickness)
    edge = PlateEdge("free", it.transfer)
    slab = PlateSlab(
        it.length, it.width, it.thickness, quick, it.ground, it.weight,
        left=edge, right=edge, near=edge, far=edge,
    )  # fmt: skip
    return crept_plate_state(slab, slow, Stage(quick, loads, warm))


def _slow_modulus(it, age: float) -> float:
    """Age-adjusted modulus for what drying has done since the end of curing [MPa]."""
    first = min(it.curing, age)
    modulus = float(concrete_in_time(first, it.hardened, it.code).modulus)
    creep = creep_at_loading(_slab(it), it.hardened, it.code)(age, first) if age > first else 0.0
    return float(age_adjusted_modulus(modulus, creep))


def _slab(it) -> DryingSlab:
    faces = 2 if it.under == "open" else 1
    return DryingSlab(it.strength, 100.0 * it.humidity, it.thickness, faces, it.curing)


def _dry_key(it) -> tuple:
    return it.thickness, it.strength, it.humidity, it.curing, it.shrinks, it.under, it.code


@lru_cache(maxsize=64)
def _dried(key: tuple) -> tuple[ShrinkageHistory, SurfaceStress, np.ndarray]:
    """Three years of drying: what each layer wants, the stress of the section, the humidity."""
    thickness, strength, humidity, curing, shrinks, under, code = key
    bottom = {"sheet": SEALED, "damp": on_ground(), "blotter": BLOTTER, "open": Face(humidity)}
    moisture = drying_history(
        thickness, diffusivity_mc1990(strength), Face(humidity), bottom[under]
    )
    wanted = shrinkage_history(moisture, shrinks)
    faces = 2 if under == "open" else 1
    slab = DryingSlab(strength, 100.0 * humidity, thickness, faces, curing)
    stress = surface_stress(wanted, slab, concrete(strength, thickness, code), code)
    return wanted, stress, moisture.humidity


def dryness_at(it, age: float) -> Dryness:
    """What the air has done to the section by an age; nothing before curing ends."""
    wanted, stress, humidity = _dried(_dry_key(it))
    share, k = _between(wanted.days, max(age - it.curing, 0.0))

    def then(values):
        return (1 - share) * values[k - 1] + share * values[k]

    return Dryness(
        wanted.depths,
        then(humidity),
        then(wanted.strain),
        then(stress.stress),
        bool(age > it.curing and stress.crazes[k]),
        float(then(wanted.mean)),
        float(then(wanted.gradient)),
    )


def _between(days: np.ndarray, day: float) -> tuple[float, int]:
    """Share and place of a day among others, straight over the root of time."""
    root, wanted = np.sqrt(days), np.sqrt(day)
    k = int(np.clip(root.searchsorted(wanted), 1, root.size - 1))
    return float(np.clip((wanted - root[k - 1]) / (root[k] - root[k - 1]), 0.0, 1.0)), k


def _shape_key(it):
    """The slab without its wheels at no special age: what the rise of its corners depends on."""
    return it.unloaded


@lru_cache(maxsize=64)
def _rises(it) -> tuple[np.ndarray, np.ndarray]:
    """Ages, and how high the corners stand then without any wheel [mm], smooth between `TOLD`."""
    ages = np.append(it.curing, np.minimum(it.curing + TOLD, it.last_day))
    states = (_plate(it, age, dryness_at(it, age).gradient) for age in ages.tolist())
    rises = np.array([float(np.max(state.corner_rise)) for state in states])
    days = np.geomspace(it.curing, it.last_day, POINTS)
    return days, monotone_curve(np.log(ages), rises, np.log(days))
