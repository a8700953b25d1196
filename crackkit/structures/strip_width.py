"""Crack widths of a strip: by all published rules, or with fibres by the one that knows them."""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics import crack_width
from crackkit.mechanics.crack_width import CrackWidth, all_widths
from crackkit.structures.cracking import GOVERNING, width_bands
from crackkit.structures.outcome import WidthBand
from crackkit.structures.strip_bars import StripBars
from crackkit.structures.strip_stress import Strip, StripStress, strip_stress, zone

MEAN_SHARE = 2 / 3  # mean over largest crack spacing; MC2010 7.6.4.4, from memory


@dataclass(frozen=True)
class StripCracks:
    """Cracks across the bars of one direction.

    Attributes
    ----------
    bars : StripBars
    held : StripStress
        Stress in the bars.
    answers : tuple of CrackWidth
        What the rules say, line by line.
    band : WidthBand
        All of it; of a strip with fibres the one rule that knows them.
    spacing : float
        Mean distance of the cracks by Model Code 2010 [mm].
    """

    bars: StripBars
    held: StripStress
    answers: tuple[CrackWidth, ...]
    band: WidthBand
    spacing: float


def strip_cracks(strip: Strip, bars: StripBars, load: float) -> StripCracks:
    """Work out the cracks across the bars of one direction under a moment or a pull."""
    held = strip_stress(strip, bars, load)
    cracked = zone(strip, bars, held)
    if strip.residual > 0.0:
        answers = (_with_fibres(cracked, strip.residual),)
        width = float(answers[0].width)
        named = answers[0].rule, answers[0].name
        band = WidthBand(width, width, width, width, *named, ((answers[0].rule, width),))
        spacing = answers[0].spacing
    else:
        answers = all_widths(cracked)
        band = width_bands(answers, strip.code, 1)[0]
        spacing = next(each.spacing for each in answers if each.rule == "model_code_2010")
    return StripCracks(bars, held, answers, band, MEAN_SHARE * float(spacing))


def governing_width(strip: Strip, bars: StripBars, load) -> np.ndarray:
    """Give the width by the rule that governs [mm], for many cases of bars at once."""
    cracked = zone(strip, bars, strip_stress(strip, bars, load))
    if strip.residual > 0.0:
        return np.asarray(_with_fibres(cracked, strip.residual).width)
    return np.asarray(getattr(crack_width, GOVERNING[strip.code])(cracked).width)


def _with_fibres(cracked, residual: float) -> CrackWidth:
    """Width with fibres; a crack is never taken to hold less than the stress it formed at.

    Below that stress the load alone would not have opened it; shrinkage does, and the bars then
    have the stress of the first crack (MC2010 7.6.4.4, from memory).
    """
    answer = crack_width.model_code_2010_fibres(cracked, residual)
    formed = np.maximum(cracked.steel_stress, answer.values["sigma_sr"])[()]
    return crack_width.model_code_2010_fibres(replace(cracked, steel_stress=formed), residual)
