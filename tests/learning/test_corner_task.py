"""The floor of the bus depot has several good answers, and the obvious wrong ones fail."""

import random
from dataclasses import replace

import pytest

from crackkit.learning.corner_checks import JOINT, OUTSIDE, YEAR, at_every_corner
from crackkit.learning.corner_task import as_found, bus_depot, joint_lengths
from crackkit.mechanics.crack_limits import limit
from crackkit.structures.fields import fitted, input_at
from crackkit.units.quantities import INCH
from tests.learning.sites import Site

# One system after the other: what is worked out for a floor is kept only for a while.
SYSTEMS = pytest.mark.parametrize("system", ["SI", "US"], scope="module")
BOX_OUTS = {name: {"turn": name} for name in ("square", "turned", "round")}
ROUND = BOX_OUTS["round"]
SAWN = {"joint": "saw", "saw_length": 6000.0, "cut_depth": 0.5}
JOINTED = {"joint": "joint"}
THICK = {"SI": "16", "US": "#5"}
THIN = {"SI": "12", "US": "#4"}
NEAR = {"SI": 50.0, "US": 2 * INCH}
FAR = {"SI": 400.0, "US": 16 * INCH}
HEAVY = {"SI": {"mat": "12", "spacing": 90.0}, "US": {"mat": "#4", "spacing": 4 * INCH}}
HEAVIER = {"SI": {"mat": "12", "spacing": 75.0}, "US": {"mat": "#4", "spacing": 3 * INCH}}
LIGHT = {"SI": {"mat": "12", "spacing": 150.0}, "US": {"mat": "#4", "spacing": 6 * INCH}}
SITE = Site(bus_depot)
task, assessed, failing = SITE.task, SITE.assessed, SITE.failing


def diagonals(system, count, **more):
    """Diagonal bars close by, at each corner."""
    return {"diagonals": THICK[system], "diagonal_count": count} | more


def beside(system, count=3):
    """Bars along the sides of each corner."""
    return {"edges": THICK[system], "edge_count": count}


def ways(system) -> dict[str, dict]:
    """Five ways to do it that a site knows."""
    return {
        "diagonal bars close by": diagonals(system, 4),
        "fewer of them and a round box-out": diagonals(system, 2) | ROUND,
        "bars along the sides and a round box-out": beside(system) | ROUND,
        "a mat": HEAVY[system],
        "joints with dowels": JOINTED,
    }


@SYSTEMS
def test_there_are_five_ways_and_they_differ(system):
    for name, way in ways(system).items():
        assert failing(system, way) == set(), name


@SYSTEMS
def test_the_floor_as_found_cracks_at_every_kind_of_corner(system):
    checks, _outcome = assessed(system, {})
    assert failing(system, {}) == {"width"}
    assert "diagonal bars close by, a mat, or a joint" in checks["width"].text
    most = limit(as_found(system).code, as_found(system).exposure).width
    openings = [state.crack.widest for state in at_every_corner(as_found(system))]
    assert min(max(openings[:OUTSIDE]), max(openings[OUTSIDE:])) > 4 * most


@SYSTEMS
@pytest.mark.parametrize(
    ("name", "words"),
    [
        ("saw", "says where it opens, not how far"),
        ("turned", "sharp as before|changes nothing there"),
        ("round", "changes nothing there"),
        ("far", "grows up before it meets bars so far off"),
        ("beside", "cross it at a slant"),
        ("few", "few or thin"),
        ("mat", "Few bars of a mat pass near a corner"),
        ("short", "they end too soon beyond the crack"),
        ("away", "No bar crosses it"),
    ],
)
def test_the_obvious_wrong_ones_fail_with_a_reason_and_what_to_try(system, name, words):
    wrong = {
        "saw": SAWN,
        "turned": BOX_OUTS["turned"],
        "round": ROUND,
        "far": diagonals(system, 4, diagonal_off=FAR[system]),
        "beside": beside(system),
        "few": diagonals(system, 2),
        "mat": LIGHT[system],
        "short": beside(system) | {"edge_past": 200.0},
        "away": beside(system, 1) | {"edge_off": 1000.0},
    }[name]
    checks, _outcome = assessed(system, wrong)
    assert failing(system, wrong) == {"width"}
    assert any(each in checks["width"].text for each in words.split("|"))
    assert "too wide" in checks["width"].text


