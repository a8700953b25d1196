"""Loads as they are typed: forces at places, loads per length, loads per area of a slab."""

from dataclasses import dataclass
from typing import ClassVar, NamedTuple

from crackkit.sandbox.arguments import (
    UNDERSTOOD,
    Argument,
    Knob,
    exact,
    is_nothing,
    noted,
    read_amount,
)
from crackkit.sandbox.lists import parts_of
from crackkit.units import UnitError, parse, parse_point_load
from crackkit.units.bar_notes import PointLoad
from crackkit.words import _


@dataclass(frozen=True)
class Forces(Argument):
    """Forces at places: the value is a tuple of `PointLoad`."""

    unlike: ClassVar[str] = _("start and end hold one load each, or the same number of them")

    def read(self, typed) -> tuple[PointLoad, ...]:
        """Give forces and places in inner units."""
        if is_nothing(typed):
            return ()
        whole = [typed] if isinstance(typed, (int, float)) else parts_of(typed)
        return tuple(self._one(part, typed) for text in whole for part in parts_of(text))

    def _one(self, part, typed) -> PointLoad:
        return noted(parse_point_load, self, part)

    def written(self, value, system: str) -> str:
        """Write them."""
        return ", ".join(_force_note(load, system) for load in value) or "none"

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the places, then the forces."""
        several = len(value) > 1
        marks = [f" {n}" if several else "" for n in range(1, len(value) + 1)]
        named = list(zip(value, marks, strict=True))
        place, force = _("place of the load"), _("point load")
        places = [
            Knob(place + mark, "length", load.position)
            for load, mark in named
            if load.position is not None
        ]
        return (*places, *(Knob(force + mark, "force", load.force) for load, mark in named))

    def turned(self, value, numbers) -> tuple[PointLoad, ...]:
        """Give other forces at other places."""
        left = list(numbers)
        places = [None if load.position is None else left.pop(0) for load in value]
        return tuple(PointLoad(f, at) for f, at in zip(left, places, strict=True))


@dataclass(frozen=True)
class Travelling(Forces):
    """Forces that travel: the place where one stands now may be left out, and is None then."""

    def _one(self, part, typed) -> PointLoad:
        text = str(part)
        if "@" in text or " at " in text:
            return noted(parse_point_load, self, part)
        return PointLoad(read_amount(self, "force", part, typed), None)


def _force_note(load: PointLoad, system: str) -> str:
    force = exact(load.force, "force", system)
    if load.position is None:
        return force
    return f"{force} at {exact(load.position, 'length', system)}"


def point_loads(name, label, help="") -> Forces:
    """Declare point loads: one text, or a list of texts."""
    return Forces(name, label, {"US": "none", "SI": "none"}, help)


class Load(NamedTuple):
    """A spread load: per length [N/mm], or per area [MPa]."""

    size: float
    per_area: bool = False


@dataclass(frozen=True)
class Spread(Argument):
    """A load per length, or per area of a slab: the value is a `Load`."""

    unlike: ClassVar[str] = _("one is a load per length, the other a load per area")

    def read(self, typed) -> Load:
        """Give the load in the inner unit."""
        if _is_per_area(typed):
            return Load(parse(typed, "pressure", None, self.name), True)
        units = (*UNDERSTOOD["line_load"], *UNDERSTOOD["pressure"])
        return Load(read_amount(self, "line_load", typed, units=units))

    def written(self, value, system: str) -> str:
        """Write it with the unit of a system."""
        return exact(value.size, _kind(value), system)

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the load."""
        return (Knob(self.label, _kind(value), value.size),)

    def turned(self, value, numbers) -> Load:
        """Give another load of the same kind."""
        return value._replace(size=numbers[0])


def _kind(load: Load) -> str:
    return "pressure" if load.per_area else "line_load"


def _is_per_area(typed) -> bool:
    try:
        parse(typed, "pressure")
    except UnitError:
        return False
    return True


def spread(name, label, us="0 kip/ft", si="0 kN/m", help="", path="") -> Spread:
    """Declare a load per length or per area."""
    return Spread(name, label, {"US": us, "SI": si}, help, path)


def line_load(argument: Spread, load: Load, width: float, is_slab: bool, typed) -> float:
    """Give a load per length [N/mm]; one per area is taken for the width of the strip.

    Parameters
    ----------
    argument : Spread
        For the message.
    load : Load
        As read.
    width : float
        Of the strip, above 0 [mm].
    is_slab : bool
        Only a strip of a slab takes a load per area: how much floor a beam carries is not known.
    typed : object
        For the message.

    Raises
    ------
    WrongInput
        If a load per area is to lie on a beam.
    """
    if not load.per_area:
        return load.size
    if not is_slab:
        reason = _(
            "a beam takes a load per length; times the width of floor that it carries, "
            "a load per area becomes one"
        )
        raise argument.wrong(typed, reason)
    return load.size * width
