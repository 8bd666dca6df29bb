"""Bodies afloat: drafts, metacentric heights, boats, bells, limits of stability, and all ways a body rests. mm, degrees.

Upright bodies of revolution: volumes, centres and water planes by quadrature of the outline. Ways: the potential energy
U(n) = G.n - B.n of a dense lattice of points, of which the lowest share s is under water; its minima over directions.
Cubes, bars, cylinders on their side and cones: closed forms, docs/physics/hydrostatics.md, 2.
"""

import math
from functools import lru_cache

import numpy as np
from scipy.optimize import brentq, minimize_scalar
from scipy.special import roots_legendre

import bodies
from rows import main


@lru_cache(maxsize=None)
def upright_at(key):
    i = dict(key)

    class Row(dict):
        def number(self, name):
            return float(self[name])

    row = Row(i)
    body = bodies.of(row)
    if i["up"] == "-z":
        body = body.flipped()
    s = float(i["s"])
    total = body.volume()
    level = brentq(lambda z: body.volume(z) - s * total, 1e-9, body.height, xtol=1e-12)
    centre = body.centroid(level)
    energy = body.centroid() - centre
    bm = body.inertia(level) / (s * total)
    return {
        "draft": level,
        "buoyancy-height": centre,
        "water-line": body.outer(level),
        "water-plane": body.area(level),
        "energy": energy,
        "bm": bm,
        "gm": bm - energy,
    }


def corner(i, what):
    """A cube of side a, corner down, at half its density: hexagonal water plane."""
    a = i.number("a_mm")
    side = a / math.sqrt(2)
    area = 1.5 * math.sqrt(3) * side**2
    moment = 5 * math.sqrt(3) / 16 * side**4
    energy = 13 * math.sqrt(3) / 96 * a
    return {
        "water-plane": area,
        "energy": energy,
        "gm": moment / (a**3 / 2) - energy,
        "first-moment": energy * (a**3 / 2) / a**4,
    }[what]


def afloat(i, name):
    what = name.split("/")[0]
    if i["shape"] == "block":
        if i["up"] == "111":
            return corner(i, what)
        a, b, c, s = (i.number(n) for n in ("a_mm", "b_mm", "c_mm", "s"))
        return min(a, b) ** 2 / (12 * s * c) - c * (1 - s) / 2
    if i["shape"] == "spheroid" and i["up"] == "x":
        # an affine image of a ball: lengths along the vertical scale, BG with them
        a, c, s = i.number("a_mm"), i.number("c_mm"), i.number("s")
        x = brentq(lambda t: t * t * (3 - 2 * t) - s, 0, 1, xtol=1e-15)
        below = 3 * (2 - 2 * x) ** 2 / (4 * (3 - 2 * x))
        return {"draft": 2 * a * x, "gm-larger": below / a * (c * c - a * a)}[what]
    return upright_at(tuple(sorted(i.items())))[what]


def cap_root(volume, r):
    return brentq(lambda d: math.pi * d * d * (3 * r - d) / 3 - volume, 0, 2 * r, xtol=1e-13)


def boat(i, name):
    big, small = i.number("R_mm"), i.number("r_mm")
    what = name.split("/")[0].replace("mesh-", "")
    if what == "boat-limit":
        return 1 / (1 - (small / big) ** 3)
    centre = 3 * (big**4 - small**4) / (8 * (big**3 - small**3))
    draft = cap_root(i.number("s") * 2 * math.pi / 3 * (big**3 - small**3), big)
    return {
        "boat-draft": draft,
        "boat-freeboard": big - draft,
        "boat-gm": centre,
        "boat-rim-dips": math.degrees(math.asin((big - draft) / big)),
    }[what]


def bell(i, name):
    small = i.number("r_mm")
    what = name.split("/")[0]
    if what == "bell-gm":
        big, s = i.number("R_mm"), i.number("s")
        return 3 * (big**4 - small**4) / (8 * (big**3 - small**3)) * (1 - s) / s
    gas = i.number("gas_share") * 2 * math.pi / 3 * small**3
    y = brentq(lambda y: math.pi * (small - y) ** 2 * (2 * small + y) / 3 - gas, 0, small, xtol=1e-13)
    return y if what == "bell-water" else math.degrees(math.asin(y / small))


def squeezed(i, _):
    p, rho, depth = i.number("p0_Pa"), i.number("rho_kg_per_m3"), i.number("depth_mm") / 1e3
    return p / (p + rho * 9.80665 * depth)


