package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.numeric.GaussLegendre;
import org.fizzhull.shape.body.PolyhedronHull;

/** Identities that hold for every hull and every plane. */
class HullProperties {
    private static final Hull[] HULLS = {
        HullBodies.cylinder(2, 1.3),
        HullBodies.cone(1, 2),
        HullBodies.bowl(1, .6),
        HullBodies.torus(.7, .3),
        HullBodies.egg(1, 1.6, .9),
        HullBodies.capsule(.5, 1),
        HullBodies.ball(1),
        HullBodies.block(1, 2, 1.5),
        new PolyhedronHull(HullBodies.ellipsoid(1, 1.5, .8, 16), .03)
    };

    private static double[] normal(double u, double turn) {
        double s = Math.sqrt(1 - u * u);
        return new double[] {s * Math.cos(turn), s * Math.sin(turn), u};
    }

    private static double level(Hull hull, double[] n, double share) {
        double low = -hull.reach(-n[0], -n[1], -n[2]);
        return low + share * (hull.reach(n[0], n[1], n[2]) - low);
    }

    /** V(n, c) + V(-n, -c) = V, and the two moments make the whole; both sides have the same face. */
    @Property(tries = 400)
    void twoSidesMakeTheWhole(
            @ForAll @IntRange(max = 8) int which,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = .001, max = .999) double share) {
        Hull hull = HULLS[which];
        double[] n = normal(u, turn);
        double c = level(hull, n, share);
        PlaneCut below = new PlaneCut();
        PlaneCut above = new PlaneCut();
        hull.cut(n[0], n[1], n[2], c, below);
        hull.cut(-n[0], -n[1], -n[2], -c, above);
        double v = hull.volume();
        assertThat(below.volume + above.volume).isCloseTo(v, within(1e-13 * v));
        assertThat(below.mx + above.mx).isCloseTo(v * hull.centroid().x(), within(1e-13 * v));
        assertThat(below.my + above.my).isCloseTo(v * hull.centroid().y(), within(1e-13 * v));
        assertThat(below.mz + above.mz).isCloseTo(v * hull.centroid().z(), within(3e-13 * v));
        // a horizontal face of the body in the plane belongs to one side only
        if (Math.abs(u) < 1) {
            assertThat(below.area).isCloseTo(above.area, within(2e-11));
        }
    }

    /** dV/dc = A and dM/dc = A times the centroid of the face: integrals over a thin layer against differences. */
    @Property(tries = 200)
    void facesStackUpToTheVolume(
            @ForAll @IntRange(max = 8) int which,
            @ForAll @Scale(6) @DoubleRange(min = -.95, max = .95) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = .02, max = .97) double share) {
        Hull hull = HULLS[which];
        double[] n = normal(u, turn);
        double from = level(hull, n, share);
        double to = level(hull, n, share + .01);
        PlaneCut low = new PlaneCut();
        PlaneCut high = new PlaneCut();
        PlaneCut face = new PlaneCut();
        hull.cut(n[0], n[1], n[2], from, low);
        hull.cut(n[0], n[1], n[2], to, high);
        double volume = 0;
        double moment = 0;
        for (int i = 0; i < GaussLegendre.POINTS; i++) {
            double half = (to - from) / 2;
            hull.cut(n[0], n[1], n[2], from + half * (1 + GaussLegendre.node(i)), face);
            volume += half * GaussLegendre.weight(i) * face.area;
            moment += half * GaussLegendre.weight(i) * face.area * face.az;
        }
        // a corner of the body inside the layer bends A: 32 Gauss points then keep 1e-3 of a hundredth
        assertThat(high.volume - low.volume).isCloseTo(volume, within(2e-5));
        assertThat(high.mz - low.mz).isCloseTo(moment, within(4e-5));
    }

    /** A body of revolution does not care about the azimuth of the plane. */
    @Property(tries = 100)
    void azimuthDoesNotMatter(
            @ForAll @IntRange(max = 6) int which,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn) {
        Hull hull = HULLS[which];
        double[] n = normal(u, turn);
        double[] m = normal(u, 0);
        double c = level(hull, m, .4);
        PlaneCut one = new PlaneCut();
        PlaneCut two = new PlaneCut();
        hull.cut(n[0], n[1], n[2], c, one);
        hull.cut(m[0], m[1], m[2], c, two);
        assertThat(one.volume).isCloseTo(two.volume, within(1e-13));
        assertThat(one.mx).isCloseTo(two.mx * Math.cos(turn), within(1e-13));
        assertThat(one.my).isCloseTo(two.mx * Math.sin(turn), within(1e-13));
        assertThat(one.juu).isCloseTo(two.juu, within(1e-11));
        assertThat(one.jww).isCloseTo(two.jww, within(1e-11));
    }

    /** A turned and moved mesh cut by the turned and moved plane gives the same figures. */
    @Property(tries = 100)
    void meshesTurnWithTheirPlane(
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = .05, max = .95) double share,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double angle) {
        double[] axis = normal(.3, 1.1);
        double[] r = HullBodies.turn(axis[0], axis[1], axis[2], angle);
        Hull still = new PolyhedronHull(HullBodies.ellipsoid(1, 1.5, .8, 16), 0);
        Hull moved = new PolyhedronHull(HullBodies.moved(HullBodies.ellipsoid(1, 1.5, .8, 16), r, 3, -2, 1), 0);
        double[] n = normal(u, turn);
        double c = level(still, n, share);
        double x = r[0] * n[0] + r[1] * n[1] + r[2] * n[2];
        double y = r[3] * n[0] + r[4] * n[1] + r[5] * n[2];
        double z = r[6] * n[0] + r[7] * n[1] + r[8] * n[2];
        PlaneCut one = new PlaneCut();
        PlaneCut two = new PlaneCut();
        still.cut(n[0], n[1], n[2], c, one);
        moved.cut(x, y, z, c + 3 * x - 2 * y + z, two);
        assertThat(two.volume).isCloseTo(one.volume, within(1e-12));
        assertThat(two.area).isCloseTo(one.area, within(1e-12));
        assertThat(two.juu + two.jww).isCloseTo(one.juu + one.jww, within(1e-12));
        assertThat(two.juu * two.jww - two.juw * two.juw)
                .isCloseTo(one.juu * one.jww - one.juw * one.juw, within(1e-12));
    }
}