@SYSTEMS
def test_a_square_box_out_needs_more_bars_and_a_round_one_none(system):
    few, more = (assessed(system, diagonals(system, n))[0]["width"] for n in (2, 4))
    assert not few.ok and "box-out" in few.measured and "round" in few.text
    assert more.ok
    bare = at_every_corner(replace(as_found(system), turn="round"))
    assert max(state.crack.widest for state in bare[OUTSIDE:]) < 0.05
    assert max(state.crack.widest for state in bare[:OUTSIDE]) > 1.0


@SYSTEMS
def test_turning_the_box_out_takes_no_crack_away(system):
    turned = at_every_corner(replace(as_found(system), turn="turned"))
    square = at_every_corner(as_found(system))
    shares = [max(each.share for each in states[OUTSIDE:]) for states in (square, turned)]
    assert shares[1] > shares[0]


def tried(system, random) -> dict:
    """What somebody tries who knows what helps: bars near the corners, mats, joints, box-outs."""
    bars = {
        "diagonals": random.choice(("none", THIN[system], THICK[system])),
        "diagonal_count": random.choice((1, 2, 4)),
        "edges": random.choice(("none", "none", THICK[system])),
        "turn": random.choice((*BOX_OUTS,)),
    }
    return bars | random.choice(({}, {}, HEAVY[system])) | random.choice(({}, {}, JOINTED))


def guessed(system, random) -> dict:
    """A blind guess from the whole ranges."""
    sizes = ("none", *{"SI": ("8", "10", "12", "16", "20"), "US": ("#3", "#4", "#5", "#6")}[system])
    return {
        "diagonals": random.choice(sizes),
        "diagonal_count": random.randint(1, 4),
        "diagonal_off": random.uniform(25.0, 1000.0),
        "diagonal_apart": random.uniform(40.0, 200.0),
        "edges": random.choice(sizes),
        "edge_off": random.uniform(25.0, 1000.0),
        "mat": random.choice(sizes),
        "spacing": random.uniform(75.0, 450.0),
        "cover": random.uniform(20.0, 90.0),
        "curing": random.uniform(1.0, 28.0),
        "joint": random.choice(("none", "saw", "joint")),
        "turn": random.choice((*BOX_OUTS,)),
    }


def by_box_out(draws) -> list[dict]:
    """Those with the same outline follow each other: then it is divided into triangles once."""
    return sorted(draws, key=lambda each: each["turn"])


@SYSTEMS
def test_a_search_finds_answers_of_several_kinds(system):
    draws = by_box_out(tried(system, random.Random(f"depot {k}")) for k in range(12))
    found = [each for each in draws if not failing(system, each)]
    kinds = {
        (each["diagonals"] != "none", "mat" in each, "joint" in each, each["turn"] == "round")
        for each in found
    }
    assert len(kinds) >= 3
    assert len(found) < len(draws) / 2


@SYSTEMS
def test_a_blind_guess_mostly_fails(system):
    draws = by_box_out(guessed(system, random.Random(f"blind {k}")) for k in range(6))
    assert sum(not failing(system, each) for each in draws) <= 1


@SYSTEMS
def test_each_single_failure_names_itself(system):
    good = diagonals(system, 4)
    close = {"SI": 50.0, "US": 1.75 * INCH}[system]
    assert failing(system, good | {"diagonal_apart": close}) == {"room"}
    assert failing(system, good | {"cover": {"SI": 20.0, "US": INCH}[system]}) == {"cover"}
    assert failing(system, good | {"curing": 1.0}) == {"cure"}
    assert failing(system, HEAVIER[system]) == {"steel"}
    assert failing(system, good | JOINTED) == {"joint"}
    assert failing(system, JOINTED | BOX_OUTS["turned"]) == {"joint"}
    assert "cure" in failing(system, good | {"curing": 28.0})


