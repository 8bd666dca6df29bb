package org.fizzhull.validation.check;

import java.util.List;
import org.fizzhull.drying.DryingCourse;
import org.fizzhull.drying.mix.DryingInput;
import org.fizzhull.drying.mix.DryingParameters;
import org.fizzhull.drying.mix.SorptionMixture;
import org.fizzhull.drying.place.DryingPhase;
import org.fizzhull.drying.place.Opening;
import org.fizzhull.drying.run.Drying;
import org.fizzhull.drying.run.Resolution;
import org.fizzhull.geometry.DepthProfile;
import org.fizzhull.medium.RoomAir;
import org.fizzhull.shape.Shape;
import org.fizzhull.shape.kind.Block;
import org.fizzhull.shape.kind.Dome;
import org.fizzhull.shape.kind.Puck;
import org.fizzhull.shape.kind.Sphere;
import org.fizzhull.shape.text.ShapeText;
import org.fizzhull.validation.table.Inputs;

/** Drying with a linear isotherm and no reaction is diffusion with a constant coefficient: Crank's series apply. */
final class Diffusion {
    /** Half thickness or radius of the bodies, m. */
    private static final double SIZE = 0.03;

    private static final double SLOPE = 100;
    private static final double RHO = 1000;
    private static final double START = 0.8;
    private static final RoomAir AIR = RoomAir.of(293.15, 0.3);
    private static final DryingInput MIX =
            DryingInput.plain(RHO, 0.4, 0, SorptionMixture.of(1, SLOPE / RHO / 1e-9, 1, 1e-9), 0);
    private static final Resolution RESOLUTION = new Resolution(150, 1, 1e-5);

    private Diffusion() {}

    /** Fraction of the whole change done at Fourier number Fo. */
    static double done(Inputs in) {
        double fo = in.number("Fo");
        return fraction(course(body(in.word("body")), 1, in.word("Bi"), fo), fo);
    }

    /** Time by the depth profile with correction c over the exact time, at the fraction the exact course has at Fo. */
    static double timeRatio(Inputs in) {
        double fo = in.number("Fo");
        double exact = in.number("done");
        DryingCourse course = course(body(in.word("body")), in.number("c"), "infinite", 2 * fo);
        return timeOver(fo, course, exact);
    }

    /** Time by the depth profile with correction c over the exact time, at which a part is done. */
    static double profileError(Inputs in) {
        String body = in.word("body");
        double part = in.number("done");
        double exact = DiffusionSeries.time(fo -> left(body, fo), part);
        DryingCourse course = course(body(body), in.number("c"), "infinite", 2 * exact);
        return timeOver(exact, course, part);
    }

