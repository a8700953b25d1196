"""The page's side of a panel: one widget that shows the picture and the controls.

Everything a step changes travels in one message; sliders and handles report through `changes`,
which the browser merges while the kernel is busy, so that the last value is never lost.
"""

import base64
import os
from importlib import resources

# The page already knows what it sent; echoes would double the messages of a drag. Set before
# ipywidgets is loaded.
os.environ.setdefault("JUPYTER_WIDGETS_ECHO", "0")

import anywidget  # noqa: E402
import traitlets  # noqa: E402

from crackkit.panels.preferences import preferences  # noqa: E402


def front_end(*names: str) -> str:
    """Join files of the page's side into one module."""
    folder = resources.files("crackkit.panels") / "front"
    return "\n".join((folder / name).read_text(encoding="utf-8") for name in names)


class PageWidget(anywidget.AnyWidget):
    """A widget that notices when its page comes back into view.

    Units and colours may have been chosen on another page meanwhile, whose kernel is another one.

    Attributes
    ----------
    looks : int
        How often the page came back, counted by the browser.
    """

    looks = traitlets.Int(0).tag(sync=True)

    @traitlets.observe("looks")
    def _look_again(self, _change) -> None:
        preferences().look_again()


class PictureWidget(PageWidget):
    """A widget that leaves a still picture behind where no kernel runs.

    Attributes
    ----------
    svg : str
        The picture.
    alt : str
        What it shows, in words.
    """

    svg = traitlets.Unicode().tag(sync=True)
    alt = traitlets.Unicode().tag(sync=True)

    def still(self) -> str:
        """Give the picture as an image element for pages without a kernel."""
        data = base64.b64encode(self.still_svg().encode()).decode("ascii")
        alt = self.alt.replace("&", "&amp;").replace('"', "&quot;").replace("<", "&lt;")
        return (
            f'<img alt="{alt}" style="width:100%;max-width:1000px" '
            f'src="data:image/svg+xml;base64,{data}">'
        )

    def still_svg(self) -> str:
        """Give the picture for `still`; a panel paints it afresh in the light theme."""
        return self.svg

    def _repr_mimebundle_(self, **kwargs):
        bundle = super()._repr_mimebundle_(**kwargs)
        data = bundle[0] if isinstance(bundle, tuple) else bundle
        data = {**(data or {}), "text/html": self.still(), "text/plain": self.alt}
        return (data, bundle[1]) if isinstance(bundle, tuple) else data


class PanelView(PictureWidget):
    """Picture, controls, messages and cautions of one panel.

    Attributes
    ----------
    topics : list
        Controls, topic by topic: see `control_rows.topics`.
    values, bounds : dict
        Value and text, low high and step, of each control.
    buttons : list
        Extra buttons: name and label.
    error : str
        What is wrong with the last input; empty when nothing is.
    note : str
        What moved along with the last input.
    cautions : list
        Text and whether it is grave.
    open_places : dict
        Places of a floor that no bar guards: see `open_places.told`.
    more : str
        HTML that is unfolded below, such as the working; empty when folded.
    theme, units : str
        Theme and units as chosen.
    seen : str
        Theme of the page, reported by the browser.
    room : int
        Width for the picture [px], reported by the browser.
    changes : dict
        Reported by the browser: ``{"n": number, "set": {path: value}, "drag": {path: value}}``.
    done : int
        Number of the last changes that the picture shows.
    unfinished : bool
        Whether a part of the picture is as it was before: the page asks for the whole one as soon
        as nothing else is to be answered.
    refused : int
        Counts refused inputs, so that controls show the value that stands.
    walk : dict
        The step of a guided walk; without text there is none.
    words : dict
        Labels of the panel's own buttons.
    """

    _esm = front_end("page.js", "renewed.js", "picture.js", "controls.js", "walk.js", "panel.js")
    _css = front_end("panel.css")

    topics = traitlets.List().tag(sync=True)
    values = traitlets.Dict().tag(sync=True)
    bounds = traitlets.Dict().tag(sync=True)
    buttons = traitlets.List().tag(sync=True)
    error = traitlets.Unicode().tag(sync=True)
    note = traitlets.Unicode().tag(sync=True)
    cautions = traitlets.List().tag(sync=True)
    open_places = traitlets.Dict().tag(sync=True)
    more = traitlets.Unicode().tag(sync=True)
    theme = traitlets.Unicode("auto").tag(sync=True)
    shown_theme = traitlets.Unicode("light").tag(sync=True)
    units = traitlets.Unicode("SI").tag(sync=True)
    seen = traitlets.Unicode("").tag(sync=True)
    room = traitlets.Int(0).tag(sync=True)
    changes = traitlets.Dict().tag(sync=True)
    done = traitlets.Int(0).tag(sync=True)
    unfinished = traitlets.Bool(False).tag(sync=True)
    refused = traitlets.Int(0).tag(sync=True)
    walk = traitlets.Dict().tag(sync=True)
    words = traitlets.Dict().tag(sync=True)
