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
        super().__init__()
        self._stamp = None
        self.look_again()
        self.observe(self._remember, names=["system", "theme"])

    def look_again(self) -> None:
        """Take what was chosen on another page meanwhile; nothing is read if nothing was written.

        The start page and each lesson have kernels of their own: the record is what they share.
        """
        store = progress()
        stamp = store.stamp()
        if stamp == self._stamp:
            return
        self._stamp = stamp
        self.system = _known(store.setting("units"), SYSTEMS, self.system)
        self.theme = _known(store.setting("theme"), THEMES, self.theme)

    @property
    def shown_theme(self) -> str:
        """Theme that pictures are painted in."""
        return self.seen if self.theme == "auto" else self.theme

    def _remember(self, change) -> None:
        name = "units" if change.name == "system" else "theme"
        store = progress()
        if store.setting(name) != change.new:  # else it is taken from there
            store.set_setting(name, change.new)


def _known(value, allowed, default):
    return value if value in allowed else default


_shared: list[Preferences] = []


def preferences() -> Preferences:
    """Give the preferences that all panels of this kernel share."""
    if not _shared:
        _shared.append(Preferences())
    return _shared[0]