def cylinder_limit(i, _):
    s = i.number("s")
    if i["up"] == "z":
        return 1 / math.sqrt(8 * s * (1 - s))
    # on its side, diameter 1: segment of half angle phi; stable about the short axis from L on
    phi = brentq(lambda f: f - math.sin(f) * math.cos(f) - math.pi * s, 0, math.pi, xtol=1e-15)
    chord = math.sin(phi)
    area = math.pi / 4 * s
    # centre of the whole is the middle of the ring; the segment's centre lies chord^3/(12 area) below it
    bg = chord**3 / (12 * area)
    # J about the axis across the length: chord L^3/12 over V = area L
    return math.sqrt(12 * area * bg / chord)


def bar_angle(i, _):
    s = i.number("s")
    if s <= 0.25:
        return math.degrees(math.atan(math.sqrt(12 * s * (1 - s) - 2)))
    legs = np.roots([1, -1.5, 2 * s])
    return math.degrees(math.atan(min(legs) / max(legs)))


def cone_limit(i, _):
    c = math.cos(math.radians(i.number("half_angle_deg"))) ** 6
    return c if i["up"] == "-z" else 1 - c


def cube_equal(_, __):
    """Relative density at which a cube's energy is the same corner down and tilted about an edge."""

    def tilted(s):
        tan = math.sqrt(12 * s * (1 - s) - 2)
        angle = math.atan(tan)
        return (0.5 - s / 2 - tan**2 / (24 * s)) * math.cos(angle) + tan / (12 * s) * math.sin(angle)

    def at_corner(s):
        # heights t = x + y + z over the corner, 1 < t < 2 at the level
        t = brentq(lambda t: t**3 / 6 - (t - 1) ** 3 / 2 - s, 1, 2, xtol=1e-15)
        below = 1 / 8 + bodies.quad(lambda v: v * (-2 * v * v + 6 * v - 3) / 2, 1, t, epsrel=1e-13)[0]
        return (1.5 - below / s) / math.sqrt(3)

    return brentq(lambda s: at_corner(s) - tilted(s), 0.22, 0.24, xtol=1e-13)


def halves(i, _):
    below, above = i.number("s_below"), i.number("s_above")
    return 3 * i.number("R_mm") / 8 * (below - above) / (below + above)


class Slices:
    """A body of revolution afloat at any angle of its axis: level chords of circular slices, Gauss-Legendre in z."""

    def __init__(self, i):
        self.body = body = bodies.of(i)
        points = sorted({0.0, body.height, *(k for k in body.kinks if 0 < k < body.height)})
        x, w = roots_legendre(400)
        z, weight = [], []
        for p, q in zip(points, points[1:]):
            # cosine stretch: dense at both ends, where outlines have square-root ends
            t = (x + 1) * math.pi / 2
            z.append(p + (q - p) * (1 - np.cos(t)) / 2)
            weight.append(w * math.pi / 2 * (q - p) * np.sin(t) / 2)
        self.z, self.w = np.concatenate(z), np.concatenate(weight)
        self.outer = np.array([body.outer(v) for v in self.z])
        self.hole = np.array([body.hole(v) for v in self.z])
        self.s = i.number("s")
        full = np.pi * (self.outer**2 - self.hole**2) * self.w
        self.volume = full.sum()
        self.middle = (full * self.z).sum() / self.volume
        self.reach = body.height + 2 * self.outer.max()

    @staticmethod
    def segment(r, x):
        """Area of the part of a disc with coordinate below x, and its first moment."""
        u = np.clip(x / np.where(r > 0, r, 1), -1, 1)
        area = r * r * (np.pi - np.arccos(u) + u * np.sqrt(1 - u * u))
        return area, -2 / 3 * r**3 * (1 - u * u) ** 1.5

    def energy(self, angle):
        """G.n - B.n for the axis at this angle from the vertical."""
        c, s = math.cos(angle), math.sin(angle)
        height = (self.z - self.middle) * c

        def cut(level):
            x = (level - height) / max(s, 1e-9)
            ao, mo = self.segment(self.outer, x)
            ah, mh = self.segment(self.hole, x)
            return (ao - ah) * self.w, (mo - mh) * self.w

        level = brentq(lambda l: cut(l)[0].sum() - self.s * self.volume, -self.reach, self.reach, xtol=1e-12)
        area, moment = cut(level)
        return -((area * height).sum() + (moment * s).sum()) / (self.s * self.volume)

    def rests(self):
        """Angles of the axis at every minimum: the two ends by their metacentric heights, the rest by the energy."""
        grid = np.radians(np.linspace(1, 179, 357))
        u = np.array([self.energy(a) for a in grid])
        found = [0.0] if self.body.metacentric_height(self.s) > 0 else []
        for k in range(1, len(grid) - 1):
            if u[k] < u[k - 1] and u[k] <= u[k + 1]:
                best = minimize_scalar(self.energy, bounds=(grid[k - 1], grid[k + 1]), method="bounded", options={"xatol": 1e-9})
                found.append(math.degrees(best.x))
        if self.body.flipped().metacentric_height(self.s) > 0:
            found.append(180.0)
        return found


