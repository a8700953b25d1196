"""A structure as the one line that makes it again in the sandbox."""

from dataclasses import is_dataclass

from crackkit.sandbox import (
    beam_inputs,
    cantilever_inputs,
    control_inputs,
    corner_inputs,
    curled_inputs,
    floor_inputs,
    ground_inputs,
    tie_inputs,
)

_INPUTS = (
    beam_inputs,
    cantilever_inputs,
    floor_inputs,
    tie_inputs,
    control_inputs,
    ground_inputs,
    curled_inputs,
    corner_inputs,
)
FORMS = {inputs.FORM.kind: inputs.FORM for inputs in _INPUTS}


def code_line(structure, system: str) -> str:
    """Write the call that makes a structure, in the reader's units.

    Parameters
    ----------
    structure : object
        The structure.
    system : str
        ``"SI"`` or ``"US"``.

    Returns
    -------
    str
        A call of the class of the same name in `crackkit`; numbers carry twelve digits, so that
        the ends of a range stay inside it. A structure that cannot be typed in the sandbox is
        imported and called as it is, in inner units.
    """
    form = FORMS.get(type(structure))
    return form.line(structure, system) if form else _as_it_is(structure)


def _as_it_is(structure) -> str:
    parts = [part for part in vars(structure).values() if is_dataclass(part)]
    kinds = [type(part) for part in (*parts, structure)]
    imports = [f"from {kind.__module__} import {kind.__name__}" for kind in kinds]
    return "\n".join([*imports, repr(structure)])
