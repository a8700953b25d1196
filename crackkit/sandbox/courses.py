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
    argument = structure.argument(name)
    if not isinstance(steps, int) or not 2 <= steps <= 200:
        raise WrongInput(_("steps={n!r}: a whole number from 2 to 200.").format(n=steps), "steps")
    first, last = argument.read(start), argument.read(end)
    if argument.quantity:
        return _amounts(argument, first, last, steps, structure.system)
    if name == "point_load":
        return _loads(argument, first, last, steps, structure.system)
    if hasattr(first, "count") and hasattr(last, "count") and isinstance(first, tuple):
        return _bars(argument, first, last)
    text = _("{name} does not run through values.").format(name=name)
    raise WrongInput(text, name)


def argument_named(name: str, arguments, meant: dict):
    """Find an argument by its name."""
    for argument in arguments:
        if argument.name == name:
            return argument
    raise unknown_argument(name, None, [a.name for a in arguments], meant)


def _text(value: float, quantity: str, system: str) -> str:
    return f"{number(value, quantity, system):.12g} {unit(quantity, system)}"


def _amounts(argument, first: float, last: float, steps: int, system: str) -> Row:
    values = np.linspace(first, last, steps)
    texts = tuple(_text(value, argument.quantity, system) for value in values.tolist())
    x = number(values, argument.quantity, system)
    return Row(argument.label, unit(argument.quantity, system), texts, x)


def _bars(argument, first, last) -> Row:
    if first.size != last.size:
        text = _("{name}: start and end name different sizes, {a} and {b}.")
        raise WrongInput(text.format(name=argument.name, a=first.size, b=last.size), argument.name)
    step = 1 if last.count >= first.count else -1
    counts = np.arange(first.count, last.count + step, step)
    label = _("number of {bars}").format(bars=argument.label)
    return Row(label, "", tuple(f"{n} x {first.size}" for n in counts), counts.astype(float))


def _loads(argument, first, last, steps: int, system: str) -> Row:
    if len(first) != 1 or len(last) != 1:
        raise WrongInput(_("point_load: start and end hold one load each."), argument.name)
    forces = np.linspace(first[0].force, last[0].force, steps)
    places = np.linspace(first[0].position, last[0].position, steps)
    pairs = zip(forces.tolist(), places.tolist(), strict=True)
    texts = tuple(f"{_text(f, 'force', system)} at {_text(p, 'length', system)}" for f, p in pairs)
    if first[0].position != last[0].position:
        x, label, quantity = places, _("place of the load"), "length"
    else:
        x, label, quantity = forces, _("point load"), "force"
    return Row(label, unit(quantity, system), texts, number(x, quantity, system))
