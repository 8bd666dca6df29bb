"""A floating body whose wetted faces alone recede, and which keeps the same side up. Lengths over time of one speed.

Level set of a body of revolution on a grid in (r, z): phi_t + F |grad phi| = 0, upwind (S. Osher and J. A. Sethian, J.
Comput. Phys. 79 (1988) 12, from memory), F = 1 below the water line and 0 above it. The water line lies where the
displaced volume is ``s`` times the volume left. Nothing here uses a depth profile; first order in the grid, the rows are
extrapolated from two grids.
"""

import math

import numpy

from rows import main

END = 0.01


def puck(r, z, i):
    radius, height = i.number("D_mm") / 2, i.number("H_mm")
    return numpy.minimum(radius - r, numpy.minimum(z, height - z)), radius, height


def ball(r, z, i):
    radius = i.number("D_mm") / 2
    return radius - numpy.hypot(r, z - radius), radius, 2 * radius


def dome(r, z, i):
    """Half a ball, its flat face up."""
    radius = i.number("D_mm") / 2
    return numpy.minimum(radius - numpy.hypot(r, z - radius), radius - z), radius, radius


BODIES = {"puck": puck, "ball": ball, "dome": dome}


def life(i, cells, floats):
    """Distance that a wetted face goes until a hundredth is left, mm."""
    body = BODIES[i["body"]]
    _, radius, height = body(numpy.zeros(1), numpy.zeros(1), i)
    h = max(radius, height) / cells
    r = (numpy.arange(int(radius / h) + 3) + 0.5) * h
    z = (numpy.arange(-3, int(height / h) + 4) + 0.5) * h
    rr, zz = numpy.meshgrid(r, z, indexing="ij")
    phi = body(rr, zz, i)[0]
    ring = 2 * math.pi * rr * h * h
    dt = 0.4 * h
    s = i.number("s")

    def layers():
        """Volume of every layer of the grid, with the part of the cells that the surface cuts."""
        return (numpy.clip(0.5 + phi / h, 0, 1) * ring).sum(axis=0)

    whole = layers().sum()
    gone = 0.0
    water = z[-1]
    while True:
        volume = layers()
        left = volume.sum()
        if left <= END * whole:
            return gone
        if floats:
            below = numpy.concatenate(([0.0], numpy.cumsum(volume)))
            water = numpy.interp(s * left, below, z[0] - h / 2 + h * numpy.arange(len(below)))
        wet = numpy.clip(0.5 + (water - zz) / h, 0, 1) if floats else 1.0
        back = numpy.diff(phi, axis=0, prepend=phi[:1])
        ahead = numpy.diff(phi, axis=0, append=phi[-1:])
        down = numpy.diff(phi, axis=1, prepend=2 * phi[:, :1] - phi[:, 1:2])
        up = numpy.diff(phi, axis=1, append=2 * phi[:, -1:] - phi[:, -2:-1])
        # the surface moves to larger phi: upwind differences are those from lower phi
        steep = numpy.sqrt(
            numpy.maximum(numpy.maximum(back, 0) ** 2, numpy.minimum(ahead, 0) ** 2)
            + numpy.maximum(numpy.maximum(down, 0) ** 2, numpy.minimum(up, 0) ** 2)
        )
        phi = phi - dt * wet * steep / h
        gone += dt


def ratio(i, _):
    """Life afloat over life with every face wet."""
    fine = life(i, 160, True) / life(i, 160, False)
    coarse = life(i, 80, True) / life(i, 80, False)
    return 2 * fine - coarse


main("faces", {"one-side-up": ratio})
