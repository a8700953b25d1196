"""One input runs through its values: how the crack width follows."""

from dataclasses import dataclass, replace

import numpy as np

from crackkit.drawing.deciding import deciding_crack
from crackkit.drawing.on_page import on_page
from crackkit.drawing.sweep_chart import Course, sweep_chart
from crackkit.drawing.told_numbers import told_text
from crackkit.sandbox import markup
from crackkit.sandbox.answers import judged_width, verdict_words
from crackkit.sandbox.care import shared_cautions
from crackkit.sandbox.courses import Row, row
from crackkit.sandbox.kinds import kind_of
from crackkit.sandbox.shown_picture import ShownPicture, still
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures.outcome import Told
from crackkit.words import _


@dataclass(frozen=True)
class Sweep:
    """A table and a chart.

    Attributes
    ----------
    head : tuple of str
        What the columns hold.
    rows : tuple of tuple of str
        One for each value.
    course : Course
        The widths as numbers [mm].
    cautions : tuple of str
        Of all cases, each said once.
    """

    head: tuple[str, ...]
    rows: tuple[tuple[str, ...], ...]
    course: Course
    cautions: tuple[str, ...]

    def picture(self) -> ShownPicture:
        """Give the chart."""
        return still(sweep_chart(self.course))

    def _repr_mimebundle_(self, include=None, exclude=None) -> dict:
        return {"text/html": self.html(), "text/plain": repr(self)}

    def html(self) -> str:
        """Give chart, table and cautions as HTML."""
        table = markup.table(self.head, self.rows)
        return on_page(self.picture()) + table + markup.points(self.cautions)

    def __repr__(self) -> str:
        lines = [" | ".join(cells) for cells in (self.head, *self.rows)]
        return "\n".join([*lines, "", *self.cautions])


def sweep(structure, argument: str, start, end, steps: int = 9) -> Sweep:
    """Let one input run from start to end and see how the crack width follows.

    Parameters
    ----------
    structure : SimpleBeam, Cantilever, ContinuousBeam, TensionMember, CrackControl, ...
        Any structure of the sandbox. All other inputs stay as they are in it.
    argument : str
        Name of the input: ``"cover"``, ``"bars"``, ``"point_load"``, ...
    start, end : str
        As typed for this input, such as ``"1 in"`` and ``"3 in"``, ``"2 #6"`` and ``"6 #6"``,
        or ``"10 kip at 2 ft"`` and ``"10 kip at 18 ft"``.
    steps : int
        How many values, 2 to 200; numbers of bars are counted one by one instead.

    Raises
    ------
    WrongInput
        If there is no such input, or a value is outside its range.
    """
    values = row(structure, argument, start, end, steps)
    cases = [_case(structure, argument, text) for text in values.texts]
    if all(argument in case.idle for case in cases):
        text = _("{name} does not run: it means nothing with the other inputs.")
        raise WrongInput(text.format(name=argument), argument)
    outcomes = [case.outcome for case in cases]
    labels = [told.label for told in _told(outcomes[0], structure.system)]
    rows = tuple(
        _row(value, outcome, structure.system)
        for value, outcome in zip(_values(values), outcomes, strict=True)
    )
    course = _course(values, outcomes, structure.system)
    head = (values.label, _("verdict"), *labels)
    return Sweep(head, rows, course, shared_cautions(outcomes))


def _case(structure, argument: str, text):
    """The structure with one value; what is wrong with another input is said of this value."""
    try:
        return structure.but(**{argument: text})
    except WrongInput as error:
        if error.argument == argument:
            raise
        said = _("With {name}={text!r}: {error}").format(name=argument, text=text, error=error)
        raise WrongInput(said, error.argument, error.typed) from None


def _values(values: Row) -> list[str]:
    return [f"{x:.4g} {values.unit}".strip() for x in values.x.tolist()]


def _row(value: str, outcome, system: str) -> tuple[str, ...]:
    cells = (told_text(told, system) for told in _told(outcome, system))
    return (value, verdict_words(outcome), *cells)


def _told(outcome, system: str) -> list[Told]:
    """The numbers that stand beside a value."""
    kind = kind_of(outcome)
    by_key = {told.key: told for told in kind.numbers(outcome, system)}
    return [by_key[key] for key in kind.SWEPT]


def _course(values: Row, outcomes, system: str) -> Course:
    widths = np.array([_widths(outcome) for outcome in outcomes])
    limit = outcomes[0].verdict.limit.width
    course = Course(values.label, values.unit, values.x, *widths.T, limit, system)
    return _rising(course)


def _widths(outcome) -> tuple[float, float, float]:
    """Low, governing and high width [mm]; 0 without a crack, not a number where none is known."""
    band = judged_width(outcome)
    if band:
        return band.low, band.governing, band.high
    return (np.nan,) * 3 if deciding_crack(outcome) else (0.0,) * 3


def _rising(course: Course) -> Course:
    """A chart runs from small to large also when the sweep was typed the other way round."""
    order = np.argsort(course.x, kind="stable")
    names = ("x", "low", "governing", "high")
    return replace(course, **{name: getattr(course, name)[order] for name in names})
