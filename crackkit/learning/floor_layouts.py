"""Drawings of the bars of a floor over three spans, to choose from."""

from dataclasses import replace

from crackkit.learning.floor_walk import SKETCHED
from crackkit.learning.layouts import Layout
from crackkit.structures.continuous_beam import ContinuousBeam
from crackkit.words import _


def layouts(floor: ContinuousBeam, system: str) -> tuple[Layout, ...]:
    """Give four drawings for a floor of three spans.

    Parameters
    ----------
    floor : ContinuousBeam
        With bars that guard every place: top bars reach across its middle span.
    system : str
        Units, ``"SI"`` or ``"US"``: how far the short bars reach is a round number.
    """
    return (
        Layout("below", _("Bottom bars through all spans, none on top"), _below(floor)),
        Layout(
            "short",
            _("Bottom bars in every span; short top bars over each support"),
            _short(floor, SKETCHED[system]),
        ),
        Layout(
            "across",
            _(
                "Bottom bars in every span; top bars over each support, and on across the middle "
                "span"
            ),
            floor,
        ),
        Layout(
            "through",
            _("Bottom bars and top bars through all spans"),
            replace(floor, through=True),
        ),
    )


def _below(floor: ContinuousBeam) -> ContinuousBeam:
    return replace(floor, supports=tuple(replace(each, laid=False) for each in floor.supports))


def _short(floor: ContinuousBeam, far: float) -> ContinuousBeam:
    first, second, third, last = floor.supports
    supports = (first, replace(second, right_reach=far), replace(third, left_reach=far), last)
    return replace(floor, supports=supports)
