"""A drawing brought up to date part by part is the drawing made anew, and most of it stays."""

import random
from dataclasses import replace
from itertools import pairwise

import pytest

from crackkit.drawing import picture_of
from crackkit.drawing.frames import View
from crackkit.drawing.svg import svg
from crackkit.learning.bar_choice import fine_slab
from crackkit.learning.cantilever import balcony
from crackkit.learning.corner import film, held_floor
from crackkit.learning.curling import panel as curled_panel
from crackkit.learning.floor import middle_span_empty
from crackkit.learning.ground import barred_slab
from crackkit.learning.pulled import thin_hanger
from crackkit.learning.simple_beam import canteen_beam
from crackkit.panels.view import front_end
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.fields import inputs, settled

STRUCTURES = [
    canteen_beam,
    balcony,
    middle_span_empty,
    thin_hanger,
    fine_slab,
    barred_slab,
    curled_panel,
]
# shows drawing after drawing in one box, each beside one made anew; gives how many elements of
# the drawing before were kept each time, or the first that differs
FOLLOWED = """(drawings) => {
  const [box, fresh] = [document.createElement('div'), document.createElement('div')];
  box.append(document.createElement('p'));
  document.body.replaceChildren(box);
  const show = renewing(box, box.lastChild), kept = [];
  for (const drawing of drawings) {
    const before = new Set(box.querySelectorAll('svg > *'));
    show(drawing);
    fresh.innerHTML = drawing;
    if (box.firstChild.outerHTML !== fresh.innerHTML) return drawing;
    if (box.childNodes.length !== 2) return 'more than the drawing in its box';
    kept.push([...box.querySelectorAll('svg > *')].filter((one) => before.has(one)).length);
  }
  return kept;
}"""


@pytest.fixture(scope="module")
def page(browser_window):
    page = browser_window.new_page()
    page.add_script_tag(content=front_end("renewed.js"))
    yield page
    page.close()


def drawn(structure, system="SI", theme="light", width=1000.0):
    return svg(picture_of.picture(structure.solve(), View(system, width=width)), theme)


def slid(structure):
    """Give drawings of every slider at a place, a little further, and at its end."""
    found = []
    for item in inputs(structure):
        if item.applies and not item.declared.choices and item.high > item.low:
            for share in (0.3, 0.32, 1.0):
                value = item.low + share * (item.high - item.low)
                value = round(value) if item.declared.quantity == "count" else value
                found.append(drawn(settled(structure, {item.path: value})[0]))
    return found


@pytest.mark.parametrize("make", STRUCTURES, ids=lambda make: make.__name__)
def test_a_drawing_followed_through_all_sliders_is_the_one_made_anew(make, page):
    structure = make("SI")
    drawings = [drawn(structure), *slid(structure), drawn(structure, "US")]
    drawings += [drawn(structure, theme="dark"), drawn(structure, width=700.0), drawn(structure)]
    kept = page.evaluate(FOLLOWED, drawings)
    assert isinstance(kept, list), kept
    assert kept[0] == kept[-2] == 0  # the first, and one of another size


def test_an_inside_corner_followed_through_the_years_is_the_one_drawn_anew(page):
    """Its sliders are many and each place another body: its days alone, and another shape."""
    floor = held_floor("SI")
    drawings = [drawn(replace(floor, age=age)) for age in (10.0, 90.0, 365.0, 370.0, 2000.0, 40.0)]
    drawings += [drawn(CornerSlab(shape="opening")), drawn(film("SI")), drawn(floor)]
    kept = page.evaluate(FOLLOWED, drawings)
    assert isinstance(kept, list), kept
    assert kept[3] > 0.5 * drawings[3].count("<text")  # five days more


def test_a_step_of_a_load_leaves_most_of_the_picture_alone(page):
    floor = middle_span_empty("SI")
    more = settled(floor, {"dead_load": 1.02 * floor.dead_load})[0]
    first, second = drawn(floor), drawn(more)
    _all_new, kept = page.evaluate(FOLLOWED, [first, second])
    assert kept > 0.9 * page.evaluate("document.querySelectorAll('svg > *').length")


PARTS = [
    '<path d="M0 0L1 1"/>',
    '<text x="1">12 &lt; 13 / &gt;</text>',
    '<g class="ck-handle"><g><circle r="2"/></g><text>a/</text></g>',
    '<g class="ck-handle"><g><circle r="3"/></g><text>a/</text></g>',
    '<g class="ck-handle"><g><circle r="3" cx="1"/></g><text>a/</text></g>',
    '<g><rect x="1" data-hint="a &amp; b"/><rect x="2" data-hint="c"/></g>',
    '<g><rect x="1" data-hint="a"/><rect x="2" data-hint="d"/></g>',
    '<g><rect x="4" data-hint="a"/><g><g><rect x="2" data-hint="d"/></g></g></g>',
    '<g><rect x="4" data-hint="a"/><g><g><rect x="3" data-hint="d f"/></g></g></g>',
    "<g></g>",
    "<title>more</title>",
]


@pytest.mark.parametrize("seed", range(5))
def test_parts_may_come_go_return_and_change_places(seed, page):
    chance = random.Random(seed)
    parts = [chance.choices(PARTS, k=chance.randint(0, 9)) for _again in range(60)]
    drawings = [f'<svg viewBox="0 0 9 9">{"".join(each)}</svg>' for each in parts]
    kept = page.evaluate(FOLLOWED, drawings)
    assert isinstance(kept, list), kept
    for (before, now), count in zip(pairwise(parts), kept[1:], strict=True):
        if len(before) == len(now):
            assert count >= sum(a == b for a, b in zip(before, now, strict=True))
    assert sum(kept) > 0
