"""What is said with each result: the cautions of the case, and care on site."""

from crackkit.words import _

ON_SITE = (
    _("Cap or bend bar ends that stick out: people fall on them."),
    _("Props stay until the engineer releases them; never load a member that is found wanting."),
    _("Cutting or drilling concrete makes silica dust: cut wet or with suction, wear a mask."),
    _("Wet cement burns skin and eyes: gloves, boots, glasses; wash it off at once."),
)


def caution_lines(outcome) -> list[str]:
    """Give the cautions of a case, grave ones first and marked."""
    lines = (f"⚠ {c.text}" if c.grave else c.text for c in outcome.cautions)
    return list(dict.fromkeys(lines))  # several layers may bring the same one


def shared_cautions(outcomes) -> tuple[str, ...]:
    """Give the cautions of several cases, each said once, grave ones first."""
    cautions = [c for outcome in outcomes for c in outcome.cautions]
    ordered = sorted(cautions, key=lambda c: (not c.grave, c.key == "estimate"))
    return tuple(dict.fromkeys(f"⚠ {c.text}" if c.grave else c.text for c in ordered))
