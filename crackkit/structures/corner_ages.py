"""Concrete of a slab with inside corners at an age: how it has shrunk, hardened and crept."""

from dataclasses import dataclass

from crackkit.mechanics.concrete import mean_strength_en
from crackkit.mechanics.fracture_energy import averaging_length, fracture_energy
from crackkit.mechanics.held_slab import creep_at_loading
from crackkit.mechanics.restraint_stress import age_adjusted_modulus
from crackkit.mechanics.strength_in_time import concrete_in_time
from crackkit.structures.slab_history import shortening


@dataclass(frozen=True)
class AtAge:
    """Concrete and shrinkage at an age: strength, modulus with creep [MPa], G_F [N/mm], strain."""

    free: float
    strength: float
    modulus: float
    toughness: float

    @property
    def material_length(self) -> float:
        """Length over which tension at a corner is averaged [mm]."""
        return averaging_length(self.modulus, self.toughness, self.strength)


def at_age(it, age: float) -> AtAge:
    """Shrinkage and concrete of a CornerSlab at an age [days]."""
    grown = concrete_in_time(age, it.hardened, it.code)
    return AtAge(
        free=float(shortening(it, age)),
        strength=float(grown.tensile),
        modulus=_slow_modulus(it, age),
        toughness=float(fracture_energy(_mean_strength(it, grown))),
    )


def _mean_strength(it, grown) -> float:
    share = float(grown.compressive) / it.hardened.mean_strength
    return share * float(mean_strength_en(it.strength))


def _slow_modulus(it, age: float) -> float:
    """Age-adjusted modulus for what drying has done since the end of curing [MPa]."""
    first = min(it.curing, age)
    modulus = float(concrete_in_time(first, it.hardened, it.code).modulus)
    creep = creep_at_loading(it.slab, it.hardened, it.code)(age, first) if age > first else 0.0
    return float(age_adjusted_modulus(modulus, creep))
