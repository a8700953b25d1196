"""A section bent until it fails: slice it, strain it, balance it, and read off its moment.

Concrete in compression follows Hognestad (1951, University of Illinois Bulletin 399): a
parabola up to 0.85 f'c at a strain of 2 (0.85 f'c)/Ec, then a line down to 85 % of that at
0.0038. Stretched concrete is elastic up to its tensile strength and then softens on the line of
Bazant and Oh (1984, ACI Journal 81(3)), Et = -0.483 Ec/(0.393 + ft) in MPa, which stands for the
help of the concrete between cracks. Both are quoted from memory. Steel is elastic, then
perfectly plastic. Depths are measured down from the top face; sagging is positive.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.section import bands, cracked, uncracked
from crackkit.mechanics.us_customary import PSI
from crackkit.words import _

CRUSHING = 0.0038
"""Strain at which Hognestad's curve ends [-]."""

ULTIMATE = 0.003
"""Strain of the squeezed face at nominal strength, ACI 318-19, 22.2.2.1 [-]."""


@dataclass(frozen=True)
class MomentCurvature:
    """The answer of a section to a row of curvatures.

    Parameters
    ----------
    curvature : numpy.ndarray
        Curvatures, sagging positive [1/mm].
    moment : numpy.ndarray
        Bending moment at each curvature, sagging positive [N mm].
    axis : numpy.ndarray
        Depth of the neutral axis below the top face [mm].
    steel_stress : numpy.ndarray
        Steel stress, one row per curvature, one column per layer, tension positive [MPa].
    crushed : numpy.ndarray of bool
        Whether the squeezed face has passed a strain of 0.0038, where the source of the
        concrete curve ends; from there on the numbers are the falling line drawn on.
    """

    curvature: np.ndarray
    moment: np.ndarray
    axis: np.ndarray
    steel_stress: np.ndarray
    crushed: np.ndarray


def moment_curvature(
    section,
    depths,
    areas,
    concrete,
    yield_strength,
    curvatures,
    steel_modulus=200000.0,
    layers=80,
):
    """Moments of a layered section at given curvatures, without axial force.

    Parameters
    ----------
    section : Section
        The outline.
    depths : array_like
        Depth of each layer of bars below the top face [mm].
    areas : array_like
        Steel area of each layer [mm2].
    concrete : Concrete
        Strengths and short-term modulus.
    yield_strength : float
        Yield strength of the steel [MPa].
    curvatures : array_like
        Curvatures wanted, sagging positive [1/mm].
    steel_modulus : float
        Modulus of the steel Es [MPa].
    layers : int
        Number of slices of concrete [-].

    Returns
    -------
    MomentCurvature
        Moments [N mm], axis depths [mm] and steel stresses [MPa].

    Raises
    ------
    ValueError
        If the modulus is so low that the concrete would peak beyond its crushing strain (an
        effective modulus for creep does not belong here).
    """
    depths, areas = np.asarray(depths, dtype=float), np.asarray(areas, dtype=float)
    kappa = np.atleast_1d(np.asarray(curvatures, dtype=float))
    z, strips = _slices(section, layers)
    # Negative slices at the bars: the concrete whose place they take.
    z, A = np.concatenate([z, depths]), np.concatenate([strips, -areas])
    law = _ConcreteLaw.of(concrete)
    zero = section.centroid
    bend = kappa[:, None] * (z - zero)

    def balance(rows, strain):
        e = bend[rows] + strain[:, None]
        fc, Et = law.stress(e)
        fs, tangent = _steel(e[:, layers:], steel_modulus, yield_strength)
        return fc @ A + fs @ areas, Et @ A + tangent @ areas, fc, fs

    whole = uncracked(section, depths, areas, steel_modulus / concrete.modulus).axis
    reach = np.abs(kappa) * section.depth
    far = law.softened + yield_strength / steel_modulus
    strain = _balanced(balance, kappa * (zero - whole), -reach - 1e-9, reach + far)
    _force, _slope, fc, fs = balance(slice(None), strain)
    moment = fc @ (A * (z - zero)) + fs @ (areas * (depths - zero))
    bent = kappa != 0
    axis = np.where(bent, zero - strain / np.where(bent, kappa, 1.0), whole)
    face = strain - np.maximum(kappa * zero, kappa * (zero - section.depth))
    return MomentCurvature(kappa, moment, axis, fs, face < -CRUSHING)


