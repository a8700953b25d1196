"""What a mat near the top makes of the crack of a slab that curls: a bent strip, top stretched."""

from crackkit.structures.strip_bars import StripBars
from crackkit.structures.strip_stress import BENT, Strip
from crackkit.structures.strip_width import StripCracks, strip_cracks

WIDE = 1000.0  # mm of the slab that are looked at


def mat_cracks(it, stress: float) -> StripCracks | None:
    """Width and stress in the mat where the uncracked top would be pulled so hard; None without.

    The moment before it cracked is taken to act on the cracked section: curling eases as it
    cracks, so widths come out too large rather than too small.

    Parameters
    ----------
    it : CurledSlab
    stress : float
        Tension of the top face if it had not cracked [MPa].
    """
    if not it.area or it.thickness - it.cover - 1.5 * it.bar.diameter < 0.2 * it.thickness:
        return None  # no mat, or one so deep that it lies where the slab is squeezed
    strip = Strip(WIDE, it.thickness, it.strength, it.code, "lasting", BENT)
    # the deeper layer of the mat decides: a crack may cross either
    cover = it.cover + it.bar.diameter
    bars = StripBars(it.bar.diameter, it.bar.area, WIDE / it.spacing, it.spacing, cover)
    return strip_cracks(strip, bars, stress * WIDE * it.thickness**2 / 6.0)
