"""The row of values an input runs through, as an engineer would have typed each of them."""

from dataclasses import dataclass

import numpy as np

from crackkit.sandbox.wrong_input import WrongInput, unknown_argument
from crackkit.units import number, unit
from crackkit.words import _


@dataclass(frozen=True)
class Row:
    """Values of one input.

    Attributes
    ----------
    label, unit : str
        For the axis of a chart.
    texts : tuple of str
        As typed.
    x : ndarray
        In the unit of the axis.
    """

    label: str
    unit: str
    texts: tuple[str, ...]
    x: np.ndarray


def row(structure, name: str, start, end, steps: int) -> Row:
    """Give the values from start to end.

    Raises
    ------
    WrongInput
        If there is no such input, or none that runs through values.
    """
    argument, system = structure.argument(name), structure.system
    if not isinstance(steps, int) or not 2 <= steps <= 200:
        raise WrongInput(_("steps={n!r}: a whole number from 2 to 200.").format(n=steps), "steps")
    first, last = argument.read(start), argument.read(end)
    ends = _ends(argument, first, last, start, end)
    values = np.array([v for v in _values(*ends, steps) if argument.may_be(v.tolist())])
    knob, x = _axis(*ends, values)
    texts = tuple(argument.written(argument.turned(first, row), system) for row in values.tolist())
    quantity = knob.quantity
    return Row(knob.label, unit(quantity, system), texts, number(x, quantity, system))


def _ends(argument, first, last, start, end):
    """The numbers that run, at the start and at the end."""
    begin, finish = argument.knobs(first), argument.knobs(last)
    if not begin and not finish:
        _refuse(argument, _("{name} does not run through values."))
    if not argument.alike(first, last):
        both = _(", {a} and {b}").format(a=start, b=end)
        _refuse(argument, f"{{name}}: {argument.unlike}{both}.")
    return begin, finish


def _refuse(argument, text: str):
    raise WrongInput(text.format(name=argument.name), argument.name)


def _values(begin, finish, steps: int) -> np.ndarray:
    """A row of numbers for each step; where only something that is counted runs, one by one."""
    a, b = (np.array([knob.number for knob in knobs], float) for knobs in (begin, finish))
    counted = np.array([knob.quantity == "count" for knob in begin])
    if counted.any() and not (a != b)[~counted].any():
        steps = int(np.abs((b - a)[counted]).max()) + 1
    values = np.linspace(a, b, steps)
    return np.where(counted, np.round(values), values)


def _axis(begin, finish, values: np.ndarray):
    """The first number that changes, or the last of all if none does."""
    changes = [k for k, (a, b) in enumerate(zip(begin, finish, strict=True)) if a != b]
    k = changes[0] if changes else len(begin) - 1
    return begin[k], values[:, k]


def argument_named(name: str, arguments, meant: dict):
    """Find an argument by its name."""
    for argument in arguments:
        if argument.name == name:
            return argument
    raise unknown_argument(name, None, [a.name for a in arguments], meant)
