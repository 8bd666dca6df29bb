"""Packing of mixtures, pressing, damp strength: the published relations solved anew.

De Larrard (1999), compressible packing model; Yu and Standish (1991), linear mixture model; Westman (1936) with Yu, Zou
and Standish (1993); Furnas's limit; Janssen (1895); Schubert's blend.
Which of them were opened: docs/physics/packing.md.
"""

import csv
import math

import numpy as np
from scipy.optimize import brentq

from rows import HERE, main


def a(r):
    return math.sqrt(1 - (1 - r) ** 1.02)


def b(r):
    return 1 - (1 - r) ** 1.50


def virtual(y, d, beta):
    """gamma of each class."""
    out = []
    for i in range(len(y)):
        s = 1.0
        for j in range(len(y)):
            if d[j] > d[i]:
                s -= (1 - beta[i] + b(d[i] / d[j]) * beta[i] * (1 - 1 / beta[j])) * y[j]
            elif d[j] < d[i]:
                s -= (1 - a(d[j] / d[i]) * beta[i] / beta[j]) * y[j]
        out.append(beta[i] / s)
    return out


def index(y, beta, gamma, phi):
    return sum(yi / bi / (1 / phi - 1 / gi) for yi, bi, gi in zip(y, beta, gamma))


def solid_fraction(y, beta, gamma, k):
    top = min(gamma)
    return brentq(lambda p: index(y, beta, gamma, p) - k, 1e-9, top * (1 - 1e-12), xtol=1e-15)


def mix(mass, rho, loose, tapped, d):
    """Classes of a mix from mass fractions and the solid fractions of each powder poured and tapped."""
    volume = [m / r for m, r in zip(mass, rho)]
    y = [v / sum(volume) for v in volume]
    beta = [t * 10 / 9 for t in tapped]
    k0 = [l / (x - l) for l, x in zip(loose, beta)]
    return y, beta, virtual(y, d, beta), 1 / sum(yi / k for yi, k in zip(y, k0)), sum(mass) / sum(volume)


WORKED = mix((0.3, 0.6, 0.1), (1.665, 2.20, 1.48), (0.55, 0.46, 0.34), (0.61, 0.62, 0.50), (400, 100, 15))


def worked(i):
    y, beta, gamma, k0, rho = WORKED
    return solid_fraction(y, beta, gamma, k0 * (1 + i.number("P_kPa") / i.number("Pk_kPa"))), rho


def press_scale(i, _):
    y, beta, gamma, k0, rho = WORKED
    k = index(y, beta, gamma, i.number("density_g_per_cm3") / (rho * 1.04))
    return i.number("P_kPa") / (k / k0 - 1)


def linear(shares, sizes, alone):
    """Yu and Standish; shares and sizes coarse to fine, every size alone packed to the same solid fraction."""
    x, d = np.array(shares), np.array(sizes)
    v = 1 / alone
    best = 0.0
    for i in range(len(x)):
        inside = [j for j in range(len(x)) if min(d[i], d[j]) / max(d[i], d[j]) >= 0.154]
        lo, hi = inside[0], inside[-1]
        xm = sum(x[j] for j in inside)
        rho0 = 1 / v
        vm = v
        for h in inside:
            for l in inside:
                if h < l and d[l] / d[h] <= 0.741 and xm > 0:
                    r, p, q = d[l] / d[h], x[h] / xm, x[l] / xm
                    c = 10.288 * 10 ** (-1.4566 * rho0) * (-1.0002 + 0.1126 * r + 5.8455 * r**2 - 7.9488 * r**3 + 3.1222 * r**4)
                    e = (-1.3092 + 15.039 * rho0 - 37.453 * rho0**2 + 40.869 * rho0**3 - 17.110 * rho0**4) * (
                        -1.0029 + 0.3589 * r + 10.970 * r**2 - 22.197 * r**3 + 12.434 * r**4
                    )
                    vm += c * p * q + e * p * q * (p - q)
        total = vm * xm
        for j in range(lo):
            r = d[i] / d[j]
            total += (vm - (vm - 1) * ((1 - r) ** 2.0 + 0.4 * r * (1 - r) ** 3.7)) * x[j]
        for j in range(hi + 1, len(x)):
            r = d[j] / d[i]
            total += vm * (1 - ((1 - r) ** 3.3 + 2.8 * r * (1 - r) ** 2.7)) * x[j]
        best = max(best, total)
    return 1 / best


