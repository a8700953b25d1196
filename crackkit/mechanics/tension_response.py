"""A pulled member at a given pull: stresses along it, slip, crack widths, and mean strain.

While the pull grows, bond follows its law for growing slip everywhere, also where a new crack
turns the slip round: the state depends on the pull and the cracks, not on their history. When the
pull falls, every place comes down its own stiff line of bond (`BondLaw.unloading_stiffness`), and
climbs the same line again; cracks stay, and do not shut wholly. Friction of the ribs against
concrete on the way back is not limited, and broken pieces in a crack do not prop it open.
"""

from dataclasses import dataclass

import numpy as np

from crackkit.mechanics.bond_slip import end_slip, piece, slip_along
from crackkit.mechanics.tie import middles
from crackkit.mechanics.tridiagonal import tridiagonal_solution
from crackkit.words import _


@dataclass(frozen=True)
class TensionResponse:
    """State of a pulled member.

    Parameters
    ----------
    x : numpy.ndarray
        Stations from left to right [mm]; that of a crack comes twice, for its two faces.
    steel_stress : numpy.ndarray
        Stress of the bars at x [MPa].
    concrete_stress : numpy.ndarray
        Stress of the concrete at x [MPa]; 0 at cracks.
    slip : numpy.ndarray
        Way of the bars against the concrete at x, to the right positive [mm].
    bond_stress : numpy.ndarray
        Bond stress at x, of the sign of the slip [MPa].
    cracks : numpy.ndarray
        Places of the cracks from left to right [mm].
    widths : numpy.ndarray
        Their widths at the bars: the slips of both faces, shrinkage included [mm].
    mean_strain : float
        Mean strain of the bars [-], counted from before the concrete shrank. Of a member without
        bars it is that of the concrete.
    """

    x: np.ndarray
    steel_stress: np.ndarray
    concrete_stress: np.ndarray
    slip: np.ndarray
    bond_stress: np.ndarray
    cracks: np.ndarray
    widths: np.ndarray
    mean_strain: float


@dataclass(frozen=True)
class ForceStrain:
    """Mean strain and crack widths over a growing pull.

    Parameters
    ----------
    pull : numpy.ndarray
        Pulls [N].
    mean_strain : numpy.ndarray
        Mean strain of the bars at each [-].
    widths : numpy.ndarray
        Widths at the bars, one row per pull, one column per crack from left to right, 0 before
        it forms [mm].
    """

    pull: np.ndarray
    mean_strain: np.ndarray
    widths: np.ndarray


def tension_response(member, sequence, pull, greatest=None):
    """State at a pull, while it grows or after it was greater.

    Parameters
    ----------
    member : Tie
        The member.
    sequence : CrackSequence
        Its cracks.
    pull : float
        Pull now [N], 0 or more.
    greatest : float or None
        Greatest pull so far [N]; the pull now where None.

    Returns
    -------
    TensionResponse
        Stresses [MPa], slip and widths [mm].

    Raises
    ------
    ValueError
        If the greatest pull is more than the member bears, or less than the pull now.
    """
    greatest = pull if greatest is None else greatest
    _demand_borne(sequence, pull, greatest)
    if member.bars_area == 0:
        return _plain(member, pull)
    cuts = np.r_[0, sequence.formed(greatest), len(member.strengths) - 1]
    nodes, owner = _nodes(cuts)
    x, e = member.stations[nodes], member.gradient(pull)
    slip, slope, tau = _grown(member, cuts, x, owner, member.gradient(greatest))
    if pull < greatest:
        slip, slope, tau = _turned_back(member, x, owner, slip, slope, tau, pull - greatest)
    concrete = (e - slope) / member.beta
    steel = (pull - member.concrete_area * concrete) / member.bars_area
    faces = np.flatnonzero(np.diff(owner))
    ends = np.r_[-1, faces, len(x) - 1]
    mean = _mean_strain(member, e, (slip[ends[1:]] - slip[ends[:-1] + 1]).sum())
    widths = slip[faces] - slip[faces + 1]
    return TensionResponse(x, steel, concrete, slip, tau, x[faces], widths, float(mean))


def force_strain(member, sequence, pulls):
    """How a member stretches and its cracks open while the pull grows.

    Parameters
    ----------
    member : Tie
        The member.
    sequence : CrackSequence
        Its cracks.
    pulls : array_like
        Pulls [N], 0 or more, in any order.

    Returns
    -------
    ForceStrain
        Mean strains [-] and widths [mm].

    Raises
    ------
    ValueError
        If a pull is more than the member bears.
    """
    N = np.asarray(pulls, dtype=float)
    _demand_borne(sequence, N.min(), N.max())
    widths = np.zeros((len(N), len(sequence.pull)))
    if member.bars_area == 0:
        stretching = member.concrete_area * member.concrete_modulus
        return ForceStrain(N, N / stretching - member.shrinkage, widths)
    e, opened = member.gradient(N), np.zeros(len(N))
    everywhere = np.sort(sequence.station)
    for row, (cracks, faces) in enumerate(_faces(member, sequence, N, e)):
        opened[row] = faces.sum()
        widths[row, np.searchsorted(everywhere, cracks)] = faces[:-1, 1] + faces[1:, 0]
    return ForceStrain(N, _mean_strain(member, e, opened), widths)


