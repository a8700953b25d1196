"""Whether the bars of a strip keep its cracks small, and what they cost and need."""

from collections.abc import Callable
from dataclasses import dataclass
from functools import cached_property

from crackkit.mechanics.cover import LeastCover
from crackkit.structures.choice_chart import Chart
from crackkit.structures.strip_bars import StripBars
from crackkit.structures.strip_stress import Strip
from crackkit.structures.strip_width import StripCracks


@dataclass(frozen=True)
class Control:
    """What mechanics and rules say of the bars that were chosen.

    Attributes
    ----------
    strip : Strip
        Concrete and load.
    load : float
        Moment [N mm] or pull [N] on the strip.
    main, across : StripCracks or None
        Cracks across the bars of either direction; None where there are none, or no load on them.
    worse : StripCracks
        The direction with the wider cracks.
    spread : StripBars or None
        Bars the other way, loaded or not.
    mass : float
        Steel on a square metre [kg/m2], both ways.
    least_gap, widest : float
        Least clear distance for the stones, and largest distance of bars in a slab [mm]; the
        latter is infinite in a beam.
    cover, asked : float, LeastCover
        Clear concrete over the outermost bars [mm], and what the rules ask for.
    least_steel : tuple of (float, str)
        Least area of the main bars near one face [mm2], and the clause.
    years, fewest_years : float
        Years until carbonation reaches them, as laid and where they lie too high [years].
    carbonated : float
        Mean depth that carbonation has reached after 50 years [mm].
    draw_chart : callable
        Gives the Chart of widths over sizes and spacings.
    """

    strip: Strip
    load: float
    main: StripCracks
    across: StripCracks | None
    spread: StripBars | None
    mass: float
    least_gap: float
    widest: float
    cover: float
    asked: LeastCover
    least_steel: tuple[float, str]
    years: float
    fewest_years: float
    carbonated: float
    draw_chart: Callable[[], Chart]

    @property
    def worse(self) -> StripCracks:
        """The direction with the wider cracks."""
        ways = [self.main] if self.across is None else [self.main, self.across]
        return max(ways, key=lambda way: way.band.governing)

    @property
    def hardest(self) -> StripCracks:
        """The direction whose bars are pulled harder; not always that with the wider cracks."""
        ways = [self.main] if self.across is None else [self.main, self.across]
        return max(ways, key=lambda way: way.held.stress)

    @property
    def cracks(self) -> bool:
        """Whether the load alone cracks the concrete."""
        return self.load >= self.strip.cracks_at

    @cached_property
    def chart(self) -> Chart:
        """Crack width over size and spacing under the same load."""
        return self.draw_chart()
