"""``python -m crackkit report``: what a class has done, to read or to open in a sheet."""

import argparse
import csv
import sys
from dataclasses import astuple, fields
from pathlib import Path

from crackkit.learning.classroom import ClassRow, class_report
from crackkit.words import _


def main(arguments: list[str]) -> int:
    """Carry out ``python -m crackkit report``."""
    parser = argparse.ArgumentParser(
        prog="python -m crackkit report",
        description=_("Sum up the progress files that learners have handed in; only reads them."),
    )
    parser.add_argument(
        "folder", type=Path, help=_("holds anna.json, omar.json ... or anna/progress.json ...")
    )
    parser.add_argument("--csv", action="store_true", help=_("as comma-separated values"))
    asked = parser.parse_args(arguments)
    if not asked.folder.is_dir():
        parser.error(_("there is no folder {folder}").format(folder=asked.folder))
    rows = class_report(asked.folder)
    if asked.csv:
        write_csv(rows, sys.stdout)
    else:
        print(table(rows) if rows else _("There are no progress files in this folder."))
    return 0


def table(rows: tuple[ClassRow, ...]) -> str:
    """Lay the rows out in columns, one line for each learner and lesson."""
    heads = (_("learner"), _("lesson"), _("right"), _("finished"), _("last at work"))
    lines = [heads, *(_cells(row) for row in rows)]
    widths = [max(len(line[column]) for line in lines) for column in range(len(heads))]
    return "\n".join(
        "  ".join(cell.ljust(width) for cell, width in zip(line, widths, strict=True)).rstrip()
        for line in lines
    )


def write_csv(rows: tuple[ClassRow, ...], file) -> None:
    """Write the rows with the names of their fields as heads."""
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(field.name for field in fields(ClassRow))
    writer.writerows(astuple(row) for row in rows)


def _cells(row: ClassRow) -> tuple[str, ...]:
    if row.trouble or not row.lesson:
        return (row.learner, row.trouble or _("nothing yet"), "", "", "")
    right = _("{right} of {attempts}").format(right=row.right, attempts=row.attempts)
    return (row.learner, row.lesson, right, _("yes") if row.done else "", (row.last or "")[:10])
