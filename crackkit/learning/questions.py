"""The list of question generators, each with fresh numbers every time it is asked."""

from dataclasses import replace
from functools import partial
from random import Random

from crackkit.learning import anchoring_questions as anchoring
from crackkit.learning import arm_questions as arms
from crackkit.learning import bending_questions as bending
from crackkit.learning import choice_questions as choosing
from crackkit.learning import corner_bar_questions as corner_bars
from crackkit.learning import corner_pull_questions as corner_pulls
from crackkit.learning import corner_questions as corners
from crackkit.learning import cover_questions as covers
from crackkit.learning import crack_by_crack_questions as one_by_one
from crackkit.learning import cracking_questions as cracking
from crackkit.learning import curled_slab_questions as curled
from crackkit.learning import curling_questions as curling
from crackkit.learning import ground_questions as ground
from crackkit.learning import held_slab_questions as held
from crackkit.learning import holding_questions as holding
from crackkit.learning import pull_questions as pulls
from crackkit.learning import reach_questions as reach
from crackkit.learning import span_questions as spans
from crackkit.learning.choices import TRIES, Choice, Question, Unclear
from crackkit.learning.telling import Retold
from crackkit.words import _

__all__ = ["GENERATORS", "OF_LESSON", "Choice", "Question", "question"]

FINEST = 4  # from no digit more to three
_PULL = {
    "pull_that_cracks": pulls.pull_that_cracks,
    "steel_at_the_crack": pulls.steel_at_the_crack,
    "stretch_of_a_cracked_member": pulls.stretch_of_a_cracked_member,
    "what_bars_delay": pulls.what_bars_delay,
    "least_bars": pulls.least_bars,
    "how_far_apart": one_by_one.how_far_apart,
    "share_of_the_concrete": one_by_one.share_of_the_concrete,
    "one_thick_or_four_thin": one_by_one.one_thick_or_four_thin,
    "what_stays": one_by_one.what_stays,
    "smooth_bars": one_by_one.smooth_bars,
    "never_without_bars": one_by_one.never_without_bars,
}
_BEAM = {
    "first_crack": bending.first_crack,
    "over_the_support": bending.over_the_support,
    "twice_as_deep": bending.twice_as_deep,
    "load_moved": bending.load_moved,
    "longer_span": bending.longer_span,
    "steel_and_first_crack": cracking.steel_and_first_crack,
    "stronger_concrete": cracking.stronger_concrete,
    "more_cover": holding.more_cover,
    "thick_or_thin": holding.thick_or_thin,
    "one_more_bar": holding.one_more_bar,
    "where_the_bars_lie": holding.where_the_bars_lie,
}
_ARM = {
    "where_an_arm_cracks": arms.where_an_arm_cracks,
    "moment_of_an_arm": arms.moment_of_an_arm,
    "load_moved_in": arms.load_moved_in,
    "floor_behind": arms.floor_behind,
    "trodden_down": anchoring.trodden_down,
    "grip_in_the_wall": anchoring.grip_in_the_wall,
    "face_of_the_bars": anchoring.face_of_the_bars,
}
_FLOOR = {
    "face_over_support": spans.face_over_support,
    "worst_for_span": spans.worst_for_span,
    "worst_over_support": spans.worst_over_support,
    "one_span_loaded": spans.one_span_loaded,
    "reach_of_top_bars": reach.reach_of_top_bars,
    "sunk_support": reach.sunk_support,
    "ease_the_support": reach.ease_the_support,
}
_CHOICE = {
    "area_of_a_mat": choosing.area_of_a_mat,
    "half_the_size": choosing.half_the_size,
    "finest_mat": choosing.finest_mat,
    "room_for_stones": choosing.room_for_stones,
    "bent_or_pulled": choosing.bent_or_pulled,
    "cover_and_width": covers.cover_and_width,
    "cover_asked": covers.cover_asked,
    "years_of_cover": covers.years_of_cover,
    "pull_left_by_fibres": covers.pull_left_by_fibres,
}
_GROUND = {
    "how_much_shorter": ground.how_much_shorter,
    "drag_bars": ground.drag_bars,
    "longest_by_drag": ground.longest_by_drag,
    "opening_of_a_joint": ground.opening_of_a_joint,
    "depth_of_a_cut": ground.depth_of_a_cut,
    "which_base": held.which_base,
    "twice_the_bars": held.twice_the_bars,
    "bars_on_the_ground": held.bars_on_the_ground,
    "water_for_longer": held.water_for_longer,
}
_CURLED = {
    "curl_without_weight": curling.curl_without_weight,
    "drier_on_top": curling.drier_on_top,
    "thicker_and_as_dry": curling.thicker_and_as_dry,
    "face_under_the_wheel": curled.face_under_the_wheel,
    "sides_halved": curled.sides_halved,
    "what_lies_below": curled.what_lies_below,
    "when_it_stands_highest": curled.when_it_stands_highest,
    "mat_in_the_middle": curled.mat_in_the_middle,
    "wheel_at_night": curled.wheel_at_night,
    "dowels_at_the_corner": curled.dowels_at_the_corner,
}
_CORNER = {
    "where_it_starts": corner_pulls.where_it_starts,
    "nearer_the_corner": corners.nearer_the_corner,
    "rim_of_a_round_hole": corners.rim_of_a_round_hole,
    "box_out_turned": corner_pulls.box_out_turned,
    "bars_that_hold": corner_bars.bars_that_hold,
    "near_or_far": corner_bars.near_or_far,
    "what_bars_can_do": corner_bars.what_bars_can_do,
    "stronger_at_the_corner": corner_pulls.stronger_at_the_corner,
    "thicker_at_the_corner": corner_pulls.thicker_at_the_corner,
    "sawn_in_time": corner_bars.sawn_in_time,
}
OF_LESSON = {
    "01_pull": _PULL,
    "02_simple_beam": _BEAM,
    "03_cantilever": _ARM,
    "04_continuous_spans": _FLOOR,
    "05_bar_choice": _CHOICE,
    "06_ground_slab": _GROUND,
    "07_curling": _CURLED,
    "08_reentrant_corner": _CORNER,
}
GENERATORS = {key: ask for asked in OF_LESSON.values() for key, ask in asked.items()}


def question(key: str, random: Random, system: str = "SI") -> Question:
    """Ask one question with fresh numbers.

    Parameters
    ----------
    key : str
        A key of `GENERATORS`.
    random : random.Random
        Where the numbers come from; the same state gives the same question.
    system : str
        Units, ``"SI"`` or ``"US"``.

    Returns
    -------
    Question

    Raises
    ------
    ValueError
        If no generator has that name.
    """
    if key not in GENERATORS:
        raise ValueError(_("There is no question called {}.").format(key))
    for _again in range(TRIES):
        drawn = random.getstate()
        try:
            made = GENERATORS[key](random, system)
        except Unclear:
            continue
        return replace(made, again=partial(_retold, key, drawn, system))
    raise RuntimeError(f"no clear numbers for {key} in {TRIES} tries")


def _retold(key: str, drawn: tuple, built: str, told: str) -> Question:
    """Ask with the numbers that were drawn before, in other units."""
    random = Random()
    for finer in range(FINEST):
        random.setstate(drawn)
        try:
            return GENERATORS[key](random, Retold(built, told, finer))
        except Unclear:  # two choices read alike in these units: with one digit more they do not
            continue
    raise RuntimeError(f"the choices of {key} read alike in {told} units")
