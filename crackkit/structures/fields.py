"""How a structure declares its inputs, and how those inputs are listed, checked and changed.

A structure is a frozen dataclass whose fields are made with `number`, `choice`, `switch`, `part`
and `parts`. Controls, the sandbox, the tests and the error messages all read these declarations,
so a range or a label is written once. A bound may be a function of the whole structure and of the
part it belongs to ("no further than the end of the beam").
"""

import dataclasses
import math
from collections.abc import Callable
from dataclasses import dataclass
from functools import cache, cached_property
from numbers import Real
from typing import NamedTuple

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
        values = {"field": self.field, "value": self.value, "low": self.low, "high": self.high}
        if self.choices:
            values["allowed"] = ", ".join(str(c) for c in self.choices)
            return _("{field}: {value!r} is not one of {allowed}").format(**values)
        if not _is_number(self.value):
            return _("{field}: {value!r} is not a number").format(**values)
        if self.quantity == "count" and not float(self.value).is_integer():
            text = _("{field}: {value!r} is not a whole number from {low:g} to {high:g}")
            return text.format(**values)
        text = _("{field}: {value!r} is outside {low:g} to {high:g} (N, mm, MPa)")
        return text.format(**values)


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
    when : callable or None
        From (whole structure, owning part): whether the input means anything there. One that
        does not has no control and is not held to its range.
    plays : bool
        Whether its control can run by itself, one step after the other.
    """

    label: str
    quantity: str
    low: float | Callable = 0.0
    high: float | Callable = 0.0
    choices: tuple = ()
    help: str = ""
    when: Callable | None = None
    plays: bool = False

    @cached_property
    def allowed(self) -> tuple:
        """The values of a choice, without their labels."""
        return tuple(value for value, _label in self.choices)


class Input(NamedTuple):
    """One input of a given structure, its bounds worked out: see `inputs`."""

    path: str
    declared: Declared
    value: object
    low: float | None
    high: float | None
    groups: tuple = ()
    applies: bool = True


def number(label, quantity, low, high, default, help="", when=None, plays=False):
    """Declare a number [inner unit of the quantity] between `low` and `high`."""
    declared = Declared(label, quantity, low, high, help=help, when=when, plays=plays)
    return dataclasses.field(default=default, metadata={"declared": declared})


def choice(label, choices, default, help="", when=None):
    """Declare one of several named values; `choices` holds pairs (value, label)."""
    declared = Declared(label, "choice", choices=tuple(choices), help=help, when=when)
    return dataclasses.field(default=default, metadata={"declared": declared})


def switch(label, default, help="", when=None):
    """Declare a yes or no."""
    choices = ((True, _("yes")), (False, _("no")))
    declared = Declared(label, "switch", choices=choices, help=help, when=when)
    return dataclasses.field(default=default, metadata={"declared": declared})


def part(label, default, help=""):
    """Declare a part that is a dataclass of declared fields itself, such as a layer of bars."""
    return dataclasses.field(default=default, metadata={"part": label, "help": help})


def parts(label, least, most, default, help=""):
    """Declare a tuple of `least` to `most` equal parts, such as point loads."""
    meta = {"parts": label, "least": least, "most": most, "help": help}
    return dataclasses.field(default=default, metadata=meta)


class _Place(NamedTuple):
    """One declared field of one part of a structure, before its bounds are known."""

    owner: object
    path: str
    declared: Declared
    value: object
    groups: tuple


def inputs(structure) -> tuple[Input, ...]:
    """List every input of a structure with its path, declaration, value and resolved bounds."""
    return _listed(structure, _places(structure))


def _listed(structure, places) -> tuple[Input, ...]:
    return tuple([_resolved(structure, place) for place in places])


def input_at(structure, path: str) -> Input:
    """Give one input of a structure by its path; raises KeyError where there is none."""
    for place in _places(structure):
        if place.path == path:
            return _resolved(structure, place)
    raise KeyError(path)


def part_input(structure, owner, path: str) -> Input:
    """Give one input of a part that is at hand, without a walk through the whole structure.

    Parameters
    ----------
    structure, owner : object
        The whole, and the part the input belongs to.
    path : str
        Path of the input in the whole; its last step is the name in the part.
    """
    name = path.rpartition(".")[2]
    declared = _declared(type(owner))[name]
    return _resolved(structure, _Place(owner, path, declared, getattr(owner, name), ()))


@cache
def _declared(kind: type) -> dict:
    return {name: meta.get("declared") for name, meta in _declarations(kind)}


@cache
def _declarations(kind: type) -> tuple:
    return tuple((field.name, field.metadata) for field in dataclasses.fields(kind))


def _places(structure) -> list[_Place]:
    found: list[_Place] = []
    _gather(structure, "", (), found)
    return found


def _gather(owner, prefix: str, groups: tuple, found: list[_Place]) -> None:
    """Add the places of a part and of the parts inside it; a list is quicker than generators."""
    for name, path, declared, meta in _paths(type(owner), prefix):
        value = getattr(owner, name)
        if declared is not None:
            found.append(_Place(owner, path, declared, value, groups))
        elif "part" in meta:
            _gather(value, f"{path}.", (*groups, meta["part"]), found)
        elif "parts" in meta:
            for index, item in enumerate(value):
                _gather(item, f"{path}.{index}.", (*groups, _numbered(meta, index)), found)


@cache
def _paths(kind: type, prefix: str) -> tuple:
    """Name, path, declaration and everything said of each field of a part that stands there."""
    rows = _declarations(kind)
    return tuple((name, prefix + name, meta.get("declared"), meta) for name, meta in rows)


def _numbered(meta, index: int) -> str:
    return f"{meta['parts']} {index + 1}"


def _resolved(root, place: _Place) -> Input:
    declared = place.declared
    low, high = None, None
    if not declared.choices:
        low, high = _bound(declared.low, root, place), _bound(declared.high, root, place)
        high = max(low, high)
    applies = declared.when is None or bool(declared.when(root, place.owner))
    return Input(place.path, declared, place.value, low, high, place.groups, applies)


def _bound(bound, root, place: _Place) -> float:
    return bound(root, place.owner) if callable(bound) else bound


def check(structure) -> None:
    """Raise `InputError` for the first input that its declaration does not allow.

    Kinds come before ranges, fixed ranges before ranges that follow other inputs, and the
    structure's own inputs before those of its parts: so the input named is the one at fault.
    """
    places = _places(structure)
    _check_kinds(structure, places)
    _refuse([item for item in _listed(structure, places) if not _within(item)])


def _refuse(outside) -> None:
    """Raise the error of the input at fault, if any is outside its range."""
    if outside:
        raise _error(min(outside, key=_rank))


def _rank(item: Input) -> tuple[bool, int]:
    follows = callable(item.declared.low) or callable(item.declared.high)
    return follows, item.path.count(".")


def _check_kinds(structure, places) -> None:
    for name, meta in _declarations(type(structure)):
        if "parts" in meta:
            _check_count(name, meta, getattr(structure, name))
    for place in places:
        if not _right_kind(place):
            low, high = place.declared.low, place.declared.high
            ends = (None if callable(end) else end for end in (low, high))
            raise _error(Input(place.path, place.declared, place.value, *ends, place.groups))


def _check_count(name, meta, value) -> None:
    least, most = meta["least"], meta["most"]
    if not least <= len(value) <= most:
        label = _("Number of: {label}").format(label=meta["parts"].lower())
        raise InputError(name, label, len(value), least, most, "count")


def _right_kind(place: _Place) -> bool:
    declared, value = place.declared, place.value
    if declared.choices:
        return value in declared.allowed
    if not _is_number(value):
        return False
    return declared.quantity != "count" or float(value).is_integer()


def _is_number(value) -> bool:
    if type(value) is float:  # nearly all are: no need to ask what else counts as a number
        return math.isfinite(value)
    return isinstance(value, Real) and not isinstance(value, bool) and math.isfinite(value)


def _within(item: Input) -> bool:
    if item.declared.choices or not item.applies:
        return True
    # a range follows other inputs, typed with twelve digits: 12 m are known to 1e-8 mm
    slack = 1e-8 * max(1.0, abs(item.high))
    return item.low - slack <= item.value <= item.high + slack


def _error(item: Input) -> InputError:
    label = ", ".join([*item.groups, item.declared.label])
    declared = item.declared
    return InputError(
        item.path, label, item.value, item.low, item.high, declared.quantity, declared.allowed
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
    return settled(structure, changes)[:2]


def settled(structure, changes: dict):
    """Do what `fitted` does and list the inputs as they are then, which have been looked at anyway.

    Returns
    -------
    structure, moved, inputs
        As `fitted` and `inputs` give them.
    """
    draft, moved = structure, []
    for path, value in changes.items():
        draft = _unchecked(draft, path.split("."), value)
    places = _places(draft)
    _check_kinds(draft, places)
    for _round in range(4):
        items = _listed(draft, places)
        outside = [item for item in items if not _within(item)]
        drawn_back = [item for item in outside if item.path not in changes]
        if not drawn_back:
            break
        for item in drawn_back:
            draft = _unchecked(draft, item.path.split("."), _drawn_back(item))
            moved.append(", ".join([*item.groups, item.declared.label]))
        places = _places(draft)
    _refuse(outside)
    return draft, tuple(dict.fromkeys(moved)), items


def _drawn_back(item: Input):
    return type(item.value)(min(max(item.value, item.low), item.high))


def _unchecked(owner, steps, value):
    head, rest = steps[0], steps[1:]
    if isinstance(owner, tuple):
        items = list(owner)
        items[int(head)] = _unchecked(items[int(head)], rest, value) if rest else value
        return tuple(items)
    twin = _twin(owner)
    inner = _unchecked(getattr(owner, head), rest, value) if rest else value
    object.__setattr__(twin, head, inner)
    return twin


def _twin(owner):
    """Copy the fields of a part, not what it has worked out from them and kept."""
    twin = object.__new__(type(owner))
    for name, _meta in _declarations(type(owner)):
        object.__setattr__(twin, name, getattr(owner, name))
    return twin
