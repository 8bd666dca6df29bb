"""Drying as diffusion with a constant coefficient: series, time constants, and what the depth profile alone makes of them.

Series: J. Crank, The Mathematics of Diffusion (1975), chapters 4 to 6; Newman's products for cylinders and blocks;
spherical waves of odd order for half a ball with all faces open. Along the depth profile: finite volumes, whose matrix is
taken apart into its eigenvectors, so that time is exact.
"""

import math
from functools import lru_cache

import numpy as np
from scipy.integrate import quad
from scipy.linalg import eigh_tridiagonal
from scipy.optimize import brentq
from scipy.sparse import coo_matrix
from scipy.sparse.linalg import spsolve
from scipy.special import eval_legendre, jn_zeros, jv, spherical_jn

import water
from rows import main

ODD = (2 * np.arange(2000) + 1) * math.pi
ROD = jn_zeros(0, 400)


def slab(half, fo):
    return float(np.sum(8 / ODD**2 * np.exp(-(ODD**2) * fo / (4 * half**2))))


def rod(radius, fo):
    return float(np.sum(4 / ROD**2 * np.exp(-(ROD**2) * fo / radius**2)))


def ball(fo):
    n = np.arange(1, 2000)
    return float(np.sum(6 / (n * math.pi) ** 2 * np.exp(-((n * math.pi) ** 2) * fo)))


@lru_cache(maxsize=1)
def half_ball_waves():
    """Decay k^2 and share of each wave that vanishes on the flat face and on the round one."""
    waves = []
    for order in range(1, 60, 2):
        part = quad(lambda x: eval_legendre(order, x), 0, 1)[0]
        grid = np.arange(order + 0.5, 110, 0.1)
        values = spherical_jn(order, grid)
        for lo, hi, a, b in zip(grid, grid[1:], values, values[1:]):
            if a * b < 0:
                k = brentq(lambda x: spherical_jn(order, x), lo, hi, xtol=1e-14)
                mean = quad(lambda r: r * r * spherical_jn(order, k * r), 0, 1, limit=200)[0]
                norm = spherical_jn(order + 1, k) ** 2 / 2
                waves.append((k * k, 3 * (2 * order + 1) * part**2 * mean**2 / norm))
    return np.array(waves).T


def half_ball(fo):
    k2, share = half_ball_waves()
    return float(np.sum(share * np.exp(-k2 * fo)))


LEFT = {
    "slab": lambda fo: slab(1, fo),
    "rod": lambda fo: rod(1, fo),
    "ball": ball,
    "dome on its tray": ball,
    "dome on a rack": half_ball,
    "puck": lambda fo: rod(1, fo) * slab(1, fo),
    "flat puck": lambda fo: rod(35 / 30, fo) * slab(14 / 30, fo),
    "cube": lambda fo: slab(1, fo) ** 3,
    "block": lambda fo: slab(1, fo) * slab(20 / 30, fo) * slab(15 / 30, fo),
}


def film_left(body, biot, fo):
    """Surface resistance, Crank 4.53, 5.49, 6.45."""
    total = 0.0
    for n in range(60):
        if body == "slab":
            b = brentq(lambda x: x * math.sin(x) - biot * math.cos(x), n * math.pi + 1e-12, (n + 0.5) * math.pi)
            total += 2 * biot**2 / (b * b * (b * b + biot**2 + biot)) * math.exp(-b * b * fo)
        elif body == "rod":
            lo = 1e-9 if n == 0 else jn_zeros(1, n)[-1]
            b = brentq(lambda x: x * jv(1, x) - biot * jv(0, x), lo, jn_zeros(0, n + 1)[-1])
            total += 4 * biot**2 / (b * b * (b * b + biot**2)) * math.exp(-b * b * fo)
        else:
            lo = 1e-9 if n == 0 else n * math.pi + 1e-9
            f = lambda x: x * math.cos(x) + (biot - 1) * math.sin(x)
            b = brentq(f, lo, (n + 1) * math.pi - 1e-9)
            total += 6 * biot**2 / (b * b * (b * b + biot * (biot - 1))) * math.exp(-b * b * fo)
    return total


def crank(i, _):
    body, fo = i["body"], i.number("Fo")
    if i["Bi"] == "infinite":
        return 1 - LEFT[body](fo)
    return 1 - film_left("ball" if body == "dome on its tray" else body, float(i["Bi"]), fo)