def westman(ratio, coarse, alone):
    """u^2 + 2 G u w + w^2 = 1, 1/G = 1.355 r^1.566, larger root of V."""
    v1 = v2 = 1 / alone
    g = 1 / (1.355 * ratio**1.566)

    def f(v):
        u = (v - v1 * coarse) / v2
        w = (v - coarse - v2 * (1 - coarse)) / (v1 - 1)
        return u * u + 2 * g * u * w + w * w - 1

    grid = np.linspace(1.0, 1.7, 70001)
    values = np.array([f(v) for v in grid])
    last = np.where(values[:-1] * values[1:] < 0)[0][-1]
    return 1 / brentq(f, grid[last], grid[last + 1])


def linear_row(i, name):
    law = westman if "westman" in name else lambda r, c, p: linear([c, 1 - c], [1, r], p)
    return law(i.number("ratio"), i.number("coarse"), i.number("alone"))


def damp_strength(i, _):
    s, eps, gamma, d, low, high = i.number("S"), 0.40, 0.0728, 100e-6, 0.3, 0.8
    bridges = 2.8 * (1 - eps) / eps * gamma / d
    full = 6 * s * (1 - eps) / eps * gamma / d
    t = min(1, max(0, (s - low) / (high - low)))
    return bridges * (1 - t) + full * t


def ingredient(name, what):
    path = HERE.parents[1] / "core/src/main/resources/org/fizzhull/recipe/values.tsv"
    with open(path, encoding="utf-8") as file:
        for row in csv.reader(file, delimiter="\t"):
            if row[:2] == [name, what]:
                return float(row[2])
    raise KeyError((name, what))


def damp_ball(i, _):
    """65 mm ball in two halves: 300 g bicarbonate, 150 g citric acid, 60 g corn starch, 10.2 g oil, 8.16 g water, with
    the densities of the ingredient table and every law of docs/physics/packing.md, 3 to 6."""
    names, grams = ("citric acid", "sodium bicarbonate", "corn starch"), (150, 300, 60)
    rho = [ingredient(n, "true density") for n in names]
    loose = [ingredient(n, "loose density") / r for n, r in zip(names, rho)]
    tapped = [ingredient(n, "tapped density") / r for n, r in zip(names, rho)]
    y, beta, gamma, k0, solid = mix([g / 510 for g in grams], rho, loose, tapped, [ingredient(n, "grain size") for n in names])
    oil, water = ingredient("sweet almond oil", "liquid density"), 0.9982
    ratio = 18.36 / 510
    volume_ratio = (10.2 / oil + 8.16 / water) / 510 * solid
    area, volume = math.pi * 65**2 / 4, math.pi * 65**3 / 6
    x = 4 * 0.35 * 0.43 * (volume / area / 2) / 65
    p = i.number("P_kPa") * (1 - math.exp(-x)) / x
    # press scale by class of powder: starch, below 30 um, gives way at a fifth of that of crystals
    k = 1 / sum(
        yi * (b - l) / l / (1 + p / (90 * share)) for yi, b, l, share in zip(y, beta, loose, (1, 1, 0.2))
    )
    packed = solid_fraction(y, beta, gamma, k)
    phi = packed
    for _ in range(200):
        s = volume_ratio * phi / (1 - phi)
        phi = packed * (1 - 0.25 * min(1, s / 0.02) * max(0, 1 - s / 0.8) / (1 + p / 20))
    phi = 1 / (1 / phi + 0.005 * math.log(max(p, 1)))
    return phi * solid * (1 + ratio) * volume / 1e3


def listed(text):
    return [float(x) for x in text.split()]


main(
    "packing",
    {
        "worked-solid-fraction": lambda i, _: worked(i)[0],
        "worked-density": lambda i, _: worked(i)[0] * worked(i)[1] * 1.04,
        "worked-press-scale": press_scale,
        "recursive": lambda i, _: 1 - (1 - i.number("alone")) ** int(i["sizes"]),
        "furnas": lambda i, _: 1
        / max(i.number("coarse") / i.number("alone"), i.number("coarse") + (1 - i.number("coarse")) / i.number("alone")),
        "linear-mixture": linear_row,
        "kawakita": lambda i, _: i.number("beta")
        * (lambda k: k / (k + 1))(i.number("K0") * (1 + i.number("squeeze"))),
        "janssen": lambda i, _: (lambda x: (1 - math.exp(-x)) / x)(
            4 * i.number("mu") * i.number("Kr") * i.number("depth_over_width")
        ),
        "saturation": lambda i, _: i.number("M") * i.number("rho_s_g_per_cm3") / i.number("rho_l_g_per_cm3")
        * (1 - i.number("eps")) / i.number("eps"),
        "damp-strength": damp_strength,
        "damp-ball": damp_ball,
    },
)