    /** Time at which a part is done in a course, over the exact one. */
    private static double timeOver(double exact, DryingCourse course, double part) {
        double low = 0;
        double high = 2 * exact;
        while (high - low > 1e-6 * exact) {
            double middle = 0.5 * (low + high);
            if (fraction(course, middle) < part) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low / exact;
    }

    /** Exact part left by series, for the bodies that have one. */
    private static double left(String body, double fo) {
        return switch (body) {
            case "dome on a rack" -> DiffusionSeries.halfBall(fo);
            case "puck" -> DiffusionSeries.rod(1, fo) * DiffusionSeries.slab(1, fo);
            case "flat puck" -> DiffusionSeries.rod(35 / 30.0, fo) * DiffusionSeries.slab(14 / 30.0, fo);
            case "cube" -> Math.pow(DiffusionSeries.slab(1, fo), 3);
            case "block" ->
                DiffusionSeries.slab(1, fo) * DiffusionSeries.slab(20 / 30.0, fo) * DiffusionSeries.slab(15 / 30.0, fo);
            default -> throw new IllegalArgumentException("no series for " + body);
        };
    }

    /** Exact part done of a body by its series alone: whether the series is right. */
    static double series(Inputs in) {
        return 1 - left(in.word("body"), in.number("Fo"));
    }

    /** Part done of a hollow ball open inside and outside, along its profile. */
    static double hollowBall(Inputs in) {
        double a = in.millimetres("inner_radius_mm");
        double b = in.millimetres("outer_radius_mm");
        double fo = in.number("D") * in.number("hours") * 3600 / (SIZE * SIZE);
        return fraction(course(shell(a, b), 1, "infinite", fo), fo);
    }

    /**
     * Order at which the part done of a ball with Bi = 1 at Fo 0.5 comes near the series, cells doubled from 20 to 40, steps
     * so small that they do not count.
     */
    static double orderInSpace(Inputs in) {
        double exact = in.number("done");
        double coarse = finished(new Resolution(20, 1, 1e-7)) - exact;
        double fine = finished(new Resolution(40, 1, 1e-7)) - exact;
        return Math.log(coarse / fine) / Math.log(2);
    }

    /** Order in time: error against the number of steps, on the same cells, as the step control is tightened. */
    static double orderInTime(Inputs in) {
        double cells = in.number("cells");
        double exact = finished(new Resolution((int) cells, 1, 1e-7));
        var loose = new Resolution((int) cells, 1, 1e-3);
        var tight = new Resolution((int) cells, 1, 2.5e-5);
        double coarse = Math.abs(finished(loose) - exact);
        double fine = Math.abs(finished(tight) - exact);
        return Math.log(coarse / fine) / Math.log((double) steps(tight) / steps(loose));
    }

    private static double finished(Resolution resolution) {
        return fraction(course(body("ball"), 1, "1", 0.5, resolution), 0.5);
    }

    private static int steps(Resolution resolution) {
        return course(body("ball"), 1, "1", 0.5, resolution).steps();
    }

    static Shape shape(Inputs in) {
        return ShapeText.read(in.word("shape"));
    }

    private static double fraction(DryingCourse course, double fo) {
        double time = Math.min(course.end(), fo * SIZE * SIZE / diffusivity());
        return (course.at(0).water() - course.at(time).water()) / course.removable();
    }

    private static double pores() {
        return Drying.poreDiffusivity(AIR.diffusivity(), MIX, DryingParameters.standard());
    }

    private static double diffusivity() {
        return pores() * AIR.saturationDensity() / SLOPE;
    }

    private static DryingCourse course(DepthProfile profile, double c, String biot, double fo) {
        return course(profile, c, biot, fo, RESOLUTION);
    }

    private static DryingCourse course(DepthProfile profile, double c, String biot, double fo, Resolution resolution) {
        double transfer = biot.equals("infinite") ? 1e5 : Double.parseDouble(biot) * pores() / SIZE;
        var parameters = DryingParameters.standard()
                .but()
                .transfer(transfer)
                .filmActivity(0.95)
                .promptYield(0)
                .filmRate(0)
                .startActivity(START)
                .build();
        double seconds = fo * SIZE * SIZE / diffusivity();
        var phase = DryingPhase.open(new Opening(profile, c), AIR, seconds);
        return Drying.run(MIX, List.of(phase), parameters, resolution);
    }

    private static DepthProfile body(String name) {
        double d = 2 * SIZE;
        return switch (name) {
            case "slab" -> new DepthProfile(new double[] {0, SIZE}, new double[] {d, 0}, new double[] {2, 2}, 0);
            case "rod" -> rod();
            case "ball" -> Sphere.ofDiameter(d).depthProfile(DepthProfile.Exposure.ALL);
            case "dome on its tray" -> Dome.ofDiameter(d).depthProfile(DepthProfile.Exposure.TRAY);
            case "dome on a rack" -> Dome.ofDiameter(d).depthProfile(DepthProfile.Exposure.ALL);
            case "puck" -> Puck.ofDiameterAndHeight(d, d).depthProfile(DepthProfile.Exposure.ALL);
            case "flat puck" ->
                Puck.ofDiameterAndHeight(d * 35 / 30, d * 14 / 30).depthProfile(DepthProfile.Exposure.ALL);
            case "block" -> Block.ofSides(d, d * 20 / 30, d * 15 / 30).depthProfile(DepthProfile.Exposure.ALL);
            case "cube" -> Block.ofSides(d, d, d).depthProfile(DepthProfile.Exposure.ALL);
            default -> throw new IllegalArgumentException("unknown body " + name);
        };
    }

    /** A hollow ball of radii a and b, both faces open. */
    private static DepthProfile shell(double a, double b) {
        int n = 200;
        double[] depth = new double[n + 1];
        double[] volume = new double[n + 1];
        double[] area = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            depth[i] = (b - a) / 2 * i / n;
            double out = b - depth[i];
            double in = a + depth[i];
            volume[i] = i == n ? 0 : 4 * Math.PI / 3 * (out * out * out - in * in * in);
            area[i] = 4 * Math.PI * (out * out + in * in);
        }
        return new DepthProfile(depth, volume, area, 0);
    }

    /** A metre of a long cylinder, ends closed. */
    private static DepthProfile rod() {
        int n = 200;
        double[] depth = new double[n + 1];
        double[] volume = new double[n + 1];
        double[] area = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            depth[i] = SIZE * i / n;
            double r = SIZE - depth[i];
            volume[i] = Math.PI * r * r;
            area[i] = 2 * Math.PI * r;
        }
        return new DepthProfile(depth, volume, area, 0);
    }
}
