"""One thing an engineer can type: how it is read, written again, and run through values."""

from dataclasses import dataclass
from typing import ClassVar, NamedTuple

from crackkit.sandbox.wrong_input import WrongInput, nearest
from crackkit.units import UnitError, number, parse, unit
from crackkit.words import _

# Units that are understood, for the message to somebody who typed none.
UNDERSTOOD = {
    "length": ("m", "cm", "mm", "ft", "in", "yd"),
    "size": ("mm", "cm", "m", "in", "ft"),
    "movement": ("mm", "cm", "in"),
    "force": ("kN", "N", "MN", "kip", "lb"),
    "line_load": ("kN/m", "N/mm", "kip/ft", "klf", "lb/ft", "plf"),
    "pressure": ("kN/m2", "kPa", "psf", "ksf"),
    "strength": ("MPa", "N/mm2", "psi", "ksi"),
    "stress": ("MPa", "N/mm2", "ksi", "psi"),
    "moment": ("kN·m", "kNm", "N·m", "kip·ft", "kip-ft", "lb-ft"),
    "temperature": ("°C", "°F"),
    "time": ("d", "days", "weeks"),
    "age": ("d", "days", "weeks", "months", "years"),
    "strain": ("‰", "mm/m", "%", "millionths"),
    "ratio": ("%",),
    "bed": ("MN/m3", "N/mm3", "pci", "lb/in3"),
    "count": (),
}
_NOTHING = ("", "none", "no", "0", "-")
_YES, _NO = ("yes", "on", "true"), ("no", "off", "false")


class Knob(NamedTuple):
    """A number in what was typed that can run through values, in the inner unit."""

    label: str
    quantity: str
    number: float


@dataclass(frozen=True)
class Argument:
    """One thing an engineer can type.

    Attributes
    ----------
    name, label : str
        As typed, and in words.
    assumed : dict
        What is taken in each system when nothing is typed.
    help : str
        One sentence.
    path : str
        The input of the structure that it sets; ``*`` stands for each place. Empty where it sets
        more than one.
    """

    name: str
    label: str
    assumed: dict
    help: str = ""
    path: str = ""
    quantity: ClassVar[str] = ""
    unlike: ClassVar[str] = ""

    def read(self, typed):
        """Give the inner value of what was typed; raises `WrongInput`."""
        raise NotImplementedError

    def written(self, value, system: str):
        """Write an inner value as it would be typed."""
        return value

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the numbers in a value that can run; none where it does not run."""
        return ()

    def turned(self, value, numbers):
        """Give the value with other numbers in the places of its knobs."""
        return value

    def may_be(self, numbers) -> bool:
        """Whether numbers between two values that were typed may stand in the places of knobs."""
        return True

    def alike(self, first, last) -> bool:
        """Whether two values differ in their numbers alone."""
        return [k[:2] for k in self.knobs(first)] == [k[:2] for k in self.knobs(last)]

    def wrong(self, typed, reason: str) -> WrongInput:
        """Give the error for something typed."""
        return WrongInput(f"{self.name}={typed!r} ({self.label}): {reason}.", self.name, typed)


@dataclass(frozen=True)
class Amount(Argument):
    """A number with a unit."""

    quantity: str = "length"

    def read(self, typed) -> float:
        """Give the value in the inner unit."""
        return read_amount(self, self.quantity, typed)

    def written(self, value, system: str) -> str:
        """Write it with the unit of a system."""
        return exact(value, self.quantity, system)

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the number."""
        return (Knob(self.label, self.quantity, value),)

    def turned(self, value, numbers) -> float:
        """Give the other number."""
        return numbers[0]


def amount(name, label, quantity, us, si, help="", path="") -> Amount:
    """Declare a number with a unit, with what is assumed in US and SI units."""
    return Amount(name, label, {"US": us, "SI": si}, help, path or name, quantity)


@dataclass(frozen=True)
class Whole(Amount):
    """A whole number, without a unit."""

    quantity: str = "count"

    def read(self, typed) -> int:
        """Give the number; raises `WrongInput` for a broken one."""
        value = super().read(typed)
        if not value.is_integer():
            raise self.wrong(typed, _("give a whole number"))
        return int(value)

    def written(self, value, system: str) -> int:
        """Write it as a number."""
        return int(value)


