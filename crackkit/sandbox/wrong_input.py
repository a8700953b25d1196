"""One kind of error for whatever is wrong with what was typed."""

import difflib

from crackkit.words import _


class WrongInput(ValueError):
    """Something typed that cannot be used; the message says what would be.

    Attributes
    ----------
    argument : str
        Name of the argument.
    typed : object
        What was typed.
    """

    def __init__(self, message: str, argument: str = "", typed=None):
        super().__init__(message)
        self.argument, self.typed = argument, typed

    def _render_traceback_(self) -> list[str]:
        # a notebook shows these lines instead of a page of calls inside this package
        return [f"WrongInput: {self}"]


def nearest(name: str, known) -> list[str]:
    """Give the known names that a misspelled one may stand for, the likeliest first."""
    return difflib.get_close_matches(name.lower(), list(known), n=3, cutoff=0.55)


def unknown_argument(name: str, typed, known, meant: dict) -> WrongInput:
    """Give the error for an argument that does not exist, with the names that come near.

    Parameters
    ----------
    name : str
        What was typed.
    typed : object
        The value given to it.
    known : sequence of str
        All arguments there are.
    meant : dict
        Other words for them, such as ``length`` for ``span``.
    """
    alike = nearest(name, [*known, *meant])
    near = [meant[name.lower()]] if name.lower() in meant else [meant.get(n, n) for n in alike]
    near = list(dict.fromkeys(near))
    if near:
        hint = _("Did you mean {names}?").format(names=_(" or ").join(near))
    else:
        hint = _("Known: {names}.").format(names=", ".join(known))
    return WrongInput(_("There is no input {name!r}. {hint}").format(name=name, hint=hint), name)
