"""The picture of a slab that curls: shape, plan, section, scale; verdict, shares, rise."""

from crackkit.drawing.composed import composed
from crackkit.drawing.curled_blank import before, sheet, slab_told
from crackkit.drawing.curled_callouts import break_words, pull_words
from crackkit.drawing.curled_frames import curled_layout
from crackkit.drawing.curled_held import curled_held, gradient_words
from crackkit.drawing.curled_movement import curled_movement
from crackkit.drawing.curled_rise import curled_rise
from crackkit.drawing.curled_risen import risen
from crackkit.drawing.curled_share import curled_share
from crackkit.drawing.curled_stretch import curled_stretch, worse_face
from crackkit.drawing.curled_widths import curled_widths
from crackkit.drawing.frames import PLAIN, View
from crackkit.drawing.shapes import Picture
from crackkit.words import _

__all__ = ["before", "description", "picture", "sheet"]


def picture(outcome, view: View = PLAIN) -> Picture:
    """Compose the picture of a curled slab.

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
    layout = curled_layout(view)
    shapes = (
        *curled_movement(outcome, layout.movement, view),
        *curled_stretch(outcome, layout, view),
        *curled_held(outcome, layout.held, view),
        *curled_widths(outcome, layout.scale, view),
        *curled_share(outcome, layout.share),
        *curled_rise(outcome, layout.rise, view),
    )
    told = description(outcome, view)
    return composed(outcome, layout, shapes, told, view)


def description(outcome, view: View = PLAIN) -> str:
    """Say in words what the picture shows, for readers who cannot see it."""
    state = outcome.curled
    name, face = worse_face(state)
    sentences = [slab_told(outcome.structure, view), _lift_sentence(outcome, view)]
    sentences.append(_sentence(pull_words(outcome, name == "top", face)))
    sentences.append(_sentence(gradient_words(outcome, view)[1]))
    if state.line is not None:
        sentences.append(_sentence(break_words(state.line, view)))
    return " ".join([*sentences, outcome.verdict.why])


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:] + "."


def _lift_sentence(outcome, view: View) -> str:
    found = risen(outcome.curled)
    if not found.seen:
        return _("It lies on the ground all over.")
    text = _("{risen}; there is air below {n} % of it.")
    words = found.words(view)
    n = round(100 * outcome.curled.open_share)
    return text.format(risen=words[0].upper() + words[1:], n=n)
