"""Frames of a lattice that cracks: laid out alike, words apart, true to the run."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.drawing.frames import View
from crackkit.drawing.labels import text_boxes
from crackkit.drawing.lattice_picture import enlarged, picture
from crackkit.drawing.lattice_torn import ROLES, torn_sides
from crackkit.drawing.lattice_words import STATES, state_key
from crackkit.drawing.shapes import Lines, Polygons, Polyline, every_shape
from crackkit.drawing.svg import svg
from crackkit.mechanics.lattice import LIMITS, LatticeConcrete, lattice_run
from crackkit.mechanics.plane_supports import Hold
from crackkit.structures.corner_restraint import restraint, tied
from crackkit.structures.corner_shapes import form, outline
from crackkit.structures.corner_slab import CornerSlab
from tests.drawing.looked_at import SYSTEMS, blemishes, complaints, views, words

WIDTHS = (560.0, 620.0, 859.0, 860.0, 1000.0, 1200.0)
VIEWS = views(*WIDTHS)
CONCRETE = LatticeConcrete(15e3, 2.9, 0.12, 150.0)
SLABS = {
    "L": CornerSlab(shape="corner", held="edges"),
    "long L": CornerSlab(shape="corner", held="ends", length=12e3, width=3e3),
    "deep L": CornerSlab(shape="corner", held="edges", length=3e3, width=12e3),
    "opening": CornerSlab(shape="opening", held="ends", rounding=200.0),
    "column": CornerSlab(shape="column", held="edges", turn="turned"),
    "door": CornerSlab(shape="door", held="foot"),
}


def cracked(slab, largest=3e-4, seed=1, count=400):
    """A slab, what its sides are tied to, and how it cracks if that does not give way."""
    of, by = form(slab), restraint(slab)
    sides = tied(of, by)
    named = [s.name for s in outline(of).sides if any((s.start, s.end) == _ends(t) for t in sides)]
    ways = ("normal",) if slab.held == "edges" else ("x", "y")
    holds = [Hold(name, way) for name in named for way in ways]
    return slab, lattice_run(outline(of), holds, CONCRETE, largest, seed, count), sides


def _ends(line):
    return tuple(map(tuple, line.tolist()))


RUNS = {name: cracked(slab) for name, slab in SLABS.items()}
SLAB, RUN, TIED = RUNS["L"]


@pytest.mark.parametrize("name", RUNS)
def test_words_keep_clear_and_shapes_on_the_paper_at_every_width(name):
    slab, run, sides = RUNS[name]
    for view in VIEWS:
        for number in (0, len(run.frames) // 2, -1):
            drawn = picture(slab, run, number, sides, view=view)
            assert blemishes(drawn) == []


@settings(max_examples=40, deadline=None)
@given(
    st.sampled_from(sorted(RUNS)),
    st.floats(0.0, 1.0),
    st.floats(560.0, 1200.0),
    st.sampled_from(SYSTEMS),
    st.one_of(st.none(), st.floats(1.0, 3650.0)),
)
def test_words_keep_clear_in_any_frame_on_any_day(name, share, width, system, day):
    slab, run, sides = RUNS[name]
    number = round(share * (len(run.frames) - 1))
    drawn = picture(slab, run, number, sides, day, View(system, width=width))
    assert blemishes(drawn) == []


@pytest.mark.parametrize("theme", ["light", "dark", "projector"])
def test_every_role_has_a_look_in_every_theme(theme):
    drawn = svg(picture(SLAB, RUN, -1, TIED), theme)
    assert drawn.startswith("<svg") and "nan" not in drawn


@pytest.mark.parametrize("width", [560.0, 1000.0])
def test_all_frames_are_laid_out_alike(width):
    """Paper, slab as cast, key and limits stand still; only numbers and what happens change."""
    drawn = [picture(SLAB, RUN, k, TIED, view=View(width=width)) for k in range(len(RUN.frames))]
    assert len({(one.width, one.height) for one in drawn}) == 1
    still = [still_words(one) for one in drawn]
    assert all(one == still[0] for one in still)
    assert len(still[0]) > 15
    ghosts = [cast(one) for one in drawn]
    assert all(np.array_equal(one, ghosts[0]) for one in ghosts)


def still_words(drawn):
    """Words and where they begin, without the sentence on what happens and numbers on tiles."""
    told = " ".join(STATES.values())
    big = {shape for shape in every_shape(drawn.shapes) if "tile_number" in str(_role(shape))}
    numbers = {shape.text for shape in big}
    return [
        (box.left, box.top, box.text)
        for box in text_boxes(drawn)
        if box.text not in told and box.text not in numbers
    ]


def _role(shape):
    return getattr(shape, "role", "") if hasattr(shape, "text") else ""


def cast(drawn):
    """Points of the outline as it was cast."""
    (ghost,) = [
        s for s in every_shape(drawn.shapes) if isinstance(s, Polyline) and s.role == "ghost"
    ]
    return ghost.points


def strokes(drawn, role: str) -> int:
    """How many strokes there are besides the one of the key."""
    found = [
        len(s.segments)
        for s in every_shape(drawn.shapes)
        if isinstance(s, Lines) and s.role == role
    ]
    return sum(found) - 1


def test_every_bond_that_softens_is_drawn_once_from_thin_to_torn():
    last = len(RUN.frames) - 1
    for number in (0, last // 3, last):
        drawn, left = picture(SLAB, RUN, number, TIED), RUN.frame(number).softness
        thin, thick, torn = (strokes(drawn, role) for role in ROLES)
        assert thin + thick + torn == (left < 1.0).sum()
        assert torn == (left == 0.0).sum()
        gaps = [
            len(s.outlines)
            for s in every_shape(drawn.shapes)
            if isinstance(s, Polygons) and s.role == "crack_gap"
        ]
        assert sum(gaps) == torn
    assert torn > 20


def test_faces_of_a_sound_slab_lie_on_each_other_and_of_a_torn_one_apart():
    first, last = RUN.frame(0), RUN.frame(-1)
    torn = last.softness == 0.0
    together, apart = (torn_sides(RUN, frame, 1.0)[torn] for frame in (first, last))
    gap, before = (
        np.hypot(*(sides[:, 1] - sides[:, 0]).mean(axis=1).T) for sides in (apart, together)
    )
    moved = last.movement[RUN.bonds[torn]]
    np.testing.assert_allclose(gap, np.hypot(*(moved[:, 1] - moved[:, 0]).T))
    assert np.median(gap) > 5.0 * np.median(before)


def test_how_much_larger_movement_is_drawn_is_said_and_the_same_in_all_frames():
    for view in (View(width=560.0), View(width=1000.0)):
        notes = set()
        for k in (0, 10, -1):
            notes |= {
                text for text in words(picture(SLAB, RUN, k, TIED, view=view)) if "drawn" in text
            }
        assert len(notes) == 1
        assert "an illustration" in notes.pop()
    drawn = picture(SLAB, RUN, -1, TIED, view=View(width=1000.0))
    outline_points = cast(drawn)
    scale = float(np.ptp(outline_points, axis=0).max()) / 6000.0
    assert f"drawn {enlarged(RUN, scale):.3g} times" in " ".join(words(drawn))


def test_what_it_cannot_do_stands_beside_every_frame():
    written = " ".join(words(picture(SLAB, RUN, 5, TIED)))
    for text in LIMITS[1:]:
        assert all(word in written for word in text.split())


def test_what_happens_is_told_from_the_run():
    keys = [state_key(RUN, k) for k in range(len(RUN.frames))]
    assert keys[0] == "sound" and keys[-1] == RUN.ended
    assert {"begins", "runs", "waits"} <= set(keys)
    for k, key in enumerate(keys[1:-1], 1):
        rises = RUN.frame(k).strain > RUN.frame(k - 1).strain
        assert key == "begins" or rises == (key == "waits")


def test_a_slab_that_hardly_shrinks_stays_whole():
    slab, run, sides = cracked(SLAB, largest=5e-6)
    assert [state_key(run, k) for k in range(len(run.frames))] == ["whole"]
    assert complaints(picture(slab, run, 0, sides)) == []


def test_a_run_that_is_broken_off_says_so():
    assert state_key(replace(RUN, ended="steps"), len(RUN.frames) - 1) == "steps"


@pytest.mark.parametrize("system", SYSTEMS)
def test_numbers_on_tiles_are_those_of_the_frame(system):
    frame = RUN.frame(-1)
    drawn = words(picture(SLAB, RUN, -1, TIED, 90.0, View(system)))
    assert str((frame.softness == 0.0).sum()) in drawn
    assert "90 days" in drawn
    assert f"{frame.steps} of {len(RUN.order)}" in drawn


def test_those_who_cannot_see_are_told_that_it_is_an_illustration_and_what_happens():
    said = picture(SLAB, RUN, -1, TIED).description
    assert said.startswith("An illustration") and STATES[RUN.ended] in said
    assert f"bonds torn {(RUN.frame(-1).softness == 0).sum()}" in said
