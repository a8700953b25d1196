"""How well the bars of a cantilever are anchored behind its root."""

import numpy as np

from crackkit.sandbox.told import Told
from crackkit.units import shown
from crackkit.words import _


def anchorage(outcome, system: str) -> Told | None:
    """Say which share of their strength the top bars can build up at the root.

    Parameters
    ----------
    outcome : Outcome
        Of a structure with a root.
    system : str
        ``"SI"`` or ``"US"``.
    """
    bars = [one for one in outcome.steel if one.face == "top"]
    said = tuple(_said(outcome, one, system) for one in bars)
    return Told(_("Anchorage"), said or (_("There are no top bars."),))


def _said(outcome, bars, system: str) -> str:
    arm = outcome.structure
    text = _("The top bars reach {x} back past the root, {end}, and can build up {n} there.")
    return text.format(
        x=shown(arm.root - bars.start, "size", system),
        end=_("hooked") if bars.hooks[0] else _("without a hook"),
        n=_("all of their strength") if _share(outcome, bars) > 0.9995 else _part(outcome, bars),
    )


def _part(outcome, bars) -> str:
    return _("{n:.0f} % of their strength").format(n=100 * _share(outcome, bars))


def _share(outcome, bars) -> float:
    """Developed share of the bars at the root [-]."""
    capacity = np.interp(outcome.structure.root, bars.x, bars.capacity)
    return float(capacity) / outcome.structure.yield_strength
