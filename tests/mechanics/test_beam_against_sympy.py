"""Beams against SymPy's continuum-mechanics beam, in exact fractions."""

import numpy as np
import pytest
from sympy import Rational, Symbol, integrate, lambdify, linsolve, symbols
from sympy.physics.continuum_mechanics.beam import Beam

from crackkit.mechanics.beam import LineLoad, PointLoad, Support, solve

EI = 7
# Lengths 10 to 15, supports (place, kind, settlement x 100), line loads (start, end, left, right),
# point loads (force, place).
CASES = {
    "fixed end, unequal spans, free end": (
        12, [(0, "fixed", 0), (4, "pin", 0), (10, "pin", 0)], [(0, 6, 3, 3)], [(5, 7), (2, 12)]
    ),
    "fixed at both ends, partial loads": (
        15, [(0, "fixed", 0), (6, "pin", 0), (15, "fixed", 0)], [(1, 4, 2, 2), (5, 9, 6, 6)],
        [(4, 12)],
    ),
    "three spans, overhangs, settlements": (
        14, [(1, "pin", 1), (4, "pin", -2), (9, "pin", 3), (13, "pin", 0)], [(0, 14, 2, 2)],
        [(3, 0), (6, 8)],
    ),
    "trapezoid on a settled, fixed beam": (
        10, [(0, "fixed", 0), (7, "pin", 4)], [(2, 9, 1, 8)], [(1, 3)]
    ),
    "free end with a fixed start, statically determinate": (
        10, [(0, "fixed", 0)], [(3, 8, 2, 2)], [(4, 10)]
    ),
}  # fmt: skip


def sympy_beam(length, supports, lines, points):
    """Moment, shear and deflection by SymPy, signs turned to ours, and the upward reactions.

    SymPy takes loads as it takes reactions, upward; with our downward loads its shear and moment
    come out as ours do. Its solver leaves EI out of the elastic line and its sign is the other
    one, so a settlement enters as -EI times its value.
    """
    beam, unknowns = Beam(length, 1, 1), []
    for i, (at, kind, sunk) in enumerate(supports):
        unknowns.append(Symbol(f"R{i}"))
        beam.apply_load(unknowns[-1], at, -1)
        beam.bc_deflection.append((at, -EI * Rational(sunk, 100)))
        if kind == "fixed":
            unknowns.append(Symbol(f"M{i}"))
            beam.apply_load(unknowns[-1], at, -2)
            beam.bc_slope.append((at, 0))
    for start, end, left, right in lines:
        beam.apply_load(left, start, 0, end=end)
        if right != left:
            beam.apply_load(Rational(right - left, end - start), start, 1, end=end)
    for force, at in points:
        beam.apply_load(force, at, -1)
    beam.solve_for_reaction_loads(*unknowns)
    moment, shear = beam.bending_moment(), beam.shear_force()
    deflection = elastic_line(moment, beam.variable, supports)
    pushes = [-beam.reaction_loads[Symbol(f"R{i}")] for i in range(len(supports))]
    return beam.variable, moment, shear, deflection, pushes


def elastic_line(moment, x, supports):
    """Twice integrated curvature; the first two conditions fix the constants."""
    a, b = symbols("a b")
    slope = -integrate(moment, x) / EI + a
    line = integrate(slope, x) + b
    at, kind, sunk = supports[0]
    conditions = [line.subs(x, at) - Rational(sunk, 100)]
    if kind == "fixed":
        conditions.append(slope.subs(x, at))
    else:
        conditions.append(line.subs(x, supports[1][0]) - Rational(supports[1][2], 100))
    constants = next(iter(linsolve(conditions, a, b)))
    return line.subs({a: constants[0], b: constants[1]})


@pytest.fixture(scope="module", params=CASES.values(), ids=CASES.keys())
def pair(request):
    length, supports, lines, points = request.param
    ours = solve(
        length,
        [Support(at, kind, sunk / 100) for at, kind, sunk in supports],
        [LineLoad(*line) for line in lines] + [PointLoad(*point) for point in points],
        EI,
    )
    return ours, sympy_beam(*request.param)


def between_nodes(beam):
    """Places away from jumps: five in each piece."""
    parts = (np.arange(5) + 0.5) / 5
    return (beam.nodes[:-1, None] + np.diff(beam.nodes)[:, None] * parts).ravel()


@pytest.mark.parametrize("number", [1, 2, 3], ids=["moment", "shear", "deflection"])
def test_diagrams_agree_with_sympy(pair, number):
    ours, theirs = pair
    x = between_nodes(ours)
    exact = lambdify(theirs[0], theirs[number], modules="sympy")
    expected = np.array([float(exact(Rational(float(place)))) for place in x])
    mine = (ours.moment, ours.shear, ours.deflection)[number - 1](x)
    assert mine == pytest.approx(expected, rel=1e-11, abs=1e-11 * np.abs(expected).max())


def test_reactions_agree_with_sympy(pair):
    ours, theirs = pair
    assert ours.reactions == pytest.approx([float(r) for r in theirs[4]], rel=1e-11)
