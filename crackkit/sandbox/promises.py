"""What the lesson on the sandbox tells its readers, checked against the mechanics."""

from crackkit.sandbox.answers import judged_width
from crackkit.sandbox.comparison import compare
from crackkit.sandbox.reports import report
from crackkit.sandbox.simple_beam import SimpleBeam
from crackkit.sandbox.sweeps import sweep
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNHELD
from crackkit.words import _


def gate_beam() -> SimpleBeam:
    """Give the beam over the gate of the bus depot, as the lesson types it."""
    inner = SimpleBeam(
        span="18 ft",
        width="12 in",
        depth="20 in",
        bars="3 #6",
        cover="1.5 in",
        concrete="4000 psi",
        dead="0.8 kip/ft",
        point_load="12 kip at 10 ft",
    )
    loads = "9 kip at 0.5 ft, 12 kip at 16 ft"
    return inner.but(overhang_left="6 ft", top_bars="4 #6", point_load=loads)


def store_beam() -> SimpleBeam:
    """Give the beam over the tool store, as the lesson types it in metres."""
    return SimpleBeam(
        span="5.5 m",
        width="300 mm",
        depth="500 mm",
        bars="3 x 20 mm",
        cover="40 mm",
        concrete="30 MPa",
        dead="12 kN/m",
        point_load="53 kN at 3 m",
    )


def promises() -> dict[str, bool]:
    """Give each promise with whether it is kept."""
    return _of_the_gate() | _of_the_metric_beam() | _of_typing()


def _of_the_gate() -> dict[str, bool]:
    gate = gate_beam()
    trodden = gate.but(top_drop="3 in")
    swept = sweep(gate, "top_drop", "0 in", "5 in").course.governing
    return {
        "the gate beam is tight as drawn": _verdict(gate) == TIGHT,
        "trodden top bars let a crack grow too wide": _verdict(trodden) == TOO_WIDE,
        "the widest crack doubles": 1.8 < _width(trodden) / _width(gate) < 2.2,
        "it moves from under the load to over the post": (_face(gate), _face(trodden))
        == ("bottom", "top"),
        "without top bars nothing holds": _verdict(gate.but(top_bars="none")) == UNHELD,
        "the deeper they lie the wider the crack": bool((swept[1:] > swept[:-1]).all()),
        "the report says who decides": "engineer decide" in report(gate).html(),
    }


def _of_the_metric_beam() -> dict[str, bool]:
    beam = store_beam()
    lasting, thin = beam.but(duration="lasting"), beam.but(bars="5 x 16 mm")
    return {
        "the metric beam is judged by EN": beam.structure.code == "EN",
        "a load that stays opens the crack": _width(lasting) > _width(beam),
        "thin bars narrow it": _width(thin) < _width(beam),
        "a comparison has a column each": len(compare(beam, lasting, thin).rows[0]) == 4,
    }


def _of_typing() -> dict[str, bool]:
    gate, mixed = gate_beam(), gate_beam().but(span="5.4864 m", cover="38.1 mm")
    return {
        "the same beam in other units gives the same width": abs(_width(gate) - _width(mixed))
        < 1e-9,
        "a number without a unit is refused": _refused(span=20),
        "a misspelled name is refused": _refused(spam="20 ft"),
    }


def _verdict(case) -> str:
    return case.outcome.verdict.key


def _face(case) -> str:
    return case.outcome.widest.face


def _width(case) -> float:
    return judged_width(case.outcome).governing


def _refused(**typed) -> bool:
    try:
        SimpleBeam(**typed)
    except WrongInput:
        return True
    return False


def kept() -> str:
    """Say that all promises are kept.

    Raises
    ------
    AssertionError
        Naming those that are not.
    """
    found = promises()
    broken = [promise for promise, is_kept in found.items() if not is_kept]
    if broken:
        raise AssertionError("; ".join(broken))
    return _("All {n} promises of this lesson are kept.").format(n=len(found))
