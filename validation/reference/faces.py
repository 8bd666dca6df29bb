"""A floating body whose wetted faces alone recede, and which keeps the same side up. Lengths over time of one speed.

Level set: phi_t + F |grad phi| = 0 on a grid, upwind (S. Osher and J. A. Sethian, J. Comput. Phys. 79 (1988) 12, from
memory), in (r, z) for bodies of revolution, in (x, y, z) for the others. A point of the grid takes its F from the point
of the surface that is nearest to it: 1 below the water line, 0 above. The water line lies where the displaced volume is
``s`` times the volume left. Nothing here uses a depth profile. First order in the grid; the rows are extrapolated from
two grids that divide the height evenly.
"""

import math

import numpy
from scipy.spatial import cKDTree

from rows import main

END = 0.01
STEP = 0.4
"""Way of the front in a step, over the width of a cell."""
EDGE = 0.2
"""Cells across which the water line is smeared."""


class Grid:
    """Cells of width h: distances to the surface (positive inside), volumes, and which axes end in a mirror."""

    def __init__(self, phi, cell, z, mirror, h):
        self.phi, self.cell, self.z, self.mirror, self.h = phi, cell, z, mirror, h

    def layers(self):
        """Volume of every layer, with the part of the cells that the surface cuts."""
        part = numpy.clip(0.5 + self.phi / self.h, 0, 1) * self.cell
        return part.sum(axis=tuple(range(part.ndim - 1)))


def heights(height, h):
    return (numpy.arange(-3, round(height / h) + 3) + 0.5) * h


def turned(body, radius, height, grids=(80, 160)):
    """A body of revolution; body(r, z) is the distance to its surface."""

    def grid(h):
        r, z = (numpy.arange(int(radius / h) + 4) + 0.5) * h, heights(height, h)
        rr, zz = numpy.meshgrid(r, z, indexing="ij")
        return Grid(body(rr, zz), 2 * math.pi * rr * h * h, z, (True, False), h)

    return grid, height, grids


def prism(outline, length, low, high, height):
    """A prism that is alike on both sides of x = 0, outline(x, y) the distance to its side, -length < x < length."""

    def grid(h):
        x = (numpy.arange(int(length / h) + 4) + 0.5) * h
        y = (numpy.arange(math.floor(low / h) - 3, math.ceil(high / h) + 3) + 0.5) * h
        z = heights(height, h)
        side = outline(*numpy.meshgrid(x, y, indexing="ij"))
        phi = numpy.minimum(side[:, :, None], numpy.minimum(z, height - z))
        return Grid(phi, numpy.full(phi.shape, 2 * h**3), z, (True, False, False), h)

    return grid, height, (24, 48)


def puck(i):
    radius, height = i.number("D_mm") / 2, i.number("H_mm")
    return turned(lambda r, z: numpy.minimum(radius - r, numpy.minimum(z, height - z)), radius, height)


def ball(i):
    radius = i.number("D_mm") / 2
    return turned(lambda r, z: radius - numpy.hypot(r, z - radius), radius, 2 * radius)


def dome(i):
    """Half a ball, its flat face up."""
    radius = i.number("D_mm") / 2
    return turned(lambda r, z: numpy.minimum(radius - numpy.hypot(r, z - radius), radius - z), radius, radius)


def cone(i):
    """A frustum, its base up."""
    base, top, height = i.number("D_mm") / 2, i.number("top_mm") / 2, i.number("H_mm")
    lean = math.hypot(height, base - top) / height

    def body(r, z):
        return numpy.minimum(numpy.minimum(z, height - z), (top + (base - top) * z / height - r) / lean)

    return turned(body, base, height)


def ring(i):
    """A disc with a round hole."""
    outer, inner, height = i.number("D_mm") / 2, i.number("hole_mm") / 2, i.number("H_mm")
    return turned(
        lambda r, z: numpy.minimum(numpy.minimum(outer - r, r - inner), numpy.minimum(z, height - z)), outer, height
    )


def tube(i):
    """A ring of round section."""
    outer, section = i.number("D_mm") / 2, i.number("tube_mm") / 2
    return turned(lambda r, z: section - numpy.hypot(r - outer + section, z - section), outer, 2 * section)


def lens(i):
    """A flat spheroid; its distance to first order, right on the surface, which is all that F needs."""
    a, b = i.number("D_mm") / 2, i.number("H_mm") / 2

    def body(r, z):
        near = numpy.hypot(r / a, (z - b) / b)
        steep = numpy.hypot(r / a**2, (z - b) / b**2)
        return near * (1 - near) / numpy.maximum(steep, 1e-9)

    return turned(body, a, 2 * b)


