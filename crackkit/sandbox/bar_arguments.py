"""Bars as they are typed: ``3 #6``, ``12 @ 150``, and a row of such notes, one for each place."""

from dataclasses import dataclass
from typing import ClassVar

from crackkit.sandbox.arguments import Argument, Knob, exact, is_nothing, noted, size_note
from crackkit.sandbox.lists import parts_of
from crackkit.units import BarSpacing, parse_bars
from crackkit.units.bar_notes import BarCount
from crackkit.words import _


@dataclass(frozen=True)
class BarNote(Argument):
    """A number of bars such as ``3 #6``, or where `mats` are meant a spacing such as ``12 @ 150``.

    The value is a `BarCount`, a `BarSpacing`, or None for no bars.
    """

    mats: bool = False
    unlike: ClassVar[str] = _("does not run between different sizes, or from nothing")
    counted: ClassVar[str] = _(
        "a beam takes a number of bars, such as 3 #6 or 4 x 16 mm, not a spacing"
    )

    def read(self, typed):
        """Give number and size, or size and spacing."""
        return self.one(typed, typed)

    def one(self, typed, whole):
        """Read one note; the message names what was typed as a whole."""
        if is_nothing(typed):
            return None
        note = noted(parse_bars, self, typed, whole)
        if isinstance(note, BarSpacing) and not self.mats:
            raise self.wrong(whole, self.counted)
        return note

    def written(self, value, system: str) -> str:
        """Write the note."""
        return bar_note(value, system)

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the number of bars, or their spacing."""
        return () if value is None else (_knob(value, self.label),)

    def turned(self, value, numbers):
        """Give as many other bars, or the same ones at another spacing."""
        return _turned(value, numbers[0])

    def alike(self, first, last) -> bool:
        """Whether both name the same size, counted or at a spacing."""
        return type(first) is type(last) and first.size == last.size


@dataclass(frozen=True)
class Arranged(BarNote):
    """A number of bars, of which only some can be laid: `counts` holds these numbers."""

    counts: tuple[int, ...] = ()
    counted: ClassVar[str] = _("give a number of bars, such as 4 #4 or 4 x 12 mm, not a spacing")

    def read(self, typed):
        """Give number and size."""
        note = super().read(typed)
        if note is not None and note.count not in self.counts:
            *most, last = (str(count) for count in self.counts if count)
            reason = _("the bars can be none, {most} or {last}").format(
                most=", ".join(most), last=last
            )
            raise self.wrong(typed, reason)
        return note

    def may_be(self, numbers) -> bool:
        """Whether so many bars can be laid."""
        return numbers[0] in self.counts


def arranged(name, label, us, si, counts, help="") -> Arranged:
    """Declare a number of bars of which only some can be laid."""
    return Arranged(name, label, {"US": us, "SI": si}, help, counts=tuple(counts))


@dataclass(frozen=True)
class BarRow(BarNote):
    """Bars of one size at several places: one note for all of them, or one for each.

    The value is a tuple of notes; one note alone goes for every place.
    """

    def read(self, typed) -> tuple:
        """Give the notes."""
        notes = tuple(self.one(text, typed) for text in parts_of(typed))
        there = [note for note in notes if note is not None]
        if len({note.size for note in there}) > 1:
            raise self.wrong(typed, _("all bars of one face have one size"))
        kinds = {getattr(note, "spacing", None) for note in there}
        if len(kinds) > 1:
            raise self.wrong(typed, _("all bars of one face lie at one spacing, or are counted"))
        return notes

    def written(self, value, system: str) -> str:
        """Write one note if it goes for every place, else all."""
        return ", ".join(bar_note(note, system) for note in once(value))

    def knobs(self, value) -> tuple[Knob, ...]:
        """Give the number at each place, or the spacing of all."""
        there = [(k, note) for k, note in enumerate(value, 1) if note is not None]
        if there and isinstance(there[0][1], BarSpacing):
            return (_knob(there[0][1], self.label),)
        labels = {k: self.label if len(value) == 1 else f"{self.label} {k}" for k, _n in there}
        return tuple(_knob(note, labels[k]) for k, note in there)

    def turned(self, value, numbers) -> tuple:
        """Give other numbers at the places, or another spacing everywhere."""
        left = list(numbers) if len(numbers) > 1 else [numbers[0]] * len(value)
        return tuple(note and _turned(note, left.pop(0)) for note in value)

    def alike(self, first, last) -> bool:
        """Whether both name the same size at the same places."""
        if [note is None for note in first] != [note is None for note in last]:
            return False
        pairs = zip(first, last, strict=True)
        return all(BarNote.alike(self, a, b) for a, b in pairs if a is not None)


def once(values) -> tuple:
    """Give one value where all places have the same, else all of them."""
    return tuple(values[:1]) if len(set(values)) == 1 else tuple(values)


def bars(name, label, us, si, help="") -> BarNote:
    """Declare a number of bars."""
    return BarNote(name, label, {"US": us, "SI": si}, help)


def mat_or_bars(name, label, us, si, help="", path="") -> BarNote:
    """Declare bars that are counted or lie at a spacing."""
    return BarNote(name, label, {"US": us, "SI": si}, help, path, mats=True)


def bar_row(name, label, us, si, help="") -> BarRow:
    """Declare bars for several places."""
    return BarRow(name, label, {"US": us, "SI": si}, help, mats=True)


def bar_note(note, system: str) -> str:
    """Write a note of bars as it would be typed."""
    if note is None or (isinstance(note, BarCount) and not note.count):
        return "none"
    if isinstance(note, BarSpacing):
        return f"{size_note(note.size)} @ {exact(note.spacing, 'size', system)}"
    return f"{note.count:.0f} x {size_note(note.size)}"


def _knob(note, label: str) -> Knob:
    if isinstance(note, BarSpacing):
        return Knob(_("spacing of the {bars}").format(bars=label), "size", note.spacing)
    return Knob(_("number of {bars}").format(bars=label), "count", note.count)


def _turned(note, number: float):
    if isinstance(note, BarSpacing):
        return note._replace(spacing=number)
    return note._replace(count=round(number))


def laid(note, unlaid) -> dict:
    """Give size, number, spacing and presence of bars as the fields of a structure.

    Parameters
    ----------
    note : BarCount, BarSpacing or None
    unlaid : str
        Size to name where no bars lie; it changes nothing.
    """
    if note is None:
        return {"size": unlaid, "number": 0, "laid": False}
    if isinstance(note, BarSpacing):
        return {"size": note.size, "spacing": note.spacing}
    return {"size": note.size, "number": note.count}
