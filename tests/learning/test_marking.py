"""A prediction is marked by mechanics, and each mistake is told why."""

from functools import cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from crackkit.learning.floor import one_span_loaded
from crackkit.learning.marking import mark_bar, mark_cracks, mark_stretch
from crackkit.structures.simple_beam import PointLoad, SimpleBeam

ALL = frozenset(range(24))
FEW = frozenset(range(4, 20))


@cache
def outcome(kind: str):
    beams = {
        "plain": SimpleBeam(),
        "light": SimpleBeam(span=3000, uniform_load=0.0, loads=(PointLoad(2e3, 1500.0),)),
        "idle": SimpleBeam(self_weight=False, uniform_load=0.0, loads=(PointLoad(0.0, 3000.0),)),
        "hanging": SimpleBeam(
            span=4000, overhang_right=2000, uniform_load=0.0, loads=(PointLoad(90e3, 6000.0),)
        ),
        "both": SimpleBeam(
            span=6000,
            overhang_right=2000,
            uniform_load=12.0,
            loads=(PointLoad(40e3, 3000.0), PointLoad(40e3, 8000.0)),
        ),
    }
    return beams[kind].solve()


def kinds(marking) -> set[str]:
    return {remark.kind for remark in marking.remarks}


def said(marking, kind: str) -> str:
    return " ".join(remark.text for remark in marking.remarks if remark.kind == kind)


def test_the_whole_bottom_of_a_loaded_span_is_right():
    marking = mark_stretch({"bottom": ALL, "top": set()}, outcome("plain"))
    assert marking.right and marking.score == 1.0 and kinds(marking) == {"right"}
    assert "smile" in said(marking, "right") and "longer" in said(marking, "right")


def test_leaving_out_the_weak_ends_still_passes_and_says_so():
    marking = mark_stretch({"bottom": FEW}, outcome("plain"))
    assert marking.right and 0.8 < marking.score < 1.0
    assert kinds(marking) == {"right", "missed"} and "Only a little" not in marking.headline


def test_painting_the_loaded_face_is_wrong_because_it_gets_shorter():
    marking = mark_stretch({"top": ALL}, outcome("plain"))
    assert not marking.right and marking.score == 0.0
    assert "shorter" in said(marking, "wrong") and "far side" in said(marking, "wrong")
    assert "longer" in said(marking, "missed")


def test_painting_everything_cannot_pass():
    marking = mark_stretch({"top": ALL, "bottom": ALL}, outcome("plain"))
    assert not marking.right and marking.score == pytest.approx(0.5, abs=0.05)


def test_painting_nothing_scores_nothing_where_something_is_stretched():
    assert mark_stretch({}, outcome("plain")).score == 0.0


def test_painting_nothing_is_right_where_nothing_bends():
    assert mark_stretch({}, outcome("idle")).right
    marking = mark_stretch({"bottom": {3, 4}}, outcome("idle"))
    assert not marking.right and "Nothing bends" in said(marking, "wrong")


def test_the_cell_at_the_support_counts_neither_way():
    with_end = mark_stretch({"bottom": ALL}, outcome("plain"))
    without = mark_stretch({"bottom": ALL - {0, 23}}, outcome("plain"))
    assert with_end.score == without.score and with_end.remarks == without.remarks


def test_the_top_past_a_support_is_explained_by_the_hanging_end():
    marking = mark_stretch({"top": ALL}, outcome("hanging"))
    assert marking.score > 0.7 and "hangs down" in said(marking, "right")
    wrong = mark_stretch({"bottom": ALL}, outcome("hanging"))
    assert not wrong.right and "hangs down" in said(wrong, "wrong")
    assert "shorter" in said(wrong, "wrong")


def test_forgetting_one_whole_zone_does_not_pass_however_good_the_rest():
    both = outcome("both")
    top = next(zone for zone in both.tension if zone.face == "top")
    length = both.structure.length
    cells = {k for k in range(24) if top.start < (k + 0.5) * length / 24 < top.end}
    assert mark_stretch({"bottom": ALL - cells, "top": cells}, both).right
    assert not mark_stretch({"bottom": ALL - cells}, both).right


@settings(deadline=None)  # the first example solves the beam, the others find it solved
@given(st.sets(st.integers(0, 23)), st.sets(st.integers(0, 23)))
def test_every_painting_gets_a_score_and_a_reason(bottom, top):
    for kind in ("plain", "hanging", "idle"):
        marking = mark_stretch({"bottom": bottom, "top": top}, outcome(kind))
        assert 0.0 <= marking.score <= 1.0 and marking.remarks
        assert all(r.text and r.start <= r.end for r in marking.remarks)


