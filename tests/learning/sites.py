"""A site on which tests try out a task: what was tried is not worked out again."""

from functools import cache

from crackkit.structures.fields import fitted


class Site:
    """A task, and what becomes of changes to its structure.

    Parameters
    ----------
    make : callable
        Gives the task in a system of units.
    """

    def __init__(self, make):
        self._make = cache(make)
        self._assess = cache(self._assess_anew)

    def task(self, system="SI"):
        return self._make(system)

    def assessed(self, system, changes) -> tuple[dict, object]:
        """Checks by their keys, and the outcome, after some changes."""
        return self._assess(system, tuple(changes.items()))

    def failing(self, system, changes) -> set[str]:
        """Keys of the checks that fail after some changes."""
        checks, _outcome = self.assessed(system, changes)
        return {key for key, check in checks.items() if not check.ok}

    def _assess_anew(self, system, changes):
        job = self.task(system)
        floor, _moved = fitted(job.structure, dict(changes))
        outcome = floor.solve()
        return {check.key: check for check in job.assess(floor, outcome, system)}, outcome
