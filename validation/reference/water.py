"""Properties of fresh water and its vapour at 1 atm, from published relations. T in K, SI."""

import math


def kell1975(kelvin):
    """Density, kg/m3: G. S. Kell, J. Chem. Eng. Data 20 (1975) 97; 0 to 100 C."""
    t = kelvin - 273.15
    top = 999.83952 + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))))
    return top / (1 + 16.879850e-3 * t)


def viscosity(kelvin):
    """Dynamic viscosity, Pa s: J. Patek et al., J. Phys. Chem. Ref. Data 38 (2009) 21 (IAPWS SR6-08)."""
    x = kelvin / 300
    return 1e-6 * (280.68 * x**-1.9 + 511.45 * x**-7.7 + 61.131 * x**-19.6 + 0.45903 * x**-40)


def surface_tension(kelvin):
    """N/m: IAPWS R1-76(2014)."""
    tau = 1 - kelvin / 647.096
    return 0.2358 * tau**1.256 * (1 - 0.625 * tau)


def wagner_pruss2002(kelvin):
    """Saturation pressure, Pa: J. Phys. Chem. Ref. Data 31 (2002) 387, eq. 2.5."""
    th = 1 - kelvin / 647.096
    a = (-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502)
    b = (1, 1.5, 3, 3.5, 4, 7.5)
    return 22.064e6 * math.exp(647.096 / kelvin * sum(x * th**y for x, y in zip(a, b)))


def hyland_wexler1983(kelvin):
    """Saturation pressure, Pa, 0 to 200 C: R. W. Hyland and A. Wexler, ASHRAE Trans. 89 (1983) 500, as in ASHRAE
    Fundamentals, chapter 1, eq. 6."""
    return math.exp(
        -5.8002206e3 / kelvin
        + 1.3914993
        - 4.8640239e-2 * kelvin
        + 4.1764768e-5 * kelvin**2
        - 1.4452093e-8 * kelvin**3
        + 6.5459673 * math.log(kelvin)
    )