def profile(body):
    """Volume and area left at depth d, and the deepest depth, in units of the length the Fourier number carries."""
    pi = math.pi
    if body == "dome on a rack":

        def volume(d):
            # ball of radius 1 - d, cut at height d
            r = 1 - d
            return pi * (r - d) ** 2 * (2 * r + d) / 3

        def area(d):
            r = 1 - d
            return 2 * pi * r * (r - d) + pi * (r * r - d * d)

        return volume, area, 0.5
    if body in ("puck", "flat puck"):
        r, h = (1, 1) if body == "puck" else (35 / 30, 14 / 30)
        return (
            lambda d: 2 * pi * (r - d) ** 2 * (h - d),
            lambda d: 2 * pi * (r - d) ** 2 + 4 * pi * (r - d) * (h - d),
            min(r, h),
        )
    a, b, c = {"cube": (1, 1, 1), "block": (1, 20 / 30, 15 / 30)}[body]
    return (
        lambda d: 8 * (a - d) * (b - d) * (c - d),
        lambda d: 8 * ((a - d) * (b - d) + (b - d) * (c - d) + (c - d) * (a - d)),
        min(a, b, c),
    )


@lru_cache(maxsize=None)
def modes(body, cells=2000):
    volume, area, deepest = profile(body)
    d = np.linspace(0, deepest, cells + 1)
    v = np.array([volume(x) for x in d])
    cell = v[:-1] - v[1:]
    step = deepest / cells
    link = np.array([area(x) for x in d[1:-1]]) / step
    skin = area(0) / (step / 2)
    diagonal = np.concatenate(([skin + link[0]], link[:-1] + link[1:], [link[-1]]))
    root = np.sqrt(cell)
    values, vectors = eigh_tridiagonal(diagonal / cell, -link / (root[:-1] * root[1:]))
    weight = (vectors.T @ root) ** 2 / cell.sum()
    return values, weight


def profile_left(body, fo, c):
    values, weight = modes(body)
    return float(np.sum(weight * np.exp(-values * fo / c)))


def time_ratio(body, c, done):
    exact = brentq(lambda fo: 1 - LEFT[body](fo) - done, 1e-6, 5)
    ours = brentq(lambda fo: 1 - profile_left(body, fo, c) - done, 1e-6, 5)
    return ours / exact


def profile_time(i, _):
    body, fo = i["body"], i.number("Fo")
    done = 1 - LEFT[body](fo)
    return brentq(lambda x: 1 - profile_left(body, x, i.number("c")) - done, 1e-6, 5) / fo


def hollow_ball(i, _):
    a, b = i.number("inner_radius_mm") / 1e3, i.number("outer_radius_mm") / 1e3
    t = i.number("hours") * 3600
    n = np.arange(1, 400)
    term = (b * (-1.0) ** n - a) ** 2 / n**2 * np.exp(-(n**2) * math.pi**2 * i.number("D") * t / (b - a) ** 2)
    return 1 - 6 / (math.pi**2 * (a * a + a * b + b * b)) * float(term.sum())


def tau_profile(volume, area, deepest):
    return quad(lambda d: volume(d) ** 2 / area(d), 0, deepest, epsrel=1e-12)[0] / volume(0)


def ring_tau(middle, tube):
    """Mean of u over the tube of a ring, laplacian u = -1, u = 0 on it: second differences in polar coordinates."""
    ns, nf = 240, 96
    hs, hf = tube / ns, math.pi / nf
    s = (np.arange(ns) + 0.5) * hs
    f = (np.arange(nf) + 0.5) * hf  # upper half by symmetry
    number = lambda k, m: k * nf + m
    i, j, v, right = [], [], [], np.zeros(ns * nf)
    radius = lambda x, y: middle + x * np.cos(y)
    volume = np.zeros(ns * nf)
    for k in range(ns):
        for m in range(nf):
            here = number(k, m)
            volume[here] = radius(s[k], f[m]) * s[k] * hs * hf
            total = 0.0
            for k2, edge in ((k - 1, s[k] - hs / 2), (k + 1, s[k] + hs / 2)):
                conductance = radius(edge, f[m]) * edge * hf / hs
                if k2 == ns:
                    total += 2 * conductance
                elif k2 >= 0:
                    total += conductance
                    i.append(here), j.append(number(k2, m)), v.append(-conductance)
            for m2, edge in ((m - 1, f[m] - hf / 2), (m + 1, f[m] + hf / 2)):
                if 0 <= m2 < nf:
                    conductance = radius(s[k], edge) * hs / (s[k] * hf)
                    total += conductance
                    i.append(here), j.append(number(k, m2)), v.append(-conductance)
            i.append(here), j.append(here), v.append(total)
            right[here] = volume[here]
    u = spsolve(coo_matrix((v, (i, j))).tocsc(), right)
    return float((u * volume).sum() / volume.sum())


