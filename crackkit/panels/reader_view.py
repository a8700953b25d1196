"""The page's side of a widget that only follows units and colours: start page, derivations."""

import traitlets

from crackkit.panels.preferences import Preferences
from crackkit.panels.view import PageWidget


class ReaderView(PageWidget):
    """Traits that every such widget has.

    Attributes
    ----------
    units, theme : str
        As the reader chose.
    shown_theme : str
        Theme painted, ``"light"``, ``"dark"`` or ``"projector"``.
    seen : str
        Theme of the page, reported by the browser.
    error : str
        What went wrong; empty when nothing did.
    words : dict
        Labels.
    """

    units = traitlets.Unicode("SI").tag(sync=True)
    theme = traitlets.Unicode("auto").tag(sync=True)
    shown_theme = traitlets.Unicode("light").tag(sync=True)
    seen = traitlets.Unicode("").tag(sync=True)
    error = traitlets.Unicode().tag(sync=True)
    words = traitlets.Dict().tag(sync=True)

    def still(self) -> str:
        """Give the content as HTML for pages without a kernel."""
        return ""

    def in_words(self) -> str:
        """Give the content as plain text."""
        return ""

    def follow(self, choices: Preferences) -> None:
        """Take units and colours from the preferences, now and whenever they change."""

        def take(_change=None):
            with self.hold_sync():
                self.units, self.theme = choices.system, choices.theme
                self.shown_theme = choices.shown_theme

        def tell(change):
            if change.new:
                choices.seen = change.new

        choices.observe(take, ["system", "theme", "seen"])
        self.observe(tell, "seen")
        take()

    def _repr_mimebundle_(self, **kwargs):
        bundle = super()._repr_mimebundle_(**kwargs)
        data = bundle[0] if isinstance(bundle, tuple) else bundle
        data = {**(data or {}), "text/html": self.still(), "text/plain": self.in_words()}
        return (data, bundle[1]) if isinstance(bundle, tuple) else data
