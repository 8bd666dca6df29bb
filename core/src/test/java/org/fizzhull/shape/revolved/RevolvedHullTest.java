package org.fizzhull.shape.revolved;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.fizzhull.geometry.Hull;
import org.fizzhull.geometry.PlaneCut;
import org.fizzhull.geometry.Vec3;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.body.PolyhedronHull;
import org.junit.jupiter.api.Test;

class RevolvedHullTest {
    private final PlaneCut cut = new PlaneCut();

    private void cut(Hull hull, double angle, double c) {
        hull.cut(Math.sin(angle), 0, Math.cos(angle), c, cut);
    }

    /** OTHER PROGRAM: validation/reference/shapes.py, in part also a CAD kernel (mm). */
    @Test
    void volumesSurfacesAndCentroids() {
        check(HullBodies.dome(35, 25), 52359.877560, 9032.078879, 8.984375);
        check(HullBodies.dome(40, 20), 41887.902048, 8796.459430, 7);
        check(HullBodies.dome(35, 35), 89797.190015, 11545.353002, 13.125);
        check(HullBodies.bowl(35, 20), 73042.029196, 12801.990063, 35 - 14.415322581);
        check(HullBodies.torus(22.5, 12.5), 69395.655945, 11103.304951, 12.5);
        check(HullBodies.spheroid(30, 45), 169646.003294, 15226.396347, 45);
        check(HullBodies.spheroid(30, 20), 75398.223686, 8900.073737, 20);
        check(HullBodies.egg(25, 40, 25), 2 * Math.PI * 625 * 65 / 3, 9495.052872, 25 + 5.625);
        check(HullBodies.capsule(20, 40), 83775.804096, 10053.096491, 40);
        check(HullBodies.cone(30, 60), 56548.667765, 9149.766646, 15);
        check(HullBodies.ball(35), 179594.380030, 15393.804003, 35);
        Profile2D frustum = Profile2D.builder().line(0, 30, 40, 20).build();
        check(new RevolvedHull(frustum), 79587.013891, 10560.629621, 17.368421);
        Profile2D puck = Profile2D.builder()
                .arc(5, 30, 5, 5, 1, 0, 5)
                .line(5, 35, 20, 35)
                .arc(20, 30, 5, 5, 1, 20, 25)
                .build();
        check(new RevolvedHull(puck), 93926.900968, 12228.579648, 12.5);
    }

    private static void check(Hull hull, double volume, double surface, double height) {
        Profile2D profile = ((RevolvedHull) hull).profile();
        assertThat(hull.volume()).isCloseTo(volume, within(1e-9 * volume));
        assertThat(profile.volume()).isCloseTo(volume, within(1e-9 * volume));
        assertThat(profile.surface()).isCloseTo(surface, within(1e-9 * surface));
        assertThat(hull.centroid().z()).isCloseTo(height, within(1e-9 * 70));
    }

    /** ANALYTIC: the plane crosses the wall only: V = pi R^2 times the height on the axis, and the face an ellipse. */
    @Test
    void tiltedCylinder() {
        double angle = 0.4;
        cut(HullBodies.cylinder(2, 3), angle, 1.4 * Math.cos(angle));
        assertThat(cut.volume).isCloseTo(1.4 * Math.PI, within(1e-13));
        double tan = Math.tan(angle);
        assertThat(cut.mx).isCloseTo(-Math.PI * tan / 4, within(1e-13));
        assertThat(cut.mz).isCloseTo(Math.PI * (1.4 * 1.4 / 2 + tan * tan / 8), within(1e-13));
        double b = 1 / Math.cos(angle);
        assertThat(cut.area).isCloseTo(Math.PI * b, within(1e-13));
        assertThat(cut.juu).isCloseTo(Math.PI * b / 4, within(1e-13));
        assertThat(cut.jww).isCloseTo(Math.PI * b * b * b / 4, within(1e-13));
        assertThat(cut.az).isCloseTo(1.4, within(1e-13));
    }

