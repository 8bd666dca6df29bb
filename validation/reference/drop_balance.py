"""Floating and fizzing of a ball, written apart from the library from the equations of core/docs/physics/voyage.md.

Plain Monte Carlo, quasi-static, 40,000 draws. Without arguments it computes the rows that cite it; with a number of draws it
prints what else the tests of forecasts expect of it, shares of the variance, measured rises, batches and a bowl:

    python3 drop_balance.py [draws]
"""
import functools
import math
import sys

import numpy as np

from rows import main

DRAWS = 40_000

G = 9.80665
R = 8.314462618
P0 = 101325.0


def draw(n, seed=1):
    rng = np.random.default_rng(seed)
    normal = rng.standard_normal

    def split(low, mid, high):
        u = rng.random(n)
        return np.where(u < 0.5, low + 2 * u * (mid - low), mid + (2 * u - 1) * (high - mid))

    return {
        "scale": 0.5e-3 * normal(n),
        "size": 0.2e-3 * normal(n),
        "true density": 1900 * (1 + 0.03 * normal(n)),
        "capacity": 4.6 * (1 + 0.12 * normal(n)),
        "temperature": 311.15 + normal(n),
        "speed": 4.4e-3 / 60 * 1.41 ** normal(n),
        "slope": 2.3 + 2.2 * normal(n),
        "energy": 30e3 + 8e3 * normal(n),
        "exponent": rng.random(n),
        "bubble": 1e-3 * 1.45 ** normal(n),
        "layer": split(0.2, 0.45, np.pi / (3 * np.sqrt(3))),
        "underside": rng.random(n),
        "gas share": split(0.35, 0.65, 0.9),
        "skin": 0.15e-3 * 2.0 ** normal(n),
        "plume": -0.1 + 0.4 * rng.random(n),
    }


def water(t):
    c = t - 273.15
    top = (999.83952 + 16.945176 * c - 7.9870401e-3 * c**2 - 46.170461e-6 * c**3 + 105.56302e-9 * c**4
           - 280.54253e-12 * c**5)
    density = top / (1 + 16.879850e-3 * c)
    th = t / 300
    viscosity = 1e-6 * (280.68 * th**-1.9 + 511.45 * th**-7.7 + 61.131 * th**-19.6 + 0.45903 * th**-40)
    x = 1 - t / 647.096
    tension = 0.2358 * x**1.256 * (1 - 0.625 * x)
    vapour = 611.21 * np.exp((18.678 - c / 234.5) * c / (257.14 + c))  # Buck (1996)
    return density, viscosity, tension, vapour


class Body:
    """What a draw fixes; area and plan area of the body over the two-thirds power of its volume, as it lies."""

    def __init__(self, d, grams, volume, area, plan, half):
        rho, mu, sigma, vapour = water(d["temperature"])
        ratio = 1 + 0.5 * area * d["size"] / volume
        self.volume = volume * ratio
        self.mass = grams / 1e3 + d["scale"]
        self.density = self.mass / self.volume
        self.porosity = np.maximum(0, 1 - self.density / d["true density"])
        capacity = d["capacity"]
        speed = d["speed"] * np.exp(-d["energy"] / R * (1 / d["temperature"] - 1 / 311.15)
                                    + d["slope"] * (self.porosity - 0.24))
        speed *= np.minimum(capacity / 4.6, 1.15) ** d["exponent"]
        self.speed = np.clip(speed, 0.15e-3 / 60, 20e-3 / 60)
        molar = R * d["temperature"] / (P0 + rho * G * half - vapour)
        self.flux = self.speed * self.density * capacity * d["gas share"] * molar
        self.layer = d["bubble"] * d["layer"] * np.minimum(1, (self.flux / 2.5e-4) ** 0.3)
        self.layer *= 1 + d["underside"] * (plan / area - 0.25)
        _, mu38, sigma38, _ = water(311.15)
        wicking = sigma / mu / (sigma38 / mu38)
        open_ = self.porosity**2 / (1 - self.porosity) / (0.48**2 / 0.52)
        self.out = self.flux + self.porosity * self.speed
        self.steady = d["skin"] * wicking * open_ * 0.010 / self.out
        self.tau = self.porosity * self.steady / (2 * self.out)
        self.rho = rho
        self.drift = 1.53 * (sigma * G / rho) ** 0.25
        self.plume = d["plume"]
        self.per_plan = area / plan

    def skin(self, t):
        return self.steady * np.sqrt(-np.expm1(-(t + 1) / self.tau))

    def lift(self, wet=1.0):
        j = self.flux * self.per_plan * wet
        return self.rho * (1 - self.plume * j / (1.2 * j + self.drift))

    def water_in(self, t, volume, area):
        core = np.maximum(0, 1 - self.skin(t) * area / (2.7 * volume))
        return self.porosity * self.rho * 0.9 * volume * (1 - core**3)

    def spare(self, t, volume, area):
        gas = np.minimum(self.layer * area, 0.3 * volume)
        return self.lift() * (volume + gas) - self.density * volume - self.water_in(t, volume, area)


