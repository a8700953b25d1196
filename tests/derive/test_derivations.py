"""What is derived is what mechanics works out, and what is kept as text is what was derived."""

import json
import math
from importlib import resources

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from sympy import diff, lambdify, limit, oo, simplify, symbols

from crackkit.derive.arm_moment import arm_moment
from crackkit.derive.cracked_section import cracked_section, cracked_section_two_layers
from crackkit.derive.cracking_moment import cracking_moment
from crackkit.derive.lean import lean
from crackkit.derive.lever_arm import lever_arm
from crackkit.derive.over_support import over_support
from crackkit.derive.sentences import STEPS
from crackkit.derive.writing import DERIVATIONS, everything
from crackkit.derive.written import FILE, with_numbers, written
from crackkit.mechanics import beam, section
from crackkit.mechanics.crack_width import frosch
from crackkit.mechanics.crack_zone import CrackZone
from crackkit.mechanics.stress_field import principal_stresses

POSITIVE = "b d h n k A_s A_o d_o M x x_1 E_s f_s f_t beta d_c s I_cr"
b, d, h, n, k, A_s, A_o, d_o, M, x, x_1 = symbols(POSITIVE, positive=True)[:11]

alone = {step.key: step.expression for step in cracked_section().steps}
both = {step.key: step.expression for step in cracked_section_two_layers().steps}

sizes = {
    "width": st.floats(100, 800),
    "depth": st.floats(150, 1200),
    "share": st.floats(0.75, 0.97),  # of the depth at which the outer bars lie
    "percent": st.floats(0.1, 3.0),
    "ratio": st.floats(5.0, 25.0),
}


def section_of(width, depth, share, percent):
    d = share * depth
    return section.Section(width, depth), d, percent / 100 * width * d


def number(equation, values: dict) -> float:
    names = sorted(equation.rhs.free_symbols, key=str)
    return lambdify(names, equation.rhs, "math")(*(values[str(name)] for name in names))


@given(**sizes)
def test_the_derived_axis_and_inertia_are_those_of_mechanics(width, depth, share, percent, ratio):
    outline, d, area = section_of(width, depth, share, percent)
    state = section.cracked(outline, [d], [area], ratio)
    values = {"b": width, "d": d, "n": ratio, "A_s": area}
    values["x"] = number(alone["x"], values)
    assert values["x"] == pytest.approx(state.squeezed, rel=1e-9)
    assert number(alone["I_cr"], values) == pytest.approx(state.inertia, rel=1e-9)


@given(**sizes, moment=st.floats(1e6, 1e9))
def test_the_derived_steel_stress_is_that_of_mechanics(width, depth, share, percent, ratio, moment):
    outline, d, area = section_of(width, depth, share, percent)
    state = section.cracked(outline, [d], [area], ratio)
    values = {"n": ratio, "M": moment, "d": d, "x": state.squeezed, "I_cr": state.inertia}
    stress = section.stress_in_steel(state, moment, d)
    assert number(alone["f_s"], values) == pytest.approx(stress, rel=1e-9)


@given(**sizes, other=st.floats(0.05, 1.5), place=st.floats(0.03, 0.7))
def test_with_a_second_layer_it_is_still_that_of_mechanics(
    width, depth, share, percent, ratio, other, place
):
    outline, d, area = section_of(width, depth, share, percent)
    second, at = other * area, place * d
    state = section.cracked(outline, [d, at], [area, second], ratio)
    counts = ratio - 1 if at < state.squeezed else ratio
    values = {"b": width, "d": d, "n": ratio, "A_s": area, "A_o": second, "d_o": at, "k": counts}
    values["x"] = number(both["x"], values)
    assert values["x"] == pytest.approx(state.squeezed, rel=1e-9)
    assert number(both["I_cr"], values) == pytest.approx(state.inertia, rel=1e-9)


