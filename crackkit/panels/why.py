"""Why: a derivation, folded away at first, with the numbers of the member shown above."""

import math
from html import escape

import traitlets

from crackkit.derive.written import NumberedStep, readable, with_numbers, written
from crackkit.panels.member_numbers import LETTERS, OF, MemberNumbers, member_numbers
from crackkit.panels.preferences import Preferences, preferences
from crackkit.panels.reader_view import ReaderView
from crackkit.panels.surfaced import surfaced
from crackkit.panels.view import front_end
from crackkit.structures.outcome import Outcome
from crackkit.units import shown
from crackkit.words import _

SAME = 1e-6  # two numbers this near [-] are the same but for rounding


class WhyView(ReaderView):
    """The derivation on the page.

    Attributes
    ----------
    title, note : str
        Heading; and why there are no numbers, or in what the panel goes further.
    unfolded : bool
        Whether the reader has opened it; set by the page.
    letters : list
        Letter, what it stands for, its value with unit or an empty text.
    steps : list of dict
        ``sentence``, ``source``, ``latex``, ``plain``, ``numbers``, ``result``, ``shown``.
    """

    _esm = front_end("page.js", "reader.js", "why.js")
    _css = front_end("panel.css", "why.css")

    title = traitlets.Unicode().tag(sync=True)
    note = traitlets.Unicode().tag(sync=True)
    unfolded = traitlets.Bool(False).tag(sync=True)
    letters = traitlets.List().tag(sync=True)
    steps = traitlets.List().tag(sync=True)

    def still(self) -> str:
        """Give the derivation without numbers; the page typesets what stands between dollars."""
        rows = "".join(
            f"<li>{escape(s.sentence)}<br>$\\displaystyle {escape(s.latex)}$</li>"
            for s in written(self.key).steps
        )
        head = f"{_('Unfold: why?')} {self.title}"
        return f"<details><summary>{escape(head)}</summary><ol>{rows}</ol></details>"

    def in_words(self) -> str:
        """Give the derivation as plain text."""
        rows = [f"{s.sentence} {s.plain}" for s in written(self.key).steps]
        return "\n".join([self.title, *rows])

    def __init__(self, key: str, **state):
        self.key = key
        super().__init__(**state)


class Why:
    """A derivation under "Unfold: why?"; the mathematics is typeset by the page.

    Parameters
    ----------
    above : Panel or Outcome
        Whose numbers are put in; those of a panel follow it.
    derivation : str
        A key of `crackkit.derive.sentences.TITLES`, such as ``"cracked_section"``.
    choices : Preferences, optional
        Units and colours; those shared by the whole kernel if left out.
    """

    def __init__(
        self, above, derivation: str = "cracked_section", choices: Preferences | None = None
    ):
        self.above, self.key = above, derivation
        self.preferences = choices or preferences()
        self.view = WhyView(derivation, title=written(derivation).title, words=_words())
        self.view.follow(self.preferences)
        self.view.observe(self._on_change, "unfolded")
        self.preferences.observe(self._on_change, "system")
        if hasattr(above, "watch"):
            above.watch(self._on_change)

    @property
    def outcome(self) -> Outcome:
        """The member whose numbers are put in."""
        return getattr(self.above, "outcome", self.above)

    @surfaced
    def _on_change(self, _change) -> None:
        if self.view.unfolded:
            self.show()

    def show(self) -> None:
        """Put in the numbers of the member as it is now."""
        numbers = member_numbers(self.outcome, self.key)
        steps = with_numbers(written(numbers.key), numbers.given)
        with self.view.hold_sync():
            self.view.error, self.view.note = "", numbers.note
            self.view.letters = self._letters(numbers)
            self.view.steps = [self._row(step, numbers) for step in steps]

    def _letters(self, numbers: MemberNumbers) -> list[list[str]]:
        rows = []
        for letter in [one for one in LETTERS if one in OF[numbers.key]]:
            quantity, meaning = LETTERS[letter]
            value = numbers.given.get(letter)
            text = "" if value is None else self._shown(value, quantity)
            rows.append([readable(letter), meaning, text])
        return rows

    def _row(self, numbered: NumberedStep, numbers: MemberNumbers) -> dict[str, str]:
        step, value = numbered.step, numbered.value
        row = {name: getattr(step, name) for name in ("sentence", "source", "latex", "plain")}
        result = "" if value is None else self._shown(value, step.quantity)
        return row | {
            "numbers": numbered.numbers,
            "result": result,
            "shown": self._compared(value, numbers.shown.get(step.key), step.quantity),
        }

    def _compared(self, value: float | None, panel: float | None, quantity: str) -> str:
        if value is None or panel is None:
            return ""
        if math.isclose(value, panel, rel_tol=SAME):
            return "✓ " + _("as shown above")
        return _("shown above: {value}").format(value=self._shown(panel, quantity))

    def _shown(self, value: float, quantity: str) -> str:
        if quantity == "plain":
            return f"{value:.4g}"
        return shown(value, quantity, self.preferences.system)

    def _repr_mimebundle_(self, **kwargs):
        return self.view._repr_mimebundle_(**kwargs)


def _words() -> dict[str, str]:
    return {
        "why": _("Unfold: why?"),
        "letters": _("The letters"),
        "numbers": _("The letters, and the numbers of the panel above"),
        "put_in": _("numbers put in (N, mm, MPa):"),
    }