def star_rests(i):
    """Angles of the axis of an upright star at the minima of its energy, by a lattice of points of which the lowest share
    is under water, over tilts and azimuths 4 degrees apart."""
    corners = bodies.outline(i)
    high, s = i.number("H_mm"), i.number("s")
    side = np.arange(-40, 40, 1.0) + 0.5
    x, y = (v.ravel() for v in np.meshgrid(side, side))
    inside = np.zeros(x.shape, bool)
    for (x1, y1), (x2, y2) in zip(corners, np.roll(corners, -1, axis=0)):
        crosses = (y1 > y) != (y2 > y)
        inside ^= crosses & (x < x1 + (y - y1) * (x2 - x1) / np.where(y2 == y1, 1, y2 - y1))
    x, y = x[inside], y[inside]
    layers = np.arange(0.5, high, 1.0) - high / 2
    points = np.column_stack((np.tile(x, len(layers)), np.tile(y, len(layers)), np.repeat(layers, len(x))))
    points -= points.mean(axis=0)
    wet = int(s * len(points))
    tilts, turns = np.radians(np.arange(0, 181, 4)), np.radians(np.arange(0, 72, 4))

    def energy(tilt, turn):
        up = (math.sin(tilt) * math.cos(turn), math.sin(tilt) * math.sin(turn), math.cos(tilt))
        return -np.partition(points @ up, wet)[:wet].mean()

    u = np.array([[energy(t, f) for f in turns] for t in tilts])
    found = []
    for k in range(len(tilts)):
        for m in range(len(turns)):
            around = [u[k + dk, (m + dm) % len(turns)] for dk in (-1, 0, 1) if 0 <= k + dk < len(tilts) for dm in (-1, 0, 1)]
            pole = k in (0, len(tilts) - 1)
            if u[k, m] <= min(around) and not (pole and m):
                found.append(math.degrees(tilts[k]))
    return sorted(found)


@lru_cache(maxsize=None)
def rests(key):
    class Row(dict):
        def number(self, name):
            return float(self[name])

    row = Row(dict(key))
    return star_rests(row) if row["shape"] == "star" else Slices(row).rests()


def resting(i, name):
    key = tuple(sorted((k, v) for k, v in i.items() if k != "way"))
    angles = rests(key)
    return len(angles) if name.startswith("ways") else angles[int(i["way"]) - 1]


def limits(i, name):
    if "ball-draft" in name:
        ratio = i.number("displaced_mm3") / (4 * math.pi / 3 * i.number("R_mm") ** 3)
        return 2 * i.number("R_mm") * brentq(lambda t: t * t * (3 - 2 * t) - ratio, 0, 1, xtol=1e-15)
    return math.cos(math.radians(30)) ** 6


upright = ("draft", "buoyancy-height", "water-line", "water-plane", "energy", "bm", "gm", "gm-larger", "first-moment")
boats = ("boat-draft", "boat-freeboard", "boat-gm", "boat-rim-dips", "boat-limit")
if __name__ == "__main__":
    main(
        "afloat",
        {
            **{name: afloat for name in upright},
            **{name: boat for name in boats},
            **{"mesh-" + name: boat for name in boats},
            **{name: bell for name in ("bell-gm", "bell-water", "bell-spills")},
            "bell-squeezed": squeezed,
            "cylinder-limit": cylinder_limit,
            "cube-equal": cube_equal,
            "bar-angle": bar_angle,
            "cone-limit": cone_limit,
            "halves-gm": halves,
            "ways": resting,
            "way-angle": resting,
            "mesh-limit": limits,
        },
    )
