"""The live picture against the usual way, in one run, in the real page.

Targets on a quiet machine with two cores: key to painted picture at most 35 ms (median) and
50 ms (95 %); for all but the simple beam 45 ms (median), for the slab on the ground 60 ms, whose
years run by at 20 pictures a second, for the one that curls 50 ms, for the one with an inside
corner 80 ms; at least five times faster than the usual way (which draws the simple beam); at least
30 pictures a second while dragging a slider, 40 while dragging a handle; the last picture 50 ms
after release.
Machines differ: "plain" gauges the one at hand. On the machine those targets were set for, a step
of a plain inline figure took 182 ms, so the target of 35 ms stands for a ratio of 5.2.
"""

import pytest

from tests.benchmarks import page_clock
from tests.benchmarks.kept import kept

PRESSES = 52
# panels of a simple beam, a cantilever, a floor of six spans, a pulled member, a choice of bars,
# a slab on the ground, one that curls, one with an inside corner, each with a handle to drag and
# how far [px]
HANDLES = {
    "ours": ("loads.0.at", 200),
    "arm": ("loads.0.at", -200),  # its load stands near the tip: there is room towards the root
    "floor": ("loads.0.at", 200),
    "tie": ("pull", -60),
    "choice": ("spacing", 60),
    "ground": ("decades", 60),
    "curled": ("loads.0.x", 120),
    "corner": ("decades", 60),
}
OURS, USUAL = tuple(HANDLES), ("plain", "usual")
AGED = ("ground", "curled", "corner")  # their first slider is the age: few pictures while young
WAYS = {way: ".ck-range >> nth=0" for way in OURS}
WAYS |= dict.fromkeys(USUAL, ".noUi-handle")
# a day more hardly changes a slab that curls: its keys walk the wheel
KEYED = WAYS | {"curled": ".ck-handle[data-path='loads.0.x']"}
pytestmark = [pytest.mark.benchmark, pytest.mark.browser]


def opened(lesson_page, workbook_folder, way):
    page = lesson_page.open(workbook_folder / f"{way}.ipynb").page
    page.wait_for_selector(".jp-OutputArea img" if way in USUAL else ".ck-picture svg")
    page.wait_for_timeout(1500)
    page_clock.install(page, way if way in USUAL else "ours")
    return page


def quantile(times, share):
    return sorted(times)[min(int(share * len(times)), len(times) - 1)]


def key_times(page, way):
    page.locator(KEYED[way]).focus()
    pause, presses = (150.0, PRESSES) if way in OURS else (1500.0, 20)
    page_clock.step_times(page, 4, pause)
    return page_clock.step_times(page, presses, pause)


@pytest.fixture(scope="module")
def figures():
    """What was measured."""
    with kept("page_speed") as found:
        yield found


@pytest.mark.parametrize("way", WAYS)
def test_key_to_painted_picture(way, lesson_page, workbook_folder, figures, benchmark):
    page = opened(lesson_page, workbook_folder, way)
    times = benchmark.pedantic(key_times, args=(page, way), rounds=1)
    slider = page.locator(WAYS[way])
    figures[way] = {
        "step_median_ms": quantile(times, 0.5),
        "step_p95_ms": quantile(times, 0.95),
        "slider": page_clock.drag(page, slider, 120, 5.0, 0.6 if way in AGED else 0.0),
    }
    if way in OURS:
        path, across = HANDLES[way]
        handle = page.locator(f".ck-handle[data-path='{path}'] circle").first
        figures[way]["handle"] = page_clock.drag(page, handle, across, 5.0)
    lesson_page.wait_until_idle(120)  # the usual way still draws what was dragged


def test_the_years_of_a_slab_run_by(lesson_page, workbook_folder, figures, benchmark):
    page = opened(lesson_page, workbook_folder, "ground")
    page.locator(".ck-range >> nth=0").press("Home")
    page.wait_for_timeout(1000)
    seconds = 4.0
    run = page.locator(".ck-run")

    def played():
        before = page_clock.painted(page)
        run.click()
        page.wait_for_timeout(1000 * seconds)
        return (page_clock.painted(page) - before) / seconds

    figures["years"] = {"pictures_per_second": benchmark.pedantic(played, rounds=1)}
    run.click()
    lesson_page.wait_until_idle(30)


def test_the_live_picture_is_at_least_five_times_faster_than_the_usual_way(figures, benchmark):
    if len(figures) < len(WAYS):
        pytest.skip("all ways must be measured in this run")
    steps = benchmark.pedantic(
        lambda: {way: figures[way]["step_median_ms"] for way in WAYS}, rounds=1
    )
    figures["usual_to_ours"] = steps["usual"] / steps["ours"]
    figures["plain_to_ours"] = steps["plain"] / steps["ours"]
    assert figures["usual_to_ours"] >= 5.0