    /** ANALYTIC: the hoof of Archimedes, cut through a diameter of the base, has the volume 2 R^2 h/3. */
    @Test
    void hoofOfACylinder() {
        cut(HullBodies.cylinder(2, 3), -Math.atan(2.5), 0);
        double hoof = 2 * 2.5 / 3;
        double volume = Math.min(cut.volume, 3 * Math.PI - cut.volume);
        assertThat(volume).isCloseTo(hoof, within(1e-13));
    }

    /** ANALYTIC: a tilted plane takes an oblique elliptic cone off the tip: V = (distance of the tip) area/3. */
    @Test
    void tipOfACone() {
        double angle = 0.5;
        double c = 1.2 * Math.cos(angle);
        cut(HullBodies.cone(1, 2), angle, c);
        double above = HullBodies.cone(1, 2).volume() - cut.volume;
        double distance = 2 * Math.cos(angle) - c;
        assertThat(above).isCloseTo(distance * cut.area / 3, within(1e-14));
        // the ellipse: half axes from the two points on the meridian r = (2 - z)/2
        double t = Math.tan(angle);
        double left = 0.8 / (2 + t);
        double right = 0.8 / (2 - t);
        double along = (left + right) / 2 / Math.cos(angle);
        double across = Math.sqrt(left * right);
        assertThat(cut.area).isCloseTo(Math.PI * along * across, within(1e-13));
        assertThat(cut.jww).isCloseTo(cut.area * along * along / 4, within(1e-13));
    }

    /** ANALYTIC: a spheroid is a stretched ball, so its cut is the stretched cut of a ball. */
    @Test
    void spheroidIsAStretchedBall() {
        double a = 1;
        double b = 1.7;
        Hull spheroid = HullBodies.spheroid(a, b);
        for (double angle = 0.05; angle < 3.1; angle += 0.17) {
            double nx = Math.sin(angle);
            double nz = Math.cos(angle);
            double length = Math.hypot(a * nx, b * nz);
            for (double d = -0.95; d < 1; d += 0.19) {
                spheroid.cut(nx, 0, nz, b * nz + d * length, cut);
                double h = 1 + d;
                double volume = a * a * b * Math.PI * h * h * (3 - h) / 3;
                assertThat(cut.volume).isCloseTo(volume, within(1e-13));
                double along = -a * a * b * Math.PI / 4 * Math.pow(1 - d * d, 2);
                assertThat(cut.mx).isCloseTo(along * a * a * nx / length, within(1e-13));
                assertThat(cut.mz - b * cut.volume).isCloseTo(along * b * b * nz / length, within(1e-13));
                assertThat(cut.area).isCloseTo(a * a * b / length * Math.PI * (1 - d * d), within(2e-13));
            }
        }
    }

    /** ANALYTIC: torus flat, half immersed: an annulus of 3534.291735 mm2. */
    @Test
    void annularFaceOfATorus() {
        cut(HullBodies.torus(22.5, 12.5), 0, 12.5);
        assertThat(cut.area).isCloseTo(Math.PI * (35 * 35 - 10 * 10), within(1e-9));
        assertThat(cut.juu).isCloseTo(Math.PI * (Math.pow(35, 4) - Math.pow(10, 4)) / 4, within(1e-6));
    }

    /** ANALYTIC: planes along the axis. Cylinder: a circular segment times the length. */
    @Test
    void planeAlongTheAxis() {
        cut(HullBodies.cylinder(2, 3), Math.PI / 2, 0.3);
        double segment = Math.PI / 2 + Math.asin(0.3) + 0.3 * Math.sqrt(1 - 0.09);
        assertThat(cut.volume).isCloseTo(3 * segment, within(1e-13));
        assertThat(cut.area).isCloseTo(6 * Math.sqrt(1 - 0.09), within(1e-13));
    }

    /** ANALYTIC: reach of a ball, a cone and a torus. */
    @Test
    void reach() {
        double s = Math.sin(0.7);
        double c = Math.cos(0.7);
        assertThat(HullBodies.ball(2).reach(s, 0, c)).isCloseTo(2 * c + 2, within(1e-14));
        assertThat(HullBodies.cone(1, 3).reach(0, -s, c)).isCloseTo(Math.max(s, 3 * c), within(1e-14));
        assertThat(HullBodies.torus(3, 1).reach(s, 0, c)).isCloseTo(3 * s + c + 1, within(1e-14));
        assertThat(HullBodies.bowl(2, 1).reach(0, 0, 1)).isCloseTo(2, within(1e-14));
    }

