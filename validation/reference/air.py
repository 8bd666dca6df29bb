"""Room air, sorption, wraps, closed jars and the prompt reaction. SI.

Hyland and Wexler (1983); ASHRAE Fundamentals, chapter 1 (psychrometrics); Massman (1998), Atmos. Environ. 32, 1111;
Churchill (1983); Guggenheim, Anderson and de Boer (GAB); constants of the isotherms: docs/physics/drying.md, 2.
"""

import math

from scipy.optimize import brentq

import water
from rows import main

R = 8.314462618
ATM = 101325.0
R_VAPOUR = 461.52


def ratio(e):
    return 0.621945 * e / (ATM - e)


def wet_bulb(i, _):
    t = i.number("t_C")
    w = ratio(i.number("RH") / 100 * water.hyland_wexler1983(t + 273.15))

    def off(x):
        saturated = ratio(water.hyland_wexler1983(x + 273.15))
        return ((2501 - 2.326 * x) * saturated - 1.006 * (t - x)) / (2501 + 1.86 * t - 4.186 * x) - w

    return brentq(off, -5, t)


def gab(xm, c, k, a):
    return xm * c * k * a / ((1 - k * a) * (1 - k * a + c * k * a))


ISOTHERMS = {  # monolayer, C, K at 25 C, potato starch at 30 C (Kiranoudis et al. 1993), milk by Lin, Chen and Pearce (2005)
    "corn starch": (0.088, 20, 0.72),
    "potato starch": (
        0.056 * math.exp(1.39 / (8.314e-3 * 303.15)),
        0.017 * math.exp(20 / (8.314e-3 * 303.15)),
        0.94 * math.exp(-0.92 / (8.314e-3 * 303.15)),
    ),
    "skimmed milk powder": (0.06156, 0.001645 * math.exp(24831 / (R * 298.15)), 5.710 * math.exp(-5118 / (R * 298.15))),
    "bentonite": (0.075, 12, 0.75),
}
# 1 g mil/(100 in2 day) over 90 % of the vapour pressure at 38 C, kg m/(m2 s Pa)
GRAM_MIL = 1e-3 * 25.4e-6 / (100 * 0.0254**2) / 86400 / (0.9 * water.wagner_pruss2002(311.15))


def wrap_loss(i, _):
    """g/d through a film; permeability falls with 34 kJ/mol from 38 C."""
    t = i.kelvin()
    p = i.number("gram_mil") * GRAM_MIL * math.exp(-34e3 / R * (1 / t - 1 / 311.15))
    drop = i.number("drop_RH") / 100 * water.wagner_pruss2002(t)
    return 1e3 * 86400 * p / (i.number("um") * 1e-6) * drop * i.number("area_m2")


HUMIDITY = {"epsom salt": 0.883, "table salt": 0.7529, "white sugar": 0.85}  # over saturated solutions, 25 C
CALORIE = 4184.0  # J/kcal


def hydrate_transition(i, _):
    """Humidity at which citric acid and its monohydrate stand side by side, van 't Hoff from where both meet their
    saturated solution: 36.6 C, 73 % (75 % at 25 C, falling with the heat of solution). The heat that sets water free
    as a liquid: -369.0 - 68.32 + 439.2 kcal/mol of formation (+- 1.1) and 29.06 - 18.2 kJ/mol of solution; their mean.
    """
    formed = (439.2 - 369.0 - 68.32) * CALORIE
    heat = 0.5 * (formed + (29.06e3 - 18.2e3))
    return 0.73 * math.exp(-heat / R * (1 / i.kelvin() - 1 / 309.75))


main(
    "air",
    {
        "hydrate-transition": hydrate_transition,
        "bound-volume": lambda i, _: (210.138 / 1.542 - 192.123 / 1.665) / 18.015,
        "vapour": lambda i, _: water.hyland_wexler1983(i.kelvin()),
        "wet-bulb": wet_bulb,
        "humidity-ratio": lambda i, _: 1e3 * ratio(i.number("RH") / 100 * water.hyland_wexler1983(i.kelvin())),
        "vapour-density": lambda i, _: 1e3
        * i.number("RH") / 100 * water.hyland_wexler1983(i.kelvin()) / (R_VAPOUR * i.kelvin()),
        "vapour-diffusivity": lambda i, _: 2.178 * (i.kelvin() / 273.15) ** 1.81,
        "sherwood": lambda i, _: 2
        + 0.589 * i.number("Ra") ** 0.25 / (1 + (0.469 / i.number("Sc")) ** (9 / 16)) ** (4 / 9),
        "gab": lambda i, _: gab(i.number("Xm"), i.number("C"), i.number("K"), i.number("a")),
        "sorption": lambda i, _: gab(*ISOTHERMS[i["ingredient"]], i.number("activity")),
        "mutual-deliquescence": lambda i, _: i.number("first") * HUMIDITY[i["second"]],
        "wrap-unit": lambda i, _: 1e16 * i.number("gram_mil") * GRAM_MIL,
        "wrap-loss": wrap_loss,
        "jar": lambda i, _: i.number("xi") * i.number("kg") * i.number("share") * R * i.kelvin()
        / (i.number("L") / 1e3) / 1e5,
        "prompt-loss": lambda i, _: 100 * 7 * i.number("water") / i.number("xi"),
    },
)
