"""Beams over equal spans, the way handbooks tabulate them: span, load and stiffness are one."""

from crackkit.mechanics.beam import LineLoad, Support, solve
from crackkit.mechanics.beam_state import BeamState


def equal_spans(spans, loaded) -> BeamState:
    """Solve a beam over equal spans with an even load on some of them.

    With span, load and stiffness one, moments come as multiples of w L^2, shears and reactions
    of w L, deflections of w L^4/EI.

    Parameters
    ----------
    spans : int
        Number of spans, one or more [-].
    loaded : sequence of int
        Spans that carry load, counted from 1 at the left [-].

    Returns
    -------
    BeamState
        The solved beam.

    Raises
    ------
    ValueError
        If a loaded span lies outside the beam.

    Notes
    -----
    HICKS2010 Table 2.1 has the same multipliers.
    """
    supports = [Support(float(at)) for at in range(spans + 1)]
    loads = [LineLoad(float(span) - 1.0, float(span), 1.0) for span in loaded]
    return solve(float(spans), supports, loads)
