"""Bodies of revolution as outlines r(z), and what quadrature makes of them. Lengths in mm."""

import math

import numpy as np
from scipy.integrate import quad
from scipy.optimize import brentq


class Revolved:
    """Outer radius and radius of a hole over the height, both functions of z from 0 to height; kinks where told."""

    def __init__(self, height, outer, hole=lambda z: 0.0, kinks=()):
        self.height, self.outer, self.hole, self.kinks = height, outer, hole, kinks

    def area(self, z):
        return math.pi * (self.outer(z) ** 2 - self.hole(z) ** 2)

    def integral(self, f, low, high):
        points = sorted({low, high, *(k for k in self.kinks if low < k < high)})
        return sum(quad(f, p, q, epsabs=1e-12, epsrel=1e-12, limit=200)[0] for p, q in zip(points, points[1:]))

    def volume(self, level=None):
        return self.integral(self.area, 0, self.height if level is None else level)

    def centroid(self, level=None):
        top = self.height if level is None else level
        return self.integral(lambda z: z * self.area(z), 0, top) / self.volume(level)

    def inertia(self, z):
        """Second moment of the section about a diameter."""
        return math.pi / 4 * (self.outer(z) ** 4 - self.hole(z) ** 4)

    def metacentric_height(self, s):
        """Upright at a density relative to water."""
        total = self.volume()
        level = brentq(lambda z: self.volume(z) - s * total, 1e-9, self.height, xtol=1e-12)
        return self.inertia(level) / (s * total) - (self.centroid() - self.centroid(level))

    def flipped(self):
        h = self.height
        return Revolved(h, lambda z: self.outer(h - z), lambda z: self.hole(h - z), tuple(h - k for k in self.kinks))


def root(x):
    return math.sqrt(max(0.0, x))


def of(i):
    """The body of a row, z up as the library lists it; None where it is not one of revolution."""
    kind = i["shape"]
    g = lambda n: i.number(n + "_mm")
    if kind == "sphere":
        r, seam = g("R"), (g("seam") if "seam_mm" in i else 0)
        return Revolved(
            2 * r + seam,
            lambda z: root(r * r - (z - r) ** 2) if z < r else (r if z < r + seam else root(r * r - (z - r - seam) ** 2)),
            kinks=(r, r + seam),
        )
    if kind == "cap":
        r, h = g("R"), g("h")
        return Revolved(h, lambda z: root(r * r - (r - h + z) ** 2))
    if kind == "bowl":
        r, q = g("R"), g("r")
        return Revolved(r, lambda z: root(r * r - (r - z) ** 2), lambda z: root(q * q - (r - z) ** 2), (r - q,))
    if kind == "puck":
        r, h, e = g("R"), g("H"), (g("e") if "e_mm" in i else 0)

        def outer(z):
            d = max(e - z, z - (h - e), 0.0)
            return r - e + root(e * e - d * d) if e else r

        return Revolved(h, outer, kinks=(e, h - e))
    if kind == "cone":
        r, q, h = g("R"), (g("R2") if "R2_mm" in i else 0), g("H")
        return Revolved(h, lambda z: r + (q - r) * z / h)
    if kind == "ring":
        r, t = g("R"), g("r")
        return Revolved(2 * t, lambda z: r + root(t * t - (z - t) ** 2), lambda z: r - root(t * t - (z - t) ** 2), (t,))
    if kind == "spheroid":
        a, c = g("a"), g("c")
        return Revolved(2 * c, lambda z: a * root(1 - ((z - c) / c) ** 2), kinks=(c,))
    if kind == "capsule":
        r, l = g("R"), g("L")
        return Revolved(
            2 * r + l,
            lambda z: root(r * r - (z - r) ** 2) if z < r else (r if z < r + l else root(r * r - (z - r - l) ** 2)),
            kinks=(r, r + l),
        )
    return None


def outline(i):
    """Corner points of a star, mm."""
    n, big, small = int(i["n"]), i.number("Ro_mm"), i.number("Ri_mm")
    k = np.arange(2 * n)
    r = np.where(k % 2 == 0, big, small)
    return np.column_stack((r * np.cos(np.pi * k / n), r * np.sin(np.pi * k / n)))


def base(i):
    """Area and perimeter of the outline of a star (its corners) or a heart (a square and two half discs), mm2, mm."""
    if i["shape"] == "heart":
        q = i.number("q_mm")
        return q * q + math.pi * q * q / 4, 2 * q + math.pi * q
    x, y = outline(i).T
    area = abs(np.dot(x, np.roll(y, -1)) - np.dot(y, np.roll(x, -1))) / 2
    return area, float(np.hypot(np.roll(x, -1) - x, np.roll(y, -1) - y).sum())
