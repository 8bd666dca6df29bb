package org.fizzhull.shape.kind;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleUnaryOperator;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.shape.text.ShapeText;
import org.junit.jupiter.api.Test;

/** The table against the formula it was filled from, or against a formula written out here; mm. Origin: analytic. */
class ProfileTableTest {

    @Test
    void betweenTheNodesOfCurvesToAMillionth() {
        follows(new SpheroidErosion(25, 35), new SpheroidErosion(25, 35).profile(), 25);
        follows(new SpheroidErosion(10, 200), new SpheroidErosion(10, 200).profile(), 10);
        follows(new SpheroidErosion(25, 25.001), new SpheroidErosion(25, 25.001).profile(), 25);
        for (RoundedPrism body : rounded()) {
            DepthProfile profile = body.profile(DepthProfile.Exposure.TRAY);
            follows(new RoundedPrism.OnTray(body), profile, profile.deepest());
        }
        for (DepthProfile.Exposure exposure :
                new DepthProfile.Exposure[] {DepthProfile.Exposure.ALL, DepthProfile.Exposure.TRAY}) {
            int open = exposure == DepthProfile.Exposure.TRAY ? 1 : 2;
            for (Outline outline : new Outline[] {
                new HeartOutline(41),
                new StarOutline(5, 40, 22.5),
                new StarOutline(3, 40, 5),
                new StarOutline(24, 40, 38),
                new StarOutline(8, 40, 39.9)
            }) {
                for (double height : new double[] {28, 200}) {
                    DepthProfile profile = PrismErosion.profile(outline, height, exposure);
                    follows(new PrismErosion(outline, height, open), profile, profile.deepest());
                }
            }
        }
    }

    private static RoundedPrism[] rounded() {
        return new RoundedPrism[] {
            disc(27, 30, 8),
            disc(5, 70, 10),
            disc(2, 20, 10),
            disc(0, 30, 15),
            disc(34.9, 30, 0.1),
            rectangle(44, 24, 30, 8),
            rectangle(26, 6, 60, 12),
            rectangle(10, 10, 24, 12),
            rectangle(0, 0, 30, 15)
        };
    }

    private static RoundedPrism disc(double a, double height, double edge) {
        return new RoundedPrism(Math.PI * a * a, 2 * Math.PI * a, a, RoundedPrism.DISC, height, edge);
    }

    private static RoundedPrism rectangle(double x, double y, double height, double edge) {
        return new RoundedPrism(x * y, 2 * (x + y), Math.min(x, y) / 2, RoundedPrism.RECTANGLE, height, edge);
    }

    /** The front is the derivative of the volume, formula by formula: central differences. */
    @Test
    void frontsAreDerivatives() {
        for (RoundedPrism body : rounded()) {
            derivative(body, Math.min(body.inradius(), body.height() / 2));
            Erosion onTray = new RoundedPrism.OnTray(body);
            derivative(onTray, body.profile(DepthProfile.Exposure.TRAY).deepest());
        }
        derivative(new SpheroidErosion(25, 35), 25);
        derivative(new SpheroidErosion(10, 200), 10);
        derivative(new BeltedBall(20, 40), 20);
        derivative(new HalfShell(45, 30), 7.5);
        for (boolean tray : new boolean[] {false, true}) {
            ConeErosion cone = new ConeErosion(35, 10, 60, tray);
            derivative(cone, cone.profile().deepest());
        }
        for (Outline outline : new Outline[] {
            new HeartOutline(41), new StarOutline(5, 40, 22.5), new StarOutline(3, 40, 5), new StarOutline(8, 40, 39.9)
        }) {
            derivative(new PrismErosion(outline, 200, 2), outline.breaks()[outline.breaks().length - 1]);
        }
    }

    private static void derivative(Erosion erosion, double deepest) {
        double h = 1e-5 * deepest;
        double scale = erosion.volume(0) / deepest;
        for (double share = 0.0137; share < 0.99; share += 0.0173) {
            double d = share * deepest;
            double rate = (erosion.volume(d - h) - erosion.volume(d + h)) / (2 * h);
            // A square root that starts within h of d leaves sqrt(h) h of the scale at most: 3e-8.
            assertThat(erosion.front(d)).as("%s at %s", erosion, share).isCloseTo(rate, within(1e-7 * scale));
        }
    }

