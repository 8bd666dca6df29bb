package org.fizzhull.shape.revolved;

import org.fizzhull.geometry.PlaneCut;

/** Cut of a ball in closed form: V = pi h^2 (3R - h)/3 and what follows from it. */
final class BallHull {
    private final double centre;
    private final double radius;

    BallHull(double centre, double radius) {
        this.centre = centre;
        this.radius = radius;
    }

    double centre() {
        return centre;
    }

    double radius() {
        return radius;
    }

    void cut(double nx, double ny, double nz, double c, PlaneCut out) {
        out.clear();
        out.frame(nx, ny, nz);
        double d = Math.max(-radius, Math.min(radius, c - nz * centre));
        double h = radius + d;
        double square = (radius - d) * h;
        out.volume = Math.PI * h * h * (3 * radius - h) / 3;
        double along = -Math.PI * square * square / 4;
        out.mx = along * nx;
        out.my = along * ny;
        out.mz = along * nz + out.volume * centre;
        out.area = Math.PI * square;
        out.ax = d * nx;
        out.ay = d * ny;
        out.az = d * nz + centre;
        out.juu = Math.PI * square * square / 4;
        out.jww = out.juu;
    }
}
