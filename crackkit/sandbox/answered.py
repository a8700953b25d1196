"""A structure with its answers, as it shows itself in a notebook."""

from functools import cached_property
from pathlib import Path
from types import MappingProxyType

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.on_page import on_page
from crackkit.sandbox import markup
from crackkit.sandbox.answers import answers, verdict_words
from crackkit.sandbox.care import ON_SITE, caution_lines
from crackkit.sandbox.courses import argument_named
from crackkit.sandbox.shown_picture import ShownPicture, still
from crackkit.sandbox.told import Told
from crackkit.sandbox.working import Working, working
from crackkit.words import _


class Answered:
    """A solved structure: picture, four answers, verdict, cautions and working.

    Attributes
    ----------
    structure : object
        The structure with all inputs in N, mm, MPa.
    system : str
        ``"US"`` or ``"SI"``: the units of the answers.
    texts, typed : dict
        What is taken for each argument, and what of it was typed.
    """

    _tells = ()  # what is told of an outcome beyond the four answers
    _arguments = ()  # all that can be typed
    _meant = MappingProxyType({})  # other words for some of it

    def __init__(self, structure, system: str, texts: dict, typed: dict):
        self.structure, self.system = structure, system
        self.texts, self.typed = texts, typed

    @cached_property
    def outcome(self):
        """What mechanics says of the structure: see `crackkit.structures.outcome`."""
        return self.structure.solve()

    @property
    def working(self) -> Working:
        """The steps from the loads to the crack width, for checking by hand."""
        return working(self.outcome, self.system)

    @property
    def answers(self) -> tuple[tuple[str, str], ...]:
        """The four questions with their answers."""
        return answers(self.outcome, self.system)

    @property
    def told(self) -> list[Told]:
        """What is told beyond the four answers, such as the worst arrangement of the loads."""
        told = (tell(self.outcome, self.system) for tell in self._tells)
        return [one for one in told if one is not None]

    @property
    def notes(self) -> list[str]:
        """What was done with some of what was typed."""
        return []

    @property
    def cautions(self) -> list[str]:
        """What must be known before anybody trusts the answers; grave ones first."""
        return caution_lines(self.outcome)

    @property
    def inputs(self) -> list[tuple[str, str, str]]:
        """Name, meaning and value of each input; what was not typed is marked."""
        return [(a.name, a.label, self._marked(a.name)) for a in self._arguments]

    def argument(self, name: str):
        """Give the declaration of an argument; raises `WrongInput` if there is none."""
        return argument_named(name, self._arguments, self._meant)

    def said(self, name: str) -> str:
        """Give what is taken for an argument, as a text."""
        value = self.texts[name]
        if isinstance(value, bool):
            return _("yes") if value else _("no")
        return ", ".join(map(str, value)) if isinstance(value, (list, tuple)) else str(value)

    def _marked(self, name: str) -> str:
        said = self.said(name)
        return said if name in self.typed else _("{v} (assumed)").format(v=said)

    def picture(self, layout: str = "wide") -> ShownPicture:
        """Give the drawing, a list of shapes; in a notebook it shows itself.

        Parameters
        ----------
        layout : str
            ``"wide"`` or ``"narrow"``.
        """
        view = View(self.system, layout, live=False)
        return still(picture_of.picture(self.outcome, view))

    def figure(self, theme: str = "print", width_mm: float = 180.0):
        """Give the drawing as a matplotlib figure, to set into a document or to draw on.

        Parameters
        ----------
        theme : str
            ``"print"`` (black and white), ``"light"``, ``"dark"`` or ``"projector"``.
        width_mm : float
            Width on paper, above 0 [mm].
        """
        from crackkit.drawing import print_painter

        return print_painter.figure(self.picture(), theme, width_mm)

    def save(self, name, theme: str = "print") -> Path:
        """Write the drawing to a file whose name ends with .pdf, .png or .svg.

        Parameters
        ----------
        name : str or Path
            Where it goes.
        theme : str
            As for `figure`.
        """
        from crackkit.drawing import print_painter

        print_painter.save(self.picture(), name, theme=theme)
        return Path(name)

    def __repr__(self) -> str:
        lines = [verdict_words(self.outcome)]
        lines += [f"{k}. {question} {a}" for k, (question, a) in enumerate(self.answers, 1)]
        lines += [line for told in self.told for line in told.lines()]
        return "\n".join([*lines, *self.cautions, *self.notes])

    def _repr_mimebundle_(self, include=None, exclude=None) -> dict:
        return {"text/html": self.html(), "text/plain": repr(self)}

    def html(self) -> str:
        """Give what a notebook shows, as HTML."""
        return "".join(
            (
                markup.element("h3", markup.escape(verdict_words(self.outcome)), "margin:0.2em 0"),
                on_page(self.picture(), self.picture("narrow")),
                markup.answers(self.answers),
                *(told.html() for told in self.told),
                markup.points(self.cautions),
                *(markup.paragraph(note) for note in self.notes),
                markup.folded(_("On site"), markup.points(ON_SITE)),
                markup.folded(_("What was put in"), self.inputs_table()),
                markup.folded(_("The working, step by step"), self.working._repr_html_()),
            )
        )

    def inputs_table(self) -> str:
        """Give the list of inputs as an HTML table."""
        return markup.table((_("input"), _("what it is"), _("value")), self.inputs)
