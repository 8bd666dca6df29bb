"""What readings of balls held under water leave of the spread of the next one, written apart from the library.

200 truths are drawn from the priors of drop_balance.py; each dunks balls of 142 g from one mould, and what the scale shows
weighs 60,000 other draws by its likelihood. A ball is read once, after 5 s, or several times, two seconds apart: half of the
variance of a reading is the same in all of one ball, the rest forgets itself within a second. The next ball has the same mould and mix, its own reading of the scale and
what two pieces of one mould differ by. Width: median over the truths of the width of the 95 % interval of what is to spare at
the drop, over that before. Inside: how many of the 200 next balls lie in it.
"""
import functools

import numpy as np

from drop_balance import ball, draw
from rows import Inputs, main, rows

CARBON_DIOXIDE = 44.0095e-3
OWN = 0.15e-3  # from piece to piece of one mould, m across
FELT = 0.9
GRAMS = 142
SECONDS = 5
APART = 2
STAYS = 0.5
SETTLING = 1
TRUTHS = 200
DRAWS = 60000


def area(volume):
    return 4 * np.pi * np.cbrt(3 * volume / (4 * np.pi)) ** 2


def spare(d):
    b = ball(d, GRAMS)
    return 1e3 * b.spare(0, b.volume, area(b.volume))


def reading(d, felt, seconds):
    """Weight before, less gas that has left, and the spare of what is left, g; the layer is filled as 1 - exp(-t/s)."""
    b = ball(d, GRAMS)
    filled = -np.expm1(-seconds)
    radius = np.cbrt(3 * b.volume / (4 * np.pi)) - b.speed * seconds
    volume = 4 / 3 * np.pi * radius**3
    face = 4 * np.pi * radius**2
    gone = b.density * d["capacity"] * d["gas share"] * CARBON_DIOXIDE * (b.volume - volume)
    gas = np.minimum(filled * b.layer * face, 0.3 * volume)
    lifting = b.rho + filled * (b.lift() - b.rho) if felt else b.rho
    held = lifting * (volume + gas) - b.density * volume - b.water_in(seconds, volume, face)
    return 1e3 * (b.mass - gone + held)


def likelihood(shown, expected, covariance, chance):
    """Of readings (ball, time) and what each draw makes of them (time, draw).

    Whether the plume is felt is one thing for all dunks.
    """
    root = np.linalg.inv(np.linalg.cholesky(covariance))
    felt, unfelt = (
        np.exp(-0.5 * sum(((root @ (ball[:, None] - of)) ** 2).sum(axis=0) for ball in shown)) for of in expected)
    return chance * felt + (1 - chance) * unfelt


def interval(values, order, weight):
    share = np.cumsum(weight[order]) / weight.sum()
    return np.interp((0.025, 0.975), share, values[order])


@functools.cache
def table(size_mm, error, dunks, readings=1, felt=FELT, own_dunked=OWN):
    """Narrowed and inside; the last two arguments are the chance that the plume is felt and the dunked piece's own difference, m across."""
    rng = np.random.default_rng(7)
    times = APART * np.arange(1, readings + 1) if readings > 1 else np.array([SECONDS])
    alike = STAYS + (1 - STAYS) * np.exp(-np.abs(times[:, None] - times) / SETTLING)

    def believed(n, seed):
        d = draw(n, seed)
        d["size"] *= size_mm / 0.2
        return d

    prior = believed(DRAWS, 11)
    before = spare(prior)
    width = np.subtract(*np.percentile(before, (97.5, 2.5)))
    face = 0.5e3 * 993 * area(np.pi / 6 * 0.065**3)
    own, own_dunked = face * OWN, face * own_dunked
    after = before + own * rng.standard_normal(DRAWS)
    order = np.argsort(after)
    dunked = dict(prior, scale=0 * prior["scale"])
    expected = [np.array([reading(dunked, of, t) for t in times]) for of in (True, False)]
    covariance = own_dunked**2 + error**2 * alike
    errors = np.linalg.cholesky(covariance)
    truth = believed(TRUTHS, 13)
    again = [dict(truth, scale=0.5e-3 * rng.standard_normal(TRUTHS)) for _ in range(dunks + 1)]
    shows = [[np.array([reading(d, of, t) for t in times]) for of in (True, False)] for d in again[1:]]
    following = spare(again[0]) + own * rng.standard_normal(TRUTHS)
    widths, inside = [], 0
    for i in range(TRUTHS):
        one = 0 if rng.random() < felt else 1
        shown = [s[one][:, i] + errors @ rng.standard_normal(readings) for s in shows]
        low, high = interval(after, order, likelihood(shown, expected, covariance, felt))
        widths.append(high - low)
        inside += low <= following[i] <= high
    return np.median(widths) / width, inside


def found(i):
    return table(i.number("size_mm"), i.number("error_g"), int(i.number("dunks")), int(i.number("readings")))


if __name__ == "__main__":
    main("dunk", {"dunk-width": lambda i, _: found(i)[0]})
    for row in rows("dunk"):
        print(row["id"], "next pieces inside: %d of %d" % (found(Inputs(row["inputs"]))[1], TRUTHS))
    for size in (0.2, 1):
        for error in (1, 1.5, 2):
            without = [table(size, error, 1, 1, *of)[0] for of in ((FELT, OWN), (1, OWN), (FELT, 0), (1, 0))]
            print("size to %g mm, reading to %g g: %.2f; plume felt %.2f, balls alike %.2f, both %.2f" % (size, error, *without))