def ball(d, grams, diameter=0.065):
    r = diameter / 2
    return Body(d, grams, 4 / 3 * np.pi * r**3, 4 * np.pi * r**2, np.pi * r**2, r)


def walk(b, steps=200):
    """Floats at once, rises later, fizz time and time of the first rise of a ball, whatever is left of it (inf: none).

    35 cm of water, 8 s from the balance to the surface.
    """
    radius = np.cbrt(3 * b.volume / (4 * np.pi))
    step = radius * (1 - 0.01 ** (1 / 3)) / steps
    t = np.zeros_like(radius)
    up = b.spare(t, b.volume, 4 * np.pi * radius**2) >= 0
    first = up.copy()
    at_once = up.copy()
    judged = np.zeros_like(up)
    later = np.zeros_like(up)
    rose = np.full_like(t, np.inf)
    for i in range(steps):
        r = radius - i * step
        volume = 4 / 3 * np.pi * r**3
        area = 4 * np.pi * r**2
        load = b.density * volume + b.water_in(t, volume, area)
        low, high = np.zeros_like(r), np.full_like(r, 2.0)
        for _ in range(40):  # draft of the ball over its radius
            mid = (low + high) / 2
            wet = mid / 2
            gas = np.minimum(b.layer * area * wet, 0.3 * volume)
            carried = b.lift(wet) * volume * mid**2 * (3 - mid) / 4 + b.lift(wet) * gas
            high = np.where(carried > load, mid, high)
            low = np.where(carried > load, low, mid)
        wet = np.where(up, high / 2, 1.0)
        t = t + step / (b.speed * wet)
        r = radius - (i + 1) * step
        now = b.spare(t, 4 / 3 * np.pi * r**3, 4 * np.pi * r**2) >= 0
        rises = now & ~up
        rose = np.where(rises & ~first & np.isinf(rose), t + 8, rose)
        early = rises & (t + 8 < 20)
        at_once |= early
        arrives = np.maximum(0, r - 8 * b.speed)  # it recedes on its way up
        later |= rises & (t + 8 >= 20) & ((arrives / radius) ** 3 >= 0.1) & ~at_once
        down = up & ~now & (t < 20)
        at_once &= ~down
        up = now
    return at_once, later & ~at_once, t, rose


def critical(d, diameter=0.065, turns=18, steps=60):
    """Heaviest ball that floats at once in each draw, g, by halving; the scale's error left out."""
    d = dict(d, scale=0 * d["scale"])
    low, high = np.full_like(d["size"], 80.0), np.full_like(d["size"], 300.0)
    for _ in range(turns):
        mid = (low + high) / 2
        up = walk(ball(d, mid, diameter), steps)[0]
        low, high = np.where(up, mid, low), np.where(up, high, mid)
    return (low + high) / 2


def batch(limit, mean, hand, scale=0.5):
    """Share of the draws in which nine of ten of a batch float, and the mean share; hand and scale differ by piece, g."""
    z = (limit - mean) / np.hypot(hand, scale)
    return (z >= 1.2815515655446004).mean(), norm_cdf(z).mean()


def norm_cdf(z):
    return 0.5 * (1 + np.vectorize(math.erf)(z / math.sqrt(2)))


