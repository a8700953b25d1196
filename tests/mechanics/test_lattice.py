"""A crack that finds its own way: where it starts, where it goes, and when it runs."""

import numpy as np
import pytest

from crackkit.mechanics.lattice import LIMITS, LatticeConcrete, lattice_run, run_of
from crackkit.mechanics.lattice_body import lattice_body
from crackkit.mechanics.lattice_points import lattice_points
from crackkit.mechanics.plane_bodies import l_slab, rectangle, slab_with_opening
from crackkit.mechanics.plane_supports import Hold
from tests.mechanics.lattices import CONCRETE, L_SLAB, ROLLERS, mirrored

CORNER = np.array([3000.0, 3000.0])
SEEDS = range(16)
AROUND = {"near": "left", "left": "near", "far": "right", "right": "far", "shelf": "riser",
          "riser": "shelf"}  # fmt: skip


@pytest.fixture(scope="module")
def runs():
    return [lattice_run(L_SLAB, ROLLERS, CONCRETE, 3e-4, seed) for seed in SEEDS]


def torn_at(run) -> np.ndarray:
    """Middles of the lines along which bonds broke, in order."""
    return run.facets[run.order[run.left == 0]].mean(axis=1)


def half_gone(run, body) -> float:
    """Shrinkage at which half of what holds the slab is lost."""
    elongation = body.rest(body.factor(body.stiffness), body.stiffness)[1]
    sound = 0.5 * body.stiffness @ elongation**2
    lost = np.cumsum(run.freed / run.loads**2)
    return float(run.strain[np.argmax(lost > 0.5 * sound)])


def test_the_same_seed_gives_the_same_run_and_another_a_different_one(runs):
    again = lattice_run(L_SLAB, ROLLERS, CONCRETE, 3e-4, 3)
    np.testing.assert_array_equal(again.order, runs[3].order)
    np.testing.assert_array_equal(again.loads, runs[3].loads)
    np.testing.assert_array_equal(again.movements, runs[3].movements)
    assert runs[2].order[:50].tolist() != runs[3].order[:50].tolist()


def test_the_crack_starts_at_the_inside_corner(runs):
    """Of a slab of 6 m whose bonds are some 130 mm long."""
    starts = np.array([np.hypot(*(torn_at(run)[:3] - CORNER).T).min() for run in runs])
    assert (starts < 260.0).mean() >= 0.8
    assert np.median(starts) < 130.0


def test_it_runs_along_the_diagonal_but_only_roughly(runs):
    """Mean over seeds within four standard errors; each seed strays by 20 degrees and more."""
    ways = []
    for run in runs:
        into = CORNER - torn_at(run)
        far = np.hypot(*into.T)
        first = into[(far > 150.0) & (far < 1500.0)]
        ways.append(np.degrees(np.arctan2(first[:, 1], first[:, 0])).mean())
    error = np.std(ways, ddof=1) / np.sqrt(len(ways))
    assert np.mean(ways) == pytest.approx(45.0, abs=min(4.0 * error, 25.0))
    assert np.std(ways) < 35.0
    assert (abs(np.array(ways) - 45.0) < 45.0).mean() > 0.8


def test_most_of_what_breaks_hangs_together(runs):
    """Broken bonds lie next to other broken bonds: a crack, no dust."""
    for run in runs[:6]:
        at = torn_at(run)
        far = np.hypot(*(at[:, None] - at).transpose(2, 0, 1)) + 1e9 * np.eye(len(at))
        assert (far.min(axis=1) < 130.0).mean() > 0.9


def test_it_runs_when_the_slab_gives_up_the_work_of_a_straight_crack_or_a_little_later(runs):
    """Griffith: the work given up by a straight cut along the diagonal, by the sound lattice."""
    ratios = []
    for seed in SEEDS[:6]:
        body = lattice_body(lattice_points(L_SLAB, 1500, seed), ROLLERS, 15e3, 150.0)
        needed = straight_cut(body)
        ratios.append(half_gone(runs[seed], body) / needed)
    assert 0.9 < np.mean(ratios) < 1.3
    assert min(ratios) > 0.8 and max(ratios) < 1.5


def straight_cut(body) -> float:
    """Shrinkage that drives a straight cut until half of what holds the slab is lost [-]."""
    lattice = body.lattice
    right = lattice.points @ np.array([1.0, -1.0]) + 1e-3 > 0
    crosses = right[lattice.bonds[:, 0]] != right[lattice.bonds[:, 1]]
    far = np.hypot(*(lattice.points[lattice.bonds].mean(axis=1) - CORNER).T)
    lengths, works = np.arange(0.0, 3001.0, 500.0), []
    b = len(lattice.bonds)
    for length in lengths:
        softness = np.where(crosses & (far < length), 1e-4, 1.0)
        works.append(0.5 * (body.stiffness[:b] * softness) @ body.solved(softness)[1] ** 2)
    given = -np.diff(works) / (np.diff(lengths) * body.thickness)
    until = np.array(works[1:]) > 0.5 * works[0]
    return float(np.sqrt(CONCRETE.energy / given[until]).max())


