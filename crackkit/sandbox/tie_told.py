"""A pulled member crack by crack, and beside members of other concrete."""

from crackkit.sandbox.holding import from_to
from crackkit.sandbox.told import Told
from crackkit.structures.pulled import PARTED
from crackkit.units import shown
from crackkit.words import _


def crack_by_crack(outcome, system: str) -> Told | None:
    """List the cracks in the order in which they came; None without any.

    Parameters
    ----------
    outcome : Outcome
        Of a pulled member.
    system : str
        ``"SI"`` or ``"US"``.
    """
    if not outcome.cracks:
        return None
    head = (_("crack"), _("from the left end"), _("came at"), _("is wide"))
    born = sorted(zip(outcome.pulled.order, outcome.cracks, strict=True), key=lambda pair: pair[0])
    rows = tuple(_row(number, crack, outcome.pulled, system) for number, crack in born)
    return Told(_("Crack by crack"), (), head, rows)


def _row(number: int, crack, state, system: str) -> tuple[str, ...]:
    pull = float(state.history.sequence.pull[number - 1])
    came = shown(pull, "force", system) if pull > 0 else _("as it dried")
    wide = shown(crack.width.governing, "width", system) if crack.width else _("not held")
    return (str(number), shown(crack.at, "length", system), came, wide)


def side_by_side(outcome, system: str) -> Told | None:
    """Say how the same member of other concrete fares; None where no other lies beside it.

    Parameters
    ----------
    outcome : Outcome
        Of a pulled member.
    system : str
        ``"SI"`` or ``"US"``.
    """
    others = outcome.pulled.siblings
    if not others:
        return None
    held = [one.widths for one in others if one.parted_at is None]
    if outcome.pulled.ended != PARTED:
        held.append(outcome.pulled.now.widths)
    total = len(others) + 1
    text = _("Of {n}, each of its own concrete, {m} have parted.")
    said = [text.format(n=total, m=total - len(held))] if len(held) < total else []
    return Told(_("Side by side"), (*said, *_spread(held, total, system)))


def _spread(held, total: int, system: str) -> list[str]:
    """How many cracks the members that hold have, and how wide the widest of each is."""
    if not held:
        return []
    counts = sorted(len(widths) for widths in held)
    widest = [float(widths.max(initial=0.0)) for widths in held]
    text = _("{m} of {n} hold. Cracks in each: {least} to {most}; the widest of each: {reach}.")
    reach = from_to(min(widest), max(widest), "width", system)
    ends = {"least": counts[0], "most": counts[-1]}
    return [text.format(m=len(held), n=total, reach=reach, **ends)]
