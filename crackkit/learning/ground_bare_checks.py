"""Check of a slab on the ground that no bars hold: it must not rely on numbers nobody is sure of.

What base and shrinkage do is known to a half and to a third; curling and wheels are not in the
numbers at all. Bars bear what comes; a floor without them needs short panels and strength to spare.
"""

from crackkit.learning.check import Check
from crackkit.learning.telling import shown
from crackkit.mechanics.drag import WIDEST_JOINTS, joint_spacing_by_thickness
from crackkit.words import _

# Friction may be half as much again, and weak concrete has 0.7 of its mean strength (EN 1992-1-1
# Table 3.1): 0.7 / 1.5 = 0.47. Rounded down for what shrinkage may add: our choice.
MOST_PULL = 0.4


def longest_panel(thickness: float) -> float:
    """Greatest distance of joints [mm] in a slab of a thickness [mm], by the rule of thumb."""
    return min(joint_spacing_by_thickness(thickness, "low_slump"), WIDEST_JOINTS)


def holding(structure, outcome) -> bool:
    """Tell whether its bars bear what the concrete lets go when it cracks.

    Where it has cracked they show it; elsewhere they must bear its strength as it is now.
    """
    if not structure.area:
        return False
    if outcome.ground.cracks:
        return not _yield(outcome.ground)
    borne = structure.area * structure.yield_strength
    return borne >= outcome.ground.strength.max() * structure.thickness


def _yield(ground) -> bool:
    """Whether bars yield in any crack, at a joint or not."""
    crossing = ground.pieces[0][1].cracks.crossing
    return any(crack.width * crossing.stiffness > crossing.capacity for crack in ground.cracks)


def panel(structure) -> float:
    """Length of the longest panel between joints, either way [mm]."""
    across = structure.width / (len(structure.joint_places_across) + 1)
    return max(structure.length / structure.panels, across)


def pull(outcome) -> float:
    """Greatest pull over strength in ten years, either way [-]; a slab cracks at 1."""
    return float(max(state.tension.max() for state in (outcome.ground, outcome.across)))


def bare(_task, structure, outcome, system: str) -> Check:
    """Check that without bars panels are short and the pull stays far below the strength."""
    name, longest = _("Without bars"), longest_panel(structure.thickness)
    wanted = _("panels of {far} or less, pull below {share} of the strength")
    far, most = shown(longest, "length", system), f"{MOST_PULL:.1f}"
    wanted = wanted.format(far=far, share=most)
    if holding(structure, outcome):
        text = _("Its bars bear what comes.")
        return Check("bare", name, True, _("it has bars enough"), wanted, text)
    long, share = panel(structure), pull(outcome)
    measured = _("panels of {long}, pull up to {share} of the strength").format(
        long=shown(long, "length", system), share=f"{share:.2f}"
    )
    short, calm = long <= longest * (1 + 1e-9), share <= MOST_PULL
    text = _advice(structure, short, calm).format(
        off=shown(long - longest, "length", system), more=f"{share - MOST_PULL:.2f}"
    )
    return Check("bare", name, short and calm, measured, wanted, text)


def _advice(structure, short: bool, calm: bool) -> str:
    told = []
    if not short:
        told.append(_("Its panels are {off} too long: cut joints, or more of them."))
    if not calm:
        told.append(_("The pull is {more} too much.") + " " + _ease(structure))
    return " ".join(told) or _("Short panels, and strength to spare.")


def _ease(structure) -> str:
    if structure.area:
        return _("Its bars are too few to hold a crack: more of them, or set it free.")
    if structure.left and structure.right:
        return _("Set an end free, or lay bars that hold.")
    return _("Set both ends free, or let it slide more easily.")
