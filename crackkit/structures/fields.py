"""How a structure declares its inputs, and how those inputs are listed, checked and changed.

A structure is a frozen dataclass whose fields are made with `number`, `choice`, `switch`, `part`
and `parts`. Controls, the sandbox, the tests and the error messages all read these declarations,
so a range or a label is written once. A bound may be a function of the whole structure and of the
part it belongs to ("no further than the end of the beam").
"""

import copy
import dataclasses
from collections.abc import Callable, Iterator
from dataclasses import dataclass

from crackkit.words import _


class InputError(ValueError):
    """An input that its declaration does not allow; carries what a clear message needs.

    Attributes
    ----------
    path : str
        Where it stands in the structure, for instance ``"bottom.cover"``.
    field : str
        The label a reader sees.
    value : object
        What was given, in N, mm, MPa.
    low, high : float or None
        The allowed range, in N, mm, MPa.
    quantity : str
        Kind of quantity, a key of the units table.
    choices : tuple
        The allowed values of a choice.
    """

    def __init__(self, path, field, value, low=None, high=None, quantity="ratio", choices=()):
        self.path, self.field, self.value = path, field, value
        self.low, self.high, self.quantity, self.choices = low, high, quantity, tuple(choices)
        super().__init__(self._sentence())

    def _sentence(self) -> str:
        if self.choices:
            allowed = ", ".join(str(c) for c in self.choices)
            return _("{field}: {value!r} is not one of {allowed}").format(
                field=self.field, value=self.value, allowed=allowed
            )
        return _("{field}: {value!r} is outside {low:g} to {high:g} (N, mm, MPa)").format(
            field=self.field, value=self.value, low=self.low, high=self.high
        )


@dataclass(frozen=True)
class Declared:
    """What a structure says about one of its inputs.

    Attributes
    ----------
    label : str
        Name shown to the reader.
    quantity : str
        Kind of quantity, a key of the units table; ``"choice"`` and ``"switch"`` have no unit.
    low, high : float or callable
        Ends of the allowed range in N, mm, MPa, or functions of
        (whole structure, owning part).
    choices : tuple of (value, label)
        Allowed values of a choice.
    help : str
        One sentence: what it is and how it is measured.
    """

    label: str
    quantity: str
    low: float | Callable = 0.0
    high: float | Callable = 0.0
    choices: tuple = ()
    help: str = ""


@dataclass(frozen=True)
class Input:
    """One input of a given structure, its bounds worked out: see `inputs`."""

    path: str
    declared: Declared
    value: object
    low: float | None
    high: float | None
    groups: tuple = ()


def number(label, quantity, low, high, default, help=""):
    """Declare a number [inner unit of the quantity] between `low` and `high`."""
    declared = Declared(label, quantity, low, high, help=help)
    return dataclasses.field(default=default, metadata={"declared": declared})


def choice(label, choices, default, help=""):
    """Declare one of several named values; `choices` holds pairs (value, label)."""
    declared = Declared(label, "choice", choices=tuple(choices), help=help)
    return dataclasses.field(default=default, metadata={"declared": declared})


def switch(label, default, help=""):
    """Declare a yes or no."""
    declared = Declared(label, "switch", choices=((True, _("yes")), (False, _("no"))), help=help)
    return dataclasses.field(default=default, metadata={"declared": declared})


def part(label, default, help=""):
    """Declare a part that is a dataclass of declared fields itself, such as a layer of bars."""
    return dataclasses.field(default=default, metadata={"part": label, "help": help})


def parts(label, least, most, default, help=""):
    """Declare a tuple of `least` to `most` equal parts, such as point loads."""
    meta = {"parts": label, "least": least, "most": most, "help": help}
    return dataclasses.field(default=default, metadata=meta)


def inputs(structure) -> tuple[Input, ...]:
    """List every input of a structure with its path, declaration, value and resolved bounds."""
    return tuple(_walk(structure, structure, "", ()))