    /** Meshes inscribed in a body close in on its exact cut with the square of the segment. */
    @Test
    void meshesCloseInWithOrderTwo() {
        double[][] coarse = {{0, 0}, {1, 0}, {0.4, 1.5}, {0, 1.5}};
        Hull exact = new RevolvedHull(Profile2D.builder().line(0, 1, 1.5, .4).build());
        double angle = 0.8;
        cut(exact, angle, 0.5);
        double[] want = {cut.volume, cut.mx, cut.mz, cut.area, cut.juu, cut.jww};
        double[][] error = new double[2][];
        for (int k = 0; k < 2; k++) {
            cut(new PolyhedronHull(HullBodies.turned(coarse, 64 << k), 0), angle, 0.5);
            double[] got = {cut.volume, cut.mx, cut.mz, cut.area, cut.juu, cut.jww};
            error[k] = new double[got.length];
            for (int i = 0; i < got.length; i++) {
                error[k][i] = Math.abs(got[i] - want[i]);
            }
        }
        for (int i = 0; i < want.length; i++) {
            assertThat(error[0][i] / error[1][i]).as("figure " + i).isBetween(3.8, 4.2);
        }
    }

    /** ANALYTIC: a ring has two round outlines, a bowl and a cone one; areas by Pappus or by hand. */
    @Test
    void sectionsAreClosedOutlines() {
        Vec3 up = new Vec3(0.6, 0, 0.8);
        List<double[][]> ring = HullBodies.torus(3, 1).section(up);
        assertThat(ring).hasSize(2);
        assertThat(area(ring)).isCloseTo(2 * Math.PI, within(0.003 * 2 * Math.PI));
        List<double[][]> bowl = HullBodies.bowl(2, 1).section(up);
        assertThat(bowl).hasSize(1);
        assertThat(area(bowl)).isCloseTo(Math.PI * 3 / 2, within(0.003 * 5));
        List<double[][]> cone = HullBodies.cone(1, 3).section(up);
        assertThat(area(cone)).isCloseTo(3, within(1e-12));
        double top = Double.NEGATIVE_INFINITY;
        for (double[] point : cone.get(0)) {
            top = Math.max(top, point[1]);
        }
        assertThat(top).isCloseTo(HullBodies.cone(1, 3).reach(0.6, 0, 0.8), within(1e-12));
    }

    /** A mesh shows the same outline as the body it was turned from. */
    @Test
    void meshAndMeridianShowTheSameSection() {
        Vec3 up = new Vec3(0.48, 0.36, 0.8);
        Hull mesh = new PolyhedronHull(HullBodies.turned(new double[][] {{0, 0}, {1, 0}, {0, 3}}, 400), 0);
        double[] a = box(mesh.section(up));
        double[] b = box(HullBodies.cone(1, 3).section(up));
        for (int i = 0; i < 4; i++) {
            assertThat(a[i]).isCloseTo(b[i], within(1e-3));
        }
    }

    private static double area(List<double[][]> loops) {
        double sum = 0;
        for (double[][] loop : loops) {
            double one = 0;
            for (int i = 0; i < loop.length; i++) {
                double[] a = loop[i];
                double[] b = loop[(i + 1) % loop.length];
                one += (a[0] * b[1] - a[1] * b[0]) / 2;
            }
            sum += Math.abs(one);
        }
        return sum;
    }

    private static double[] box(List<double[][]> loops) {
        double[] box = {1e9, -1e9, 1e9, -1e9};
        for (double[][] loop : loops) {
            for (double[] p : loop) {
                box[0] = Math.min(box[0], p[0]);
                box[1] = Math.max(box[1], p[0]);
                box[2] = Math.min(box[2], p[1]);
                box[3] = Math.max(box[3], p[1]);
            }
        }
        return box;
    }
}
