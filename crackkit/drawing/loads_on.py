"""Loads on a member, for the moving picture and the blank ones: arrows, blocks and their words."""

import numpy as np

from crackkit.drawing.frames import Along, View
from crackkit.drawing.labels import GAP, width_of
from crackkit.drawing.words_on import Label
from crackkit.units import number, shown, unit
from crackkit.units.display import digits, joined
from crackkit.units.quantities import scale
from crackkit.words import _

ALWAYS, LIVE = "always", "live"


def lasting(structure) -> list:
    """List the spread loads that are always there."""
    return [load for load in structure.spread if load.kind == ALWAYS and load.total]


def live(structure) -> list:
    """List the spread loads that come and go."""
    return [load for load in structure.spread if load.kind == LIVE]


def arrow_places(load, along: Along, count: int) -> np.ndarray:
    """Places [mm] of the arrows of a spread load; `count` would stand on the whole length."""
    reach = load.end - load.start
    steps = max(round((count - 1) * reach / along.length), 1)
    return load.start + reach * (np.arange(steps + 1) / steps)


def lasting_labels(structure, along: Along, view: View, room: float, say) -> list[Label]:
    """Name the spread loads, each at the end of its stretch; one for all where room is short.

    Parameters
    ----------
    structure : object
    along : Along
    view : View
    room : float
        Width that the words may take [drawing units].
    say : callable
        From (words of the load without weight, words with it, the load) to a text.
    """
    loads = lasting(structure)
    texts = {}
    for load in loads:
        texts[say(load, _amount([load.added], view), _amount([load.total], view))] = load.end
    if sum(width_of(text, "note") + GAP for text in texts) > room:
        added, total = [load.added for load in loads], [load.total for load in loads]
        texts = {say(loads[0], _amount(added, view), _amount(total, view)): loads[-1].end}
    return [
        Label(float(along(end)) - width_of(text, "note") / 2, text, "note")
        for text, end in texts.items()
    ]


def live_words(structure, view: View) -> str:
    """Say how much the loads that come and go are."""
    amounts = [load.added for load in live(structure)]
    return _("live {load}").format(load=_amount(amounts, view))


def _amount(values, view: View) -> str:
    low, high = min(values), max(values)
    if low == high:
        return shown(low, "line_load", view.system)
    way = scale("line_load", view.system)
    ends = [digits(number(v, "line_load", view.system), way.decimals) for v in (low, high)]
    text = _("{low} to {high}").format(low=ends[0], high=ends[1])
    return joined(text, unit("line_load", view.system))


def with_own_weight(load, added: str, total: str) -> str:
    """Say a load and name the own weight beside it."""
    if not load.own:
        return added
    if not load.added:
        return _("own weight {load}").format(load=total)
    return _("{load} and own weight").format(load=added)


def own_weight_counted(load, _added: str, total: str) -> str:
    """Say a load, the own weight counted in."""
    return _("{load} with own weight").format(load=total) if load.own else total


def with_its_own_weight(load, _added: str, total: str) -> str:
    """Say a load on paper, the own weight counted in."""
    return _("{load} with its own weight").format(load=total) if load.own else total
