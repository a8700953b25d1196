"""One thing that a task asks for, held against a solution."""

from dataclasses import dataclass

from crackkit.structures.fields import inputs
from crackkit.words import _

HAIR = 0.5  # mm: what nobody can lay by


@dataclass(frozen=True)
class Check:
    """One thing that must be reached.

    Attributes
    ----------
    key, name : str
        Short name inside, and for the reader.
    ok : bool
        Whether it is reached.
    measured, wanted : str
        What the solution has and what it should have, in the reader's units.
    text : str
        How far off, and what to try; or how much is to spare.
    """

    key: str
    name: str
    ok: bool
    measured: str
    wanted: str
    text: str


def givens(task, structure) -> tuple[Check, ...]:
    """Say so if something was changed that the task fixes; otherwise nothing."""
    first = {item.path: item.value for item in inputs(task.structure)}
    now = {item.path: item for item in inputs(structure)}
    gone = first.keys() - now.keys()
    changed = [i for p, i in now.items() if p not in task.free and first.get(p) != i.value]
    if not changed and not gone:
        return ()
    names = ", ".join(dict.fromkeys(item.declared.label for item in changed)) or _("the loads")
    text = _("The job fixes this. Start over to have it back: {names}.").format(names=names)
    return (Check("givens", _("As ordered"), False, _("changed"), _("as given"), text),)
