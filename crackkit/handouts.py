"""Worksheets for a class: ``python -m crackkit handouts`` prints one for each lesson to a PDF.

Page one is blank: the class draws its prediction. Page two shows what mechanics says.
"""

import argparse
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from crackkit.drawing import picture_of, sheet
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.standalone import alt_text
from crackkit.launch.places import PROJECT
from crackkit.learning import (
    bar_choice,
    cantilever,
    corner,
    curling,
    floor,
    ground,
    pulled,
    simple_beam,
)
from crackkit.sandbox.drawing_page import drawing_page
from crackkit.units import SYSTEMS
from crackkit.words import _

OUT = PROJECT / "out" / "handouts"
USUAL_PAPER = {"US": "letter", "SI": "a4"}
FOOT = _(
    "A teaching estimate, not a design: local codes and a licensed engineer decide. On site: cap "
    "bar ends, leave the props, cut wet against silica dust, keep wet cement off skin and eyes."
)


@dataclass(frozen=True)
class Worksheet:
    """What goes onto the two pages of a lesson.

    Attributes
    ----------
    name, title : str
        Name of the file, and what stands on top of the pages.
    structure : callable
        Gives the structure for a system of units.
    blank, answer : callable
        Give the picture to draw on, of a structure and a view, and the one that answers, of an
        outcome and a view.
    """

    name: str
    title: str
    structure: Callable
    blank: Callable = picture_of.sheet
    answer: Callable = picture_of.picture


def _bars_at_the_corner(_outcome, view: View) -> Picture:
    """The answer to a bare inside corner shows the bars that hold it."""
    return picture_of.picture(corner.held_floor(view.system).solve(), view)


WORKSHEETS = (
    Worksheet(pulled.LESSON, _("A hanger of a market hall"), pulled.thin_hanger),
    Worksheet(
        simple_beam.LESSON,
        _("The beam over the serving hatch of a school canteen"),
        simple_beam.canteen_beam,
    ),
    Worksheet(
        f"{simple_beam.LESSON}_with_ends",
        _("The same beam with ends that reach past their supports"),
        simple_beam.canteen_beam_with_ends,
    ),
    Worksheet(cantilever.LESSON, _("A strip of the balcony of a rowing club"), cantilever.balcony),
    Worksheet(
        f"{cantilever.LESSON}_on_floor",
        _("The same balcony as the end of a floor"),
        cantilever.balcony_on_floor,
    ),
    Worksheet(floor.LESSON, _("A strip of a paper store over three spans"), floor.paper_store),
    Worksheet(
        f"{floor.LESSON}_one_loaded",
        _("The same floor with one span loaded"),
        floor.one_span_loaded,
    ),
    Worksheet(bar_choice.LESSON, _("The deck over the store of a boat ramp"), bar_choice.fine_slab),
    Worksheet(ground.LESSON, _("The floor of a boat store between two walls"), ground.barred_slab),
    Worksheet(
        curling.LESSON,
        _("A panel of a canteen floor, the wheel in its corner"),
        curling.broken_panel,
    ),
    Worksheet(
        corner.LESSON,
        _("The L-shaped floor of a bakery, tied all round"),
        corner.floor,
        answer=_bars_at_the_corner,
    ),
)


def pages(worksheet: Worksheet, system: str, paper: str) -> list[Picture]:
    """Give the two pages of a worksheet.

    Parameters
    ----------
    worksheet : Worksheet
    system : str
        ``"SI"`` or ``"US"``.
    paper : str
        ``"a4"`` or ``"letter"``.
    """
    structure, view = worksheet.structure(system), View(system, live=False)
    answer = worksheet.answer(structure.solve(), view)
    full = sheet.gap(sheet.WIDTH)  # takes the second page for itself
    blocks = [sheet.drawing(worksheet.blank(structure, view)), full]
    first, second = sheet.sheets(blocks, worksheet.title, FOOT, paper, alt_text(answer))
    return [first, drawing_page(second, answer)]


def write(system: str, paper: str, folder: Path = OUT) -> list[Path]:
    """Write a PDF for each worksheet; give the files.

    Parameters
    ----------
    system : str
        ``"SI"`` or ``"US"``.
    paper : str
        ``"a4"`` or ``"letter"``.
    folder : Path
        Where they go.
    """
    from crackkit.drawing import print_painter

    folder.mkdir(parents=True, exist_ok=True)
    files = []
    for worksheet in WORKSHEETS:
        files.append(folder / f"{worksheet.name}_{system.lower()}.pdf")
        two = pages(worksheet, system, paper)
        print_painter.save_pages(two, files[-1], width_mm=sheet.PAPERS[paper][0])
    return files


def main(arguments: list[str]) -> int:
    """Carry out ``python -m crackkit handouts``."""
    parser = argparse.ArgumentParser(
        prog="python -m crackkit handouts", description=_("Print worksheets for a class.")
    )
    parser.add_argument(
        "--units", type=str.upper, choices=SYSTEMS, help=_("US or SI (default: both)")
    )
    parser.add_argument(
        "--paper",
        choices=tuple(sheet.PAPERS),
        help=_("size of the paper (default: letter with US units, a4 with SI)"),
    )
    asked = parser.parse_args(arguments)
    for system in [asked.units] if asked.units else SYSTEMS:
        for file in write(system, asked.paper or USUAL_PAPER[system]):
            print(file.relative_to(PROJECT))
    return 0
