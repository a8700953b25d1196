"""Check of what a solution costs."""

from crackkit.learning.check import Check
from crackkit.learning.price_words import shown_money
from crackkit.words import _


def money(task, structure, _outcome, _system: str, advice: dict | None = None) -> Check:
    """Check what it costs against the budget; `advice` tells how to save, by the key of an item."""
    spent, most = task.budget.spent(structure), task.budget.most(structure)
    ok, off = spent <= most, shown_money(abs(spent - most))
    text = (
        _("{off} to spare.")
        if ok
        else f"{_('{off} too dear.')} {_cheaper(task, structure, advice or _ADVICE)}"
    )
    wanted = _("{m} or less").format(m=shown_money(most))
    return Check("money", _("Costs"), ok, shown_money(spent), wanted, text.format(off=off))


def _cheaper(task, structure, told: dict) -> str:
    item = task.budget.dearest(structure)
    advice = told.get(item.key, _("Take less of it, or something cheaper."))
    said = _("“{item}” alone comes to {sum}.").format(item=item.label, sum=shown_money(item.sum))
    return f"{said} {advice}"


_BASE = _("A dear base makes no crack finer.")
_SHEETS = _("Sheets help where the ground alone holds it, not where walls do.")
_ADVICE = {
    "bars": _(
        "Thinner bars closer by keep cracks as fine with less steel; a floor that nothing holds "
        "needs none."
    ),
    "saw": _("Fewer joints do, as far as the rule of thumb goes; with bars that hold, none."),
    "moist": _("Some days less are cheaper, but it shrinks earlier and more."),
    "even": _SHEETS,
    "sheet": _SHEETS,
    "stabilised": _BASE,
    "surface_treatment": _BASE,
    "sandstone": _BASE,
}
