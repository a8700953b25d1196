"""How the bars of a strip lie, beside what the rules ask for."""

import math

from crackkit.sandbox.told import Told
from crackkit.units import shown
from crackkit.words import _


def laid_and_asked(outcome, system: str) -> Told:
    """List cover, room, distance and steel as laid and as asked for, with the clauses.

    Parameters
    ----------
    outcome : Outcome
        Of a strip whose bars are to be chosen.
    system : str
        ``"SI"`` or ``"US"``.
    """
    head = (_("what"), _("as laid"), _("asked for"), _("by"))
    # the working names value and clause of whatever the rules ask for
    asked = {step.symbol: step for step in reversed(outcome.working)}
    found = [_least(_("cover"), outcome.control.cover, asked["c_min"], system)]
    for name, bars in _ways(outcome.control):
        found += _of_bars(name, bars, outcome.control, asked, system)
    return Told(_("As laid and as asked for"), (), head, tuple(found))


def _ways(control):
    """The bars that have to hold cracks, with their name."""
    yield _("bars"), control.main.bars
    if control.across is not None:
        yield _("bars across"), control.across.bars


def _of_bars(name: str, bars, control, asked: dict, system: str) -> list[tuple[str, ...]]:
    rows = [_least(_("{bars}: clear between").format(bars=name), bars.gap, asked["g_min"], system)]
    if math.isfinite(control.widest):
        label = _("{bars}: from centre to centre").format(bars=name)
        rows.append(_row(label, bars.spacing, _("at most {x}"), asked["s_max"], system))
    label = _("{bars}: all their steel").format(bars=name)
    return [*rows, _least(label, bars.total, asked["A_s,min"], system)]


def _least(label: str, laid, step, system: str) -> tuple[str, ...]:
    return _row(label, laid, _("at least {x}"), step, system)


def _row(label: str, laid, text: str, step, system: str) -> tuple[str, ...]:
    here = shown(float(laid), step.quantity, system) if laid >= 0 else _("no room")
    return (label, here, text.format(x=shown(step.value, step.quantity, system)), step.clause)
