package org.fizzhull.shape.meshed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.mesh.TriangleMesh;
import org.fizzhull.mesh.distance.MeshDepth;
import org.fizzhull.shape.HullBodies;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.ShapeMeshes;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Depth profiles of meshes against the closed forms of the same bodies. ANALYTIC. The tolerance is what is demanded: 0.5 %
 * in volume and 2 % in area over the first 90 % of the volume, for walls of 2 and 4 mm 1 % and 4 %. The meshes follow round
 * bodies by 256 chords, which leave 0.02 % of the radius.
 */
public class MeshDepthTest {
    private static final int AROUND = 256;
    private static final double IN_VOLUME = 0.005;
    private static final double IN_AREA = 0.02;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    sphere(diameter=65 mm)                                    | ALL
                    dome(diameter=100 mm, height=35 mm)                       | TRAY
                    puck(diameter=70 mm, height=30 mm)                        | TRAY
                    puck(diameter=40 mm, height=60 mm, edge=18 mm)            | TRAY
                    puck(diameter=70 mm, height=30 mm, edge=5 mm)             | TRAY
                    block(length=60 mm, width=40 mm, height=30 mm)            | TRAY
                    cone(diameter=60 mm, height=70 mm)                        | ALL
                    cone(diameter=75 mm, height=35 mm, top=55 mm)             | TRAY
                    ring(diameter=90 mm, tube=6 mm)                           | ALL
                    star(points=5, diameter=80 mm, inner=45 mm, height=30 mm) | TRAY
                    heart(width=70 mm, height=28 mm)                          | TRAY
                    bowl(diameter=60 mm, wall=28 mm)                          | ALL
                    bowl(diameter=90 mm, wall=15 mm)                          | ALL
                    bowl(diameter=90 mm, wall=10 mm)                          | ALL
                    bowl(diameter=90 mm, wall=6 mm)                           | ALL
                    bowl(diameter=90 mm, wall=4 mm)                           | ALL
                    bowl(diameter=90 mm, wall=2 mm)                           | ALL
                    puck(diameter=200 mm, height=5 mm)                        | ALL
                    """)
    void agreesWithTheClosedForm(String text, DepthProfile.Exposure exposure) {
        compare(text, exposure);
    }

    /** Every shape of the battery, whole and on a tray. */
    @Tag("proof")
    @ParameterizedTest
    @MethodSource("org.fizzhull.shape.ShapeBattery#texts")
    void agreesWithEveryClosedForm(String text) {
        if (!text.startsWith("filled")) {
            compare(text, DepthProfile.Exposure.ALL);
            compare(text, DepthProfile.Exposure.TRAY);
        }
    }

    private static void compare(String text, DepthProfile.Exposure exposure) {
        Shape shape = ShapeText.read(text);
        TriangleMesh mesh = ShapeMeshes.of(shape, AROUND);
        DepthProfile found = MeshDepth.of(mesh, exposure == DepthProfile.Exposure.TRAY, false);
        double ease = text.contains("wall=2 mm") || text.contains("wall=4 mm") ? 2 : 1;
        near(text + " " + exposure, found, shape.depthProfile(exposure), ease * IN_VOLUME, ease * IN_AREA);
    }

    public static void near(String what, DepthProfile found, DepthProfile exact, double inVolume, double inArea) {
        double whole = exact.volume(0);
        for (int i = 0; i <= 400; i++) {
            double d = exact.deepest() * i / 400;
            double left = exact.volume(d);
            if (left < 0.1 * whole) {
                break;
            }
            assertThat(found.volume(d)).as("%s: V at %s", what, d).isCloseTo(left, within(inVolume * left));
            double area = exact.area(d);
            assertThat(found.area(d)).as("%s: A at %s", what, d).isCloseTo(area, within(inArea * area));
        }
        assertThat(found.deepest()).as(what).isCloseTo(exact.deepest(), within(0.01 * exact.deepest()));
    }

    /** What the chords add falls by four when they are halved: a ball with 12, 24 and 48 of them. */
    @Test
    void chordsErrBySecondOrder() {
        Shape ball = ShapeText.read("sphere(diameter=65 mm)");
        double[] worst = new double[3];
        for (int k = 0; k < 3; k++) {
            worst[k] = worst(MeshDepth.of(ShapeMeshes.of(ball, 12 << k), false, false), ball);
        }
        assertThat(worst[0] / worst[1]).isBetween(3.0, 5.0);
        assertThat(worst[1] / worst[2]).isBetween(3.0, 5.0);
    }

    private static double worst(DepthProfile found, Shape shape) {
        DepthProfile exact = shape.depthProfile(DepthProfile.Exposure.ALL);
        double worst = 0;
        for (double d = 0; exact.volume(d) > 0.1 * exact.volume(0); d += exact.deepest() / 400) {
            worst = Math.max(worst, Math.abs(found.volume(d) / exact.volume(d) - 1));
        }
        return worst;
    }

    /**
     * A truncated cone with 300 points below and 128 on top, joined by slivers, as programs for construction write it: no
     * two facets make a flat four-sided figure.
     */
    @Test
    void slivers() {
        Shape cone = ShapeText.read("cone(diameter=50 mm, height=60 mm, top=20 mm)");
        DepthProfile found = MeshDepth.of(slivers(0.025, 0.01, 0.06, 300, 128), false, false);
        near("slivers", found, cone.depthProfile(DepthProfile.Exposure.ALL), IN_VOLUME, IN_AREA);
    }

    private static TriangleMesh slivers(double below, double above, double height, int n, int m) {
        List<double[]> points = new ArrayList<>();
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < n + m; i++) {
            boolean low = i < n;
            double angle = 2 * Math.PI * (low ? (double) i / n : (double) (i - n) / m);
            double r = low ? below : above;
            points.add(new double[] {r * Math.cos(angle), r * Math.sin(angle), low ? 0 : height});
        }
        points.add(new double[] {0, 0, 0});
        points.add(new double[] {0, 0, height});
        int i = 0;
        int j = 0;
        while (i < n || j < m) {
            boolean lower = (i + 0.5) * m < (j + 0.5) * n;
            int next = lower ? (i + 1) % n : n + (j + 1) % m;
            corners.addAll(List.of(i % n, next, n + j % m));
            corners.addAll(lower ? List.of(n + m, next, i % n) : List.of(n + m + 1, n + j % m, next));
            i += lower ? 1 : 0;
            j += lower ? 0 : 1;
        }
        return ShapeMeshes.mesh(points, corners);
    }

    /**
     * Steiner's formula around a hollow cube: up to where the fronts meet, a front from its walls has taken
     * {@code 6 b2 d + 3 pi b d2 + 4/3 pi d3}; one from outside leaves a cube.
     */
    @Test
    void hollowCubeFollowsSteiner() {
        double a = 0.06;
        double b = 0.02;
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(a, a, a), HullBodies.box(b, b, b), true);
        DepthProfile found = MeshDepth.of(shell, false, false);
        for (double d = 0; d < 0.007; d += 0.0005) {
            double swollen = b * b * b + 6 * b * b * d + 3 * Math.PI * b * d * d + 4 * Math.PI / 3 * d * d * d;
            double rate = 6 * b * b + 6 * Math.PI * b * d + 4 * Math.PI * d * d + 6 * Math.pow(a - 2 * d, 2);
            double left = Math.pow(a - 2 * d, 3) - swollen;
            assertThat(found.volume(d)).as("V at %s", d).isCloseTo(left, within(IN_VOLUME * left));
            assertThat(found.area(d)).as("A at %s", d).isCloseTo(rate, within(IN_AREA * rate));
        }
    }

    /** The same around a hollow of two cones on one base of radius r, h high each: the integral of its curvature is known. */
    @Test
    void hollowSpindleFollowsSteiner() {
        double a = 0.08;
        double r = 0.01;
        double h = 0.015;
        double[][] meridian = {{0, -h}, {r, 0}, {0, h}};
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(a, a, a), HullBodies.turned(meridian, AROUND), true);
        DepthProfile found = MeshDepth.of(shell, false, false);
        double spindle = 2 * Math.PI * r * r * h / 3;
        double surface = 2 * Math.PI * r * Math.hypot(r, h);
        double curvature = 2 * Math.PI * h + 2 * Math.PI * r * Math.atan(r / h);
        for (double d = 0; d < 0.012; d += 0.0005) {
            double swollen = spindle + surface * d + curvature * d * d + 4 * Math.PI / 3 * d * d * d;
            double rate = surface + 2 * curvature * d + 4 * Math.PI * d * d + 6 * Math.pow(a - 2 * d, 2);
            double left = Math.pow(a - 2 * d, 3) - swollen;
            assertThat(found.volume(d)).as("V at %s", d).isCloseTo(left, within(IN_VOLUME * left));
            assertThat(found.area(d)).as("A at %s", d).isCloseTo(rate, within(IN_AREA * rate));
        }
    }

    /** From outside alone, what is left of a hollow cube is (a - 2d)^3 - b^3, to the wall's own thickness. */
    @Test
    void closedHollowIsNotAFrontFromOutside() {
        TriangleMesh shell = ShapeMeshes.both(HullBodies.box(0.06, 0.06, 0.06), HullBodies.box(0.03, 0.03, 0.03), true);
        DepthProfile outside = MeshDepth.of(shell, false, true);
        double hollow = Math.pow(0.03, 3);
        for (double d = 0; d < 0.0125; d += 0.0005) {
            double left = Math.pow(0.06 - 2 * d, 3) - hollow;
            assertThat(outside.volume(d)).isCloseTo(left, within(IN_VOLUME * left));
            double area = 6 * Math.pow(0.06 - 2 * d, 2);
            assertThat(outside.area(d)).isCloseTo(area, within(IN_AREA * area));
        }
        assertThat(outside.deepest()).isCloseTo(0.015, within(1e-4));
        assertThat(MeshDepth.of(shell, false, false).area(0))
                .isCloseTo(6 * 0.06 * 0.06 + 6 * 0.03 * 0.03, within(1e-15));
    }

    /** Two bodies far apart are left as each alone is. */
    @Test
    void separateBodiesAddUp() {
        TriangleMesh cube = HullBodies.box(0.03, 0.03, 0.03);
        double[] unit = {1, 0, 0, 0, 1, 0, 0, 0, 1};
        TriangleMesh pair = ShapeMeshes.both(cube, HullBodies.moved(cube, unit, 0.05, 0.01, 0.02), false);
        DepthProfile found = MeshProfiles.of(pair).all();
        for (double d = 0; d < 0.008; d += 0.001) {
            double left = 2 * Math.pow(0.03 - 2 * d, 3);
            assertThat(found.volume(d)).isCloseTo(left, within(IN_VOLUME * left));
        }
    }

    /** A tray that is an inverted pyramid: the rim of the shut face is the nearest place to all that stands above it. */
    @Test
    void overhangsOnATray() {
        double side = 0.02;
        TriangleMesh box = HullBodies.box(side, side, side);
        double lean = 0.5;
        List<double[]> points = new ArrayList<>();
        for (int v = 0; v < box.vertexCount(); v++) {
            double out = 1 + lean * (box.at(v, 2) / side + 0.5);
            points.add(new double[] {out * box.at(v, 0), out * box.at(v, 1), box.at(v, 2)});
        }
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < 3 * box.facetCount(); i++) {
            corners.add(box.corner(i / 3, i % 3));
        }
        DepthProfile found = MeshDepth.of(ShapeMeshes.mesh(points, corners), true, false);
        // by counting points of a fine grid, whose distances to the five open faces are elementary
        double[] left = grid(side, lean, new double[] {0, 0.001, 0.002, 0.004, 0.006});
        double[] depth = {0, 0.001, 0.002, 0.004, 0.006};
        for (int k = 0; k < depth.length; k++) {
            assertThat(found.volume(depth[k])).as("V at %s", depth[k]).isCloseTo(left[k], within(0.006 * left[k]));
        }
    }

    private static double[] grid(double side, double lean, double[] depth) {
        int n = 160;
        double wide = side * (1 + lean);
        double[] left = new double[depth.length];
        double slope = lean / 2;
        for (int k = 0; k < n; k++) {
            double z = side * (k + 0.5) / n;
            for (int j = 0; j < n; j++) {
                double y = wide * ((j + 0.5) / n - 0.5);
                for (int i = 0; i < n; i++) {
                    double x = wide * ((i + 0.5) / n - 0.5);
                    double half = side / 2 + slope * z;
                    double gap = half - Math.max(Math.abs(x), Math.abs(y));
                    if (gap <= 0) {
                        continue;
                    }
                    double d = Math.min(side - z, wall(half - Math.abs(x), z, slope));
                    d = Math.min(d, wall(half - Math.abs(y), z, slope));
                    for (int m = 0; m < depth.length; m++) {
                        left[m] += d > depth[m] ? wide * wide * side / n / n / n : 0;
                    }
                }
            }
        }
        return left;
    }

    /** Distance to a wall that leans out, a level distance away at a height: to its plane, or to its lower edge. */
    private static double wall(double level, double z, double slope) {
        double cos = 1 / Math.hypot(1, slope);
        double plane = level * cos;
        double foot = z - plane * slope * cos;
        // the foot of the perpendicular lies lower by the tangent's share
        return foot >= 0 ? plane : Math.hypot(level - slope * z, z);
    }
}