def _walk(root, owner, prefix, groups) -> Iterator[Input]:
    for field in dataclasses.fields(owner):
        meta, value = field.metadata, getattr(owner, field.name)
        path = f"{prefix}{field.name}"
        if "declared" in meta:
            yield _resolved(root, owner, path, meta["declared"], value, groups)
        elif "part" in meta:
            yield from _walk(root, value, f"{path}.", (*groups, meta["part"]))
        elif "parts" in meta:
            for index, item in enumerate(value):
                label = f"{meta['parts']} {index + 1}"
                yield from _walk(root, item, f"{path}.{index}.", (*groups, label))


def _resolved(root, owner, path, declared, value, groups) -> Input:
    if declared.choices:
        return Input(path, declared, value, None, None, groups)
    low, high = (b(root, owner) if callable(b) else b for b in (declared.low, declared.high))
    return Input(path, declared, value, low, max(low, high), groups)


def check(structure) -> None:
    """Raise `InputError` for the first input that its declaration does not allow."""
    for field in dataclasses.fields(structure):
        if "parts" in field.metadata:
            _check_count(field, getattr(structure, field.name))
    for item in inputs(structure):
        if not _allowed(item):
            raise _error(item)


def _check_count(field, value) -> None:
    least, most = field.metadata["least"], field.metadata["most"]
    if not least <= len(value) <= most:
        label = _("Number of: {label}").format(label=field.metadata["parts"].lower())
        raise InputError(field.name, label, len(value), least, most, "count")


def _allowed(item: Input) -> bool:
    if item.declared.choices:
        return any(item.value == value for value, _label in item.declared.choices)
    if isinstance(item.value, bool) or not isinstance(item.value, (int, float)):
        return False
    slack = 1e-9 * max(1.0, abs(item.high))
    return item.low - slack <= item.value <= item.high + slack


def _error(item: Input) -> InputError:
    label = ", ".join([*item.groups, item.declared.label])
    choices = tuple(value for value, _label in item.declared.choices)
    return InputError(
        item.path, label, item.value, item.low, item.high, item.declared.quantity, choices
    )


def with_value(structure, path: str, value):
    """Give a copy of the structure with one input changed; raises `InputError` if not allowed."""
    return _replaced(structure, path.split("."), value)


def _replaced(owner, steps, value):
    head, rest = steps[0], steps[1:]
    if isinstance(owner, tuple):
        items = list(owner)
        items[int(head)] = _replaced(items[int(head)], rest, value) if rest else value
        return tuple(items)
    inner = _replaced(getattr(owner, head), rest, value) if rest else value
    return dataclasses.replace(owner, **{head: inner})


def fitted(structure, changes: dict):
    """Change several inputs at once and draw the others back inside their ranges.

    A panel uses this: when a span is shortened, a load that stood beyond the new end moves to
    the end instead of making the whole picture an error. The changed inputs themselves must be
    allowed once the others have settled, or `InputError` is raised.

    Returns
    -------
    structure, moved
        The new structure, and the labels of the inputs that had to be drawn back.
    """
    draft, moved = structure, []
    for path, value in changes.items():
        draft = _unchecked(draft, path.split("."), value)
    for _round in range(3):
        outside = [i for i in inputs(draft) if i.path not in changes and not _allowed(i)]
        for item in outside:
            draft = _unchecked(draft, item.path.split("."), _drawn_back(item))
            moved.append(", ".join([*item.groups, item.declared.label]))
        if not outside:
            break
    check(draft)
    return draft, tuple(dict.fromkeys(moved))


def _drawn_back(item: Input):
    if item.declared.choices or not isinstance(item.value, (int, float)):
        raise _error(item)
    return type(item.value)(min(max(item.value, item.low), item.high))


def _unchecked(owner, steps, value):
    head, rest = steps[0], steps[1:]
    if isinstance(owner, tuple):
        items = list(owner)
        items[int(head)] = _unchecked(items[int(head)], rest, value) if rest else value
        return tuple(items)
    twin = copy.copy(owner)
    inner = _unchecked(getattr(owner, head), rest, value) if rest else value
    object.__setattr__(twin, head, inner)
    return twin
