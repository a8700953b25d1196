"""A task: make a beam hold, within a budget. Whatever the mechanics accepts is right."""

from dataclasses import dataclass

from crackkit.learning import task_checks
from crackkit.learning.task_checks import Check
from crackkit.structures.fields import inputs
from crackkit.structures.simple_beam import SimpleBeam
from crackkit.units import shown
from crackkit.words import _

# A beam must carry more than the load of every day before it gives way. Load factors of 1.2 to
# 1.6 over a strength factor of 0.9 (ACI 318-19 5.3.1, 21.2.1) come to about 1.6; common practice.
RESERVE = 1.6


@dataclass(frozen=True)
class BeamTask:
    """What is given, what may be changed, and what must be reached.

    Attributes
    ----------
    key : str
        Name of the task in the record of a learner's work.
    title, story : str
        What it is about.
    beam : SimpleBeam
        The beam as the learner finds it.
    free : tuple of str
        Paths of the inputs that may be changed.
    most_steel : float
        Budget: most mass of the bars, stirrups apart [kg].
    reserve : float
        How many times the load the beam must carry before the bars give way [-].
    """

    key: str
    title: str
    story: str
    beam: SimpleBeam
    free: tuple[str, ...]
    most_steel: float
    reserve: float = RESERVE

    @property
    def locked(self) -> tuple[str, ...]:
        """Paths of the inputs that are given."""
        return tuple(item.path for item in inputs(self.beam) if item.path not in self.free)

    def goals(self, system: str = "SI") -> tuple[str, ...]:
        """List what must be reached, in the reader's units, one line each."""
        width = shown(self.beam.solve().verdict.limit.width, "width", system)
        steel = shown(self.most_steel, "mass", system)
        return (
            _("The bars hold: {n} times this load before they give way.").format(n=self.reserve),
            _("No crack is wider than {width}.").format(width=width),
            _("The bars weigh at most {steel}.").format(steel=steel),
            _("The stones of the concrete pass between the bars."),
            _("The cover is at least what this place asks for."),
        )

    def assess(self, structure: SimpleBeam, outcome, system: str = "SI") -> tuple[Check, ...]:
        """Hold a solution against everything that must be reached.

        Parameters
        ----------
        structure : SimpleBeam
            The learner's beam.
        outcome : Outcome
            What mechanics says of it.
        system : str
            Units of the answers, ``"SI"`` or ``"US"``.

        Returns
        -------
        tuple of Check
            The solution is right when all are ok.
        """
        return (
            *task_checks.givens(self, structure),
            task_checks.hold(self, outcome, system),
            task_checks.width(structure, outcome, system),
            task_checks.steel(self, outcome, system),
            task_checks.room(structure, system),
            task_checks.cover(structure, system),
        )

    def score(self, checks, outcome) -> float:
        """Rate a solution: below 1 the share that is reached [-], above 1 by the steel spared."""
        if not all(check.ok for check in checks):
            return sum(check.ok for check in checks) / len(checks)
        return 2.0 - outcome.steel_mass / self.most_steel
