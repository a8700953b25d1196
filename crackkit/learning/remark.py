"""What a prediction gets back: how good it was, and a reason for each right and wrong part."""

from dataclasses import dataclass

from crackkit.words import _

RIGHT, MISSED, WRONG = "right", "missed", "wrong"
KINDS = (RIGHT, MISSED, WRONG)
ENOUGH = 0.8  # score [-] from which a prediction passes


@dataclass(frozen=True)
class Remark:
    """What is said about one stretch of one face.

    Attributes
    ----------
    face : str
        ``"top"`` or ``"bottom"``; empty where the remark is about the whole member.
    start, end : float
        The stretch it is about [mm from the left end].
    kind : str
        ``"right"``, ``"missed"`` (it happens, and was not predicted) or ``"wrong"`` (it was
        predicted, and does not happen).
    text : str
        The reason, by mechanics.
    """

    face: str
    start: float
    end: float
    kind: str
    text: str


@dataclass(frozen=True)
class Marking:
    """How good a prediction was.

    Attributes
    ----------
    right : bool
        Whether it passes.
    score : float
        From 0, nothing right, to 1, all right [-].
    remarks : tuple of Remark
        What was right, what was missed and what was wrong, from left to right.
    """

    right: bool
    score: float
    remarks: tuple[Remark, ...]

    @property
    def headline(self) -> str:
        """One warm sentence over the remarks."""
        if self.right:
            clean = all(remark.kind == RIGHT for remark in self.remarks)
            return _("You have it.") if clean else _("You have it, all but a little.")
        if self.score >= 0.5:
            return _("Part of it is right. Look at the rest.")
        return _("Not yet. See why, then try again.")


def in_order(remarks) -> tuple[Remark, ...]:
    """Sort remarks: what was right first, then what was missed, then what was wrong."""
    return tuple(sorted(remarks, key=lambda r: (KINDS.index(r.kind), r.start, r.face)))
