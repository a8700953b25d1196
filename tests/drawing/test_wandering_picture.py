"""Pictures of a film: all laid out alike, their words apart."""

import pytest

from crackkit.drawing.picture_of import before, picture, sheet
from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.wandering_crack import FRAMES, WanderingCrack
from tests.drawing.looked_at import BLANKS, at_every_width, complaints, views

VIEWS = views(560.0, 780.0, 1000.0)
SLAB = CornerSlab(held="edges", holds=0.3)


@pytest.mark.parametrize("frame", [1, 25, 40, FRAMES])
def test_words_keep_clear_at_every_width_and_in_both_systems(frame):
    outcome = WanderingCrack(frame=frame, slab=SLAB).solve()
    assert at_every_width(picture, outcome, VIEWS) == {}


def test_all_pictures_of_a_film_are_as_large():
    sizes = {
        (drawn.width, drawn.height)
        for frame in (1, 30, FRAMES)
        for drawn in [picture(WanderingCrack(frame=frame, slab=SLAB).solve(), VIEWS[0])]
    }
    assert len(sizes) == 1


@pytest.mark.parametrize("view", BLANKS)
def test_it_can_be_drawn_blank(view):
    film = WanderingCrack(slab=SLAB)
    assert complaints(before(film, view)) == [] == complaints(sheet(film, view))
