"""How a structure is typed: its arguments, and the way between texts and the structure."""

from collections.abc import Callable
from dataclasses import dataclass, field
from fnmatch import fnmatchcase
from functools import cached_property

from crackkit.sandbox.arguments import Argument
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures.fields import InputError, inputs
from crackkit.units import explain
from crackkit.words import _


@dataclass(frozen=True)
class Form:
    """Everything about typing one kind of structure.

    Attributes
    ----------
    call : str
        What is called: ``"SimpleBeam"``.
    kind : type
        The structure.
    arguments : tuple of Argument
        All that can be typed.
    meant : dict
        Other words for some of it; a message then names the right one.
    made : callable
        From a `Reading` to the structure; raises `InputError`.
    compound : callable
        From a structure to the inner values of the arguments that set more than one input,
        by name; None for one that is not to be written.
    typed_as : dict
        Input of the structure (``*`` for each place) to the argument that sets it, where the
        declaration of the argument does not say so itself.
    follows : dict
        Argument to the one whose value it takes unless it is typed.
    suited : callable
        From (typed, system) to what is assumed where that depends on what was typed, by name.
    bare : callable
        From a structure to the layers, such as ``"top"``, in which no bars lie at all.
    rivals : tuple of str
        Arguments that say the same thing in several ways: one of them at most is typed.
    absent : callable
        From a structure to the arguments that mean nothing in it, where no input says so.
    """

    call: str
    kind: type
    arguments: tuple[Argument, ...]
    meant: dict
    made: Callable
    compound: Callable
    typed_as: dict
    follows: dict = field(default_factory=dict)
    suited: Callable = lambda typed, system: {}
    bare: Callable = lambda structure: ()
    rivals: tuple[str, ...] = ()
    absent: Callable = lambda structure: set()

    @cached_property
    def by_name(self) -> dict[str, Argument]:
        """The arguments by their names."""
        return {argument.name: argument for argument in self.arguments}

    def taken(self, typed: dict, system: str, typed_system: str) -> dict:
        """Give what is taken for each argument, typed or assumed.

        Parameters
        ----------
        typed : dict
            What was typed.
        system : str
            ``"SI"`` or ``"US"``, of the answers.
        typed_system : str
            Units of what was typed: the code family goes with them.
        """
        texts = {a.name: a.assumed[system] for a in self.arguments}
        texts |= {"code": self.by_name["code"].assumed[typed_system]}
        texts |= self.suited(typed, system) | typed
        for name, other in self.follows.items():
            texts[name] = typed.get(name, texts[other])
        return texts

    def structure(self, texts: dict, typed: dict, system: str):
        """Read all arguments and make the structure.

        Parameters
        ----------
        texts : dict
            What is taken for each argument.
        typed : dict
            What was really typed, for the messages.
        system : str
            ``"SI"`` or ``"US"``, for the messages.

        Raises
        ------
        WrongInput
            If something cannot be read or is outside its range.
        """
        self._refuse_rivals(typed)
        values = {name: self.by_name[name].read(text) for name, text in texts.items()}
        try:
            return self.made(Reading(self, values, texts, typed, system))
        except InputError as error:
            raise self._in_words(error, texts, typed, system) from None

    def _refuse_rivals(self, typed: dict) -> None:
        both = [name for name in self.rivals if name in typed]
        if len(both) > 1:
            said = _(" and ").join(f"{name}={typed[name]!r}" for name in both)
            text = _("{said}: give one of {names}, not {n}.")
            names = ", ".join(self.rivals)
            message = text.format(said=said, names=names, n=len(both))
            raise WrongInput(message, both[1], typed[both[1]])

    def left(self, typed: dict, changes: dict) -> dict:
        """Give what was typed without the rivals of what is typed now."""
        now = {name for name in self.rivals if changes.get(name) is not None}
        gone = set(self.rivals) - now if now else set()
        return {name: value for name, value in typed.items() if name not in gone}

    def _in_words(self, error: InputError, texts: dict, typed: dict, system: str) -> WrongInput:
        name = self.argument_at(error.path, typed)
        said = f"{name}={texts[name]!r}"
        if name not in typed:
            said += _(" (assumed)")
        return WrongInput(f"{said}: {explain(error, system)}", name, typed.get(name))

    def argument_at(self, path: str, typed=()) -> str:
        """Give the argument that sets an input of the structure."""
        own = {a.path: a.name for a in self.arguments if a.path}
        found = [n for pattern, n in (own | self.typed_as).items() if fnmatchcase(path, pattern)]
        return self.source(found[0] if found else path.partition(".")[0], typed)

    def source(self, name: str, typed) -> str:
        """Give the argument that an argument takes its value from: mostly itself."""
        while name in self.follows and name not in typed:
            name = self.follows[name]
        return name

    def idle(self, structure) -> set[str]:
        """Give the arguments that mean nothing in a structure as it is."""
        items = inputs(structure)
        idle = {a.name for a in self.arguments if a.path and not _applies(a.path, items)}
        return idle | self.absent(structure)

    def line(self, structure, system: str) -> str:
        """Write the call that makes a structure, in the units of a system."""
        idle = self.idle(structure) | self._how_nothing_lies(structure)
        values = {i.path: i.value for i in inputs(structure)}
        values = {a.name: values.get(a.path) for a in self.arguments} | self.compound(structure)
        written = {
            argument.name: argument.written(values[argument.name], system)
            for argument in self.arguments
            if argument.name not in idle and values[argument.name] is not None
        }
        written["system"] = system
        return f"{self.call}({', '.join(f'{name}={text!r}' for name, text in written.items())})"

    def _how_nothing_lies(self, structure) -> set[str]:
        """Where no bars lie it says nothing how they lie; their cover still shapes the cage."""
        layers = self.bare(structure)
        own = (a for a in self.arguments if a.path.partition(".")[0] in layers)
        return {a.name for a in own if not a.path.endswith(".cover")}


def _applies(path: str, items) -> bool:
    own = [item for item in items if fnmatchcase(item.path, path)]
    return any(item.applies for item in own)


@dataclass(frozen=True)
class Reading:
    """What was read: the inner values by argument, with what the messages need."""

    form: Form
    values: dict
    texts: dict
    typed: dict
    system: str

    def __getitem__(self, name: str):
        return self.values[name]

    def wrong(self, name: str, reason: str) -> WrongInput:
        """Give the error for one argument."""
        source = self.form.source(name, self.typed)
        return self.form.by_name[source].wrong(self.texts[source], reason)

    def at_each(self, name: str, places: int) -> tuple:
        """Give the value of an argument for each of so many places [-].

        Raises
        ------
        WrongInput
            If it holds neither one for every place nor one for each.
        """
        value = self.values[name]
        if len(value) == 1:
            return value * places
        if len(value) != places:
            reason = _("give one for every place or {n}, one for each, not {m}")
            raise self.wrong(name, reason.format(n=places, m=len(value)))
        return value

    @property
    def plain(self) -> dict:
        """The inputs that one argument sets, as nested dictionaries."""
        found = {}
        for argument in self.form.arguments:
            if argument.path and "*" not in argument.path:
                *parts, last = argument.path.split(".")
                inner = found
                for part in parts:
                    inner = inner.setdefault(part, {})
                inner[last] = self.values[argument.name]
        return found

    @property
    def unlaid(self) -> str:
        """Size to name where no bars lie; it changes nothing."""
        return {"US": "#4", "SI": "12"}[self.system]
