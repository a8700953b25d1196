"""Every public function of mechanics says what it takes, in which unit, and from which source."""

import dataclasses
import importlib
import inspect
import pkgutil
import re
import tomllib

import pytest
from numpydoc.docscrape import NumpyDocString

import crackkit.mechanics
from crackkit.launch.places import PROJECT

NUMERIC = re.compile(r"\b(float|int|complex|ndarray|array|array_like|ArrayLike)\b")
UNIT = re.compile(r"\[[^\]\s][^\]]*\]")
# A key of the bibliography ends with the year: FROSCH1999.
KEY = re.compile(r"\b[A-Z]{3,}[A-Z0-9.]*(?:19|20)\d\d[a-z]?\b")
SOURCES = PROJECT / "crackkit" / "published" / "sources.toml"


def public_things():
    for found in pkgutil.walk_packages(crackkit.mechanics.__path__, "crackkit.mechanics."):
        module = importlib.import_module(found.name)
        for name, thing in vars(module).items():
            own = getattr(thing, "__module__", None) == module.__name__
            if own and not name.startswith("_") and callable(thing):
                yield pytest.param(thing, id=f"{found.name.removeprefix('crackkit.')}.{name}")


def arguments_of(thing) -> list[str]:
    if dataclasses.is_dataclass(thing):
        return [field.name for field in dataclasses.fields(thing) if field.init]
    if inspect.isclass(thing) and thing.__init__ is object.__init__:
        return []
    names = inspect.signature(thing).parameters
    return [name for name in names if not name.startswith("_")]


def documented(thing) -> list[tuple[str, str, str]]:
    """Give name, type and description of each argument in the docstring."""
    sections = NumpyDocString(inspect.getdoc(thing) or "")
    return [
        (name.strip().lstrip("*"), parameter.type, " ".join(parameter.desc))
        for parameter in sections["Parameters"]
        for name in parameter.name.split(",")
    ]


def unitless(thing) -> list[str]:
    return [
        name
        for name, kind, text in documented(thing)
        if NUMERIC.search(kind) and "bool" not in kind and not UNIT.search(f"{kind} {text}")
    ]


@pytest.mark.parametrize("thing", list(public_things()))
def test_a_docstring_lists_every_argument_in_order(thing):
    assert [name for name, _, _ in documented(thing)] == arguments_of(thing)


@pytest.mark.parametrize("thing", list(public_things()))
def test_every_number_has_its_unit(thing):
    assert unitless(thing) == []


@pytest.mark.parametrize("thing", list(public_things()))
def test_every_cited_source_is_in_the_bibliography(thing):
    keys = {entry["key"] for entry in tomllib.loads(SOURCES.read_text("utf-8"))["source"]}
    assert set(KEY.findall(inspect.getdoc(thing) or "")) - keys == set()


def test_a_missing_unit_and_a_forgotten_argument_would_be_noticed():
    def width(span, cover):
        """Width.

        Parameters
        ----------
        span : float
            How far.
        """

    assert unitless(width) == ["span"]
    assert [name for name, _, _ in documented(width)] != arguments_of(width)