@given(
    depth=st.floats(200, 1200),
    stress=st.floats(20, 400),
    spacing=st.floats(40, 400),
    centre=st.floats(25, 80),
    squeezed=st.floats(0.1, 0.45),
)
def test_the_derived_crack_width_is_the_published_rule(depth, stress, spacing, centre, squeezed):
    d = depth - centre
    zone = CrackZone(
        steel_stress=stress, diameter=16.0, clear_cover=centre - 8.0, spacing=spacing,
        steel_area=600.0, width=300.0, depth=depth, effective_depth=d, neutral_axis=squeezed * d,
        side_cover=centre - 8.0, number=3, tensile_strength=2.9, modular_ratio=6.5,
    )  # fmt: skip
    values = {"f_s": stress, "E_s": zone.steel_modulus, "d_c": centre, "s": spacing}
    values |= {"h": depth, "d": d, "x": squeezed * d}
    values["beta"] = number(alone["beta"], values)
    assert number(alone["w"], values) == pytest.approx(float(frosch(zone).width), rel=1e-9)


def test_the_solved_depth_satisfies_the_balance_of_forces():
    left, right = alone["balance"].lhs, alone["balance"].rhs
    assert simplify((left - right).subs(x, alone["x"].rhs)) == 0
    left, right = both["balance_two"].lhs, both["balance_two"].rhs
    assert simplify((left - right).subs(x, both["x"].rhs)) == 0
    left, right = both["balance"].lhs, both["balance"].rhs
    assert simplify((left - right).subs(x_1, both["x_1"].rhs)) == 0


def test_the_cracked_inertia_carries_the_moment_of_the_stresses():
    """The moment of push and pull about the neutral axis is M, whatever the section."""
    for lines, others in ((alone, 0), (both, k * A_o * (d_o - x) ** 2)):
        inertia = lines["I_cr"].rhs
        concrete, bars = b * x**3 / 3, n * A_s * (d - x) ** 2
        assert simplify(M / inertia * (concrete + bars + others) - M) == 0


def test_a_second_layer_of_nothing_changes_nothing():
    assert simplify(both["x"].rhs.subs(A_o, 0) - alone["x"].rhs) == 0
    assert simplify(both["I_cr"].rhs.subs(A_o, 0) - alone["I_cr"].rhs) == 0


def test_more_steel_lowers_the_neutral_axis_and_never_reaches_the_bars():
    assert limit(alone["x"].rhs.subs({b: 1, n: 1, d: 1}), A_s, oo) == 1
    slope = lambdify([A_s], diff(alone["x"].rhs.subs({b: 300, n: 7, d: 450}), A_s))
    assert all(slope(area) > 0 for area in (10.0, 500.0, 5000.0))


@given(width=st.floats(100, 800), depth=st.floats(100, 1200), strength=st.floats(1.0, 6.0))
def test_the_derived_cracking_moment_is_that_of_mechanics(width, depth, strength):
    outline = section.Section(width, depth)
    plain = section.uncracked(outline, [], [], 7.0)
    lines = {step.key: step.expression for step in cracking_moment().steps}
    values = {"b": width, "h": depth, "f_t": strength}
    expected = section.cracking_moment(plain, strength, outline, 1)
    assert number(lines["M_cr"], values) == pytest.approx(expected, rel=1e-9)
    assert number(lines["I"], values) == pytest.approx(outline.inertia, rel=1e-9)


arm = {step.key: step.expression for step in arm_moment().steps}
lever = {step.key: step.expression for step in lever_arm().steps}


@given(
    reach=st.floats(300, 5000),
    spread=st.floats(0, 60),
    at_root=st.floats(0.5, 40),
    share=st.floats(0.3, 1.0),
    force=st.floats(0, 1e5),
    place=st.floats(0.0, 1.0),
)
def test_the_derived_moment_of_an_arm_is_that_of_the_beam_solver(
    reach, spread, at_root, share, force, place
):
    at_tip = share * at_root
    loads = [
        beam.PointLoad(force, place * reach),
        beam.LineLoad(0.0, reach, spread + at_root, spread + at_tip),
    ]
    solved = beam.solve(reach, (beam.Support(0.0, "fixed"),), loads)
    values = {"q": spread, "g_0": at_root, "g_1": at_tip, "L": reach}
    values |= {"P": force, "a_P": place * reach}
    values["M_q"] = number(arm["M_q"], values)
    expected = -float(solved.moment(np.array([1e-9]))[0])
    assert number(arm["M"], values) == pytest.approx(expected, rel=1e-6)


