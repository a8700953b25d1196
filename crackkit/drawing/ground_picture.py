"""The picture of a slab on the ground: four bands, verdict, timeline."""

from crackkit.drawing.age_words import age_words, day_words
from crackkit.drawing.composed import composed
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.ground_blank import before, sheet
from crackkit.drawing.ground_frames import GroundLayout, ground_layout
from crackkit.drawing.ground_held import ground_held
from crackkit.drawing.ground_movement import end_words, ground_movement
from crackkit.drawing.ground_plan_words import cracks_along
from crackkit.drawing.ground_stretch import ground_stretch
from crackkit.drawing.ground_timeline import ground_timeline
from crackkit.drawing.ground_widths import ground_widths
from crackkit.drawing.labels import width_of
from crackkit.drawing.shapes import Picture
from crackkit.drawing.told_numbers import told_text
from crackkit.units import shown
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a slab on the ground.

    Parameters
    ----------
    outcome : Outcome
        What mechanics says of it.
    view : View
        Units, layout, and whether handles are wanted.

    Returns
    -------
    Picture
    """
    layout = ground_layout(view)
    shapes = (
        *ground_movement(outcome, layout.movement, view),
        *ground_stretch(outcome, layout.stretch, layout.plan, view),
        *ground_held(outcome, layout.held, view),
        *ground_widths(outcome, layout.scale, view),
        *ground_timeline(outcome, layout.timeline, view),
    )
    told = description(outcome, view)
    return composed(outcome, layout, shapes, told, view, _tiles(outcome, layout, view))


def _tiles(outcome, layout: GroundLayout, view: View) -> list[tuple[str, str]]:
    """Words and number of each tile; ages in the words that people use."""
    room = layout.tiles[0].width - 14.0
    return [_tile(told, room, view) for told in outcome.numbers]


def _tile(told, room: float, view: View) -> tuple[str, str]:
    text = told_text(told, view.system)
    if told.quantity == "strain" and width_of(text, "tile_number_small") > room:
        return told.label, f"{100.0 * told.value:.3f}\u202f%"
    if told.quantity != "time":
        return told.label, text
    if isinstance(told.value, str):
        return _("{what} in 10 y").format(what=told.label), _("none")
    return told.label, age_words(told.value)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    sentences = [_age_sentence(outcome, view), _crack_sentence(outcome, view)]
    sentences += [cracks_along(outcome.across, view), _joint_sentence(outcome, view)]
    sentences += [_next_sentence(outcome), outcome.verdict.why]
    return " ".join(sentence for sentence in sentences if sentence)


def _age_sentence(outcome, view: View) -> str:
    left, right = end_words(outcome, view)
    text = _("After {age} it wants to shrink by {free}; left end: {left}, right end: {right}.")
    return text.format(
        age=age_words(outcome.structure.age),
        free=shown(outcome.ground.free, "strain", view.system),
        left=left,
        right=right,
    )


def _crack_sentence(outcome, view: View) -> str:
    wild = outcome.ground.wild
    if not wild and outcome.across.wild:
        return _("No crack runs across it.")
    if not wild:
        return _("It has no crack.")
    widest = shown(max(crack.width for crack in wild), "width", view.system)
    if len(wild) == 1:
        text = _("1 crack, {width}, since {day}.")
        return text.format(width=widest, day=day_words(wild[0].birth))
    text = _("{n} cracks; the widest {width}, the first since {day}.")
    first = min(crack.birth for crack in wild)
    return text.format(n=len(wild), width=widest, day=day_words(first))


def _joint_sentence(outcome, view: View) -> str:
    joints = outcome.ground.joints + outcome.across.joints
    if not joints:
        return ""
    widest = shown(max(joint.opening for joint in joints), "width", view.system)
    return _("The widest of {n} joints is {width} open.").format(n=len(joints), width=widest)


def _next_sentence(outcome) -> str:
    births = outcome.ground.births + outcome.across.births
    later = min((b for b in births if b > outcome.structure.age), default=None)
    if later is None:
        return ""
    return _("The next crack comes at an age of {age}.").format(age=age_words(later))
