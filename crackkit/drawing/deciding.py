"""Which cracks decide: where loads come and go those of every arrangement, else the present."""

from crackkit.structures.outcome import YIELDS


def deciding_crack(outcome):
    """Give the crack that verdict, tile and scale of widths are about, or None."""
    return outcome.widest if outcome.range is None else outcome.range.widest


def deciding_cracks(outcome) -> tuple:
    """Give all the cracks that are judged."""
    return outcome.cracks if outcome.range is None else outcome.range.cracks


def gives_way(outcome) -> bool:
    """Tell whether bars yield or slip under the present loads: what it moves is then the least."""
    if outcome.range is None:
        return outcome.verdict.key == YIELDS
    return strained(outcome.cracks, outcome.structure.yield_strength)


def strained(cracks, strength: float) -> bool:
    """Tell whether a crack asks more of its bars than they can build up [MPa]."""
    return any(crack.steel_stress > crack.developed * strength for crack in cracks)