@SYSTEMS
def test_bars_that_are_too_few_yield(system):
    thin = {"diagonals": {"SI": "10", "US": "#3"}[system], "diagonal_count": 1}
    checks, outcome = assessed(system, thin)
    assert failing(system, thin) == {"width", "yield"}
    assert "give way where the floor narrows" in checks["yield"].text
    assert outcome.cornered.steel_stress == pytest.approx(outcome.structure.yield_strength)


@SYSTEMS
def test_of_bars_across_a_joint_no_more_are_asked_for(system):
    thin = {"diagonals": {"SI": "10", "US": "#3"}[system], "diagonal_count": 1}
    checks, _outcome = assessed(system, thin | JOINTED)
    assert not checks["yield"].ok and "none across a joint" in checks["yield"].text


@SYSTEMS
def test_bars_along_a_side_need_cover_beside_it(system):
    near = {"edge_off": {"SI": 25.0, "US": INCH}[system]}
    checks, _outcome = assessed(system, beside(system) | ROUND | near)
    assert not checks["cover"].ok and "beside the side of the corner" in checks["cover"].text


@SYSTEMS
def test_joints_are_told_how_far_they_open_and_what_fails_them(system):
    job = task(system)
    good, _outcome = assessed(system, JOINTED)
    assert "to spare" in good["joint"].text and "dowels" in good["joint"].text
    wide, _outcome = assessed(system, JOINTED | BOX_OUTS["turned"])
    assert "too wide" in wide["joint"].text and "turn it back" in wide["joint"].text
    through, _outcome = assessed(system, JOINTED | diagonals(system, 4))
    assert "bars through" in through["joint"].measured and "Leave them out" in through["joint"].text
    opens = max(s.crack.widest for s in at_every_corner(replace(job.structure, joint="joint")))
    assert 0.8 * JOINT[system] < opens < JOINT[system]


@SYSTEMS
def test_dowels_are_weighed_with_the_bars(system):
    job = task(system)
    _checks, outcome = assessed(system, JOINTED)
    jointed, budget = outcome.structure, job.budget
    lengths = joint_lengths(jointed)
    assert len(lengths) == len(outcome.cornered.corners)
    assert outcome.steel_mass == 0.0
    per_length = job.dowel.mass / job.dowel.every
    assert budget.spent(jointed, outcome) == pytest.approx(sum(lengths) * per_length, rel=0.05)
    bare = job.structure
    assert budget.spent(bare, bare.solve()) == 0.0
    checks, outcome = assessed(system, JOINTED | diagonals(system, 4))
    both = budget.spent(outcome.structure, outcome)
    assert both == pytest.approx(budget.spent(jointed, jointed.solve()) + outcome.steel_mass)
    assert job.spent_share(outcome.structure, outcome) == pytest.approx(both / job.most_steel)


def test_a_dowel_weighs_what_a_round_bar_weighs():
    """25 mm: 3.85 kg/m, from any table of bars."""
    assert task("SI").dowel.mass == pytest.approx(3.85 * 0.45, rel=2e-3)


@SYSTEMS
def test_a_joint_is_as_long_as_the_crack_whose_place_it_takes(system):
    lengths = joint_lengths(as_found(system))
    for length, state in zip(lengths, at_every_corner(as_found(system)), strict=True):
        assert state.crack.along[-1] == pytest.approx(length, rel=1e-6)


@SYSTEMS
def test_corners_that_mirror_each_other_fare_alike(system):
    """A slab that is alike left and right, with a mesh that is not."""
    for way in ({}, diagonals(system, 4), diagonals(system, 2), JOINTED):
        floor, _moved = fitted(as_found(system), way)
        pairs = at_every_corner(floor)
        for left, right in ((0, 1), (2, 5), (3, 4)):
            openings = [pairs[k].crack.widest for k in (left, right)]
            assert openings[0] == pytest.approx(openings[1], rel=0.03, abs=0.02)
            x = [pairs[k].corner.at[0] for k in (left, right)]
            assert sum(x) == pytest.approx(floor.length, abs=1.0)


