"""What the lesson on the sandbox tells its readers, checked against the mechanics."""

from crackkit.sandbox.answers import judged_width
from crackkit.sandbox.cantilever import Cantilever
from crackkit.sandbox.comparison import compare
from crackkit.sandbox.continuous_beam import ContinuousBeam
from crackkit.sandbox.corner_slab import CornerSlab
from crackkit.sandbox.crack_control import CrackControl
from crackkit.sandbox.curled_slab import CurledSlab
from crackkit.sandbox.ground_slab import GroundSlab
from crackkit.sandbox.reports import report
from crackkit.sandbox.simple_beam import SimpleBeam
from crackkit.sandbox.sweeps import sweep
from crackkit.sandbox.tension_member import TensionMember
from crackkit.sandbox.wrong_input import WrongInput
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNCRACKED, UNHELD
from crackkit.words import _


def gate_beam() -> SimpleBeam:
    """Give the beam over the gate of the bus depot, as the lesson types it."""
    inner = SimpleBeam(
        span="18 ft",
        width="12 in",
        depth="20 in",
        bars="3 #6",
        cover="1.5 in",
        concrete="4000 psi",
        dead="0.8 kip/ft",
        point_load="12 kip at 10 ft",
    )
    loads = "9 kip at 0.5 ft, 12 kip at 16 ft"
    return inner.but(overhang_left="6 ft", top_bars="4 #6", point_load=loads)


def store_beam() -> SimpleBeam:
    """Give the beam over the tool store, as the lesson types it in metres."""
    return SimpleBeam(
        span="5.5 m",
        width="300 mm",
        depth="500 mm",
        bars="3 x 20 mm",
        cover="40 mm",
        concrete="30 MPa",
        dead="12 kN/m",
        point_load="53 kN at 3 m",
    )


def landing() -> Cantilever:
    """Give the landing outside the office of the depot, as the lesson types it."""
    return Cantilever(
        overhang="2 m",
        wall="400 mm",
        depth="180 mm",
        tip_depth="140 mm",
        top="12 @ 150",
        cover="35 mm",
        load="5 kN/m2",
        point_load="5 kN at 1.9 m",
    )


def tyre_store() -> ContinuousBeam:
    """Give the floor of the tyre store, as the lesson types it."""
    return ContinuousBeam(
        spans="16, 20, 16 ft",
        depth="8 in",
        bottom="#4 @ 8 in",
        top="#5 @ 8 in",
        top_reach="5 ft",
        cover="1.5 in",
        dead="20 psf",
        live="120 psf",
    )


def hanger() -> TensionMember:
    """Give the hanger of the canopy over the pumps, as the lesson types it."""
    return TensionMember(pull="100 kN", bars="1 x 25 mm", cover="35 mm", exposure="moist")


def cistern_deck() -> CrackControl:
    """Give the deck over the rain cistern of the depot, as the lesson types it."""
    return CrackControl(
        bars="16 @ 200", moment="50 kNm", depth="220 mm", cover="35 mm", duration="lasting"
    )


def promises() -> dict[str, bool]:
    """Give each promise with whether it is kept."""
    bent = _of_the_gate() | _of_the_metric_beam() | _of_the_landing() | _of_the_tyre_store()
    pulled = _of_the_hanger() | _of_the_deck()
    floors = _of_the_wash_floor() | _of_the_panel() | _of_the_waiting_room()
    return bent | pulled | floors | _of_typing()


def _of_the_landing() -> dict[str, bool]:
    arm = landing()
    trodden = sweep(arm, "trodden", "0 mm", "30 mm", steps=4).course.governing
    short = arm.but(behind="100 mm", hook=False)
    return {
        "the landing is tight as drawn": _verdict(arm) == TIGHT,
        "trodden 30 mm its crack grows too wide": _verdict(arm.but(trodden="30 mm")) == TOO_WIDE,
        "trodden 60 mm nothing holds it": _verdict(arm.but(trodden="60 mm")) == UNHELD,
        "the deeper the wider": bool((trodden[1:] > trodden[:-1]).all()),
        "its bars build up all of their strength": "all of" in arm.told[0].sentences[0],
        "without hook and reach they build up a part": "%" in short.told[0].sentences[0],
        "the load per area is told": "strip" in arm.notes[0],
    }


def _of_the_tyre_store() -> dict[str, bool]:
    floor = tyre_store()
    found, short = floor.outcome.range, floor.but(top_reach="1 ft")
    loads = found.arrangement("top", found.widest.at)
    moment = floor.told[2].rows[0]
    return {
        "the floor is tight": _verdict(floor) == TIGHT,
        "its widest crack is in the top, over the second post": found.widest.face == "top"
        and abs(found.widest.at - floor.structure.places[1]) < 1.0,
        "for the two spans beside it": loads.spans == (1, 2),
        "no stretch is without a guard": found.gaps == (),
        "short top bars leave some": len(short.outcome.range.gaps) > 0,
        "the worst arrangement can be shown": floor.worst.texts["live_on"] == [1, 2],
        "a post that sinks moves the moments": floor.but(settled="B 0.25 in").told[2].rows[0]
        != moment,
    }


def _of_the_hanger() -> dict[str, bool]:
    thick, thin = hanger(), hanger().but(bars="4 x 12 mm")
    steel = [case.outcome.steel_mass for case in (thick, thin)]
    bars = sweep(thin, "bars", "2 x 12 mm", "6 x 12 mm").course.governing
    return {
        "cracks of the hanger go right through": {c.face for c in thick.outcome.cracks} == {"both"},
        "four thin bars hold less steel": steel[1] < steel[0],
        "and more cracks": len(thin.outcome.cracks) > len(thick.outcome.cracks),
        "that are narrower": _width(thin) < _width(thick),
        "more bars, narrower cracks": bool((bars[1:] < bars[:-1]).all()),
    }


