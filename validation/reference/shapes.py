"""Volume, surface and centroid of the kinds of shape by quadrature of their outlines, in mm. Rounded blocks by Steiner's
formula for convex bodies, checked here against nothing else."""

import math

import bodies
from rows import main


def surface(i):
    """By arcs of the meridian; the flat faces added."""
    g = lambda n: i.number(n + "_mm")
    kind = i["shape"]
    pi = math.pi
    if kind in ("star", "heart"):
        area, perimeter = bodies.base(i)
        return 2 * area + perimeter * g("H")
    if kind == "block":
        e = g("e")
        x, y, z = (g(n) - 2 * e for n in "abc")
        return 2 * (x * y + y * z + z * x) + 2 * pi * (x + y + z) * e + 4 * pi * e * e
    arcs = {
        # radius as a function of the angle along the arc, arc radius, angles; then flat parts
        "sphere": lambda: [(0, g("R"), 0, pi)],
        "cap": lambda: [(0, g("R"), 0, math.acos((g("R") - g("h")) / g("R")))],
        "bowl": lambda: [(0, g("R"), 0, pi / 2), (0, g("r"), 0, pi / 2)],
        "puck": lambda: [(g("R") - g("e"), g("e"), 0, pi)],
        "ring": lambda: [(g("R"), g("r"), 0, 2 * pi)],
        "capsule": lambda: [(0, g("R"), 0, pi)],
        "cone": lambda: [],
    }
    if kind == "spheroid":
        a, c = g("a"), g("c")
        body = bodies.of(i)
        return body.integral(lambda t: 2 * pi * a * math.sin(t) * math.hypot(a * math.cos(t), c * math.sin(t)), 0, pi)
    total = sum(bodies.quad(lambda t: 2 * pi * (r0 + r * math.sin(t)) * r, lo, hi)[0] for r0, r, lo, hi in arcs[kind]())
    if kind == "cap":
        total += pi * g("h") * (2 * g("R") - g("h"))
    if kind == "bowl":
        total += pi * (g("R") ** 2 - g("r") ** 2)
    if kind == "puck":
        total += 2 * pi * (g("R") - g("e")) ** 2 + 2 * pi * g("R") * (g("H") - 2 * g("e"))
    if kind == "capsule":
        total += 2 * pi * g("R") * g("L")
    if kind == "cone":
        r, q = g("R"), (g("R2") if "R2_mm" in i else 0)
        total = pi * (r * r + q * q) + pi * (r + q) * math.hypot(r - q, g("H"))
    return total


def volume(i):
    kind = i["shape"]
    if kind in ("star", "heart"):
        return bodies.base(i)[0] * i.number("H_mm")
    if kind == "block":
        e = i.number("e_mm")
        x, y, z = (i.number(n + "_mm") - 2 * e for n in "abc")
        return x * y * z + 2 * (x * y + y * z + z * x) * e + math.pi * (x + y + z) * e**2 + 4 * math.pi * e**3 / 3
    return bodies.of(i).volume()


def hull(i, _):
    r = i.number("R_mm")
    return 2 * math.pi * r**3 / 3


main(
    "shapes",
    {
        "volume": lambda i, _: volume(i),
        "surface": lambda i, _: surface(i),
        "centroid": lambda i, _: i.number("H_mm") / 2 if i["shape"] == "star" else bodies.of(i).centroid(),
        "centroid-below-rim": lambda i, _: i.number("R_mm") - bodies.of(i).centroid(),
        "hull-volume": hull,
        "mesh-limit": lambda i, name: 4 * math.pi / 3 * i.number("R_mm") ** 3,
    },
)