@SYSTEMS
def test_the_age_and_the_corner_that_are_looked_at_do_not_matter(system):
    elsewhere = {"age": 900.0, "look": 4}
    assert failing(system, diagonals(system, 4) | elsewhere) == set()
    assert failing(system, diagonals(system, 2) | {"age": 28.0, "look": 2}) == {"width"}
    floor = as_found(system)
    assert at_every_corner(replace(floor, age=28.0, look=3)) is at_every_corner(floor)
    assert floor.age == YEAR


@SYSTEMS
def test_every_corner_is_looked_at_once(system):
    for turn in BOX_OUTS:
        states = at_every_corner(replace(as_found(system), turn=turn))
        assert [state.worst for state in states] == list(range(len(states[0].corners)))


@SYSTEMS
def test_the_job_never_changes_whatever_is_chosen(system):
    for way in ways(system).values():
        assert "givens" not in assessed(system, way)[0]
    assert "givens" in failing(system, {"humidity": 0.9})
    assert "givens" in failing(system, {"holds": 0.1})
    assert "givens" in failing(system, {"box": 600.0})


@SYSTEMS
def test_every_check_is_told_in_the_readers_units(system):
    light = {"diagonals": THIN[system], "diagonal_count": 1, "curing": 28.0}
    for way in (*ways(system).values(), {}, SAWN, HEAVIER[system], light):
        checks, _outcome = assessed(system, way)
        assert all(c.measured and c.wanted and c.text for c in checks.values())
        words = " ".join(c.measured + c.wanted + c.text for c in checks.values())
        assert "{" not in words
        for unit, of in (("mm", "SI"), ("kg", "SI"), ("in", "US"), ("lb", "US")):
            assert (f"\u202f{unit}" in words) == (system == of)


@SYSTEMS
def test_what_is_off_is_told_in_numbers(system):
    job = task(system)
    checks, outcome = assessed(system, HEAVIER[system])
    off = job.budget.spent(outcome.structure, outcome) - job.most_steel
    pounds = off if system == "SI" else off / 0.45359237
    assert f"{pounds:.1f}" in checks["steel"].text
    checks, _outcome = assessed(system, {})
    width, wanted, off = (
        float(text.split("\u202f")[0])
        for text in (checks["width"].measured, checks["width"].wanted, checks["width"].text)
    )
    assert off == pytest.approx(width - wanted, abs=0.011 if system == "SI" else 2e-4)


@SYSTEMS
def test_the_goals_speak_of_limits_and_budget(system):
    goals = " ".join(task(system).goals(system))
    told = {
        "SI": ("0.30\u202fmm", "900.0\u202fkg", "25\u202fmm", "3.00\u202fmm", "32\u202fmm"),
        "US": ("0.0118\u202fin", "2000.0\u202flb", "1.00\u202fin", "0.1200\u202fin"),
    }[system]
    assert all(text in goals for text in (*told, "3\u202fd", "14\u202fd"))


@SYSTEMS
def test_the_lighter_good_answer_scores_better(system):
    job, scores = task(system), {}
    for name, way in ways(system).items():
        checks, outcome = assessed(system, way)
        scores[name] = job.score(checks.values(), outcome)
    order = sorted(scores, key=scores.get, reverse=True)
    assert order[0] == "fewer of them and a round box-out"
    assert order[-2:] == ["joints with dowels", "a mat"]
    assert 1.0 < scores["a mat"] < 1.3 < 1.8 < scores["joints with dowels"]


def test_what_is_free_is_really_there_and_everything_else_is_locked():
    job = task()
    shown = fitted(job.structure, HEAVY["SI"] | diagonals("SI", 2) | beside("SI") | SAWN)[0]
    assert all(input_at(shown, path) for path in job.free)
    assert not set(job.free) & set(job.locked)
    assert {"humidity", "holds", "box", "cut_x", "strength", "fibres"} <= set(job.locked)
