"""The first lesson: a hanger is pulled until it cracks; its scene, its walk, what it promises."""

from dataclasses import replace

from crackkit.learning.finish import Needs
from crackkit.learning.telling import shown
from crackkit.learning.walk import Walk, WalkStep
from crackkit.structures.fields import fitted
from crackkit.structures.outcome import TIGHT, TOO_WIDE, UNHELD
from crackkit.structures.tension_member import JUST_PAST, TensionMember
from crackkit.units.quantities import FOOT, INCH, KIP, PSI
from crackkit.words import _

LESSON = "01_pull"
NEEDS = Needs(
    LESSON,
    calls=("first", "bare", "next", "thin"),
    passed=("shed_tie",),
    answers=4,
)
# A hanger of a market hall: 150 mm square, 1.5 m long, one bar in its middle.
_IN_METRES = {
    "length": 1500.0,
    "width": 150.0,
    "depth": 150.0,
    "number": 1,
    "size": "20",
    "cover": 35.0,
    "seed": 10,
    "strength": 30.0,
    "code": "EN",
    "yield_strength": 500.0,
}
# The same for those who build in feet: 6 in square, 5 ft long.
_IN_FEET = {
    "length": 5 * FOOT,
    "width": 6 * INCH,
    "depth": 6 * INCH,
    "number": 1,
    "size": "#6",
    "cover": 1.5 * INCH,
    "strength": 4000 * PSI,
    "code": "ACI",
    "yield_strength": 60_000 * PSI,
}
FULL = {"SI": 80e3, "US": 18 * KIP}  # pull of the canopy under snow
THIN = {"SI": "10", "US": "#3"}  # four of them weigh what the one thick bar weighs
DRIED = 0.0003  # free shortening before the canopy was hung on it [-]


def hanger(system: str = "SI") -> TensionMember:
    """Give a hanger of a market hall, in round numbers, with one thick bar; nothing pulls yet."""
    return TensionMember(**(_IN_FEET if system == "US" else _IN_METRES))


def bare_hanger(system: str = "SI") -> TensionMember:
    """Give the same hanger without a bar."""
    return replace(hanger(system), number=0)


def thin_hanger(system: str = "SI") -> TensionMember:
    """Give the same hanger with the same steel as four thin bars, under the full pull."""
    return replace(hanger(system), number=4, size=THIN[system], pull=FULL[system])


def first_pull(tie: TensionMember) -> float:
    """Pull at which the first crack comes, and a hair more [N]."""
    return tie.solve().pulled.first_pull * JUST_PAST


def walk(system: str = "SI") -> Walk:
    """Give the guided walk through the panel."""
    return Walk(_steps, system)


def _steps(system: str) -> tuple[WalkStep, ...]:
    start = _start(system)
    thin = start | {"number": 4, "size": THIN[system], "pull": FULL[system]}
    return (
        _bare_step(system, start),
        _first_step(system, start),
        _full_step(system, start),
        _thin_step(system, thin),
        WalkStep(
            _("The canopy is taken down for repair: press Let go. What becomes of the cracks?"),
            thin | {"pull": 0.0, "before": FULL[system]},
            _(
                "They get narrower, but they do not shut, and none of them goes away. Broken "
                "concrete does not grow together again. Look at the small diagram: the dot has "
                "come down, but the hanger stays a little longer than it was."
            ),
        ),
        WalkStep(
            _(
                "The same four bars, but smooth: under Bars choose a plain surface. The full pull "
                "is on."
            ),
            thin | {"surface": "plain"},
            _(
                "The concrete cannot grip smooth bars well. It takes a long way to hand the pull "
                "back to it, so there are few cracks, and each is wide. Ribs make fine cracks."
            ),
            from_start=True,
        ),
        WalkStep(
            _(
                "Ribbed bars again, and ten hangers from ten trucks: under Concrete tick 'Ten of "
                "them side by side'. Do they crack alike?"
            ),
            thin | {"beside": True},
            _(
                "No two are alike: each cracks where its own concrete happens to be weakest. But "
                "all have about as many cracks, and all their cracks are fine. You cannot say "
                "where, you can say how wide."
            ),
            from_start=True,
        ),
    )


def _start(system: str) -> dict:
    """What brings the panel back to the hanger as it is at first."""
    tie = hanger(system)
    return {
        "number": 1,
        "size": tie.size,
        "surface": "ribbed",
        "pull": 0.0,
        "before": 0.0,
        "beside": False,
    }


def _bare_step(system: str, start: dict) -> WalkStep:
    bare = bare_hanger(system)
    first = first_pull(bare)
    return WalkStep(
        _(
            "Take the bar out: under Bars choose none. Then go back to Pull and press Next crack, "
            "or drag the white dot at the right end outwards."
        ),
        start | {"number": 0, "pull": first},
        _(
            "At {pull} it cracks, the crack goes right through, and it is over: one part of it "
            "stays up, the other comes down. There was no sign before. Concrete alone must never "
            "hang."
        ).format(pull=shown(first, "force", system)),
    )


def _first_step(system: str, start: dict) -> WalkStep:
    first = first_pull(hanger(system))
    return WalkStep(
        _("Put the one thick bar back in, and press Next crack once. Does it come down?"),
        start | {"pull": first},
        _(
            "It cracks at about the same pull: a bar does not prevent the crack. But now the bar "
            "crosses it and carries all of the pull there. A little away from the crack the "
            "concrete has taken part of it again: look at band 3."
        ),
        from_start=True,
    )


