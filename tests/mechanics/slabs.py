"""Slabs on the ground that several tests share."""

import numpy as np
from hypothesis import strategies as st

from crackkit.mechanics.slab_cracks import SlabLife
from crackkit.mechanics.slab_on_friction import Strip, grip_stiffness

MODULUS = 15000.0
AGES = np.geomspace(0.5, 3650.0, 60)
degrees = st.sampled_from([0.0, 0.1, 0.5, 0.9, 1.0])


@st.composite
def strips(draw, longest=60000.0, held=True):
    """Strips of any length, base and grips."""
    length = draw(st.floats(1000.0, longest))
    thickness = draw(st.floats(80.0, 400.0))
    ends = [draw(degrees) if held else 0.0 for _end in range(2)]
    grips = [grip_stiffness(degree, MODULUS, thickness, length) for degree in ends]
    shear = draw(st.floats(0.2, 2.5)) * 2.4e-5 * thickness
    return Strip(length, thickness, shear, draw(st.floats(0.05, 3.0)), *grips)


def drying_life(strength=2.3, scatter=1.0, shrinkage=500e-6, cooling=100e-6):
    """Ten years of a slab that cools at once and dries slowly, while its strength comes."""
    hard = AGES / (4 + 0.85 * AGES)
    eps = cooling * (1 - np.exp(-AGES)) + shrinkage * AGES / (AGES + 70)
    E = 30000 * np.sqrt(hard) / (1 + 2 * AGES**0.6 / (10 + AGES**0.6))
    mean = strength * hard**0.6
    return SlabLife(AGES, eps, E, mean[:, None] * np.broadcast_to(scatter, 201))