@given(**sizes, moment=st.floats(1e6, 1e9))
def test_the_stress_by_the_lever_arm_is_that_by_the_inertia(
    width, depth, share, percent, ratio, moment
):
    outline, d, area = section_of(width, depth, share, percent)
    state = section.cracked(outline, [d], [area], ratio)
    values = {"b": width, "d": d, "n": ratio, "A_s": area, "M": moment}
    for key in ("x", "z", "F", "f_s"):
        values[key] = number(lever[key], values)
    assert values["f_s"] == pytest.approx(section.stress_in_steel(state, moment, d), rel=1e-9)
    values["f_y"] = values["f_s"]
    assert number(lever["M_y"], values) == pytest.approx(moment, rel=1e-9)


@given(**sizes, gone=st.floats(0.05, 0.35))
def test_trodden_bars_lose_about_the_share_that_is_derived(
    width, depth, share, percent, ratio, gone
):
    _outline, drawn, area = section_of(width, depth, share, percent)
    values = {"b": width, "n": ratio, "A_s": area, "d": drawn}
    arms = []
    for here in (drawn, drawn * (1 - gone)):
        values["d"] = here
        values["x"] = number(lever["x"], values)
        arms.append(number(lever["z"], values))
    values["t"] = drawn - values["d"]
    told = number(lever["delta"], values)
    assert told == pytest.approx(gone, rel=1e-6)
    assert told == pytest.approx(1 - arms[1] / arms[0], abs=0.035)


over = {step.key: step.expression for step in over_support().steps}
TWO = (beam.Support(0.0), beam.Support(4000.0), beam.Support(10000.0))


@given(
    first=st.floats(0, 40),
    second=st.floats(0, 40),
    force=st.floats(0, 1e5),
    place=st.floats(0.0, 1.0),
    end=st.sampled_from(["pin", "fixed"]),
)
def test_the_derived_moment_over_a_support_is_that_of_the_beam_solver(
    first, second, force, place, end
):
    loads = [beam.LineLoad(0.0, 4e3, first, first), beam.LineLoad(4e3, 1e4, second, second)]
    loads += [beam.PointLoad(force, 4e3 + place * 6e3)]
    solved = beam.solve(1e4, (beam.Support(0.0, end), *TWO[1:]), loads)
    before, expected = solved.moment(np.array([1e-6, 4e3])).tolist()
    values = {"q_1": first, "q_2": second, "L_1": 4e3, "L_2": 6e3, "M_A": before, "M_C": 0.0}
    values |= {"P_t": force, "a_t": place * 6e3, "L_t": 6e3}
    for key in ("M_q", "M_P", "M_B"):
        values[key] = number(over[key], values)
    assert values["M_B"] == pytest.approx(expected, rel=1e-6, abs=1.0)


def test_the_table_of_equal_spans_and_the_derivation_agree():
    """Two equal spans: HICKS2010 Table 2.1 has 0.125 over the support, half of it for one."""
    assert number(over["M_2"], {"q": 1.0, "L": 1.0}) == pytest.approx(-0.125)
    one = {"q_1": 1.0, "q_2": 0.0, "L_1": 1.0, "L_2": 1.0}
    assert number(over["M_q"], one) == pytest.approx(0.0625)


