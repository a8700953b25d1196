"""A structure made of what was typed."""

from typing import ClassVar

from crackkit.sandbox.answered import Answered
from crackkit.sandbox.courses import argument_named
from crackkit.sandbox.forms import Form
from crackkit.sandbox.shapes import area_notes
from crackkit.sandbox.systems import system_of
from crackkit.sandbox.wrong_input import WrongInput, unknown_argument
from crackkit.units import SI, SYSTEMS
from crackkit.words import _


class Typed(Answered):
    """What the structures of the sandbox have in common: their arguments become a structure.

    Raises
    ------
    WrongInput
        If something cannot be read or used; names the argument, what was typed and what may be.
    """

    form: ClassVar[Form]

    def __init__(self, given: dict):
        form, asked = self.form, given["system"]
        for name, value in given["unknown"].items():
            raise unknown_argument(name, value, [*form.by_name, "system"], form.meant)
        typed = {name: given[name] for name in form.by_name if given[name] is not None}
        written = system_of(typed_texts(typed))
        system = _system(asked, written)
        texts = form.taken(typed, system, written or system)
        super().__init__(form.structure(texts, typed, system), system, texts, typed)

    @property
    def _arguments(self) -> tuple:
        idle = self.idle - set(self.typed)
        return tuple(a for a in self.form.arguments if a.name not in idle)

    @property
    def _meant(self) -> dict:
        return self.form.meant

    @property
    def idle(self) -> set[str]:
        """The arguments that mean nothing with the other inputs."""
        return self.form.idle(self.structure)

    def argument(self, name: str):
        """Give the declaration of an argument; raises `WrongInput` if there is none."""
        return argument_named(name, self.form.arguments, self.form.meant)

    @property
    def notes(self) -> list[str]:
        """What was done with some of what was typed."""
        unused = [name for name in self.idle if name in self.typed]
        text = _("{name}={typed!r} is not used: it means nothing with the other inputs.")
        said = [text.format(name=name, typed=self.typed[name]) for name in sorted(unused)]
        return [*area_notes(self), *said]

    def but(self, **changes):
        """Give the same structure with some arguments typed anew, for instance ``cover="3 in"``.

        The units of the answers and the code stay those of this one.
        """
        kept = {"system": self.system, "code": self.structure.code}
        return type(self)(**(kept | self.form.left(self.typed, changes) | changes))


def _system(asked: str | None, written: str | None) -> str:
    if asked is None:
        return written or SI
    if str(asked).upper() not in SYSTEMS:
        raise WrongInput(
            _("system={asked!r} is not one of US, SI.").format(asked=asked), "system", asked
        )
    return str(asked).upper()


def typed_texts(typed: dict) -> list:
    """Give all texts that were typed, those in lists one by one."""
    values = [v if isinstance(v, (list, tuple)) else [v] for v in typed.values()]
    return [text for texts in values for text in texts]
