"""Gas and water at a fizzing surface: bubbles, coverage, plume, pores. SI.

Fritz (1935), Phys. Z. 36, 379; Vogt and Balzer (2005), Electrochim. Acta 50, 2073; Zuber and Findlay (1965) with Ishii's
velocity; Kozeny and Carman, Darcy and Washburn as in textbooks.
"""

import math

import water
from rows import main

R = 8.314462618
G = 9.80665
FARADAY = 96485.33212


def fritz(i, _):
    t = i.kelvin()
    tension = i.number("sigma") if "sigma" in i else water.surface_tension(t)
    gas = i.number("gas_kg_per_m3") if "gas_kg_per_m3" in i else 0
    return 1e3 * 0.0208 * i.number("angle_deg") * math.sqrt(tension / (G * (water.kell1975(t) - gas)))


def coverage(i, name):
    """(j/3e5)^0.3 with the published 0.023 in one row, from the rounded full flux 0.038 m/s in the other."""
    flux = i.number("flux_m_per_s")
    if name.endswith("0.023"):
        amperes = flux * 2 * FARADAY * 101325 / (R * 298.15)
        return 0.023 * amperes**0.3
    return (flux / 0.038) ** 0.3


def permeability(i):
    eps, d = i.number("eps"), i.number("d_um") / 1e6
    return eps**3 * d**2 / (180 * (1 - eps) ** 2)


def pore_radius(i):
    eps, d = i.number("eps"), i.number("d_um") / 1e6
    return eps * d / (3 * (1 - eps))


def pull(i):
    angle = math.radians(i.number("angle_deg"))
    return 2 * water.surface_tension(i.kelvin()) * math.cos(angle) / pore_radius(i)


def soaking(i, _):
    length = i.number("way_mm") / 1e3
    return i.number("eps") * water.viscosity(i.kelvin()) * length**2 / (2 * permeability(i) * pull(i))


def drift(t):
    return 1.53 * (water.surface_tension(t) * G / water.kell1975(t)) ** 0.25


def plume(i, _):
    j = i.number("Q_m3_per_s") / (math.pi * (i.number("R_mm") / 1e3) ** 2)
    return j / (1.2 * j + drift(i.kelvin()))


CREEPING = {"narrow": (10, 25), "wide": (25, 60)}  # receding and advancing angle, degrees


def spread(_, row):
    """Diameter, mm, at 38 C of a bubble whose edge creeps out to its receding angle, then waits for the advancing one.

    C. Demirkir, J. A. Wood, D. Lohse and D. Krug, arXiv:2406.01989: R = 3/4 L (sqrt(2) sin^2 rec sin adv)^(1/3), L the
    capillary length [the relation second-hand, from a summary of the paper].
    """
    t = 311.15
    length = math.sqrt(water.surface_tension(t) / (water.kell1975(t) * G))
    rec, adv = (math.radians(a) for a in CREEPING[row.split("/")[1]])
    return 2e3 * 0.75 * length * (math.sqrt(2) * math.sin(rec) ** 2 * math.sin(adv)) ** (1 / 3)


main(
    "surface",
    {
        "wet-molar-volume": lambda i, _: 1e3 * R * i.kelvin() / (i.number("p_Pa") - water.wagner_pruss2002(i.kelvin())),
        "coverage": coverage,
        "contact-coverage": coverage,
        "layer-ratio": lambda i, _: math.pi / (3 * math.sqrt(3)),
        "drift-velocity": lambda i, _: drift(i.kelvin()),
        "plume": plume,
        "departure": fritz,
        "spreading-departure": spread,
        "permeability": lambda i, _: permeability(i),
        "pore-radius": lambda i, _: 1e6 * pore_radius(i),
        "capillary": lambda i, _: pull(i) / 1e3,
        "soaking-time": soaking,
        "warmth": lambda i, _: math.exp(-30e3 / R * (1 / i.kelvin("warm_C") - 1 / i.kelvin("cool_C"))),
        "capillary-length": lambda i, _: 1e3 * math.sqrt(water.surface_tension(i.kelvin()) / (water.kell1975(i.kelvin()) * G)),
    },
)
