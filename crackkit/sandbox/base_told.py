"""What the base alone can do to a slab on the ground, by the old rules, beside what it does."""

from crackkit.mechanics.base_friction import base
from crackkit.sandbox.told import Told
from crackkit.structures.ground_working import DRAG_SHARE
from crackkit.units import SI, number, shown, unit
from crackkit.units.display import digits, joined
from crackkit.words import _

METRE, FOOT = 1000.0, 304.8  # strips of slab for which bars are told [mm]


def by_the_base_alone(outcome, system: str) -> Told:
    """List pull, length and bars by friction alone, as if both ends were free.

    Parameters
    ----------
    outcome : Outcome
        Of a slab on the ground.
    system : str
        ``"SI"`` or ``"US"``.
    """
    # the working has worked them out: nothing is calculated twice
    steps = {step.symbol: step for step in outcome.working}
    head = (_("what"), _("by the base alone"), _("here"), _("formula"))
    rows = (
        _pull(steps["sigma"], outcome, system),
        _length(steps["L_max"], outcome, system),
        _bars(steps["A_drag"], outcome, system),
    )
    return Told(_("By the base alone"), _assumed(base(outcome.structure.base)), head, rows)


def _assumed(under) -> tuple[str, ...]:
    text = _("On {base}: it holds back with up to {mu:g} times the weight ({source}).")
    source = f"{under.source}, {under.where}"
    free = _("Both ends free, no joints, sliding all along; for bars, {n:.0f} % of their strength.")
    return (
        text.format(base=under.label, mu=under.coefficient, source=source),
        free.format(n=100 * DRAG_SHARE),
    )


def _pull(step, outcome, system: str) -> tuple[str, ...]:
    now = max(float(outcome.ground.stress.max()), 0.0)
    label = _("pull in the middle of the slab, at most")
    here = _("{s} now").format(s=_stress(now, system))
    return (label, _stress(step.value, system), here, step.formula)


def _stress(value: float, system: str) -> str:
    """Friction pulls with little: one more digit than a strength is written with."""
    decimals = 2 if system == SI else 1
    return joined(digits(number(value, "strength", system), decimals), unit("strength", system))


def _length(step, outcome, system: str) -> tuple[str, ...]:
    here = shown(outcome.structure.length, "length", system)
    # the slab that is pulled as hard as it can bear, curling taken off
    formula = f"2 × f_ct × (1 \u2212 {outcome.structure.spent:g}) × h/(mu × w)"
    return (step.formula, shown(step.value, step.quantity, system), here, formula)


def _bars(step, outcome, system: str) -> tuple[str, ...]:
    strip = METRE if system == SI else FOOT
    needed, laid = step.value * strip / METRE, outcome.structure.area * strip
    text = _("bars that drag half of it, on {strip} of width: they hold a crack shut, no more")
    label = text.format(strip=_("1 m") if system == SI else _("1 ft"))
    here = shown(laid, "area", system) if laid else _("none that count")
    return (label, shown(needed, "area", system), here, step.clause)
