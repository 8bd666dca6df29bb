package org.fizzhull.hydrostatics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PolyhedronHull;

/** Identities of floating bodies (docs/physics/hydrostatics.md, 2). */
class HydrostaticsProperties {
    private static final Hull[] HULLS = {
        HullBodies.cylinder(2, 1.3),
        HullBodies.cone(1, 2),
        HullBodies.bowl(1, .6),
        HullBodies.torus(.7, .3),
        HullBodies.egg(1, 1.6, .9),
        HullBodies.ball(1),
        HullBodies.block(1, 2, 1.5),
        new PolyhedronHull(HullBodies.ellipsoid(1, 1.5, .8, 16), .03)
    };

    private static Vec3 direction(double u, double turn) {
        double s = Math.sqrt(1 - u * u);
        return new Vec3(s * Math.cos(turn), s * Math.sin(turn), u);
    }

    /** Gilbert 1991, theorem 2 (seen): s U(s, n) = (1 - s) U(1 - s, -n), and the same for the metacentric heights. */
    @Property(tries = 300)
    void duality(
            @ForAll @IntRange(max = 7) int which,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = .02, max = .98) double s) {
        Hull hull = HULLS[which];
        Vec3 up = direction(u, turn);
        double v = hull.volume();
        Stability one = Stability.of(hull, hull.centroid(), up, s * v);
        Stability two = Stability.of(hull, hull.centroid(), up.times(-1), (1 - s) * v);
        assertThat(s * one.energy()).isCloseTo((1 - s) * two.energy(), within(1e-12));
        assertThat(s * one.gmSmaller()).isCloseTo((1 - s) * two.gmSmaller(), within(1e-10));
        assertThat(s * one.gmLarger()).isCloseTo((1 - s) * two.gmLarger(), within(1e-10));
        assertThat(s * one.arm()).isCloseTo((1 - s) * two.arm(), within(1e-12));
    }

    /** More mass, more draft; and the draft displaces what was asked for. */
    @Property(tries = 200)
    void draftRisesWithMass(
            @ForAll @IntRange(max = 7) int which,
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = 1e-4, max = .998) double s) {
        Hull hull = HULLS[which];
        Vec3 up = direction(u, turn);
        Draft less = Draft.of(hull, up, s * hull.volume());
        Draft more = Draft.of(hull, up, (s + .001) * hull.volume());
        assertThat(more.draft()).isGreaterThan(less.draft());
        PlaneCut cut = new PlaneCut();
        hull.cut(up.x(), up.y(), up.z(), less.level(), cut);
        assertThat(cut.volume).isCloseTo(s * hull.volume(), within(1e-12 * hull.volume()));
    }

    /** The gradient and K are the derivatives of the energy: differences over a turn of 1e-4 in any direction. */
    @Property(tries = 100)
    void derivativesOfTheEnergy(
            @ForAll @IntRange(max = 7) int which,
            @ForAll @Scale(6) @DoubleRange(min = -.9, max = .9) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(min = .1, max = .9) double s) {
        Hull hull = HULLS[which];
        Vec3 centre = hull.centroid().plus(new Vec3(.02, -.01, .03));
        Vec3 up = direction(u, turn);
        Floating body = new Floating(hull, centre, s * hull.volume());
        body.at(up);
        double slope = body.gw;
        double here = body.energy;
        Vec3 w = new Vec3(body.cut.wx, body.cut.wy, body.cut.wz);
        double h = 1e-4;
        body.at(up.times(Math.cos(h)).plus(w.times(Math.sin(h))));
        double ahead = body.energy;
        body.at(up.times(Math.cos(h)).minus(w.times(Math.sin(h))));
        double behind = body.energy;
        assertThat((ahead - behind) / (2 * h)).isCloseTo(slope, within(1e-7));
        body.at(up);
        double second = (ahead - 2 * here + behind) / (h * h);
        // K may jump by a finite amount only where the water line meets an edge of the body; allow its nearness
        assertThat(second).isCloseTo(body.kww, within(.05 * (1 + Math.abs(body.kww))));
    }

    /** A turned and moved mesh floats in the turned attitude. */
    @Property(tries = 50)
    void figuresTurnWithTheBody(
            @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double u,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double turn,
            @ForAll @Scale(6) @DoubleRange(max = 6.28) double angle) {
        Vec3 axis = direction(.3, 1.1);
        double[] r = HullBodies.turn(axis.x(), axis.y(), axis.z(), angle);
        Hull still = HullBodies.block(1, 2, 1.5);
        Hull moved = new PolyhedronHull(HullBodies.moved(HullBodies.box(1, 2, 1.5), r, 3, -2, 1), 0);
        Vec3 n = direction(u, turn);
        Vec3 m = new Vec3(
                r[0] * n.x() + r[1] * n.y() + r[2] * n.z(),
                r[3] * n.x() + r[4] * n.y() + r[5] * n.z(),
                r[6] * n.x() + r[7] * n.y() + r[8] * n.z());
        Stability one = Stability.of(still, still.centroid(), n, 1.9);
        Stability two = Stability.of(moved, moved.centroid(), m, 1.9);
        assertThat(two.energy()).isCloseTo(one.energy(), within(1e-12));
        assertThat(two.gmSmaller()).isCloseTo(one.gmSmaller(), within(1e-11));
        assertThat(two.gmLarger()).isCloseTo(one.gmLarger(), within(1e-11));
    }

    /** A body k times as large, of the same density, floats alike with k times the lengths. */
    @Property(tries = 30)
    void scaling(
            @ForAll @Scale(6) @DoubleRange(min = .01, max = 100) double k,
            @ForAll @Scale(6) @DoubleRange(min = .1, max = .9) double s) {
        Attitude one =
                Attitudes.find(HullBodies.cone(1, 2), new Vec3(0, 0, .5), s).get(0);
        Attitude two = Attitudes.find(HullBodies.cone(k, 2 * k), new Vec3(0, 0, .5 * k), s)
                .get(0);
        assertThat(two.draft()).isCloseTo(k * one.draft(), within(1e-9 * k));
        assertThat(two.gmLarger()).isCloseTo(k * one.gmLarger(), within(1e-8 * k));
        assertThat(two.share()).isCloseTo(one.share(), within(1e-9));
    }
}
