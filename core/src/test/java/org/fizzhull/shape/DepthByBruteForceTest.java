package org.fizzhull.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.BruteForce.Path;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/**
 * Depth profiles against distances on a grid, mm. Tolerance: the front is straightened inside each of 180 cells along the
 * longest side, arcs are chords of one degree (5e-5 of a disc), so the error is of second order: a grid of 110 cells
 * differed by up to 6.2e-4 of the whole volume (the thin tall puck), which makes 2.3e-4 at 180.
 */
public class DepthByBruteForceTest {
    private static final double TOLERANCE = 4e-4;
    private static final int CELLS = 180;

    @Test
    void puckOnTray() {
        // Radius 35, height 30, edge 8: the core flat has radius 27.
        double[][] open = new Path()
                .arc(27, 8, 8, 8, -90, 0)
                .arc(27, 22, 8, 8, 0, 90)
                .to(0, 30)
                .points();
        revolved(
                "puck(diameter=70 mm, height=30 mm, edge=8 mm)",
                DepthProfile.Exposure.TRAY,
                closedByAxis(open, 0),
                open);
    }

    @Test
    void tallPuckWithASmallFlatOnTray() {
        double[][] open = new Path()
                .arc(5, 10, 10, 10, -90, 0)
                .arc(5, 60, 10, 10, 0, 90)
                .to(0, 70)
                .points();
        revolved(
                "puck(diameter=30 mm, height=70 mm, edge=10 mm)",
                DepthProfile.Exposure.TRAY,
                closedByAxis(open, 0),
                open);
    }

    @Test
    void puckAllOver() {
        double[][] open = new Path()
                .to(0, 0)
                .arc(27, 8, 8, 8, -90, 0)
                .arc(27, 22, 8, 8, 0, 90)
                .to(0, 30)
                .points();
        revolved("puck(diameter=70 mm, height=30 mm, edge=8 mm)", DepthProfile.Exposure.ALL, open, open);
    }

    @Test
    void domeOnTrayAndAllOver() {
        // Base 80, height 30: ball of radius (1600 + 900)/60 = 41.6667, centre 11.6667 under the base.
        double ball = 2500.0 / 60;
        double low = Math.toDegrees(Math.asin((ball - 30) / ball));
        double[][] cap = new Path().arc(0, 30 - ball, ball, ball, low, 90).points();
        double[][] all =
                new Path().to(0, 0).arc(0, 30 - ball, ball, ball, low, 90).points();
        revolved("dome(diameter=80 mm, height=30 mm)", DepthProfile.Exposure.TRAY, closedByAxis(cap, 0), cap);
        revolved("dome(diameter=80 mm, height=30 mm)", DepthProfile.Exposure.ALL, all, all);
    }

    @Test
    void bowlAllOverAndFromOutside() {
        double[][] body =
                new Path().arc(0, 45, 45, 45, -90, 0).arc(0, 45, 30, 30, 0, -90).points();
        double[][] outside = new Path().arc(0, 45, 45, 45, -90, 0).points();
        revolved("bowl(diameter=90 mm, wall=15 mm)", DepthProfile.Exposure.ALL, body, body);
        revolved("bowl(diameter=90 mm, wall=15 mm)", DepthProfile.Exposure.TRAY, body, body);
        revolved("bowl(diameter=90 mm, wall=15 mm)", DepthProfile.Exposure.OUTSIDE, body, outside);
    }

    @Test
    void frustumOnTrayAndAllOver() {
        double[][] all = {{0, 0}, {35, 0}, {10, 60}, {0, 60}};
        double[][] side = {{35, 0}, {10, 60}, {0, 60}};
        revolved("cone(diameter=70 mm, height=60 mm, top=20 mm)", DepthProfile.Exposure.ALL, all, all);
        revolved("cone(diameter=70 mm, height=60 mm, top=20 mm)", DepthProfile.Exposure.TRAY, all, side);
        double[][] low = {{0, 0}, {37.5, 0}, {27.5, 35}, {0, 35}};
        double[][] lowSide = {{37.5, 0}, {27.5, 35}, {0, 35}};
        revolved("cone(diameter=75 mm, height=35 mm, top=55 mm)", DepthProfile.Exposure.ALL, low, low);
        revolved("cone(diameter=75 mm, height=35 mm, top=55 mm)", DepthProfile.Exposure.TRAY, low, lowSide);
    }