    /** Without cancellation the volume near the end is known too: one part in 1e12 of the whole, at the nodes. */
    private static void follows(Erosion formula, DepthProfile profile, double deepest) {
        assertThat(profile.deepest()).isCloseTo(deepest, within(1e-12 * deepest));
        double whole = formula.volume(0);
        for (double share = 0.00013; share < 0.99; share += 0.000731) {
            double v = formula.volume(share * deepest);
            assertThat(profile.volume(share * deepest))
                    .as("%s at %s", formula, share)
                    .isCloseTo(v, within(1e-6 * v + 1e-14 * whole));
        }
    }

    @Test
    void cubicsAreExactEverywhere() {
        cubic("sphere(diameter=60 mm)", DepthProfile.Exposure.ALL, 30, d -> 4 * Math.PI * cube(30 - d) / 3);
        cubic("dome(diameter=60 mm)", DepthProfile.Exposure.TRAY, 30, d -> 2 * Math.PI * cube(30 - d) / 3);
        // Cap of height 30 - 2d on a ball of radius 2500/60 - d.
        cubic(
                "dome(diameter=80 mm, height=30 mm)",
                DepthProfile.Exposure.ALL,
                15,
                d -> Math.PI * square(30 - 2 * d) * (3 * (2500.0 / 60 - d) - (30 - 2 * d)) / 3);
        cubic(
                "dome(diameter=80 mm, height=30 mm)",
                DepthProfile.Exposure.TRAY,
                30,
                d -> Math.PI * square(30 - d) * (3 * (2500.0 / 60 - d) - (30 - d)) / 3);
        cubic("ring(diameter=90 mm, tube=30 mm)", DepthProfile.Exposure.TRAY, 15, d -> 60 * square(Math.PI * (15 - d)));
        cubic(
                "block(length=60 mm, width=40 mm, height=30 mm)",
                DepthProfile.Exposure.ALL,
                15,
                d -> (60 - 2 * d) * (40 - 2 * d) * (30 - 2 * d));
        cubic(
                "block(length=60 mm, width=40 mm, height=30 mm)",
                DepthProfile.Exposure.TRAY,
                20,
                d -> (60 - 2 * d) * (40 - 2 * d) * (30 - d));
        cubic(
                "puck(diameter=60 mm, height=70 mm)",
                DepthProfile.Exposure.TRAY,
                30,
                d -> Math.PI * square(30 - d) * (70 - d));
        cubic(
                "bowl(diameter=90 mm, wall=15 mm)",
                DepthProfile.Exposure.OUTSIDE,
                15,
                d -> 2 * Math.PI * (cube(45 - d) - cube(30)) / 3);
        cubic(
                "bowl(diameter=90 mm, wall=15 mm)",
                DepthProfile.Exposure.ALL,
                7.5,
                d -> Math.PI * (square(45 - 2 * d) * (90 - d) - 900 * (60 + 3 * d)) / 3);
        cubic(
                "capsule(length=80 mm, diameter=40 mm)",
                DepthProfile.Exposure.ALL,
                20,
                d -> Math.PI * square(20 - d) * (40 + 4 * (20 - d) / 3));
        // A cone keeps its angles: it shrinks alike towards the centre of its inscribed ball.
        double reach = 30 * 40 / (30 + 50.0);
        cubic(
                "cone(diameter=60 mm, height=40 mm)",
                DepthProfile.Exposure.ALL,
                reach,
                d -> Math.PI * 900 * 40 / 3 * cube(1 - d / reach));
        cubic(
                "cone(diameter=60 mm, height=40 mm)",
                DepthProfile.Exposure.TRAY,
                24,
                d -> Math.PI * 900 * 40 / 3 * cube(1 - d / 24));
    }

    private static void cubic(
            String text, DepthProfile.Exposure exposure, double deepest, DoubleUnaryOperator formula) {
        DepthProfile profile = ShapeText.read(text).depthProfile(exposure);
        assertThat(profile.deepest() * 1e3).isCloseTo(deepest, within(1e-12 * deepest));
        assertThat(profile.relativeError()).isZero();
        double whole = formula.applyAsDouble(0);
        for (double d = 0; d < deepest; d += deepest / 1000) {
            assertThat(profile.volume(d / 1e3) * 1e9)
                    .as("%s %s at %s", text, exposure, d)
                    .isCloseTo(formula.applyAsDouble(d), within(1e-13 * whole));
        }
    }

    private static double square(double x) {
        return x * x;
    }

    private static double cube(double x) {
        return x * x * x;
    }
}