@given(live=st.floats(0.0, 5.9))
def test_the_derived_reach_of_the_frown_is_where_the_solver_finds_no_moment(live):
    supports = tuple(beam.Support(at) for at in (0.0, 1e3, 2e3))
    loads = [beam.LineLoad(0.0, 1e3, 1.0 + live, 1.0 + live), beam.LineLoad(1e3, 2e3, 1.0, 1.0)]
    reach = number(over["x_1"], {"L": 1e3, "p": live, "g": 1.0})
    solved = beam.solve(2e3, supports, loads)
    here, largest = solved.moment(np.array([1e3 + reach, 1e3]))
    assert float(here) == pytest.approx(0.0, abs=1e-6 * abs(float(largest)))
    assert number(over["x_1"], {"L": 1e3, "p": 0.0, "g": 1.0}) == pytest.approx(250.0)
    assert number(over["x_0"], {"L": 1e3}) == pytest.approx(250.0)


lean_lines = {step.key: step.expression for step in lean().steps}


@given(stretch=st.floats(0.05, 6.0), shear=st.floats(0.0, 4.0))
def test_the_derived_direction_is_that_of_the_largest_stress(stretch, shear):
    largest, _smallest, angle = principal_stresses(stretch, 0.0, shear)
    values = {"sigma": stretch, "tau": shear}
    assert number(lean_lines["tan_2a"], values) == pytest.approx(math.tan(2 * angle), rel=1e-9)
    values["a"] = 0.5 * math.atan(number(lean_lines["tan_2a"], values))
    assert number(lean_lines["sigma_a"], values) == pytest.approx(float(largest), rel=1e-9)


def test_the_two_ends_of_a_crack_lean_as_the_stress_does():
    at_face, at_axis = lean_lines["face"].rhs, lean_lines["axis"].rhs
    assert float(at_face) == principal_stresses(2.0, 0.0, 0.0)[2]
    assert float(at_axis) == pytest.approx(float(principal_stresses(0.0, 0.0, 1.5)[2]))


def test_what_is_kept_is_what_sympy_finds():
    kept = (resources.files("crackkit.derive") / FILE).read_text(encoding="utf-8")
    assert json.loads(kept) == json.loads(everything())


@pytest.mark.parametrize("derive", DERIVATIONS, ids=lambda f: f.__name__)
def test_every_step_has_its_sentence_and_its_line(derive):
    made, kept = derive(), written(derive.__name__)
    assert [step.key for step in made.steps] == [words.key for words in STEPS[made.key]]
    assert [step.sentence for step in kept.steps] == [step.sentence for step in made.steps]
    assert all(step.latex and step.plain and step.sentence.endswith((".", ":"))
               for step in kept.steps)  # fmt: skip


@pytest.mark.parametrize("key", ["cracked_section", "cracked_section_two_layers"])
def test_numbers_put_into_the_kept_text_give_what_sympy_gives(key):
    rng = np.random.default_rng(3)
    lines = {"cracked_section": alone, "cracked_section_two_layers": both}[key]
    for _round in range(20):
        values = dict(zip(
            ["b", "d", "h", "n", "k", "A_s", "A_o", "d_o", "M", "E_s", "d_c", "s"],
            rng.uniform(1, 2, 12) * [300, 450, 600, 6, 5, 800, 200, 40, 1e8, 2e5, 50, 90],
            strict=True,
        ))  # fmt: skip
        known = dict(values)
        for found in with_numbers(written(key), values):
            if found.value is not None:
                assert found.value == pytest.approx(number(lines[found.step.key], known), rel=1e-9)
                known[found.step.key] = found.value
        assert {"x", "I_cr", "f_s", "beta", "w"} <= known.keys()


def test_a_step_whose_numbers_are_not_given_has_no_value():
    found = {one.step.key: one.value for one in with_numbers(written("cracked_section"), {"b": 1})}
    assert set(found.values()) == {None}


def test_numbers_are_written_so_that_they_can_be_worked_out_again():
    values = {"b": 300.0, "d": 440.0, "n": 7.0, "A_s": 942.0}
    line = {one.step.key: one.numbers for one in with_numbers(written("cracked_section"), values)}
    assert line["x"] == "(√((7 × 942)² + 2 × 300 × 7 × 942 × 440) − 7 × 942)/300"
