"""The list of question generators, each with fresh numbers every time it is asked."""

from random import Random

from crackkit.learning import bending_questions as bending
from crackkit.learning import cracking_questions as cracking
from crackkit.learning import holding_questions as holding
from crackkit.learning.choices import TRIES, Choice, Question, Unclear
from crackkit.words import _

__all__ = ["GENERATORS", "Choice", "Question", "question"]

GENERATORS = {
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
        try:
            return GENERATORS[key](random, system)
        except Unclear:
            continue
    raise RuntimeError(f"no clear numbers for {key} in {TRIES} tries")