def yield_moment(section, depths, areas, concrete, yield_strength, sense=1, steel_modulus=200000.0):
    """Moment at which the outermost stretched bars begin to yield, the concrete still elastic.

    Parameters
    ----------
    section : Section
        The outline.
    depths : array_like
        Depth of each layer of bars below the top face [mm].
    areas : array_like
        Steel area of each layer [mm2].
    concrete : Concrete
        Strengths and modulus.
    yield_strength : float
        Yield strength of the steel [MPa].
    sense : int
        1 for sagging, -1 for hogging [-].
    steel_modulus : float
        Modulus of the steel Es [MPa].

    Returns
    -------
    float
        Size of the yield moment [N mm], positive in both senses; 0 when nothing holds the
        crack. A crack is only held when this exceeds the cracking moment.
    """
    state = cracked(section, depths, areas, steel_modulus / concrete.modulus, sense)
    if state.inertia == 0:
        return 0.0
    outermost = max(t for t, _a in _from_squeezed_face(section, depths, areas, sense))
    return yield_strength * state.inertia / (state.ratio * (outermost - state.squeezed))


def ultimate_moment(
    section, depths, areas, concrete, yield_strength, sense=1, steel_modulus=200000.0
):
    """Nominal strength in bending with the rectangular stress block (ACI 318-19, 22.2.2.4).

    Every layer takes the stress of its own strain; bars within the block give up the concrete
    whose place they take. No strength reduction factor.

    Parameters
    ----------
    section : Section
        The outline.
    depths : array_like
        Depth of each layer of bars below the top face [mm].
    areas : array_like
        Steel area of each layer [mm2].
    concrete : Concrete
        Strengths and modulus; the specified strength is used.
    yield_strength : float
        Yield strength of the steel [MPa].
    sense : int
        1 for sagging, -1 for hogging [-].
    steel_modulus : float
        Modulus of the steel Es [MPa].

    Returns
    -------
    float
        Size of the nominal moment Mn [N mm], positive in both senses; 0 without bars.
    """
    bars = [bar for bar in _from_squeezed_face(section, depths, areas, sense) if bar[0] > 0]
    if not bars:
        return 0.0
    widths = bands(section, sense)
    fc, beta1 = 0.85 * concrete.strength, block_share(concrete.strength)

    def resultants(c):
        """Force, squeezing positive, and its moment about the squeezed face."""
        a = min(beta1 * c, section.depth)
        C, moment = _block(widths, a)
        force, moment = fc * C, fc * moment
        for t, area in bars:
            fs = steel_modulus * ULTIMATE * (c - t) / c
            fs = max(-yield_strength, min(yield_strength, fs)) - (fc if t < a else 0.0)
            force, moment = force + fs * area, moment + fs * area * t
        return force, moment

    deepest = max(t for t, _area in bars)
    c = _crossing(lambda c: resultants(c)[0], 1e-9 * deepest, deepest)
    return -resultants(c)[1]


def block_share(strength):
    """Depth of the stress block as a share of the squeezed depth, beta1 (Table 22.2.2.4.3).

    Parameters
    ----------
    strength : float
        Cylinder strength f'c [MPa].

    Returns
    -------
    float
        beta1 [-]: 0.85 to 4000 psi, 0.05 less for each further 1000 psi, at least 0.65
        (ACI 318-19, Table 22.2.2.4.3).
    """
    return min(0.85, max(0.65, 0.85 - 0.05 * (strength / PSI - 4000) / 1000))