    @Test
    void eggCapsuleAndRing() {
        double[][] egg = new Path().arc(0, 0, 20, 45, -90, 90).points();
        revolved("egg(length=90 mm, diameter=40 mm)", DepthProfile.Exposure.ALL, egg, egg);
        double[][] capsule =
                new Path().arc(0, 0, 15, 15, -90, 0).arc(0, 40, 15, 15, 0, 90).points();
        revolved("capsule(length=70 mm, diameter=30 mm)", DepthProfile.Exposure.ALL, capsule, capsule);
        double[][] ring = new Path().arc(30, 15, 15, 15, 0, 360).points();
        revolved("ring(diameter=90 mm, tube=30 mm)", DepthProfile.Exposure.ALL, ring, ring);
    }

    @Test
    void stars() {
        prism("star(points=5, diameter=80 mm, inner=45 mm, height=200 mm)", 200, star(5, 40, 22.5));
        prism("star(points=3, diameter=80 mm, inner=10 mm, height=200 mm)", 200, star(3, 40, 5));
        prism("star(points=8, diameter=80 mm, inner=20 mm, height=200 mm)", 200, star(8, 40, 10));
        prism("star(points=6, diameter=80 mm, inner=78 mm, height=200 mm)", 200, star(6, 40, 39));
    }

    @Test
    void heart() {
        double q = 40;
        double[][] outline = new Path()
                .to(0, 0)
                .arc(q, q / 2, 20, 20, -90, 90)
                .arc(q / 2, q, 20, 20, 0, 180)
                .points();
        String width = Double.toString(q * (1 + Math.sqrt(0.5)));
        prism("heart(width=" + width + " mm, height=200 mm)", 200, outline);
    }

    private static double[][] star(int points, double outer, double inner) {
        Path path = new Path();
        for (int i = 0; i < 2 * points; i++) {
            double r = i % 2 == 0 ? outer : inner;
            path.to(r * Math.cos(Math.PI * i / points), r * Math.sin(Math.PI * i / points));
        }
        return path.points();
    }

    private static double[][] closedByAxis(double[][] open, double z) {
        double[][] body = java.util.Arrays.copyOf(open, open.length + 1);
        body[open.length] = new double[] {0, z};
        return body;
    }

    private static void revolved(String text, DepthProfile.Exposure exposure, double[][] body, double[][] open) {
        DepthProfile profile = ShapeText.read(text).depthProfile(exposure);
        double[] depths = depths(profile.deepest() * 1e3);
        compare(text + " " + exposure, profile, depths, new BruteForce(body, open, CELLS).revolved(depths), 1, 0);
    }

    /** Side and flats move in on their own: V = a(d) (H - 2d), or (H - d) on a tray. */
    private static void prism(String text, double height, double[][] outline) {
        double[][] ring = java.util.Arrays.copyOf(outline, outline.length + 1);
        ring[outline.length] = outline[0];
        for (DepthProfile.Exposure exposure :
                new DepthProfile.Exposure[] {DepthProfile.Exposure.ALL, DepthProfile.Exposure.TRAY}) {
            DepthProfile profile = ShapeText.read(text).depthProfile(exposure);
            double[] depths = depths(profile.deepest() * 1e3);
            double[] areas = new BruteForce(outline, ring, 3 * CELLS / 2).planar(depths);
            compare(
                    text + " " + exposure,
                    profile,
                    depths,
                    areas,
                    height,
                    exposure == DepthProfile.Exposure.TRAY ? 1 : 2);
        }
    }

    private static double[] depths(double deepest) {
        double[] depths = new double[12];
        for (int i = 0; i < depths.length; i++) {
            depths[i] = deepest * (i + 0.5) / depths.length;
        }
        return depths;
    }

    private static void compare(
            String name, DepthProfile profile, double[] depths, double[] found, double height, int openFlats) {
        double whole = profile.volume(0) * 1e9;
        for (int i = 0; i < depths.length; i++) {
            double expected = found[i] * (openFlats == 0 ? height : height - openFlats * depths[i]);
            assertThat(profile.volume(depths[i] / 1e3) * 1e9)
                    .as("%s at %.2f mm", name, depths[i])
                    .isCloseTo(expected, within(TOLERANCE * whole));
        }
    }
}
