"""The working of a slab with inside corners: shrinkage, concrete, the corner, the crack, bars."""

from crackkit.structures.corner_bar_working import bar_steps
from crackkit.structures.corner_concrete_working import concrete_steps
from crackkit.structures.corner_crack_working import corner_steps, crack_steps
from crackkit.structures.corner_given import given_steps, known
from crackkit.structures.corner_shrinkage_working import shrinkage_steps
from crackkit.structures.cornered import Cornered
from crackkit.structures.hand_step import under
from crackkit.structures.outcome import WorkingStep
from crackkit.words import _


def working(it, state: Cornered) -> tuple[WorkingStep, ...]:
    """List the steps for checking by hand.

    Parameters
    ----------
    it : CornerSlab
    state : Cornered
    """
    v = known(it)
    return (
        *under(_("What is given"), given_steps(it, v)),
        *under(_("What it wants to shrink by"), shrinkage_steps(it, v, state.free)),
        *under(_("Its concrete at this age"), concrete_steps(it, v, state)),
        *under(_("The corner before it cracks"), corner_steps(it, state)),
        *under(_("The crack"), crack_steps(it, state)),
        *bar_steps(it),
    )
