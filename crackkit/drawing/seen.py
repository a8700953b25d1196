"""A structure as one picture sees it: what its drawing asks for many times is worked out once."""

from functools import cached_property


class Seen:
    """A structure whose footings and loads are kept; everything else is asked of it directly."""

    def __init__(self, structure):
        self.structure = structure

    def __getattr__(self, name: str):
        return getattr(self.structure, name)

    @cached_property
    def origin(self) -> float:
        """Place that its reader counts from [mm from the left end]."""
        return self.structure.origin

    @cached_property
    def footings(self) -> tuple:
        """What carries it."""
        return self.structure.footings

    @cached_property
    def hung(self) -> tuple:
        """Loads on one place."""
        return self.structure.hung

    @cached_property
    def spread(self) -> tuple:
        """Loads spread over a stretch."""
        return self.structure.spread
