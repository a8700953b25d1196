"""What of a continuous floor can be dragged, and what a drag changes."""

from crackkit.structures import fields
from crackkit.structures.floor_parts import LONGEST, SHORTEST
from crackkit.structures.on_drawing import Grip

SIDES = ("left", "right")


def support_grip(floor, index: int) -> Grip:
    """How far an inner support slides between its neighbours, which stay where they are [mm]."""
    before, at, after = floor.places[index - 1 : index + 2]
    low = max(before + SHORTEST, after - LONGEST)
    high = min(after - SHORTEST, before + LONGEST)
    return Grip(f"support.{index}", at, low, high)


def bar_grips(floor, key: str) -> tuple[Grip | None, Grip | None, Grip | None]:
    """What of a layer of bars can be dragged: its drop, its left end, its right end.

    All bars of a face drop together, so one layer of each face carries that grip.
    """
    face, index = key.split(".")
    first = int(index) == (1 if face == "top" and not floor.through else 0)
    drop = _drop(floor, face) if first else None
    if floor.through:
        return drop, None, None
    ends = _bottom_ends if face == "bottom" else _top_ends
    return drop, *ends(floor, int(index))


def _drop(floor, face: str) -> Grip:
    item = fields.part_input(floor, getattr(floor, face), f"{face}.drop")
    return Grip(item.path, item.value, item.low, item.high)


def _bottom_ends(floor, index: int) -> tuple[Grip, Grip]:
    a, b = floor.places[index : index + 2]
    span = floor.spans[index]
    left, right = (fields.part_input(floor, span, f"spans.{index}.{s}_gap") for s in SIDES)
    return (
        Grip(f"bottom.{index}.start", a + left.value, a + left.low, a + left.high),
        Grip(f"bottom.{index}.end", b - right.value, b - right.high, b - right.low),
    )


def _top_ends(floor, index: int) -> tuple[Grip | None, Grip | None]:
    at = floor.places[index]
    one = floor.supports[index]
    left, right = (fields.part_input(floor, one, f"supports.{index}.{s}_reach") for s in SIDES)
    start = Grip(f"top.{index}.start", at - left.value, at - left.high, at)
    end = Grip(f"top.{index}.end", at + right.value, at, at + right.high)
    return (start if left.applies else None), (end if right.applies else None)


def handle_changes(floor, path: str, value: float) -> dict:
    """Translate a drag on the drawing into changes of inputs: path to value [mm]."""
    head, _dot, last = path.rpartition(".")
    if head == "support":
        k = int(last)
        before, after = floor.places[k - 1], floor.places[k + 1]
        return {f"spans.{k - 1}.length": value - before, f"spans.{k}.length": after - value}
    if last in ("start", "end"):
        face, index = head.split(".")
        return _end_change(floor, face, int(index), last, value)
    return {path: value}


def _end_change(floor, face: str, index: int, end: str, value: float) -> dict:
    side = SIDES[end == "end"]
    if face == "bottom":
        at = floor.places[index + (end == "end")]
        return {f"spans.{index}.{side}_gap": _inward(end) * (value - at)}
    return {f"supports.{index}.{side}_reach": -_inward(end) * (value - floor.places[index])}


def _inward(end: str) -> float:
    """1 for the left end, whose gap grows to the right; -1 for the right end."""
    return 1.0 if end == "start" else -1.0
