"""Marking the answer to: which face does the bar belong to?"""

from crackkit.learning.bending import largest_stress, why
from crackkit.learning.remark import RIGHT, WRONG, Marking, Remark
from crackkit.words import _

PLACES = {
    "bottom": _("along the bottom"),
    "top": _("along the top"),
    "middle": _("in the middle of the depth"),
    "both": _("along both faces"),
}
NOTABLE = 0.25  # share of the largest pull [-] from which an uncracked face needs a bar too


def mark_bar(face: str, outcome, at: float | None = None) -> Marking:
    """Judge where the bar was put.

    Parameters
    ----------
    face : str
        ``"bottom"``, ``"top"``, ``"middle"`` (half way down) or ``"both"``.
    outcome : Outcome
        What mechanics says of the member; its own bars do not matter.
    at : float, optional
        Ask about one place only [mm from the left end]; without it, about the whole member.

    Returns
    -------
    Marking

    Raises
    ------
    ValueError
        If the face is none of the four.
    """
    if face not in PLACES:
        raise ValueError(_("The bar goes to one of: {}.").format(", ".join(PLACES)))
    wanted, useful = _faces(outcome, at)
    given = {"bottom": {"bottom"}, "top": {"top"}, "both": {"bottom", "top"}}.get(face, set())
    right = wanted <= given <= useful
    score = 1.0 if right else len(given & wanted) / max(len(given | wanted), 1)
    text = _right(outcome, given, at) if right else _wrong(face, given, wanted, outcome)
    kind = RIGHT if right else WRONG
    span = (at, at) if at is not None else (0.0, float(outcome.x[-1]))
    return Marking(right, score, (Remark(face, *span, kind, text),))


def _faces(outcome, at: float | None) -> tuple[set[str], set[str]]:
    """Faces that must have a bar, those that crack, and faces where one is of use."""
    if at is not None:
        here = {z.face for z in outcome.tension if z.start <= at <= z.end}
        return here, here
    peak = max((z.peak for z in outcome.tension), default=0.0) if largest_stress(outcome) else 0.0
    useful = {z.face for z in outcome.tension if peak and z.peak >= NOTABLE * peak}
    cracked = {z.face for z in outcome.tension if z.cracked}
    return cracked or {z.face for z in outcome.tension if peak and z.peak == peak}, useful | cracked


def _wrong(face: str, given: set, wanted: set, outcome) -> str:
    if not wanted:
        return _("Nothing is stretched here: a bar would have nothing to hold.")
    if face == "middle":
        return _(
            "Half way down the concrete is hardly stretched: a crack is open wide at the face "
            "before a bar in the middle feels it."
        )
    idle = given - wanted
    if idle:
        return _squeezed(half=bool(given & wanted))
    return _forgotten(outcome, next(iter(wanted - given)))


def _right(outcome, given: set, at: float | None) -> str:
    if len(given) == 2:
        return _("Each face is stretched somewhere: the bars cross the cracks of both.")
    zone = max((z for z in outcome.tension if z.face in given), key=lambda z: z.peak)
    here = zone.at if at is None else at
    return why(outcome, zone.face, here, here) + " " + _("The bar crosses every crack there.")


def _squeezed(half: bool) -> str:
    if half:
        return _(
            "Half of it: one of the two bars lies where the concrete is squeezed. "
            "It crosses no crack, and its steel is wasted."
        )
    return _(
        "The bar lies where the concrete is squeezed; it crosses no crack. The crack opens on "
        "the other face, with nothing to hold it."
    )


def _forgotten(outcome, face: str) -> str:
    zone = max((z for z in outcome.tension if z.face == face), key=lambda z: z.peak)
    reason = why(outcome, face, zone.start, zone.end)
    return _("One bar is not enough: the other face is stretched too.") + f" {reason}"
