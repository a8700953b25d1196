"""A crack that finds its own way through a slab with an inside corner: an illustration, as a film.

Where the crack runs and how wide it gapes is worked out by `CornerSlab`; here a lattice of bonds
shrinks and breaks, so that one can watch.
"""

from dataclasses import dataclass, field, replace
from functools import lru_cache, partial
from typing import ClassVar

import numpy as np

from crackkit.mechanics.crack_limits import limit
from crackkit.mechanics.lattice import LIMITS, LatticeConcrete, LatticeRun, lattice_run
from crackkit.structures import fields
from crackkit.structures.corner_ages import at_age
from crackkit.structures.corner_restraint import holds, restraint, tied
from crackkit.structures.corner_shapes import form, outline
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.counts import Count
from crackkit.structures.outcome import (
    UNCRACKED,
    UNHELD,
    Caution,
    Lengthening,
    Outcome,
    Told,
    Verdict,
    WorkingStep,
)
from crackkit.structures.slab_history import shortening
from crackkit.words import _

FRAMES = 60
"""Pictures of the film."""

_AGES = np.geomspace(1.0, 3650.0, 400)


@dataclass(frozen=True)
class WanderingCrack:
    """A slab with an inside corner as a lattice that breaks, one picture of its film.

    Parameters
    ----------
    frame : int
        Number of the picture, 1 to `FRAMES`: from the sound slab to the last day of `slab`.
    seed : int
        Which concrete: how chance has strewn the bonds.
    slab : CornerSlab
        What shrinks, up to its age; its bars, joints and base are not in it.

    Raises
    ------
    InputError
        If an input is outside its range; names field, value and range.
    """

    frame: int = fields.number(
        _("Picture"), "count", 1, FRAMES, 1, _("From the sound slab to its last day."), plays=True
    )
    seed: int = fields.number(
        _("Which concrete"), "count", 1, 99, 1, _("Chance strews it anew: the crack moves.")
    )
    slab: CornerSlab = field(default_factory=CornerSlab)

    origin: ClassVar[float] = 0.0
    origin_name: ClassVar[str] = ""
    drawing: ClassVar[str] = "wandering_picture"
    title: ClassVar[str] = _("A crack that finds its own way")
    topics: ClassVar[tuple] = ((_("Film"), ("frame", "seed")),)

    def __post_init__(self):
        fields.check(self)

    @property
    def counts(self) -> tuple[Count, ...]:
        """What the button does: take another concrete."""
        onward = {"seed": self.seed % 99 + 1}
        return (Count("another", _("Another concrete"), "seed", onward),)

    def handle_changes(self, path: str, value: float) -> dict:
        """Translate a drag on the drawing into changes of inputs."""
        return {path: value}

    @property
    def run(self) -> LatticeRun:
        """The whole film."""
        return _run(self.slab, self.seed)

    @property
    def number(self) -> int:
        """Number of the frame of the run; a short run has fewer than the film has pictures."""
        last = len(self.run.frames) - 1
        return round((self.frame - 1) * last / (FRAMES - 1))

    @property
    def day(self) -> float:
        """Age at which the slab has shrunk as far as in this picture [days]."""
        strain = self.run.frame(self.number).strain
        return float(np.interp(strain, shortening(self.slab, _AGES), _AGES))

    @property
    def tied(self) -> tuple[np.ndarray, ...]:
        """Sides that are tied, as ends of straight lines [mm]."""
        return tied(form(self.slab), restraint(self.slab))

    def solve(self) -> Outcome:
        """Answer how far it has torn in this picture."""
        run, number = self.run, self.number
        torn = int(np.sum(run.frame(number).softness <= 0.0))
        bound = limit(self.slab.code, self.slab.exposure)
        words = (
            (UNHELD, _("No bars are in this film: the crack runs where it can."))
            if torn
            else (UNCRACKED, _("Nothing has torn yet."))
        )
        return Outcome(
            structure=self,
            movement=Lengthening(-float(np.abs(run.movements[number]).max())),
            tension=(),
            cracks=(),
            steel=(),
            verdict=Verdict(words[0], None, bound, words[1]),
            cautions=_cautions(),
            steel_mass=0.0,
            work=partial(_working, self),
            x=np.zeros(1),
            numbers=(Told("torn", _("bonds that are torn"), float(torn), "count"),),
        )


@lru_cache(maxsize=16)
def _run(slab: CornerSlab, seed: int) -> LatticeRun:
    of, by, now = form(slab), restraint(slab), _now(slab)
    # holds are told for a modulus of 1 MPa and a thickness of 1 mm
    scale = now.modulus * slab.thickness
    held = tuple(replace(one, stiffness=one.stiffness * scale) for one in holds(of, by))
    concrete = LatticeConcrete(now.modulus, now.strength, now.toughness, slab.thickness)
    return lattice_run(outline(of), held, concrete, now.free, seed)


def _now(slab: CornerSlab):
    return at_age(slab, slab.age)


def _cautions() -> tuple[Caution, ...]:
    text = _("A teaching picture, not a design: local codes and a licensed engineer decide.")
    return (Caution("film", LIMITS[0]), Caution("estimate", text))


def _working(it: WanderingCrack) -> tuple[WorkingStep, ...]:
    now, topic = _now(it.slab), _("What the lattice is made of")
    told = (
        ("E", _("modulus, creep counted in"), now.modulus, "stress", ""),
        ("f_ct", _("strength under direct pull"), now.strength, "strength", ""),
        ("G_F", _("fracture energy [N/mm]"), f"{now.toughness:.3f}", "", "MC 2010, 5.1.5.2"),
        ("eps", _("shrinkage in this picture"), it.run.frame(it.number).strain, "strain", ""),
    )
    return tuple(WorkingStep(s, text, "", v, q, where, topic) for s, text, v, q, where in told)
