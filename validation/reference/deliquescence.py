"""Water activity of solutions saturated with one, two or three of citric, malic and tartaric acid at 25 C.

UNIFAC (A. Fredenslund, R. L. Jones and J. M. Prausnitz, AIChE J. 21 (1975) 1086, equations from memory) with the groups
CHn, OH, COOH and H2O of C. Peng, M. N. Chan and C. K. Chan, Environ. Sci. Technol. 35 (2001) 4495, who fitted them to
the water activity of such acids [second-hand: the source code of an open model of aerosols]. Of each acid its solubility
in water fixes the activity in its crystal; of a mixture the solution that is saturated with every one of them is sought.

    ln a_i(x) = ln a_i(x saturated alone)  for each acid i,      the answer is a_w(x)
"""

import math

import numpy
from scipy.optimize import fsolve

from rows import main

T = 298.15
WATER = 1000 / 18.015  # mol in a kilogram

# main group, volume R, surface Q
GROUPS = {
    "CH2": ("CH", 0.6744, 0.540),
    "CH": ("CH", 0.4469, 0.228),
    "C": ("CH", 0.2195, 0.0),
    "OH": ("OH", 1.0, 1.2),
    "COOH": ("COOH", 1.3013, 1.224),
    "H2O": ("H2O", 0.92, 1.4),
}
# a_mn, K: row m, column n
ENERGY = {
    "CH": {"CH": 0.0, "H2O": 1318.0, "OH": 986.5, "COOH": 663.5},
    "H2O": {"CH": 300.0, "H2O": 0.0, "OH": -467.42, "COOH": -69.29},
    "OH": {"CH": 156.4, "H2O": 265.87, "OH": 0.0, "COOH": 224.39},
    "COOH": {"CH": 315.3, "H2O": -145.88, "OH": -103.03, "COOH": 0.0},
}
MOLECULES = {
    "water": {"H2O": 1},
    "citric": {"CH2": 2, "C": 1, "OH": 1, "COOH": 3},
    "malic": {"CH2": 1, "CH": 1, "OH": 1, "COOH": 2},
    "tartaric": {"CH": 2, "OH": 2, "COOH": 2},
}
# mol per kg of water at 25 C, from memory of handbooks: 62, 59 and 59 % by mass
SOLUBILITY = {"citric": 8.5, "malic": 10.8, "tartaric": 9.8}

R = numpy.array([g[1] for g in GROUPS.values()])
Q = numpy.array([g[2] for g in GROUPS.values()])
PSI = numpy.exp(-numpy.array([[ENERGY[a[0]][b[0]] for b in GROUPS.values()] for a in GROUPS.values()]) / T)


def group_activity(amounts):
    """ln Gamma of every group in a mixture of groups."""
    theta = amounts * Q / (amounts @ Q)
    s = theta @ PSI
    return Q * (1 - numpy.log(s) - PSI @ (theta / s))


def activities(acids, molality):
    """a of water and of each acid, mole fraction times activity coefficient; pure liquids are 1."""
    kinds = ["water", *acids]
    nu = numpy.array([[MOLECULES[k].get(g, 0) for g in GROUPS] for k in kinds], float)
    n = numpy.array([WATER, *molality])
    x = n / n.sum()
    r, q = nu @ R, nu @ Q
    volume, surface = r / (x @ r), q / (x @ q)
    size = numpy.log(volume) + 1 - volume - 5 * q * (numpy.log(volume / surface) + 1 - volume / surface)
    mixed = group_activity(x @ nu)
    rest = numpy.array([row @ (mixed - group_activity(row)) for row in nu])
    return x * numpy.exp(size + rest)


def saturated(acids):
    """a_w of water over a solution that is saturated with each of the acids."""
    crystal = [activities([a], [SOLUBILITY[a]])[1] for a in acids]
    off = lambda logs: numpy.log(activities(acids, numpy.exp(logs))[1:] / crystal)
    logs, _, found, why = fsolve(off, [math.log(0.8 * SOLUBILITY[a]) for a in acids], full_output=True)
    if found != 1:
        raise ArithmeticError(why)
    return activities(acids, numpy.exp(logs))[0]


def over_citric(i, _):
    return saturated(i["acids"].split("+")) / saturated(["citric"])


main(
    "deliquescence",
    {
        "acids-over-citric": over_citric,
        "salt-humidity": lambda i, _: 100 * saturated(["citric"]),
    },
)
