"""Any structure at all: inputs drawn anywhere in the ranges that the structure itself declares."""

from functools import lru_cache

from hypothesis import strategies as st

from crackkit.structures import fields


def values(item: fields.Input):
    """Any value that one input may have, its ends often."""
    if item.declared.choices:
        return _one_of(tuple(value for value, _label in item.declared.choices))
    if item.declared.quantity == "count":
        return st.integers(int(item.low), int(item.high))
    return _between(item.low, item.high)


# To make a strategy takes longer than to draw from it: the same one is made once.
_one_of = lru_cache(2000, typed=True)(st.sampled_from)


@lru_cache(2000)
def _between(low: float, high: float):
    return st.one_of(st.floats(low, high), st.sampled_from([low, high]))


def anywhere(draw, start, fixed: dict):
    """Draw every input of a structure, the independent ones first.

    `start` has the wanted number of parts; `fixed` holds inputs that are not drawn, by path
    ("bottom__number" for "bottom.number").
    """
    fixed = {path.replace("__", "."): value for path, value in fixed.items()}
    plain = [i for i in fields.inputs(start) if not _follows(i) and i.path not in fixed]
    chosen = {item.path: draw(values(item)) for item in plain}
    drawn, _moved = fields.fitted(start, chosen | fixed)
    following = [i for i in fields.inputs(drawn) if _follows(i) and i.path not in fixed]
    # own inputs before those of parts, whose ranges follow them more often
    for own in (True, False):
        wanted = {i.path: draw(values(i)) for i in following if ("." not in i.path) == own}
        drawn = _settled(drawn, wanted)
        following = [fields.input_at(drawn, i.path) for i in following] if own else following
    return drawn


def _follows(item: fields.Input) -> bool:
    return callable(item.declared.low) or callable(item.declared.high)


def _settled(structure, wanted: dict):
    """Change inputs that hang on each other: what does not fit with the rest is drawn back."""
    for path, value in wanted.items():
        structure = fields._unchecked(structure, path.split("."), value)
    return fields.fitted(structure, {})[0]
