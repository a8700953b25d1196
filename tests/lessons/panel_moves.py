"""What a reader can do on a live panel: its controls are described in the panel's own state."""

import re
from collections.abc import Iterator
from itertools import chain, count

# Between the two ends of a slider, and of a handle, which does what a slider does.
STEPS, DRAGS = 20, 3
# The same control in a second panel of a notebook: what the panel makes of it is seen at its ends,
# what lies between was tried in the first.
AGAIN = 1
_handle = re.compile(r"<g[^>]*\bck-handle\b[^>]*>")
_attribute = re.compile(r'([\w-]+)="([^"]*)"')
# What the page's fixed buttons send; the last of each kind brings the panel back.
_acts = (
    *(("units", "US"), ("theme", "dark"), ("theme", "projector")),
    *(("units", "SI"), ("theme", "auto")),
)


def is_panel(model: dict) -> bool:
    """Tell whether a widget's state is that of a live panel."""
    return "topics" in model and "changes" in model


def panel_moves(model: dict, tried: set | None = None, steps: int = STEPS) -> Iterator[dict]:
    """Give every message: controls, handles on the picture, the guided walk, buttons.

    Parameters
    ----------
    model : dict
        The panel's state, kept up to date by the caller while the messages are sent: the bounds
        of one control may depend on another.
    tried : set or None
        Controls that panels of the same notebook have sent over their whole range before, with
        that range; those of this panel are added. None: no other panel was there.
    steps : int
        Places of a slider between its ends.
    """
    number, tried = count(1), set() if tried is None else tried
    for kind, path, value in [*_positions(model), *_positions_of_handles(model)]:
        offered = {str(one) for one in value or _range(model, path, kind)[:2]}
        control = (kind, path, frozenset(offered))
        between = AGAIN if control in tried else steps if kind == "set" else DRAGS
        for one in _values(model, path, kind, value, between):
            changes = {"n": next(number), "set": {}, "drag": {}} | {kind: {path: one}}
            yield {"method": "update", "state": {"changes": changes}, "buffer_paths": []}
        tried.add(control)
    buttons = ((name, None) for name, _label in model["buttons"])
    for name, value in chain(_walk(model), _places(model), _acts, buttons):
        content = {"kind": "act", "name": name, "value": value}
        yield {"method": "custom", "content": content}


def _positions(model: dict) -> list[tuple]:
    """List path and values of each control; a slider's are found when its turn comes."""
    listed = []
    for row in (row for topic in model["topics"] for row in topic["rows"]):
        now = model["values"][row["path"]][0]
        if row["kind"] == "choice":
            listed.append(("set", row["path"], [value for value, _ in row["choices"]] + [now]))
        elif row["kind"] == "switch":
            listed.append(("set", row["path"], [not now, now]))
        else:
            listed.append(("set", row["path"], None))
    return listed


def _positions_of_handles(model: dict) -> list[tuple]:
    handles = (dict(_attribute.findall(tag)) for tag in _handle.findall(model["svg"]))
    # a handle that is pressed, not dragged, does what its control does
    dragged = (one for one in handles if one.get("data-axis") != "toggle")
    return [("drag", handle["data-path"], None) for handle in dragged]


def _values(model: dict, path: str, kind: str, listed: list | None, between: int) -> Iterator:
    if listed is None:
        yield from _steps(model, path, kind, between)
    elif between == AGAIN and len(listed) > 3:
        yield from (listed[0], *listed[-2:])
    else:
        yield from listed


def _steps(model: dict, path: str, kind: str, steps: int) -> Iterator[float]:
    low, high, now = _range(model, path, kind)
    yield from (low, high)
    for part in range(1, steps + 1):
        yield low + (high - low) * part / (steps + 1)
    yield now


def _range(model: dict, path: str, kind: str) -> tuple[float, float, float]:
    return _bounds(model, path) if kind == "set" else _reach(model, path)


def _bounds(model: dict, path: str) -> tuple[float, float, float]:
    low, high, _step = model["bounds"][path]
    return low, high, model["values"][path][0]


def _reach(model: dict, path: str) -> tuple[float, float, float]:
    for tag in _handle.findall(model["svg"]):
        handle = dict(_attribute.findall(tag))
        if handle["data-path"] == path:
            names = ("aria-valuemin", "aria-valuemax", "aria-valuenow")
            return tuple(float(handle[name]) for name in names)
    return (0.0, 0.0, 0.0)


def _places(model: dict) -> Iterator[tuple[str, int]]:
    """Places of a floor that can be shown; showing one may change how many there are."""
    for number in range(len((model.get("open_places") or {}).get("rows", ()))):
        if number < len(model["open_places"]["rows"]):
            yield ("show_place", number)


def _walk(model: dict) -> Iterator[tuple[str, None]]:
    for _step in range(8):
        if not model.get("walk", {}).get("text"):
            return
        yield from (("walk_set", None), ("walk_told", None))
        if not model["walk"].get("next"):
            return
        yield ("walk_next", None)
