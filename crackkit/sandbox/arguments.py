"""The kinds of arguments: how each is read from what was typed."""

from collections.abc import Callable
from dataclasses import dataclass

from crackkit.sandbox.wrong_input import WrongInput, nearest
from crackkit.units import BarSpacing, UnitError, parse, parse_bars, parse_point_loads
from crackkit.units.bar_notes import BarCount
from crackkit.words import _

# Units that are understood, for the message to somebody who typed none.
UNDERSTOOD = {
    "length": ("m", "cm", "mm", "ft", "in", "yd"),
    "size": ("mm", "cm", "m", "in", "ft"),
    "force": ("kN", "N", "MN", "kip", "lb"),
    "line_load": ("kN/m", "N/mm", "kip/ft", "klf", "lb/ft", "plf"),
    "strength": ("MPa", "N/mm2", "psi", "ksi"),
    "stress": ("MPa", "N/mm2", "ksi", "psi"),
}
_NOTHING = ("", "none", "no", "0", "-")
_YES, _NO = ("yes", "on", "true"), ("no", "off", "false")


@dataclass(frozen=True)
class Argument:
    """One thing an engineer can type.

    Attributes
    ----------
    name, label : str
        As typed, and in words.
    read : callable
        Gives the inner value of a text; raises `WrongInput`.
    assumed : dict
        What is taken in each system when nothing is typed.
    quantity : str
        Key of the table of quantities; empty for notes and words.
    help : str
        One sentence.
    """

    name: str
    label: str
    read: Callable
    assumed: dict
    quantity: str = ""
    help: str = ""


def amount(name: str, label: str, quantity: str, us: str, si: str, help: str = "") -> Argument:
    """Declare a number with a unit, with what is assumed in US and SI units."""

    def read(typed):
        return _amount(name, label, quantity, typed)

    return Argument(name, label, read, {"US": us, "SI": si}, quantity, help)


def _amount(name: str, label: str, quantity: str, typed) -> float:
    try:
        return parse(typed, quantity, None, name)
    except UnitError as error:
        raise WrongInput(_unreadable(name, label, quantity, typed, error), name, typed) from None


def _unreadable(name: str, label: str, quantity: str, typed, error: UnitError) -> str:
    sentence = str(error).partition(error.reason)[2]
    units = ", ".join(UNDERSTOOD[quantity])
    understood = _("Units understood: {units}").format(units=units)
    return f"{name}={typed!r} ({label}) {error.reason}. {understood}{sentence}"


def bars(name: str, label: str, us: str, si: str, help: str = "") -> Argument:
    """Declare a number of bars, such as ``3 #6`` or ``4 x 16 mm``."""

    def read(typed):
        return _bars(name, label, typed)

    return Argument(name, label, read, {"US": us, "SI": si}, help=help)


def _bars(name: str, label: str, typed) -> BarCount | None:
    if _is_nothing(typed):
        return None
    note = _noted(parse_bars, name, typed)
    if isinstance(note, BarSpacing):
        reason = _("a beam takes a number of bars, such as 3 #6 or 4 x 16 mm, not a spacing")
        raise WrongInput(f"{name}={typed!r} ({label}): {reason}.", name, typed)
    return note


def _is_nothing(typed) -> bool:
    return typed in (None, 0, False) or (isinstance(typed, str) and typed.lower() in _NOTHING)


def _noted(reader, name: str, typed):
    try:
        return reader(str(typed), name)
    except UnitError as error:
        reason = str(error).partition(": ")[2]
        raise WrongInput(f"{name}={typed!r}: {reason}", name, typed) from None


def point_loads(name: str, label: str, help: str = "") -> Argument:
    """Declare point loads: one text, or a list of texts."""

    def read(typed):
        if _is_nothing(typed):
            return ()
        texts = [typed] if isinstance(typed, (str, int, float)) else list(typed)
        return tuple(load for text in texts for load in _noted(parse_point_loads, name, text))

    return Argument(name, label, read, {"US": "none", "SI": "none"}, help=help)


def bar_size(name: str, label: str, choices, us: str, si: str, help: str = "") -> Argument:
    """Declare the size of a bar, such as ``#3`` or ``10 mm``; ``none`` is allowed."""

    def read(typed):
        text = "none" if _is_nothing(typed) else str(typed).replace(" ", "").removesuffix("mm")
        return _chosen(name, label, choices, text, typed)

    return Argument(name, label, read, {"US": us, "SI": si}, help=help)


def word(name: str, label: str, choices, us: str, si: str, help: str = "") -> Argument:
    """Declare one of several words; `choices` holds pairs (key, label)."""

    def read(typed):
        return _chosen(name, label, choices, str(typed), typed)

    return Argument(name, label, read, {"US": us, "SI": si}, help=help)


def _chosen(name: str, label: str, choices, text: str, typed) -> str:
    """Find a choice by its key or label; by the first word of a label too ("EN 1992", "ACI")."""
    wished = _flat(text)
    for key, words in choices:
        if wished and wished in (_flat(key), _flat(words)):
            return key
    begins = [k for k, _words in choices if len(k) > 1 and wished.startswith(_flat(k) + "_")]
    if len(begins) == 1:
        return begins[0]
    raise WrongInput(_not_offered(name, label, choices, wished, typed), name, typed)


def _flat(text: str) -> str:
    return "_".join(text.lower().replace("-", " ").replace(",", " ").split())


def _not_offered(name: str, label: str, choices, wished: str, typed) -> str:
    keys = [key for key, _words in choices]
    said = _("{name}={typed!r} ({label}) is not one of {allowed}.").format(
        name=name, typed=typed, label=label, allowed=", ".join(keys)
    )
    near = nearest(wished, keys)
    return said + (" " + _("Did you mean {names}?").format(names=near[0]) if near else "")


def switch(name: str, label: str, help: str = "") -> Argument:
    """Declare a yes or no."""

    def read(typed):
        if str(typed).lower() in (*_YES, *_NO):
            return str(typed).lower() in _YES
        reason = _("say yes or no")
        raise WrongInput(f"{name}={typed!r} ({label}): {reason}.", name, typed)

    return Argument(name, label, read, {"US": True, "SI": True}, help=help)