def _full_step(system: str, start: dict) -> WalkStep:
    return WalkStep(
        _("Go on pressing Next crack, or pull up to {pull}.").format(
            pull=shown(FULL[system], "force", system)
        ),
        start | {"pull": FULL[system]},
        _(
            "One crack after the other, each in a piece that was still long enough to fill up "
            "with stress. Where the pieces are short, no new crack can come any more: the cracks "
            "that are there just get wider."
        ),
    )


def _thin_step(system: str, thin: dict) -> WalkStep:
    return WalkStep(
        _(
            "The same weight of steel as four thin bars: under Bars choose four of size {size}. "
            "The pull stays."
        ).format(size={"SI": "10 mm", "US": "#3"}[system]),
        thin,
        _(
            "The pull in the steel is the same, but there are more cracks, and they are much "
            "finer. Four thin bars have twice the skin of one thick bar: the concrete grips them "
            "better, takes its share back sooner, and cracks again sooner."
        ),
    )


def promises() -> dict[str, bool]:
    """Check what the lesson tells its readers against the mechanics, in both unit systems."""
    found = {}
    for system in ("SI", "US"):
        told = _walk_promises(system) | _other_promises(system)
        found |= {f"{system}: {text}": kept for text, kept in told.items()}
    return found


def _after(system: str, changes: dict):
    return fitted(hanger(system), changes)[0].solve()


def widest(outcome) -> float:
    """Width of the widest crack [mm]; 0 without a crack."""
    return max((crack.width.governing for crack in outcome.cracks), default=0.0)


def _walk_promises(system: str) -> dict[str, bool]:
    bare, first, full, thin, free, plain, ten = (_after(system, s.changes) for s in walk(system))
    others = ten.pulled.siblings
    return {
        "without a bar it parts at the first crack": bare.verdict.key == UNHELD
        and len(bare.cracks) == 1,
        "a bar does not prevent the crack": abs(first.pulled.pull / bare.pulled.pull - 1) < 0.15,
        "but holds it": len(first.cracks) == 1 and first.verdict.key != UNHELD,
        "one after the other": len(full.cracks) >= 4,
        "one thick bar leaves cracks too wide": full.verdict.key == TOO_WIDE,
        "thin bars are tight": thin.verdict.key == TIGHT,
        "more cracks": len(thin.cracks) >= 1.25 * len(full.cracks),
        "and much finer ones": widest(thin) < 0.7 * widest(full),
        "the same pull in the steel": abs(
            thin.pulled.steel_at_crack / full.pulled.steel_at_crack - 1
        )
        < 0.01,
        "the same weight": abs(thin.steel_mass / full.steel_mass - 1) < 0.01,
        "cracks stay when it lets go": len(free.cracks) == len(thin.cracks),
        "narrower, not shut": 0.2 * widest(thin) < widest(free) < 0.8 * widest(thin),
        "it stays longer than it was": free.movement.largest > 0.0,
        "smooth bars: fewer and wider": len(plain.cracks) < 0.6 * len(thin.cracks)
        and widest(plain) > 1.8 * widest(thin),
        "no two crack alike": len({tuple(one.cracks) for one in others}) == len(others),
        "about as many": all(0.6 < one.cracks.size / len(thin.cracks) < 1.5 for one in others),
        "and all fine": all(float(one.widths.max()) < 0.7 * widest(full) for one in others),
    }


def _other_promises(system: str) -> dict[str, bool]:
    thin = thin_hanger(system)
    full = thin.solve()
    dried = replace(thin, shrinkage=DRIED).solve()
    bars_alone = full.pulled.bare_strain
    rules = dict(full.pulled.rules.by_rule)
    return {
        "squeezed it bears ten times as much": thin.strength / thin.tensile > 10.0,
        "smooth bars: two to three times as wide": 2.0
        < widest(replace(thin, surface="plain").solve()) / widest(full)
        < 3.0,
        "concrete between the cracks helps": 0.5 < full.pulled.now.mean_strain / bars_alone < 0.95,
        "dried concrete cracks sooner": dried.pulled.first_pull < 0.8 * full.pulled.first_pull,
        "twice the skin": abs(thin.sample.perimeter / hanger(system).sample.perimeter - 2.0) < 0.03,
        "rules and bond differ": max(rules.values()) > 1.15 * widest(full),
        "rules go from about 0.15 to 0.3 mm": 0.13 < min(rules.values()) < 0.17
        and 0.27 < max(rules.values()) < 0.34,
        "the picture says 0.17 mm": 0.165 < widest(full) < 0.175,
        "its bars are covered as they should be": [c.key for c in full.cautions] == ["estimate"],
        "more cover widens what EN says": _en(thin, 1.25 * thin.cover) > 1.03 * rules["en_2004"],
        "and changes nothing along the bars": widest(replace(thin, cover=1.25 * thin.cover).solve())
        == widest(full),
    }


def _en(tie: TensionMember, cover: float) -> float:
    return dict(replace(tie, cover=cover).solve().pulled.rules.by_rule)["en_2004"]