def whole(name, label, assumed: int, help="", path="") -> Whole:
    """Declare a whole number."""
    return Whole(name, label, dict.fromkeys(("US", "SI"), str(assumed)), help, path or name)


def exact(value: float, quantity: str, system: str) -> str:
    """Write an inner value with twelve digits, so that the ends of a range stay inside it."""
    return f"{number(value, quantity, system):.12g} {unit(quantity, system)}".rstrip()


def read_amount(argument: Argument, quantity: str, typed, whole=None, units=()) -> float:
    """Read a number with a unit; the message names what was typed as a whole."""
    whole = typed if whole is None else whole
    try:
        return parse(typed, quantity, None, argument.name)
    except UnitError as error:
        sentence = str(error).partition(error.reason)[2]
        known = ", ".join(units or UNDERSTOOD[quantity])
        understood = _("Units understood: {units}").format(units=known)
        said = f"{argument.name}={whole!r} ({argument.label}) {error.reason}."
        raise WrongInput(f"{said} {understood}{sentence}", argument.name, whole) from None


def is_nothing(typed) -> bool:
    """Whether what was typed says that there is none."""
    return typed in (None, 0, False) or (isinstance(typed, str) and typed.lower() in _NOTHING)


def noted(reader, argument: Argument, typed, whole=None):
    """Read a note with one of the readers of `crackkit.units`."""
    whole = typed if whole is None else whole
    try:
        return reader(str(typed), argument.name)
    except UnitError as error:
        reason = str(error).partition(": ")[2]
        raise WrongInput(f"{argument.name}={whole!r}: {reason}", argument.name, whole) from None


@dataclass(frozen=True)
class Word(Argument):
    """One of several words; `choices` holds pairs (key, label)."""

    choices: tuple = ()

    def read(self, typed) -> str:
        """Give the key."""
        return chosen(self, self.choices, str(typed), typed)


def word(name, label, choices, us, si, help="", path="") -> Word:
    """Declare one of several words."""
    return Word(name, label, {"US": us, "SI": si}, help, path or name, tuple(choices))


@dataclass(frozen=True)
class BarSize(Word):
    """The size of a bar, such as ``#3`` or ``10 mm``; ``none`` is allowed."""

    def read(self, typed) -> str:
        """Give the name of the size."""
        text = "none" if is_nothing(typed) else str(typed).replace(" ", "").removesuffix("mm")
        return chosen(self, self.choices, text, typed)

    def written(self, value, system: str) -> str:
        """Write the size."""
        return size_note(value)


def bar_size(name, label, choices, us, si, help="", path="") -> BarSize:
    """Declare the size of a bar."""
    return BarSize(name, label, {"US": us, "SI": si}, help, path or name, tuple(choices))


def size_note(name: str) -> str:
    """Write the size of a bar as people do."""
    return name if name.startswith("#") or name == "none" else f"{name} mm"


def chosen(argument: Argument, choices, text: str, typed) -> str:
    """Find a choice by its key or label; by the first word of a label too ("EN 1992", "ACI")."""
    wished = _flat(text)
    for key, words in choices:
        if wished and wished in (_flat(key), _flat(words)):
            return key
    begins = [k for k, _words in choices if len(k) > 1 and wished.startswith(_flat(k) + "_")]
    if len(begins) == 1:
        return begins[0]
    raise WrongInput(_not_offered(argument, choices, wished, typed), argument.name, typed)


def _flat(text: str) -> str:
    return "_".join(text.lower().replace("-", " ").replace(",", " ").split())


def _not_offered(argument: Argument, choices, wished: str, typed) -> str:
    keys = [key for key, _words in choices]
    said = _("{name}={typed!r} ({label}) is not one of {allowed}.").format(
        name=argument.name, typed=typed, label=argument.label, allowed=", ".join(keys)
    )
    near = nearest(wished, keys)
    return said + (" " + _("Did you mean {names}?").format(names=near[0]) if near else "")


@dataclass(frozen=True)
class Switch(Argument):
    """A yes or no."""

    def read(self, typed) -> bool:
        """Give true or false."""
        if str(typed).lower() in (*_YES, *_NO):
            return str(typed).lower() in _YES
        raise self.wrong(typed, _("say yes or no"))


def switch(name, label, assumed: bool, help="", path="") -> Switch:
    """Declare a yes or no."""
    return Switch(name, label, {"US": assumed, "SI": assumed}, help, path or name)