def telling_pulls(sequence, between=3):
    """Pulls at which a diagram should be read: before and after each crack, and some between.

    Parameters
    ----------
    sequence : CrackSequence
        Cracks of the member.
    between : int
        How many more in each interval [-], 0 or more.

    Returns
    -------
    numpy.ndarray
        Rising pulls from 0 up to the greatest [N]; just below it where the first crack is the end.
    """
    marks = np.unique(np.r_[0.0, sequence.pull, sequence.greatest_pull])
    before = np.maximum(marks[:-1], marks[1:] * (1 - 1e-9))
    inner = np.linspace(marks[:-1], before, between + 2, axis=1).ravel()
    return np.r_[inner, sequence.greatest_pull] if sequence.held else inner


def _demand_borne(sequence, pull, greatest):
    limit = sequence.greatest_pull
    if greatest > limit * (1 + 1e-12) or (greatest >= limit and not sequence.held):
        text = _("The member bears {limit} kN, not {pull} kN.")
        raise ValueError(text.format(limit=f"{limit / 1e3:.1f}", pull=f"{greatest / 1e3:.1f}"))
    if not 0 <= pull <= greatest:
        raise ValueError(_("The pull must lie between 0 and the greatest pull so far."))


def _plain(member, pull):
    x = member.stations
    none, sigma = np.zeros_like(x), np.full_like(x, pull / member.concrete_area)
    strain = pull / (member.concrete_area * member.concrete_modulus) - member.shrinkage
    return TensionResponse(x, none, sigma, none, none, np.zeros(0), np.zeros(0), strain)


def _mean_strain(member, e, opened):
    """Mean strain of the bars; what all slips open is the length over which bars alone stretch."""
    concrete = (e - opened / member.length) / member.beta
    pull = (e - member.shrinkage) * member.stretching
    return (pull - member.concrete_area * concrete) / member.stretching


def _nodes(cuts):
    """Stations with both faces of each crack, and the piece to which each belongs."""
    counts = np.diff(cuts) + 1
    owner = np.repeat(np.arange(len(counts)), counts)
    return np.arange(counts.sum()) - owner, owner


def _grown(member, cuts, x, owner, e):
    """Slip, its slope and the bond stress at growing pull."""
    middle, half = middles(member, cuts[:-1], cuts[1:])
    if np.isinf(half[0]):  # gripped and whole: nothing slips
        return np.zeros_like(x), np.zeros_like(x), np.zeros_like(x)
    p, core = piece(member.bond_slip, half, e)
    way = x - middle[owner]
    s, slope = slip_along(member.bond_slip, np.abs(way), p[owner], core[owner])
    slip = np.copysign(s, way)
    return slip, slope, member.bond.stress(slip)


def _turned_back(member, x, owner, slip, slope, tau, change):
    """Slip, slope and bond stress once the pull has fallen: a linear equation on the stations."""
    stiffness, e = member.bond.unloading_stiffness(slip), change / member.stretching
    h, kappa = x[1] - x[0], member.bond_slip.kappa
    joined = np.diff(owner) == 0
    sides = np.r_[0, joined] + np.r_[joined, 0]
    load = e * (np.r_[joined, 0] < 1) - e * (np.r_[0, joined] < 1)
    load = np.where(slip != 0, load, 0.0)
    diagonal = sides * (1 / h + kappa * stiffness * h / 2)
    back = tridiagonal_solution(np.where(joined, -1 / h, 0.0), diagonal, load)
    flow = np.where(joined, np.diff(back) / h, 0.0)
    mean = (np.r_[0, flow] + np.r_[flow, 0]) / sides
    cracked = (sides < 2) & (slip != 0)
    return slip + back, slope + np.where(cracked, e, mean), tau + stiffness * back


def _faces(member, sequence, pulls, e):
    """For each pull: the cracks that are there, and the slips of the two faces of each piece."""
    ends = 0, len(member.strengths) - 1
    formed = [sequence.formed(N) for N in pulls]
    left = np.concatenate([np.r_[ends[0], stations] for stations in formed])
    right = np.concatenate([np.r_[stations, ends[1]] for stations in formed])
    counts = [len(stations) + 1 for stations in formed]
    half, slips = middles(member, left, right)[1], np.zeros((len(left), 2))
    parted = np.isfinite(half)
    s = end_slip(member.bond_slip, half[parted], np.repeat(e, counts)[parted])
    slips[parted] = s[:, None]
    if member.ends == "gripped":
        slips[left == ends[0], 0] = slips[right == ends[1], 1] = 0.0
    return zip(formed, np.split(slips, np.cumsum(counts)[:-1]), strict=True)
