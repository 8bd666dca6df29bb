"""Drag, added mass, terminal speeds, and a ball that recedes evenly. SI.

Brown and Lawler (2003), J. Environ. Eng. 129, 222; H. Lamb, Hydrodynamics (1932), oblate spheroid along its axis.
"""

import math

from scipy.optimize import brentq

import water
from rows import main

R = 8.314462618
G = 9.80665


def drag(re):
    return 24 / re * (1 + 0.15 * re**0.681) + 0.407 / (1 + 8710 / re)


def oblate(flatness):
    """Added mass over displaced mass for the ratio of the axes c/a."""
    if flatness == 1:
        return 0.5
    z = flatness / math.sqrt(1 - flatness**2)
    alpha = 2 * (1 + z * z) * (1 - z * math.atan2(1, z))
    return alpha / (2 - alpha)


def terminal(diameter, density, t):
    rho, nu = water.kell1975(t), water.viscosity(t) / water.kell1975(t)
    weight = abs(density - rho) * G * diameter * 4 / 3
    return brentq(lambda u: drag(u * diameter / nu) * rho * u * u - weight, 1e-4, 10)


def diameter(shape):
    return float(shape.split("=")[1].split()[0]) / 1e3


def ball_fizz(i, _):
    """All of a ball at a constant speed of its surface: radius falls evenly, gas goes with the volume."""
    radius = i.number("R_mm") / 1e3
    life = radius / (i.number("v_mm_per_min") / 60e3)
    moles = i.number("density") * 4 / 3 * math.pi * radius**3 * i.number("xi")
    litres = 1e3 * moles * R * i.kelvin() / 101325
    return {
        "tau_s": life,
        "gas_L": litres,
        "first_L_per_s": 3 * litres / life,
        "left_at_half_percent": 100 * 0.5**3,
    }[i["of"]]


main(
    "motion",
    {
        "drag": lambda i, _: drag(i.number("Re")),
        "added-mass": lambda i, _: oblate(i.number("flatness")),
        "disc": lambda i, _: oblate(i.number("flatness")) * 4 * math.pi / 3 * i.number("flatness"),
        "terminal": lambda i, _: terminal(i.number("d_mm") / 1e3, i.number("density"), i.kelvin()),
        "terminal-fall": lambda i, _: terminal(diameter(i["shape"]), i.number("density"), i.kelvin()),
        "ball-fizz": ball_fizz,
    },
)