def timed(d, seconds, grams, asked):
    """What a rise after some seconds of a ball of some grams leaves: chance of another weight, width of its spare in g.

    Every draw weighs as much as its own rise is likely to have been read; its spread is 4 s and 5 %.
    """
    _, _, _, rose = walk(ball(d, grams))
    weight = np.exp(-0.5 * ((rose - seconds) / np.hypot(4, 0.05 * seconds)) ** 2)
    b = ball(d, asked)
    spare = spares(b)
    order = np.argsort(spare)
    share = np.cumsum(weight[order]) / weight.sum()
    low, high = np.interp((0.025, 0.975), share, spare[order])
    before = np.subtract(*np.percentile(spare, (97.5, 2.5)))
    return (weight * walk(b)[0]).sum() / weight.sum(), (high - low) / before, weight.sum() ** 2 / (weight**2).sum()


def first_order(values, d, bins=64):
    total = values.var()
    shares = {}
    for name, x in d.items():
        order = np.argsort(x)
        parts = np.array_split(values[order], bins)
        shares[name] = max(0.0, (np.var([p.mean() for p in parts]) - total / (len(values) / bins)) / total)
    return shares


@functools.cache
def walked(grams):
    b = ball(draw(DRAWS), grams)
    return b, walk(b)


def spares(b):
    """What is to spare of a ball at the drop, g."""
    return 1e3 * b.spare(0 * b.volume, b.volume, 4 * np.pi * np.cbrt(3 * b.volume / (4 * np.pi)) ** 2)


def printed(n):
    d = draw(n)
    for grams in (120, 125, 130, 135, 140, 142, 145, 150, 155, 160):
        b = ball(d, grams)
        at_once, later, t, _ = walk(b)
        spare = spares(b)
        print(grams, "g once %.3f later %.3f" % (at_once.mean(), later.mean()),
              "spare %.1f (%.1f to %.1f) g" % tuple(np.percentile(spare, (50, 2.5, 97.5))),
              "fizz %.2f (%.2f to %.2f, 95 %% %.2f to %.2f) min" % tuple(
                  np.percentile(t, (50, 15.87, 84.13, 2.5, 97.5)) / 60))
        if grams == 142:
            shares = first_order(spare, d)
            print("   " + ", ".join("%s %.2f" % (k, v) for k, v in sorted(shares.items(), key=lambda s: -s[1]) if v > 0.005))
    for seconds, grams, asked in ((95, 142, 142), (95, 150, 142), (200, 150, 145)):
        print("rise after %d s of %d g: %d g floats %.3f, spare as wide x %.2f (%.0f draws)" % (
            seconds, grams, asked, *timed(d, seconds, grams, asked)))
    limit = critical({k: v[:8000] for k, v in d.items()})
    print("critical weight %.1f (%.1f to %.1f) g" % tuple(np.percentile(limit, (50, 2.5, 97.5))))
    for mean, hand in ((138, 2), (142, 1), (146, 3)):
        print("batch %d g +- %d g: nine of ten %.3f, mean share %.3f" % (mean, hand, *batch(limit, mean, hand)))
    # a flooded bowl of 90 by 15 mm: 2/3 pi (45^3 - 30^3) mm3, rim up, shadow of the outer circle
    big, small = 0.045, 0.030
    volume = 2 / 3 * np.pi * (big**3 - small**3)
    area = 2 * np.pi * (big**2 + small**2) + np.pi * (big**2 - small**2)
    for density in (950, 1000, 1050, 1100, 1150):
        b = Body(d, 1e3 * density * volume, volume, area, np.pi * big**2, big / 2)
        spare = b.spare(0, b.volume, area * (b.volume / volume) ** (2 / 3))
        print("bowl", density, "kg/m3: balance at the drop above 0 in %.3f" % (spare >= 0).mean())


if __name__ == "__main__":
    if len(sys.argv) > 1:
        printed(int(sys.argv[1]))
    else:
        main(
            "drop_balance",
            {
                "ball-at-once": lambda i, _: walked(i.number("mass_g"))[1][0].mean(),
                "ball-spare": lambda i, _: np.percentile(spares(walked(i.number("mass_g"))[0]), i.number("percent")),
                "rises-later": lambda i, _: walked(i.number("mass_g"))[1][1].mean(),
                "fizz-time": lambda i, _: np.median(walked(i.number("mass_g"))[1][2]) / 60,
            },
        )
