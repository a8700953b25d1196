"""Controls made from the declarations of a structure: what the page needs to draw them."""

from crackkit.mechanics.bars import ASTM, METRIC
from crackkit.structures.fields import Input, inputs
from crackkit.units import number, shown, slider_range, unit
from crackkit.words import _


def topics(structure, system: str, locked: tuple[str, ...] = ()) -> list[dict]:
    """List the controls, topic by topic.

    Parameters
    ----------
    structure : object
        A structure with declared inputs and ``topics``.
    system : str
        Units in which numbers are shown.
    locked : tuple of str
        Paths, or beginnings of paths, that the reader may not change; they are left out.
    """
    rows = [item for item in inputs(structure) if item.applies and not under(item.path, locked)]
    listed = []
    for label, prefixes in structure.topics:
        chosen = [item for p in prefixes for item in rows if under(item.path, (p,))]
        if chosen:
            rows_here = [_row(item, system) for item in chosen]
            buttons = [[c.act, c.label] for c in structure.counts if _offered(c, prefixes, chosen)]
            listed.append({"label": label, "rows": rows_here, "buttons": buttons})
    return listed


def _offered(count, prefixes, rows) -> bool:
    return count.prefix in prefixes and any(under(item.path, (count.prefix,)) for item in rows)


def under(path: str, prefixes: tuple[str, ...]) -> bool:
    """Tell whether an input is one of these, or lies in one of these parts."""
    return any(path == p or path.startswith(f"{p}.") for p in prefixes)


def _row(item: Input, system: str) -> dict:
    row = {
        "path": item.path,
        "label": item.declared.label,
        "group": _group(item),
        "help": item.declared.help,
        "kind": _kind(item),
    }
    if row["kind"] == "choice":
        row["choices"] = _choices(item, system)
    if row["kind"] == "slider":
        row["unit"] = unit(item.declared.quantity, system)
        row["bounds"] = bounds(item, system)
        if item.declared.quantity == "age":  # from the first days to years: even steps of ratio
            row["runs"] = [_("Play"), _("Stop")]
        if item.declared.plays:
            row |= {"runs": [_("Play"), _("Stop")], "even": True}
    return row


def _group(item: Input) -> str:
    # "Point load 2: place" needs its group; under "Bottom bars" the topic says it already
    return ": ".join(group for group in item.groups if group[-1:].isdigit())


def _kind(item: Input) -> str:
    if item.declared.quantity == "switch":
        return "switch"
    return "choice" if item.declared.choices else "slider"


def _choices(item: Input, system: str) -> list[list[str]]:
    """Offer bars of the reader's own system, and the one in place whatever it is."""
    foreign = METRIC if system == "US" else ASTM
    return [
        [value, label]
        for value, label in item.declared.choices
        if value not in foreign or value == item.value
    ]


def bounds(item: Input, system: str) -> list[float]:
    """Give low, high and step of a slider in display units."""
    return list(slider_range(item.low, item.high, item.declared.quantity, system))


def standing(items: tuple[Input, ...], system: str) -> tuple[dict, dict]:
    """Give value and text of every control, and the bounds of every slider.

    Bounds may depend on other inputs, so they travel with the values.
    """
    values, limits = {}, {}
    for item in items:
        if not item.applies:
            continue
        if item.declared.choices:
            values[item.path] = [item.value, ""]
            continue
        quantity = item.declared.quantity
        here = round(number(item.value, quantity, system), 6)
        values[item.path] = [here, shown(item.value, quantity, system)]
        limits[item.path] = bounds(item, system)
    return values, limits