def wash_floor() -> GroundSlab:
    """Give the wash floor of the depot between its walls, as the lesson types it."""
    return GroundSlab(length="24 m", left=1, right=1, age="2 years")


def _of_the_wash_floor() -> dict[str, bool]:
    bare = wash_floor()
    joints, bars = bare.but(joints="4.5 m"), bare.but(bars="12 @ 90")
    opened = [joint.opening for joint in joints.outcome.ground.joints]
    return {
        "the wash floor cracks once": len(bare.outcome.ground.wild) == 1,
        "its joints lead the crack": not joints.outcome.ground.wild and max(opened) > 1.0,
        "its bars share the movement out": _verdict(bars) == TIGHT
        and len(bars.outcome.ground.wild) > 10,
        "and the base alone is told": "By the base alone" in str(bare),
    }


def dry_panel() -> CurledSlab:
    """Give a panel of the depot's drying room, a trolley on its corner, as the lesson types it."""
    return CurledSlab(
        length="4.5 m",
        thickness="100 mm",
        load="9 kN",
        along="150 mm",
        across="150 mm",
        curing="3 d",
        shrinks="0.5 ‰",
        age="42 d",
    )


def _of_the_panel() -> dict[str, bool]:
    bare, barred = dry_panel(), dry_panel().but(bars="8 @ 150", cover="30 mm")
    curled = bare.outcome.curled
    return {
        "nothing holds the corner of the panel": _verdict(bare) == UNHELD,
        "it breaks from above": curled.line.face == "top" and curled.line.corner,
        "thick enough it holds": _verdict(bare.but(thickness="150 mm")) == UNCRACKED,
        "a mat near the top holds the corner": _verdict(barred) == TIGHT,
    }


def waiting_room() -> CornerSlab:
    """Give the floor round the ticket office of the depot, as the lesson types it."""
    return CornerSlab(length="7 m", width="6 m", cut="3.5 m x 3 m", holds="10 %")


def _of_the_waiting_room() -> dict[str, bool]:
    bare = waiting_room()
    near = bare.but(diagonals="4 x 16 mm at 30 mm")
    far = bare.but(diagonals="4 x 16 mm at 600 mm")
    joint = bare.but(joint="joint").outcome
    return {
        "a crack stands in the waiting room": _verdict(bare) == UNHELD,
        "bars at the corner keep it fine": _verdict(near) == TIGHT,
        "the same bars drawn away do not": _width(far) > far.outcome.verdict.limit.width
        and abs(far.outcome.steel_mass - near.outcome.steel_mass) < 0.01,
        "a joint opens instead": joint.verdict.key == UNCRACKED
        and joint.cornered.crack.widest > 1.0,
    }


def _of_the_deck() -> dict[str, bool]:
    thick, thin = cistern_deck(), cistern_deck().but(bars="10 @ 80")
    steel = [case.outcome.control.mass for case in (thick, thin)]
    return {
        "the deck's width is a metre": thick.structure.width == 1000.0,
        "with thick bars its cracks are too wide": _verdict(thick) == TOO_WIDE,
        "thin bars close together hold them": _verdict(thin) == TIGHT,
        "and are no heavier": steel[1] <= steel[0],
        "under the same moment": thin.outcome.control.load == thick.outcome.control.load == 50e6,
    }


def _of_the_gate() -> dict[str, bool]:
    gate = gate_beam()
    trodden = gate.but(top_drop="3 in")
    swept = sweep(gate, "top_drop", "0 in", "5 in").course.governing
    return {
        "the gate beam is tight as drawn": _verdict(gate) == TIGHT,
        "trodden top bars let a crack grow too wide": _verdict(trodden) == TOO_WIDE,
        "the widest crack doubles": 1.8 < _width(trodden) / _width(gate) < 2.2,
        "it moves from under the load to over the post": (_face(gate), _face(trodden))
        == ("bottom", "top"),
        "without top bars nothing holds": _verdict(gate.but(top_bars="none")) == UNHELD,
        "the deeper they lie the wider the crack": bool((swept[1:] > swept[:-1]).all()),
        "the report says who decides": "engineer decide" in report(gate).html(),
    }


def _of_the_metric_beam() -> dict[str, bool]:
    beam = store_beam()
    lasting, thin = beam.but(duration="lasting"), beam.but(bars="5 x 16 mm")
    return {
        "the metric beam is judged by EN": beam.structure.code == "EN",
        "a load that stays opens the crack": _width(lasting) > _width(beam),
        "thin bars narrow it": _width(thin) < _width(beam),
        "a comparison has a column each": len(compare(beam, lasting, thin).rows[0]) == 4,
    }


def _of_typing() -> dict[str, bool]:
    gate, mixed = gate_beam(), gate_beam().but(span="5.4864 m", cover="38.1 mm")
    return {
        "the same beam in other units gives the same width": abs(_width(gate) - _width(mixed))
        < 1e-9,
        "a number without a unit is refused": _refused(span=20),
        "a misspelled name is refused": _refused(spam="20 ft"),
    }


def _verdict(case) -> str:
    return case.outcome.verdict.key


def _face(case) -> str:
    return case.outcome.widest.face


def _width(case) -> float:
    return judged_width(case.outcome).governing


def _refused(**typed) -> bool:
    try:
        SimpleBeam(**typed)
    except WrongInput:
        return True
    return False


def kept() -> str:
    """Say that all promises are kept.

    Raises
    ------
    AssertionError
        Naming those that are not.
    """
    found = promises()
    broken = [promise for promise, is_kept in found.items() if not is_kept]
    if broken:
        raise AssertionError("; ".join(broken))
    return _("All {n} promises of this lesson are kept.").format(n=len(found))