@dataclass(frozen=True)
class _ConcreteLaw:
    """The stress-strain line of the concrete, its corners worked out once."""

    modulus: float
    peak: float
    peak_strain: float
    fall: float
    tensile: float
    cracking: float
    softening: float

    @classmethod
    def of(cls, concrete):
        E, ft = concrete.modulus, concrete.tensile
        f = 0.85 * concrete.strength
        e0 = 2 * f / E
        if e0 >= CRUSHING:
            raise ValueError(_("The modulus is too low for a short-term stress-strain curve."))
        return cls(E, f, e0, 0.15 * f / (CRUSHING - e0), ft, ft / E, 0.483 * E / (0.393 + ft))

    @property
    def softened(self):
        """Strain at which stretched concrete pulls no more [-]."""
        return self.cracking + self.tensile / self.softening

    def stress(self, e):
        """Stress [MPa] and tangent [MPa] at strains, tension positive."""
        E, e0 = self.modulus, self.peak_strain
        r = np.clip(1 + e / e0, 0.0, 1.0)
        past = np.maximum(-e - e0, 0.0)
        soft = np.maximum(e - self.cracking, 0.0)
        pull = np.clip(e, 0.0, self.cracking) * E - soft * self.softening
        push = np.maximum(self.peak * (1 - r * r) - self.fall * past, 0.0)
        stretched = np.where(soft > 0, -self.softening * (pull > 0), E)
        squeezed = np.where(past > 0, -self.fall * (push > 0), E * r)
        return np.maximum(pull, 0.0) - push, np.where(e > 0, stretched, squeezed)


def _steel(e, Es, fy):
    stress = np.clip(Es * e, -fy, fy)
    return stress, np.where(np.abs(stress) < fy, Es, 0.0)


def _slices(section, number):
    """Middle depth and area of each slice, a slice across the flange's edge sharing both."""
    edges = np.linspace(0.0, section.depth, number + 1)
    above = sum(b * (np.clip(edges, start, end) - start) for start, end, b in bands(section, 1))
    return (edges[1:] + edges[:-1]) / 2, np.diff(above)


def _balanced(balance, strain, low, high):
    """Strains that balance every row: Newton, halving where it would leave its bracket."""
    strain, last = strain.copy(), high - low
    rows = np.arange(strain.size)
    for _turn in range(80):
        e = strain[rows]
        force, slope = balance(rows, e)[:2]
        low, high = np.where(force < 0, e, low), np.where(force < 0, high, e)
        step = -force / np.where(slope > 0, slope, np.inf)
        newton = (slope > 0) & (np.abs(step) <= last / 2)
        newton &= (e + step >= low) & (e + step <= high)
        step = np.where(newton, step, (low + high) / 2 - e)
        strain[rows] = e + step
        going = np.abs(step) > 1e-13
        if not going.any():
            break
        rows, low, high = rows[going], low[going], high[going]
        last = np.abs(step[going])
    return strain


def _from_squeezed_face(section, depths, areas, sense):
    z = np.asarray(depths, dtype=float).ravel().tolist()
    h = section.depth
    pairs = zip(z, np.asarray(areas, dtype=float).ravel().tolist(), strict=True)
    return [(t if sense > 0 else h - t, a) for t, a in pairs if a > 0]


def _block(widths, a):
    """Area and first moment about the squeezed face of the concrete within a depth."""
    parts = [(start, min(end, a), b) for start, end, b in widths if start < a]
    area = sum(b * (end - start) for start, end, b in parts)
    return area, sum(b * (end**2 - start**2) / 2 for start, end, b in parts)


def _crossing(force, low, high):
    """Where a rising force passes zero: false position, the idle end halved (Illinois)."""
    f_low, f_high, side = force(low), force(high), 0
    if f_low >= 0.0:  # hardly any steel: the squeezed depth is next to nothing
        return low
    close = 1e-12 * (f_high - f_low)
    for _turn in range(100):
        c = high - f_high * (high - low) / (f_high - f_low)
        f = force(c)
        if abs(f) < close:
            break
        if f > 0:
            high, f_high, f_low, side = c, f, f_low / 2 if side > 0 else f_low, 1
        else:
            low, f_low, f_high, side = c, f, f_high / 2 if side < 0 else f_high, -1
    return c
