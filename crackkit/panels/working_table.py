"""The working as a table: symbol, formula, numbers put in, result, clause."""

from html import escape

from crackkit.structures.outcome import Outcome, WorkingStep
from crackkit.units import shown
from crackkit.words import _


def working_table(outcome: Outcome, system: str) -> str:
    """Write the working as HTML, topic by topic; results in the reader's units.

    The numbers put into the formulas are in N, mm and MPa, as the formulas are.
    """
    parts = [f"<p>{escape(_('Formulas and the numbers put in: N, mm, MPa.'))}</p>"]
    topic = None
    for step in outcome.working:
        if step.topic != topic:
            parts.append("</table>" if topic else "")
            parts.append(f"<table><tr><th colspan='5'>{escape(step.topic)}</th></tr>")
            topic = step.topic
        parts.append(_row(step, system))
    return "".join([*parts, "</table>"])


def _row(step: WorkingStep, system: str) -> str:
    cells = (
        f"<code>{escape(step.symbol)}</code>",
        escape(step.formula),
        f"<code>{escape(step.numbers)}</code>",
        f"<b>{escape(step_value(step, system))}</b>",
        escape(step.clause),
    )
    return "<tr>" + "".join(f"<td>{cell}</td>" for cell in cells) + "</tr>"


def step_value(step: WorkingStep, system: str) -> str:
    """Write the result of a step; numbers without unit keep four significant digits."""
    if isinstance(step.value, str):
        return step.value
    if step.quantity == "plain":
        return f"{step.value:.4g}"
    return shown(step.value, step.quantity, system)
