"""A beam as the one line that makes it again in the sandbox."""

from crackkit.structures.simple_beam import SimpleBeam as Beam
from crackkit.units import number, unit


def code_line(beam: Beam, system: str) -> str:
    """Write the call that makes a beam, in the reader's units.

    Parameters
    ----------
    beam : SimpleBeam
        The structure.
    system : str
        ``"SI"`` or ``"US"``.

    Returns
    -------
    str
        A call of `crackkit.SimpleBeam`; numbers carry twelve digits, so that the ends of a
        range stay inside it.
    """
    arguments = {
        "span": _amount(beam.span, "length", system),
        "width": _amount(beam.width, "size", system),
        "depth": _amount(beam.depth, "size", system),
        **_bars(beam, system),
        "stirrups": _size(beam.stirrup),
        "concrete": _amount(beam.strength, "strength", system),
        "steel": _amount(beam.yield_strength, "stress", system),
        "dead": _amount(beam.uniform_load, "line_load", system),
        "point_load": _loads(beam, system),
        "own_weight": beam.self_weight,
        "overhang_left": _amount(beam.overhang_left, "length", system),
        "overhang_right": _amount(beam.overhang_right, "length", system),
        "exposure": beam.exposure,
        "duration": beam.duration,
        "code": beam.code,
        "system": system,
    }
    return f"SimpleBeam({', '.join(f'{name}={value!r}' for name, value in arguments.items())})"


def _bars(beam: Beam, system: str) -> dict[str, str]:
    named = {"bars": _number_of(beam.bottom), "top_bars": _number_of(beam.top)}
    for prefix, layer in (("", beam.bottom), ("top_", beam.top)):
        named[f"{prefix}cover"] = _amount(layer.cover, "size", system)
        if layer.number:  # where no bars lie it says nothing how they lie
            named |= {
                f"{prefix}drop": _amount(layer.drop, "size", system),
                f"{prefix}left_gap": _amount(layer.left_gap, "length", system),
                f"{prefix}right_gap": _amount(layer.right_gap, "length", system),
            }
    return named


def _amount(value: float, quantity: str, system: str) -> str:
    return f"{number(value, quantity, system):.12g} {unit(quantity, system)}"


def _number_of(layer) -> str:
    return f"{layer.number:.0f} x {_size(layer.size)}" if layer.number else "none"


def _size(name: str) -> str:
    return name if name.startswith("#") or name == "none" else f"{name} mm"


def _loads(beam: Beam, system: str) -> str:
    loads = [load for load in beam.loads if load.force]
    texts = [
        f"{_amount(load.force, 'force', system)} at {_amount(load.at, 'length', system)}"
        for load in loads
    ]
    return ", ".join(texts) or "none"
