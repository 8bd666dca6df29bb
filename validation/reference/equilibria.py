"""What a mix can give, the constants of the bath and its pH: stoichiometry and a charge balance of its own.

Constants: Plummer and Busenberg (1982), Weiss (1974), Marshall and Franck (1981), Goldberg, Kishore and Lennen (2002),
Eden and Bates (1959), Davies (1962) with the permittivity of Malmberg and Maryott (1956), Soli and Byrne (2002).
Atomic weights: IUPAC 2021, abridged (Prohaska et al., Pure Appl. Chem. 94 (2022) 573).
"""

import math

from scipy.optimize import brentq

import water
from rows import main

R = 8.314462618
ATM = 101325.0
WEIGHT = {"H": 1.008, "C": 12.011, "O": 15.999, "Na": 22.98976928, "K": 39.0983}


def mass(**atoms):
    return sum(WEIGHT[a] * n for a, n in atoms.items())


BICARBONATE = mass(Na=1, H=1, C=1, O=3)
CARBONATE = mass(Na=2, C=1, O=3)
CO2 = mass(C=1, O=2)
WATER = mass(H=2, O=1)
ACIDS = {  # molar mass, protons that count
    "citric": (mass(C=6, H=8, O=7), 3),
    "tartaric": (mass(C=4, H=6, O=6), 2),
    "malic": (mass(C=4, H=6, O=5), 2),
    "potassium_bitartrate": (mass(K=1, C=4, H=5, O=6), 1),
    "ascorbic": (mass(C=6, H=8, O=6), 1),
    "lactic": (mass(C=3, H=6, O=3), 1),
    "fumaric": (mass(C=4, H=4, O=4), 2),
}


def yielded(i, _):
    base = i.number("bicarbonate_g") / BICARBONATE
    molar, protons = ACIDS[i["acid"]]
    gas = min(base, protons * i.number("acid_g") / molar)
    of = i["of"]
    if of == "gas_L":
        return 1e3 * gas * R * i.kelvin() / ATM
    return {"gas_mol": gas, "gas_g": gas * CO2, "bicarbonate_left_g": (base - gas) * BICARBONATE, "water_g": gas * WATER}[of]


def equivalent(i, _):
    molar, protons = ACIDS[i["acid"]]
    base = protons * BICARBONATE / molar
    return {
        "g_bicarbonate_per_g": base,
        "g_carbonate_per_g": protons / 2 * CARBONATE / molar,
        "g_gas_per_g": protons * CO2 / molar,
        "mol_per_100g": 100 * protons / molar / (1 + base),
    }[i["of"]]


def weiss(t):
    return math.exp(-58.0931 + 90.5069 * 100 / t + 22.2940 * math.log(t / 100))


def plummer_busenberg(kind, t):
    a, b, c, d, e = {
        "K0": (108.3865, 0.01985076, -6919.53, -40.45154, 669365),
        "K1": (-356.3094, -0.06091964, 21834.37, 126.8339, -1684915),
        "K2": (-107.8871, -0.03252849, 5151.79, 38.92561, -563713.9),
    }[kind]
    return a + b * t + c / t + d * math.log10(t) + e / t**2


def carroll(t):
    """mol/(kg atm) from a Henry constant by mole fraction, Carroll, Slupsky and Mather (1991)."""
    henry = 1e6 * math.exp(-6.8346 + 1.2817e4 / t - 3.7668e6 / t**2 + 2.997e8 / t**3)
    return 1e3 / WATER * ATM / henry


def ion_product(t):
    rho = water.kell1975(t) / 1e3
    return (
        -4.098 - 3245.2 / t + 2.2362e5 / t**2 - 3.984e7 / t**3
        + (13.957 - 1262.3 / t + 8.5641e5 / t**2) * math.log10(rho)
    )


GOLDBERG = {  # pK, dH J/mol, dCp J/(mol K) at 25 C
    "citric": ((3.128, 4.07e3, -131), (4.761, 2.23e3, -178), (6.396, -3.38e3, -254)),
    "tartaric": ((3.036, 3.19e3, -147), (4.366, 0.93e3, -218)),
}


def acid_pk(acid, step, t):
    if acid == "malic":
        a, b, c = ((1358.5, -5.1382, 0.013550), (1658.8, -6.2364, 0.019353))[step - 1]
        return a / t + b + c * t
    pk, dh, dcp = GOLDBERG[acid][step - 1]
    t0 = 298.15
    ln = -pk * math.log(10) - dh / R * (1 / t - 1 / t0) + dcp / R * (t0 / t - 1 + math.log(t / t0))
    return -ln / math.log(10)


