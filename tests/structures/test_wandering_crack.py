"""The film of a crack that finds its own way: an illustration that keeps to the slab's story."""

from dataclasses import replace

import numpy as np
import pytest

from crackkit.structures.corner_slab import CornerSlab
from crackkit.structures.fields import InputError, inputs
from crackkit.structures.outcome import UNCRACKED, UNHELD
from crackkit.structures.slab_history import shortening
from crackkit.structures.wandering_crack import FRAMES, WanderingCrack

FILM = WanderingCrack(slab=CornerSlab(held="edges", holds=0.3))


def at(frame: int, **changes) -> WanderingCrack:
    return replace(FILM, frame=frame, **changes)


def test_it_begins_sound_and_ends_torn():
    assert at(1).solve().verdict.key == UNCRACKED
    assert at(FRAMES).solve().verdict.key == UNHELD
    torn = [at(k).solve().numbers[0].value for k in range(1, FRAMES + 1)]
    assert torn == sorted(torn) and torn[0] == 0 < torn[-1]


def test_its_days_go_on_and_are_those_on_which_the_slab_has_shrunk_so_far():
    days = [at(k).day for k in range(1, FRAMES + 1)]
    assert days == sorted(days)
    for film in (at(20), at(40)):
        strain = film.run.frame(film.number).strain
        assert float(shortening(film.slab, film.day)) == pytest.approx(strain, rel=0.01)
    assert days[-1] <= FILM.slab.age * 1.01


def test_the_crack_starts_at_the_inside_corner():
    run = FILM.run
    torn = run.order[run.left <= 0.0][:5]
    middles = run.points[run.bonds[torn]].mean(axis=1)
    slab = FILM.slab
    corner = slab.length - slab.cut_length, slab.width - slab.cut_width
    assert np.hypot(*(middles - corner).T).min() < 300.0


def test_another_concrete_tears_otherwise_and_the_same_one_alike():
    (button,) = FILM.counts
    other = replace(FILM, **button.changes)
    assert other.seed == 2
    assert other.run.order[:50].tolist() != FILM.run.order[:50].tolist()
    assert replace(FILM).run is FILM.run
    assert replace(FILM, seed=99).counts[0].changes == {"seed": 1}


def test_bars_are_not_in_it_and_it_says_so():
    barred = replace(FILM, slab=replace(FILM.slab, diagonals="16"))
    assert barred.run.order.tolist() == FILM.run.order.tolist()
    assert "No bars" in at(FRAMES).solve().verdict.why
    assert "illustration" in FILM.solve().cautions[0].text


def test_only_picture_and_concrete_can_be_chosen():
    assert [each.path for each in inputs(FILM)] == ["frame", "seed"]
    with pytest.raises(InputError):
        at(FRAMES + 1)


def test_the_code_that_is_copied_makes_the_same_film():
    from crackkit.sandbox import code_line

    names = {}
    *imports, call = code_line(at(7), "SI").splitlines()
    exec("\n".join(imports), names)
    assert eval(call, names) == at(7)
