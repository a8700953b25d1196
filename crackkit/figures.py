"""The pictures in figures/: ``python -m crackkit figures`` draws them anew.

They are stored in the project, so that the front page and the lessons show them without a kernel;
a test fails when one no longer shows what the mechanics says.
"""

import argparse
from pathlib import Path

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.shapes import Picture
from crackkit.drawing.standalone import standalone
from crackkit.launch.places import PROJECT
from crackkit.learning.bar_choice import fine_slab
from crackkit.learning.cantilever import balcony
from crackkit.learning.corner import held_floor
from crackkit.learning.curling import at_corner, panel
from crackkit.learning.floor import middle_span_empty
from crackkit.learning.ground import barred_slab
from crackkit.learning.pulled import thin_hanger
from crackkit.learning.simple_beam import canteen_beam
from crackkit.sandbox.promises import gate_beam
from crackkit.words import _

FIGURES = PROJECT / "figures"
OUT = PROJECT / "out" / "figures"
THEME = "light"


def pictures() -> dict[str, Picture]:
    """Give every stored picture by the name of its file."""
    return {
        "readme": _drawn(gate_beam().structure, "US"),
        "bar_choice": _drawn(fine_slab("SI"), "SI"),
        "bar_choice_us": _drawn(fine_slab("US"), "US"),
        "cantilever": _drawn(balcony("SI"), "SI"),
        "cantilever_us": _drawn(balcony("US"), "US"),
        "continuous_spans": _drawn(middle_span_empty("SI"), "SI"),
        "continuous_spans_us": _drawn(middle_span_empty("US"), "US"),
        "curling": _drawn(at_corner(panel("SI"), "SI"), "SI"),
        "curling_us": _drawn(at_corner(panel("US"), "US"), "US"),
        "ground_slab": _drawn(barred_slab("SI"), "SI"),
        "ground_slab_us": _drawn(barred_slab("US"), "US"),
        "inside_corner": _drawn(held_floor("SI"), "SI"),
        "inside_corner_us": _drawn(held_floor("US"), "US"),
        "pulled": _drawn(thin_hanger("SI"), "SI"),
        "pulled_us": _drawn(thin_hanger("US"), "US"),
        "simple_beam": _drawn(canteen_beam("SI"), "SI"),
        "simple_beam_us": _drawn(canteen_beam("US"), "US"),
    }


def _drawn(structure, system: str) -> Picture:
    return picture_of.picture(structure.solve(), View(system, live=False))


def painted() -> dict[str, str]:
    """Give the text of every stored file by its name."""
    return {f"{name}.svg": standalone(picture, THEME) for name, picture in pictures().items()}


def write(folder: Path = FIGURES) -> list[Path]:
    """Write all pictures; give the files whose content changed.

    Parameters
    ----------
    folder : Path
        Where they go.
    """
    folder.mkdir(parents=True, exist_ok=True)
    texts = {folder / name: text for name, text in painted().items()}
    changed = [file for file, text in texts.items() if _stored(file) != text]
    for file in changed:
        file.write_text(texts[file], encoding="utf-8", newline="\n")
    return changed


def _stored(file: Path) -> str | None:
    return file.read_text(encoding="utf-8") if file.exists() else None


def write_for_print(kinds, folder: Path = OUT) -> list[Path]:
    """Write all pictures for paper, as ``"pdf"`` or ``"png"``.

    Parameters
    ----------
    kinds : sequence of str
    folder : Path
        Where they go; these files are not stored in the project.
    """
    from crackkit.drawing import print_painter

    folder.mkdir(parents=True, exist_ok=True)
    files = []
    for name, picture in pictures().items():
        for kind in kinds:
            files.append(folder / f"{name}.{kind}")
            print_painter.save(picture, files[-1], kind)
    return files


def main(arguments: list[str]) -> int:
    """Carry out ``python -m crackkit figures``."""
    parser = argparse.ArgumentParser(
        prog="python -m crackkit figures", description=_("Draw the pictures in figures/ anew.")
    )
    parser.add_argument("--pdf", action="store_true", help=_("and as PDF, in out/figures"))
    parser.add_argument("--png", action="store_true", help=_("and as PNG, in out/figures"))
    asked = parser.parse_args(arguments)
    kinds = [kind for kind in ("pdf", "png") if getattr(asked, kind)]
    files = [*write(), *write_for_print(kinds)] if kinds else write()
    for file in files:
        print(file.relative_to(PROJECT))
    if not files:
        print(_("All pictures were up to date."))
    return 0
