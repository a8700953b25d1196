"""From loads that come and go to the Outcome of a floor over several spans."""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.mechanics import beam as beams
from crackkit.mechanics.deflection import deflection_over_supports
from crackkit.mechanics.redistribution import redistributed
from crackkit.structures.cracking import cracks
from crackkit.structures.floor_range import (
    bears,
    cracking_moments,
    moment_range,
    range_case,
    worst_words,
)
from crackkit.structures.judging import Case, cautions, verdict
from crackkit.structures.line_member import assembled, stretched_by
from crackkit.structures.line_movement import Bending, fall_between, moved
from crackkit.structures.member import Member
from crackkit.structures.outcome import Movement, Outcome
from crackkit.structures.stretching import Stretch, stretch, tension_zones


def outcome(floor, member: Member) -> Outcome:
    """Answer the four questions for the present loads, and for all that can come.

    Parameters
    ----------
    floor : ContinuousBeam
        The inputs; kept in the Outcome.
    member : Member
        Section, bars and material.

    Returns
    -------
    Outcome
        Movement, zones, cracks and steel stress under the present loads; verdict and ``range``
        for every arrangement of the loads that come and go.
    """
    bent = beams.solve(floor.length, floor.held_by, present_loads(floor), member.stiffness)
    elastic = stretched_by(member, bent, floor.held_by)
    shown, settled = _present(floor, elastic)
    whole_range = moment_range(floor, elastic, settled.moment)
    now, later = shown.case(bent), range_case(shown.stretched, whole_range)
    judged = verdict(later)
    return assembled(
        floor,
        shown.stretched,
        now,
        settled.movement,
        range=whole_range,
        verdict=replace(judged, why=worst_words(judged, whole_range)),
        cautions=cautions(
            replace(later, zones=now.zones, falls=now.falls, reactions=now.reactions)
        ),
    )


def present_loads(floor) -> list:
    """Loads as they stand now."""
    loads = [beams.LineLoad(s.start, s.end, s.total, s.total) for s in floor.spread if s.total]
    # at the far end a place may be beyond it by rounding: spans add up to the length
    places = (min(one.at, floor.length) for one in floor.hung)
    forces = (one.force for one in floor.hung)
    return [*loads, *map(beams.PointLoad, forces, places)]


@dataclass(frozen=True)
class _Shown:
    """Bending that the picture shows, and the zones and cracks that come of it."""

    stretched: Stretch
    zones: tuple
    found: tuple
    falls: bool

    def case(self, bent) -> Case:
        reactions = tuple(bent.reactions.tolist())
        return Case(self.stretched.member, self.zones, self.found, self.falls, reactions)


@dataclass(frozen=True)
class _Settled:
    """Moments once cracks have shifted them [N mm], and the movement that goes with them."""

    moment: np.ndarray
    movement: Movement


def _present(floor, elastic: Stretch) -> tuple[_Shown, _Settled]:
    zones = tension_zones(elastic)
    found = cracks(elastic, zones)
    hinges = tuple(crack.at for crack in found if crack.width is None)
    spread_out = redistributed(
        elastic.x,
        elastic.moment,
        floor.held_by,
        Bending(elastic),
        hinges,
        elastic.member.stiffness,
    )
    falls_at = _falls_at(floor, elastic, spread_out, hinges)
    shifted = elastic.moment if falls_at is not None else spread_out.moment
    settled = _Settled(shifted, _movement(floor, elastic, spread_out, hinges, falls_at))
    if floor.shifted and falls_at is None:
        shear = elastic.shear + _added_shear(floor, elastic.x, spread_out.moment - elastic.moment)
        elastic = stretch(elastic.member, elastic.x, spread_out.moment, shear)
        zones = tension_zones(elastic)
        found = cracks(elastic, zones)
    return _Shown(elastic, zones, found, falls_at is not None), settled


def _added_shear(floor, x: np.ndarray, added: np.ndarray) -> np.ndarray:
    """Shear that goes with moments that were added, straight from support to support [N]."""
    over = np.interp(floor.places, x, added)
    slopes = np.diff(over) / np.diff(floor.places)
    return slopes[np.searchsorted(floor.places[1:-1], x, side="right")]


def _falls_at(floor, elastic: Stretch, spread_out, hinges) -> float | None:
    """Where the floor falls [mm]: cracks that nothing holds turn, and nobody can take their share.

    The neighbours of such cracks take over what these let go. The floor falls if there are too
    many of them to stand at all, or if that share is more than the neighbours can bear.
    """
    if not spread_out.stands:
        return _falling(floor, spread_out.loose)
    if hinges and _overcome(elastic, spread_out.moment):
        return _falling(floor, hinges)
    return None


def _overcome(elastic: Stretch, moment: np.ndarray) -> bool:
    """Whether moments are somewhere more than whole concrete or bars can bear."""
    bottom, top = cracking_moments(elastic)
    borne = np.maximum(bottom, bears(elastic, "bottom")), np.maximum(-top, bears(elastic, "top"))
    return bool((np.where(moment >= 0, moment, 0.0) > borne[0]).any() or (-moment > borne[1]).any())


def _falling(floor, loose) -> float:
    """The hinge that drops furthest when the floor falls: the one furthest from its supports."""
    return max(loose, key=lambda at: min(abs(at - place) for place in floor.places))


def _neighbours(floor, at: float) -> tuple[float, float]:
    """Supports to the left and to the right of a place [mm]."""
    index = int(np.clip(np.searchsorted(floor.places, at), 1, len(floor.spans)))
    return floor.places[index - 1], floor.places[index]


def _movement(floor, elastic: Stretch, spread_out, hinges, falls_at) -> Movement:
    x = elastic.x
    if falls_at is not None:
        return moved(x, fall_between(x, *_neighbours(floor, falls_at), falls_at), falls_at)
    down = deflection_over_supports(
        x, spread_out.curvature, floor.held_by, hinges, spread_out.kinks
    )
    return moved(x, down)
