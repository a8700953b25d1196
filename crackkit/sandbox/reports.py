"""A page to print: inputs, picture, answers, cautions and the working."""

from dataclasses import dataclass
from html import escape
from pathlib import Path

from crackkit.drawing import sheet
from crackkit.drawing.on_page import on_page
from crackkit.drawing.standalone import alt_text, image
from crackkit.sandbox import markup
from crackkit.sandbox.answers import verdict_words
from crackkit.sandbox.care import ON_SITE
from crackkit.sandbox.drawing_page import drawing_page
from crackkit.sandbox.working import NOTE, by_topic
from crackkit.words import _

FOOT = _(
    "A teaching estimate, not a design: local codes and a licensed engineer decide. "
    "Whoever uses these numbers checks them by hand."
)
_INPUT_COLUMNS = (200.0, 420.0, 380.0)
_STEP_COLUMNS = (90.0, 320.0, 340.0, 170.0, 130.0)
_STYLE = (
    "body{font-family:Arial,'Liberation Sans',Helvetica,sans-serif;max-width:62em;margin:2em auto;"
    "padding:0 1em;color:#1f2b33;background:#fff}table{font-size:0.9em}h4{break-after:avoid}"
    "tr,img{break-inside:avoid}@media print{body{margin:0;max-width:none}}"
)


@dataclass(frozen=True)
class Report:
    """A report of one structure; in a notebook it shows itself.

    Attributes
    ----------
    title : str
        Heading of the page.
    answered : Answered
        The structure with its answers.
    """

    title: str
    answered: object

    def html(self) -> str:
        """Give the whole page as an HTML file."""
        paper = image(self.answered.picture())
        return (
            f'<!DOCTYPE html>\n<html lang="en"><head><meta charset="utf-8">'
            f"<title>{escape(self.title)}</title><style>{_STYLE}</style></head>"
            f"<body><h1>{escape(self.title)}</h1>{self._body(paper)}</body></html>\n"
        )

    def _body(self, picture: str) -> str:
        case = self.answered
        return "".join(
            (
                markup.element("h2", escape(verdict_words(case.outcome))),
                picture,
                markup.answers(case.answers),
                *(told.html() for told in case.told),
                markup.heading(_("Cautions")),
                markup.points((*case.cautions, *ON_SITE)),
                markup.heading(_("What was put in")),
                case.inputs_table(),
                *(markup.paragraph(note) for note in case.notes),
                markup.heading(_("The working, step by step")),
                case.working._repr_html_(),
                markup.paragraph(FOOT, "border-top:1px solid;padding-top:0.5em"),
            )
        )

    def sheets(self, paper: str = "a4") -> list:
        """Give the pages as pictures: drawing, answers and inputs, working.

        Parameters
        ----------
        paper : str
            ``"a4"`` or ``"letter"``.
        """
        case = self.answered
        picture = case.picture()
        blocks = [*_answer_blocks(case), *_input_blocks(case), *_working_blocks(case)]
        full = sheet.gap(sheet.WIDTH)  # takes the first page for itself
        first, *rest = sheet.sheets([full, *blocks], self.title, FOOT, paper, alt_text(picture))
        return [drawing_page(first, picture), *rest]

    def save(self, name, paper: str = "") -> tuple[Path, ...]:
        """Write the report.

        Parameters
        ----------
        name : str or Path
            Ends with ``.html`` or ``.pdf``; without an ending both are written.
        paper : str
            ``"a4"`` or ``"letter"`` for the PDF; by default what goes with the units.

        Returns
        -------
        tuple of Path
            The files written.
        """
        path = Path(name)
        endings = (".html", ".pdf") if path.suffix not in (".html", ".pdf") else (path.suffix,)
        bare = path.with_suffix("") if path.suffix in (".html", ".pdf") else path
        written = tuple(bare.with_name(bare.name + ending) for ending in endings)
        bare.parent.mkdir(parents=True, exist_ok=True)
        for file in written:
            self._write(file, paper or usual_paper(self.answered.system))
        return written

    def _write(self, file: Path, paper: str) -> None:
        if file.suffix == ".html":
            file.write_text(self.html(), encoding="utf-8")
            return
        from crackkit.drawing import print_painter

        width = sheet.PAPERS[paper][0]
        print_painter.save_pages(self.sheets(paper), file, width_mm=width)

    def _repr_mimebundle_(self, include=None, exclude=None) -> dict:
        heading = markup.element("h2", escape(self.title))
        picture = on_page(self.answered.picture(), self.answered.picture("narrow"))
        return {"text/html": heading + self._body(picture), "text/plain": repr(self)}

    def __repr__(self) -> str:
        return f"{self.title}\n{self.answered!r}"


def report(answered, title: str = "") -> Report:
    """Make a page to print.

    Parameters
    ----------
    answered : SimpleBeam, Cantilever, ContinuousBeam, TensionMember, CrackControl, ...
        The structure.
    title : str
        Heading of the page.

    Returns
    -------
    Report
        ``.save("name")`` writes ``name.html`` and ``name.pdf``.
    """
    return Report(title or answered.structure.title, answered)


def usual_paper(system: str) -> str:
    """Give the paper that goes with the units."""
    return "letter" if system == "US" else "a4"


def _answer_blocks(case) -> list:
    blocks = [sheet.heading(verdict_words(case.outcome))]
    blocks += [sheet.words(f"{k}  {q} {a}") for k, (q, a) in enumerate(case.answers, 1)]
    blocks += [block for told in case.told for block in told.blocks()]
    blocks.append(sheet.heading(_("Cautions")))
    return blocks + [sheet.words(f"• {text}") for text in (*case.cautions, *ON_SITE)]


def _input_blocks(case) -> list:
    head = (_("input"), _("what it is"), _("value"))
    rows = sheet.table_rows([head, *case.inputs], _INPUT_COLUMNS)
    notes = [sheet.words(note) for note in case.notes]
    return [sheet.heading(_("What was put in")), *rows, *notes]


def _working_blocks(case) -> list:
    blocks = [sheet.heading(_("The working, step by step")), sheet.words(NOTE)]
    for topic, rows in by_topic(case.working):
        table = sheet.table_rows([row[1:] for row in rows], _STEP_COLUMNS)
        blocks += [sheet.joined(sheet.words(topic, "label_bold"), table[0]), *table[1:]]
    return blocks
