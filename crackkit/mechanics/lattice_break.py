"""Bonds of a lattice that give way one after the other.

Between two steps the lattice is elastic. So one looks which bond would take its next step at the
least shrinkage, lets it take that step, and works the lattice out anew: the sequentially linear
analysis of Rots (2001, from memory). A step changes the stiffness of one bond only. The lattice is
factorised once; what every step changes is written in terms of the bonds that have been softened
so far (the formula of Woodbury, from memory).
"""

from dataclasses import dataclass

import numpy as np

_AHEAD = 3  # bonds for which the lattice is solved at once
_SLACK = 0.1  # what is left of the pull, at the same shrinkage, when the holds count as let go


@dataclass(frozen=True, eq=False)
class LatticeSteps:
    """Steps of a lattice, one after the other.

    Parameters
    ----------
    bonds : numpy.ndarray of int
        Bond that takes the step [-], shape (s,).
    left : numpy.ndarray
        What is left of its stiffness then [-], shape (s,).
    loads : numpy.ndarray
        Shrinkage at which it takes it [-], shape (s,): it falls where a crack runs on by itself.
    torn : numpy.ndarray
        Work that the step takes up [N mm], shape (s,).
    freed : numpy.ndarray
        Work that the body gives up at the step if the shrinkage stays [N mm], shape (s,): more
        than what is torn takes up, the rest goes into the bang.
    movement : callable
        Gives the true movements [mm], shape (k, n, 2), for a shrinkage of 1 after k given numbers
        of steps.
    ended : str
        What ended the run: "shrinkage" (all of it has come), "slack" (nine tenths of what holds
        the body are lost) or "steps" (as many as were asked for).
    """

    bonds: np.ndarray
    left: np.ndarray
    loads: np.ndarray
    torn: np.ndarray
    freed: np.ndarray
    movement: object
    ended: str


def lattice_steps(body, teeth, largest, most):
    """Let a lattice shrink until it breaks.

    Parameters
    ----------
    body : LatticeBody
        The lattice with its holds [mm].
    teeth : SawTeeth
        Steps that each bond takes [mm].
    largest : float
        Shrinkage that comes [-].
    most : int
        How many steps at most [-].

    Returns
    -------
    LatticeSteps
        What happened [mm].
    """
    now = _Softened(body, teeth, most)
    steps, ended, pull = [], "steps", now.work
    while len(steps) < most:
        bond, load = now.weakest()
        if load > largest:
            ended = "shrinkage"
            break
        left, torn, freed = now.soften(bond)
        steps.append((bond, left, load, load**2 * torn, load**2 * freed))
        pull -= freed
        if pull < _SLACK * now.work:
            ended = "slack"
            break
    columns = np.array(steps, dtype=float).reshape(-1, 5).T
    return LatticeSteps(columns[0].astype(int), *columns[1:], now.movements, ended)


class _Softened:
    """A lattice some of whose bonds have been softened.

    With G the elongations at the first stiffness from pairs of forces along bonds, and c what a
    softened bond carries less than it did at its elongation, all elongations are e = e0 + G c.
    H is what G of the softened bonds has become by now.
    """

    def __init__(self, body, teeth, most):
        self.body, self.teeth = body, teeth
        self.count = len(teeth.limits)
        self.factor = body.factor(body.stiffness)
        self.u0, elongation = body.rest(self.factor, body.stiffness)
        self.e0 = elongation[: self.count]
        self.work = 0.5 * body.stiffness @ elongation**2  # of a shrinkage of 1
        self.taken = np.zeros(self.count, dtype=int)
        self.limit = teeth.limits[:, 0].copy()  # of the next step of each bond
        self.near = self.e0 / self.limit
        self.m, self.number, self.bond = 0, {}, np.zeros(most, dtype=int)
        self.G, self.u = np.empty((most, self.count)), np.empty((most, self.u0.size))
        self.H = np.empty((most, most))
        self.e, self.less = np.empty(most), np.zeros(most)
        self.ahead, self.history = {}, []

    def weakest(self):
        """Bond that comes first to its next step, and the shrinkage then."""
        k = int(self.near.argmax())
        near = self.near[k]
        return k, (1.0 / near if near > 0 else np.inf)

    def soften(self, bond):
        """Let a bond take its next step: what is left of it, work taken up, work set free."""
        p = self.number.get(bond)
        if p is None:
            p = self._added(bond)
        m, H = self.m, self.H
        taken = self.taken[bond]
        before, left = self.teeth.shares[bond, taken : taken + 2]
        less = (before - left) * self.body.stiffness[bond]
        h, e = H[:m, p].copy(), self.e[p]
        grows = 1.0 - less * h[p]
        self.e[:m] += h * (less * e / grows)
        H[:m, :m] += np.multiply.outer(h * (less / grows), h)
        self.less[p] += less
        self.taken[bond] += 1
        self._seen(bond)
        torn = 0.5 * less * e**2
        return left, torn, torn / grows

    def _seen(self, bond):
        """How near all bonds are to their next steps after one has taken its own."""
        limits, taken = self.teeth.limits[bond], self.taken[bond]
        self.limit[bond] = limits[taken] if taken < limits.size else np.inf
        c = self.less[: self.m] * self.e[: self.m]
        self.near = (self.e0 + c @ self.G[: self.m]) / self.limit
        self.history.append(c)

    def _added(self, bond):
        """Take a bond among those that are softened."""
        g, u = self._answer(bond)
        m = self.m
        known = g[self.bond[:m]]
        less = self.less[:m]
        h = known + self.H[:m, :m] @ (less * known)
        self.H[m, :m] = self.H[:m, m] = h
        self.H[m, m] = g[bond] + known @ (less * h)
        self.e[m] = self.e0[bond] + (less * self.e[:m]) @ known
        self.G[m], self.u[m], self.bond[m] = g, u, bond
        self.number[bond] = m
        self.m += 1
        return m

    def _answer(self, bond):
        """Elongations and movements from a pair of forces along a bond, at the first stiffness.

        Solved together with those of bonds that will probably be next.
        """
        if bond not in self.ahead:
            others = np.argpartition(-self.near, 3 * _AHEAD)[: 3 * _AHEAD].tolist()
            others = [b for b in others if b not in self.ahead and b != bond]
            bonds = [bond, *others[: _AHEAD - 1]]
            moved = self.factor.solve(self.body.pairs(bonds))
            longer = (self.body.free_rows @ moved)[: self.count]
            self.ahead.update(zip(bonds, zip(longer.T, moved.T, strict=True), strict=True))
        return self.ahead[bond]

    def movements(self, after):
        """True movements for a shrinkage of 1 after given numbers of steps."""
        c = np.zeros((len(after), self.m))
        for row, steps in zip(c, after, strict=True):
            if steps:
                now = self.history[steps - 1]
                row[: now.size] = now
        return self.body.moved(self.u0 + c @ self.u[: self.m])
