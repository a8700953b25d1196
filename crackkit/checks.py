"""Printed values from books, standards and papers, set beside what crackkit gives for them.

The entries live in `crackkit/published`, one for each printed number; a test compares them all,
and the last section of a lesson shows the same table. An entry names a function, what it is
given, and what is printed. In what is given

- a list becomes an array, or a list of things where its members are tables,
- a table with the key ``function`` becomes what that function or class gives for the rest,
- a table with the key ``result_of`` becomes the result of the call of another entry of the file,
- any other table becomes the dataclass that annotates the argument.

An entry with the key ``like`` repeats source, place, function and arguments of another one.
"""

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field, is_dataclass
from functools import cache, reduce
from importlib import import_module, resources
from typing import get_type_hints

import numpy as np

from crackkit.words import _

_REPEATED = ("source", "where", "function", "given")


@dataclass(frozen=True)
class Source:
    """A book, standard, paper or sheet in which numbers are printed."""

    key: str
    authors: str
    year: int | str
    title: str
    where: str

    @property
    def short(self) -> str:
        """Authors and year, as a text cites them."""
        return f"{self.authors} ({self.year})"


@dataclass(frozen=True)
class Check:
    """One printed number, and the call that should give it.

    Parameters
    ----------
    id : str
        Name of the entry, unique in all subjects.
    subject : str
        The file it stands in.
    source : str
        Key in the bibliography.
    where : str
        Page, example or clause; "from memory" where the value was recalled.
    quantity : str
        What the number is, with its unit.
    function : str
        Module and function, as in ``package.module:function``.
    given : dict
        Arguments (N, mm, MPa).
    expected : float
        The printed number, converted to N, mm, MPa [-].
    rtol : float
        Relative tolerance [-].
    part : str
        Attribute, key or index of the result, dotted; empty for the result itself.
    note : str
        What a reader must know about the number.
    kind : str
        "printed" for a number worked out by the source, "measured" for a test result.
    """

    id: str
    subject: str
    source: str
    where: str
    quantity: str
    function: str
    given: dict = field(hash=False)
    expected: float
    rtol: float
    part: str = ""
    note: str = ""
    kind: str = "printed"


@dataclass(frozen=True)
class Comparison:
    """A printed number and ours; `ok` where they agree within the tolerance of the entry."""

    check: Check
    got: float
    ratio: float
    ok: bool


@dataclass(frozen=True)
class Row:
    """One line of the table of checks that a lesson shows."""

    source: str
    where: str
    quantity: str
    printed: float
    ours: float
    ratio: float


@cache
def sources() -> Mapping[str, Source]:
    """The bibliography by key."""
    entries = _read("sources.toml")["source"]
    return {entry["key"]: Source(**entry) for entry in entries}


@cache
def published(subject: str | None = None) -> tuple[Check, ...]:
    """Printed numbers of one subject, or of all of them."""
    if subject is not None:
        return _checks(subject)
    return tuple(check for name in subjects() for check in _checks(name))


@cache
def subjects() -> tuple[str, ...]:
    """Subjects on which printed numbers are kept."""
    names = (file.name for file in _folder().iterdir())
    return tuple(sorted(n[:-5] for n in names if n.endswith(".toml") and n != "sources.toml"))


def result(check: Check):
    """Give the whole answer of the call, of which the entry prints a part."""
    return _result(check.function, check.given)


def compare(check: Check) -> Comparison:
    """Set our number beside the printed one."""
    got = float(_part(result(check), check.part))
    ratio = got / check.expected
    # A billionth lets a number that rounds exactly at half a unit pass.
    return Comparison(check, got, ratio, abs(ratio - 1.0) <= check.rtol + 1e-9)


def table(*subjects: str) -> tuple[Row, ...]:
    """Rows of the table of checks for some subjects, or for all where none is named."""
    checks = (check for name in subjects or (None,) for check in published(name))
    return tuple(_row(compare(check)) for check in checks)


def _row(comparison: Comparison) -> Row:
    check = comparison.check
    return Row(
        source=sources()[check.source].short,
        where=_(check.where),
        quantity=_(check.quantity),
        printed=check.expected,
        ours=comparison.got,
        ratio=comparison.ratio,
    )


def _folder():
    return resources.files("crackkit") / "published"


def _read(name: str) -> dict:
    return tomllib.loads((_folder() / name).read_text(encoding="utf-8"))


@cache
def _checks(subject: str) -> tuple[Check, ...]:
    entries = {}
    for entry in _read(f"{subject}.toml")["check"]:
        model = entries[entry.pop("like")] if "like" in entry else {}
        entry = {key: model[key] for key in _REPEATED if key in model} | entry
        entry["given"] = _expanded(entry["given"], entries)
        entries[entry["id"]] = entry
    return tuple(Check(subject=subject, **entry) for entry in entries.values())


def _expanded(given, entries):
    """Put the call of the named entry in place of each ``result_of``."""
    if isinstance(given, list):
        return [_expanded(each, entries) for each in given]
    if not isinstance(given, dict):
        return given
    if "result_of" in given:
        named = entries[given["result_of"]]
        return {"function": named["function"]} | named["given"]
    return {key: _expanded(value, entries) for key, value in given.items()}


def _result(function: str, given: dict):
    call = _named(function)
    kinds = get_type_hints(call)
    return call(**{name: _built(value, kinds.get(name)) for name, value in given.items()})


def _named(path: str):
    module, _colon, names = path.partition(":")
    return reduce(getattr, names.split("."), import_module(module))


def _built(value, kind=None):
    if isinstance(value, list):
        if any(isinstance(each, dict) for each in value):
            return [_built(each) for each in value]
        return np.array(value)
    if not isinstance(value, dict):
        return value
    if "function" in value:
        return _result(value["function"], {k: v for k, v in value.items() if k != "function"})
    if not is_dataclass(kind):
        raise TypeError(f"no dataclass annotates the argument for {sorted(value)}")
    return kind(**{name: _built(each) for name, each in value.items()})


def _part(result, path: str):
    for name in path.split(".") if path else ():
        if name.isdigit():
            result = result[int(name)]
        elif isinstance(result, Mapping):
            result = result[name]
        else:
            result = getattr(result, name)
    return result
