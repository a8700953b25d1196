"""What can be typed of every structure of reinforced concrete: materials, use, rules."""

from crackkit.sandbox.arguments import Argument, amount, switch, word
from crackkit.structures.materials import CODES, DURATIONS, EXPOSURES
from crackkit.words import _


def materials() -> tuple[Argument, ...]:
    """Declare the strengths of concrete and steel."""
    return (
        amount(
            "concrete",
            _("concrete strength"),
            "strength",
            "4000 psi",
            "30 MPa",
            _("Cylinder strength."),
            "strength",
        ),
        amount("steel", _("steel yields at"), "stress", "60 ksi", "500 MPa", "", "yield_strength"),
    )


def own_weight() -> Argument:
    """Declare whether the weight of the concrete counts."""
    help = _("Count the weight of the concrete itself.")
    return switch("own_weight", _("own weight"), True, help, "self_weight")


def rules(exposure: str) -> tuple[Argument, ...]:
    """Declare use, duration of the load and family of rules.

    Parameters
    ----------
    exposure : str
        Use that is assumed.
    """
    return (
        word("exposure", _("place and use"), EXPOSURES, exposure, exposure),
        word("duration", _("the load stays"), DURATIONS, "short", "short"),
        word("code", _("rules of"), CODES, "ACI", "EN"),
    )


def shared_words(arguments) -> dict[str, str]:
    """Give other words people use for those of the arguments that many structures have."""
    names = {argument.name for argument in arguments} | {"system"}
    return {word: name for word, name in MEANT.items() if name in names}


# Other words people use; the message then names the right one.
MEANT = {
    "b": "width",
    "h": "depth",
    "height": "depth",
    "thickness": "depth",
    "self_weight": "own_weight",
    "stirrup": "stirrups",
    "ties": "stirrups",
    "links": "stirrups",
    "strength": "concrete",
    "fc": "concrete",
    "f_c": "concrete",
    "fy": "steel",
    "f_y": "steel",
    "yield_strength": "steel",
    "units": "system",
    "use": "exposure",
}