def shell_tau(outer, inner):
    """A half shell, all faces open: second differences in radius and polar angle."""
    nr, nf = 60, 240
    hr, hf = (outer - inner) / nr, (math.pi / 2) / nf
    r = inner + (np.arange(nr) + 0.5) * hr
    f = (np.arange(nf) + 0.5) * hf
    i, j, v = [], [], []
    volume = np.zeros(nr * nf)
    number = lambda k, m: k * nf + m
    for k in range(nr):
        for m in range(nf):
            here = number(k, m)
            volume[here] = r[k] ** 2 * math.sin(f[m]) * hr * hf
            total = 0.0
            for k2, edge in ((k - 1, r[k] - hr / 2), (k + 1, r[k] + hr / 2)):
                conductance = edge**2 * math.sin(f[m]) * hf / hr
                if 0 <= k2 < nr:
                    total += conductance
                    i.append(here), j.append(number(k2, m)), v.append(-conductance)
                else:
                    total += 2 * conductance
            for m2, edge in ((m - 1, f[m] - hf / 2), (m + 1, f[m] + hf / 2)):
                conductance = math.sin(edge) * hr / hf
                if 0 <= m2 < nf:
                    total += conductance
                    i.append(here), j.append(number(k, m2)), v.append(-conductance)
                elif m2 == nf:
                    total += 2 * conductance
            i.append(here), j.append(here), v.append(total)
    u = spsolve(coo_matrix((v, (i, j))).tocsc(), volume)
    return float((u * volume).sum() / volume.sum())


def shape_factor(i, name):
    what = name.split("/")[1]
    if what in ("ball", "dome-tray"):
        return (1 / 15) / tau_profile(lambda d: 4 * math.pi / 3 * (1 - d) ** 3, lambda d: 4 * math.pi * (1 - d) ** 2, 1)
    if what in ("ring", "thin-ring"):
        middle, tube = (30, 15) if what == "ring" else (90, 10)
        return ring_tau(middle, tube) / (tube**2 / 8)
    if what == "bowl-thin":
        big, small = 100.0, 96.0
        # left at depth d: the shell of radii big - d and small + d, cut at height d above the rim plane
        def volume(d):
            part = lambda r: math.pi * (r - d) ** 2 * (2 * r + d) / 3
            return part(big - d) - part(small + d)

        def area(d):
            round_faces = 2 * math.pi * ((big - d) * (big - 2 * d) + (small + d) * small)
            return round_faces + math.pi * ((big - d) ** 2 - (small + d) ** 2)

        return shell_tau(big, small) / tau_profile(volume, area, (big - small) / 2 * (1 - 1e-12))
    body = {"dome-rack": "dome on a rack", "cylinder": "puck", "puck": "flat puck", "cube": "cube", "block": "block"}[what]
    if body == "dome on a rack":
        k2, share = half_ball_waves()
        exact = float(np.sum(share / k2))
    else:
        exact = quad(LEFT[body], 0, 0.01, limit=400)[0] + quad(LEFT[body], 0.01, 3, limit=400)[0]
    return exact / tau_profile(*profile(body))


def front(i, _):
    """Hours until 95 % of the water of a ball has gone from a front that recedes evenly."""
    r, t = i.number("ball_mm") / 2e3, i.kelvin()
    w = i.number("water") * i.number("rho")
    d = 2.178e-5 * (t / 273.15) ** 1.81 * i.number("eps_g") ** (4 / 3)
    drop = (i.number("a_film") - i.number("RH") / 100) * water.wagner_pruss2002(t) / (461.52 * t)
    at = r * 0.05 ** (1 / 3)
    inside = w / (d * drop) * (r * r / 6 - at * at / 2 + at**3 / (3 * r))
    return (inside + w * (r**3 - at**3) / (3 * r * r * i.number("h_m") * drop)) / 3600


main(
    "diffusion",
    {
        "crank": crank,
        "series": lambda i, _: 1 - LEFT[i["body"]](i.number("Fo")),
        "hollow-ball": hollow_ball,
        "shape-factor": shape_factor,
        "profile-time": profile_time,
        "profile-error": lambda i, _: time_ratio(i["body"], i.number("c"), i.number("done")),
        "front": front,
    },
)
