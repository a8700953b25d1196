"""What a reader has chosen once for all panels: units and theme, remembered between visits."""

import traitlets

from crackkit.learning.progress import progress
from crackkit.units import SI, SYSTEMS

THEMES = ("auto", "light", "dark", "projector")


class Preferences(traitlets.HasTraits):
    """Units and theme; panels observe it and change together.

    Attributes
    ----------
    system : str
        ``"SI"`` or ``"US"``.
    theme : str
        ``"auto"`` follows the page; or ``"light"``, ``"dark"``, ``"projector"``.
    seen : str
        Theme of the page as the browser last reported it, ``"light"`` or ``"dark"``.
    """

    system = traitlets.Enum(SYSTEMS, SI)
    theme = traitlets.Enum(THEMES, "auto")
    seen = traitlets.Enum(("light", "dark"), "light")

    def __init__(self):
        store = progress()
        super().__init__(
            system=_known(store.setting("units", SI), SYSTEMS, SI),
            theme=_known(store.setting("theme", "auto"), THEMES, "auto"),
        )
        self.observe(self._remember, names=["system", "theme"])

    @property
    def shown_theme(self) -> str:
        """Theme that pictures are painted in."""
        return self.seen if self.theme == "auto" else self.theme

    def _remember(self, change) -> None:
        name = "units" if change.name == "system" else "theme"
        progress().set_setting(name, change.new)


def _known(value, allowed, default):
    return value if value in allowed else default


_shared: list[Preferences] = []


def preferences() -> Preferences:
    """Give the preferences that all panels of this kernel share."""
    if not _shared:
        _shared.append(Preferences())
    return _shared[0]
