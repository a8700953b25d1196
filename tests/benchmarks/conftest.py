"""Benchmarks borrow the real page of the browser tests and serve it small notebooks."""

from pathlib import Path

import nbformat
import pytest

from tests.browser.conftest import (  # noqa: F401
    browser_window,
    chromium_path,
    home,
    lesson_page,
    server,
)

NOTEBOOKS = {
    "ours": """# the panel of this workbook
from crackkit.learning.simple_beam import canteen_beam
from crackkit.panels.panel import Panel

Panel(canteen_beam())""",
    "arm": """# the panel of a cantilever
from crackkit.learning.cantilever import balcony
from crackkit.panels.panel import Panel

Panel(balcony())""",
    "floor": """# the panel of a floor over six spans, with a load that travels
from crackkit.panels.panel import Panel
from tests.benchmarks.floors import six_spans

Panel(six_spans())""",
    "tie": """# the panel of a pulled member with some 15 cracks
from crackkit.panels.panel import Panel
from tests.benchmarks.ties import long_tie

Panel(long_tie())""",
    "choice": """# the panel of a strip whose bars are chosen, with the chart of the others
from crackkit.panels.panel import Panel
from crackkit.structures.crack_control import CrackControl

Panel(CrackControl(spacing=60.0))""",
    "ground": """# the panel of a slab on the ground with many cracks, a year old
from crackkit.panels.panel import Panel
from crackkit.structures.ground_slab import GroundSlab

Panel(GroundSlab(left=0.9, right=0.9, steel="12", spacing=100.0))""",
    "curled": """# the panel of a slab that curls, with a wheel that can be dragged all over it
from crackkit.panels.panel import Panel
from crackkit.structures.curled_slab import CurledSlab

Panel(CurledSlab())""",
    "corner": """# the panel of a slab with an inside corner, diagonal bars across its crack
from crackkit.panels.panel import Panel
from crackkit.structures.corner_slab import CornerSlab

Panel(CornerSlab(diagonals="16", diagonal_count=3))""",
    "corner mat": """# the same with a mat besides
from crackkit.panels.panel import Panel
from crackkit.structures.corner_slab import CornerSlab

Panel(CornerSlab(diagonals="16", diagonal_count=3, mat="10"))""",
    "plain": """# the usual way with a plain figure: a gauge of the machine, not of the workbook
import ipywidgets
from IPython import get_ipython
from IPython.display import display
from matplotlib.figure import Figure

get_ipython().run_line_magic("matplotlib", "inline")


def draw(force):
    figure = Figure((10, 5.6), dpi=100)
    for axes in figure.subplots(3):
        axes.plot(range(100), [force * k * (99 - k) for k in range(100)])
        axes.set_xlabel("m")
        for k in range(18):
            axes.plot([k, k + 1], [0, force])
    display(figure)


ipywidgets.interact(draw, force=ipywidgets.FloatSlider(30, min=0, max=300, step=1))""",
    "usual": """# the usual way: interact, and matplotlib drawing the same picture
import ipywidgets
from IPython import get_ipython
from IPython.display import display

from crackkit.drawing.beam_picture import picture as beam_picture
from crackkit.drawing.print_painter import figure
from crackkit.learning.simple_beam import canteen_beam
from crackkit.structures.fields import with_value

get_ipython().run_line_magic("matplotlib", "inline")


def draw(force):
    outcome = with_value(canteen_beam(), "loads.0.force", force * 1e3).solve()
    display(figure(beam_picture(outcome), width_mm=220))


ipywidgets.interact(draw, force=ipywidgets.FloatSlider(30, min=0, max=300, step=1))""",
}


@pytest.fixture(scope="session")
def workbook_folder(tmp_path_factory) -> Path:
    """Serve a folder with one notebook for each way of bringing a picture to the page."""
    folder = tmp_path_factory.mktemp("ways")
    for name, source in NOTEBOOKS.items():
        notebook = nbformat.v4.new_notebook(cells=[nbformat.v4.new_code_cell(source)])
        notebook.metadata["crackkit"] = {"autostart": True}
        notebook.metadata["kernelspec"] = {"name": "python3", "display_name": "Python 3"}
        nbformat.write(notebook, folder / f"{name}.ipynb")
    return folder
