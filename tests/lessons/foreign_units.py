"""Quantities in a text that are written in units other than those the reader has chosen."""

import re

THIN = "\u202f"
METRIC = r"(?:mm[²⁴]?|cm|m²|m³|m|km/h|kg(?:/m[²³])?|k?N(?:/m|·m)?|[kM]Pa|MN/m³|°C|‰)"
FEET = r"(?:in[²³⁴]?|ft[²³]?|lb(?:/\w+[²³]?)?|kip(?:/ft|·ft)?|ps[if]|ksi|mil|mph|°F|millionths)"
UNITS = {"SI": METRIC, "US": FEET}
OTHER = {"SI": "US", "US": "SI"}
BARS = "6|8|10|12|14|16|20|25|28|32|40"  # sizes in mm, which are names


def left(text: str, system: str) -> list[str]:
    """Find the quantities in a text that are written in units of the other system.

    Bars have their names wherever they are: ``12 mm`` with a plain space is one. A quantity that
    stands beside its twin, ``20 kg/m³ (34 lb/yd³)``, is there for both.
    """
    number, unit = rf"(?<![#\d])\d[\d.,]*(?:{THIN}\d\d\d)*", UNITS[OTHER[system]]
    si, us = (rf"{number}[ {THIN}]{UNITS[system]}" for system in ("SI", "US"))
    text = re.sub(rf"{si}(?: \({us}\)| = {us}| or {us})|{us} \({si}\)", "", text)
    found = re.findall(rf"{number}[ {THIN}]{unit}(?![\w/·²³⁴])", text)
    return [one for one in found if not re.fullmatch(rf"({BARS}) mm", one)]
