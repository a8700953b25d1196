"""A derivation below a panel, unfolded so that its numbers are worked out."""

from crackkit.panels.preferences import Preferences
from crackkit.panels.why import Why


def unfolded(structure, system: str = "SI", *, key: str) -> Why:
    """Unfold the derivation of that key for a structure."""
    choices = Preferences()
    choices.system = system
    why = Why(structure.solve(), key, choices)
    why.view.unfolded = True
    return why