def davies_slope(t):
    c = t - 273.15
    eps = 87.740 - 0.40008 * c + 9.398e-4 * c**2 - 1.410e-6 * c**3
    return 1.82483e6 * math.sqrt(water.kell1975(t) / 1e3) / (eps * t) ** 1.5


def speciate(t, sodium, carbon, acid, acid_total, gas_atm=None):
    """pH, ionic strength and CO2(aq), molal, by charge balance; carbon total, or in balance with gas_atm."""
    slope = davies_slope(t)
    k1, k2, kw = 10 ** plummer_busenberg("K1", t), 10 ** plummer_busenberg("K2", t), 10 ** ion_product(t)
    ks = [10 ** -acid_pk(acid, n + 1, t) for n in range(ACIDS[acid][1])] if acid else []

    def gamma(z, strength):
        root = math.sqrt(strength)
        return 10 ** (-slope * z * z * (root / (1 + root) - 0.3 * strength)) if z else 10 ** (0.1 * strength)

    def solve(strength):
        g = [gamma(z, strength) for z in range(4)]

        def species(ph):
            h = 10**-ph
            one = k1 * g[0] / (h * g[1])
            two = k1 * k2 * g[0] / (h * h * g[2])
            if gas_atm is None:
                free = carbon / (1 + one + two)
            else:
                free = 10 ** plummer_busenberg("K0", t) * gas_atm / g[0]
            ions = [1.0]
            product = 1.0
            for z, k in enumerate(ks, 1):
                product *= k / h
                ions.append(product * g[0] / g[z])
            scale = acid_total / sum(ions) if ks else 0
            ions = [scale * x for x in ions[1:]] if ks else []
            return h / g[1], kw / h / g[1], free, one * free, two * free, ions

        def charge(ph):
            h, oh, _, bic, carb, ions = species(ph)
            return sodium + h - oh - bic - 2 * carb - sum(z * x for z, x in enumerate(ions, 1))

        ph = brentq(charge, 0, 14, xtol=1e-13)
        return ph, species(ph)

    strength = 0.01
    for _ in range(200):
        ph, (h, oh, free, bic, carb, ions) = solve(strength)
        new = 0.5 * (sodium + h + oh + bic + 4 * carb + sum(z * z * x for z, x in enumerate(ions, 1)))
        if abs(new - strength) < 1e-15:
            break
        strength = new
    return ph, strength, free, gamma(0, strength)


def bath(i, _):
    t = i.kelvin()
    kg = i.number("L") / 1e3 * water.kell1975(t)
    sodium = i.number("bicarbonate_g") / BICARBONATE
    molar, protons = ACIDS[i["acid"]]
    acid = i.number("acid_g") / molar
    of = i.get("of", "pH")
    carbon = sodium
    if of == "degassed_pH":
        carbon -= i.number("share") * min(sodium, protons * acid)
    ph, strength, free, g0 = speciate(t, sodium / kg, carbon / kg, i["acid"], acid / kg)
    if of == "I":
        return strength
    if of == "gas_atm":
        return free * g0 / 10 ** plummer_busenberg("K0", t)
    return ph


main(
    "equilibria",
    {
        "yield": yielded,
        "gas": lambda i, _: min(
            i.number("bicarbonate_g") / BICARBONATE, 3 * i.number("citric_g") / ACIDS["citric"][0]
        ),
        "equivalent": equivalent,
        "weiss": lambda i, _: weiss(i.kelvin()),
        "solubility": lambda i, name: carroll(i.kelvin()) if "carroll" in name else 10 ** plummer_busenberg("K0", i.kelvin()),
        "carbonic": lambda i, _: -plummer_busenberg("K" + i["step"], i.kelvin()),
        "pKw": lambda i, _: -ion_product(i.kelvin()),
        "citric": lambda i, _: acid_pk("citric", int(i["step"]), i.kelvin()),
        "tartaric": lambda i, _: acid_pk("tartaric", int(i["step"]), i.kelvin()),
        "malic": lambda i, _: acid_pk("malic", int(i["step"]), i.kelvin()),
        "slope": lambda i, _: davies_slope(i.kelvin()),
        "dehydration": lambda i, _: math.exp(30.15 - 8018 / i.kelvin()),
        "bath": bath,
        "tablet": bath,
        "pure-water": lambda i, _: speciate(i.kelvin(), 0, 0, None, 0, i.number("p_atm"))[0],
        "sour-water": lambda i, _: speciate(i.kelvin(), 0, 0, i["acid"], i.number("molality"))[0],
    },
)