@settings(deadline=None)  # the first example solves the beam, the others find it solved
@given(st.sets(st.integers(2, 21)), st.integers(2, 21))
def test_painting_one_more_stretched_cell_never_lowers_the_score(painted, cell):
    before = mark_stretch({"bottom": painted}, outcome("plain")).score
    assert mark_stretch({"bottom": painted | {cell}}, outcome("plain")).score >= before


def test_more_cells_tell_the_same_story():
    marking = mark_stretch({"bottom": range(48)}, outcome("plain"), cells=48)
    assert marking.right and marking.score == 1.0


def test_a_crack_near_the_middle_of_the_bottom_is_right():
    marking = mark_cracks([("bottom", 2900.0), ("bottom", 4000.0)], outcome("plain"))
    assert marking.right and marking.score == 1.0 and kinds(marking) == {"right"}


def test_a_crack_where_the_load_touches_is_told_why_not():
    marking = mark_cracks([("top", 3000.0)], outcome("plain"))
    assert not marking.right and marking.score == 0.0
    assert "The load presses here" in said(marking, "wrong") and "squeezed" in said(
        marking, "wrong"
    )


def test_a_crack_beside_the_support_is_stretched_but_not_enough():
    marking = mark_cracks([("bottom", 250.0), ("bottom", 3000.0)], outcome("plain"))
    assert not marking.right and "% of what the concrete can bear" in said(marking, "wrong")


def test_marks_far_from_the_first_crack_are_told_where_it_opens():
    marking = mark_cracks([("bottom", 1200.0)], outcome("plain"))
    assert not marking.right and 0.5 < marking.score < 1.0
    assert "3.00" in said(marking, "missed")


def test_the_place_of_the_first_crack_is_told_in_the_readers_units():
    marking = mark_cracks([("bottom", 1200.0)], outcome("plain"), "US")
    assert "9.8\u202fft" in said(marking, "missed")


def test_both_stretches_that_crack_need_a_mark():
    both = outcome("both")
    assert {zone.face for zone in both.tension if zone.cracked} == {"top", "bottom"}
    half = mark_cracks([("bottom", 3000.0)], both)
    assert not half.right and "Cracks open here too" in said(half, "missed")
    top = next(zone.at for zone in both.tension if zone.face == "top")
    assert mark_cracks([("bottom", 3000.0), ("top", top)], both).right


def test_no_mark_is_right_where_nothing_cracks():
    assert not outcome("light").cracks
    assert mark_cracks([], outcome("light")).right
    assert not mark_cracks([("bottom", 1500.0)], outcome("light")).right


def test_no_mark_is_wrong_where_something_cracks():
    marking = mark_cracks([], outcome("plain"))
    assert not marking.right and marking.score == 0.0 and kinds(marking) == {"missed"}


@pytest.mark.parametrize(
    ("case", "face", "right"),
    [
        ("plain", "bottom", True),
        ("plain", "top", False),
        ("plain", "middle", False),
        ("plain", "both", False),
        ("hanging", "top", True),
        ("hanging", "bottom", False),
        ("both", "both", True),
        ("both", "bottom", False),
        ("light", "bottom", True),
        ("idle", "bottom", False),
    ],
)
def test_the_bar_belongs_where_the_concrete_is_stretched(case, face, right):
    marking = mark_bar(face, outcome(case))
    assert marking.right is right and (marking.score == 1.0) is right


def test_a_bar_on_the_squeezed_side_crosses_no_crack():
    assert "crosses no crack" in mark_bar("top", outcome("plain")).remarks[0].text


def test_the_bar_can_be_asked_for_at_one_place():
    assert mark_bar("top", outcome("both"), at=6000.0).right
    assert not mark_bar("bottom", outcome("both"), at=6000.0).right


def test_an_unknown_face_is_named():
    with pytest.raises(ValueError, match="bottom, top, middle, both"):
        mark_bar("left", outcome("plain"))


def test_a_span_lifted_by_its_neighbours_is_not_said_to_frown_over_a_support():
    outcome = one_span_loaded("SI").solve()
    said = " ".join(remark.text for remark in mark_stretch({}, outcome, 36).remarks)
    assert "Over the support, and on into the span that is lifted" in said
    middle = mark_stretch({"bottom": range(16, 21)}, outcome, 36)
    wrong = [remark.text for remark in middle.remarks if remark.kind == "wrong"]
    assert wrong == [
        "The neighbours lift this span, so it bends like a frown: the bottom gets shorter, so it "
        "is squeezed, not stretched."
    ]


def test_a_zone_that_was_left_out_altogether_is_told_why_though_it_is_weak():
    outcome = one_span_loaded("SI").solve()
    painted = {"bottom": range(0, 11), "top": range(10, 25)}
    missed = [r for r in mark_stretch(painted, outcome, 36).remarks if r.kind == "missed"]
    assert "smile" in missed[-1].text and missed[-1].start > outcome.structure.places[2]