def bowl(i):
    """Half a hollow ball, open side up and full of water."""
    outer = i.number("D_mm") / 2
    inner = outer - i.number("wall_mm")

    def body(r, z):
        far = numpy.hypot(r, z - outer)
        return numpy.minimum(numpy.minimum(outer - far, far - inner), outer - z)

    return turned(body, outer, outer, (160, 320))


def block(i):
    """Its least side upright, whichever it is listed on."""
    height, width, length = sorted((i.number("L_mm"), i.number("W_mm"), i.number("H_mm")))
    a, b = length / 2, width / 2
    return prism(lambda x, y: numpy.minimum(a - abs(x), b - abs(y)), a, -b, b, height)


def heart(i):
    """A square that stands on a corner, a half disc on each of its two upper sides; distances to points of the outline."""
    q = i.number("W_mm") / (1 + 1 / math.sqrt(2))
    corner = q / math.sqrt(2)
    t = numpy.linspace(0, 1, 2001)
    straight = numpy.column_stack((corner * t, corner * t))
    # half disc about the middle of the upper side, from the cleft round to the corner
    turn = 0.75 * math.pi - math.pi * t
    lobe = numpy.column_stack((corner / 2 + q / 2 * numpy.cos(turn), 1.5 * corner + q / 2 * numpy.sin(turn)))
    points = cKDTree(numpy.concatenate((straight, lobe)))

    def outline(x, y):
        far = points.query(numpy.column_stack((x.ravel(), y.ravel())))[0].reshape(x.shape)
        square = (x + abs(y - corner)) <= corner
        disc = numpy.hypot(x - corner / 2, y - 1.5 * corner) <= q / 2
        return numpy.where(square | disc, far, -far)

    return prism(outline, i.number("W_mm") / 2, 0.0, 1.5 * corner + q / 2, i.number("H_mm"))


BODIES = {
    "puck": puck,
    "ball": ball,
    "dome": dome,
    "cone": cone,
    "ring": ring,
    "tube": tube,
    "lens": lens,
    "bowl": bowl,
    "block": block,
    "heart": heart,
    "heart mesh": heart,
}


def way(body, h, share, left):
    """Distance that a wetted face goes until ``left`` is left, mm; a share under water of None wets every face."""
    grid = body(h)
    whole = grid.layers().sum()
    gone, before = 0.0, 1.0
    while True:
        layers = grid.layers()
        now = layers.sum() / whole
        if now <= left:
            return gone - STEP * h * (left - now) / (before - now)
        before = now
        slopes, centred = [], []
        for axis, mirror in enumerate(grid.mirror):
            first, second = numpy.take(grid.phi, [0], axis), numpy.take(grid.phi, [1], axis)
            last, next_ = numpy.take(grid.phi, [-1], axis), numpy.take(grid.phi, [-2], axis)
            back = numpy.diff(grid.phi, axis=axis, prepend=first if mirror else 2 * first - second)
            ahead = numpy.diff(grid.phi, axis=axis, append=2 * last - next_)
            # the surface moves to larger phi: upwind differences are those from lower phi
            slopes.append(numpy.maximum(numpy.maximum(back, 0) ** 2, numpy.minimum(ahead, 0) ** 2))
            centred.append((back + ahead) / 2)
        speed = 1.0
        if share is not None:
            below = numpy.concatenate(([0.0], numpy.cumsum(layers)))
            levels = grid.z[0] - h / 2 + h * numpy.arange(len(below))
            water = numpy.interp(share * layers.sum(), below, levels)
            steep = numpy.maximum(sum(c**2 for c in centred), 1e-6 * h * h)
            surface = grid.z - grid.phi * h * centred[-1] / steep
            speed = numpy.clip(0.5 + (water - surface) / (EDGE * h), 0, 1)
        grid.phi = grid.phi - STEP * speed * numpy.sqrt(sum(slopes))
        gone += STEP * h


def ratio(i, _):
    """Life afloat until ``left`` is left (a hundredth unless told) over life with every face wet until a hundredth is."""
    body, height, grids = BODIES[i["body"]](i)
    left = i.number("left") if "left" in i else END
    coarse, fine = (way(body, height / n, i.number("s"), left) / way(body, height / n, None, END) for n in grids)
    return 2 * fine - coarse


if __name__ == "__main__":
    main("faces", {"one-side-up": ratio})