def test_larger_slabs_run_at_less_shrinkage_by_the_root_of_their_size():
    """Linear fracture mechanics: twice as large, by the root of two less."""
    small, large = (
        lattice_run(l_slab(2 * a, 2 * a, a, a), ROLLERS, CONCRETE, 1e-3, 2) for a in (3e3, 6e3)
    )
    n = min(len(small.order), len(large.order)) // 2
    assert small.strain[n] / large.strain[n] == pytest.approx(2.0**0.5, rel=0.05)


def test_a_slab_in_the_mirror_cracks_in_the_mirror():
    lattice = lattice_points(L_SLAB, 600, 7)
    seen = mirrored(lattice, AROUND)
    ties = [Hold("left", "normal"), Hold("near", "x"), Hold("near", "y"), Hold("right", "x", 1e3)]
    swapped = [Hold("near", "normal"), Hold("left", "y"), Hold("left", "x"), Hold("far", "y", 1e3)]
    here, there = (
        run_of(lattice_body(points, holds, 15e3, 150.0), CONCRETE, 3e-4, 7, most=150)
        for points, holds in ((lattice, ties), (seen, swapped))
    )
    np.testing.assert_array_equal(here.bonds, there.bonds)
    np.testing.assert_array_equal(here.order, there.order)
    np.testing.assert_allclose(here.loads, there.loads, rtol=1e-6)
    np.testing.assert_allclose(here.movements, there.movements[..., ::-1], atol=1e-5)


@pytest.mark.parametrize("seed", range(4))
def test_a_strip_of_short_bonds_bears_the_strength_of_the_concrete(seed):
    """A square of 300 mm: its greatest pull over its section, within an eighth."""
    lattice = lattice_points(rectangle(300.0, 300.0), 700, seed)
    holds = [Hold("left", "x"), Hold("right", "x"), Hold([0], "y")]
    body = lattice_body(lattice, holds, 15e3, 150.0)
    run = run_of(body, CONCRETE, 1e-3, seed, most=300)
    elongation = body.rest(body.factor(body.stiffness), body.stiffness)[1]
    sound = 0.5 * body.stiffness @ elongation**2
    left = sound - np.append(0.0, np.cumsum(run.freed / run.loads**2))[:-1]
    pull = 2.0 * left * run.loads / 300.0  # work is half of the pull times the way
    assert pull.max() / (300.0 * 150.0) == pytest.approx(CONCRETE.strength, rel=0.125)


def test_an_opening_cracks_from_its_corners():
    outline = slab_with_opening(6000.0, 6000.0, (3000.0, 3000.0), (1200.0, 1200.0))
    corners = 3000.0 + 600.0 * np.array([(-1, -1), (-1, 1), (1, 1), (1, -1)])
    firsts = []
    for seed in range(8):
        first = torn_at(lattice_run(outline, ROLLERS, CONCRETE, 3e-4, seed))[0]
        firsts.append(np.hypot(*(first - corners).T).min())
    assert (np.array(firsts) < 260.0).mean() >= 0.8


def test_frames_begin_with_none_broken_and_end_with_all_steps(runs):
    run = runs[0]
    first, last = run.frame(0), run.frame(-1)
    assert (first.softness == 1.0).all() and first.steps == 0
    assert last.steps == len(run.order) and (last.softness == 0.0).sum() > 50
    assert (np.diff(run.frames) > 0).all() and len(run.frames) == 60
    strains = [run.frame(k).strain for k in range(len(run.frames))]
    assert (np.diff(strains) >= 0).all()
    broken = [(run.frame(k).softness == 0).sum() for k in range(len(run.frames))]
    assert (np.diff(broken) >= 0).all()


def test_limits_are_said_in_sentences():
    assert all(words.endswith(".") and words[0].isupper() for words in LIMITS)
    assert "illustration" in LIMITS[0]


def test_what_does_not_shrink_is_refused():
    with pytest.raises(ValueError, match="shrinks"):
        lattice_run(L_SLAB, ROLLERS, CONCRETE, 0.0)


def test_concrete_without_toughness_is_refused():
    brittle = LatticeConcrete(15e3, 2.9, 0.0, 150.0)
    with pytest.raises(ValueError, match="above zero"):
        lattice_run(L_SLAB, ROLLERS, brittle, 1e-4, count=200)
