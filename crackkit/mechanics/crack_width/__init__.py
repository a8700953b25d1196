"""Crack widths by published rules, one file for each rule; all read one `CrackZone`."""

from crackkit.mechanics.crack_width.band import FAMILIES, all_widths, band, spread
from crackkit.mechanics.crack_width.bar_spacing import aci_bar_spacing_limit
from crackkit.mechanics.crack_width.bs_8007 import bs_8007
from crackkit.mechanics.crack_width.bs_8110 import bs_8110
from crackkit.mechanics.crack_width.en_2004 import en_2004
from crackkit.mechanics.crack_width.en_2023 import en_2023
from crackkit.mechanics.crack_width.frosch import frosch
from crackkit.mechanics.crack_width.gergely_lutz import gergely_lutz
from crackkit.mechanics.crack_width.mixed_bars import equivalent_diameter
from crackkit.mechanics.crack_width.model_code_2010 import model_code_2010
from crackkit.mechanics.crack_width.model_code_2010_fibres import model_code_2010_fibres
from crackkit.mechanics.crack_width.result import CrackWidth, Line, Step, with_numbers

__all__ = [
    "FAMILIES",
    "CrackWidth",
    "Line",
    "Step",
    "aci_bar_spacing_limit",
    "all_widths",
    "band",
    "bs_8007",
    "bs_8110",
    "en_2004",
    "en_2023",
    "equivalent_diameter",
    "frosch",
    "gergely_lutz",
    "model_code_2010",
    "model_code_2010_fibres",
    "spread",
    "with_numbers",
]
